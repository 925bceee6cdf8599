import { frozen, noted, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  type AlkaliContent,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type Ranged,
} from '../quantities/index.js';
import { HOT_SOAP_SCALDS } from '../lye/index.js';
import { extremesOf, potCautions } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { AdditionInput } from './additions.js';
import {
  ACID_INTO_HOT_SOAP,
  ALKALI_AMONG_ADDITIONS,
  AMINE_HIDES_ALKALI,
  SPIRIT_CATCHES_FIRE,
  SUGAR_IN_HOT_LYE,
} from './cautions.js';
import { isAnyNamed, isNamedSpirit, namedAcid } from './namedAdditions.js';
import { isNamedAlkali } from './namedAlkalis.js';
import { readChargedPot, type ChargedPot, type GivenComposition, type MadeSoap } from './chargedPot.js';
import { COMPONENTS, SPIRITS, SUGARS, type ComponentName } from './components.js';
import {
  ACID_NOT_COUNTED,
  AMINE_AS_CHARGED,
  REST_IS_OTHER,
  REST_IS_WATER,
  SPIRITS_IN_PROPORTION,
  SPLIT_UNKNOWN,
} from './notes.js';

/** Input of {@link compositionFrom}. */
export interface CompositionFromInput {
  /** A result of `soapFromLye`, also one read back from JSON. */
  readonly soap: MadeSoap;
  /** What is added beside fats, lye and their water; an empty list where there is nothing. */
  readonly additions: readonly AdditionInput[];
  /** What has evaporated. Not beside `potMass`; without either nothing has. */
  readonly evaporated?: MassInput;
  /** What the pot holds now, by the scale. */
  readonly potMass?: MassInput;
  /** Spirit in what has evaporated, share by mass; without it all that is possible is reckoned with. */
  readonly spiritShareOfLoss?: Ranged<FractionInput>;
}

/** One component of a pot. */
export interface ComponentAmount {
  readonly mass: Estimate<Mass>;
  /** Share of what is in the pot. */
  readonly share: Estimate<Fraction>;
}

/** The glycerol of a pot. */
export interface GlycerolAmount extends ComponentAmount {
  /** What the fats set free. */
  readonly formed: Estimate<Mass>;
  /** What was weighed in. */
  readonly added: Estimate<Mass>;
}

