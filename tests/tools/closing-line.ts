import type { Reporter, TestModule, TestSuite } from 'vitest/node';

export interface Counts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

type Node = Pick<TestModule | TestSuite, 'children' | 'errors'>;

const NOTHING: Counts = { passed: 0, failed: 0, skipped: 0 };

const sum = (parts: readonly Counts[]): Counts =>
  parts.reduce(
    (total, { passed, failed, skipped }) => ({
      passed: total.passed + passed,
      failed: total.failed + failed,
      skipped: total.skipped + skipped,
    }),
    NOTHING,
  );

/** Counts the tests below a file or suite; one that fell over by itself is one failure more. */
export const countsOf = (node: Node): Counts => {
  const own: Counts = { ...NOTHING, failed: node.errors().length > 0 ? 1 : 0 };
  const below = node.children.array().map((child): Counts => {
    if (child.type === 'suite') return countsOf(child);
    const { state } = child.result();
    // A test that never finished has not passed.
    return { ...NOTHING, [state === 'pending' ? 'failed' : state]: 1 };
  });
  return sum([own, ...below]);
};

/**
 * Ends a test run with `N passed, N failed` alone on a line, for continuous integration to read.
 * A run in which no test passed has failed, whatever else it says.
 */
export class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const { passed, failed, skipped } = sum(modules.map(countsOf));
    const failures = failed + unhandled.length;
    if (passed === 0 || failures > 0) process.exitCode = 1;
    if (skipped > 0) console.log(`${skipped} skipped`);
    console.log(`${passed} passed, ${failures} failed`);
  }
}
