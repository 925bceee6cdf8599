import { frozen } from '../numbers/index.js';
import type { Finding, FindingCode } from './finding.js';

/** More of one kind nobody reads; the rest is counted. */
const MOST = 50;

/** The first findings of each code, and of the rest how many there are. */
export function fewOfEachCode(findings: readonly Finding[]): readonly Finding[] {
  const counts = new Map<FindingCode, number>();
  const few: Finding[] = [];
  const firstLeftOut: Finding[] = [];
  for (const finding of findings) {
    const count = (counts.get(finding.code) ?? 0) + 1;
    counts.set(finding.code, count);
    if (count <= MOST) few.push(finding);
    if (count === MOST + 1) firstLeftOut.push(finding);
  }
  return [
    ...few,
    ...firstLeftOut.map(({ code, severity }): Finding => ({
      code,
      severity,
      path: 'recipe',
      values: frozen({}),
      explanation: `${String((counts.get(code) ?? 0) - MOST)} more findings of this kind are left out.`,
      slips: frozen([]),
      basis: frozen([]),
    })),
  ];
}
