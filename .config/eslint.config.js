import { fileURLToPath } from 'node:url';
import { defineConfig, globalIgnores } from 'eslint/config';
import tsdoc from 'eslint-plugin-tsdoc';
import tseslint from 'typescript-eslint';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Nothing in src may depend on anything but its arguments. */
const purity = {
  'no-console': 'error',
  'no-restricted-globals': [
    'error',
    { name: 'Date', message: 'src has no clock' },
    { name: 'Intl', message: 'src has no locale' },
    { name: 'performance', message: 'src has no clock' },
    { name: 'process', message: 'src has no environment' },
    { name: 'crypto', message: 'src has no randomness' },
    { name: 'fetch', message: 'src has no network' },
    { name: 'globalThis', message: 'src has no globals' },
  ],
  'no-restricted-properties': [
    'error',
    { object: 'Math', property: 'random', message: 'src has no randomness' },
    { object: 'Decimal', property: 'random', message: 'src has no randomness' },
    { object: 'Decimal', property: 'set', message: 'settings of decimal.js are global: clone once, in numbers' },
  ],
  'no-restricted-imports': ['error', { patterns: [{ group: ['node:*'], message: 'src runs in a browser as well' }] }],
  'no-restricted-syntax': [
    'error',
    {
      selector: 'ThrowStatement > NewExpression[callee.name=/^(Error|TypeError|RangeError|SyntaxError)$/]',
      message: 'throw a CalculationError with code and path',
    },
    { selector: 'ExportDefaultDeclaration', message: 'named exports only' },
    { selector: 'CallExpression[callee.property.name=/^toLocale/]', message: 'src has no locale' },
  ],
};

export default defineConfig(
  globalIgnores(['dist/', 'coverage/', 'docs/site/', 'tests/docs/generated/', '**/*.cjs']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: { project: ['tsconfig.json', 'tests/tsconfig.json'], tsconfigRootDir: root },
    },
    rules: {
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/consistent-type-exports': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/strict-boolean-expressions': 'error',
      // An index signature names its key (`[acid: string]`), a Record does not: both have their place.
      '@typescript-eslint/consistent-indexed-object-style': 'off',
      '@typescript-eslint/naming-convention': [
        'error',
        { selector: 'default', format: ['camelCase'], leadingUnderscore: 'forbid' },
        { selector: 'import', format: null },
        { selector: 'variable', modifiers: ['const'], format: ['camelCase', 'UPPER_CASE', 'PascalCase'] },
        { selector: 'typeLike', format: ['PascalCase'] },
        // Keys are lipid numbers, elements and units of the trade (`C12:0`, `Na`, `specificGravity20_20`).
        { selector: ['objectLiteralProperty', 'objectLiteralMethod', 'typeProperty'], format: null },
        { selector: 'parameter', modifiers: ['unused'], format: ['camelCase'], leadingUnderscore: 'allow' },
      ],
      eqeqeq: 'error',
    },
  },
  {
    files: ['tests/browser/**/*.ts', 'tests/package/bundles.ts'],
    rules: {
      // The runner of node:test waits for them itself.
      '@typescript-eslint/no-floating-promises': [
        'error',
        { allowForKnownSafeCalls: [{ from: 'package', name: ['describe', 'it'], package: 'node:test' }] },
      ],
    },
  },
  {
    files: ['src/**/*.ts'],
    plugins: { tsdoc },
    rules: {
      ...purity,
      'tsdoc/syntax': 'error',
      '@typescript-eslint/explicit-module-boundary-types': 'error',
    },
  },
);
