import { molarMass } from '../chemistry/index.js';
import { SPIRIT_CATCHES_FIRE } from '../composition/cautions.js';
import { alkaliCautions } from '../lye/index.js';
import { frozen, noted, readShape, refuse, type Fields, type Remark, type Steps } from '../numbers/index.js';
import {
  readTitrant,
  readVolume,
  type AlkaliContent,
  type Mass,
  type OneChoice,
  type Titrant,
  type TitrantInput,
  type Volume,
  type VolumeInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import {
  readTitration,
  TITRATION_KEYS,
  type Titration,
  type TitrationGiven,
  type TitrationInput,
} from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** Acid given to the soap, all of it. */
export interface AddedAcid {
  readonly titrant: TitrantInput;
  readonly volume: VolumeInput;
}

/**
 * Input of {@link totalFreeAlkaliFromTitration}: acid in excess, titrated back with alkali. The acid is told by what alkali it
 * takes without soap (`blank`, the better way: errors of the titrant cancel) or by strength and volume (`acid`).
 */
export type TotalFreeAlkaliFromTitrationInput = TitrationInput &
  OneChoice<{ readonly blank: VolumeInput; readonly acid: AddedAcid }>;

/** Acid given to the soap, in a result. */
export interface AddedAcidGiven {
  readonly titrant: Titrant;
  readonly volume: Volume;
}

/** Result of {@link totalFreeAlkaliFromTitration}. */
export interface TotalFreeAlkaliFromTitrationResult {
  readonly by: 'totalFreeAlkaliFromTitration';
  /** The inputs as read. */
  readonly given: TitrationGiven & { readonly acid?: AddedAcidGiven };
  /** Caustic and carbonate together, as NaOH, of the soap as it was weighed. */
  readonly totalFreeAlkali: AlkaliContent;
  readonly standardUncertainty: AlkaliContent;
  /** All that was weighed for it. */
  readonly sample: Mass;
  /** What was found out about the readings. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iso-684', 'iupac-2021', 'common-practice']);
const WITH_CARBONATE: Remark = /* @__PURE__ */ frozen({
  code: 'carbonate-counted',
  text: 'Total free alkali takes in carbonate, silicate and borate: it is no measure of free caustic, and no limit of free caustic is for it.',
});

/**
 * Total free alkali of a soap, carbonate included, from acid in excess titrated back with alkali.
 *
 * Formula: `w = c·(B − V)·M(NaOH)/(10·m)`, with B the alkali (mL) that the acid takes without soap, or `B = V₀·c₀/c` from the
 * acid's volume V₀ and strength c₀; V the alkali it takes with soap (mL), c its strength (eq/L), m soap (g). Carbonate
 * alone is what total free alkali exceeds free caustic by.
 *
 * Source: ISO 684 (scope read, formula recalled); atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - sample and volume, or readings; the alkali in eq/L; blank or acid
 * @returns percent NaOH of the soap as weighed
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a reading above the blank) and the faults
 * of a quantity
 *
 * @example
 * ```ts
 * const test = totalFreeAlkaliFromTitration({
 *   sample: { g: 10 },
 *   titrant: { eqPerL: '0.1' },
 *   blank: { mL: '30.10' },
 *   volume: { mL: '22.60' },
 * });
 * test.totalFreeAlkali.percentNaoh.toFixed(2); // => '0.30'
 * ```
 */
export function totalFreeAlkaliFromTitration(
  input: TotalFreeAlkaliFromTitrationInput,
): TotalFreeAlkaliFromTitrationResult {
  return totalFreeAlkaliFromTitrationSteps(input);
}

/** The kernel, with room for the working. */
export function totalFreeAlkaliFromTitrationSteps(
  input: TotalFreeAlkaliFromTitrationInput,
  steps?: Steps,
): TotalFreeAlkaliFromTitrationResult {
  const fields = readShape('input', input, [...TITRATION_KEYS, 'acid']);
  const acid = readAcid(fields);
  const titration =
    acid === undefined ? readTitration(fields, { sampled: 'soap', way: 'back' }) : againstAcid(fields, acid, steps);
  const found = titrated(titration, steps);
  const words = ['total free alkali', 'x·M(NaOH)/10', 'percent NaOH'] as const;
  const { value, uncertainty } = expressed(found, molarMass('NaOH').div(10), words, steps);
  return frozen({
    by: 'totalFreeAlkaliFromTitration',
    given: frozen({ ...titration.given, ...(acid === undefined ? {} : { acid }) }),
    totalFreeAlkali: frozen({ percentNaoh: value }),
    standardUncertainty: frozen({ percentNaoh: uncertainty }),
    sample: found.sample,
    notes: frozen([...found.notes, WITH_CARBONATE]),
    cautions: alkaliCautions(SPIRIT_CATCHES_FIRE),
    basis: BASIS,
    edition: EDITION,
  });
}

function readAcid({ acid, blank }: Fields): AddedAcidGiven | undefined {
  if (acid === undefined) return undefined;
  if (blank !== undefined) refuse('bad-shape', 'input', 'either blank or acid', 'both');
  const { titrant, volume } = readShape('acid', acid, ['titrant', 'volume']);
  return frozen({
    titrant: frozen({ eqPerL: readTitrant('acid.titrant', titrant) }),
    volume: frozen({ mL: readVolume('acid.volume', volume, { above: 0 }) }),
  });
}

/** Against acid known by its strength: the strengths of acid and alkali are then two errors that do not cancel. */
function againstAcid(fields: Fields, { titrant, volume }: AddedAcidGiven, steps?: Steps): Titration {
  const ratio = titrant.eqPerL.div(readTitrant('titrant', fields['titrant']));
  const blank = noted(steps, 'alkali that the acid takes', 'B = V₀·c₀/c', 'mL', volume.mL.times(ratio));
  const titration = readTitration(fields, { sampled: 'soap', way: 'back', blank });
  const { burette, titrant: strength } = titration.uncertainty;
  const ofStrengths = blank.times(strength.percent).div(100).pow(2).times(2);
  const mL = burette.mL.times(ratio).pow(2).plus(ofStrengths).sqrt();
  return { ...titration, uncertainty: frozen({ ...titration.uncertainty, blank: frozen({ mL }) }) };
}
