import {
  inciProvenance,
  publishedFatRecords,
  type Characteristic,
  type LimitedQuantity,
  type Obtained,
  type PublishedFatRecord,
} from '../fats/data/publishedFatRecords.js';
import { publishedFats, type PublishedFat } from '../fats/data/publishedFats.js';
import { publishedFat, readFat, type Fat, type PublishedFatId } from '../fats/index.js';
import type { FattyAcid } from '../chemistry/index.js';
import { Decimal, frozen } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';

/** One figure, or pair of limits, of a published fat, with where it is from. */
export interface PublishedCell {
  /** What the figure is of: a lipid number, or the name of the quantity. */
  readonly of: FattyAcid | LimitedQuantity | 'relativeDensity' | 'refractiveIndex' | 'titre';
  /** Lower limit; null where the publication sets none. */
  readonly low: Decimal | null;
  /** Upper limit; null where the publication sets none. */
  readonly high: Decimal | null;
  /** Unit of both. */
  readonly unit: string;
  /** Conditions as printed, where there are any. */
  readonly conditions?: string;
  readonly source: SourceId;
  /** Read in the publication or a restatement of it, recalled, or worked out from figures read. */
  readonly obtained: Obtained;
}

/** Everything on file of a published fat. */
export interface PublishedRecord {
  readonly id: PublishedFatId;
  readonly name: string;
  /** The plant or animal, and the part of it. */
  readonly origin: string;
  /** Every figure by itself, with its publication and how it was obtained. */
  readonly cells: readonly PublishedCell[];
  /** Ingredient names of the fat and of its sodium soap; all recalled. */
  readonly inciNames?: {
    readonly fat: string;
    readonly sodiumSoap?: string;
    readonly source: SourceId;
    readonly obtained: Obtained;
  };
  /** Other standards' figures, observed values, misprints and doubts, in words. */
  readonly notes: readonly string[];
}

const LIMITED = ['saponificationValue', 'acidValue', 'iodineValue', 'unsaponifiable'] as const;
const UNITS = {
  saponificationValue: 'mg KOH/g',
  observedSaponificationValue: 'mg KOH/g',
  acidValue: 'mg KOH/g',
  iodineValue: 'g I2/100 g',
  unsaponifiable: 'percent',
} as const;

/**
 * The published record of a fat, cell by cell: each limit with its publication and whether it was read or recalled.
 *
 * @param of - a name as for `fat`, or a published fat itself
 * @returns figures as printed, in the unit each states
 * @throws CalculationError `unknown-fat`, with a suggestion where a name comes close; the faults of a fat
 *
 * @example
 * ```ts
 * const { cells } = publishedRecordOf('coconut-oil');
 * const value = cells.find((cell) => cell.of === 'saponificationValue');
 * [value?.low, value?.high, value?.source, value?.obtained]; // => ['248', '265', 'codex-cxs-210-2024', 'read']
 * ```
 */
export function publishedRecordOf(of: string | Fat): PublishedRecord {
  const published = publishedFat('fat', typeof of === 'object' ? readFat(of).id : of);
  // a published fat goes by an id of the table
  const id = published.id as PublishedFatId;
  const record = publishedFatRecords[id];
  const figures = publishedFats()[id];
  return frozen({
    id,
    name: published.name,
    origin: record.origin,
    cells: frozen([
      ...profileCells(figures, record),
      ...LIMITED.flatMap((of) => limitCells(of, figures, record)),
      ...observedCells(figures, record),
      ...characteristicCells(record),
    ]),
    ...(record.inciNames === undefined ? {} : { inciNames: frozen({ ...record.inciNames, ...inciProvenance }) }),
    notes: frozen([...record.notes]),
  });
}

const limit = (value: number | null): Decimal | null => (value === null ? null : new Decimal(value));

function cell(
  of: PublishedCell['of'],
  low: number | null,
  high: number | null,
  unit: string,
  source: SourceId,
  obtained: Obtained,
): PublishedCell {
  return frozen({ of, low: limit(low), high: limit(high), unit, source, obtained });
}

function profileCells(
  { profile }: PublishedFat,
  { profile: provenance }: PublishedFatRecord,
): readonly PublishedCell[] {
  if (profile === undefined || provenance === undefined) return [];
  const limits = [
    ...(Object.entries(profile) as [FattyAcid, readonly [number, number]][]),
    ...(provenance.notDetected ?? []).map((acid) => [acid, [0, 0]] as const),
  ];
  return limits.map(([acid, [low, high]]) => {
    const { source, obtained } = provenance.exceptions?.find(({ acids }) => acids.includes(acid)) ?? provenance;
    return cell(acid, low, high, 'percent of fatty acids', source, obtained);
  });
}

/** A limit without a word on how it was obtained counts as recalled. */
function obtainedOf(record: PublishedFatRecord, of: LimitedQuantity, source: SourceId): Obtained {
  return record.limits[of]?.[source] ?? 'memory';
}

function limitCells(
  of: (typeof LIMITED)[number],
  figures: PublishedFat,
  record: PublishedFatRecord,
): readonly PublishedCell[] {
  return (figures[of] ?? []).map(([low, high, source]) =>
    cell(of, low, high, UNITS[of], source, obtainedOf(record, of, source)),
  );
}

function observedCells(
  { observedSaponificationValue: observed }: PublishedFat,
  record: PublishedFatRecord,
): readonly PublishedCell[] {
  if (observed === undefined) return [];
  const [value, source] = observed;
  const of = 'observedSaponificationValue';
  return [cell(of, value, value, UNITS[of], source, obtainedOf(record, of, source))];
}

function characteristicCells({
  relativeDensity,
  refractiveIndex,
  titre,
}: PublishedFatRecord): readonly PublishedCell[] {
  const one = (
    of: PublishedCell['of'],
    unit: string,
    printed: Characteristic | undefined,
  ): readonly PublishedCell[] => {
    if (printed === undefined) return [];
    const { low, high, conditions, source, obtained } = printed;
    return [
      frozen({ ...cell(of, low, high, unit, source, obtained), ...(conditions === undefined ? {} : { conditions }) }),
    ];
  };
  return [
    ...one('relativeDensity', 'relative to water', relativeDensity),
    ...one('refractiveIndex', 'none', refractiveIndex),
    ...one('titre', '°C', titre),
  ];
}
