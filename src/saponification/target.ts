import { hydroxideMolarMass } from '../lye/index.js';
import { frozen, noted, ONE, readShape, refuse, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import {
  readAlkaliContent,
  readPercent,
  type AlkaliContent,
  type AlkaliContentInput,
  type Estimate,
  type Fraction,
  type FractionInput,
  type OneChoice,
} from '../quantities/index.js';
import type { Demand } from './demand.js';
import { weighedLye, type LyeMakeUp } from './weighedLye.js';

/**
 * What a plan aims at: a share of the likely alkali demand left out, 0 to less than 100 percent; or a content of free
 * caustic that no lawful lot and no assay may exceed.
 */
export type LyeTarget = OneChoice<{
  /** Share of the likely alkali demand that is left out. */
  readonly superfat: FractionInput;
  /** Content of free caustic alkali that the leanest lots and the strongest assay may not exceed. */
  readonly freeCausticAlkaliAtMost: AlkaliContentInput;
}>;

/** A target as it stands in `given`. */
export type GivenTarget = OneChoice<{
  readonly superfat: Fraction;
  readonly freeCausticAlkaliAtMost: AlkaliContent;
}>;

const EXPECTED = "{ superfat: { percent: 5 } } or { freeCausticAlkaliAtMost: { percentNaoh: '0.05' } }";

/**
 * Reads a target.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a quantity
 */
export function readTarget(path: string, value: unknown): GivenTarget {
  const { superfat, freeCausticAlkaliAtMost: atMost } = readShape(
    path,
    value,
    ['superfat', 'freeCausticAlkaliAtMost'],
    EXPECTED,
  );
  if (superfat !== undefined && atMost !== undefined) {
    refuse('bad-shape', path, 'either superfat or freeCausticAlkaliAtMost', 'both');
  }
  if (atMost !== undefined) {
    // more than this is no soap to wash with, whatever the limit is for
    const percentNaoh = readAlkaliContent(`${path}.freeCausticAlkaliAtMost`, atMost, { min: 0, max: 5 });
    return frozen({ freeCausticAlkaliAtMost: frozen({ percentNaoh }) });
  }
  const percent = readPercent(`${path}.superfat`, superfat, { min: 0, below: 100 });
  return frozen({ superfat: frozen({ percent }) });
}

/**
 * Moles of hydroxide that meet a target, before anything is rounded.
 *
 * By superfat s: `A = n·(1 − s)` of the likely demand n. By a limit: what the strongest assay brings, `r·A`, may exceed
 * the leanest demand n₀ by λ moles to a gram of batch, and the batch grows with A: `r·A − n₀ = λ·(b₀ + b₁·A)`.
 *
 * @param batchGrams - mass of the batch where it is stated; else fats, lye and water
 * @throws CalculationError `infeasible` for a limit that the lye itself does not exceed
 */
export function hydroxideFor(
  target: GivenTarget,
  demand: Estimate<Demand>,
  makeUp: LyeMakeUp,
  batchGrams: Decimal | undefined,
  steps?: Steps,
): Decimal {
  if (target.superfat !== undefined) {
    const share = ONE.minus(target.superfat.percent.div(100));
    return noted(steps, 'hydroxide to charge', 'A = n·(1 − s)', 'mol', demand.likely.hydroxide.times(share));
  }
  const allowed = target.freeCausticAlkaliAtMost.percentNaoh.div(hydroxideMolarMass('naoh').times(100));
  const strongest = makeUp.alkalis.reduce(
    (sum, { share, source }) => sum.plus(share.times(source.hydroxide.high).div(source.hydroxide.likely)),
    ZERO,
  );
  const { fixed, perMol } = batchGrowth(makeUp, batchGrams);
  const excess = strongest.minus(allowed.times(perMol));
  // of a lye that itself holds no more than the limit any amount would do; the figure is a quotient, hence not zero
  if (excess.lte('1e-20')) {
    const limit = target.freeCausticAlkaliAtMost.percentNaoh.toString();
    refuse(
      'infeasible',
      'target.freeCausticAlkaliAtMost',
      'a limit below what the lye itself holds',
      `${limit} percent NaOH`,
    );
  }
  return noted(
    steps,
    'hydroxide to charge, leanest lots and strongest assay',
    'A = (n₀ + λ·b₀)/(r − λ·b₁)',
    'mol',
    demand.low.hydroxide.plus(allowed.times(fixed)).div(excess),
  );
}

/** The batch in grams as a straight line over the hydroxide charged. */
function batchGrowth(
  makeUp: LyeMakeUp,
  stated: Decimal | undefined,
): { readonly fixed: Decimal; readonly perMol: Decimal } {
  if (stated !== undefined) return { fixed: stated, perMol: ZERO };
  const unrounded = { ...makeUp, scaleStep: undefined };
  const one = weighedLye(ONE, unrounded).grams;
  const perMol = weighedLye(ONE.times(2), unrounded).grams.minus(one);
  return { fixed: makeUp.fatGrams.plus(one).minus(perMol), perMol };
}
