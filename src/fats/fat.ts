import { asWritten, Decimal, frozen, refuse, ZERO, type Remark } from '../numbers/index.js';
import { mapEnds, type Estimate, type IodineValue, type SaponificationValue } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { FatListing, PublishedFatId } from './data/fatNames.js';
import { publishedFats, type PublishedFat, type PublishedLimits } from './data/publishedFats.js';
import { isAllAcid } from './fatKind.js';
import type { SingleFat } from './fatType.js';
import { iodineValueOfProfile } from './iodineValueFromProfile.js';
import { knownFat } from './knownFat.js';
import { nearFats } from './nearFats.js';
import * as notes from './notes.js';
import { profileInResult, readProfile, type ProfileRow } from './profile.js';
import { listingOf } from './publishedNames.js';
import { unionOf, type ClosedRange } from './publishedRanges.js';
import { spreadOf } from './saponificationValueBounds.js';
import {
  NO_UNSAPONIFIABLE,
  saponificationValueOfProfile,
  unsaponifiableInResult,
} from './saponificationValueFromProfile.js';

const CONVENTION: SourceId = 'laurate-convention';

const made = new Map<PublishedFatId, SingleFat>();

/**
 * A published fat, by its id, its name or a synonym of the trade.
 *
 * Its figures are limits of published standards: a lot inside any of them is lawful, so the bounds are the union of all.
 * Capitals and punctuation do not matter. Free acid counts as none in glycerides, which changes no lye amount.
 *
 * @param idOrSynonym - as `'coconut-oil'`, `'Coconut oil'` or `'copra oil'`
 * @returns a frozen fat: saponification value in mg KOH/g, iodine value in g I2/100 g, shares in percent by mass
 * @throws CalculationError `unknown-fat`, with a suggestion where a name comes close
 *
 * @example
 * ```ts
 * const { likely } = fat('coconut-oil').saponificationValue;
 * likely.mgKohPerG.toFixed(1); // => '252.3'
 * ```
 */
export function fat(idOrSynonym: PublishedFatId | (string & {})): SingleFat {
  return publishedFat('fat', idOrSynonym);
}

/** The same, with the path of the name for the error. */
export function publishedFat(path: string, idOrSynonym: unknown): SingleFat {
  const listing = typeof idOrSynonym === 'string' ? listingOf(idOrSynonym) : undefined;
  if (listing === undefined)
    return refuse(
      'unknown-fat',
      path,
      `the id or a name of a published fat${nearFats(idOrSynonym)}`,
      asWritten(idOrSynonym),
    );
  const kept = made.get(listing.id);
  if (kept !== undefined) return kept;
  const fresh = fromPublished(listing, publishedFats()[listing.id]);
  made.set(listing.id, fresh);
  return fresh;
}

function fromPublished(listing: FatListing, row: PublishedFat): SingleFat {
  const { id, name, kind } = listing;
  const rows = row.profile === undefined ? undefined : readProfile('profile', rangesOf(row.profile)).rows;
  const unsaponifiable = unsaponifiableOf(row);
  const value = valueOf(listing, row, rows, unsaponifiable);
  const acid = acidValueOf(listing, row, value.estimate);
  return knownFat({
    id,
    name,
    kind,
    saponificationValue: value.estimate,
    acidValue: acid.value,
    unsaponifiable: unsaponifiableInResult(unsaponifiable),
    moisture: mapEnds({ low: ZERO, likely: ZERO, high: ZERO }, (percent) => frozen({ percent })),
    ...iodineValueOf(listing, row, rows),
    ...(rows === undefined ? {} : { profile: profileInResult(rows) }),
    from: value.from,
    notes: frozen([...value.notes, ...acid.notes, ...(row.unsaponifiable === undefined ? [NO_UNSAPONIFIABLE] : [])]),
    basis: basisOf(row, value.notes),
    edition: EDITION,
  });
}

function rangesOf(profile: NonNullable<PublishedFat['profile']>): Record<string, { low: number; high: number }> {
  return Object.fromEntries(Object.entries(profile).map(([id, [low, high]]) => [id, { low, high }]));
}

/** Fractions of one: the lowest limit, half the highest (a convention), the highest. */
function unsaponifiableOf({ unsaponifiable }: PublishedFat): Estimate<Decimal> {
  if (unsaponifiable === undefined) return frozen({ low: ZERO, likely: ZERO, high: ZERO });
  const high = Decimal.max(...unsaponifiable.map(([, maximum]) => maximum)).div(100);
  const low = Decimal.min(...unsaponifiable.map(([least]) => least ?? 0)).div(100);
  return frozen({ low, likely: Decimal.max(high.div(2), low), high });
}

interface Value {
  readonly estimate: Estimate<SaponificationValue>;
  readonly from: 'standard' | 'observation' | 'profile';
  readonly notes: readonly Remark[];
}

