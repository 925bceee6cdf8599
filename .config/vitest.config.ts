import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  resolve: {
    // Tests and snippets import the package as its users do, by its public names.
    alias: [
      { find: /^laurate$/, replacement: `${root}src/index.ts` },
      { find: /^laurate\/recipe$/, replacement: `${root}src/batch/index.ts` },
      { find: /^laurate\/audit$/, replacement: `${root}src/audit/index.ts` },
      { find: /^laurate\/reports$/, replacement: `${root}src/reports/index.ts` },
      { find: /^laurate\/check-values$/, replacement: `${root}src/checkValues/index.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    // nothing here is timed: laws and fuzz are slow where coverage is taken on a busy machine
    testTimeout: 600_000,
    globalSetup: ['tests/docs/globalSetup.ts'],
    setupFiles: ['tests/setup.ts'],
    typecheck: { enabled: true, include: ['tests/types/**/*.test-d.ts'], tsconfig: 'tests/tsconfig.json' },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'html', 'json'],
      reportsDirectory: 'coverage',
      thresholds: { lines: 95, branches: 95, functions: 95, statements: 95 },
    },
  },
});
