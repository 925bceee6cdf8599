/** The invented batch of the harbour workshop: drum, certificate, fats, and the plan of its lye. */
import { fat, fatFromCertificate, lyeStrengthFromDensity, planLye, type Fraction } from 'laurate';

// The stock lye, by a hydrometer in degrees Twaddell at 18 °C. It can be read to half a degree.
const reading = (twaddell: string): Fraction =>
  lyeStrengthFromDensity({ alkali: 'naoh', density: { twaddell }, temperature: { celsius: 18 } }).strength;
export const stock = { low: reading('103.5'), likely: reading('104'), high: reading('104.5') };

// A lot of coconut oil whose supplier certifies it; the other fats stand for any lawful lot of their kind.
const coconut = fatFromCertificate({
  name: 'Coconut oil, drum 7',
  like: fat('coconut-oil'),
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: '1.0' },
  acidValue: { mgKohPerG: '0.2' },
});
export const others = [
  { fat: fat('stearic-acid-50'), mass: { g: 230 } },
  { fat: fat('castor-oil'), mass: { g: 60 } },
];
export const bench = {
  alkali: { naoh: { solution: { hydroxide: stock } } },
  target: { superfat: { percent: 3 } },
  dilution: { strength: { percent: 33 } },
  scaleStep: { g: 1 },
} as const;

export const fats = [{ fat: coconut, mass: { g: 610 } }, ...others];
export const plan = planLye({ ...bench, fats });
