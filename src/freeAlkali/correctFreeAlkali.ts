import { molarMass } from '../chemistry/index.js';
import { ACID_INTO_HOT_SOAP } from '../composition/cautions.js';
import { alkaliCautions, HOT_SOAP_SCALDS } from '../lye/index.js';
import {
  frozen,
  noted,
  ONE,
  readShape,
  ZERO,
  type Decimal,
  type Fields,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import {
  mapEnds,
  readAlkaliContent,
  readMass,
  type AlkaliContent,
  type AlkaliContentInput,
  type Estimate,
  type Mass,
  type MassInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ACID_HURTS_EYES, TEST_BEFORE_SKIN, TOO_MUCH_ACID } from './cautions.js';
import { readSoapAlkali, type SoapAlkali, type SoapAlkaliGiven } from './cation.js';
import { changesFrom, type ComponentChange } from './changes.js';
import { readCorrector, type Corrector, type CorrectorGiven } from './corrector.js';
import { corrected, readAims, type CorrectionDecision } from './corrected.js';
import {
  readApart,
  readMeasuredFreeCaustic,
  type Completion,
  type CompletionGiven,
  type MeasuredFreeCaustic,
  type MeasuredFreeCausticGiven,
  type Measurement,
} from './measured.js';
import { AMINE_READS_AS_ALKALI } from './notes.js';
import { readFlag } from './readFlag.js';

/** Input of {@link correctFreeAlkali}. */
export interface CorrectFreeAlkaliInput {
  /** Soap as it stands in the pot, solvents and water included. */
  readonly batch: MassInput;
  /** The alkali it was made with: it decides what the salts weigh. */
  readonly alkali: SoapAlkali;
  /** A result of `freeCausticAlkaliFromTitration`, or content and standard uncertainty. */
  readonly measured: MeasuredFreeCaustic;
  /** The test an hour of heat before, which must agree; without it nothing is added. */
  readonly reactionComplete?: Completion<MeasuredFreeCaustic>;
  /** Free caustic that is to be left. */
  readonly target: AlkaliContentInput;
  /** Free caustic that no dose may fall below, with 95 % confidence; none at all unless stated. */
  readonly notBelow?: AlkaliContentInput;
  readonly corrector: Corrector;
  /** Whether the soap holds triethanolamine, which acid takes as well, so that nothing is dosed; not unless stated. */
  readonly triethanolamine?: boolean;
}

/** Result of {@link correctFreeAlkali}. */
export interface CorrectFreeAlkaliResult {
  readonly by: 'correctFreeAlkali';
  /** The inputs as read. */
  readonly given: {
    readonly batch: Mass;
    readonly alkali: SoapAlkaliGiven;
    readonly measured: MeasuredFreeCausticGiven;
    readonly reactionComplete?: CompletionGiven<MeasuredFreeCausticGiven>;
    readonly target: AlkaliContent;
    readonly notBelow: AlkaliContent;
    readonly corrector: CorrectorGiven;
    readonly triethanolamine: boolean;
  };
  readonly decision: CorrectionDecision;
  /** Free caustic in the batch, as NaOH, by the likely figure. */
  readonly freeCaustic: Mass;
  /** Corrector to add now. */
  readonly add: Mass;
  /**
   * Corrector that the likely figure asks for beyond that: only when another test asks for it too. Where it is too much to
   * correct, all that it would take, to show how much that is.
   */
  readonly left: Mass;
  /** Free caustic once it has been added and has reacted. */
  readonly leaves: Estimate<AlkaliContent>;
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

/**
 * Acid or fat that takes up too much free caustic, and how much of it to add before the next test.
 *
 * Formula: `(n − k·c)·M = t·(m + c·M(c))`, with n the free caustic (mol), k the hydroxide that one mole of corrector takes (citric
 * acid 3, lactic 1, fat by its saponification value), c its moles, M(c) what one mole weighs as sold, M that of NaOH, t the
 * target as a fraction, m the batch (g). The likely content asks for one dose; the least that the test allows, `w − 1.645·u`,
 * against the strongest corrector allows no more than ends at `notBelow`. The smaller is added; `left` waits for another test.
 *
 * One test cannot tell caustic that has not yet reacted from excess: without `reactionComplete`, two tests an hour of heat
 * apart that agree within `d = 1.96·√(u² + u²)`, nothing is added. A fall of d would not be seen, so that d may be no more than a
 * quarter of what is there (a convention): surer tests are asked for. Carbonate is not counted; acid takes it up once the
 * caustic is gone.
 *
 * Conventions: a dose over 3 % of the batch, or that leaves over 1 % of salts, is large and has a caution; over 10 % or 3 % it is
 * too much to correct. A target that is met within the uncertainty leaves nothing to add; one above that is refused.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; a fat's own sources in `basis`.
 *
 * @param input - the batch, what was measured in it, the target and the corrector
 * @returns grams to add now, what they leave and change; cautions
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (a target above what was measured with its
 * uncertainty, a sample above the batch, an uncertainty of 0), `infeasible` (a wax) and the faults of a fat or quantity
 *
 * @example
 * ```ts
 * const measured = { freeCausticAlkali: { percentNaoh: '0.31' }, standardUncertainty: { percentNaoh: '0.01' } };
 * const mend = correctFreeAlkali({
 *   batch: { kg: 5 },
 *   alkali: 'naoh',
 *   measured,
 *   reactionComplete: { earlier: { ...measured, freeCausticAlkali: { percentNaoh: '0.32' } }, apart: { hours: 1 } },
 *   target: { percentNaoh: '0.02' },
 *   corrector: { acid: 'citric-monohydrate', strength: { percent: 25 } },
 * });
 * [mend.decision, mend.add.g.toFixed(1)]; // => ['add', '101.4']
 * mend.leaves.low.percentNaoh.toFixed(3); // => '0.004'
 * ```
 */
export function correctFreeAlkali(input: CorrectFreeAlkaliInput): CorrectFreeAlkaliResult {
  return correctFreeAlkaliSteps(input);
}

const KEYS = ['batch', 'alkali', 'measured', 'reactionComplete', 'target', 'notBelow', 'corrector', 'triethanolamine'];

/** The kernel, with room for the working. */
export function correctFreeAlkaliSteps(input: CorrectFreeAlkaliInput, steps?: Steps): CorrectFreeAlkaliResult {
  const fields = readShape('input', input, KEYS);
  const batch = readMass('batch', fields['batch'], { min: '1e-3' });
  const cation = readSoapAlkali('alkali', fields['alkali']);
  const measured = readMeasuredFreeCaustic('measured', fields['measured'], batch);
  const completion = readCompletion(fields['reactionComplete'], batch);
  const found = measured.freeCausticAlkali.percentNaoh;
  const aims = readAims(fields, measurementOf(measured), readAlkaliContent);
  const corrector = readCorrector('corrector', fields['corrector']);
  const triethanolamine = readFlag('triethanolamine', fields['triethanolamine']);

  const freeCaustic = noted(steps, 'free caustic as NaOH', 'w·m', 'g', found.times(batch).div(100));
  const { decision, add, left, leaves, notes, cautions } = corrected(
    {
      ...aims,
      batch,
      measured: measurementOf(measured),
      earlier: completion && { measured: measurementOf(completion.earlier), apart: completion.apart },
      perMol: molarMass('NaOH').times(100),
      perGram: corrector.perGram,
      saltsPerGram: corrector.changes(ONE, cation).salts ?? ZERO,
      blind: triethanolamine ? AMINE_READS_AS_ALKALI : undefined,
    },
    steps,
  );
  const content = (percentNaoh: Decimal): AlkaliContent => frozen({ percentNaoh });
  return frozen({
    by: 'correctFreeAlkali',
    given: frozen({
      batch: frozen({ g: batch }),
      alkali: cation.given,
      measured,
      ...(completion === undefined ? {} : { reactionComplete: completion }),
      target: content(aims.target),
      notBelow: content(aims.notBelow),
      corrector: corrector.given,
      triethanolamine,
    }),
    decision,
    freeCaustic: frozen({ g: freeCaustic }),
    add: frozen({ g: add }),
    left: frozen({ g: left }),
    leaves: mapEnds(leaves, content),
    changes: changesFrom(corrector.changes(add, cation), steps),
    after: frozen({ g: batch.plus(add) }),
    notes: frozen([...notes, ...corrector.notes]),
    cautions: alkaliCautions(
      ...cautions,
      ...(corrector.splitsSoap ? [ACID_INTO_HOT_SOAP, TOO_MUCH_ACID, ACID_HURTS_EYES] : []),
      HOT_SOAP_SCALDS,
      TEST_BEFORE_SKIN,
    ),
    basis: frozen<readonly SourceId[]>([
      ...new Set<SourceId>(['iupac-2021', 'ghs-naoh', 'common-practice', 'laurate-convention', ...corrector.basis]),
    ]),
    edition: EDITION,
  });
}

function measurementOf({ freeCausticAlkali, standardUncertainty }: MeasuredFreeCausticGiven): Measurement {
  return { value: freeCausticAlkali.percentNaoh, uncertainty: standardUncertainty.percentNaoh };
}

function readCompletion(value: unknown, batch: Decimal): CompletionGiven<MeasuredFreeCausticGiven> | undefined {
  if (value === undefined) return undefined;
  const path = 'reactionComplete';
  const { earlier, apart }: Fields = readShape(path, value, ['earlier', 'apart']);
  return frozen({
    earlier: readMeasuredFreeCaustic(`${path}.earlier`, earlier, batch),
    apart: readApart(path, apart),
  });
}
