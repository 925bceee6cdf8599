import { frozen } from '../numbers/index.js';
import type { Finding } from './finding.js';

/** More ways in which one figure may have come about tell its reader nothing. */
const MOST = 3;

/** A finding with the first of its slips, and of the rest how many there are. */
export function withFewSlips(finding: Finding): Finding {
  const more = finding.slips.length - MOST;
  if (more <= 0) return finding;
  return {
    ...finding,
    values: frozen({ ...finding.values, moreSlips: String(more) }),
    explanation: `${finding.explanation} Besides the ${String(MOST)} slips told here, ${String(more)} more would give the figure too.`,
    slips: frozen(finding.slips.slice(0, MOST)),
  };
}
