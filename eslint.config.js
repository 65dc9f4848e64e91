import { readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const LONGEST_FILE_LINES = 300;
const LONGEST_CORE_FUNCTION_LINES = 60;

/** Files that may be longer, each with its reason; tests/house/lint.test.ts finds unused rows. */
const allowed = new URL('tests/house/allowed.json', import.meta.url);
const { longFiles } = JSON.parse(readFileSync(allowed, 'utf8'));

const PURE = 'core is pure: the caller supplies what comes from outside (see DEVELOPERS.md).';
const LOCALE = 'This follows the locale of the machine; core gives the same answer everywhere.';
const ZONE =
  "This follows the machine's time zone; use the UTC form, or Temporal with a named zone.";

const OUTSIDE_GLOBALS = [
  ...['document', 'window', 'navigator', 'location', 'localStorage', 'sessionStorage', 'self'],
  ...['process', 'Buffer', 'global', 'globalThis', 'require', 'module', '__dirname', '__filename'],
  ...['console', 'fetch', 'XMLHttpRequest', 'WebSocket', 'Worker', 'performance', 'crypto'],
  ...['setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'requestAnimationFrame'],
];

const OUTSIDE_PACKAGES = ['electron', 'react', 'react-dom', 'commander', 'vite', 'vitest'];

const LOCALE_METHODS = [
  ...['toLocaleString', 'toLocaleDateString', 'toLocaleTimeString', 'localeCompare'],
  ...['toLocaleLowerCase', 'toLocaleUpperCase'],
];

const LOCAL_TIME_METHODS = [
  ...['getFullYear', 'getMonth', 'getDate', 'getDay', 'getHours', 'getMinutes', 'getSeconds'],
  ...['setFullYear', 'setMonth', 'setDate', 'setHours', 'setMinutes', 'getTimezoneOffset'],
];

const coreIsPure = {
  'no-restricted-globals': [
    'error',
    ...OUTSIDE_GLOBALS.map((name) => ({ name, message: PURE })),
    { name: 'Intl', message: LOCALE },
  ],
  'no-restricted-properties': [
    'error',
    { object: 'Date', property: 'now', message: PURE },
    { object: 'Date', property: 'parse', message: ZONE },
    { object: 'Math', property: 'random', message: PURE },
    { object: 'Temporal', property: 'Now', message: PURE },
    ...LOCALE_METHODS.map((property) => ({ property, message: LOCALE })),
    ...LOCAL_TIME_METHODS.map((property) => ({ property, message: ZONE })),
  ],
  'no-restricted-syntax': [
    'error',
    { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: PURE },
    { selector: "NewExpression[callee.name='Date'][arguments.length>1]", message: ZONE },
    { selector: "CallExpression[callee.name='Date']", message: PURE },
    { selector: 'ImportExpression', message: 'core is loaded whole: import at the top.' },
  ],
  'no-restricted-imports': [
    'error',
    {
      paths: [
        ...builtinModules.map((name) => ({ name, message: PURE })),
        ...OUTSIDE_PACKAGES.map((name) => ({ name, message: PURE })),
      ],
      patterns: [
        { group: ['node:*', 'electron/*', 'react/*', 'react-dom/*'], message: PURE },
        {
          group: ['**/electron/**', '**/renderer/**', '**/cli/**', '**/tests/**'],
          message: PURE,
        },
      ],
    },
  ],
};

/** Strict everywhere, less what numeric code and branded numbers make noise of. */
const everywhere = {
  eqeqeq: ['error', 'always', { null: 'ignore' }],
  'no-console': 'off',
  'no-else-return': 'error',
  'no-implicit-coercion': ['error', { allow: ['!!'] }],
  'no-param-reassign': 'error',
  'no-var': 'error',
  'object-shorthand': 'error',
  'prefer-const': 'error',
  'max-lines': ['error', { max: LONGEST_FILE_LINES, skipBlankLines: true, skipComments: true }],
};

const typed = {
  '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
  '@typescript-eslint/consistent-type-exports': 'error',
  '@typescript-eslint/no-import-type-side-effects': 'error',
  // As the compiler has it: a name that begins with _ is there to be left alone.
  '@typescript-eslint/no-unused-vars': [
    'error',
    { argsIgnorePattern: '^_', varsIgnorePattern: '^_', caughtErrorsIgnorePattern: '^_' },
  ],
  '@typescript-eslint/switch-exhaustiveness-check': [
    'error',
    { considerDefaultExhaustiveForUnions: true },
  ],
  '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
  '@typescript-eslint/no-confusing-void-expression': [
    'error',
    { ignoreArrowShorthand: true, ignoreVoidReturningFunctions: true },
  ],
  // The tightest loops read typed arrays, whose reads inside the bounds are never undefined.
  '@typescript-eslint/no-non-null-assertion': 'off',
  '@typescript-eslint/no-confusing-non-null-assertion': 'off',
  '@typescript-eslint/prefer-for-of': 'off',
  // `x === null || !x.legs.some(…)` says more plainly what happens without an x.
  '@typescript-eslint/prefer-optional-chain': 'off',
  // `figures['overDeltaC']`: the brackets say that the name may not be there.
  '@typescript-eslint/dot-notation': ['error', { allowIndexSignaturePropertyAccess: true }],
  // Spreading a string goes by code points, which is what the readers want.
  '@typescript-eslint/no-misused-spread': ['error', { allow: ['string'] }],
  // A branded number is one that may be negated.
  '@typescript-eslint/no-unsafe-unary-minus': 'off',
  // A type parameter that only names the result is how a brand is put on (core/model/scalars.ts).
  '@typescript-eslint/no-unnecessary-type-parameters': 'off',
};

export default defineConfig(
  { ignores: ['dist/', 'coverage/', 'reports/', 'sample-traces/', 'tests/goldens/'] },
  js.configs.recommended,
  { rules: everywhere },
  {
    files: ['**/*.{ts,tsx}'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: typed,
  },
  {
    files: ['core/**/*.ts'],
    rules: {
      ...coreIsPure,
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      'max-lines-per-function': [
        'error',
        { max: LONGEST_CORE_FUNCTION_LINES, skipBlankLines: true, skipComments: true },
      ],
    },
  },
  {
    files: ['electron/**/*.ts'],
    ignores: ['electron/messages.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        { name: 'electron', importNames: ['ipcMain'], message: 'Messages are for messages.ts.' },
      ],
    },
  },
  {
    // Literal strings are spread in tests only, where their characters are plain to see.
    files: ['tests/**/*.ts'],
    rules: { '@typescript-eslint/no-misused-spread': 'off' },
  },
  {
    files: ['**/*.js'],
    languageOptions: { globals: { process: 'readonly', console: 'readonly', URL: 'readonly' } },
  },
  ...longFiles.map(({ file }) => ({ files: [file], rules: { 'max-lines': 'off' } })),
);
