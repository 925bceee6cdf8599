import { frozen, noted, type Decimal, type Steps } from '../numbers/index.js';
import type { Titrant } from '../quantities/index.js';
import { hydroxideMolarMass, type Alkali } from './alkali.js';

/** Hydroxide in a litre of lye, from its strength (percent by mass) and its density (g/mL). */
export function concentrationOf(alkali: Alkali, percent: Decimal, gPerML: Decimal, steps?: Steps): Titrant {
  const eqPerL = noted(
    steps,
    'hydroxide in a litre',
    'c = 10·w·ρ/M',
    'mol/L',
    percent.times(10).times(gPerML).div(hydroxideMolarMass(alkali)),
  );
  return frozen({ eqPerL });
}
