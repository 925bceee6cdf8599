import type { ComponentName } from '../../composition/index.js';
import type { SourceId } from '../../sources/index.js';

/*
 * No measured heat of saponification of a fat was found. What there is: heats of splitting simple esters, worked out from
 * enthalpies of formation that were read, and two technical figures that are recalled.
 */

/** A heat with where it is from. */
export interface HeatFigure {
  readonly kJ: string;
  readonly source: SourceId;
  readonly obtained: 'derived' | 'memory';
}

/** Liquid ester and dissolved hydroxide to dissolved acetate and liquid alcohol, given out, kJ to one mole of ester. */
export const modelEsters: Readonly<Record<'glycerolTriacetate' | 'ethylAcetate', HeatFigure>> = {
  // to one of its three bonds; a third ester, methyl acetate, lies between: 49.3
  glycerolTriacetate: { kJ: '35.6', source: 'crc-thermodynamic-properties', obtained: 'derived' },
  ethylAcetate: { kJ: '54.3', source: 'crc-thermodynamic-properties', obtained: 'derived' },
};

/**
 * The higher of two technical figures, 65 kcal to one kg of a fat (the other: 250 kJ). Of which fat is not known: it is taken
 * of one whose saponification value, mg KOH/g, is that of tallow.
 */
export const technicalHeat: HeatFigure & { readonly mgKohPerG: string } = {
  kJ: '272',
  source: 'handbooks-recalled',
  obtained: 'memory',
  mgKohPerG: '197',
};

/** Acid and dissolved hydroxide to dissolved salt and water, given out, kJ to one mole; for fatty acids some 56, recalled. */
export const neutralisation: Readonly<Record<'strongAcid' | 'aceticAcid', HeatFigure>> = {
  strongAcid: { kJ: '55.8', source: 'crc-thermodynamic-properties', obtained: 'derived' },
  aceticAcid: { kJ: '57.5', source: 'crc-thermodynamic-properties', obtained: 'derived' },
};

/** Heat capacity, kJ/(kg·K): lowest, likely, highest; a single figure where only one is on file. */
export interface HeatCapacity {
  readonly figures: readonly [low: string, likely: string, high: string];
  readonly source: SourceId;
}

/** Liquid fats: four oils at 35 °C from 1.67 (maize) to 2.24 (sunflower); near 60 °C about 2.0, recalled. */
export const fatHeatCapacity: HeatCapacity = { figures: ['1.67', '2.0', '2.24'], source: 'fasina-colley-2008' };

const of = (low: string, likely: string, high: string, source: SourceId): HeatCapacity => ({
  figures: [low, likely, high],
  source,
});
const RECALLED: SourceId = 'handbooks-recalled';
const LIQUIDS: SourceId = 'heat-capacities-of-liquids';

/** Of each component. Liquids: at 25, 40 and 60 °C, correlation evaluated. */
export const heatCapacities = (): Readonly<Record<ComponentName, HeatCapacity>> => {
  // likely recalled; low that of solid stearic acid, high what neat soap of 30 % water, 2.9 recalled, leaves for the soap
  const soap = of('1.76', '2.3', '2.35', RECALLED);
  // solid sodium hydroxide at 25 °C; stands in for what has no figure of its own, a convention
  const solid = of('1.49', '1.49', '1.49', 'crc-thermodynamic-properties');
  return {
    soapSodium: soap,
    soapPotassium: soap,
    water: of('4.18', '4.18', '4.18', 'sonntag-5'),
    glycerol: of('2.371', '2.450', '2.553', LIQUIDS),
    ethanol: of('2.434', '2.572', '2.786', LIQUIDS),
    isopropanol: of('2.582', '2.786', '3.069', LIQUIDS),
    propyleneGlycol: of('2.498', '2.590', '2.712', LIQUIDS),
    dipropyleneGlycol: of('2.18', '2.18', '2.18', RECALLED),
    butanediol: of('2.424', '2.531', '2.674', LIQUIDS),
    triethanolamine: of('2.445', '2.445', '2.477', LIQUIDS),
    polyethyleneGlycol: of('2.05', '2.05', '2.05', RECALLED),
    sorbitol: of('1.34', '1.34', '1.34', RECALLED),
    sucrose: of('1.244', '1.244', '1.244', RECALLED),
    // none on file: as sucrose, a convention
    glucose: of('1.244', '1.244', '1.244', RECALLED),
    freeFat: fatHeatCapacity,
    freeAcid: fatHeatCapacity,
    unsaponifiable: fatHeatCapacity,
    freeCaustic: solid,
    carbonate: solid,
    salts: solid,
    other: solid,
  };
};

/** A liquid whose heat of evaporation is known by temperature. */
export type EvaporatingSolvent = 'water' | 'ethanol';

/** Heat of evaporation, °C and kJ/kg: correlation evaluated. */
export const evaporation = (): Readonly<
  Record<EvaporatingSolvent, readonly (readonly [celsius: string, kJPerKg: string])[]>
> => ({
  water: [
    ['20', '2453.6'],
    ['25', '2441.2'],
    ['40', '2404.5'],
    ['60', '2356.2'],
    ['80', '2307.3'],
    ['100', '2256.6'],
  ],
  ethanol: [
    ['20', '925.9'],
    ['25', '921.0'],
    ['60', '878.8'],
    ['78.3', '850.5'],
  ],
});
