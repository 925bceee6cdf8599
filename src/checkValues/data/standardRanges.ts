import { fats, type FatListing, type SaponificationValueFromProfileInput } from '../../fats/index.js';
import { publishedRecordOf, type PublishedCell } from '../../reports/index.js';
import type { SourceId } from '../../sources/index.js';
import type { CheckValue } from '../checkValue.js';

/** Values that a profile gives and standards limit; the acid value of a free fatty acid is its saponification value. */
const SLUGS = {
  saponificationValue: 'saponification-value',
  acidValue: 'acid-value',
  iodineValue: 'iodine-value',
} as const;

/** A published range of one value. */
export interface Limits {
  readonly of: keyof typeof SLUGS;
  readonly low: string | null;
  readonly high: string | null;
  readonly source: SourceId;
  readonly obtained: CheckValue['obtained'];
}

/** Read in the same table of the standard, but not on the record of the fat, which works from its profile. */
const FURTHER: Readonly<Record<string, readonly Limits[]>> = {
  'babassu-oil': [
    { of: 'saponificationValue', low: '245', high: '256', source: 'codex-cxs-210-2024', obtained: 'read' },
    { of: 'iodineValue', low: '10', high: '18', source: 'codex-cxs-210-2024', obtained: 'read' },
  ],
};

/**
 * The value worked out from the profile of each published fat, inside each published range of that value.
 *
 * The rows are made from the record of the fat, not typed again. They are a check all the same: profile and ranges are
 * separate columns of the standards, and the functions tested are given the profile only. Unsaponifiable matter is
 * left out, so a value may run high. Iodine values of profiles without a double bond are passed over: zero checks
 * nothing.
 */
export function standardRangeChecks(): readonly CheckValue[] {
  return fats.flatMap(checksOf);
}

function checksOf(listing: FatListing): readonly CheckValue[] {
  const { id, kind } = listing;
  const { cells } = publishedRecordOf(id);
  const published = publishedProfileOf(id);
  if (kind === 'rosin' || published === undefined) return [];
  const { profile } = published;
  const limits = publishedLimitsOf(id);
  const about = (of: Limits['of']): readonly CheckValue[] =>
    limits.filter((each) => each.of === of).map((each, index) => rangeCheck(listing, index, each, { kind, profile }));
  return [
    ...about('saponificationValue'),
    ...(kind === 'free-fatty-acid' ? about('acidValue') : []),
    ...(cells.some(isUnsaturated) ? about('iodineValue') : []),
  ];
}

/** Every published range of the values of a fat. */
export function publishedLimitsOf(id: string): readonly Limits[] {
  return [...publishedRecordOf(id).cells.flatMap(limitsIn), ...(FURTHER[id] ?? [])];
}

function isShare({ unit }: PublishedCell): boolean {
  return unit === 'percent of fatty acids';
}

function isUnsaturated(cell: PublishedCell): boolean {
  return isShare(cell) && cell.high?.gt(0) === true && !/:0\b/.test(cell.of);
}

type Profile = SaponificationValueFromProfileInput['profile'];

/** The published limits of the fatty acids of a fat, and the publication of the first of them. */
export function publishedProfileOf(id: string): { readonly profile: Profile; readonly source: SourceId } | undefined {
  const shares = publishedRecordOf(id).cells.filter(isShare);
  const [first] = shares;
  if (first === undefined) return undefined;
  const profile = Object.fromEntries(shares.map(({ of, low, high }) => [of, { low: text(low), high: text(high) }]));
  return { profile, source: first.source };
}

function limitsIn({ of, low, high, source, obtained }: PublishedCell): readonly Limits[] {
  if (of !== 'saponificationValue' && of !== 'acidValue' && of !== 'iodineValue') return [];
  return [{ of, low: text(low), high: text(high), source, obtained }];
}

function rangeCheck(
  { id, name }: FatListing,
  index: number,
  { of, low, high, source, obtained }: Limits,
  inputs: SaponificationValueFromProfileInput,
): CheckValue {
  const row = {
    id: `${id}-${SLUGS[of]}-${String(index + 1)}`,
    inputs,
    printed: `${low ?? ''}-${high ?? ''}`,
    expectedRange: [low, high] as const,
    why: 'the value worked out from the published profile lies inside the published range',
    source,
    where: `${name}, ${SLUGS[of].replace('-', ' ')}`,
    obtained,
  };
  return of === 'iodineValue'
    ? { ...row, call: 'iodineValueFromProfile', result: 'iodineValue.likely', unit: 'gI2Per100g' }
    : { ...row, call: 'saponificationValueFromProfile', result: 'saponificationValue.likely', unit: 'mgKohPerG' };
}

function text(limit: PublishedCell['low']): string | null {
  return limit === null ? null : limit.toString();
}
