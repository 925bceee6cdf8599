import { readLoss, SPIRITS, type GivenLoss } from '../composition/index.js';
import { frozen, readShape, refuse, ZERO, type Decimal } from '../numbers/index.js';
import { readMass, readPercent, type Estimate, type Fraction, type Mass } from '../quantities/index.js';
import type { GivenAlkali } from '../saponification/index.js';
import { baseBlend, readBlend, type BlendedFat } from './blend.js';
import {
  givenSupplies,
  readBaseTarget,
  readSupplies,
  type BaseShares,
  type BaseSupplies,
  type Supplies,
} from './target.js';
import { MOST_LOSS, type BaseProblem } from './solved.js';

/** What a base was worked out from: the inputs as read; assays by mass. */
export interface GivenBase {
  readonly fats: readonly BlendedFat[];
  readonly alkali: GivenAlkali;
  readonly superfat: Fraction;
  readonly batchMass: Mass;
  readonly target: BaseShares;
  readonly supplies: BaseSupplies;
  readonly evaporated?: Mass;
  readonly spiritShareOfLoss?: Estimate<Fraction>;
}

/** A problem as read. */
export interface ReadProblem {
  readonly problem: BaseProblem;
  /** Water as stated, percent, where all shares are. */
  readonly closing: Decimal | undefined;
  readonly loss: GivenLoss;
  readonly given: GivenBase;
}

const KEYS = ['fats', 'alkali', 'superfat', 'batchMass', 'target', 'supplies', 'evaporated', 'spiritShareOfLoss'];

/**
 * Reads what a base is to be, and of what.
 *
 * @throws CalculationError the faults of each, and `infeasible` for spirit that leaves where there is none
 */
export function readBaseProblem(input: unknown): ReadProblem {
  const fields = readShape('input', input, KEYS);
  const fats = readBlend('fats', fields['fats']);
  const superfat = readPercent('superfat', fields['superfat']);
  if (superfat.eq(100)) refuse('out-of-range', 'superfat', 'less than 100', '100');
  // of less than a gram the smallest additions could not be read again
  const batch = readMass('batchMass', fields['batchMass'], { min: 1, max: '1e9' });
  const supplies = readSupplies('supplies', fields['supplies']);
  const { shares, leftOut, closing, given: target } = readBaseTarget('target', fields['target'], supplies);
  const { evaporated, spiritShareOfLoss } = fields;
  const loss = readLoss('', { evaporated, spiritShareOfLoss });
  const grams = loss.given.evaporated?.g ?? ZERO;
  if (grams.gt(batch.times(MOST_LOSS))) {
    refuse('out-of-range', 'evaporated', 'at most a hundred times batchMass', `${grams.toString()} g`);
  }
  const spiritShare = spiritShareIn(grams, loss.spiritShare?.likely, supplies);
  const blend = baseBlend(fats, fields['alkali'], superfat);
  return {
    problem: { blend, batch, shares, leftOut, supplies, evaporated: grams, spiritShare },
    closing,
    loss: loss.given,
    given: frozen({
      fats,
      alkali: blend.alkali,
      superfat: frozen({ percent: superfat }),
      batchMass: frozen({ g: batch }),
      target,
      supplies: givenSupplies(supplies),
      ...loss.given,
    }),
  };
}

/** What spirit there is in a loss: it has to be said where there is spirit, because it changes what is weighed. */
function spiritShareIn(evaporated: Decimal, stated: Decimal | undefined, supplies: Supplies): Decimal {
  const hasSpirit = SPIRITS.some((spirit) => supplies.has(spirit));
  if (stated === undefined) {
    if (hasSpirit && evaporated.gt(0)) {
      refuse('missing', 'spiritShareOfLoss', 'how much of what evaporates is spirit, where there is spirit', undefined);
    }
    return ZERO;
  }
  if (!hasSpirit && stated.gt(0)) {
    refuse(
      'infeasible',
      'spiritShareOfLoss',
      '0 percent, where there is no spirit',
      `${stated.times(100).toString()} percent`,
    );
  }
  return stated;
}
