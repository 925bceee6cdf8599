import { planBatchSteps } from '../../batch/planBatch.js';
import { expandedCharges, readFatCharges, type FatCharge, type SingleFat } from '../../fats/index.js';
import { readFields, readWord, type Decimal } from '../../numbers/index.js';
import { mapEnds, type AlkaliContent, type Estimate } from '../../quantities/index.js';
import {
  planLyeSteps,
  soapFromLyeSteps,
  superfatFromLyeSteps,
  type Balance,
  type ChargedFat,
} from '../../saponification/index.js';

/** A result that says how alkali and fats stand to each other; also one read back from JSON. */
export interface Balanced {
  readonly by: 'planLye' | 'superfatFromLye' | 'soapFromLye' | 'planBatch';
  readonly given: unknown;
}

/** How alkali and fats stand to each other. */
export interface BalancedFigures {
  /** Hydroxide charged, mol. */
  readonly charged: Estimate<Decimal>;
  /** Percent of the demand. */
  readonly superfat: Estimate<Decimal>;
  /** Percent NaOH of the batch. */
  readonly freeCaustic: Estimate<Decimal>;
  /** Blends as their parts. */
  readonly fats: readonly FatCharge<SingleFat>[];
}

type Pot = Balance & { readonly given: { readonly fats: readonly ChargedFat[] } };

const POTS: Readonly<Record<Balanced['by'], (given: never) => BalancedFigures>> = {
  planLye: (given) => figuresOf(planLyeSteps(given)),
  superfatFromLye: (given) => figuresOf(superfatFromLyeSteps(given)),
  soapFromLye: (given) => figuresOf(soapFromLyeSteps(given)),
  planBatch: (given) => {
    const { soap, freeCausticAlkali } = planBatchSteps(given);
    return figuresOf(soap, freeCausticAlkali);
  },
};

/**
 * Reads such a result by working it through again from what it was given.
 *
 * @throws CalculationError `missing` or `bad-shape` for what is no such result, and the faults of its inputs
 */
export function readBalanced(path: string, value: unknown): BalancedFigures {
  const { by, given } = readFields(path, value, 'a result with by and given');
  const name = readWord(`${path}.by`, by, Object.keys(POTS) as Balanced['by'][]);
  return POTS[name](given as never);
}

function figuresOf(pot: Pot, freeCaustic: Estimate<AlkaliContent> = pot.freeCausticAlkali): BalancedFigures {
  return {
    charged: mapEnds(pot.charged, ({ mol }) => mol),
    superfat: mapEnds(pot.superfat, ({ percent }) => percent),
    freeCaustic: mapEnds(freeCaustic, ({ percentNaoh }) => percentNaoh),
    fats: expandedCharges(readFatCharges('fats', pot.given.fats)),
  };
}
