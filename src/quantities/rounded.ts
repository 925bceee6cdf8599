import { frozen, readList, readWord, toStep, type RoundingDirection } from '../numbers/index.js';
import { readMass, type Mass, type MassInput } from './kinds/mass.js';

/**
 * A mass rounded to the step of a scale.
 *
 * @param mass - the mass to weigh
 * @param step - what the scale shows, as `{ g: 1 }` or `{ g: '0.1' }`; more than zero
 * @param direction - `nearest` (ties to even), `down` or `up`
 * @returns a whole multiple of the step, in grams
 * @throws CalculationError `not-a-number`, `out-of-range`, `bad-shape` and the faults of a quantity
 *
 * @example
 * ```ts
 * roundToStep({ g: '157.68' }, { g: 1 }, 'down'); // => { g: '157' }
 * ```
 */
export function roundToStep(mass: MassInput, step: MassInput, direction: RoundingDirection): Mass {
  const by = readMass('step', step, { above: 0 });
  const way = readWord('direction', direction, ['nearest', 'down', 'up']);
  return frozen({ g: toStep(readMass('mass', mass, {}), by, way) });
}

/**
 * Masses rounded to a step so that they still add up to their rounded total: the largest remainders go up first; of
 * equal ones the earlier.
 *
 * @param masses - masses of zero or more; at least one
 * @param step - what they are to be whole multiples of; more than zero
 * @returns the masses in the same order, in grams
 * @throws CalculationError `missing`, `bad-shape`, `not-a-number`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * splitToStep([{ g: '33.4' }, { g: '33.4' }, { g: '33.2' }], { g: 1 }).map((part) => part.g); // => ['34', '33', '33']
 * ```
 */
export function splitToStep(masses: readonly MassInput[], step: MassInput): readonly Mass[] {
  const by = readMass('step', step, { above: 0 });
  const exact = readList('masses', masses).map((mass, at) => readMass(`masses[${String(at)}]`, mass));
  const total = toStep(
    exact.reduce((sum, g) => sum.plus(g)),
    by,
    'nearest',
  );
  const parts = exact.map((g) => {
    const floor = toStep(g, by, 'down');
    return { floor, remainder: g.minus(floor) };
  });
  const steps = parts
    .reduce((rest, { floor }) => rest.minus(floor), total)
    .div(by)
    .toNumber();
  // sorting leaves what is equal in its order
  const byRemainder = [...parts].sort((a, b) => b.remainder.cmp(a.remainder));
  const raised = new Set(byRemainder.slice(0, steps));
  return frozen(parts.map((part) => frozen({ g: raised.has(part) ? part.floor.plus(by) : part.floor })));
}
