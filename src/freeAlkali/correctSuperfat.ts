import { glycerylResidueMass, molarMass } from '../chemistry/index.js';
import {
  alkaliCautions,
  CARBONATE_FOAMS,
  hydroxideMolarMass,
  LYE_INTO_HOT_SOAP,
  readAlkaliSource,
  type Alkali,
  type AlkaliSource,
  type ReadSource,
} from '../lye/index.js';
import { frozen, readShape, readWord, refuse, ZERO, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  type Estimate,
  type Mass,
  type MassInput,
  type SaponificationValue,
  type SaponificationValueInput,
} from '../quantities/index.js';
import { lyeSumsAt } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { HEAT_FIRST, TEST_BEFORE_SKIN } from './cautions.js';
import { cationOf } from './cation.js';
import { changesFrom, soapOf, together, type Changes, type ComponentChange } from './changes.js';
import { conventionalAcids } from './data/titration.js';
import { notesOfDecision } from './decisionNotes.js';
import { decisionOf, doseOf, noDose, type CorrectionDecision } from './dose.js';
import { limitsOf, reactionState, readMeasuredValue, type Completion, type CompletionGiven } from './measured.js';
import {
  readMeasuredSuperfat,
  readSuperfatCompletion,
  type MeasuredSuperfat,
  type MeasuredSuperfatGiven,
  type MeasuredSuperfatKind,
} from './measuredSuperfat.js';

/** Input of {@link correctSuperfat}. */
export interface CorrectSuperfatInput {
  /** Soap as it stands in the pot, solvents and water included. */
  readonly batch: MassInput;
  readonly measured: MeasuredSuperfat;
  /** The test an hour of heat before, of the same kind, which must agree; without it nothing is added. */
  readonly reactionComplete?: Completion<MeasuredSuperfat>;
  /** What is to be left free, mg KOH to one gram of soap. */
  readonly target: SaponificationValueInput;
  /** What no dose may fall below, with 95 % confidence; none at all unless stated. */
  readonly notBelow?: SaponificationValueInput;
  /** The alkali to add, with its assay or strength. */
  readonly lye: { readonly alkali: Alkali } & AlkaliSource;
}

