import { frozen, type Decimal } from '../../numbers/index.js';
import { unitsByKind, type AlkaliContentInput } from '../../quantities/index.js';
import { asPrinted, inUnit, rangeInWords } from '../figures.js';
import type { Finding } from '../finding.js';
import { balanceWith, type Pot, type PotLye } from '../pot.js';
import { printedQuantity } from '../printed.js';
import { namedFats } from './addedFats.js';
import { namedAcids } from './counted.js';

/**
 * Whether the masses of a recipe can leave the free caustic that it prints, over lots, assays and last digits. Less than any
 * lot leaves is a contradiction. More is none: a reaction that is not complete leaves more, and a limit is printed as well.
 */
export function causticClaimFinding(pot: Pot, claim: AlkaliContentInput): Finding | undefined {
  const { balance } = pot;
  if (balance === undefined) return undefined;
  const printed = printedQuantity(claim, unitsByKind().alkaliContent);
  const least = contentWith(pot, 'low', 'low') ?? balance.freeCausticAlkali.low.percentNaoh;
  const most = contentWith(pot, 'high', 'high') ?? balance.freeCausticAlkali.high.percentNaoh;
  // the pot may weigh more than what is known of it
  const low = least.times(pot.batchGrams).div(mostGrams(pot));
  const shown = inUnit('alkaliContent', printed.unit);
  const { value, text } = shown({ low, likely: balance.freeCausticAlkali.likely.percentNaoh, high: most });
  const found = (code: Finding['code'], severity: Finding['severity'], explanation: string): Finding => ({
    code,
    severity,
    path: 'claimed.freeCausticAlkali',
    claimed: asPrinted(printed).value,
    computed: value,
    values: frozen({}),
    explanation,
    slips: frozen([]),
    basis: balance.basis,
  });
  const says = `The recipe prints ${asPrinted(printed).text} of free caustic`;
  if (printed.high.lt(low)) {
    const words = `${says}, but its masses leave ${text} over the lots within the published ranges of these fats.`;
    // what is not known, or takes up lye, may make it less
    return pot.hasAllMasses && namedAcids(pot).length === 0 && namedFats(pot).length === 0
      ? found('free-caustic-contradicted', 'caution', `${words} No lot leaves so little.`)
      : found(
          'free-caustic-not-of-these-masses',
          'note',
          `${words} What is not weighed, or takes up lye, may make it less.`,
        );
  }
  if (printed.low.lte(most)) return undefined;
  return found(
    'free-caustic-not-of-these-masses',
    'note',
    `${says}. Once the reaction is complete its masses leave ${rangeInWords({ low, high: most })} % NaOH: if the figure was found by a test the reaction was not complete, or other masses were weighed; it may also be meant as a limit.`,
  );
}

type Size = 'low' | 'high';

/** Free caustic with the lye at one end of its last digit, percent NaOH. */
function contentWith(pot: Pot, size: Size, end: Size): Decimal | undefined {
  const change = ({ input, grams }: PotLye): PotLye['input'] => ({ ...input, mass: { g: grams[size] } });
  return balanceWith(pot, change)?.freeCausticAlkali[end].percentNaoh;
}

const mostGrams = ({ batchGrams, additions }: Pot): Decimal =>
  additions.reduce((sum, { grams }) => sum.plus(grams.high).minus(grams.low), batchGrams);
