import { molarMass } from '../chemistry/index.js';
import {
  alkaliCautions,
  CARBONATE_FOAMS,
  CRYSTALLISED_STOCK,
  HOT_SOAP_SCALDS,
  hydroxideMolarMass,
  LYE_INTO_HOT_SOAP,
  mayFreezeInStore,
  SOLID_INTO_COLD_WATER,
  type Alkali,
  type AlkaliSource,
} from '../lye/index.js';
import { frozen, readShape, ZERO, type Decimal, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  type Estimate,
  type Mass,
  type MassInput,
  type SaponificationValue,
  type SaponificationValueInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { TEST_BEFORE_SKIN } from './cautions.js';
import { readAddedLye, lyeChanges } from './addedLye.js';
import { changesFrom, type ComponentChange } from './changes.js';
import { corrected, readAims, type CorrectionDecision } from './corrected.js';
import { AMINE_READS_AS_ACID } from './notes.js';
import { readFlag } from './readFlag.js';
import { readMeasuredValue, type Completion, type CompletionGiven } from './measured.js';
import {
  readMeasuredSuperfat,
  readSuperfatCompletion,
  type MeasuredSuperfat,
  type MeasuredSuperfatGiven,
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
  /** Whether the soap holds triethanolamine, whose soap is titrated as free acid, so that nothing is dosed; not unless stated. */
  readonly triethanolamine?: boolean;
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
    readonly triethanolamine: boolean;
  };
  readonly decision: CorrectionDecision;
  /** Lye to add now. */
  readonly add: Mass;
  /**
   * Lye that the likely figure asks for beyond that: only when another test asks for it too. Where it is too much to
   * correct, all that it would take, to show how much that is.
   */
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
 * Carbonate of the lye is not counted. When two tests agree, and when a dose is large or too much, is decided as there.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param input - the batch, what was measured free in it, the target and the lye
 * @returns grams to add now, what they leave and change; cautions
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a target above what was measured with its
 * uncertainty, a sample above the batch, an uncertainty of 0) and the faults of a source or quantity
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

const KEYS = ['batch', 'measured', 'reactionComplete', 'target', 'notBelow', 'lye', 'triethanolamine'];

/** The kernel, with room for the working. */
export function correctSuperfatSteps(input: CorrectSuperfatInput, steps?: Steps): CorrectSuperfatResult {
  const fields = readShape('input', input, KEYS);
  const batch = readMass('batch', fields['batch'], { min: '1e-3' });
  const measured = readMeasuredSuperfat('measured', fields['measured'], batch);
  const completion = readSuperfatCompletion(fields['reactionComplete'], batch, measured.kind);
  const aims = readAims(fields, measured.measurement, (path, value) => readMeasuredValue(path, value));
  const lye = readAddedLye(fields['lye']);
  const triethanolamine = readFlag('triethanolamine', fields['triethanolamine']);

  const hydroxide = hydroxideMolarMass(lye.alkali);
  const { decision, add, left, leaves, notes, cautions } = corrected(
    {
      ...aims,
      batch,
      measured: measured.measurement,
      earlier: completion && { measured: completion.measured.measurement, apart: completion.given.apart },
      perMol: molarMass('KOH').times(1000),
      perGram: mapEnds(lye.source.hydroxide, (share) => share.div(hydroxide)),
      saltsPerGram: ZERO,
      blind: triethanolamine ? AMINE_READS_AS_ACID : undefined,
    },
    steps,
  );
  const value = (mgKohPerG: Decimal): SaponificationValue => frozen({ mgKohPerG });
  const carbonate = lye.source.carbonate?.high.gt(0) ?? false;
  // a stock that has thrown crystals may be stronger than its label, and no dose is then sure
  const mayFreeze =
    lye.source.state === 'solution' && mayFreezeInStore(lye.alkali, lye.source.hydroxide.high.times(100));
  return frozen({
    by: 'correctSuperfat',
    given: frozen({
      batch: frozen({ g: batch }),
      measured: measured.given,
      ...(completion === undefined ? {} : { reactionComplete: completion.given }),
      target: value(aims.target),
      notBelow: value(aims.notBelow),
      lye: frozen({ alkali: lye.alkali, ...lye.source.given }),
      triethanolamine,
    }),
    decision,
    add: frozen({ g: add }),
    left: frozen({ g: left }),
    leaves: mapEnds(leaves, value),
    changes: changesFrom(lyeChanges(lye, add, measured.kind), steps),
    after: frozen({ g: batch.plus(add) }),
    notes: frozen([...notes, COUNTED_AS_OLEIC]),
    cautions: alkaliCautions(
      ...cautions,
      ...(lye.source.state === 'solid' ? [SOLID_INTO_COLD_WATER] : []),
      ...(mayFreeze ? [CRYSTALLISED_STOCK] : []),
      LYE_INTO_HOT_SOAP,
      ...(carbonate ? [CARBONATE_FOAMS] : []),
      HOT_SOAP_SCALDS,
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
  'laurate-convention',
]);