/** Result of {@link correctSuperfat}. */
export interface CorrectSuperfatResult {
  readonly by: 'correctSuperfat';
  /** The inputs as read. */
  readonly given: {
    readonly batch: Mass;
    readonly measured: MeasuredSuperfatGiven;
    readonly reactionComplete?: CompletionGiven<MeasuredSuperfatGiven>;
    readonly target: SaponificationValue;
    readonly notBelow: SaponificationValue;
    readonly lye: { readonly alkali: Alkali } & AlkaliSource;
  };
  readonly decision: CorrectionDecision;
  /** Lye to add now. */
  readonly add: Mass;
  /** Lye that the likely figure asks for beyond that: only when another test asks for it too. */
  readonly left: Mass;
  /** What is free once it has been added and has reacted. */
  readonly leaves: Estimate<SaponificationValue>;
  /** What the dose changes in the account of the pot; the masses add up to it. */
  readonly changes: readonly ComponentChange[];
  /** The batch afterwards. */
  readonly after: Mass;
  /** Why nothing, or not all, is added; what was assumed. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const COUNTED_AS_OLEIC: Remark = /* @__PURE__ */ frozen({
  code: 'counted-as-oleic',
  text: 'What is free is counted as oleic acid or its fat (282 g/mol, a convention) where its mass is told; the lye does not depend on it.',
});

/**
 * Lye that takes up too much free acid or fat, and how much of it to add before the next test.
 *
 * Formula: `a − e·g = t·(m + g)`, with a what is free (mol, `w·m/(1000·M(KOH))`), e the hydroxide of one gram of lye (mol), g the
 * lye and m the batch (g), t the target to one gram. As in `correctFreeAlkali` the least that the test allows, against the
 * strongest lye, allows no more than ends at `notBelow`: no dose leaves free caustic. `left` waits for another test.
 *
 * Without two tests an hour of heat apart that agree nothing is added: fat that is free beside free caustic wants heat, not lye.
 * Carbonate of the lye is not counted.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param input - the batch, what was measured free in it, the target and the lye
 * @returns grams to add now, what they leave and change; cautions
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a target above what was measured, a sample above
 * the batch) and the faults of a source or quantity
 *
 * @example
 * ```ts
 * const measured = { acidValue: { mgKohPerG: '4.1' }, standardUncertainty: { mgKohPerG: '0.1' } };
 * const mend = correctSuperfat({
 *   batch: { kg: 5 },
 *   measured,
 *   reactionComplete: { earlier: measured, apart: { hours: 1 } },
 *   target: { mgKohPerG: 1 },
 *   lye: { alkali: 'naoh', solution: { hydroxide: { percent: 30 } } },
 * });
 * [mend.decision, mend.add.g.toFixed(1)]; // => ['add', '36.7']
 * ```
 */
export function correctSuperfat(input: CorrectSuperfatInput): CorrectSuperfatResult {
  return correctSuperfatSteps(input);
}

const KEYS = ['batch', 'measured', 'reactionComplete', 'target', 'notBelow', 'lye'];

/** The kernel, with room for the working. */
export function correctSuperfatSteps(input: CorrectSuperfatInput, steps?: Steps): CorrectSuperfatResult {
  const fields = readShape('input', input, KEYS);
  const batch = readMass('batch', fields['batch'], { min: '1e-3' });
  const measured = readMeasuredSuperfat('measured', fields['measured'], batch);
  const completion = readSuperfatCompletion(fields['reactionComplete'], batch, measured.kind);
  const { value: found } = measured.measurement;
  const target = readMeasuredValue('target', fields['target']);
  if (target.gt(found))
    refuse('out-of-range', 'target', `at most what was measured, ${found.toString()}`, target.toString());
  const notBelow = fields['notBelow'] === undefined ? ZERO : readMeasuredValue('notBelow', fields['notBelow']);
  if (notBelow.gt(target))
    refuse('out-of-range', 'notBelow', `at most the target, ${target.toString()}`, notBelow.toString());
  const lye = readLye(fields['lye']);

  const perMol = molarMass('KOH').times(1000);
  const mol = (mgKohPerG: Decimal): Decimal => mgKohPerG.div(perMol);
  const hydroxide = hydroxideMolarMass(lye.alkali);
  const correction = {
    batch,
    found: mapEnds(limitsOf(measured.measurement), mol),
    target: mol(target),
    bound: mol(notBelow),
    perGram: mapEnds(lye.source.hydroxide, (share) => share.div(hydroxide)),
  };
  const state = reactionState(measured.measurement, completion?.measured.measurement, completion?.given.apart);
  const isComplete = state === 'complete';
  const dose = isComplete ? doseOf(correction, steps) : noDose(correction);
  const decision = isComplete ? decisionOf(dose) : 'heat-and-test-again';
  const value = (mgKohPerG: Decimal): SaponificationValue => frozen({ mgKohPerG });
  const carbonate = lye.source.carbonate?.high.gt(0) ?? false;
  return frozen({
    by: 'correctSuperfat',
    given: frozen({
      batch: frozen({ g: batch }),
      measured: measured.given,
      ...(completion === undefined ? {} : { reactionComplete: completion.given }),
      target: value(target),
      notBelow: value(notBelow),
      lye: frozen({ alkali: lye.alkali, ...lye.source.given }),
    }),
    decision,
    add: frozen({ g: dose.add }),
    left: frozen({ g: dose.left }),
    leaves: mapEnds(dose.leaves, (perGram) => value(perGram.times(perMol))),
    changes: changesFrom(changesOf(lye, dose.add, measured.kind), steps),
    after: frozen({ g: batch.plus(dose.add) }),
    notes: frozen([...notesOfDecision(decision, state), COUNTED_AS_OLEIC]),
    cautions: alkaliCautions(
      ...(isComplete ? [] : [HEAT_FIRST]),
      LYE_INTO_HOT_SOAP,
      ...(carbonate ? [CARBONATE_FOAMS] : []),
      TEST_BEFORE_SKIN,
    ),
    basis: BASIS,
    edition: EDITION,
  });
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>([
  'iupac-2021',
  'iso-660',
  'ghs-naoh',
  'common-practice',
]);

interface ReadLye {
  readonly alkali: Alkali;
  readonly source: ReadSource;
}

function readLye(value: unknown): ReadLye {
  const { alkali: named, ...source } = readShape('lye', value, ['alkali', 'solid', 'solution']);
  const alkali = readWord('lye.alkali', named, ['naoh', 'koh']);
  return { alkali, source: readAlkaliSource('lye', source, alkali) };
}

/** Lye that becomes soap whole, with acid or with fat; the rest of it as it is. */
function changesOf({ alkali, source }: ReadLye, grams: Decimal, kind: MeasuredSuperfatKind): Changes {
  const sums = lyeSumsAt([{ alkali, grams, source }], ZERO, 'likely');
  const { hydroxide: mol, carbonate } = sums[alkali];
  const carbonateGrams =
    source.carbonate === undefined || carbonate.isZero() ? ZERO : grams.times(source.carbonate.likely);
  const acid = mol.times(conventionalAcids.oleic.gPerMol);
  const soap = soapOf(acid.minus(mol.times(molarMass('H'))), mol, cationOf(alkali));
  const lye: Changes = { water: sums.water, carbonate: carbonateGrams, other: sums.other };
  if (kind === 'acidValue') {
    return together(lye, { ...soap, freeAcid: acid.neg(), water: mol.times(molarMass('H2O')) });
  }
  return together(lye, {
    ...soap,
    freeFat: acid.plus(mol.times(glycerylResidueMass()).div(3)).neg(),
    glycerol: mol.times(molarMass('C3H8O3')).div(3),
  });
}
