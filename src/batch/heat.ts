import { frozen, isCalculationError, type CalculationError, type Remark, type Steps } from '../numbers/index.js';
import {
  potHeatFromReactionSteps,
  stagedLyeSteps,
  type PotHeatFromReactionResult,
  type StagedLyeResult,
} from '../process/index.js';
import type { PotInput } from './pot.js';
import type { GivenBatchOptions } from './readBatchOptions.js';

/** How a batch heats itself, and how its lye is parted so that it stays cool. */
export interface BatchHeat {
  /** All the lye at once. */
  readonly reaction: PotHeatFromReactionResult;
  /** Left out where no parting keeps the pot below its ceiling; a note says why. */
  readonly portions?: StagedLyeResult;
  readonly notes: readonly Remark[];
}

/** Fats that are melted, a lye that has cooled. */
const ASSUMED_START = { pot: { celsius: 50 }, lye: { celsius: 25 } } as const;

const START_IS_ASSUMED: Remark = /* @__PURE__ */ frozen({
  code: 'start-temperatures-assumed',
  text: 'How hot the pot gets is reckoned from fats of 50 °C and a lye of 25 °C, an assumption. State what your thermometer shows.',
});

function notParted({ path, expected }: CalculationError): Remark {
  const wanted = path === 'scaleStep' ? `the scale needs ${expected}` : `the pot would have to start ${expected}`;
  return frozen({
    code: 'lye-cannot-be-parted',
    text: `No parting of the lye keeps the pot below its ceiling: ${wanted}.`,
  });
}

/** The heat of a pot of fats and lye; what clears the soap goes in afterwards. */
export function heatOf(pot: PotInput, { start, scaleStep }: GivenBatchOptions, steps?: Steps): BatchHeat {
  const input = { ...pot, start: start ?? ASSUMED_START };
  const assumed = start === undefined ? [START_IS_ASSUMED] : [];
  const reaction = potHeatFromReactionSteps(input, steps);
  try {
    const portions = stagedLyeSteps({ ...input, ...(scaleStep === undefined ? {} : { scaleStep }) }, steps);
    return frozen({ reaction, portions, notes: frozen(assumed) });
  } catch (error) {
    // a pot that starts hot, or a coarse scale, is still a batch
    if (!isCalculationError(error) || error.code !== 'infeasible') throw error;
    return frozen({ reaction, notes: frozen([...assumed, notParted(error)]) });
  }
}
