import { hydroxideMolarMass } from '../../lye/index.js';
import { Decimal, frozen, ONE, ZERO } from '../../numbers/index.js';
import { mapEnds, unitsByKind, type Estimate, type FractionInput } from '../../quantities/index.js';
import type { RecipeParts } from '../../recipe/readParts.js';
import { inWords } from '../figures.js';
import type { Finding, FindingCode } from '../finding.js';
import type { FindingValue } from '../findingValue.js';
import { isCertificateContradicted } from './contradictedFats.js';
import { molIn, type Pot, type PotLye } from '../pot.js';
import { printedQuantity } from '../printed.js';

/** What is said of a lye that is too much or too little asks how much would be right. */
const ABOUT_LYE: readonly FindingCode[] = [
  'free-caustic-above-limit', 'free-caustic-above-limit-at-leanest-lot', 'free-caustic-below-limit',
  'free-caustic-hangs-on-assay', 'superfat-contradicted', 'target-missed', 'much-fat-left',
]; // prettier-ignore

/** What a recipe wants its lye to leave of the fats. */
interface Wanted {
  /** Share of the fats that is to stay without alkali, as a fraction of one; none where nothing is printed. */
  readonly superfat: Decimal;
  readonly words: string | undefined;
}

export const isAboutLye = ({ code }: Finding): boolean => ABOUT_LYE.includes(code);

/** Adds to a finding about the mass of the lye how much of it would be right: as a value, and in words where they are not said yet. */
export function withRightLye(finding: Finding, pot: Pot, parts: RecipeParts, isSaid: boolean): Finding {
  const needed = neededBy(pot);
  if (needed === undefined) return finding;
  const wanted = wantedBy(parts);
  const right = mapEnds(needed, (mol) => mol.times(ONE.minus(wanted.superfat)));
  const lye = { ...lyeFor(pot, right), leanest: lyeFor(pot, needed).leanest };
  const isAboveLeanest = right.likely.gt(needed.low);
  return {
    ...finding,
    values: frozen({ ...finding.values, lye: lye.value }),
    explanation: isSaid ? finding.explanation : `${finding.explanation} ${advice(wanted, lye, isAboveLeanest)}`,
  };
}

function advice({ words }: Wanted, { text, likely, leanest }: LyeFor, isAboveLeanest: boolean): string {
  if (words === undefined)
    return `At most ${leanest} is what even the leanest lots within the published ranges take up.`;
  const ofLeanest = isAboveLeanest ? ` The leanest of these lots take up no more than ${leanest}.` : '';
  return `For the ${words}, ${text} would be right, depending on the lots within the published ranges; likely ${likely}.${ofLeanest}`;
}

/** Hydroxide that the fats take up, mol, over their lots. */
function neededBy({ fats, lye, charged, balance }: Pot): Estimate<Decimal> | undefined {
  if (balance === undefined || charged.low.lte(0) || lye.length === 0) return undefined;
  // of values that nothing published bears out no lye is recommended
  if (fats.some(({ fat, isKnown }) => !isKnown || fat === undefined || isCertificateContradicted(fat)))
    return undefined;
  const at = (end: keyof Estimate<unknown>): Decimal =>
    fats.reduce((sum, { demand }) => sum.plus(demand?.[end] ?? ZERO), ZERO);
  return { low: at('low'), likely: at('likely'), high: at('high') };
}

function wantedBy({ claimed, target }: RecipeParts): Wanted {
  const of = (claim: FractionInput | undefined, words: string): Wanted[] => {
    if (claim === undefined) return [];
    const { value } = printedQuantity(claim, unitsByKind().fraction);
    // less than nothing left is no aim to help anybody to
    return value.isNeg() || value.gte(100)
      ? []
      : [{ superfat: value.div(100), words: `superfat of ${inWords(value)} % that it ${words}` }];
  };
  const [wanted] = [...of(claimed.superfat, 'claims'), ...of(target?.superfat, 'aims at')];
  return wanted ?? { superfat: ZERO, words: undefined };
}

/** A lye in the unit it is printed in, or as a multiple of all of it, rounded down. */
interface LyeFor {
  readonly value: FindingValue;
  readonly text: string;
  readonly likely: string;
  /** All that the leanest lots take up. */
  readonly leanest: string;
}

function lyeFor({ lye }: Pot, mol: Estimate<Decimal>): LyeFor {
  const [row] = lye;
  if (row !== undefined && lye.length === 1) return gramsFor(row, mol);
  const held = (end: keyof Estimate<unknown>): Decimal =>
    lye.reduce((sum, one) => sum.plus(molIn(one, one.grams.value, end)), ZERO);
  const of = {
    low: mol.low.div(held('high')),
    likely: mol.likely.div(held('likely')),
    high: mol.high.div(held('low')),
  };
  const times = mapEnds(of, down);
  return {
    value: mapEnds(times, (number) => frozen({ number })),
    text: `all of the lye times ${range(times)}`,
    likely: inWords(times.likely),
    leanest: `all of the lye times ${inWords(times.low)}`,
  };
}

function gramsFor({ alkali, charge, grams: { unit } }: PotLye, mol: Estimate<Decimal>): LyeFor {
  const { low, likely, high } = charge.source.hydroxide;
  // the strongest assay needs least
  const shares = { low: high, likely, high: low };
  const { fromCanonical } = unitsByKind().mass[unit as 'g'];
  const grams = mapEnds(mol, (one) => one.times(hydroxideMolarMass(alkali)));
  const at = (end: keyof Estimate<unknown>): Decimal => down(fromCanonical(grams[end].div(shares[end]), unit));
  const mass = { low: at('low'), likely: at('likely'), high: at('high') };
  return {
    value: mapEnds(mass, (figure) => frozen({ [unit]: figure })) as FindingValue,
    text: `${range(mass)} ${unit} of this lye`,
    likely: `${inWords(mass.likely)} ${unit}`,
    leanest: `${inWords(mass.low)} ${unit} of this lye`,
  };
}

/** To three digits, and never more than it is. */
const down = (figure: Decimal): Decimal => figure.toSignificantDigits(3, Decimal.ROUND_DOWN);

const range = ({ low, high }: Estimate<Decimal>): string =>
  low.eq(high) ? inWords(low) : `${inWords(low)} to ${inWords(high)}`;
