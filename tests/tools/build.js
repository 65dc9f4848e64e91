/**
 * Builds everything into dist/: the command line, the page, and Electron's two scripts. `--watch`
 * builds again on every change; `--quiet` says nothing unless something is wrong.
 */
import { build, createBuilder } from 'vite';

const has = (name) => process.argv.includes(name);

const options = (configFile) => ({
  configFile,
  logLevel: has('--quiet') ? 'warn' : 'info',
  ...(has('--watch') ? { build: { watch: {} } } : {}),
});

const buildElectron = async () => {
  const builder = await createBuilder(options('vite.electron.config.ts'));
  await builder.buildApp();
};

try {
  await Promise.all([
    build(options('vite.cli.config.ts')),
    build(options('vite.renderer.config.ts')),
    buildElectron(),
  ]);
} catch (cause) {
  console.error(cause.message);
  process.exitCode = 1;
}
