import type { MadeComposition, ComposedFrom } from '../composition/index.js';
import { readFatCharges, type ChargedFatInput, type FatCharge } from '../fats/index.js';
import { frozen, noted, readShape, readWord, type Remark, type Steps } from '../numbers/index.js';
import { givenFats, type ChargedFat } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { readCharge, type Charge } from './charge.js';
import type { PublishedForm } from './data/formulaRows.js';
import { distancesFrom, nearestOf, type NearFormula, type OwnFigures } from './nearest.js';
import * as notes from './notes.js';
import { isClear, isInferred, LEAST_CLEAR_FORMULAS } from './outcomes.js';
import { figuresBeside, type PlacedFigures } from './placedFigures.js';
import { palmiticAndStearicOf, type PalmiticAndStearic } from './palmiticAndStearic.js';
import { clearingAgentsOf, isComplete, precedentOf, type Precedent, type SoapKind } from './precedent.js';
import { publishedFormulas, type PublishedFormula } from './publishedFormulas.js';
import { windowsBeside, type ComparedWindow } from './windows.js';

/** Input of {@link placeAmongPublished}. */
export interface PlaceAmongPublishedInput {
  /** A result of `compositionFrom`, also one read back from JSON; what evaporated is not counted. */
  readonly composition: MadeComposition;
  /** The fats whose palmitic and stearic acid count; those of the composition unless stated. */
  readonly fats?: readonly ChargedFatInput[];
  /** What it is to be; a bar unless stated. */
  readonly form?: PublishedForm;
}

