import {
  fieldPath,
  frozen,
  readList,
  readShape,
  refuse,
  ZERO,
  type Decimal,
  type Fields,
  type Limits,
} from '../numbers/index.js';
import {
  readMass,
  readPercent,
  readTitrant,
  readVolume,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type Titrant,
  type TitrantInput,
  type Volume,
  type VolumeInput,
} from '../quantities/index.js';
import { usualSampling, usualUncertainties, type Sampled } from './data/titration.js';

/** Standard uncertainties of a titration; each has a usual value (see the guide) and may be stated instead. */
export interface TitrationUncertainty {
  /** Of the sample on the scale; 0.01 g. */
  readonly balance?: MassInput;
  /** Of a burette reading; 0.03 mL. */
  readonly burette?: VolumeInput;
  /** Of where the colour is taken to turn; 0.03 mL. */
  readonly endPoint?: VolumeInput;
  /** Of the blank, also where there was none; 0.04 mL. */
  readonly blank?: VolumeInput;
  /** Of the strength of the titrant, share of it; 0.5 percent. */
  readonly titrant?: FractionInput;
  /** Of one sample for the whole, share of the result; 2 percent in tests of free alkali, else 0.5: state 2 where soap is titrated. */
  readonly sampling?: FractionInput;
}

/** A sample as weighed and the titrant it took. */
export interface TitrationReading {
  readonly sample: MassInput;
  readonly volume: VolumeInput;
}

/** One reading, or as `readings` up to ten, each with a sample of its own. */
export type TitrationReadings =
  | (TitrationReading & { readonly readings?: never })
  | { readonly readings: readonly TitrationReading[]; readonly sample?: never; readonly volume?: never };

/** What every titration is told. */
export type TitrationInput = TitrationReadings & {
  /** Equivalents in a litre: sulfuric acid of 0.05 mol/L has 0.1. */
  readonly titrant: TitrantInput;
  readonly uncertainty?: TitrationUncertainty;
};

/** The standard uncertainties used, stated or usual. */
export interface TitrationUncertaintyGiven {
  readonly balance: Mass;
  readonly burette: Volume;
  readonly endPoint: Volume;
  readonly blank: Volume;
  readonly titrant: Fraction;
  readonly sampling: Fraction;
}

/** A titration in a result. */
export interface TitrationGiven {
  readonly readings: readonly { readonly sample: Mass; readonly volume: Volume }[];
  readonly titrant: Titrant;
  readonly blank?: Volume;
  readonly uncertainty: TitrationUncertaintyGiven;
}

/** A titration as read. */
export interface Titration {
  /** Each sample in grams with the titrant it took beyond the blank, in mL. */
  readonly readings: readonly { readonly grams: Decimal; readonly net: Decimal }[];
  readonly eqPerL: Decimal;
  readonly uncertainty: TitrationUncertaintyGiven;
  readonly given: TitrationGiven;
}

/** The fields of a titration. */
export const TITRATION_KEYS = ['sample', 'volume', 'readings', 'titrant', 'blank', 'uncertainty'] as const;
const UNCERTAINTIES = ['balance', 'burette', 'endPoint', 'blank', 'titrant', 'sampling'] as const;
const MOST_READINGS = 10;
/** No burette, and no pot titrated whole, holds more; mL. */
const ANY_VOLUME: Limits = { min: 0, max: 1e6 };

/** Reads the standard uncertainties of a titration. */
export function readUncertainty(value: unknown, sampled: Sampled): TitrationUncertaintyGiven {
  const stated = value === undefined ? {} : readShape('uncertainty', value, UNCERTAINTIES);
  const at = (key: string): string => `uncertainty.${key}`;
  const { balance, burette, endPoint, blank, titrant } = usualUncertainties;
  const volume = (key: 'burette' | 'endPoint' | 'blank', usual: string): Volume =>
    frozen({ mL: readVolume(at(key), stated[key] ?? { mL: usual }, { min: 0, max: 100 }) });
  const share = (key: 'titrant' | 'sampling', usual: string): Fraction =>
    frozen({ percent: readPercent(at(key), stated[key] ?? { percent: usual }, { min: 0, max: 50 }) });
  return frozen({
    balance: frozen({ g: readMass(at('balance'), stated['balance'] ?? { g: balance }) }),
    burette: volume('burette', burette),
    endPoint: volume('endPoint', endPoint),
    blank: volume('blank', blank),
    titrant: share('titrant', titrant),
    sampling: share('sampling', usualSampling[sampled]),
  });
}

