import type { RecipeParts } from '../../recipe/readParts.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { ownValuesFinding } from './ownValues.js';
import { saponificationValueFindings } from './saponificationValues.js';
import { superfatFinding } from './superfat.js';

const none = (): readonly never[] => [];

/**
 * Whether a lye that is too much for the likely lot is right for another within the published range: then no slip need be
 * behind it, and none is looked for. Right is what gives the printed superfat, or without one any at all, and what follows
 * from the recipe's own saponification values if it prints them.
 */
export function isSpreadOfLots(pot: Pot, { claimed, target }: RecipeParts): boolean {
  const { balance } = pot;
  if (balance === undefined || saponificationValueFindings(pot).length > 0) return false;
  const superfat = claimed.superfat ?? target?.superfat;
  if (superfat === undefined) return !balance.superfat.high.percent.isNeg() && balance.superfat.low.percent.isNeg();
  const of = [
    claimed.superfat && superfatFinding(pot, 'claimed.superfat', claimed.superfat, none),
    target?.superfat && superfatFinding(pot, 'target.superfat', target.superfat, none),
    ownValuesFinding(pot, superfat, none),
  ];
  return of.every((finding) => finding === undefined);
}

/** Says of a danger that the spread of the lots explains that it does, and what to do about it. */
export function withSpreadOfLots(finding: Finding, pot: Pot, parts: RecipeParts): Finding {
  if (finding.code !== 'free-caustic-above-limit' || !isSpreadOfLots(pot, parts)) return finding;
  const areOwn = pot.fats.every(({ ownDemand }) => ownDemand !== undefined);
  const from =
    areOwn && (parts.claimed.superfat ?? parts.target?.superfat) !== undefined
      ? 'It follows from the saponification values that the recipe prints, and they lie within the published ranges'
      : 'No slip need be behind it';
  return {
    ...finding,
    explanation: `${finding.explanation} ${from}: a lot at the rich end of its published range would take it up, and a recipe cannot count on such a lot. Have the saponification value of the lot certified, or take less lye.`,
  };
}
