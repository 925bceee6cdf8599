import { frozen, readShape, readText, readWord, refuse, ZERO, type Decimal, type Remark } from '../numbers/index.js';
import {
  mapEnds,
  readIodineValue,
  readPercent,
  readQuantity,
  readRanged,
  readSaponificationValueRange,
  saponificationValueUnits,
  type Estimate,
  type Fraction,
  type FractionInput,
  type IodineValue,
  type IodineValueInput,
  type OneUnit,
  type Ranged,
  type SaponificationValue,
  type SaponificationValueInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { iodineContradictions, valueContradictions } from './contradictions.js';
import type { Fat, SingleFat } from './fatType.js';
import { FAT_KINDS, isAllAcid, type FatKind } from './fatKind.js';
import { knownFat } from './knownFat.js';
import { ALL_ACID, MIDDLE_ACID_VALUE, NO_FREE_ACID, NO_UNCERTAINTY } from './notes.js';
import { readFat } from './readFat.js';

/** An uncertainty of a saponification value; an equivalent is no unit for it, because it runs the other way. */
export type SaponificationValueUncertainty = OneUnit<'mgKohPerG' | 'gKohPerG' | 'gNaohPerG'>;

/** Input of {@link fatFromCertificate}. */
export interface FatFromCertificateInput {
  readonly name: string;
  /** The published fat it is a lot of: kind, profile and unsaponifiable matter come from there unless given. */
  readonly like?: Fat;
  /** What it is chemically; needed without `like`. */
  readonly kind?: FatKind;
  /** As certified: one value, or the range of a specification. */
  readonly saponificationValue: Ranged<SaponificationValueInput>;
  /** Half-width of the interval about a single value. */
  readonly uncertainty?: SaponificationValueUncertainty;
  /** Free acid; a range counts as its middle. */
  readonly acidValue?: Ranged<SaponificationValueInput>;
  readonly iodineValue?: Ranged<IodineValueInput>;
  /** Unsaponifiable matter, share of the fat by mass. */
  readonly unsaponifiable?: Ranged<FractionInput>;
  /** Water in the fat, share by mass. */
  readonly moisture?: Ranged<FractionInput>;
}

const KEYS = [
  'name',
  'like',
  'kind',
  'saponificationValue',
  'uncertainty',
  'acidValue',
  'iodineValue',
  'unsaponifiable',
  'moisture',
];

/**
 * A lot of fat by its certificate of analysis.
 *
 * The certified saponification value, with its uncertainty, takes the place of the published range. Without `like` the
 * kind must be given; with it, what the certificate leaves out comes from that fat. A certified value outside what is
 * published of the fat (by `like` or by its name), or of any triglyceride, stands in the notes, and with every lye that
 * is worked out from it as a caution.
 *
 * @param input - name, certified figures: saponification and acid value in any unit that names its basis, iodine value
 *   in g I2/100 g, unsaponifiable matter and moisture as shares by mass
 * @returns a frozen fat: saponification value in mg KOH/g
 * @throws CalculationError `missing`, `out-of-range` (an acid value above the saponification value among them),
 *   `bad-shape` and the faults of a quantity
 *
 * @example
 * ```ts
 * const lot = fatFromCertificate({
 *   name: 'Coconut oil, drum 7',
 *   like: fat('coconut-oil'),
 *   saponificationValue: { mgKohPerG: '256.4' },
 *   uncertainty: { mgKohPerG: 1 },
 * });
 * lot.saponificationValue.low; // => { mgKohPerG: '255.4' }
 * ```
 */
export function fatFromCertificate(input: FatFromCertificateInput): SingleFat {
  const fields = readShape('input', input, KEYS);
  const name = readText('name', fields['name']);
  const like = readLike(fields['like']);
  const kind = like !== undefined && fields['kind'] === undefined ? like.kind : readKind(fields['kind']);
  const { value, notes } = readCertified(fields['saponificationValue'], fields['uncertainty']);
  const acid = readAcidValue(kind, fields['acidValue'], value, like);
  const certifiedIodine = readIodineValues(fields['iodineValue']);
  const iodineValue = certifiedIodine ?? like?.iodineValue;
  const against = [...valueContradictions(value, { kind, like }), ...iodineContradictions(certifiedIodine, like)];
  return knownFat(
    {
      name,
      kind,
      saponificationValue: value,
      acidValue: acid.value,
      unsaponifiable: readShareOr('unsaponifiable', fields['unsaponifiable'], like?.unsaponifiable),
      moisture: readShareOr('moisture', fields['moisture'], like?.moisture),
      ...(iodineValue === undefined ? {} : { iodineValue }),
      ...(like?.profile === undefined ? {} : { profile: like.profile }),
      from: 'certificate',
      notes: frozen([...notes, ...against, ...acid.notes]),
      basis: frozen<readonly SourceId[]>([...new Set<SourceId>(['iupac-2021', ...(like?.basis ?? [])])]),
      edition: EDITION,
    },
    'uncertainty',
  );
}

function readKind(value: unknown): FatKind {
  if (value === undefined) {
    const kinds = FAT_KINDS.join(', ');
    refuse(
      'missing',
      'kind',
      `\`like\`, a published fat that it resembles (then its values are checked), or \`kind\`: one of ${kinds}`,
      'neither',
    );
  }
  return readWord('kind', value, FAT_KINDS);
}

function readLike(value: unknown): SingleFat | undefined {
  if (value === undefined) return undefined;
  const like = readFat(value, 'like');
  return like.kind === 'blend' ? refuse('bad-shape', 'like', 'a single fat', 'a blend') : like;
}

interface Certified {
  readonly value: Estimate<SaponificationValue>;
  readonly notes: readonly Remark[];
}

function readCertified(value: unknown, uncertainty: unknown): Certified {
  const read = readSaponificationValueRange('saponificationValue', value);
  const single = read.low.eq(read.high);
  if (!single && uncertainty !== undefined) {
    refuse('bad-shape', 'uncertainty', 'either a range or a value with its uncertainty', 'both');
  }
  const half =
    uncertainty === undefined ? ZERO : readQuantity('uncertainty', uncertainty, linearUnits(), { min: 0, max: 100 });
  const ends = { low: read.low.minus(half), likely: read.likely, high: read.high.plus(half) };
  return {
    value: mapEnds(ends, (mgKohPerG) => frozen({ mgKohPerG })),
    notes: single && uncertainty === undefined ? [NO_UNCERTAINTY] : [],
  };
}

function linearUnits(): Pick<typeof saponificationValueUnits, 'mgKohPerG' | 'gKohPerG' | 'gNaohPerG'> {
  const { mgKohPerG, gKohPerG, gNaohPerG } = saponificationValueUnits;
  return { mgKohPerG, gKohPerG, gNaohPerG };
}

interface AcidValue {
  readonly value: SaponificationValue;
  readonly notes: readonly Remark[];
}

function readAcidValue(
  kind: FatKind,
  value: unknown,
  saponification: Estimate<SaponificationValue>,
  like: SingleFat | undefined,
): AcidValue {
  if (value === undefined) {
    if (isAllAcid(kind)) return { value: saponification.likely, notes: [] };
    const other = like?.kind === kind ? like.acidValue.mgKohPerG : ZERO;
    if (other.isZero()) return { value: frozen({ mgKohPerG: ZERO }), notes: [NO_FREE_ACID] };
    return { value: withinSaponification(other, saponification), notes: [] };
  }
  const read = readSaponificationValueRange('acidValue', value, { min: 0, max: 700 });
  if (isAllAcid(kind)) return { value: saponification.likely, notes: [ALL_ACID] };
  return {
    value: withinSaponification(read.likely, saponification),
    notes: read.low.eq(read.high) ? [] : [MIDDLE_ACID_VALUE],
  };
}

/** No lot may hold more acid than its saponification value. */
function withinSaponification(acid: Decimal, { low }: Estimate<SaponificationValue>): SaponificationValue {
  if (acid.gt(low.mgKohPerG)) {
    refuse(
      'out-of-range',
      'acidValue',
      `at most the saponification value, ${low.mgKohPerG.toString()} mgKohPerG`,
      acid.toString(),
    );
  }
  return frozen({ mgKohPerG: acid });
}

function readIodineValues(value: unknown): Estimate<IodineValue> | undefined {
  if (value === undefined) return undefined;
  return mapEnds(readRanged('iodineValue', value, readIodineValue), (gI2Per100g) => frozen({ gI2Per100g }));
}

function readShareOr(path: string, value: unknown, other: Estimate<Fraction> | undefined): Estimate<Fraction> {
  if (value === undefined && other !== undefined) return other;
  const share = value === undefined ? { percent: 0 } : value;
  return mapEnds(
    readRanged(path, share, (at, part) => readPercent(at, part, { min: 0, max: 99 })),
    (percent) => frozen({ percent }),
  );
}
