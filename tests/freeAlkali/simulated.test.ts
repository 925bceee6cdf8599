/** Titrations of known contents, simulated with every error that is stated: what comes back, and how often it is right. */
import {
  acidValueFromTitration,
  alkaliAssayFromBariumChloride,
  alkaliAssayFromTwoIndicators,
  freeCausticAlkaliFromTitration,
  lyeStrengthFromTitration,
  saponificationValueFromTitration,
  totalFreeAlkaliFromTitration,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { gaussian } from './gaussian.js';

const RUNS = 4000;
// of 4000 runs 95 % are 3800, with a standard deviation of 14: four of them either way
const [LEAST, MOST] = [3745, 3855];

const NAOH = 39.997;
const KOH = 56.105;
/** The standard uncertainties that hold where none are stated. */
const U = { balance: 0.01, burette: 0.03, endPoint: 0.03, titrant: 0.005 } as const;
const SAMPLING = { soap: 0.02, fat: 0.005, alkali: 0.005 } as const;

/** One titration with its errors: the reading of the burette, and what the flask of titrant and the scale really were. */
function bench(seed: number, sampled: keyof typeof SAMPLING) {
  const draw = gaussian(seed);
  return {
    /** Strength on the label against what it is. */
    factor: (): number => 1 + U.titrant * draw(),
    /** What was weighed against what was read. */
    scale: (): number => U.balance * draw(),
    /** Content of the sample against that of the whole. */
    part: (): number => 1 + SAMPLING[sampled] * draw(),
    reading: (mL: number): number => mL + Math.hypot(U.burette, U.endPoint) * draw(),
    /** A blank is two readings. */
    blank: (mL: number): number => mL + 0.04 * draw(),
    drop: (): number => U.endPoint * draw(),
    burette: (): number => U.burette * draw(),
  };
}

interface Found {
  readonly value: { toNumber: () => number };
  readonly uncertainty: { toNumber: () => number };
}

/** Runs in which the truth lies below the upper limit of 95 %, and between the two limits of 95 % together. */
function rates(truth: number, run: (seed: number) => Found): { readonly above: number; readonly within: number } {
  let [above, within] = [0, 0];
  for (let seed = 1; seed <= RUNS; seed += 1) {
    const { value, uncertainty } = run(seed);
    const [found, u] = [value.toNumber(), uncertainty.toNumber()];
    if (truth <= found + 1.645 * u) above += 1;
    if (Math.abs(found - truth) <= 1.96 * u) within += 1;
  }
  return { above, within };
}

function expectStatedRate(truth: number, run: (seed: number) => Found): void {
  const { above, within } = rates(truth, run);
  for (const count of [above, within]) {
    expect(count).toBeGreaterThan(LEAST);
    expect(count).toBeLessThan(MOST);
  }
}

describe('a titration simulated from a known content gives it back within its uncertainty, at the stated rate', () => {
  it.each([0.02, 0.05, 0.31])('free caustic of %s percent', (percent) => {
    expectStatedRate(percent, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'soap');
      const volume = (10 * percent * 10 * part()) / NAOH / (0.1 * factor());
      const { freeCausticAlkali, standardUncertainty } = freeCausticAlkaliFromTitration({
        sample: { g: (10 + scale()).toFixed(9) },
        titrant: { eqPerL: '0.1' },
        blank: { mL: Math.max(0, blank(0.3)).toFixed(9) },
        volume: { mL: Math.max(0, reading(volume + 0.3)).toFixed(9) },
      });
      return { value: freeCausticAlkali.percentNaoh, uncertainty: standardUncertainty.percentNaoh };
    });
  });

  it('free caustic by three readings with one blank and one titrant', () => {
    expectStatedRate(0.08, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'soap');
      const strength = 0.1 * factor();
      const { freeCausticAlkali, standardUncertainty } = freeCausticAlkaliFromTitration({
        readings: [8, 10, 12].map((g) => ({
          sample: { g: (g + scale()).toFixed(9) },
          volume: { mL: reading((g * 0.08 * 10 * part()) / NAOH / strength + 0.3).toFixed(9) },
        })),
        titrant: { eqPerL: '0.1' },
        blank: { mL: blank(0.3).toFixed(9) },
      });
      return { value: freeCausticAlkali.percentNaoh, uncertainty: standardUncertainty.percentNaoh };
    });
  });

  it('total free alkali against a blank', () => {
    expectStatedRate(0.4, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'soap');
      const strength = 0.1 * factor();
      const { totalFreeAlkali, standardUncertainty } = totalFreeAlkaliFromTitration({
        sample: { g: (10 + scale()).toFixed(9) },
        titrant: { eqPerL: '0.1' },
        blank: { mL: blank(30).toFixed(9) },
        volume: { mL: reading(30 - (10 * 0.4 * 10 * part()) / NAOH / strength).toFixed(9) },
      });
      return { value: totalFreeAlkali.percentNaoh, uncertainty: standardUncertainty.percentNaoh };
    });
  });

  it('acid value', () => {
    expectStatedRate(1.2, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'fat');
      const { acidValue, standardUncertainty } = acidValueFromTitration({
        sample: { g: (10 + scale()).toFixed(9) },
        titrant: { eqPerL: '0.1' },
        blank: { mL: blank(0.3).toFixed(9) },
        volume: { mL: reading((10 * 1.2 * part()) / KOH / (0.1 * factor()) + 0.3).toFixed(9) },
      });
      return { value: acidValue.mgKohPerG, uncertainty: standardUncertainty.mgKohPerG };
    });
  });

  it('saponification value', () => {
    expectStatedRate(256, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'fat');
      const { saponificationValue, standardUncertainty } = saponificationValueFromTitration({
        sample: { g: (2 + scale()).toFixed(9) },
        titrant: { eqPerL: '0.5' },
        blank: { mL: blank(25).toFixed(9) },
        volume: { mL: reading(25 - (2 * 256 * part()) / KOH / (0.5 * factor())).toFixed(9) },
      });
      return { value: saponificationValue.mgKohPerG, uncertainty: standardUncertainty.mgKohPerG };
    });
  });

  it('strength of a stock lye', () => {
    expectStatedRate(49.5, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'alkali');
      const { strength, standardUncertainty } = lyeStrengthFromTitration({
        alkali: 'naoh',
        sample: { g: (2.5 + scale()).toFixed(9) },
        titrant: { eqPerL: 1 },
        blank: { mL: blank(0.3).toFixed(9) },
        volume: { mL: reading((2.5 * 495 * part()) / NAOH / factor() + 0.3).toFixed(9) },
      });
      return { value: strength.percent, uncertainty: standardUncertainty.percent };
    });
  });

  it('hydroxide by two indicators, whose end points are shared', () => {
    expectStatedRate(92, (seed) => {
      const { factor, scale, part, drop, burette, blank } = bench(seed, 'alkali');
      const of = part() / factor();
      const caustic = ((1.5 * 920) / NAOH) * of;
      const half = ((1.5 * 30) / 105.988) * of;
      const [first, whole] = [caustic + half + drop() + burette(), caustic + 2 * half + drop() + burette()];
      const { hydroxide, standardUncertainty } = alkaliAssayFromTwoIndicators({
        alkali: 'naoh',
        sample: { g: (1.5 + scale()).toFixed(9) },
        titrant: { eqPerL: 1 },
        phenolphthalein: { mL: (first + blank(0)).toFixed(9) },
        methylOrange: { mL: (whole - first).toFixed(9) },
      });
      return { value: hydroxide.percent, uncertainty: standardUncertainty.hydroxide.percent };
    });
  });

  it('carbonate by barium chloride', () => {
    expectStatedRate(6, (seed) => {
      const { factor, scale, part, reading, blank } = bench(seed, 'alkali');
      const of = part() / factor();
      const after = ((2 * 850) / KOH) * of;
      const carbonate = ((2 * 60 * 2) / 138.204) * of;
      const found = alkaliAssayFromBariumChloride({
        alkali: 'koh',
        sample: { g: (2 + scale()).toFixed(9) },
        titrant: { eqPerL: 1 },
        bariumChloride: { mL: reading(after).toFixed(9) },
        methylOrange: { mL: (reading(after + carbonate) + blank(0)).toFixed(9) },
      });
      return { value: found.carbonate.percent, uncertainty: found.standardUncertainty.carbonate.percent };
    });
  });
});
