/** The other functions of the lye, each by itself: none has a plain way that does the same, so only the scale is told. */
import {
  dilutedLye,
  fat,
  lyeDensity,
  lyeStrengthFromDensity,
  lyeTemperatureFromDissolving,
  planLye,
  soapFromLye,
} from 'laurate';
import type { Contender } from './harness.js';

const fats = [
  { fat: fat('coconut-oil'), mass: { g: 400 } },
  { fat: fat('beef-tallow'), mass: { g: 600 } },
];

/** One call of each, on inputs a bench meets. */
export const lyeBenchContenders: readonly Contender[] = [
  {
    name: '`lyeDensity`',
    run: () => lyeDensity({ alkali: 'naoh', strength: { percent: '33.3' }, temperature: { celsius: 25 } }),
  },
  {
    name: '`lyeStrengthFromDensity`',
    run: () => lyeStrengthFromDensity({ alkali: 'naoh', density: { gPerML: '1.52' }, temperature: { celsius: 25 } }),
  },
  {
    name: '`dilutedLye`',
    run: () =>
      dilutedLye({
        alkali: 'naoh',
        stock: { strength: { percent: 50 } },
        target: { strength: { percent: 33 }, lye: { g: 1000 } },
      }),
  },
  {
    name: '`lyeTemperatureFromDissolving`',
    run: () =>
      lyeTemperatureFromDissolving({
        alkali: 'naoh',
        solid: { g: 100 },
        water: { g: 200 },
        start: { celsius: 20 },
      }),
  },
  {
    name: '`planLye` of two fats by its limit of free caustic alkali',
    run: () =>
      planLye({
        fats,
        alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
        target: { freeCausticAlkaliAtMost: { percentNaoh: '0.05' } },
        dilution: { strength: { percent: 33 } },
      }),
  },
  {
    name: '`soapFromLye` of two fats',
    run: () =>
      soapFromLye({
        fats,
        lye: [{ alkali: 'naoh', mass: { g: 296 }, solution: { hydroxide: { percent: 50 } } }],
        water: { g: 150 },
      }),
  },
];
