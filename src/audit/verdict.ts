import type { Finding, FindingCode } from './finding.js';

/**
 * What an audit comes to, worst first.
 *
 * `dangerous`: free caustic above the limit at the likely lot. `wrong`: two figures contradict each other and no lot explains
 * it. `doubtful`: above the limit only at the leanest lot, or another caution. `cannot-tell`: something that decides cannot
 * be read, or is not said. `sound`: none of these, with the worst case among the findings.
 */
export type Verdict = 'dangerous' | 'wrong' | 'doubtful' | 'cannot-tell' | 'sound';

const CONTRADICTIONS: readonly FindingCode[] = [
  'superfat-contradicted', 'target-missed', 'own-values-contradicted', 'saponification-value-contradicted', 'share-contradicted',
  'strength-contradicted', 'water-per-alkali-contradicted', 'water-per-fat-contradicted', 'koh-share-contradicted',
  'total-contradicted', 'addition-share-contradicted', 'part-share-contradicted', 'clearing-agents-per-soap-contradicted',
  'water-per-soap-contradicted', 'free-caustic-contradicted', 'ph-contradicted', 'shares-above-whole',
]; // prettier-ignore

const OPEN: readonly FindingCode[] = ['unreadable', 'free-caustic-hangs-on-assay'];

/** The verdict of some findings. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  if (findings.some(({ severity }) => severity === 'danger')) return 'dangerous';
  if (findings.some(({ code }) => CONTRADICTIONS.includes(code))) return 'wrong';
  if (findings.some(({ code, severity }) => severity === 'caution' && !OPEN.includes(code))) return 'doubtful';
  return findings.some(({ code }) => OPEN.includes(code)) ? 'cannot-tell' : 'sound';
}