/** What is in a pot. The likely masses add up to `mass`; low and high do not. */
export interface Composition {
  readonly by: 'compositionFrom';
  /** The inputs as read; assays by mass. */
  readonly given: GivenComposition;
  /**
   * Anhydrous soaps; glycerol, formed and added; spirits, glycols, sugars and triethanolamine, each as pure substance; all
   * water; fat and acid left free; sodium and potassium hydroxide left (`freeCaustic`); carbonate of the alkalis;
   * unsaponifiable matter; salts; and what else was added or is not known.
   */
  readonly components: Readonly<Record<Exclude<ComponentName, 'glycerol'>, ComponentAmount>> & {
    readonly glycerol: GlycerolAmount;
  };
  /** All that is in the pot. */
  readonly mass: Estimate<Mass>;
  /** Everything weighed in. */
  readonly charge: Mass;
  /** What has left the pot. */
  readonly gone: {
    readonly water: Estimate<Mass>;
    readonly spirit: Estimate<Mass>;
    readonly carbonDioxide: Estimate<Mass>;
  };
  /** Caustic left, share of what is in the pot. */
  readonly freeCausticAlkali: Estimate<AlkaliContent>;
  /** Soap that triethanolamine can have made of free acid, where it is there; not in the components. */
  readonly triethanolamineSoapAtMost?: Mass;
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
 * What is in the pot: soap, glycerol, solvents, sugars, water and what is left over, each by mass and share.
 *
 * Formula: each component is what the reaction leaves of it and what the additions bring, `m = m(made) + Σ mᵢ·wᵢ`, with w
 * the assay; the rest of an addition, `mᵢ·(1 − wᵢ)`, is water (of triethanolamine: other). A loss is water; where there is
 * spirit it is split as stated, or anything from all water to all spirit. Share: `m / Σ m`.
 *
 * Low and high are exact over all lots, assays and splits. A sorbitol solution is stated by its dry substance; spirit by
 * mass or, ethanol alone, by volume at 20 °C. Left out: reactions of sugars and amines with lye, and partial saponification.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; spirit by volume: OIML R 22.
 *
 * @param input - the soap made, the additions as weighed, and what has evaporated or what the pot weighs now
 * @returns grams and percent by mass of each component, with bounds
 * @throws CalculationError `missing` (an assay, a loss to have a share of), `unknown-unit` (percent by volume of anything but ethanol), `infeasible` (a
 *   loss greater than the water and spirit there are, a pot heavier than what was charged), `bad-shape`, `unknown-key`,
 *   `out-of-range` and the faults of a quantity
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const { components, mass } = compositionFrom({
 *   soap,
 *   additions: [
 *     { solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } },
 *     { solvent: 'sorbitol', mass: { g: 200 }, assay: { percent: 70 } },
 *   ],
 *   evaporated: { g: 20 },
 * });
 * mass.likely; // => { g: '1376' }
 * components.water.share.likely.percent.toFixed(1); // => '11.9'
 * ```
 */
export function compositionFrom(input: CompositionFromInput): Composition {
  return compositionFromSteps(input);
}

/** The kernel, with room for the working. */
export function compositionFromSteps(input: CompositionFromInput, steps?: Steps): Composition {
  const pot = readChargedPot('', input, steps);
  const figures = extremesOf(pot.dimensions, (place) => {
    const { grams, all, glycerol, gone, carbonDioxide, causticAsNaoh, triethanolamineSoap, turning } = pot.at(place);
    const percent = (part: Decimal): Decimal => part.times(100).div(all);
    const shares = COMPONENTS.map((name) => [`share of ${name}`, percent(grams[name])] as const);
    return {
      figures: {
        ...grams,
        ...(Object.fromEntries(shares) as Record<`share of ${ComponentName}`, Decimal>),
        ...glycerol,
        all,
        waterGone: gone.water,
        spiritGone: gone.spirit,
        carbonDioxide,
        percentNaoh: percent(causticAsNaoh),
        triethanolamineSoap,
      },
      turning,
    };
  });
  const mass = (key: keyof typeof figures): Estimate<Mass> => mapEnds(figures[key], (g) => frozen({ g }));
  const amount = (name: ComponentName): ComponentAmount => ({
    mass: mass(name),
    share: mapEnds(figures[`share of ${name}`], (percent) => frozen({ percent })),
  });
  for (const name of COMPONENTS) noted(steps, name, 'm(made) + Σ m·w, less what is gone', 'g', figures[name].likely);
  noted(steps, 'all that is in the pot', 'm(charged) − m(gone)', 'g', figures.all.likely);
  const amounts = COMPONENTS.map((name) => [name, frozen(amount(name))] as const);
  return frozen({
    by: 'compositionFrom',
    given: pot.given,
    components: frozen({
      ...(Object.fromEntries(amounts) as Record<ComponentName, ComponentAmount>),
      glycerol: frozen({ ...amount('glycerol'), formed: mass('formed'), added: mass('added') }),
    }),
    mass: mass('all'),
    charge: frozen({ g: pot.charge }),
    gone: frozen({ water: mass('waterGone'), spirit: mass('spiritGone'), carbonDioxide: mass('carbonDioxide') }),
    freeCausticAlkali: mapEnds(figures.percentNaoh, (percentNaoh) => frozen({ percentNaoh })),
    ...(holds(pot, 'triethanolamine')
      ? { triethanolamineSoapAtMost: frozen({ g: figures.triethanolamineSoap.high }) }
      : {}),
    notes: notesOf(pot),
    cautions: cautionsOf(pot),
    basis: basisOf(pot),
    edition: EDITION,
  });
}

/** Whether something was weighed in that is this component, or one of these. */
function holds({ additions }: ChargedPot, ...names: readonly ComponentName[]): boolean {
  return additions.some(({ component }) => names.includes(component));
}

const isNamedAcid = (name: string): boolean => namedAcid(name) !== undefined;

function notesOf(pot: ChargedPot): readonly Remark[] {
  const impure = pot.additions.filter(({ holds: held }) => typeof held === 'object' && held.share.low.lt(1));
  const rests = new Set(
    impure.map(({ component }) => (component === 'triethanolamine' ? REST_IS_OTHER : REST_IS_WATER)),
  );
  return frozen([
    ...pot.soap.notes,
    ...rests,
    ...(pot.dimensions.includes('loss') && pot.loss.spiritShare === undefined ? [SPLIT_UNKNOWN] : []),
    ...(SPIRITS.every((spirit) => holds(pot, spirit)) ? [SPIRITS_IN_PROPORTION] : []),
    ...(holds(pot, 'triethanolamine') ? [AMINE_AS_CHARGED] : []),
    ...(isAnyNamed(pot.additions, isNamedAcid) ? [ACID_NOT_COUNTED] : []),
  ]);
}

function cautionsOf(pot: ChargedPot): readonly Remark[] {
  const { fats, lye, balance } = pot.soap;
  return potCautions(fats, lye, balance, undefined, [...cautionsOfAdditions(pot), HOT_SOAP_SCALDS]);
}

/** The cautions of what is in a pot beside fats and lye, whenever it went in. */
export function cautionsOfAdditions(pot: ChargedPot): readonly Remark[] {
  return [
    ...(isAnyNamed(pot.additions, isNamedAlkali) ? [ALKALI_AMONG_ADDITIONS] : []),
    ...(holds(pot, ...SPIRITS) || isAnyNamed(pot.additions, isNamedSpirit) ? [SPIRIT_CATCHES_FIRE] : []),
    ...(holds(pot, ...SUGARS) ? [SUGAR_IN_HOT_LYE] : []),
    ...(holds(pot, 'triethanolamine') ? [AMINE_HIDES_ALKALI] : []),
    ...(isAnyNamed(pot.additions, isNamedAcid) ? [ACID_INTO_HOT_SOAP] : []),
  ];
}

function basisOf(pot: ChargedPot): readonly SourceId[] {
  // spirit stated by volume is in `given` by mass
  const more: readonly SourceId[] = holds(pot, 'ethanol') ? ['oiml-r-22'] : [];
  return frozen([...new Set([...pot.soap.basis, ...more])]);
}