/** Result of {@link placeAmongPublished}. */
export interface PlaceAmongPublishedResult {
  readonly by: 'placeAmongPublished';
  /** The inputs as read. */
  readonly given: {
    readonly composition: ComposedFrom;
    readonly fats?: readonly ChargedFat[];
    readonly form: PublishedForm;
  };
  /** As charged. Palmitic with stearic acid is left out where a fat has no profile. */
  readonly figures: PlacedFigures;
  readonly kind: SoapKind;
  readonly precedent: Precedent;
  /** At most five complete formulas of this form, nearest first. */
  readonly nearest: readonly NearFormula[];
  /** At most three with the same clearing agents, nearest first: of this form, or of others where this form has none. */
  readonly sameAgents: readonly NearFormula[];
  /** Published windows of this form, with the base's own figures beside their limits. */
  readonly windows: readonly ComparedWindow[];
  /** What the evidence cannot say. */
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * Where a base stands among published formulas: three leading figures beside those of clear formulas and of others, the
 * formulas nearest to it, and whether there is any of its kind.
 *
 * Compared is what was charged, nothing evaporated: clearing agents (polyols, sugars and spirits) to anhydrous soap, palmitic
 * with stearic acid in percent of the fats, and water in percent of the whole. Distance: each difference as a part of the
 * spread of the complete formulas of the same form, `√(Σ((a − b)/spread)²/n)`, over the n figures that both sides tell.
 *
 * Bars stand beside bars; of what is not clear, soft soaps and creams are counted with them. No verdict is given while fewer
 * than 30 clear formulas stand behind a range (a convention); stated and inferred outcomes are never added together. Low and
 * high are exact over all lots and assays. Free alkali is left to its limits.
 *
 * Source: the published formulas and windows, each with its own.
 *
 * @param input - the composition, other fats where they tell more, and the form
 * @returns leading figures with bounds, counts, the nearest formulas and the windows; shares in percent
 * @throws CalculationError `missing` or `bad-shape` for what is no composition or form, and the faults of its inputs
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 300 } }, { fat: fat('stearic-acid-50'), mass: { g: 100 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 142 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const composition = compositionFrom({
 *   soap,
 *   additions: [
 *     { solvent: 'glycerol', mass: { g: 150 }, assay: { percent: '99.5' } },
 *     { solvent: 'sorbitol', mass: { g: 250 }, assay: { percent: 70 } },
 *   ],
 * });
 * const { figures, precedent, kind } = placeAmongPublished({ composition });
 * figures.clearingAgentsPerSoap.value.likely.partsPerPart.toFixed(2); // => '0.87'
 * [figures.water.clear.stated.count, figures.water.place]; // => [12, 'too-few-clear-formulas']
 * kind.clearingAgents; // => 'polyol-only'
 * precedent.clear.stated; // => 0
 * ```
 */
export function placeAmongPublished(input: PlaceAmongPublishedInput): PlaceAmongPublishedResult {
  return placeAmongPublishedSteps(input);
}

const FORMS = ['bar', 'soft', 'cream', 'gel', 'liquid'] as const;

/** The kernel, with room for the working. */
export function placeAmongPublishedSteps(input: PlaceAmongPublishedInput, steps?: Steps): PlaceAmongPublishedResult {
  return placeAmong(publishedFormulas(), input, steps);
}

/** The same among any formulas. */
export function placeAmong(
  formulas: readonly PublishedFormula[],
  input: PlaceAmongPublishedInput,
  steps?: Steps,
): PlaceAmongPublishedResult {
  const fields = readShape('input', input, ['composition', 'fats', 'form']);
  const charge = readCharge('composition', fields['composition']);
  const fats = fields['fats'] === undefined ? undefined : readFatCharges('fats', fields['fats']);
  const form = fields['form'] === undefined ? 'bar' : readWord('form', fields['form'], FORMS);
  const counted = fats ?? charge.pot.soap.fats;
  const acids = palmiticAndStearicOf(counted);
  const own = ownFigures(charge, acids, steps);

  const kind: SoapKind = frozen({ form, clearingAgents: clearingAgentsOf(charge.pot) });
  const precedent = precedentOf(kind, charge.pot, charge.figures.soap.likely, formulas);
  const complete = formulas.filter(isComplete);
  const sameForm = complete.filter((one) => one.form === form);
  const distanceOf = distancesFrom(own, sameForm);
  const nearest = nearestOf(sameForm, distanceOf, 5);
  if (nearest[0] !== undefined) {
    noted(steps, `distance to ${nearest[0].id}`, '√(Σ((a − b)/spread)²/n)', '% of spread', nearest[0].distance.percent);
  }
  const sameAgents = complete.filter(({ clearingAgents }) => clearingAgents === kind.clearingAgents);
  const sameKind = sameAgents.filter((one) => one.form === form);
  const akin = sameKind.length > 0 ? sameKind : sameAgents;
  const windows = windowsBeside(charge, form);
  const beside = complete.filter((one) => one.form === form || (form === 'bar' && isSoftNotClear(one)));
  return frozen({
    by: 'placeAmongPublished',
    given: frozen({ composition: charge.given, ...(fats === undefined ? {} : { fats: givenFats(fats) }), form }),
    figures: figuresBeside(own, beside),
    kind,
    precedent,
    nearest,
    sameAgents: nearestOf(akin, distanceOf, 3),
    windows,
    notes: notesOf(charge, acids, precedent, sameForm),
    basis: basisOf(charge, counted, [...beside, ...akin, ...windows]),
    edition: EDITION,
  });
}

/** Soft soaps and creams set cold as bars do; what is not clear among them is counted beside bars. */
const isSoftNotClear = (one: PublishedFormula): boolean => ['soft', 'cream'].includes(one.form) && !isClear(one);

function ownFigures({ figures }: Charge, acids: PalmiticAndStearic, steps?: Steps): OwnFigures {
  const { clearingAgentsPerSoap, water } = figures;
  noted(steps, 'clearing agents to soap', 'Σ m / Σ m', 'parts to one part', clearingAgentsPerSoap.likely);
  if (acids.percent !== undefined) {
    noted(steps, 'palmitic with stearic acid', 'Σ m·(w(C16:0) + w(C18:0)) / Σ m', '%', acids.percent.likely);
  }
  noted(steps, 'water', 'm(water) / Σ m', '%', water.likely);
  return { clearingAgentsPerSoap, palmiticAndStearic: acids.percent, water };
}

function notesOf(
  { hadLoss, pot }: Charge,
  acids: PalmiticAndStearic,
  { unseen }: Precedent,
  sameForm: readonly PublishedFormula[],
): readonly Remark[] {
  const clear = sameForm.filter((one) => isClear(one) && !isInferred(one));
  const claimed = clear.filter(({ outcomeBasis }) => outcomeBasis === 'claimed').length;
  return frozen([
    ...(clear.length < LEAST_CLEAR_FORMULAS ? [notes.fewFormulas(clear.length, claimed, LEAST_CLEAR_FORMULAS)] : []),
    notes.CLEAR_BY_WORD,
    ...(acids.percent === undefined ? [notes.withoutProfile(acids.withoutProfile)] : [notes.TYPICAL_OILS]),
    ...(unseen.length === 0 ? [] : [notes.notPublished(unseen)]),
    ...(pot.additions.some(({ holds }) => holds === 'other') ? [notes.SURFACTANT_NOT_SEEN] : []),
    ...(hadLoss ? [notes.AS_CHARGED] : []),
    notes.ALKALI_IS_NO_CLARITY,
    notes.NOT_IN_PRINT,
  ]);
}

function basisOf(
  { pot }: Charge,
  fats: readonly FatCharge[],
  published: readonly { readonly source: SourceId }[],
): readonly SourceId[] {
  return frozen([
    ...new Set<SourceId>([
      ...pot.soap.basis,
      ...fats.flatMap(({ fat }) => fat.basis),
      ...published.map(({ source }) => source),
      'laurate-convention',
    ]),
  ]);
}
