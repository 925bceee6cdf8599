import type { SolventId } from '../composition/index.js';
import type { Fat, PublishedFatId } from '../fats/index.js';
import type { Alkali, LyeChargeInput } from '../lye/index.js';
import type { Numeric } from '../numbers/index.js';
import type {
  AlkaliContentInput,
  FractionInput,
  FractionUnit,
  MassInput,
  OneChoice,
  OneUnit,
  SaponificationValueInput,
  SpiritStrengthUnit,
  TemperatureInput,
  TimeInput,
  VolumeInput,
} from '../quantities/index.js';
import type { WorkStage } from '../process/index.js';
import type { LyeTarget } from '../saponification/index.js';

/**
 * A recipe as JSON holds it: what is in the pot, what it should be (`target`), and what is printed of it (`claimed`).
 *
 * A figure given as text keeps the decimals it was printed with, which an audit reads: `'4.0'` says more than `4`.
 */
export interface Recipe {
  /** Version of this shape: 1. */
  readonly version: 1;
  /** What the recipe is called. */
  readonly title?: string;
  /** The fats, at least one. */
  readonly fats: readonly RecipeFat[];
  /** The alkali, at least one, each as it is weighed. */
  readonly lye: readonly RecipeLye[];
  /** Water added besides what the lye brings; none unless stated. */
  readonly water?: MassInput;
  /** Solvents and whatever else goes into the pot. */
  readonly additions?: readonly RecipeAddition[];
  /** What the lye is meant to lead to. */
  readonly target?: LyeTarget;
  /** What is printed of the whole recipe. */
  readonly claimed?: RecipeClaims;
  /** Temperatures of the work, as printed or logged. */
  readonly temperatures?: readonly RecipeTemperature[];
}

/** A fat of a recipe. */
export interface RecipeFat {
  /** A published fat by id or name, one's own by the name given to the reader, or a whole fat as this library makes it. */
  readonly fat: PublishedFatId | (string & {}) | Fat;
  /** Mass as it is weighed. */
  readonly mass: MassInput;
  /** What is printed of it. */
  readonly claimed?: FatClaims;
}

/** What a recipe prints of one of its fats. */
export interface FatClaims {
  /** The "SAP value", in the unit it is printed in. */
  readonly saponificationValue?: SaponificationValueInput;
  /** Share of the fats, by mass. */
  readonly share?: FractionInput;
}

/** An alkali as weighed, with its assay (solid) or strength (solution). */
export type RecipeLye = LyeChargeInput;

/** An alkali of which no assay or strength is known; audits take it, plans do not. */
export interface LyeWithoutAssay {
  /** Which alkali. */
  readonly alkali: Alkali;
  /** Mass as it is weighed. */
  readonly mass: MassInput;
  readonly solid?: never;
  readonly solution?: never;
}

/** How much of an addition: by mass, or by volume as some recipes print it. */
export type AdditionAmount = OneChoice<{
  /** Mass as it is weighed. */
  readonly mass: MassInput;
  /** Volume as it is measured. */
  readonly volume: VolumeInput;
}>;

/** A solvent, with its assay by mass (of ethanol: or by volume), or anything else under its name. */
export type RecipeAddition = AdditionAmount &
  (
    | {
        /** A solvent of this list. */
        readonly solvent: 'ethanol';
        /** What of it is the solvent, the rest being water: by mass or, of ethanol, by volume. */
        readonly assay?: OneUnit<FractionUnit | SpiritStrengthUnit>;
        readonly name?: never;
      }
    | {
        readonly solvent: Exclude<SolventId, 'ethanol'>;
        readonly assay?: FractionInput;
        readonly name?: never;
      }
    | {
        /** Anything else, as colour or scent. */
        readonly name: string;
        readonly solvent?: never;
        readonly assay?: never;
      }
  );

/** What a recipe prints of the whole. */
export interface RecipeClaims {
  /** Alkali left out of the demand; negative is alkali in excess. */
  readonly superfat?: FractionInput;
  /** Hydroxide, share of the whole lye by mass, water included. */
  readonly strength?: FractionInput;
  /** Water of the lye to alkali, by mass. */
  readonly waterPerAlkali?: Numeric;
  /** Water of the lye, share of the fats by mass. */
  readonly waterPerFat?: FractionInput;
  /** Share of the hydroxide, by mole, that comes from KOH. */
  readonly kohShare?: FractionInput;
  /** Mass of everything that goes into the pot. */
  readonly total?: MassInput;
  /** pH of the soap, however it was taken. */
  readonly ph?: Numeric;
  /** Free caustic alkali of the soap, by mass. */
  readonly freeCausticAlkali?: AlkaliContentInput;
}

/** The steps of the work that have a temperature of their own. */
export type RecipeStage = WorkStage;

/** A temperature at a stage of the work. */
export interface RecipeTemperature {
  /** The step of the work. */
  readonly stage: RecipeStage;
  /** Time since the lye met the fats. */
  readonly time?: TimeInput;
  /** What the thermometer shows, or should. */
  readonly temperature: TemperatureInput;
}
