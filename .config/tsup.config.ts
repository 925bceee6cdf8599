import { copyFile } from 'node:fs/promises';
import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    recipe: 'src/batch/index.ts',
    audit: 'src/audit/index.ts',
    reports: 'src/reports/index.ts',
    'check-values': 'src/checkValues/index.ts',
  },
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  // What two entries share is one chunk, so that there is one Decimal and one CalculationError in each format.
  splitting: true,
  // TypeScript 6 calls the `baseUrl` that tsup sets for declarations deprecated.
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
  clean: true,
  onSuccess: () => copyFile('src/recipe/recipe.schema.json', 'dist/recipe.schema.json'),
});
