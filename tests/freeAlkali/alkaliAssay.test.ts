/** Assay of caustic by two indicators and by barium chloride, strength of a stock, strength of a titrant. */
import fc from 'fast-check';
import {
  alkaliAssayFromBariumChloride,
  alkaliAssayFromTwoIndicators,
  alkaliContentOf,
  fat,
  lyeStrengthFromTitration,
  planLye,
  titrantFromStandard,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const flake = {
  alkali: 'naoh',
  sample: { g: '1.5' },
  titrant: { eqPerL: 1 },
  phenolphthalein: { mL: '36.6' },
  methylOrange: { mL: '0.2' },
} as const;
const potash = {
  alkali: 'koh',
  sample: { g: 2 },
  titrant: { eqPerL: 1 },
  bariumChloride: { mL: '31.1' },
  methylOrange: { mL: '31.5' },
} as const;
const stock = { alkali: 'naoh', sample: { g: '2.5' }, titrant: { eqPerL: 1 }, volume: { mL: '31.2' } } as const;

describe('worked by hand', () => {
  it('two indicators: 36.4 mL are caustic, 0.4 mL carbonate, 36.8 mL in all', () => {
    const r = alkaliAssayFromTwoIndicators(flake);
    expect(r.hydroxide.percent.toFixed(6)).toBe('97.059387'); // 36.4 · 3.9997 / 1.5
    expect(r.carbonate.percent.toFixed(6)).toBe('1.413173'); // 0.4 · 5.2994 / 1.5
    expect(r.totalAlkali.percent.toFixed(6)).toBe('98.125973'); // 36.8 · 3.9997 / 1.5
    // carbonate: 8·0.0018/1.5² on the end points, (0.04/1.5)² on the blank, relative parts small
    expect(r.standardUncertainty.carbonate.percent.toFixed(4)).toBe('0.4471');
  });

  it('barium chloride: 31.1 mL are caustic, 0.4 mL carbonate', () => {
    const r = alkaliAssayFromBariumChloride(potash);
    expect(r.hydroxide.percent.toFixed(6)).toBe('87.243275'); // 31.1 · 5.6105 / 2
    expect(r.carbonate.percent.toFixed(5)).toBe('1.38204'); // 0.4 · 6.9102 / 2
    expect(r.cautions.map(({ code }) => code)).toContain('barium-chloride-poisonous');
  });

  it('a stock lye: 31.2 mL of 1 N on 2.5 g', () => {
    const r = lyeStrengthFromTitration(stock);
    expect(r.strength.percent.toString()).toBe('49.916256'); // 12.48 · 3.9997
    const half = r.standardUncertainty.percent.times('1.96');
    expect(r.range.low.percent.eq(r.strength.percent.minus(half))).toBe(true);
    expect(r.range.high.percent.eq(r.strength.percent.plus(half))).toBe(true);
    expect(r.notes.map(({ code }) => code)).toEqual(['carbonate-read-as-hydroxide']);
  });

  it('an acid: 0.1325 g of sodium carbonate are 2.5 milliequivalents', () => {
    const r = titrantFromStandard({ standard: { sodiumCarbonate: { g: '0.132485' } }, volume: { mL: 25 } });
    expect(r.titrant.eqPerL.toString()).toBe('0.1');
    // balance 0.01 g of 0.132485 g is 7.548 %, volume √0.0018/25 is 0.170 %
    expect(r.standardUncertainty.percent.toFixed(3)).toBe('7.550');
    const fine = { standard: { sodiumCarbonate: { g: '0.132485' } }, volume: { mL: 25 }, uncertainty: { balance: { mg: '0.2' } } };
    expect(titrantFromStandard(fine).standardUncertainty.percent.toFixed(3)).toBe('0.227');
  }); // prettier-ignore

  it('an alkali: 0.510555 g of potassium hydrogen phthalate are 2.5 milliequivalents; and by a solution', () => {
    const by = titrantFromStandard({ standard: { potassiumHydrogenPhthalate: { g: '0.510555' } }, volume: { mL: 25 } });
    expect(by.titrant.eqPerL.toString()).toBe('0.1'); // M 204.222
    const solution = { titrant: { eqPerL: '0.1' }, volume: { mL: 25 } };
    const r = titrantFromStandard({ standard: { solution }, volume: { mL: '24.9' } });
    expect(r.titrant.eqPerL.toFixed(8)).toBe('0.10040161'); // 2.5 / 24.9
    // 0.5 % of the standard, 0.03/25 and √0.0018/24.9
    expect(r.standardUncertainty.percent.toFixed(3)).toBe('0.542');
  });
});

describe('what they are for', () => {
  it('a measured range is the assay of a lye plan', () => {
    const { range } = alkaliAssayFromTwoIndicators(flake);
    const plan = planLye({
      fats: [{ fat: fat('coconut-oil'), mass: { g: 900 } }],
      alkali: { naoh: { solid: { hydroxide: range } } },
      target: { superfat: { percent: 3 } },
      dilution: { waterPerAlkali: 2 },
    });
    expect(plan.weigh.naoh.g.gt(0)).toBe(true);
    expect(plan.notes.map(({ code }) => code)).not.toContain('strength-taken-as-exact');
    const { range: strength } = lyeStrengthFromTitration(stock);
    expect(alkaliContentOf({ alkali: 'naoh', solution: { hydroxide: strength } }).hydroxide).toEqual(strength);
  });

  it('a measured titrant goes into a titration with its uncertainty', () => {
    const standard = { sodiumCarbonate: { g: '1.3248' } };
    const { titrant, standardUncertainty } = titrantFromStandard({ standard, volume: { mL: 25 } });
    const known = lyeStrengthFromTitration({ ...stock, titrant, uncertainty: { titrant: standardUncertainty } });
    expect(known.given.uncertainty.titrant.percent.eq(standardUncertainty.percent)).toBe(true);
  });
});

describe('laws', () => {
  const uL = fc.integer({ min: 0, max: 30000 });
  const mL = (microlitres: number): { mL: string } => ({ mL: `${String(microlitres)}e-3` });

  it('total alkali is hydroxide and carbonate counted as hydroxide, both ways', () => {
    fc.assert(
      fc.property(uL, uL, (less, more) => {
        const [low, high] = [Math.min(less, more), Math.max(less, more)];
        const two = alkaliAssayFromTwoIndicators({ ...flake, sample: { g: 3 }, phenolphthalein: mL(high), methylOrange: mL(low) });
        const barium = alkaliAssayFromBariumChloride({ ...potash, sample: { g: 3 }, bariumChloride: mL(low), methylOrange: mL(high) });
        for (const [{ hydroxide, carbonate, totalAlkali }, ratio] of [
          [two, new Exact('79.994').div('105.988')],
          [barium, new Exact('112.21').div('138.204')],
        ] as const) {
          const sum = ratio.times(carbonate.percent.toString()).plus(hydroxide.percent.toString());
          expect(deviation(totalAlkali.percent.toString(), sum).lte('1e-30')).toBe(true);
        }
      }),
    );
  }); // prettier-ignore

  it('as pharmacopoeias do, `alkaliContentOf` takes the carbonate off the total again', () => {
    const { totalAlkali, carbonate, hydroxide } = alkaliAssayFromTwoIndicators(flake);
    const content = alkaliContentOf({ alkali: 'naoh', solid: { totalAlkali, carbonate } });
    expect(deviation(content.hydroxide.likely.percent.toString(), hydroxide.percent.toString()).lte('1e-30')).toBe(true);
  }); // prettier-ignore

  it('limits stay a share of the lye', () => {
    const rough = { ...stock, volume: { mL: '0.05' } };
    expect(lyeStrengthFromTitration(rough).range.low.percent.isZero()).toBe(true);
    const pure = { ...stock, sample: { g: '1.14' } };
    expect(lyeStrengthFromTitration(pure).range.high.percent.toString()).toBe('110');
  });
});

describe('refusals', () => {
  it('a burette read to the end of both steps is told how the second is meant', () => {
    expect(refusal(() => alkaliAssayFromTwoIndicators({ ...flake, methylOrange: { mL: '36.8' } })).message).toBe(
      'methylOrange: expected what it takes from phenolphthalein on, not both together, at most 36.6 mL: else there is no hydroxide, received 36.8',
    );
  });

  it.each<[string, () => unknown, string, string]>([
    ['more acid after phenolphthalein than before', () => alkaliAssayFromTwoIndicators({ ...flake, methylOrange: { mL: 37 } }), 'out-of-range', 'methylOrange'],
    ['less acid without barium chloride', () => alkaliAssayFromBariumChloride({ ...potash, methylOrange: { mL: 30 } }), 'out-of-range', 'methylOrange'],
    ['more than 110 percent', () => lyeStrengthFromTitration({ ...stock, sample: { g: 1 } }), 'out-of-range', 'sample'],
    ['more than 110 percent by two indicators', () => alkaliAssayFromTwoIndicators({ ...flake, sample: { g: 1 } }), 'out-of-range', 'sample'],
    ['an unknown alkali', () => alkaliAssayFromTwoIndicators({ ...flake, alkali: 'lioh' } as never), 'bad-shape', 'alkali'],
    ['no sample', () => alkaliAssayFromBariumChloride({ ...potash, sample: { g: 0 } }), 'out-of-range', 'sample.g'],
    ['two standards', () => titrantFromStandard({ standard: { sodiumCarbonate: { g: 1 }, potassiumHydrogenPhthalate: { g: 1 } }, volume: { mL: 1 } } as never), 'bad-shape', 'standard'],
    ['no standard', () => titrantFromStandard({ standard: {}, volume: { mL: 1 } } as never), 'missing', 'standard'],
    ['no titrant used', () => titrantFromStandard({ standard: { sodiumCarbonate: { g: 1 } }, volume: { mL: 0 } }), 'out-of-range', 'volume.mL'],
    ['a titrant stronger than any', () => titrantFromStandard({ standard: { sodiumCarbonate: { g: 10 } }, volume: { mL: 1 } }), 'out-of-range', 'volume'],
    ['a titrant weaker than any', () => titrantFromStandard({ standard: { sodiumCarbonate: { mg: 1 } }, volume: { L: 1000 } }), 'out-of-range', 'volume'],
  ])('%s', (_what, call, code, path) => {
    expect(refusal(call)).toMatchObject({ code, path });
  }); // prettier-ignore
});
