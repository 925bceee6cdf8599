import {
  ACID_INTO_HOT_SOAP,
  AMINE_HIDES_ALKALI,
  SPIRIT_CATCHES_FIRE,
  SUGAR_IN_HOT_LYE,
} from '../composition/cautions.js';
import { isSpirit } from '../composition/components.js';
import type { SolventId } from '../composition/index.js';
import { isNamedSpirit } from '../composition/namedAdditions.js';
import type { Fat } from '../fats/index.js';
import {
  frozen,
  unlessRefused,
  readFields,
  readShape,
  type CalculationError,
  type Decimal,
  type Remark,
} from '../numbers/index.js';
import {
  readAlkaliContent,
  type AlkaliContent,
  type AlkaliContentInput,
  type Estimate,
  type Fraction,
} from '../quantities/index.js';
import { readParts } from '../recipe/readParts.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { namedAcids } from './checks/counted.js';
import { notJudgedFindings, unreadableFindings } from './checks/reading.js';
import { arePartsClaimed } from './checks/partShares.js';
import { partPoints } from './checks/partValues.js';
import { fewOfEachCode } from './fewOfEachCode.js';
import { withFewSlips } from './fewSlips.js';
import type { Finding } from './finding.js';
import { judged } from './judged.js';
import { potOf, type Pot } from './pot.js';
import { verdictOf, type Verdict } from './verdict.js';

/** What {@link auditRecipe} may be told besides the recipe. */
export interface AuditRecipeOptions {
  /** Fats of one's own, by the names that recipes call them. */
  readonly fats?: Readonly<Record<string, Fat>>;
  /** Free caustic above which a recipe is dangerous, share of everything in the pot; 0.05 % NaOH unless stated. */
  readonly limit?: AlkaliContentInput;
}

/** What the masses of a recipe imply. */
export interface Implied {
  /** Superfat over lots and assays; negative is alkali in excess. */
  readonly superfat: Estimate<Fraction>;
  /** Free caustic after complete reaction, share of everything in the pot. */
  readonly freeCausticAlkali: Estimate<AlkaliContent>;
}

/** Result of {@link auditRecipe}. */
export interface AuditRecipeResult {
  readonly by: 'auditRecipe';
  readonly verdict: Verdict;
  /** Most urgent first. */
  readonly findings: readonly Finding[];
  /** Undefined where fats or lye cannot be read or are not known. */
  readonly implied: Implied | undefined;
  /** The limit that was applied. */
  readonly limit: AlkaliContent;
  /** What was assumed of fats and alkali. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** Most urgent first; within one severity in the order of the work. */
const SEVERITIES = ['danger', 'caution', 'note'] as const;

/**
 * Checks the lye numbers of a recipe against each other and against what its fats can take up.
 *
 * Superfat and free caustic follow from the masses as printed, over every lawful lot and assay
 * (`superfat = 100·(1 − A/n)`). Every printed figure is compared with what the rest of the recipe makes of it, to its last
 * printed digit. Where they part, known slips are tried: each is worked out over the lots, and stands among the `slips` of
 * the finding if it gives the printed figure. What cannot be read is said, and the rest is judged.
 *
 * Nothing is thrown, whatever comes. The figures are sums, not a test of the soap.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021; the fats' own sources in `basis`.
 *
 * @param value - a recipe as JSON has it; any value
 * @param options - own fats by name; the limit of free caustic, a share of everything in the pot by mass
 * @returns verdict, findings (danger first), and the superfat and free caustic that the masses imply
 *
 * @example
 * ```ts
 * const { verdict, findings } = auditRecipe({
 *   version: 1,
 *   fats: [{ fat: 'coconut-oil', mass: { g: '500' } }],
 *   lye: [{ alkali: 'naoh', mass: { g: '122' }, solid: { hydroxide: { percent: '99' } } }],
 *   claimed: { superfat: { percent: '5' } },
 * });
 * verdict; // => 'dangerous'
 * findings[0]?.slips[0]?.code; // => 'koh-value-as-naoh'
 * ```
 */
export function auditRecipe(value: unknown, options: AuditRecipeOptions = {}): AuditRecipeResult {
  const { fats, limit, faults: faultsOfOptions } = readAuditOptions(options);
  const parts = readParts(value, { fats });
  const pot = potOf(parts);
  const points = arePartsClaimed(parts.claimed) ? partPoints(pot) : undefined;
  const findings = fewOfEachCode([
    ...judged(pot, parts, points, limit).map(withFewSlips),
    ...unreadableFindings([...faultsOfOptions, ...parts.faults, ...pot.faults]),
    ...notJudgedFindings(pot, parts, points !== undefined),
  ]);
  const inOrder = SEVERITIES.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  const { balance } = pot;
  return frozen({
    by: 'auditRecipe',
    verdict: verdictOf(findings),
    findings: frozen(inOrder.map((finding) => frozen(finding))),
    implied:
      balance === undefined
        ? undefined
        : frozen({ superfat: balance.superfat, freeCausticAlkali: balance.freeCausticAlkali }),
    limit,
    notes: balance?.notes ?? frozen([]),
    cautions: frozen([...(balance?.cautions ?? []), ...cautionsOf(pot)]),
    basis: balance?.basis ?? frozen([]),
    edition: EDITION,
  });
}

/** What the additions ask for besides. */
function cautionsOf(pot: Pot): readonly Remark[] {
  const additions = [...pot.additions, ...pot.unweighed];
  const hasNamedSpirit = additions.some(({ holds, name }) => holds === undefined && isNamedSpirit(name));
  const held = additions.flatMap(({ holds }) => (holds === undefined ? [] : [holds.solvent]));
  const holds = (...solvents: readonly SolventId[]): boolean => held.some((one) => solvents.includes(one));
  return [
    ...(hasNamedSpirit || held.some(isSpirit) ? [SPIRIT_CATCHES_FIRE] : []),
    ...(holds('sucrose', 'glucose') ? [SUGAR_IN_HOT_LYE] : []),
    ...(holds('triethanolamine') ? [AMINE_HIDES_ALKALI] : []),
    ...(namedAcids(pot).length > 0 ? [ACID_INTO_HOT_SOAP] : []),
  ];
}

/** More than this is no soap to wash with, whatever the limit is for. */
const HIGHEST_LIMIT = { min: 0, max: 5 };
const USUAL_LIMIT = { percentNaoh: '0.05' } as const;

interface ReadOptions {
  readonly fats: unknown;
  readonly limit: AlkaliContent;
  readonly faults: readonly CalculationError[];
}

/** Reads the options of an audit; one that cannot be read leaves the other as it is. */
export function readAuditOptions(options: unknown): ReadOptions {
  const faults: CalculationError[] = [];
  const attempt = <T>(read: () => T): T | undefined => unlessRefused(read, (refusal) => faults.push(refusal));
  const percentNaoh = (limit: unknown): Decimal => readAlkaliContent('options.limit', limit, HIGHEST_LIMIT);
  const fields = attempt(() => readFields('options', options)) ?? {};
  attempt(() => readShape('options', fields, ['fats', 'limit']));
  const limit = fields['limit'] === undefined ? undefined : attempt(() => percentNaoh(fields['limit']));
  return {
    fats: fields['fats'],
    limit: frozen({ percentNaoh: limit ?? percentNaoh(USUAL_LIMIT) }),
    faults,
  };
}
