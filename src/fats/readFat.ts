import { readFattyAcid } from '../chemistry/index.js';
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
  mapEnds,
  readIodineValue,
  readPercent,
  readRanged,
  readSaponificationValue,
  readSaponificationValueRange,
  type Estimate,
  type Fraction,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { blendOf } from './blend.js';
import type { BlendPart, Fat, FatBlend, SingleFat } from './fatType.js';
import { FAT_KINDS, isAllAcid } from './fatKind.js';
import { isKnownFat, knownFat } from './knownFat.js';
import type { FattyAcidProfile } from './profile.js';

const SINGLE_KEYS = [
  'id', 'name', 'kind', 'saponificationValue', 'acidValue', 'unsaponifiable', 'moisture', 'iodineValue', 'profile',
  'from', 'notes', 'basis', 'edition',
]; // prettier-ignore
const BLEND_KEYS = ['id', 'name', 'kind', 'saponificationValue', 'parts', 'from', 'notes', 'basis', 'edition'];
const LONGEST_NAME = 200;
/** A blend puts the name of a fat before its notes. */
const LONGEST_NOTE = 1000;
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
    "a fat, as fat('coconut-oil') or fatFromCertificate gives it, or its parsed JSON",
  );
  return kind === 'blend' ? readBlend(path, value) : readSingle(path, value);
}

function readSingle(path: string, value: unknown): SingleFat {
  const fields = readShape(path, value, SINGLE_KEYS);
  const kind = readWord(`${path}.kind`, fields['kind'], FAT_KINDS);
  const saponificationValue = mapEnds(
    readSaponificationValueRange(`${path}.saponificationValue`, fields['saponificationValue']),
    (mgKohPerG) => frozen({ mgKohPerG }),
  );
  const hasNoEsters = isAllAcid(kind);
  const acidValue = readSaponificationValue(`${path}.acidValue`, fields['acidValue'], {
    min: 0,
    // no lot may hold more acid than its saponification value
    max: (hasNoEsters ? saponificationValue.likely : saponificationValue.low).mgKohPerG.toString(),
  });
  if (hasNoEsters && !acidValue.eq(saponificationValue.likely.mgKohPerG)) {
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
          iodineValue: mapEnds(readRanged(`${path}.iodineValue`, iodineValue, readIodineValue), (gI2Per100g) =>
            frozen({ gI2Per100g }),
          ),
        }),
    ...(profile === undefined ? {} : { profile: readStoredProfile(`${path}.profile`, profile) }),
    from: readWord(`${path}.from`, fields['from'], SINGLE_ORIGINS),
    ...readOrigin(path, fields, LONGEST_NOTE),
  });
}

/** A part of a blend is a single fat; looked at before it is read, because a blend may hold itself. */
function readPart(path: string, value: unknown): SingleFat {
  if (readFields(path, value)['kind'] === 'blend') refuse('bad-shape', path, 'a single fat', 'a blend');
  return isKnownFat(value) && value.kind !== 'blend' ? value : readSingle(path, value);
}

function readBlend(path: string, value: unknown): FatBlend {
  const fields = readShape(path, value, BLEND_KEYS);
  const parts = readList(`${path}.parts`, fields['parts']).map((entry, at): BlendPart => {
    const here = `${path}.parts[${String(at)}]`;
    const { fat, share } = readShape(here, entry, ['fat', 'share']);
    return frozen({
      fat: readPart(`${here}.fat`, fat),
      share: frozen({ percent: readPercent(`${here}.share`, share) }),
    });
  });
  const total = parts.reduce((sum, { share }) => sum.plus(share.percent), ZERO);
  if (total.minus(100).abs().gt('1e-20')) {
    refuse('out-of-range', `${path}.parts`, 'shares that sum to 100', total.toString());
  }
  const name = readText(`${path}.name`, fields['name']);
  const stated = readSaponificationValueRange(`${path}.saponificationValue`, fields['saponificationValue']);
  const blend = blendOf(name, parts);
  for (const end of ['low', 'likely', 'high'] as const) {
    const { mgKohPerG } = blend.saponificationValue[end];
    if (stated[end].minus(mgKohPerG).abs().gt('1e-20')) {
      refuse(
        'out-of-range',
        `${path}.saponificationValue`,
        `${mgKohPerG.toString()}, the mean of the parts`,
        stated[end].toString(),
      );
    }
  }
  return knownFat({
    ...blend,
    ...readId(path, fields['id']),
    ...readOrigin(path, fields, LONGEST_NOTE + LONGEST_NAME + 2),
  });
}

/** Reads a profile as it stands in a fat: every share with its bounds, the likely ones summing to 100. */
function readStoredProfile(path: string, value: unknown): FattyAcidProfile {
  const shares = Object.entries(readFields(path, value)).map(([id, share]) => {
    const at = `${path}.${id}`;
    return [readFattyAcid(at, id), readShares(at, share)] as const;
  });
  const total = shares.reduce((sum, [, { likely }]) => sum.plus(likely.percent), ZERO);
  if (total.minus(100).abs().gt('1e-9')) {
    refuse('profile-does-not-close', path, 'likely shares that sum to 100', total.toString());
  }
  return frozen(Object.fromEntries(shares));
}

function readId(path: string, id: unknown): { readonly id?: string } {
  return id === undefined ? {} : { id: readText(`${path}.id`, id) };
}

function readShares(path: string, value: unknown): Estimate<Fraction> {
  return mapEnds(
    readRanged(path, value, (at, part) => readPercent(at, part)),
    (percent) => frozen({ percent }),
  );
}

function readOrigin(
  path: string,
  fields: Readonly<Record<string, unknown>>,
  longestNote: number,
): Pick<Fat, 'notes' | 'basis' | 'edition'> {
  return {
    notes: frozen(
      readList(`${path}.notes`, fields['notes'], 0).map((note, at): Remark => {
        const here = `${path}.notes[${String(at)}]`;
        const { code, text } = readShape(here, note, ['code', 'text']);
        return frozen({
          code: readText(`${here}.code`, code),
          text: readText(`${here}.text`, text, longestNote),
        });
      }),
    ),
    basis: frozen(
      // a source of another edition is kept by name, though this bibliography may not list it
      readList(`${path}.basis`, fields['basis'], 0).map(
        (id, at) => readText(`${path}.basis[${String(at)}]`, id) as SourceId,
      ),
    ),
    edition: fields['edition'] === undefined ? EDITION : readText(`${path}.edition`, fields['edition']),
  };
}
