import { alkaliCautions, HOT_SOAP_SCALDS } from '../lye/index.js';
import { Decimal, frozen, noted, ONE, readShape, ZERO, type Remark, type Steps } from '../numbers/index.js';
import {
  readTemperature,
  type Density,
  type Estimate,
  type Temperature,
  type TemperatureInput,
  type Volume,
} from '../quantities/index.js';
import { extremesOf } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { SPIRIT_CATCHES_FIRE } from './cautions.js';
import { COMPONENTS, componentOfSolvent, SPIRITS, type ComponentName } from './components.js';
import { SOLVENT_IDS, type SolventId } from './data/solventNames.js';
import { solventData } from './data/solvents.js';
import { isAnyNamed, isNamedSpirit } from './namedAdditions.js';
import { DENSITY_OF_ANOTHER_TEMPERATURE, IDEAL_MIXING, SOAP_DENSITY_CONVENTION, SPIRIT_BOILS } from './notes.js';
import { pureDensity } from './pureDensity.js';
import { refuseOutside } from './solventDensity.js';
import { composedFrom, readComposition, type ComposedFrom, type MadeComposition } from './readComposition.js';

/** Input of {@link batchVolumeOf}. */
export interface BatchVolumeOfInput {
  /** A result of `compositionFrom`, also one read back from JSON. */
  readonly composition: MadeComposition;
  /** Temperature of the batch, as at pouring; 15 to 80 °C. */
  readonly temperature: TemperatureInput;
}

