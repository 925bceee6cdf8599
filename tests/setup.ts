/** Before every file of tests: laws draw the same each time. `SEED=7 npm test` draws others. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20261125) });
