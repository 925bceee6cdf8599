/** How the time of a call grows with what it is given: lists of 1 000 rows, and of 100 000 or 10 000. */
import * as laurate from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { planBatch, readRecipe } from 'laurate/recipe';

/** Time of a row in the long list over that in the short one: about 1 where cost is linear. */
export interface Growth {
  readonly name: string;
  readonly rows: string;
  readonly many: number;
  readonly ratio: number;
  readonly seconds: number;
}

const [FEW, MANY] = [1000, 100_000];
/** A plan of a batch does the work of nine functions, twice. */
const MANY_TO_PLAN = 10_000;
const fat = laurate.fatFromCertificate({
  name: 'A lot',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: 250 },
  uncertainty: { mgKohPerG: 2 },
});
const solution = { hydroxide: { percent: 50 } };
const lye = [{ alkali: 'naoh', mass: { kg: 20 }, solution }] as const;
const list = <T>(count: number, row: (at: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, at) => row(at));
const fats = (count: number) => list(count, () => ({ fat, mass: { g: 1 } }));
const named = (count: number) => list(count, () => ({ fat: 'coconut-oil', mass: { g: 1 } }));
const recipe = (count: number) => ({ version: 1 as const, fats: named(count), lye });

const calls: readonly (readonly [name: string, rows: string, call: (count: number) => unknown])[] = [
  ['alkaliDemandOf', 'fats', (count) => laurate.alkaliDemandOf(fats(count))],
  [
    'planLye',
    'fats',
    (count) => laurate.planLye({ fats: fats(count), alkali: { naoh: { solution } }, target: { superfat: { percent: 3 } }, dilution: 'as-is' }),
  ],
  ['soapFromLye', 'fats', (count) => laurate.soapFromLye({ fats: fats(count), lye })],
  ['superfatFromLye', 'fats', (count) => laurate.superfatFromLye({ fats: fats(count), lye })],
  ['fatFromBlend', 'parts', (count) => laurate.fatFromBlend({ name: 'Stock', parts: fats(count) })],
  ['splitToStep', 'masses', (count) => laurate.splitToStep(list(count, () => ({ g: '1.4' })), { g: 1 })],
  [
    'checkTemperatures',
    'readings',
    (count) => laurate.checkTemperatures({ readings: list(count, (at) => ({ stage: 'clearing', time: { minutes: at }, temperature: { celsius: 72 } })) }),
  ],
  ['readRecipe', 'fats', (count) => readRecipe(recipe(count))],
  ['planBatch', 'fats', (count) => planBatch(recipe(count))],
  ['auditRecipe', 'fats', (count) => auditRecipe({ ...recipe(count), claimed: { superfat: { percent: 5 } } })],
  [
    'auditRecipe',
    'additions',
    (count) => auditRecipe({ ...recipe(1), additions: list(count, (at) => ({ name: `clay ${String(at)}`, mass: { g: 1 }, claimed: { share: { percent: 9 } } })) }),
  ],
  ['auditRecipe', 'rows that cannot be read', (count) => auditRecipe({ ...recipe(1), fats: list(count, () => ({ mass: 1, claimed: 1 })) })],
]; // prettier-ignore

/** Time of the processor, which a busy machine does not stretch, in milliseconds: the least of some rounds. */
function timeOf(call: (count: number) => unknown, count: number, rounds: number): number {
  const times = Array.from({ length: rounds }, () => {
    const before = process.cpuUsage();
    call(count);
    return process.cpuUsage(before).user / 1000;
  });
  return Math.min(...times);
}

export const growths = (): readonly Growth[] =>
  calls.map(([name, rows, call]) => {
    const many = name === 'planBatch' ? MANY_TO_PLAN : MANY;
    const [short, long] = [timeOf(call, FEW, 5), timeOf(call, many, 2)];
    return { name, rows, many, ratio: long / many / (short / FEW), seconds: long / 1000 };
  });
