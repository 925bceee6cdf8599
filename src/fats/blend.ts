import { frozen, ZERO, type Decimal } from '../numbers/index.js';
import type { Estimate, SaponificationValue } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import type { BlendPart, FatBlend } from './fatType.js';
import { knownFat } from './knownFat.js';
import { notesOfFats } from './notesOfFats.js';

/** A blend of parts whose shares add up. */
export function blendOf(name: string, parts: readonly BlendPart[]): FatBlend {
  const mean = (end: keyof Estimate<unknown>): SaponificationValue => {
    const sum = parts.reduce(
      (total: Decimal, { fat, share }) => total.plus(fat.saponificationValue[end].mgKohPerG.times(share.percent)),
      ZERO,
    );
    return frozen({ mgKohPerG: sum.div(100) });
  };
  return knownFat({
    kind: 'blend',
    name,
    from: 'blend',
    saponificationValue: frozen({ low: mean('low'), likely: mean('likely'), high: mean('high') }),
    parts: frozen(parts),
    notes: frozen(notesOfFats(parts)),
    basis: frozen<readonly SourceId[]>([...new Set(parts.flatMap(({ fat }) => fat.basis))]),
    edition: EDITION,
  });
}
