import { Decimal, toStep, type RoundingDirection } from '../../numbers/index.js';
import { mapEnds, valueIn, type Estimate, type Mass, type Temperature, type Volume } from '../../quantities/index.js';
import { fixed, type WriteNumber } from '../numberFormat.js';

/** Units that a sheet is written in. */
export type SheetUnits = 'metric' | 'us' | 'both';

/** One of the two systems of units. */
export type UnitSystem = 'metric' | 'us';

/** How a mass to weigh is written. */
export interface Weighed {
  /** What the scale shows, grams; none where the batch was planned without. */
  readonly scaleStep: Decimal | undefined;
  readonly direction: RoundingDirection;
}

/** Writes the figures of a sheet. */
export interface SheetWriter {
  readonly systems: readonly UnitSystem[];
  readonly number: (value: Decimal, decimals: number) => string;
  /** `low to high`, or the one figure where they are written alike. */
  readonly span: (values: Estimate<Decimal>, decimals: number) => string;
  /** To the step of the scale, or to three digits and more; without its unit. */
  readonly weighed: (mass: Mass, system: UnitSystem, how: Weighed) => string;
  readonly mass: (mass: Mass) => string;
  readonly massSpan: (mass: Estimate<Mass>) => string;
  readonly temperature: (temperature: Temperature) => string;
  readonly temperatureSpan: (from: Temperature, to: Temperature) => string;
  readonly volume: (volume: Volume) => string;
  readonly volumeSpan: (volume: Estimate<Volume>) => string;
}

export const MASS_UNITS = { metric: 'g', us: 'oz' } as const;
const VOLUME_UNITS = { metric: 'mL', us: 'usFlOz' } as const;
/** Metric figures of the text are told in these from ten thousand on, to two decimals; what is weighed keeps the unit of its table. */
const LARGER = { g: 'kg', mL: 'L' } as const;
const LARGE = 10_000;
const SIGNS: Readonly<Record<string, string>> = { usFlOz: 'US fl oz' };
const TEMPERATURE_UNITS = { metric: ['celsius', '°C'], us: ['fahrenheit', '°F'] } as const;
/** Decimals of a kitchen scale: 0.1 g, 0.01 oz. */
const LEAST_DECIMALS = { metric: 1, us: 2 } as const;

/** At least three digits, so that a small mass is not rounded away. */
const decimalsOf = (value: Decimal, least: number): number => (value.isZero() ? least : Math.max(least, 2 - value.e));

/** A writer for the units and number format that were asked for. */
export function sheetWriter(units: SheetUnits, write: WriteNumber): SheetWriter {
  const systems: readonly UnitSystem[] = units === 'both' ? ['metric', 'us'] : [units];
  const number = (value: Decimal, decimals: number): string => write(fixed(value, decimals));
  const span = ({ low, high }: Estimate<Decimal>, decimals: number): string => {
    const [from, to] = [number(low, decimals), number(high, decimals)];
    return from === to ? from : `${from} to ${to}`;
  };
  /** The first system, and the second in brackets. */
  const each = (one: (system: UnitSystem) => string): string => {
    const [first = '', second] = systems.map(one);
    return second === undefined ? first : `${first} (${second})`;
  };
  const grams = (system: UnitSystem, mass: Mass): Decimal => valueIn(mass, MASS_UNITS[system]);
  const spanOf = (values: Estimate<Decimal>, unit: string, least: number): string =>
    `${span(values, Math.min(decimalsOf(values.likely, least), values.likely.decimalPlaces()))} ${SIGNS[unit] ?? unit}`;
  const massSpan = (mass: Estimate<Mass>): string =>
    each((system) => {
      const [unit, least] =
        system === 'metric' && mass.likely.g.gte(LARGE) ? ([LARGER.g, 2] as const) : ([MASS_UNITS[system], 0] as const);
      return spanOf(
        mapEnds(mass, (end) => valueIn(end, unit)),
        unit,
        least,
      );
    });
  const volumeSpan = (volume: Estimate<Volume>): string =>
    each((system) => {
      const [unit, least] =
        system === 'metric' && volume.likely.mL.gte(LARGE)
          ? ([LARGER.mL, 2] as const)
          : ([VOLUME_UNITS[system], 0] as const);
      return spanOf(
        mapEnds(volume, (end) => valueIn(end, unit)),
        unit,
        least,
      );
    });
  const one = <Q>(quantity: Q): Estimate<Q> => ({ low: quantity, likely: quantity, high: quantity });
  const degrees = (system: UnitSystem, temperature: Temperature): string => {
    const value = valueIn(temperature, TEMPERATURE_UNITS[system][0]);
    // nobody reads a part of a °F
    return number(value, system === 'us' || value.isInteger() ? 0 : 1);
  };
  return {
    systems,
    number,
    span,
    weighed: (mass, system, { scaleStep, direction }) => {
      const value = grams(system, mass);
      const step = scaleStep && grams(system, { g: scaleStep });
      const shown = step !== undefined && step.decimalPlaces() <= 4;
      const decimals = shown ? step.decimalPlaces() : decimalsOf(value, LEAST_DECIMALS[system]);
      return number(toStep(value, new Decimal(10).pow(-decimals), direction), decimals);
    },
    mass: (mass) => massSpan(one(mass)),
    massSpan,
    temperature: (temperature) => each((system) => `${degrees(system, temperature)} ${TEMPERATURE_UNITS[system][1]}`),
    temperatureSpan: (from, to) =>
      each((system) => `${degrees(system, from)} to ${degrees(system, to)} ${TEMPERATURE_UNITS[system][1]}`),
    volume: (volume) => volumeSpan(one(volume)),
    volumeSpan,
  };
}
