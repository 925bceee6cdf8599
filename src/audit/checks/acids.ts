import { hydroxideMolarMass } from '../../lye/index.js';
import { frozen, type Decimal } from '../../numbers/index.js';
import type { AlkaliContent } from '../../quantities/index.js';
import type { SuperfatFromLyeResult } from '../../saponification/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { namedAcids, takenBy, takenByAcids } from './counted.js';

const asNaoh = (mol: Decimal): Decimal => mol.times(hydroxideMolarMass('naoh'));

/**
 * What named acids take up of the lye, which the audit does not count.
 *
 * @param isTold - whether it is told already of those that decide
 */
export function acidFindings(pot: Pot, isTold: boolean): readonly Finding[] {
  return namedAcids(pot).flatMap((one): readonly Finding[] => {
    const mol = takenBy(one);
    if (isTold && mol !== undefined) return [];
    const { path, name } = one.addition;
    return [
      {
        code: 'acid-not-counted',
        severity: 'note',
        path,
        values: frozen(mol === undefined ? {} : { atMost: frozen({ g: asNaoh(mol) }) }),
        explanation:
          mol === undefined
            ? `${name} looks like an acid, which takes up lye. That is not counted here: a fatty acid belongs among the fats.`
            : `${name} takes up lye: ${inWords(asNaoh(mol))} g of NaOH at most, if it is pure${superfatWith(pot, mol)}. That is not counted here.`,
        slips: frozen([]),
        basis: frozen(['iupac-2021']),
      },
    ];
  });
}

/** That acid decides: without it the likely lots leave free caustic above the limit, with all of it they do not. */
export function acidDecides(
  pot: Pot,
  without: SuperfatFromLyeResult,
  counted: SuperfatFromLyeResult,
  limit: AlkaliContent,
): Finding {
  const acids = namedAcids(pot).filter((one) => takenBy(one) !== undefined);
  const names = acids.map(({ addition: { name } }) => name).join(' and ');
  const atMost = asNaoh(takenByAcids(pot));
  const [percent, withAcid] = [without.superfat.likely.percent, counted.superfat.likely.percent];
  const [free, left] = [without.freeCausticAlkali.likely.percentNaoh, counted.freeCausticAlkali.likely.percentNaoh];
  return {
    code: 'acid-not-counted',
    severity: 'caution',
    path: acids[0]?.addition.path ?? 'additions',
    computed: without.freeCausticAlkali,
    values: frozen({
      limit,
      atMost: frozen({ g: atMost }),
      superfat: without.superfat,
      superfatWithAcid: counted.superfat,
      freeCausticAlkaliWithAcid: counted.freeCausticAlkali,
    }),
    explanation: `What goes by the name of ${names} takes up lye, ${inWords(atMost)} g of NaOH at most, and that decides. Without it the likely superfat is ${inWords(percent)} %, which leaves ${inWords(free)} % NaOH free in the pot; the limit is ${inWords(limit.percentNaoh)} % NaOH. If it is pure and meets the lye, the likely superfat is ${inWords(withAcid)} %, which leaves ${inWords(left)} % NaOH. Nothing says how strong it is, or that all of it goes in: without it the soap burns skin. Test before skin.`,
    slips: frozen([]),
    basis: without.basis,
  };
}

/** The superfat if it goes into the pot with the lye. */
function superfatWith({ balance, charged }: Pot, mol: Decimal): string {
  if (balance === undefined || charged.likely.isZero()) return '';
  const { percent } = balance.superfat.likely;
  const demand = charged.likely.div(percent.div(100).neg().plus(1));
  const together = percent.plus(mol.times(100).div(demand));
  return `, which would bring the likely superfat from ${inWords(percent)} to ${inWords(together)} %`;
}
