import { molarMass } from '../../chemistry/index.js';
import { expandedCharges } from '../../fats/index.js';
import { freeAlkaliBehindPh, type FreeAlkaliBehindPhResult } from '../../freeAlkali/index.js';
import { Decimal, frozen, ZERO, type Numeric } from '../../numbers/index.js';
import { inWords, rangeInWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedNumber, type Printed } from '../printed.js';

/** What a strip may be off in soap, at the least; a recipe does not say how its pH was taken. */
const STRIP = '0.5';
/** No pH is printed so coarsely that it could be off by more. */
const COARSEST = 3;
/** The solutions that a pH is read in: 1 g and 10 g of soap made up to 100 mL, at 25 °C; common practice, no source. */
const SOLUTIONS = { weak: '1', strong: '10' } as const;
const TEMPERATURE = { celsius: 25 } as const;

const solution = (g: string) => ({ soap: { g }, solution: { mL: 100 } });

/** What of a pot a pH is judged by. */
type JudgedPot = Pick<
  Pot,
  'fats' | 'additions' | 'unweighed' | 'areAllFats' | 'isAllLye' | 'areAllAdditions' | 'charged'
>;

/**
 * What a printed pH says: below what soap shows it contradicts a pot of soap and nothing else, above it there is caustic.
 * Between, it tells nothing of caustic.
 */
export function phFinding(pot: JudgedPot, claim: Numeric): Finding {
  const printed = printedNumber(claim);
  const error = { pH: Decimal.min(COARSEST, Decimal.max(STRIP, printed.high.minus(printed.value))) };
  const triethanolamine = pot.additions.some(({ holds }) => holds?.solvent === 'triethanolamine');
  const behind = (g: string): FreeAlkaliBehindPhResult =>
    freeAlkaliBehindPh({
      reading: { pH: printed.value },
      error,
      on: solution(g),
      temperature: TEMPERATURE,
      triethanolamine,
    });
  const [low, high] = [behind(SOLUTIONS.weak), behind(SOLUTIONS.strong)];
  const found = { printed, error: error.pH, low, high };
  if (high.finding === 'above-soap') return aboveSoap(found);
  if (low.finding !== 'below-soap') return cannotTell(found, triethanolamine);
  return belowSoap(found, pot);
}

interface Read {
  readonly printed: Printed;
  readonly error: Decimal;
  readonly low: FreeAlkaliBehindPhResult;
  readonly high: FreeAlkaliBehindPhResult;
}

function finding(code: Finding['code'], severity: Finding['severity'], read: Read, explanation: string): Finding {
  const { printed, error, high } = read;
  const band = bandOf(read);
  return {
    code,
    severity,
    path: 'claimed.ph',
    claimed: frozen({ number: printed.value }),
    values: frozen({
      soapAtLeast: frozen({ number: band.low }),
      soapAtMost: frozen({ number: band.high }),
      error: frozen({ number: error }),
    }),
    explanation,
    slips: frozen([]),
    basis: high.basis,
  };
}

/** What soap without caustic shows, from the weak solution to the strong one. */
function bandOf({ low, high }: Read): { readonly low: Decimal; readonly high: Decimal } {
  return { low: low.band?.low.pH ?? ZERO, high: high.band?.high.pH ?? ZERO };
}

const SHOWS = 'Soap of soda or potash without caustic shows';
const IN_WATER = 'in water, 1 to 10 g in 100 mL';

function aboveSoap(read: Read): Finding {
  return finding(
    'ph-above-soap',
    'caution',
    read,
    `The recipe prints a pH of ${read.printed.text}. ${SHOWS} ${rangeInWords(bandOf(read))} ${IN_WATER}: even ${inWords(read.error)} less than printed there is free caustic, carbonate or silicate. Titrate before it touches skin.`,
  );
}

function cannotTell(read: Read, triethanolamine: boolean): Finding {
  const amine = triethanolamine ? ' Triethanolamine is alkaline itself and hides what there is.' : '';
  return finding(
    'ph-cannot-tell',
    'note',
    read,
    `A pH of ${read.printed.text} cannot tell whether caustic is left: ${SHOWS.toLowerCase()} ${rangeInWords(bandOf(read))} ${IN_WATER}, and a little caustic lifts it no further than another soap does.${amine} Titrate.`,
  );
}

/** What besides soap may lie under it: free acid, and additions that have only a name. */
function belowSoap(read: Read, pot: JudgedPot): Finding {
  const isOpen = !pot.areAllAdditions || [...pot.additions, ...pot.unweighed].some(({ holds }) => holds === undefined);
  const says = `The recipe prints a pH of ${read.printed.text}. ${SHOWS} ${rangeInWords(bandOf(read))} ${IN_WATER}, and ${inWords(read.error)} more than printed does not reach it.`;
  if (isOpen || mayLeaveAcid(pot)) {
    return finding(
      'ph-cannot-tell',
      'note',
      read,
      `${says} Free acid or a detergent among the additions may bring it so low; a bad strip may as well. It does not say that caustic is absent: titrate.`,
    );
  }
  return finding(
    'ph-contradicted',
    'caution',
    read,
    `${says} Only free acid, a detergent or triethanolamine lies so low, and the recipe names none of them. It does not say that caustic is absent: titrate.`,
  );
}

/** Whether the lye may not suffice for the free acid of the fats, or these are not all known. */
function mayLeaveAcid({ areAllFats, isAllLye, fats, charged }: JudgedPot): boolean {
  const charges = fats.flatMap(({ fat, grams }) => (fat === undefined ? [] : [{ fat, grams: grams.value }]));
  if (!areAllFats || !isAllLye || charges.length < fats.length) return true;
  const acid = expandedCharges(charges).reduce(
    (sum, { fat, grams }) => sum.plus(grams.times(fat.acidValue.mgKohPerG)),
    ZERO,
  );
  return charged.low.lt(acid.div(molarMass('KOH').times(1000)));
}
