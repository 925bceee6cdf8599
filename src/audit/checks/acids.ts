import { molarMass } from '../../chemistry/index.js';
import { namedAcid } from '../../composition/namedAdditions.js';
import { correctingAcids, type CorrectingAcidId } from '../../freeAlkali/data/correctingAcids.js';
import { hydroxideMolarMass } from '../../lye/index.js';
import { frozen, type Decimal } from '../../numbers/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import type { ReadAddition } from '../potAdditions.js';

/** An addition that looks like an acid by its name. */
interface AcidAddition {
  readonly addition: ReadAddition;
  /** Which it is, where it is one that takes a known amount. */
  readonly acid: CorrectingAcidId | undefined;
}

/** The additions that look like acids: they take up lye, and are named only. */
export function namedAcids({ additions, unweighed }: Pot): readonly AcidAddition[] {
  return [...additions, ...unweighed].flatMap((addition): readonly AcidAddition[] => {
    const acid = addition.holds === undefined ? namedAcid(addition.name) : undefined;
    return acid === undefined ? [] : [{ addition, acid: acid === 'other' ? undefined : acid }];
  });
}

/** What named acids take up of the lye, which the audit does not count. */
export function acidFindings(pot: Pot): readonly Finding[] {
  return namedAcids(pot).map(({ addition: { path, name, grams }, acid }): Finding => {
    const naoh = acid === undefined || grams === undefined ? undefined : taken(acid, grams.value);
    return {
      code: 'acid-not-counted',
      severity: 'note',
      path,
      values: frozen(naoh === undefined ? {} : { atMost: frozen({ g: naoh }) }),
      explanation:
        naoh === undefined
          ? `${name} looks like an acid, which takes up lye. That is not counted here: a fatty acid belongs among the fats.`
          : `${name} takes up lye: ${inWords(naoh)} g of NaOH at most, if it is pure${superfatWith(pot, naoh)}. That is not counted here.`,
      slips: frozen([]),
      basis: frozen(['iupac-2021']),
    };
  });
}

/** Sodium hydroxide that so much pure acid takes up, g. */
function taken(acid: CorrectingAcidId, grams: Decimal): Decimal {
  const { formula, takes } = correctingAcids[acid];
  return grams.div(molarMass(formula)).times(takes).times(hydroxideMolarMass('naoh'));
}

/** The superfat if it goes into the pot with the lye. */
function superfatWith({ balance, charged }: Pot, naoh: Decimal): string {
  if (balance === undefined || charged.likely.isZero()) return '';
  const { percent } = balance.superfat.likely;
  const demand = charged.likely.div(percent.div(100).neg().plus(1));
  const together = percent.plus(naoh.div(hydroxideMolarMass('naoh')).times(100).div(demand));
  return `, which would bring the likely superfat from ${inWords(percent)} to ${inWords(together)} %`;
}
