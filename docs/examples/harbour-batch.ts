/** The invented batch of the harbour workshop: drum, certificate, recipe, and the plan of the whole batch. */
import { fat, fatFromCertificate, lyeStrengthFromDensity, type Fraction } from 'laurate';
import { planBatch, type PlanBatchOptions, type RecipeToPlan } from 'laurate/recipe';

// The stock lye, by a hydrometer in degrees Twaddell at 18 °C. It can be read to half a degree.
const reading = (twaddell: string): Fraction =>
  lyeStrengthFromDensity({ alkali: 'naoh', density: { twaddell }, temperature: { celsius: 18 } }).strength;
export const stock = { low: reading('103.5'), likely: reading('104'), high: reading('104.5') };

// A lot of coconut oil whose supplier certifies it; the other fats stand for any lawful lot of their kind.
export const coconut = fatFromCertificate({
  name: 'Coconut oil, drum 7',
  like: fat('coconut-oil'),
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: '1.0' },
  acidValue: { mgKohPerG: '0.2' },
});

export const recipe: RecipeToPlan = {
  version: 1,
  title: 'Clear base of the harbour workshop',
  fats: [
    { fat: 'drum 7', mass: { g: 610 } },
    { fat: 'stearic-acid-50', mass: { g: 230 } },
    { fat: 'castor-oil', mass: { g: 60 } },
  ],
  lye: [{ alkali: 'naoh', solution: { hydroxide: stock } }],
  water: { g: 60 },
  additions: [
    { solvent: 'glycerol', mass: { g: 260 }, assay: { percent: '99.5' } },
    { solvent: 'propylene-glycol', mass: { g: 330 }, assay: { percent: '99.5' } },
    { solvent: 'sorbitol', mass: { g: 520 }, assay: { percent: 70 } },
    { name: 'colour in water', mass: { g: 4 } },
  ],
  target: { superfat: { percent: 3 } },
  temperatures: [
    { stage: 'saponification', time: { minutes: 0 }, temperature: { celsius: 52 } },
    { stage: 'saponification', time: { minutes: 30 }, temperature: { celsius: 68 } },
    { stage: 'saponification', time: { minutes: 60 }, temperature: { celsius: 61 } },
    { stage: 'clearing', time: { minutes: 150 }, temperature: { celsius: 66 } },
    { stage: 'pouring', time: { minutes: 240 }, temperature: { celsius: 62 } },
  ],
};

const perKilogram = (amount: string) => ({ amount, per: { kg: 1 } });

/** Prices are invented, in an invented currency. */
export const options: PlanBatchOptions = {
  fats: { 'drum 7': coconut },
  scaleTo: 'moulds',
  moulds: { volume: { mL: 110 }, count: 20 },
  scaleStep: { g: 1 },
  evaporated: { g: 40 },
  start: { pot: { celsius: 52 }, lye: { celsius: 20 } },
  prices: {
    currency: 'marks',
    of: {
      'Coconut oil, drum 7': perKilogram('3.10'),
      'stearic-acid-50': perKilogram('2.40'),
      'castor-oil': perKilogram('4.80'),
      naoh: perKilogram('0.95'),
      glycerol: perKilogram('1.90'),
      'propylene-glycol': perKilogram('2.20'),
      sorbitol: perKilogram('1.30'),
      'colour in water': perKilogram('8'),
    },
  },
};

export const batch = planBatch(recipe, options);
