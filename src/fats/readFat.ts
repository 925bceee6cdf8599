import {
  frozen,
  readFields,
  readList,
  readShape,
  readText,
  readWord,
  refuse,
  ZERO,
  type Remark,
} from '../numbers/index.js';
import {
  mapEstimate,
  readIodineValue,
  readPercent,
  readRanged,
  readSaponificationValue,
  readSaponificationValueRange,
  type Estimate,
  type Fraction,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { BlendPart, Fat, FatBlend, SingleFat } from './fat.js';
import { FAT_KINDS } from './fatKind.js';
import { isKnownFat, knownFat } from './knownFat.js';
import { profileInResult, readProfile } from './profile.js';

const SINGLE_KEYS = [
  'id', 'name', 'kind', 'saponificationValue', 'acidValue', 'unsaponifiable', 'moisture', 'iodineValue', 'profile',
  'from', 'notes', 'basis', 'edition',
]; // prettier-ignore
const BLEND_KEYS = ['id', 'name', 'kind', 'saponificationValue', 'parts', 'from', 'notes', 'basis', 'edition'];
const SINGLE_ORIGINS = ['certificate', 'standard', 'observation', 'profile'] as const;

/**
 * Reads a fat back from JSON, or takes one that this library made as it is.
 *
 * Every figure is checked again: a stored fat is input like any other. Its saponification value stays as stored, also
 * under a later edition of the library's figures.
 *
 * @param value - a fat, or `JSON.parse(JSON.stringify(fat))`
 * @param path - where it stands, for errors
 * @returns a frozen fat
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `unknown-acid`, `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const stored = JSON.stringify(fat('castor-oil'));
 * readFat(JSON.parse(stored)).name; // => 'Castor oil'
 * ```
 */
export function readFat(value: unknown, path = 'fat'): Fat {
  if (isKnownFat(value)) return value;
  const { kind } = readFields(
    path,
    value,
    'a fat, as given by fat, fatFromCertificate, fatFromProfile or fatFromBlend',
  );
  return kind === 'blend' ? readBlend(path, value) : readSingle(path, value);
}

function readSingle(path: string, value: unknown): SingleFat {
  const fields = readShape(path, value, SINGLE_KEYS);
  const kind = readWord(`${path}.kind`, fields['kind'], FAT_KINDS);
  const saponificationValue = mapEstimate(
    readSaponificationValueRange(`${path}.saponificationValue`, fields['saponificationValue']),
    (mgKohPerG) => frozen({ mgKohPerG }),
  );
  const acidValue = readSaponificationValue(`${path}.acidValue`, fields['acidValue'], {
    min: 0,
    max: saponificationValue.likely.mgKohPerG.toString(),
  });
  if ((kind === 'free-fatty-acid' || kind === 'rosin') && !acidValue.eq(saponificationValue.likely.mgKohPerG)) {
    refuse(
      'out-of-range',
      `${path}.acidValue`,
      'the saponification value, because this kind is all acid',
      acidValue.toString(),
    );
  }
  const { profile, iodineValue } = fields;
  return knownFat({
    ...readId(path, fields['id']),
    name: readText(`${path}.name`, fields['name']),
    kind,
    saponificationValue,
    acidValue: frozen({ mgKohPerG: acidValue }),
    unsaponifiable: readShares(`${path}.unsaponifiable`, fields['unsaponifiable']),
    moisture: readShares(`${path}.moisture`, fields['moisture']),
    ...(iodineValue === undefined
      ? {}
      : {
          iodineValue: mapEstimate(readRanged(`${path}.iodineValue`, iodineValue, readIodineValue), (gI2Per100g) =>
            frozen({ gI2Per100g }),
          ),
        }),
    ...(profile === undefined ? {} : { profile: profileInResult(readProfile(`${path}.profile`, profile).rows) }),
    from: readWord(`${path}.from`, fields['from'], SINGLE_ORIGINS),
    ...readOrigin(path, fields),
  });
}

function readBlend(path: string, value: unknown): FatBlend {
  const fields = readShape(path, value, BLEND_KEYS);
  const parts = readList(`${path}.parts`, fields['parts']).map((entry, at): BlendPart => {
    const here = `${path}.parts[${String(at)}]`;
    const part = readShape(here, entry, ['fat', 'share']);
    const fat = readFat(part['fat'], `${here}.fat`);
    if (fat.kind === 'blend') return refuse('bad-shape', `${here}.fat`, 'a single fat', 'a blend');
    return frozen({ fat, share: frozen({ percent: readPercent(`${here}.share`, part['share']) }) });
  });
  const total = parts.reduce((sum, { share }) => sum.plus(share.percent), ZERO);
  if (total.minus(100).abs().gt('1e-20'))
    refuse('out-of-range', `${path}.parts`, 'shares that sum to 100', total.toString());
  return knownFat({
    ...readId(path, fields['id']),
    name: readText(`${path}.name`, fields['name']),
    kind: 'blend',
    from: 'blend',
    saponificationValue: mapEstimate(
      readSaponificationValueRange(`${path}.saponificationValue`, fields['saponificationValue']),
      (mgKohPerG) => frozen({ mgKohPerG }),
    ),
    parts: frozen(parts),
    ...readOrigin(path, fields),
  });
}

function readId(path: string, id: unknown): { readonly id?: string } {
  return id === undefined ? {} : { id: readText(`${path}.id`, id) };
}

function readShares(path: string, value: unknown): Estimate<Fraction> {
  return mapEstimate(
    readRanged(path, value, (at, part) => readPercent(at, part)),
    (percent) => frozen({ percent }),
  );
}

function readOrigin(path: string, fields: Readonly<Record<string, unknown>>): Pick<Fat, 'notes' | 'basis' | 'edition'> {
  const texts = (at: string, value: unknown): readonly unknown[] =>
    Array.isArray(value) ? (value as readonly unknown[]) : refuse('bad-shape', at, 'a list', value);
  return {
    notes: frozen(
      texts(`${path}.notes`, fields['notes']).map((note, at): Remark => {
        const here = `${path}.notes[${String(at)}]`;
        const { code, text } = readShape(here, note, ['code', 'text']);
        return frozen({ code: readText(`${here}.code`, code), text: readText(`${here}.text`, text, 1000) });
      }),
    ),
    basis: frozen(
      // a source of another edition is kept by name, though this bibliography may not list it
      texts(`${path}.basis`, fields['basis']).map((id, at) => readText(`${path}.basis[${String(at)}]`, id) as SourceId),
    ),
    edition: fields['edition'] === undefined ? EDITION : readText(`${path}.edition`, fields['edition']),
  };
}
