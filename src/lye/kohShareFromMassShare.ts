import { frozen, noted, ONE, readShape, type Steps } from '../numbers/index.js';
import { readPercent, type Fraction, type FractionInput } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { hydroxideMolarMass } from './alkali.js';

/** Input of {@link kohShareFromMassShare}. */
export interface KohShareFromMassShareInput {
  /** Potassium hydroxide, share by mass of both pure hydroxides together. */
  readonly massShare: FractionInput;
}

/** Result of {@link kohShareFromMassShare}. */
export interface KohShareFromMassShareResult {
  readonly by: 'kohShareFromMassShare';
  /** The inputs as read. */
  readonly given: { readonly massShare: Fraction };
  /** Potassium hydroxide's share of the hydroxide by mole, as `planLye` takes it. */
  readonly kohShare: Fraction;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

/**
 * Share of KOH by mole of hydroxide, from its share by mass of the two pure hydroxides.
 *
 * Formula: `x = (s/M(KOH)) / (s/M(KOH) + (1 − s)/M(NaOH))`, with s the share by mass. Taking one for the other is a
 * common slip: half by mass is 41.6 % by mole.
 *
 * Source: molar masses from the IUPAC 2021 atomic weights.
 *
 * @param input - the share by mass
 * @returns percent by mole of hydroxide
 * @throws CalculationError `missing`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * kohShareFromMassShare({ massShare: { percent: 50 } }).kohShare.percent.toFixed(1); // => '41.6'
 * ```
 */
export function kohShareFromMassShare(input: KohShareFromMassShareInput): KohShareFromMassShareResult {
  return kohShareFromMassShareSteps(input);
}

/** The kernel, with room for the working. */
export function kohShareFromMassShareSteps(
  input: KohShareFromMassShareInput,
  steps?: Steps,
): KohShareFromMassShareResult {
  const massShare = readPercent('massShare', readShape('input', input, ['massShare'])['massShare']);
  const share = massShare.div(100);
  const koh = share.div(hydroxideMolarMass('koh'));
  const naoh = ONE.minus(share).div(hydroxideMolarMass('naoh'));
  const percent = koh.times(100).div(koh.plus(naoh));
  noted(steps, 'share of KOH by mole', '(s/M(KOH))/(s/M(KOH) + (1 − s)/M(NaOH))', 'percent', percent);
  return frozen({
    by: 'kohShareFromMassShare',
    given: frozen({ massShare: frozen({ percent: massShare }) }),
    kohShare: frozen({ percent }),
    basis: BASIS,
    edition: EDITION,
  });
}
