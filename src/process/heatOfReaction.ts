import { molarMass } from '../chemistry/index.js';
import { Decimal, frozen, ZERO } from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import { modelEsters, neutralisation, technicalHeat } from './data/heats.js';

/** What meets in a pot, mol. */
export interface Meeting {
  readonly hydroxide: Estimate<Decimal>;
  readonly freeAcid: Estimate<Decimal>;
  readonly esters: Estimate<Decimal>;
}

/** The most that a mole of ester is taken to give out, kJ: the technical figure; free acid is given the same. */
export function mostHeatPerMol(): Decimal {
  return new Decimal(technicalHeat.kJ).times(molarMass('KOH')).div(technicalHeat.mgKohPerG);
}

/** Heat given out, kJ: hydroxide takes free acid first, then esters. */
function given(
  { hydroxide, freeAcid, esters }: Readonly<Record<keyof Meeting, Decimal>>,
  perMol: Readonly<Record<'acid' | 'ester', Decimal | string>>,
): Decimal {
  const neutralised = Decimal.min(hydroxide, freeAcid);
  const split = Decimal.min(Decimal.max(hydroxide.minus(freeAcid), ZERO), esters);
  return neutralised.times(perMol.acid).plus(split.times(perMol.ester));
}

/** Heat that a share of the lye gives out, the first of it, kJ. */
export function heatOfReaction({ hydroxide, freeAcid, esters }: Meeting, share: Decimal): Estimate<Decimal> {
  const at = (end: keyof Estimate<unknown>): Readonly<Record<keyof Meeting, Decimal>> => ({
    hydroxide: hydroxide[end].times(share),
    freeAcid: freeAcid[end],
    esters: esters[end],
  });
  const most = mostHeatPerMol();
  const { strongAcid, aceticAcid } = neutralisation;
  return frozen({
    low: given(at('low'), { acid: strongAcid.kJ, ester: modelEsters.glycerolTriacetate.kJ }),
    likely: given(at('likely'), { acid: aceticAcid.kJ, ester: modelEsters.ethylAcetate.kJ }),
    high: given(at('high'), { acid: most, ester: most }),
  });
}
