import { frozen, type CalculationError } from '../../numbers/index.js';
import type { RecipeParts } from '../../recipe/readParts.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { shortened } from '../shortened.js';

/** What cannot be read, each with its reason. */
export function unreadableFindings(faults: readonly CalculationError[]): readonly Finding[] {
  return faults.map(({ code, path: whole, expected, received }) => {
    const path = shortened(whole, 80);
    return {
      code: 'unreadable',
      severity: 'caution',
      path,
      values: frozen({}),
      explanation: `It cannot be judged: ${path}: expected ${expected}, received ${received}.`,
      slips: frozen([]),
      error: code,
      basis: frozen([]),
    };
  });
}

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
    ...(claimed.ph === undefined ? [] : [note('not-judged', 'claimed.ph', 'The pH is not judged.')]),
    ...(claimed.freeCausticAlkali === undefined
      ? []
      : [
          note(
            'not-judged',
            'claimed.freeCausticAlkali',
            'The free caustic that is printed is not judged; what the masses lead to is.',
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
    ...(claimed.total !== undefined && !pot.hasAllMasses
      ? [note('not-judged', 'claimed.total', 'The total is not judged, because not every mass is known.')]
      : []),
  ];
}
