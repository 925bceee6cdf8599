import { frozen } from '../../numbers/index.js';
import { unitsByKind, type AlkaliContent, type AlkaliContentInput } from '../../quantities/index.js';
import type { SuperfatFromLyeResult } from '../../saponification/index.js';
import { asPrinted, inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import { atWeakest, balanceWith, type Pot } from '../pot.js';
import { printedQuantity } from '../printed.js';
import type { Slip } from '../slips/slip.js';
import { acidDecides } from './acids.js';
import { balanceCounting } from './counted.js';

/**
 * Whether free caustic may be left: above the limit at the likely lot is a danger, above it only at the leanest lot and the
 * strongest assay a caution. An assay that is not stated counts at its lowest, so that nothing is called dangerous for want
 * of it; what then hangs on it is said. Where acid among the additions, counted as pure, would bring it below the limit, that
 * is said instead.
 */
export function freeCausticFinding(pot: Pot, limit: AlkaliContent, slips: () => readonly Slip[]): Finding | undefined {
  const { balance } = pot;
  if (balance === undefined) return undefined;
  const isStated = pot.lye.every((one) => one.isStated);
  const judged = isStated ? balance : (balanceWith(pot, atWeakest) ?? balance);
  const exceeds = (content: AlkaliContent): boolean => content.percentNaoh.gt(limit.percentNaoh);
  const found = (code: Finding['code'], severity: Finding['severity'], explanation: string): Finding => ({
    code,
    severity,
    path: 'lye',
    computed: balance.freeCausticAlkali,
    values: frozen({
      limit,
      superfat: balance.superfat,
      ...(isStated ? {} : { atLowestAssay: judged.freeCausticAlkali }),
    }),
    explanation,
    slips: severity === 'danger' ? slips() : frozen([]),
    basis: balance.basis,
  });
  const { likely, high } = judged.freeCausticAlkali;
  const worst = balance.freeCausticAlkali.high;
  if (exceeds(likely)) {
    const counted = balanceCounting(pot, atWeakest);
    return counted === undefined || exceeds(counted.freeCausticAlkali.likely)
      ? found('free-caustic-above-limit', 'danger', tooMuch(judged, limit, isStated))
      : acidDecides(pot, judged, counted, limit);
  }
  if (exceeds(high)) {
    const text = isStated ? atLeanest(judged, limit) : atLeanestAndLowest(judged, worst, limit);
    return found('free-caustic-above-limit-at-leanest-lot', 'caution', text);
  }
  if (exceeds(worst)) return found('free-caustic-hangs-on-assay', 'caution', hangsOnAssay(high, worst, limit));
  if (likely.percentNaoh.gt(0)) return found('free-caustic-below-limit', 'caution', belowLimit(judged, limit));
  return found('worst-case', 'note', atWorst(balance));
}

/** Whether a free caustic that the recipe prints itself is above the limit; where the figure comes from, it does not say. */
export function printedCausticFinding(claim: AlkaliContentInput, limit: AlkaliContent): Finding | undefined {
  const printed = printedQuantity(claim, unitsByKind().alkaliContent);
  if (printed.value.lte(limit.percentNaoh)) return undefined;
  return {
    code: 'free-caustic-printed-above-limit',
    severity: 'caution',
    path: 'claimed.freeCausticAlkali',
    claimed: asPrinted(printed).value,
    values: frozen({ limit }),
    explanation: `The recipe itself prints ${asPrinted(printed).text} of free caustic; the limit is ${content(limit)}. Ask how it was found, and test the batch before it touches skin.`,
    slips: frozen([]),
    basis: frozen([]),
  };
}

/** Whether a limit that the recipe aims at is kept by every lawful lot and assay, as such a limit is meant. */
export function causticTargetFinding(pot: Pot, target: AlkaliContentInput): Finding | undefined {
  const { balance } = pot;
  if (balance === undefined) return undefined;
  const printed = printedQuantity(target, unitsByKind().alkaliContent);
  const { low, high } = balance.freeCausticAlkali;
  if (high.percentNaoh.lte(printed.high)) return undefined;
  const isMissed = low.percentNaoh.gt(printed.high);
  const counted = isMissed ? balanceCounting(pot, ({ input }) => input) : undefined;
  // acid among the additions may keep it; what is in excess without it is told as a caution
  if (counted?.freeCausticAlkali.low.percentNaoh.lte(printed.high) === true) return undefined;
  const lots = isMissed
    ? `Even the richest lots within the published ranges, with the weakest assay, leave ${content(low)}.`
    : `The leanest lots within the published ranges, with the strongest assay, leave ${content(high)}.`;
  return {
    code: isMissed ? 'target-missed' : 'target-missed-at-leanest-lot',
    severity: 'caution',
    path: 'target.freeCausticAlkaliAtMost',
    claimed: asPrinted(printed).value,
    computed: balance.freeCausticAlkali,
    values: frozen({}),
    explanation: `The recipe aims at no more free caustic than ${asPrinted(printed).text}. ${lots}`,
    slips: frozen([]),
    basis: balance.basis,
  };
}

const content = ({ percentNaoh }: AlkaliContent): string => `${inWords(percentNaoh)} % NaOH`;

/** How much more alkali there is than is taken up: in parts of itself as long as that can be pictured. */
function inExcess({ likely: { percent } }: SuperfatFromLyeResult['superfat']): string {
  const more = percent.neg();
  return more.gt(100)
    ? `${inWords(more.div(100).plus(1), 2)} times the alkali that`
    : `${inWords(more)} % more alkali than`;
}

function tooMuch(
  { superfat, freeCausticAlkali }: SuperfatFromLyeResult,
  limit: AlkaliContent,
  isStated: boolean,
): string {
  const holds = isStated ? 'The lye holds' : 'Even at the lowest assay of technical grades the lye holds';
  const isCertain = freeCausticAlkali.low.percentNaoh.gt(limit.percentNaoh);
  const lots = isCertain
    ? 'No lot within the published ranges takes it all up.'
    : 'Only a richer lot than the likely one would take it up.';
  return `${holds} ${inExcess(superfat)} the likely lots of these fats take up. That leaves ${content(freeCausticAlkali.likely)} free in the pot; the limit is ${content(limit)}. ${lots} It burns skin: do not use it.`;
}

function atLeanest({ superfat, freeCausticAlkali }: SuperfatFromLyeResult, limit: AlkaliContent): string {
  return `The likely lots leave no more free caustic than the limit of ${content(limit)} (superfat ${inWords(superfat.likely.percent)} %), but the leanest lots within the published ranges, with the strongest assay, leave ${content(freeCausticAlkali.high)}. Have the saponification value of the lot certified, take less lye, or test the batch before it touches skin.`;
}

function atLeanestAndLowest(
  { superfat, freeCausticAlkali }: SuperfatFromLyeResult,
  atHighest: AlkaliContent,
  limit: AlkaliContent,
): string {
  return `How strong the alkali is, is not stated. At the lowest assay of technical grades the likely lots leave no more free caustic than the limit of ${content(limit)} (superfat ${inWords(superfat.likely.percent)} %), but the leanest lots within the published ranges leave ${content(freeCausticAlkali.high)}; at the highest assay they leave ${content(atHighest)}. Ask for the assay, and take less lye.`;
}

function belowLimit({ superfat, freeCausticAlkali }: SuperfatFromLyeResult, limit: AlkaliContent): string {
  return `The lye holds ${inExcess(superfat)} the likely lots of these fats take up. The ${content(freeCausticAlkali.likely)} that stay free, at worst ${content(freeCausticAlkali.high)}, are below the limit of ${content(limit)}; they are free caustic all the same. Test before skin.`;
}

function hangsOnAssay(atLowest: AlkaliContent, atHighest: AlkaliContent, limit: AlkaliContent): string {
  return `How strong the alkali is, is not stated, and it decides. At the lowest assay of technical grades the leanest lots leave ${content(atLowest)} free caustic, at the highest ${content(atHighest)}; the limit is ${content(limit)}. Ask for the assay.`;
}

function atWorst({ superfat, freeCausticAlkali: { high } }: SuperfatFromLyeResult): string {
  const left = high.percentNaoh.isZero() ? 'no free caustic on paper' : `${content(high)} free caustic`;
  return `At worst, with the leanest lot of every fat within its published range and the strongest assay, the superfat is ${inWords(superfat.low.percent)} % and there is ${left}. That assumes complete mixing and reaction: test before skin.`;
}
