import { fattyAcidFigures, readFattyAcid, type FattyAcid, type FattyAcidFigures } from '../chemistry/index.js';
import {
  Decimal,
  isDecimal,
  frozen,
  readFields,
  readNumber,
  readShape,
  refuse,
  type Numeric,
  type Remark,
  ONE,
  ZERO,
} from '../numbers/index.js';
import { readPercent, type Estimate, type Fraction, type FractionInput, type Ranged } from '../quantities/index.js';

/**
 * Share of one acid in percent by mass of all fatty acids: a number, a range of numbers, or the same as quantities.
 */
export type AcidShare =
  Numeric | { readonly low: Numeric; readonly likely?: Numeric; readonly high: Numeric } | Ranged<FractionInput>;

/** A fatty-acid profile as a caller gives it: shares of total fatty acids by lipid number. */
export type FattyAcidProfileInput = { readonly [A in FattyAcid]?: AcidShare };

/** A fatty-acid profile in a result: every share with its bounds, percent by mass of all fatty acids. */
export type FattyAcidProfile = { readonly [A in FattyAcid]?: Estimate<Fraction> };

/** A fatty-acid profile as it came, in percent. */
export type GivenProfile = { readonly [A in FattyAcid]?: Ranged<Fraction> };

/** What a profile's shares are percent of. A profile per 100 g of oil sums to less than 100: glycerol takes the rest. */
export type ProfileBasis = '100 g of fatty acids' | '100 g of oil';

/** One acid of a profile as read; shares are fractions of one. */
export interface ProfileRow extends Estimate<Decimal> {
  readonly acid: FattyAcidFigures;
}

/** A profile as read: its likely shares sum to one, and so does some choice inside its bounds. */
export interface ReadProfile {
  readonly rows: readonly ProfileRow[];
  /** The shares as they came, before scaling, in percent. */
  readonly given: GivenProfile;
  readonly notes: readonly Remark[];
}

// A chromatogram misses a little and rounds each share: so far from 100 a point profile is a profile still.
const LEAST_SUM = '0.95';
const GREATEST_SUM = '1.005';
// Of 100 g of oil 92 to 97 g are fatty acids, less what is unsaponifiable.
const LEAST_SUM_OF_OIL = '0.75';

const NOTHING_TO_SAY: readonly Remark[] = /* @__PURE__ */ frozen([]);

interface Share {
  readonly low: Decimal;
  readonly high: Decimal;
  readonly likely?: Decimal;
}

const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null && !isDecimal(value);

const readFraction = (path: string, value: unknown): Decimal =>
  (isObject(value) ? readPercent(path, value) : readNumber(path, value, { min: 0, max: 100 })).div(100);

function readShare(path: string, value: unknown): Share {
  if (isObject(value)) {
    const fields = readFields(path, value);
    if ('low' in fields || 'high' in fields || 'likely' in fields) return readShareRange(path, value);
  }
  const only = readFraction(path, value);
  return { low: only, high: only };
}

function readShareRange(path: string, value: unknown): Share {
  const ends = readShape(path, value, ['low', 'likely', 'high']);
  const low = readFraction(`${path}.low`, ends['low']);
  const high = readFraction(`${path}.high`, ends['high']);
  if (low.gt(high))
    refuse(
      'out-of-range',
      path,
      'low at most as high as high',
      `${low.times(100).toString()} to ${high.times(100).toString()}`,
    );
  if (ends['likely'] === undefined) return { low, high };
  const likely = readFraction(`${path}.likely`, ends['likely']);
  if (likely.lt(low) || likely.gt(high))
    refuse('out-of-range', `${path}.likely`, 'a value from low to high', likely.times(100).toString());
  return { low, high, likely };
}

/**
 * Reads a fatty-acid profile.
 *
 * A point profile that sums to 95-100.5 is scaled to 100 and says so; one declared per 100 g of oil from 75. Ranges need
 * `Σlow <= 100 <= Σhigh`; where no likely share is given it is `low + t·(high − low)` with one t for all such acids, set
 * so that the profile sums to 100: so it never leaves the box.
 *
 * @throws CalculationError `unknown-acid`, `profile-does-not-close`, and the faults of a number
 */
