import { frozen } from '../../numbers/index.js';
import type { AlkaliContent } from '../../quantities/index.js';
import type { SuperfatFromLyeResult } from '../../saponification/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import { atWeakest, type Pot } from '../pot.js';
import { balanceCounting, hydroxidesAmong, namedAlkalis, type AlkaliAddition } from './counted.js';

/**
 * Additions that go by the name of an alkali: nothing tells how much of it they hold. A danger where all named hydroxides, if
 * they are pure, bring free caustic above the limit at the likely lots, what acids take up taken off.
 */
export function alkaliFindings(pot: Pot, limit: AlkaliContent): readonly Finding[] {
  const named = namedAlkalis(pot);
  if (named.length === 0) return [];
  const hydroxides = hydroxidesAmong(pot);
  const counted = hydroxides.length === 0 ? undefined : balanceCounting(pot, atWeakest, hydroxides);
  if (counted?.freeCausticAlkali.likely.percentNaoh.gt(limit.percentNaoh) !== true) return named.map(notCounted);
  return named.map((one) => {
    const isCounted = one.alkali !== 'other' && one.addition.grams !== undefined;
    return isCounted ? tooMuch(one, counted, limit) : notCounted(one);
  });
}

function notCounted({ addition: { path, name }, alkali }: AlkaliAddition): Finding {
  const warns =
    alkali === 'other'
      ? 'It takes part in the reaction or adds to the alkali of the soap; a caustic one burns skin and belongs to the lye.'
      : 'It burns skin. It belongs to the lye.';
  return {
    code: 'alkali-not-counted',
    severity: 'caution',
    path,
    values: frozen({}),
    explanation: `${name} goes by the name of an alkali. Among the additions it is not counted: superfat and free caustic are told without it. ${warns}`,
    slips: frozen([]),
    basis: frozen([]),
  };
}

function tooMuch(
  { addition: { path, name } }: AlkaliAddition,
  { superfat, freeCausticAlkali, basis }: SuperfatFromLyeResult,
  limit: AlkaliContent,
): Finding {
  return {
    code: 'alkali-not-counted',
    severity: 'danger',
    path,
    computed: freeCausticAlkali,
    values: frozen({ limit, superfat }),
    explanation: `${name} goes by the name of a hydroxide. Counted with the lye, as if it were pure, it brings the likely superfat to ${inWords(superfat.likely.percent)} % and leaves ${inWords(freeCausticAlkali.likely.percentNaoh)} % NaOH free in the pot; the limit is ${inWords(limit.percentNaoh)} % NaOH. It burns skin: do not use it. Write it among the lye, with its strength.`,
    slips: frozen([]),
    basis,
  };
}
