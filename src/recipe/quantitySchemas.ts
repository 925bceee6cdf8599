import type * as v from 'valibot';
import { readNumber, readText, readWord, type Limits, type Numeric } from '../numbers/index.js';
import {
  readAlkaliContent,
  readMass,
  readPercent,
  readQuantity,
  readRanged,
  readSaponificationValue,
  readTemperature,
  unitsByKind,
  type AlkaliContentInput,
  type FractionInput,
  type FractionUnit,
  type MassInput,
  type OneUnit,
  type Ranged,
  type SaponificationValueInput,
  type SpiritStrengthUnit,
  type TemperatureInput,
  type TimeInput,
  type VolumeInput,
} from '../quantities/index.js';
import { figures, leaf, type Reader } from './leaf.js';

/** The definition of a kind of quantity in the JSON Schema. */
const definition = (name: string): object => ({ $ref: `#/$defs/${name}` });

export const mass = (): v.GenericSchema<MassInput> =>
  figures((path, value) => readMass(path, value), definition('mass'));

export const volume = (): v.GenericSchema<VolumeInput> =>
  figures((path, value) => readQuantity(path, value, unitsByKind().volume, { min: 0 }), definition('volume'));

export const time = (): v.GenericSchema<TimeInput> =>
  figures((path, value) => readQuantity(path, value, unitsByKind().time, { min: 0 }), definition('time'));

export const temperature = (): v.GenericSchema<TemperatureInput> =>
  figures((path, value) => readTemperature(path, value), definition('temperature'));

/** A share by mass; 0 to 100 percent unless other limits are given. */
export const share = (limits?: Limits): v.GenericSchema<FractionInput> =>
  figures((path, value) => readPercent(path, value, limits), definition('fraction'));

/** A share by mass, as one figure or as a range. */
export const rangedShare = (limits: Limits): v.GenericSchema<Ranged<FractionInput>> =>
  figures(
    (path, value) => readRanged(path, value, (at, part) => readPercent(at, part, limits)),
    definition('rangedFraction'),
  );

/** A share by mass or, of spirit, by volume. */
export function assay(): v.GenericSchema<OneUnit<FractionUnit | SpiritStrengthUnit>> {
  const read: Reader = (path, value) => {
    const { fraction, spiritStrength } = unitsByKind();
    return readQuantity(path, value, { ...fraction, ...spiritStrength }, { above: 0, max: 100 });
  };
  return figures(read, definition('assay'));
}

/** A slip of the basis or of the decimal point is for an audit to find. */
export const saponificationValue = (): v.GenericSchema<SaponificationValueInput> =>
  figures((path, value) => readSaponificationValue(path, value, { above: 0 }), definition('saponificationValue'));

export const alkaliContent = (): v.GenericSchema<AlkaliContentInput> =>
  figures((path, value) => readAlkaliContent(path, value), definition('alkaliContent'));

/** A number without unit. */
export const number = (limits: Limits): v.GenericSchema<Numeric> =>
  figures((path, value) => readNumber(path, value, limits), definition('number'));

/** One of a few literal words. */
export const word = <W extends string>(words: readonly W[]): v.GenericSchema<W> =>
  leaf((path, value) => readWord(path, value, words), { enum: words });

/** A name or title. */
export const text = (): v.GenericSchema<string> => leaf((path, value) => readText(path, value), definition('text'));