/** Result of {@link batchVolumeOf}. */
export interface BatchVolume {
  readonly by: 'batchVolumeOf';
  /** The inputs as read. */
  readonly given: { readonly composition: ComposedFrom; readonly temperature: Temperature };
  /** Without air stirred in. */
  readonly volume: Estimate<Volume>;
  readonly density: Estimate<Density>;
  /** What was assumed. */
  readonly notes: readonly Remark[];
  /** Of pouring it; most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** Components that are no solvent on file. */
type Unlisted =
  | 'soapSodium'
  | 'soapPotassium'
  | 'freeFat'
  | 'freeAcid'
  | 'unsaponifiable'
  | 'freeCaustic'
  | 'carbonate'
  | 'salts'
  | 'other';

/** What is no solvent on file: lightest, likely and densest, g/mL; conventions, wide on purpose. */
const conventions = (): Record<Unlisted, Estimate<Decimal>> => ({
  soapSodium: span('1.00', '1.05', '1.10'),
  soapPotassium: span('1.02', '1.07', '1.12'),
  freeFat: span('0.86', '0.91', '0.96'),
  freeAcid: span('0.83', '0.88', '0.95'),
  unsaponifiable: span('0.83', '0.90', '0.96'),
  freeCaustic: span('2.0', '2.1', '3.3'),
  carbonate: span('2.3', '2.5', '2.6'),
  salts: span('1.5', '2.0', '2.5'),
  other: span('0.8', '1.0', '1.5'),
});

function span(lightest: string, likely: string, densest: string): Estimate<Decimal> {
  return { low: new Decimal(lightest), likely: new Decimal(likely), high: new Decimal(densest) };
}

const COLDEST = /* @__PURE__ */ new Decimal(15);
const HOTTEST = /* @__PURE__ */ new Decimal(80);

/** By how much a mixture of water, spirit and polyols can be denser than its parts: ethanol with water, the most, 3.7 %. */
const MOST_CONTRACTION = '0.037';

/**
 * Volume of a batch at a temperature: what the moulds must hold.
 *
 * Formula: `V = Σ mᵢ/ρᵢ(t)`, ideal mixing, in mL; of water, spirits, polyols and sugars `V` may be up to 3.7 % less, as of
 * ethanol with water. Dissolved sugars and sorbitol count with the density of the solid, which lies within 0.5 % of their
 * solutions in water. Soap counts as 1.00 to 1.10 g/mL, of potassium 1.02 to 1.12 (conventions: no source was found).
 *
 * Validity: 15 to 80 °C. What has no density at that temperature counts with the nearest on file, and a note says so, as
 * one does where spirit would boil (ethanol 78 °C).
 *
 * Source: the densities of `solventDensity`; conventions of this library for the rest.
 *
 * @param input - the composition and the temperature
 * @returns mL and g/mL, with bounds that hold all lots and these assumptions
 * @throws CalculationError `outside-table`, `missing` or `bad-shape` for what is no composition, and the faults of a quantity
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const additions = [{ solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } }] as const;
 * const composition = compositionFrom({ soap, additions });
 * const { volume } = batchVolumeOf({ composition, temperature: { celsius: 62 } });
 * volume.likely.mL.toFixed(0); // => '1102'
 * ```
 */
export function batchVolumeOf(input: BatchVolumeOfInput): BatchVolume {
  return batchVolumeOfSteps(input);
}

/** The kernel, with room for the working. */
export function batchVolumeOfSteps(input: BatchVolumeOfInput, steps?: Steps): BatchVolume {
  const fields = readShape('input', input, ['composition', 'temperature']);
  const pot = readComposition('composition', fields['composition']);
  const celsius = readTemperature('temperature', fields['temperature']);
  refuseOutside('a batch', celsius, COLDEST, HOTTEST);

  const densities = { ...conventions(), ...solventDensities(celsius) };
  const figures = extremesOf(pot.dimensions, (place) => {
    const { grams, all, turning } = pot.at(place);
    const volume = (end: keyof Estimate<Decimal>): Decimal =>
      COMPONENTS.reduce((sum, name) => sum.plus(grams[name].div(densities[name][end])), ZERO);
    const [most, likely, least] = [volume('low'), volume('likely'), volume('high')];
    return {
      figures: { most, likely, least, lightest: all.div(most), mean: all.div(likely), densest: all.div(least) },
      turning,
    };
  });
  const { grams } = pot.at('likely');
  const solvents = SOLVENT_IDS.filter((id) => !grams[componentOfSolvent[id]].isZero());
  for (const id of solvents) {
    noted(steps, `density of ${id}`, 'ρ(t)', 'g/mL', densities[componentOfSolvent[id]].likely);
  }
  noted(steps, 'volume', 'Σ m/ρ', 'mL', figures.likely.likely);
  // to the whole degree: spirit as sold, with its water, boils a little lower
  const boils = (id: SolventId): boolean =>
    celsius.gte(new Decimal(solventData()[id].boilingPoint?.[0] ?? 'Infinity').floor());
  const holdsSpirit = SPIRITS.some((spirit) => !grams[spirit].isZero()) || isAnyNamed(pot.additions, isNamedSpirit);
  const isOff = (id: SolventId): boolean => !nearest(id, celsius).eq(celsius);
  return frozen({
    by: 'batchVolumeOf',
    given: frozen({ composition: composedFrom(pot), temperature: frozen({ celsius }) }),
    volume: frozen({
      low: frozen({ mL: figures.least.low }),
      likely: frozen({ mL: figures.likely.likely }),
      high: frozen({ mL: figures.most.high }),
    }),
    density: frozen({
      low: frozen({ gPerML: figures.lightest.low }),
      likely: frozen({ gPerML: figures.mean.likely }),
      high: frozen({ gPerML: figures.densest.high }),
    }),
    notes: frozen([
      SOAP_DENSITY_CONVENTION,
      IDEAL_MIXING,
      ...(solvents.some(isOff) ? [DENSITY_OF_ANOTHER_TEMPERATURE] : []),
      ...(solvents.some(boils) ? [SPIRIT_BOILS] : []),
    ]),
    cautions: alkaliCautions(...(holdsSpirit ? [SPIRIT_CATCHES_FIRE] : []), HOT_SOAP_SCALDS),
    basis: frozen([
      ...new Set<SourceId>([
        ...pot.soap.basis,
        ...solvents.flatMap((id) => pureDensity(id).basis),
        'laurate-convention',
      ]),
    ]),
    edition: EDITION,
  });
}

/** The temperature nearest to one that a density is on file for. */
function nearest(solvent: SolventId, celsius: Decimal): Decimal {
  const { coldest, hottest } = pureDensity(solvent);
  return Decimal.max(coldest, Decimal.min(celsius, hottest));
}

/** Of each solvent its density as it is, and as dense as mixing can make it. */
function solventDensities(celsius: Decimal): Record<Exclude<ComponentName, Unlisted>, Estimate<Decimal>> {
  const found = SOLVENT_IDS.map((id) => {
    const density = pureDensity(id).at(nearest(id, celsius));
    return [componentOfSolvent[id], { low: density, likely: density, high: density.div(ONE.minus(MOST_CONTRACTION)) }];
  });
  return Object.fromEntries(found) as Record<Exclude<ComponentName, Unlisted>, Estimate<Decimal>>;
}
