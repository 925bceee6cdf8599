import { placeAmongPublishedSteps, type PlaceAmongPublishedResult } from '../clarity/index.js';
import {
  batchVolumeOfSteps,
  ratiosOfSteps,
  totalFattyMatterOfSteps,
  type BatchVolume,
  type Composition,
  type Ratios,
  type TotalFattyMatter,
} from '../composition/index.js';
import type { Fat } from '../fats/index.js';
import { frozen, noted, readShape, type Remark, type Steps } from '../numbers/index.js';
import {
  type AlkaliContent,
  type Amount,
  type Estimate,
  type Fraction,
  type Mass,
  type MassRatio,
} from '../quantities/index.js';
import {
  checkTemperaturesSteps,
  orderOfWork,
  processWindows,
  type CheckTemperaturesResult,
  type ProcessWindow,
  type WorkStep,
} from '../process/index.js';
import type { ReadRecipe, Recipe } from '../recipe/index.js';
import { potCautions, readTarget, type PlannedLye, type SoapFromLyeResult } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { coarseScaleNotes } from './coarseScale.js';
import { costOf, type Cost } from './cost.js';
import { heatOf, type BatchHeat } from './heat.js';
import { ingredientsOf, type IngredientKind } from './ingredients.js';
import { madeRecipe } from './madeRecipe.js';
import { mouldsOf, type Moulds } from './moulds.js';
import { namingOptions } from './optionPaths.js';
import { potOf } from './pot.js';
import {
  BATCH_OPTION_KEYS,
  lossOf,
  readBatchOptions,
  type GivenBatchOptions,
  type PlanBatchOptions,
} from './readBatchOptions.js';
import { givenRecipe, readRecipeToPlan, type RecipeToPlan } from './recipeToPlan.js';
import { lyeOf } from './lyeOfRecipe.js';
import { scaleFactor } from './scaleFactor.js';
import { weighedRecipe } from './weighedRecipe.js';

/** One line of a weigh-out list. */
export interface WeighedItem {
  readonly kind: IngredientKind;
  /** Name of the fat, `naoh`, `koh`, `water`, a solvent's id, or an addition's name. */
  readonly item: string;
  readonly mass: Mass;
}