export function readProfile(path: string, value: unknown, per: ProfileBasis = '100 g of fatty acids'): ReadProfile {
  const fields = readFields(path, value, 'a fatty-acid profile');
  const shares = Object.keys(fields)
    .filter((id) => fields[id] !== undefined)
    .map((id) => ({
      acid: fattyAcidFigures(readFattyAcid(`${path}.${id}`, id)),
      share: readShare(`${path}.${id}`, fields[id]),
    }));
  const lows = sum(shares.map(({ share }) => share.low));
  const highs = sum(shares.map(({ share }) => share.high));
  const given = givenProfile(shares);
  if (lows.eq(highs)) return { ...scaledPoints(path, shares, lows, per), given };
  if (per === '100 g of oil')
    refuse('bad-shape', path, 'single shares where they are per 100 g of oil', 'a profile with ranges');
  if (lows.gt(1) || highs.lt(1))
    doesNotClose(path, 'ranges whose lows sum to at most 100 and whose highs to at least 100', lows, highs);
  return { rows: likelyRows(path, shares), given, notes: NOTHING_TO_SAY };
}

function sum(values: readonly Decimal[]): Decimal {
  return values.reduce((total, value) => total.plus(value), ZERO);
}

function doesNotClose(path: string, expected: string, low: Decimal, high: Decimal): never {
  const [from, to] = [low.times(100).toString(), high.times(100).toString()];
  return refuse(
    'profile-does-not-close',
    path,
    expected,
    from === to ? `a sum of ${from}` : `sums of ${from} and ${to}`,
  );
}

type Shares = readonly { readonly acid: FattyAcidFigures; readonly share: Share }[];

function scaledPoints(
  path: string,
  shares: Shares,
  total: Decimal,
  per: ProfileBasis,
): Pick<ReadProfile, 'rows' | 'notes'> {
  const ofOil = per === '100 g of oil';
  const least = ofOil ? LEAST_SUM_OF_OIL : LEAST_SUM;
  if (total.lt(least) || total.gt(GREATEST_SUM)) {
    const from = new Decimal(least).times(100).toString();
    doesNotClose(path, `shares that sum to ${from} to 100.5 percent`, total, total);
  }
  // what was scaled before sums to one but for the last digit
  const isWhole = total.minus(1).abs().lt('1e-28');
  const rows = shares.map(({ acid, share }) => {
    const value = isWhole ? share.low : share.low.div(total);
    return frozen({ acid, low: value, likely: value, high: value });
  });
  if (isWhole) return { rows, notes: NOTHING_TO_SAY };
  const printed = total.times(100).toString();
  const text = ofOil
    ? `The profile is per 100 g of oil and sums to ${printed}; it was scaled to 100 % of the fatty acids.`
    : `The profile sums to ${printed} %; it was scaled to 100 %.`;
  return { rows, notes: frozen([frozen({ code: 'profile-scaled', text })]) };
}

function likelyRows(path: string, shares: Shares): readonly ProfileRow[] {
  const open = shares.filter(({ share }) => share.likely === undefined);
  const openLow = sum(open.map(({ share }) => share.low));
  const openWidth = sum(open.map(({ share }) => share.high)).minus(openLow);
  const rest = ONE.minus(sum(shares.map(({ share }) => share.likely ?? ZERO))).minus(openLow);
  if (rest.lt('-1e-12') || rest.gt(openWidth.plus('1e-12'))) {
    const got = ONE.minus(rest).plus(rest.gt(0) ? openWidth : ZERO);
    doesNotClose(path, 'likely shares that can sum to 100', got, got);
  }
  const t = openWidth.isZero() ? ZERO : Decimal.min(Decimal.max(rest.div(openWidth), ZERO), ONE);
  return shares.map(({ acid, share: { low, high, likely } }) =>
    frozen({ acid, low, likely: likely ?? low.plus(high.minus(low).times(t)), high }),
  );
}

const percent = (value: Decimal): Fraction => frozen({ percent: value.times(100) });

function givenProfile(shares: Shares): GivenProfile {
  return frozen(
    Object.fromEntries(
      shares.map(({ acid, share: { low, likely, high } }) => [
        acid.id,
        frozen({
          low: percent(low),
          ...(likely === undefined ? {} : { likely: percent(likely) }),
          high: percent(high),
        }),
      ]),
    ),
  );
}

/** A profile as it stands in results, in percent. */
export function profileInResult(rows: readonly ProfileRow[]): FattyAcidProfile {
  return frozen(
    Object.fromEntries(
      rows.map(({ acid, low, likely, high }) => [
        acid.id,
        frozen({ low: percent(low), likely: percent(likely), high: percent(high) }),
      ]),
    ),
  );
}
