import { frozen, type CalculationError } from '../../numbers/index.js';
import type { RecipeClaims } from '../../recipe/index.js';
import type { RecipeParts } from '../../recipe/readParts.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { inWords } from '../figures.js';
import { legible } from '../legible.js';
import { namedFats } from './addedFats.js';
import { namedAcids, namedAlkalis } from './counted.js';
import { arePartsClaimed } from './partShares.js';
import { isLyeJudged } from './temperatures.js';

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
export function notJudgedFindings(
  pot: Pot,
  { claimed, additions, temperatures }: RecipeParts,
  arePartsKnown: boolean,
): readonly Finding[] {
  const note = (code: 'assay-missing' | 'not-judged', path: string, explanation: string): Finding => ({
    code,
    severity: 'note',
    path,
    values: frozen({}),
    explanation,
    slips: frozen([]),
    basis: frozen([]),
  });
  const isWaterAdded = additions.rows.some(({ row }) => row.solvent === 'water');
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
            `The water of the lye is not stated${isWaterAdded ? ': water among the additions is not taken for it' : ''}, so that strength, ratios of water and the total are not judged.`,
          ),
        ]),
    ...notCounted(pot).map((words) => note('not-judged', 'additions', words)),
    ...pot.additions.flatMap(({ path, name, holds, isByVolume }) =>
      holds === undefined || holds.isStated || holds.share.low.eq(1) || !(isByVolume || arePartsClaimed(claimed))
        ? []
        : [
            note(
              'assay-missing',
              path,
              `How much ${name} it holds is not stated: ${inWords(holds.share.low.times(100))} to 100 % is taken, as it is sold.`,
            ),
          ],
    ),
    ...pot.unweighed.map(({ path, name }) =>
      note(
        'not-judged',
        path,
        `${name} is given by volume and its density is not on file: it counts in no mass, so that shares of the pot come out a little high.`,
      ),
    ),
    ...(arePartsClaimed(claimed) && !arePartsKnown
      ? [
          note(
            'not-judged',
            'claimed.shares',
            'Shares of soap, water and what clears are not judged, because not everything in the pot is known by mass, or too much by volume.',
          ),
        ]
      : []),
    ...(pot.hasAllMasses
      ? []
      : pot.additions.flatMap(({ path, claimed: { share } }) =>
          share === undefined
            ? []
            : [
                note(
                  'not-judged',
                  `${path}.claimed.share`,
                  'The share is not judged, because not every mass is known.',
                ),
              ],
        )),
    ...temperatures.rows.flatMap(({ path, row: { stage, temperature } }) =>
      stage === 'lye' && !isLyeJudged(temperature)
        ? [note('not-judged', path, 'How hot the lye by itself may be is not judged: no range for it is on file.')]
        : [],
    ),
    ...(claimed.total !== undefined && pot.isMadeUp && !pot.hasAllMasses
      ? [note('not-judged', 'claimed.total', 'The total is not judged, because not every mass is known.')]
      : []),
  ];
}

/** More names than these nobody reads. */
const MOST_NAMES = 5;

/** Additions that may take up lye or bring alkali, by their names; what is told of acids, alkalis and fats stands there. */
function notCounted(pot: Pot): readonly string[] {
  const told = new Set([
    ...namedAcids(pot).map(({ addition }) => addition.path),
    ...namedFats(pot).map(({ path }) => path),
    ...namedAlkalis(pot).map(({ addition }) => addition.path),
  ]);
  const all = [...pot.additions, ...pot.unweighed];
  const unknown = all.filter(({ path, holds }) => holds === undefined && !told.has(path)).map(({ name }) => name);
  const more = unknown.length - MOST_NAMES;
  const names = [...unknown.slice(0, MOST_NAMES), ...(more > 0 ? [`${String(more)} more`] : [])];
  return [
    ...(unknown.length === 0
      ? []
      : [`What is in ${listed(names)} is not known here: whether it takes up lye or brings alkali is not counted.`]),
    ...(all.some(({ holds }) => holds?.solvent === 'triethanolamine')
      ? ['The alkali that triethanolamine brings is not counted.']
      : []),
  ];
}

const listed = (names: readonly string[]): string =>
  [names.slice(0, -1).join(', '), ...names.slice(-1)].filter((part) => part !== '').join(' and ');