/** A batch as it is to be made. */
export interface Batch {
  readonly by: 'planBatch';
  /** The inputs as read. */
  readonly given: { readonly recipe: unknown; readonly options: GivenBatchOptions };
  /** The recipe as it is made: every mass is what is weighed. It can be stored, audited, and planned again. */
  readonly recipe: ReadRecipe;
  /** The same as a list: fats, alkali as it stands in the store, water, additions. */
  readonly weigh: readonly WeighedItem[];
  /** What every mass of the recipe as written was multiplied by; its lye apart, where it was planned. */
  readonly scale: MassRatio;
  /** Alkali and its water together. */
  readonly lye: PlannedLye;
  /** Hydroxide charged at the likely assay. */
  readonly hydroxide: Amount;
  /** Alkali demand left unmet; negative is alkali in excess. */
  readonly superfat: Estimate<Fraction>;
  /** Fat left unsaponified, share of the fats by mass. */
  readonly superfatByMass: Estimate<Fraction>;
  /** Caustic left after complete reaction, share of the finished batch. */
  readonly freeCausticAlkali: Estimate<AlkaliContent>;
  readonly soap: SoapFromLyeResult;
  /** What is in the finished batch. */
  readonly composition: Composition;
  readonly ratios: Ratios;
  readonly fattyMatter: TotalFattyMatter;
  /** Beside the published formulas: as a bar, or as a soft soap where all alkali is KOH. */
  readonly place: PlaceAmongPublishedResult;
  /** At pouring. */
  readonly volume: BatchVolume;
  readonly heat: BatchHeat;
  /** Steps of the alcohol-free route, in their order. */
  readonly order: readonly WorkStep[];
  /** The windows that temperatures of that route are judged by. */
  readonly windows: readonly ProcessWindow[];
  /** The temperatures that the recipe writes down, against these windows. */
  readonly temperatures?: CheckTemperaturesResult;
  readonly moulds?: Moulds;
  readonly cost?: Cost;
  /** What was assumed. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * A whole batch: what to weigh, what becomes of it, and what lots and assays do to that.
 *
 * The recipe is scaled (`scaleTo`); where it has a target, its lye is worked out anew by `planLye`, for the fats as they
 * are weighed and the water as it is written; without a target the lye is taken as charged. Fats and additions are rounded to the
 * scale so that their sum keeps, water to the nearest, alkali down; everything else is then worked out from the masses as
 * rounded. What the recipe claims is left to `auditRecipe`.
 *
 * Formula: scale `k = m(wanted)/m(finished, as written)`; of moulds `m(wanted) = N·V·ρ`, with the density of the densest lot, so
 * that all are full; of a stock `k = m(stock)/m(written)`. Moulds filled: `⌊V(low)/V(mould)⌋`. Cost: `Σ m·price`.
 *
 * Sources: those of the functions called, in `basis`; 62 °C for pouring is common practice.
 *
 * @param recipe - a recipe as `readRecipe` takes it, additions by mass and solvents with their assay; its lye may go without mass where
 *   there is a target
 * @param options - own fats; scaling; the step of the scale; what evaporates; moulds; prices
 * @returns grams to weigh, the recipe as made, lye, soap, composition, ratios, volume, moulds and cost, with bounds
 * @throws CalculationError those of `readRecipe`, `planLye` and `compositionFrom`; `missing` (an assay, the number of moulds to
 *   fill, a price), `bad-shape` (an addition by volume), `infeasible` (a scale step that leaves nothing of a row), `unknown-key` (a
 *   stock or price of nothing in the recipe)
 *
 * @example
 * ```ts
 * const batch = planBatch(
 *   {
 *     version: 1,
 *     fats: [{ fat: 'coconut-oil', mass: { g: 700 } }],
 *     lye: [{ alkali: 'naoh', solution: { hydroxide: { percent: 50 } } }],
 *     additions: [{ solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } }],
 *     target: { superfat: { percent: 2 } },
 *   },
 *   { scaleTo: { batchMass: { kg: 3 } }, scaleStep: { g: 1 } },
 * );
 * batch.weigh.map(({ item, mass }) => `${item} ${mass.g.toString()}`); // => ['Coconut oil 1755', 'naoh 618', 'glycerol 626']
 * ```
 */
export function planBatch(recipe: Recipe | RecipeToPlan, options: PlanBatchOptions = {}): Batch {
  return planBatchSteps({ recipe, options });
}

/** The kernel, with room for the working. */
export function planBatchSteps(input: PlanBatchInput, steps?: Steps): Batch {
  return namingOptions(() => batchOf(input, steps));
}

interface PlanBatchInput {
  readonly recipe: unknown;
  readonly options?: unknown;
}

function batchOf(input: PlanBatchInput, steps?: Steps): Batch {
  const { fats, ...rest } = readShape('options', input.options ?? {}, BATCH_OPTION_KEYS);
  const toPlan = readRecipeToPlan(input.recipe, fats === undefined ? {} : { fats: fats as Record<string, Fat> });
  const options = readBatchOptions('options', rest);
  const factor = scaleFactor(toPlan, options);
  noted(steps, 'scale', 'm(wanted)/m(as written)', 'parts to one part', factor);
  const weighing = { factor, scaleStep: options.scaleStep?.g, evaporated: lossOf(options) };
  const weighed = weighedRecipe(toPlan, weighing, steps);
  const pot = potOf(weighed, factor, options, steps);
  const { soap, composition } = pot;
  const volume = batchVolumeOfSteps({ composition, temperature: options.pourAt }, steps);
  const fattyMatter = totalFattyMatterOfSteps(composition, steps);
  const ratios = ratiosOfSteps(composition, steps);
  // soap of potash alone is no bar
  const form = weighed.lye.every(({ alkali }) => alkali === 'koh') ? 'soft' : 'bar';
  const place = placeAmongPublishedSteps({ composition, form }, steps);
  const heat = heatOf(pot.input, options, steps);
  const { temperatures: readings = [] } = toPlan.recipe;
  const temperatures = readings.length === 0 ? undefined : checkTemperaturesSteps({ readings }, steps);
  const moulds = options.moulds && mouldsOf(volume, options.moulds);
  const ingredients = ingredientsOf(weighed);
  const cost = options.prices && costOf(ingredients, options.prices, composition.mass, moulds, steps);
  const parts: readonly Part[] = [
    composition,
    ratios,
    fattyMatter,
    place,
    volume,
    heat.reaction,
    ...(heat.portions === undefined ? [] : [heat.portions]),
    ...(temperatures === undefined ? [] : [temperatures]),
  ];
  const lye = lyeOf(weighed);
  const { target } = toPlan.recipe;
  const superfat = target && readTarget('target', target).superfat?.percent;
  const made = { addsWater: weighed.water.gt(0), strength: lye.strength, asked: { superfat } };
  // of pot, heat and pouring; those of the lye stand before them. A log warns of spirit without knowing of any.
  const ofTheLye = [...soap.cautions, ...potCautions(weighed.fats, weighed.lye, soap, made)];
  const ofTheWork = together(composition.cautions, heat.reaction.cautions, volume.cautions).filter(
    (remark) => !ofTheLye.includes(remark),
  );
  return frozen({
    by: 'planBatch',
    given: frozen({ recipe: givenRecipe(toPlan), options }),
    recipe: madeRecipe(toPlan.recipe, pot),
    weigh: frozen(
      ingredients.map(({ kind, names: [item], grams }) => frozen({ kind, item, mass: frozen({ g: grams }) })),
    ),
    scale: frozen({ partsPerPart: factor }),
    lye,
    hydroxide: soap.charged.likely,
    superfat: soap.superfat,
    superfatByMass: soap.superfatByMass,
    freeCausticAlkali: composition.freeCausticAlkali,
    soap,
    composition,
    ratios,
    fattyMatter,
    place,
    volume,
    heat,
    order: orderOfWork(),
    windows: frozen(processWindows().filter(({ judges }) => judges)),
    ...(temperatures === undefined ? {} : { temperatures }),
    ...(moulds === undefined ? {} : { moulds }),
    ...(cost === undefined ? {} : { cost }),
    notes: together(
      ...parts.map(({ notes = [] }) => notes),
      heat.notes,
      coarseScaleNotes(weighed.lye, options.scaleStep?.g),
    ),
    cautions: potCautions(weighed.fats, weighed.lye, soap, made, ofTheWork),
    basis: frozen([...new Set(parts.flatMap(({ basis }) => basis))]),
    edition: EDITION,
  });
}

/** What a part of a batch says of itself. */
interface Part {
  readonly notes?: readonly Remark[];
  readonly basis: readonly SourceId[];
}

/** Lists of remarks as one, each remark once, in the order of the lists. */
function together(...lists: readonly (readonly Remark[])[]): readonly Remark[] {
  return frozen([...new Map(lists.flat().map((remark) => [remark.text, remark])).values()]);
}
