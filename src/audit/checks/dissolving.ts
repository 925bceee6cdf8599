import { dissolvesTo } from '../../lye/index.js';
import { frozen, type Decimal } from '../../numbers/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { lyePoints, percentOf, wholeLye } from './lyeValues.js';

const DISSOLVES =
  'Water at 20 °C dissolves sodium hydroxide to about 52.2 %, potassium hydroxide to about 52.8 %; for both together the lower limit is taken, because no figure is on file.';

/**
 * Whether the lye stays partly solid, by the likely assay: the whole of it where it is said what it is made up with, or else
 * what is called a solution.
 */
export function dissolvingFindings(pot: Pot): readonly Finding[] {
  const whole = pot.isMadeUp ? wholeLyeFinding(pot) : undefined;
  return whole === undefined ? solutionFindings(pot) : [whole];
}

function wholeLyeFinding(pot: Pot): Finding | undefined {
  const { likely } = lyePoints(pot);
  const most = dissolvesTo(pot.lye.map(({ alkali }) => alkali));
  const strength = percentOf(likely.pure, wholeLye(likely));
  if (most === undefined || strength === undefined || strength.lte(most)) return undefined;
  const leastWater = likely.pure.times(100).div(most).minus(likely.weighed);
  const needs = `It needs at least ${inWords(leastWater, 4)} g of water added; it has ${inWords(likely.added, 4)} g.`;
  return found('lye', strength, most, `The lye of this recipe is ${inWords(strength)} % hydroxide`, needs, leastWater);
}

function solutionFindings({ lye }: Pot): readonly Finding[] {
  return lye.flatMap(({ path, alkali, charge, grams }) => {
    const most = dissolvesTo([alkali]);
    const strength = charge.source.hydroxide.likely.times(100);
    if (charge.source.state !== 'solution' || strength.lte(most)) return [];
    const leastWater = strength.div(most).minus(1).times(grams.value);
    const needs = `What is weighed needs at least ${inWords(leastWater, 4)} g of water more.`;
    return [found(path, strength, most, `A solution of ${inWords(strength)} % is stated`, needs, leastWater)];
  });
}

function found(
  path: string,
  strength: Decimal,
  most: Decimal,
  says: string,
  needs: string,
  leastWater: Decimal,
): Finding {
  return {
    code: 'lye-stronger-than-dissolves',
    severity: 'caution',
    path,
    computed: frozen({ percent: strength }),
    values: frozen({ dissolvesTo: frozen({ percent: most }), leastWater: frozen({ g: leastWater }) }),
    explanation: `${says}, and more than ${inWords(most)} % does not dissolve. ${DISSOLVES} ${needs} What stays solid does not spread in the pot and burns where it is left: ask for the water, or whether the strength is the assay of a solid.`,
    slips: frozen([]),
    basis: frozen([]),
  };
}