interface ReadReading {
  readonly path: string;
  readonly sample: Mass;
  readonly volume: Volume;
}

function readReading(path: string, { sample, volume }: Fields): ReadReading {
  return {
    path: fieldPath(path, 'volume'),
    // a sample so small that the result has no magnitude any more is no sample
    sample: frozen({ g: readMass(fieldPath(path, 'sample'), sample, { min: '1e-3' }) }),
    volume: frozen({ mL: readVolume(fieldPath(path, 'volume'), volume, ANY_VOLUME) }),
  };
}

function readReadings(fields: Fields): readonly ReadReading[] {
  const { readings, sample, volume } = fields;
  if (readings === undefined) return [readReading('', fields)];
  if (sample !== undefined || volume !== undefined) {
    refuse('bad-shape', 'readings', 'either sample and volume, or readings', 'both');
  }
  const list = readList('readings', readings);
  if (list.length > MOST_READINGS) {
    refuse('bad-shape', 'readings', `at most ${String(MOST_READINGS)}`, `a list of ${String(list.length)}`);
  }
  return list.map((entry, at) => {
    const path = `readings[${String(at)}]`;
    return readReading(path, readShape(path, entry, ['sample', 'volume']));
  });
}

/** How far apart two readings of the same thing may lie, mL: three standard uncertainties of their difference. */
export function scatterOf({ burette, endPoint, blank }: TitrationUncertaintyGiven): Decimal {
  return burette.mL.pow(2).plus(endPoint.mL.pow(2)).plus(blank.mL.pow(2)).sqrt().times(3);
}

/**
 * Reads a titration: direct, where the sample takes titrant beyond the blank, `V − B`; or back, where it takes less than
 * the blank, `B − V`. A difference the wrong way is nothing found while it is within what readings scatter by.
 *
 * @param blank - the blank in mL where it is not a field of its own
 * @throws CalculationError `out-of-range` for a difference the wrong way, and the faults of a quantity
 */
export function readTitration(
  fields: Fields,
  { sampled, way, blank }: { readonly sampled: Sampled; readonly way: 'direct' | 'back'; readonly blank?: Decimal },
): Titration {
  const readings = readReadings(fields);
  const eqPerL = readTitrant('titrant', fields['titrant']);
  const uncertainty = readUncertainty(fields['uncertainty'], sampled);
  const needsBlank = way === 'back' && blank === undefined;
  const stated =
    needsBlank || fields['blank'] !== undefined
      ? frozen({ mL: readVolume('blank', fields['blank'], ANY_VOLUME) })
      : undefined;
  const from = blank ?? stated?.mL ?? ZERO;
  const scatter = scatterOf(uncertainty);
  return {
    readings: readings.map(({ path, sample, volume }) => {
      const net = way === 'direct' ? volume.mL.minus(from) : from.minus(volume.mL);
      if (net.lt(scatter.neg())) {
        const [side, sense] = way === 'direct' ? ['at least', 'less'] : ['at most', 'more'];
        const expected = `${side} the blank, ${from.toSignificantDigits(6).toString()} mL: ${sense} is no such content`;
        refuse('out-of-range', path, expected, volume.mL.toString());
      }
      if (sample.g.lte(uncertainty.balance.g)) {
        refuse('out-of-range', 'uncertainty.balance', 'less than the sample', uncertainty.balance.g.toString());
      }
      return { grams: sample.g, net };
    }),
    eqPerL,
    uncertainty,
    given: frozen({
      readings: frozen(readings.map(({ sample, volume }) => frozen({ sample, volume }))),
      titrant: frozen({ eqPerL }),
      ...(stated === undefined ? {} : { blank: stated }),
      uncertainty,
    }),
  };
}
