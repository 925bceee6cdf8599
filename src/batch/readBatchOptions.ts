import type { Fat } from '../fats/index.js';
import {
  frozen,
  readFields,
  readNumber,
  readShape,
  readText,
  refuse,
  ZERO,
  type Decimal,
  type Numeric,
} from '../numbers/index.js';
import { readStart } from '../process/index.js';
import {
  mapEnds,
  readMass,
  readOptionalMass,
  readPercent,
  readRanged,
  readTemperature,
  readVolume,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type OneChoice,
  type Ranged,
  type Temperature,
  type TemperatureInput,
  type Volume,
  type VolumeInput,
} from '../quantities/index.js';

/** What a batch is scaled to: a mass of finished base, what is in stock of one ingredient, or all moulds full. */
export type ScaleTo =
  | OneChoice<{
      /** Finished base, after what evaporates. */
      readonly batchMass: MassInput;
      /** All that is in stock of one ingredient is used. */
      readonly inStock: StockInput;
    }>
  | 'moulds';

/** What is in stock of one ingredient. */
export interface StockInput {
  /** A fat by name or id, `naoh`, `koh`, `water`, a solvent's id, or an addition's name. */
  readonly item: string;
  readonly mass: MassInput;
}

/** The moulds of a batch. */
export interface MouldsInput {
  /** What one mould holds. */
  readonly volume: VolumeInput;
  /** How many there are; any number unless stated. */
  readonly count?: Numeric;
}

/** Temperatures of pot and lye when they meet. */
export interface StartInput {
  readonly pot: TemperatureInput;
  readonly lye: TemperatureInput;
}

/** What an ingredient costs: an amount of money for a mass of it, as it stands in the store. */
export interface PriceInput {
  readonly amount: Numeric;
  readonly per: MassInput;
}

/** Prices of a batch, all in one currency. */
export interface PricesInput {
  /** Name of the currency, as it is to stand in the result. */
  readonly currency: string;
  /** Price of each ingredient, by the names that `inStock` takes; water costs nothing unless it is among them. */
  readonly of: Readonly<Record<string, PriceInput>>;
}

/** What {@link planBatch} may be told besides the recipe. */
export interface PlanBatchOptions {
  /** Fats of one's own, by the names that recipes call them. */
  readonly fats?: Readonly<Record<string, Fat>>;
  /** What the batch is scaled to; as the recipe is written unless stated. */
  readonly scaleTo?: ScaleTo;
  /** What the scale shows; alkali is rounded down to it. Unrounded unless stated. */
  readonly scaleStep?: MassInput;
  /** What is expected to evaporate of the recipe as it is written; it is scaled with it. */
  readonly evaporated?: MassInput;
  /** Spirit in what evaporates, share by mass. */
  readonly spiritShareOfLoss?: Ranged<FractionInput>;
  /** Temperatures of pot and lye when they meet; 50 and 25 °C unless stated, as an assumption of the plan. */
  readonly start?: StartInput;
  /** Temperature of the base at pouring; 62 °C unless stated. */
  readonly pourAt?: TemperatureInput;
  readonly moulds?: MouldsInput;
  readonly prices?: PricesInput;
}

/** A price, as read. */
export interface Price {
  readonly amount: Decimal;
  readonly per: Mass;
}

/** The options as read; JSON-safe but for Decimals, and options again. */
export interface GivenBatchOptions {
  readonly scaleTo?:
    { readonly batchMass: Mass } | { readonly inStock: { readonly item: string; readonly mass: Mass } } | 'moulds';
  readonly scaleStep?: Mass;
  readonly evaporated?: Mass;
  readonly spiritShareOfLoss?: Estimate<Fraction>;
  readonly start?: { readonly pot: Temperature; readonly lye: Temperature };
  readonly pourAt: Temperature;
  readonly moulds?: { readonly volume: Volume; readonly count?: Decimal };
  readonly prices?: { readonly currency: string; readonly of: Readonly<Record<string, Price>> };
}

/** The names of the options. */
export const BATCH_OPTION_KEYS: readonly (keyof PlanBatchOptions)[] = [
  'fats',
  'scaleTo',
  'scaleStep',
  'evaporated',
  'spiritShareOfLoss',
  'start',
  'pourAt',
  'moulds',
  'prices',
];
/** Common practice, no source. */
const POURING = { celsius: 62 };

