import type { SolventId } from '../composition/index.js';
import type { Fat, PublishedFatId } from '../fats/index.js';
import type { Alkali, LyeChargeInput } from '../lye/index.js';
import type { Numeric } from '../numbers/index.js';
import type {
  AlkaliContentInput,
  FractionInput,
  MassInput,
  OneChoice,
  SaponificationValueInput,
  SpiritStrengthInput,
  TemperatureInput,
  TimeInput,
  VolumeInput,
} from '../quantities/index.js';
import type { LyeTarget } from '../saponification/index.js';

/**
 * A recipe as JSON holds it: what is in the pot, what it should be (`target`), and what is printed of it (`claimed`).
 *
 * A figure given as text keeps the decimals it was printed with, which an audit reads: `'4.0'` says more than `4`.
 */
export interface Recipe {
  /** Version of this shape. */
  readonly version: 1;
  readonly title?: string;
  /** At least one fat. */
  readonly fats: readonly RecipeFat[];
  /** At least one alkali, each as it is weighed. */
  readonly lye: readonly RecipeLye[];
  /** Water added besides what the lye brings; none unless stated. */
  readonly water?: MassInput;
  /** Solvents and whatever else goes into the pot. */
  readonly additions?: readonly RecipeAddition[];
  /** What the lye is meant to lead to. */
  readonly target?: LyeTarget;
  /** What is printed of the whole recipe. */
  readonly claimed?: RecipeClaims;
  /** Temperatures as printed or logged. */
  readonly temperatures?: readonly RecipeTemperature[];
}

/** A fat of a recipe. */
export interface RecipeFat {
  /** A published fat by id or name, one's own by the name given to the reader, or a whole fat as this library makes it. */
  readonly fat: PublishedFatId | (string & {}) | Fat;
  readonly mass: MassInput;
  /** What is printed of it. */
  readonly claimed?: FatClaims;
}

/** What a recipe prints of one of its fats. */
export interface FatClaims {
  readonly saponificationValue?: SaponificationValueInput;
  /** Share of the fats, by mass. */
  readonly share?: FractionInput;
}

/** An alkali as weighed, with its assay (solid) or strength (solution). */
export type RecipeLye = LyeChargeInput;

/** An alkali of which no assay or strength is known; audits take it, plans do not. */
export interface LyeWithoutAssay {
  readonly alkali: Alkali;
  readonly mass: MassInput;
  readonly solid?: never;
  readonly solution?: never;
}

/** How much of an addition: by mass, or by volume as some recipes print it. */
export type AdditionAmount = OneChoice<{ readonly mass: MassInput; readonly volume: VolumeInput }>;

/** A solvent, with its assay by mass (of spirit: or by volume), or anything else under its name. */
export type RecipeAddition = AdditionAmount &
  (
    | {
        readonly solvent: SolventId;
        readonly assay?: FractionInput | SpiritStrengthInput;
        readonly name?: never;
      }
    | { readonly name: string; readonly solvent?: never; readonly assay?: never }
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
  readonly freeCausticAlkali?: AlkaliContentInput;
}

/** The steps of the work that have a temperature of their own. */
export type RecipeStage = 'lye' | 'saponification' | 'clearing' | 'pouring';

/** A temperature at a stage of the work. */
export interface RecipeTemperature {
  readonly stage: RecipeStage;
  /** Since the lye met the fats. */
  readonly time?: TimeInput;
  readonly temperature: TemperatureInput;
}