function valueOf(
  { kind }: FatListing,
  row: PublishedFat,
  rows: readonly ProfileRow[] | undefined,
  unsaponifiable: Estimate<Decimal>,
): Value {
  const exact =
    rows === undefined || kind === 'rosin'
      ? undefined
      : saponificationValueOfProfile(rows, kind, unsaponifiable).saponificationValue;
  // a free acid's acid value is its saponification value, so that its limits count with the others
  const limits = [...(row.saponificationValue ?? []), ...(kind === 'free-fatty-acid' ? (row.acidValue ?? []) : [])];
  const bounds = unionOf(limits);
  if (bounds !== undefined) return withinBounds(bounds, exact?.likely.mgKohPerG, unsaponifiable);
  if (row.observedSaponificationValue !== undefined) {
    const likely = frozen({ mgKohPerG: new Decimal(row.observedSaponificationValue[0]) });
    return { estimate: spreadOf(likely), from: 'observation', notes: [notes.SPREAD_CONVENTION] };
  }
  if (exact === undefined) return refuse('missing', 'fat', 'a saponification value or a profile on file', 'neither');
  return { estimate: spreadOf(exact.likely, exact), from: 'profile', notes: [notes.SPREAD_CONVENTION] };
}

function withinBounds(
  { low, high }: { readonly low: Decimal; readonly high: Decimal },
  fromProfile: Decimal | undefined,
  unsaponifiable: Estimate<Decimal>,
): Value {
  const likely = fromProfile === undefined ? low.plus(high).div(2) : Decimal.min(Decimal.max(fromProfile, low), high);
  const said: Remark[] = [];
  if (fromProfile === undefined) said.push(notes.MIDDLE_OF_RANGE);
  else if (!unsaponifiable.high.isZero()) said.push(notes.HALF_UNSAPONIFIABLE);
  if (fromProfile !== undefined && !likely.eq(fromProfile)) {
    said.push(notes.disagreement(fromProfile.toFixed(1), low.toString(), high.toString()));
  }
  return {
    estimate: mapEnds({ low, likely, high }, (mgKohPerG) => frozen({ mgKohPerG })),
    from: 'standard',
    notes: said,
  };
}

/**
 * The published range where there is one, its likely value from the profile; else the profile's own, wide enough for what a
 * standard limits on one side only: stearic acid may have an iodine value of 4, though no acid of its profile takes any up.
 */
function iodineValueOf(
  { kind }: FatListing,
  row: PublishedFat,
  rows: readonly ProfileRow[] | undefined,
): { readonly iodineValue?: Estimate<IodineValue> } {
  const exact = rows === undefined || kind === 'rosin' ? undefined : iodineValueOfProfile(rows, kind);
  const limits = row.iodineValue ?? [];
  const bounds = unionOf(limits) ?? (exact === undefined ? undefined : widened(exact, limits));
  if (bounds === undefined) return {};
  const { low, high } = bounds;
  const likely =
    exact === undefined ? low.plus(high).div(2) : Decimal.min(Decimal.max(exact.likely.gI2Per100g, low), high);
  return { iodineValue: mapEnds({ low, likely, high }, (gI2Per100g) => frozen({ gI2Per100g })) };
}

function widened({ low, high }: Estimate<IodineValue>, limits: readonly PublishedLimits[]): ClosedRange {
  return {
    low: Decimal.min(low.gI2Per100g, ...limits.flatMap(([least]) => least ?? [])),
    high: Decimal.max(high.gI2Per100g, ...limits.flatMap(([, most]) => most ?? [])),
  };
}

function acidValueOf(
  { kind }: FatListing,
  { acidValue }: PublishedFat,
  saponification: Estimate<SaponificationValue>,
): { readonly value: SaponificationValue; readonly notes: readonly Remark[] } {
  if (isAllAcid(kind)) return { value: saponification.likely, notes: [] };
  const bounds = kind === 'wax-ester' ? unionOf(acidValue ?? []) : undefined;
  if (bounds === undefined) return { value: frozen({ mgKohPerG: ZERO }), notes: [notes.NO_FREE_ACID] };
  return { value: frozen({ mgKohPerG: bounds.low.plus(bounds.high).div(2) }), notes: [notes.MIDDLE_ACID_VALUE] };
}

function basisOf(row: PublishedFat, said: readonly Remark[]): readonly SourceId[] {
  const limits = [...(row.saponificationValue ?? []), ...(row.acidValue ?? [])].map(([, , source]) => source);
  return frozen([
    ...new Set<SourceId>([
      ...limits,
      ...(row.observedSaponificationValue === undefined ? [] : [row.observedSaponificationValue[1]]),
      ...(row.profileSource ?? []),
      ...(row.unsaponifiable ?? []).map(([, , source]) => source),
      'iupac-2021',
      ...(said.includes(notes.SPREAD_CONVENTION) || said.includes(notes.HALF_UNSAPONIFIABLE) ? [CONVENTION] : []),
    ]),
  ]);
}
