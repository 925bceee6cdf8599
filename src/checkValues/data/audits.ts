import type { FatFromCertificateInput } from '../../fats/index.js';
import type { MassInput } from '../../quantities/index.js';
import type { CheckRecipe } from '../calls.js';
import type { BoundsCheck, CheckValue, FigureCheck, WordsCheck } from '../checkValue.js';
import { auditedCharges, type AuditedCharge } from './auditedCharges.js';
import { printedRecipeChecks } from './printedRecipes.js';

type PrintedPot = BoundsCheck<'superfatFromLye'>;
type Audited = WordsCheck<'auditRecipe'>;

/** More fat than this is left only where it is meant, percent: the convention of the audit. */
const MUCH_FAT = 20;

/**
 * Audits of the printed recipes: those whose superfat was worked out apart from the library (`printedRecipes`), and clear
 * soaps whose alkali was set against their demand in the same way (`auditedCharges`).
 *
 * No recipe among them prints a superfat, so that the verdict follows from what was worked out: all lots in excess of
 * alkali, none, or some.
 */
export function auditChecks(): readonly CheckValue[] {
  const pots = printedRecipeChecks.filter(isPot);
  return [
    ...pots.map(verdictOfPot),
    ...pots.flatMap(figureOfPot),
    ...auditedCharges().flatMap((charge) => [
      verdictOfCharge(charge),
      figureOfCharge(charge),
      ...printedOfCharge(charge),
    ]),
    ...misprintChecks(pots),
  ];
}

const isPot = (row: CheckValue): row is PrintedPot => row.call === 'superfatFromLye' && 'expectedBounds' in row;

const idOf = ({ id }: PrintedPot): string => id.replace('recipe-', 'audit-');

/** The verdicts that a range of superfat leaves open, its ends rounded to a tenth. */
function verdictsFor(low: number, high: number): readonly string[] {
  if (high < 0) return ['dangerous'];
  if (low > MUCH_FAT) return ['doubtful'];
  if (low >= 0.05) return ['sound'];
  return low < 0 ? ['dangerous', 'doubtful'] : ['doubtful', 'sound'];
}

function verdictOfPot(row: PrintedPot): Audited {
  const [low, high] = row.expectedBounds;
  return {
    id: `${idOf(row)}-verdict`,
    call: 'auditRecipe',
    inputs: row.inputs,
    result: 'verdict',
    printed: row.printed,
    expectedWords: verdictsFor(Number(low), Number(high)),
    why: 'The verdict that the superfat, worked out apart from the library, leaves open.',
    source: row.source,
    where: row.where,
    obtained: 'derived',
  };
}

/** Charges whose excess or fat left is worth its figure in the audit as well. */
const WITH_FIGURE = /transparent-(typical|2|3|5|castor-book-lots)$|cold-coconut-book-lots$|chip-cold-5$|shaving-3$/;

function figureOfPot(row: PrintedPot): readonly BoundsCheck<'auditRecipe'>[] {
  if (!WITH_FIGURE.test(row.id)) return [];
  return [{ ...row, id: `${idOf(row)}-superfat`, call: 'auditRecipe', result: 'implied.superfat' }];
}

function recipeOf({ fats, lye, water, additions, unit, printed = {} }: AuditedCharge): CheckRecipe {
  const { temperatures, shares = {} } = printed;
  const mass = (amount: string): MassInput => ({ [unit]: amount }) as unknown as MassInput;
  const hydroxide = { percent: lye.percent };
  return {
    fats: fats.map(({ name, value, kind = 'triglyceride', amount }) => {
      const certificate: FatFromCertificateInput = { name, kind, saponificationValue: { mgKohPerG: value } };
      return { fat: { certificate }, mass: mass(amount) };
    }),
    lye: [
      {
        alkali: lye.alkali,
        mass: mass(lye.amount),
        ...(lye.state === 'solid' ? { solid: { hydroxide } } : { solution: { hydroxide } }),
      },
    ],
    ...(water === undefined ? {} : { water: mass(water) }),
    additions: Object.entries(additions).map(([name, amount]) => ({
      name,
      mass: mass(amount),
      ...(shares[name] === undefined ? {} : { claimed: { share: { percent: shares[name] } } }),
    })),
    ...(temperatures === undefined ? {} : { temperatures }),
  };
}

const lotsOf = ({ ratio }: AuditedCharge): string =>
  `Alkali is ${ratio} of the demand, worked out apart from the library with one value for each fat.`;

function figureOfCharge(charge: AuditedCharge): FigureCheck<'auditRecipe'> {
  return {
    id: `audit-${charge.id}-superfat`,
    call: 'auditRecipe',
    inputs: recipeOf(charge),
    result: 'implied.superfat.likely',
    printed: charge.superfat,
    expected: charge.superfat,
    unit: 'percent',
    tolerance: '0.05',
    why: `0.05 half a last digit. ${lotsOf(charge)}`,
    source: charge.source,
    where: charge.where,
    obtained: 'derived',
  };
}

function verdictOfCharge(charge: AuditedCharge): Audited {
  const superfat = Number(charge.superfat);
  return {
    id: `audit-${charge.id}-verdict`,
    call: 'auditRecipe',
    inputs: recipeOf(charge),
    result: 'verdict',
    printed: charge.superfat,
    expectedWords: verdictsFor(superfat, superfat),
    why: lotsOf(charge),
    source: charge.source,
    where: charge.where,
    obtained: 'derived',
  };
}

/** Beside the danger of the alkali, nothing else that is printed of a charge is contradicted or doubted. */
function printedOfCharge(charge: AuditedCharge): readonly Audited[] {
  const { temperatures = [], shares = {} } = charge.printed ?? {};
  const figures = [
    ...temperatures.map(({ temperature }) => Object.entries(temperature).flat().reverse().join(' ')),
    ...Object.entries(shares).map(([name, percent]) => `${name} ${percent} %`),
  ];
  if (figures.length === 0) return [];
  return [
    {
      id: `audit-${charge.id}-printed`,
      call: 'auditRecipe',
      inputs: recipeOf(charge),
      result: 'findings.1.severity',
      printed: figures.join(', '),
      expectedWords: ['note'],
      why: 'The alkali is in excess, which stands first; of the temperatures and shares that are printed none is doubted.',
      source: charge.source,
      where: charge.where,
      obtained: 'derived',
    },
  ];
}

/** What is found of two charges that are suspected of a misprint. */
function misprintChecks(pots: readonly PrintedPot[]): readonly Audited[] {
  const found = (id: string, word: string, why: string): readonly Audited[] =>
    pots
      .filter((row) => row.id === id)
      .map((row) => ({
        ...verdictOfPot(row),
        id: `${idOf(row)}-finding`,
        result: 'findings.0.code',
        expectedWords: [word],
        why,
      }));
  return [
    ...found(
      'recipe-thomssen-chip-cold-5',
      'free-caustic-above-limit',
      '470 lb of lye stand far above the pattern of the formulas beside it: a misprint of 270 is suspected.',
    ),
    ...found(
      'recipe-thomssen-shaving-3',
      'much-fat-left',
      'The alkali is about half of the demand, where formula I has all of it: a misprint is suspected.',
    ),
  ];
}
