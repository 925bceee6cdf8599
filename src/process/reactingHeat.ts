import { cautionsOfAdditions, readAdditions, readComposition, SPIRIT_CATCHES_FIRE } from '../composition/index.js';
import type { AdditionInput, ChargedPot, GivenAddition } from '../composition/index.js';
import type { ChargedFatInput } from '../fats/index.js';
import { HOT_SOAP_SCALDS, lyeHeatCapacity, type Alkali, type LyeChargeInput } from '../lye/index.js';
import {
  Decimal,
  frozen,
  readShape,
  ZERO,
  type Fields,
  type Limits,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import {
  mapEnds,
  readTemperature,
  type Estimate,
  type MassInput,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { potCautions, readReactingPot, strengthOf, type GivenPot, type ReactingPot } from '../saponification/index.js';
import type { SourceId } from '../sources/index.js';
import { REACTION_CAN_RUN, SPIRIT_MAY_BOIL } from './cautions.js';
import { fatHeatCapacity, modelEsters, neutralisation, technicalHeat } from './data/heats.js';
import { basisOfHeatCapacity, heatCapacityAt, heatCapacityOf } from './heatCapacityOf.js';
import type { Meeting } from './heatOfReaction.js';

/** A pot about to heat itself. */
export interface ReactingHeatInput {
  /** At least one fat with its mass. */
  readonly fats: readonly ChargedFatInput[];
  /** The alkalis as weighed; one to four. Solid alkali counts as dissolved in `water` and cooled beforehand. */
  readonly lye: readonly LyeChargeInput[];
  /** Water of the lye besides what is in it; none unless stated. */
  readonly water?: MassInput;
  /** What is in the pot with the fats before the lye goes in; nothing unless stated. */
  readonly additions?: readonly AdditionInput[];
  readonly start: {
    /** Temperature of the fats, and of what is added to them, when the lye goes in. */
    readonly pot: TemperatureInput;
    /** Temperature of the lye when it goes in. */
    readonly lye: TemperatureInput;
  };
}

/** The same in a result. */
export interface ReactingHeatGiven extends GivenPot {
  readonly additions: readonly GivenAddition[];
  readonly start: { readonly pot: Temperature; readonly lye: Temperature };
}

/** A pot as read, with what warms it and what it takes to warm it. */
export interface ReactingHeat {
  readonly soap: ReactingPot;
  /** The pot when all has reacted. */
  readonly after: ChargedPot;
  readonly meeting: Meeting;
  /** kJ/K: of fats and additions, of the whole lye, and of the pot when all has reacted. */
  readonly heatCapacity: {
    readonly before: Estimate<Decimal>;
    readonly lye: Decimal;
    readonly after: Estimate<Decimal>;
  };
  /** Alkalis and water together, grams. */
  readonly lyeGrams: Decimal;
  readonly start: { readonly pot: Decimal; readonly lye: Decimal };
  readonly given: ReactingHeatGiven;
}

export const REACTING_HEAT_KEYS: readonly string[] = ['fats', 'lye', 'water', 'additions', 'start'];

/** Lye and liquid fat, before they meet. */
const LIQUID: Limits = { min: 0, max: 100 };

/**
 * Reads a pot about to heat itself.
 *
 * @throws CalculationError the faults of fats, lye, additions and temperatures
 */
export function readReactingHeat(fields: Fields, steps?: Steps): ReactingHeat {
  const soap = readReactingPot('', { fats: fields['fats'], lye: fields['lye'], water: fields['water'] }, steps);
  const additions = readAdditions('additions', fields['additions'] ?? []).map(({ given }) => given);
  const start = readStart('start', fields['start']);
  const after = potOf(soap, additions);
  const fatGrams = soap.given.fats.reduce((sum, { mass }) => sum.plus(mass.g), ZERO);
  return {
    soap,
    after,
    meeting: {
      hydroxide: mapEnds(soap.balance.charged, ({ mol }) => mol),
      freeAcid: mapEnds(soap.demand, ({ acid }) => acid),
      esters: mapEnds(soap.demand, ({ hydroxide, acid }) => hydroxide.minus(acid)),
    },
    heatCapacity: {
      before: beforeReaction(fatGrams, after, potOf(soap, [])),
      lye: heatCapacityOfLye(soap, soap.charge.minus(fatGrams)),
      after: heatCapacityOf(after),
    },
    lyeGrams: soap.charge.minus(fatGrams),
    start: { pot: start.pot.celsius, lye: start.lye.celsius },
    given: frozen({ ...soap.given, additions: frozen(additions), start }),
  };
}

/** Reads the temperatures of pot and lye when they meet. */
export function readStart(path: string, value: unknown): ReactingHeatGiven['start'] {
  const { pot, lye } = readShape(path, value, ['pot', 'lye']);
  const read = (key: string, temperature: unknown): Temperature =>
    frozen({ celsius: readTemperature(`${path}.${key}`, temperature, LIQUID) });
  return frozen({ pot: read('pot', pot), lye: read('lye', lye) });
}

/** The pot when all has reacted. */
function potOf(soap: ReactingPot, additions: readonly GivenAddition[]): ChargedPot {
  const given = { soap: { by: 'soapFromLye', given: soap.given }, additions };
  return readComposition('pot', { by: 'compositionFrom', given });
}

/** Of fats and additions, kJ/K; what the additions bring is the difference they make to the pot. */
function beforeReaction(fatGrams: Decimal, whole: ChargedPot, bare: ChargedPot): Estimate<Decimal> {
  const [all, soap] = [heatCapacityAt(whole, 'likely'), heatCapacityAt(bare, 'likely')];
  const [low, likely, high] = fatHeatCapacity.figures;
  const at = (end: keyof Estimate<unknown>, ofFat: string): Decimal =>
    fatGrams.times(ofFat).div(1000).plus(all[end]).minus(soap[end]);
  return frozen({ low: at('low', low), likely: at('likely', likely), high: at('high', high) });
}

/** Of alkalis and water together, kJ/K; of two alkalis each counts by its share of the hydroxide's mass. */
function heatCapacityOfLye({ lye }: ReactingPot, lyeGrams: Decimal): Decimal {
  const pure = lye.map(({ alkali, grams, source }) => ({ alkali, grams: grams.times(source.hydroxide.likely) }));
  const hydroxide = pure.reduce((sum, { grams }) => sum.plus(grams), ZERO);
  const percent = hydroxide.times(100).div(lyeGrams);
  return pure
    .reduce((sum, { alkali, grams }) => sum.plus(grams.times(lyeHeatCapacity(alkali, percent))), ZERO)
    .div(hydroxide)
    .times(lyeGrams)
    .div(1000);
}

/** What pot and lye come to when they are mixed and nothing has reacted, °C: lowest, likely, highest. */
export function mixedTemperature(
  pot: { readonly heatCapacity: Estimate<Decimal>; readonly celsius: Decimal },
  lye: { readonly heatCapacity: Decimal; readonly celsius: Decimal },
): Estimate<Decimal> {
  const mixed = mapEnds(pot.heatCapacity, (capacity) =>
    capacity.times(pot.celsius).plus(lye.heatCapacity.times(lye.celsius)).div(capacity.plus(lye.heatCapacity)),
  );
  const { low, likely, high } = mixed;
  return frozen({ low: Decimal.min(low, high), likely, high: Decimal.max(low, high) });
}

/** The cautions of a pot that heats itself. */
export function cautionsOfHeat(
  { soap, after, lyeGrams }: ReactingHeat,
  ...first: readonly Remark[]
): readonly Remark[] {
  const ofAdditions = cautionsOfAdditions(after);
  // the lye goes in as it is made: what it cannot dissolve goes in solid
  const made = { addsWater: false, strength: strengthOf({ lye: soap.lye, grams: lyeGrams }) };
  return potCautions(soap.fats, soap.lye, soap.balance, made, [
    ...first,
    ...(ofAdditions.includes(SPIRIT_CATCHES_FIRE) ? [SPIRIT_MAY_BOIL] : []),
    ...ofAdditions,
    REACTION_CAN_RUN,
    HOT_SOAP_SCALDS,
  ]);
}

const OF_LYE: Readonly<Record<Alkali, SourceId>> = { naoh: 'olsson-1997', koh: 'laliberte-2009' };

/** The publications behind the heat of a pot. */
export function basisOfHeat({ soap, after }: ReactingHeat): readonly SourceId[] {
  return frozen([
    ...new Set<SourceId>([
      ...soap.basis,
      modelEsters.ethylAcetate.source,
      'crc-aqueous-ions',
      neutralisation.aceticAcid.source,
      technicalHeat.source,
      fatHeatCapacity.source,
      ...soap.lye.map(({ alkali }) => OF_LYE[alkali]),
      ...basisOfHeatCapacity(after),
    ]),
  ]);
}
