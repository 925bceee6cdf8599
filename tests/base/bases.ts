/** Bases that the tests of `baseFromTarget` start from. */
import {
  baseFromTarget,
  fatFromCertificate,
  isCalculationError,
  type BaseFromTargetInput,
  type BasePlan,
  type CalculationError,
} from 'laurate';

export const coconut = fatFromCertificate({
  name: 'Coconut lot',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: 257 },
});
export const stearic = fatFromCertificate({
  name: 'Stearic lot',
  kind: 'free-fatty-acid',
  saponificationValue: { mgKohPerG: 197 },
});

/** The alcohol-free route of the trade: coconut, 50 % lye, glycerol, propylene glycol and sorbitol solution. */
export const clear: BaseFromTargetInput = {
  fats: [{ fat: coconut, share: { percent: 100 } }],
  alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
  superfat: { percent: 1 },
  batchMass: { g: 3000 },
  target: {
    soap: { percent: 40 },
    glycerol: { percent: 15 },
    propyleneGlycol: { percent: 12 },
    sorbitol: { percent: 12 },
  },
  supplies: {
    glycerol: { assay: { percent: '99.5' } },
    propyleneGlycol: { assay: { percent: '99.5' } },
    sorbitol: { assay: { percent: 70 } },
  },
};

/** A base of any input, alkalis as they come. */
export const baseOf = (input: BaseFromTargetInput): BasePlan<'naoh' | 'koh'> =>
  baseFromTarget(input) as BasePlan<'naoh' | 'koh'>;

/** The refusal of an input, if it is one. */
export function refused(input: BaseFromTargetInput): CalculationError | undefined {
  try {
    baseFromTarget(input);
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
  return undefined;
}