/**
 * Reads the options of a batch, own fats apart.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` and the faults of a quantity
 */
export function readBatchOptions(path: string, value: unknown): GivenBatchOptions {
  const fields = readShape(path, value, BATCH_OPTION_KEYS);
  const at = (key: string): string => `${path}.${key}`;
  const optional = <K extends string, T>(
    key: K,
    read: (path: string, value: unknown) => T,
  ): { readonly [P in K]?: T } =>
    fields[key] === undefined ? {} : ({ [key]: read(at(key), fields[key]) } as { [P in K]: T });
  const scaleStep = readOptionalMass(at('scaleStep'), fields['scaleStep'], { above: 0 });
  const given: GivenBatchOptions = frozen({
    ...optional('scaleTo', readScaleTo),
    ...(scaleStep === undefined ? {} : { scaleStep: frozen({ g: scaleStep }) }),
    ...optional('evaporated', (here, mass) => frozen({ g: readMass(here, mass) })),
    ...optional('spiritShareOfLoss', readShares),
    ...optional('start', readStart),
    pourAt: frozen({ celsius: readTemperature(at('pourAt'), fields['pourAt'] ?? POURING) }),
    ...optional('moulds', readMoulds),
    ...optional('prices', readPrices),
  });
  if (given.scaleTo === 'moulds' && given.moulds?.count === undefined) {
    refuse('missing', at('moulds.count'), 'how many moulds there are to fill', undefined);
  }
  return given;
}

function readShares(path: string, value: unknown): Estimate<Fraction> {
  return mapEnds(readRanged(path, value, readPercent), (percent) => frozen({ percent }));
}

function readScaleTo(path: string, value: unknown): NonNullable<GivenBatchOptions['scaleTo']> {
  if (value === 'moulds') return value;
  const expected = "batchMass or inStock, or 'moulds'";
  if (typeof value === 'string') refuse('bad-shape', path, expected, value);
  const { batchMass, inStock } = readShape(path, value, ['batchMass', 'inStock']);
  if (batchMass !== undefined && inStock !== undefined) refuse('bad-shape', path, expected, 'both');
  if (batchMass !== undefined) {
    return frozen({ batchMass: frozen({ g: readMass(`${path}.batchMass`, batchMass, { above: 0 }) }) });
  }
  if (inStock === undefined) refuse('missing', path, expected, 'neither');
  const { item, mass } = readShape(`${path}.inStock`, inStock, ['item', 'mass']);
  return frozen({
    inStock: frozen({
      item: readText(`${path}.inStock.item`, item),
      mass: frozen({ g: readMass(`${path}.inStock.mass`, mass, { above: 0 }) }),
    }),
  });
}

function readMoulds(path: string, value: unknown): NonNullable<GivenBatchOptions['moulds']> {
  const { volume, count } = readShape(path, value, ['volume', 'count']);
  const mL = readVolume(`${path}.volume`, volume, { above: 0 });
  if (count === undefined) return frozen({ volume: frozen({ mL }) });
  const many = readNumber(`${path}.count`, count, { min: 1, max: 1_000_000 });
  if (!many.isInteger()) refuse('out-of-range', `${path}.count`, 'a whole number', many.toString());
  return frozen({ volume: frozen({ mL }), count: many });
}

/** A price a kilogram beyond this is a slip of the decimal point. */
const MONEY = { min: 0, max: '1e9' };

function readPrices(path: string, value: unknown): NonNullable<GivenBatchOptions['prices']> {
  const { currency, of } = readShape(path, value, ['currency', 'of']);
  const prices = Object.entries(readFields(`${path}.of`, of)).map(([item, price]) => {
    const here = `${path}.of.${item}`;
    const { amount, per } = readShape(here, price, ['amount', 'per']);
    const mass = frozen({ g: readMass(`${here}.per`, per, { above: 0 }) });
    return [item, frozen({ amount: readNumber(`${here}.amount`, amount, MONEY), per: mass })] as const;
  });
  return frozen({ currency: readText(`${path}.currency`, currency, 20), of: frozen(Object.fromEntries(prices)) });
}

/** Grams that evaporate of the recipe as it is written. */
export function lossOf({ evaporated }: GivenBatchOptions): Decimal {
  return evaporated?.g ?? ZERO;
}
