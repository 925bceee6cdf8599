/** Where tables join, and what is told of a heat. */
import { lyeDensity } from 'laurate';
import { describe, expect, it } from 'vitest';
import { dissolvesTo } from '../../src/lye/dissolvesTo.js';
import { lyeHeatCapacity, naohHeatAt } from '../../src/lye/lyeHeats.js';
import { Decimal } from '../../src/numbers/index.js';

describe('what dissolves of soda and potash together', () => {
  it('is as much as of the one that dissolves less, and of none nothing is told', () => {
    expect(dissolvesTo(['naoh', 'koh']).toString()).toBe('52.2');
    expect(dissolvesTo(['koh', 'koh']).toString()).toBe('52.8');
    expect(dissolvesTo([])).toBeUndefined();
  });
});

describe('heat of dissolving', () => {
  it.each([
    // moles of water to one of NaOH, kJ/mol: Koretsky, and between them Felder and Rousseau
    ['30', '42.72'], // the first to be asked for lies between rows of the other
    ['20', '42.865'],
    ['40', '42.59'],
    ['100', '42.334'],
    ['200', '42.26'],
    ['10000', '42.72'],
  ])('in %s moles of water is that of the row, whichever table it is from', (water, kJ) => {
    expect(naohHeatAt(new Decimal(water)).toFixed(9)).toBe(new Decimal(kJ).toFixed(9));
  });
});

describe('heat capacity of a lye', () => {
  it('is the mean from 20 to 80 °C', () => {
    // 10 %: (5·(3.876 + 3.865) + 15·(3.865 + 3.841) + 20·(3.841 + 3.826) + 20·(3.826 + 3.830))/2/60
    expect(lyeHeatCapacity('naoh', new Decimal(10)).toFixed(6)).toBe('3.839625');
  });
});

describe('density of a soda lye at 20 °C', () => {
  it('goes on over 40 %, where one table ends, as it came', () => {
    const at = (percent: string) =>
      lyeDensity({ alkali: 'naoh', strength: { percent }, temperature: { celsius: 20 } }).density.gPerML;
    const [before, here, after] = [at('39.9'), at('40'), at('40.1')];
    const ratio = after.minus(here).div(here.minus(before));
    expect(ratio.minus(1).abs().lt('0.03'), ratio.toString()).toBe(true);
  });
});
