import { frozen, type CalculationError } from '../../numbers/index.js';
import type { RecipeClaims } from '../../recipe/index.js';
import type { RecipeParts } from '../../recipe/readParts.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { legible } from '../legible.js';

/** What cannot be read, each with its reason. */
export function unreadableFindings(faults: readonly CalculationError[]): readonly Finding[] {
  return faults.map(({ code, path: whole, expected, received }) => {
    const path = legible(whole, 80);
    return {
      code: 'unreadable',
      severity: 'caution',
      path,
      values: frozen({}),
      explanation: `This cannot be read: ${path}: expected ${legible(expected, 400)}, received ${legible(received, 80)}.`,
      slips: frozen([]),
      error: code,
      basis: frozen([]),
    };
  });
}

/** Whether a figure is printed that the water of the lye decides. */
const hangsOnWater = ({ strength, waterPerAlkali, waterPerFat, total }: RecipeClaims): boolean =>
  [strength, waterPerAlkali, waterPerFat, total].some((claim) => claim !== undefined);

/** What is printed and not looked at, and what had to be assumed. */
export function notJudgedFindings(pot: Pot, { claimed, additions, temperatures }: RecipeParts): readonly Finding[] {
  const note = (code: 'assay-missing' | 'not-judged', path: string, explanation: string): Finding => ({
    code,
    severity: 'note',
    path,
    values: frozen({}),
    explanation,
    slips: frozen([]),
    basis: frozen([]),
  });
  const byVolume = additions.rows.filter(({ row }) => row.volume !== undefined);
  return [
    ...pot.lye.flatMap(({ path, isStated, alkali }) =>
      isStated
        ? []
        : [
            note(
              'assay-missing',
              path,
              `No assay or strength is stated: ${alkali === 'naoh' ? '95 to 100.5' : '82 to 100'} % hydroxide is taken, as technical grades have it. A lye taken for a solid would be much weaker.`,
            ),
          ],
    ),
    ...pot.fats.flatMap(({ path, name, isKnown, fat }) =>
      isKnown || fat === undefined
        ? []
        : [note('not-judged', path, `${name} is not known: its own claimed saponification value is taken, unchecked.`)],
    ),
    ...(pot.isMadeUp || !pot.isAllLye || !hangsOnWater(claimed)
      ? []
      : [
          note(
            'not-judged',
            'water',
            'The water of the lye is not stated, so that strength, ratios of water and the total are not judged.',
          ),
        ]),
    ...(additions.rows.some(({ row }) => row.solvent === undefined || row.solvent === 'triethanolamine')
      ? [
          note(
            'not-judged',
            'additions',
            'What the additions take up of the lye (citric or lactic acid) or bring as alkali (triethanolamine) is not counted.',
          ),
        ]
      : []),
    ...(claimed.ph === undefined ? [] : [note('not-judged', 'claimed.ph', 'The pH is not judged.')]),
    ...(claimed.freeCausticAlkali === undefined
      ? []
      : [
          note(
            'not-judged',
            'claimed.freeCausticAlkali',
            'The free caustic that is printed is held against the limit only; what the masses lead to is judged.',
          ),
        ]),
    ...(temperatures.rows.length === 0 ? [] : [note('not-judged', 'temperatures', 'The temperatures are not judged.')]),
    ...(byVolume.length === 0
      ? []
      : [
          note(
            'not-judged',
            byVolume[0]?.path ?? 'additions',
            'Additions by volume count in no mass, so that shares of the pot come out a little high.',
          ),
        ]),
    ...(claimed.total !== undefined && pot.isMadeUp && !pot.hasAllMasses
      ? [note('not-judged', 'claimed.total', 'The total is not judged, because not every mass is known.')]
      : []),
  ];
}
