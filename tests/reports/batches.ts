/** A batch for the bench; its figures are invented. */
import { planBatch, type Batch, type RecipeToPlan } from 'laurate/recipe';

export const HARBOUR = {
  version: 1,
  title: 'Harbour clear base',
  fats: [
    { fat: 'coconut-oil', mass: { g: 700 } },
    { fat: 'stearic-acid-50', mass: { g: 200 } },
  ],
  lye: [{ alkali: 'naoh', solution: { hydroxide: { low: { percent: 49 }, high: { percent: 50 } } } }],
  additions: [
    { solvent: 'sorbitol', mass: { g: 350 }, assay: { percent: 70 } },
    { solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } },
    { solvent: 'propylene-glycol', mass: { g: 250 }, assay: { percent: '99.5' } },
    { name: 'scent', mass: { g: 12 } },
  ],
  target: { superfat: { percent: 3 } },
} as const satisfies RecipeToPlan;

/** Five kilograms of it, into moulds. */
export const harbour = (): Batch =>
  planBatch(HARBOUR, {
    scaleTo: { batchMass: { kg: 5 } },
    scaleStep: { g: 1 },
    evaporated: { g: 40 },
    start: { pot: { celsius: 55 }, lye: { celsius: 25 } },
    moulds: { volume: { mL: 90 } },
  });

/** Lines that hold something. */
export const linesOf = (page: string): readonly string[] => page.split('\n').filter((line) => line !== '');

/** The cells of a row of a table; a pipe that is escaped parts none. */
export const cellsOf = (row: string): readonly string[] =>
  row
    .split(/(?<!\\)\|/)
    .slice(1, -1)
    .map((cell) => cell.trim());
