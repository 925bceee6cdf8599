/**
 * Scaling out: 100 000 invented recipes audited by a pool of workers. Run it with `npm run example:scaling`, or a part of
 * it with `npm run example:scaling -- 5000`. Progress goes to the standard error, the count of verdicts to the output.
 */
import { availableParallelism } from 'node:os';
import { pooled } from './scaling-out/pooled.js';

const count = Number(process.argv[2] ?? 100_000);
if (!Number.isSafeInteger(count) || count < 1) throw new Error('the number of recipes is a whole number from 1');

const workers = availableParallelism();
const verdicts = new Map<string, number>();
const started = performance.now();
const seconds = (): number => (performance.now() - started) / 1000;

await pooled({
  count,
  workers,
  parcel: 250,
  onParcel: (lines, done) => {
    for (const line of lines) {
      const { verdict } = JSON.parse(line) as { verdict: string };
      verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1);
    }
    process.stderr.write(`\r${String(done)} of ${String(count)}, ${(done / seconds()).toFixed(0)} a second `);
  },
});
process.stderr.write('\n');

const sorted = [...verdicts].sort(([a], [b]) => (a < b ? -1 : 1));
process.stdout.write(
  `${sorted.map(([verdict, times]) => `${verdict.padEnd(12)}${String(times).padStart(8)}`).join('\n')}\n`,
);
