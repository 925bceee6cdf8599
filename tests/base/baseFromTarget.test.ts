import fc from 'fast-check';
import {
  compositionFrom,
  fat,
  fatFromBlend,
  soapFromLye,
  type BaseFromTargetInput,
  type BasePlan,
  type BaseSupplies,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { codes, Exact, textOf } from '../laws/exact.js';
import { baseOf, clear, coconut, stearic } from './bases.js';
import { madePot, pots } from './pots.js';

const weights = ({ weigh }: BasePlan<'naoh' | 'koh'>): Record<string, string> => ({
  ...Object.fromEntries(weigh.fats.map(({ fat: one, mass }) => [one.name, mass.g.toFixed(6)])),
  ...Object.fromEntries(
    (['naoh', 'koh', 'water'] as const).flatMap((name) =>
      (weigh[name] as unknown) === undefined ? [] : [[name, weigh[name].g.toFixed(6)]],
    ),
  ),
  ...Object.fromEntries(
    weigh.additions.map((one) => {
      const name = 'solvent' in one ? one.solvent : 'salt' in one ? one.salt : one.name;
      return [name, one.mass.g.toFixed(6)];
    }),
  ),
});

describe('baseFromTarget: worked by hand', () => {
  // The mean acid of a triglyceride follows from its value: n = 257 / 56 105 = 0.004 580 697 mol of acid to a gram, glyceryl
  // 38.049 / 3 g to a mole of it; soap is heavier than its acid by Na less H, 22.990 - 1.008 = 21.982 g/mol.
  it('a coconut base of 40 % soap, with 60 g that steams off', () => {
    // x = 0.99 of 1 g is split: A = 0.99 n = 0.004 534 890 mol
    // soap      0.99 (1 - n 38.049/3) + A 21.982     = 1.032 169 942 g
    // glycerol  A 92.094/3                           = 0.139 212 051 g
    // lye       2 A 39.997 = 0.362 763 986 g, half of it water; fat left 0.01 g; 1.362 763 986 g in all
    // fats      3000 * 0.40 / 1.032 169 942          = 1162.599 250 g
    // lye       1162.599 250 * 0.362 763 986         =  421.749 138 g, of which 210.874 569 g water
    // glycerol  (450 - 1162.599 250 * 0.139 212 051) / 0.995 = (450 - 161.847 826) / 0.995 = 289.600 174 g
    // glycol    360 / 0.995 = 361.809 045 g; sorbitol 360 / 0.70 = 514.285 714 g
    // fat left  11.625 993 g; water of the base 3000 * 0.21 - 11.625 993 = 618.374 007 g
    // water     618.374 007 + 60 - 210.874 569 - 1.448 001 - 1.809 045 - 154.285 714 = 309.956 678 g
    const plan = baseOf({ ...clear, evaporated: { g: 60 } });
    expect(weights(plan)).toEqual({
      'Coconut lot': '1162.599250',
      naoh: '421.749138',
      water: '309.956678',
      glycerol: '289.600174',
      'propylene-glycol': '361.809045',
      sorbitol: '514.285714',
    });
    expect(plan.shares.water?.percent.toFixed(6)).toBe('20.612467');
    expect(plan.remainder.mass.g.toFixed(6)).toBe('11.625993');
    expect(plan.composition.charge.g.toFixed(6)).toBe('3060.000000');
    expect(plan.composition.components.glycerol.formed.likely.g.toFixed(6)).toBe('161.847826');
    expect(plan.superfat.likely.percent.toFixed(20)).toBe('1.00000000000000000000');
  });

  it('a base of 85 coconut and 15 stearic acid, which gives off water where lye takes it up', () => {
    // free acid a = 0.15 * 197 / 56 105 = 0.000 526 691 mol, esters e = 0.85 * 257 / 56 105 = 0.003 893 592 mol to a gram
    // A = 0.98 (a + e) = 0.004 331 878 mol; of the esters x = (A - a)/e = 0.977 294 575
    // soap      0.15 + x (0.85 - e 38.049/3) + A 21.982 = 1.027 662 542 g; fat left 0.85 (1 - x) = 0.019 299 611 g
    // glycerol  x e 92.094/3 = 0.116 811 621 g; lye 2 A 39.997 = 0.346 524 227 g, half water; a 18.015 = 0.009 488 339 g water
    // fats      1200 / 1.027 662 542 = 1167.698 491 g; lye 404.635 817 g, 202.317 909 g of it water; formed 11.079 519 g
    // glycerol  (360 - 136.400 754) / 0.995 = 224.722 860 g; sorbitol 300 / 0.7 = 428.571 429 g; glycol 450 g
    // water     3000 * 0.23 - 22.536 127 = 667.463 873; less 202.317 909, 11.079 519, 1.123 614, 128.571 429 = 324.371 403 g
    const plan = baseOf({
      ...clear,
      fats: [
        { fat: coconut, share: { percent: 85 } },
        { fat: stearic, share: { percent: 15 } },
      ],
      superfat: { percent: 2 },
      target: {
        ...clear.target,
        glycerol: { percent: 12 },
        propyleneGlycol: { percent: 15 },
        sorbitol: { percent: 10 },
      },
      supplies: { ...clear.supplies, propyleneGlycol: { assay: { percent: 100 } } },
    });
    expect(weights(plan)).toEqual({
      'Coconut lot': '992.543717', // 0.85 of 1167.698 491
      'Stearic lot': '175.154774',
      naoh: '404.635817',
      water: '324.371403',
      glycerol: '224.722860',
      'propylene-glycol': '450.000000',
      sorbitol: '428.571429',
    });
    expect(codes(plan.cautions)).toContain('free-fatty-acid-reacts-at-once');
  });

  it('spirit that leaves is weighed in besides, and so is its water', () => {
    // pure ethanol 3000 * 0.10 + 0.75 * 80 = 360 g, of 90 %: 400 g, 40 g of it water; water 20 g leaves
    // 50 % lye as before: fats 1162.599 250 g, 210.874 569 g of water with the lye
    // base 3000: soap 1200, ethanol 300, fat left 11.625 993, glycerol formed 161.847 826, hence water 1326.526 181
    // water to add 1326.526 181 + 20 - 210.874 569 - 40 = 1095.651 612
    const plan = baseOf({
      ...clear,
      target: { soap: { percent: 40 }, ethanol: { percent: 10 } },
      supplies: { ethanol: { assay: { percent: 90 } } },
      evaporated: { g: 80 },
      spiritShareOfLoss: { percent: 75 },
    });
    expect(weights(plan)).toEqual({
      'Coconut lot': '1162.599250',
      naoh: '421.749138',
      water: '1095.651612',
      ethanol: '400.000000',
    });
    expect(plan.remainder.mass.g.toFixed(6)).toBe('173.473819'); // 11.625 993 + 161.847 826
    expect(codes(plan.notes)).toContain('glycerol-as-formed');
    expect(codes(plan.cautions)).toContain('spirit-catches-fire');
  });

  it('of amines, what is not amine goes to other, and is not added twice', () => {
    // 150 g of triethanolamine of 85 % is 176.470 588 g, 26.470 588 g of it other; 60 g of other: 33.529 412 g of colour
    const target = {
      soap: { percent: 30 },
      triethanolamine: { percent: 5 },
      other: { percent: 2 },
      salts: { percent: '0.5' },
    };
    const triethanolamine = { assay: { percent: 85 } };
    const [other, salts] = [{ name: 'Colour' }, { salt: 'Sodium chloride' }];
    const weighed = (supplies: BaseSupplies) =>
      baseOf({ ...clear, target, supplies }).weigh.additions.map(({ mass }) => mass.g.toFixed(6));
    expect(weighed({ triethanolamine, other, salts })).toEqual(['176.470588', '33.529412', '15.000000']);
    expect(weighed({ salts, other, triethanolamine })).toEqual(['15.000000', '33.529412', '176.470588']);
  });

  it('amines that make up the rest, with what is in them besides', () => {
    // fats 3000 * 0.30 / 1.032 169 942 = 871.949 438 g: 8.719 494 of fat left, 121.385 870 of glycerol formed
    // 3000 - 900 - 1500 - 8.719 494 - 121.385 870 = 469.894 636 g of technical amine, 85 % of it 399.410 440 g
    const { weigh, shares, remainder } = baseOf({
      ...clear,
      target: { soap: { percent: 30 }, water: { percent: 50 } },
      supplies: { triethanolamine: { assay: { percent: 85 } } },
    });
    expect(weigh.additions[0]?.mass.g.toFixed(6)).toBe('469.894636');
    expect(shares.triethanolamine?.percent.toFixed(6)).toBe('13.313681'); // 399.410 440 / 30
    expect(remainder.mass.g.toFixed(6)).toBe('200.589560'); // 8.719 494 + 121.385 870 + 70.484 195
  });

  it('where all shares are given, water closes what is missing in the fifth decimal', () => {
    const all = baseOf({ ...clear, target: { ...clear.target, water: { percent: '20.6125' } } });
    expect(all.shares.water?.percent.toFixed(6)).toBe('20.612467');
    expect(all.given.target.water?.percent.toString()).toBe('20.6125');
  });
});

describe('baseFromTarget: laws', () => {
  it('finds again what was weighed into a pot from its composition, whichever share is left out', () => {
    fc.assert(
      fc.property(pots, fc.integer({ min: 0, max: 9 }), (pot, at) => {
        const { input, composition, weighed } = madePot(pot, at);
        const batch = new Exact(composition.mass.likely.g.toString());
        const plan = baseOf(input);
        const near = (a: { toString: () => string }, b: { toString: () => string }, within: string): void => {
          expect(new Exact(a.toString()).minus(b.toString()).abs().lte(batch.times(within))).toBe(true);
        };
        for (const [name, { mass }] of Object.entries(composition.components)) {
          const found = plan.composition.components[name as keyof typeof composition.components];
          near(found.mass.likely.g, mass.likely.g, '1e-25');
        }
        for (const [entry, grams] of weighed.fats.entries())
          near(plan.weigh.fats[entry]?.mass.g ?? 'none', grams, '1e-25');
        for (const [entry, grams] of weighed.additions.entries()) {
          // an assay of a tenth makes ten times the rounding
          near(plan.weigh.additions[entry]?.mass.g ?? 'none', grams, '1e-24');
        }
        for (const { alkali, mass } of weighed.lye) near(plan.weigh[alkali].g, mass.g, '1e-25');
        near(plan.weigh.water.g, weighed.water, '1e-24');
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('compositionFrom of the answer is the target, and the shares with the remainder are 100', () => {
    fc.assert(
      fc.property(pots, fc.integer({ min: 0, max: 9 }), (pot, at) => {
        const { input } = madePot(pot, at);
        const plan = baseOf(input);
        const lye = (['naoh', 'koh'] as const).flatMap((alkali) => {
          const source = plan.given.alkali[alkali];
          return source === undefined ? [] : [{ alkali, mass: plan.weigh[alkali], ...source }];
        });
        const soap = soapFromLye({ fats: plan.weigh.fats, lye, water: plan.weigh.water });
        const { evaporated, spiritShareOfLoss } = plan.given;
        const again = compositionFrom({
          soap,
          additions: plan.weigh.additions,
          ...(evaporated === undefined ? {} : { evaporated }),
          ...(spiritShareOfLoss === undefined ? {} : { spiritShareOfLoss }),
        });
        expect(textOf(again.components)).toBe(textOf(plan.composition.components));
        const { soapSodium, soapPotassium, ...others } = again.components;
        const shares = Object.entries(plan.shares);
        for (const [name, share] of shares) {
          const got =
            name === 'soap'
              ? soapSodium.share.likely.percent.plus(soapPotassium.share.likely.percent)
              : others[name as keyof typeof others].share.likely.percent;
          expect(got.minus(share.percent).abs().lte('1e-23')).toBe(true);
        }
        const sum = shares.reduce((total, [, { percent }]) => total.plus(percent), plan.remainder.share.percent);
        expect(sum.minus(100).abs().lte('1e-28')).toBe(true);
        expect(again.mass.likely.g.minus(plan.given.batchMass.g).abs().lte(plan.given.batchMass.g.times('1e-25'))).toBe(
          true,
        );
      }),
      { seed: 20261126, numRuns: 40 },
    );
  });

  it('grows with the batch', () => {
    const [one, three] = [baseOf({ ...clear, batchMass: { kg: 1 } }), baseOf(clear)];
    expect(one.weigh.water.g.times(3).minus(three.weigh.water.g).abs().lte('1e-28')).toBe(true);
    expect(one.weigh.naoh.g.times(3).minus(three.weigh.naoh.g).abs().lte('1e-28')).toBe(true);
    expect(
      three.shares.water?.percent
        .minus(one.shares.water?.percent ?? 0)
        .abs()
        .lte('1e-28'),
    ).toBe(true);
  });

  it.each(['1', '1e9'])('holds for %s g, with a trace of something', (g) => {
    const target = {
      ...clear.target,
      sorbitol: { percent: '1e-26' },
      water: { percent: 30 },
      glycerol: { percent: 10 },
    };
    const { propyleneGlycol, ...open } = target;
    expect(propyleneGlycol).toBeDefined();
    const { composition, shares } = baseOf({ ...clear, batchMass: { g }, target: open });
    const { water, glycerol } = composition.components;
    expect(water.share.likely.percent.minus(30).abs().lte('1e-22')).toBe(true);
    expect(glycerol.share.likely.percent.minus(10).abs().lte('1e-22')).toBe(true);
    expect(shares.sorbitol?.percent.toString()).toBe('1e-26');
  });

  it('a blend counts by its parts, and fats in any order', () => {
    const parts = [
      { fat: coconut, share: { percent: 70 } },
      { fat: fat('castor-oil'), share: { percent: 30 } },
    ];
    const stock = fatFromBlend({
      name: 'Stock',
      parts: parts.map(({ fat: one, share }) => ({ fat: one, mass: { g: share.percent } })),
    });
    const apart = baseOf({ ...clear, fats: parts });
    const turned = baseOf({ ...clear, fats: [...parts].reverse() });
    const blended = baseOf({ ...clear, fats: [{ fat: stock, share: { percent: 100 } }] });
    for (const other of [turned, blended]) {
      expect(other.weigh.naoh.g.minus(apart.weigh.naoh.g).abs().lte('1e-28')).toBe(true);
      expect(other.weigh.water.g.minus(apart.weigh.water.g).abs().lte('1e-28')).toBe(true);
    }
  });

  it('shares worked out in floating point close', () => {
    const third = { percent: 100 / 3 };
    const thirds = [coconut, stearic, coconut].map((one) => ({ fat: one, share: third }));
    expect(Number(new Exact(3).times(third.percent).minus(100))).not.toBe(0);
    const { mass } = baseOf({ ...clear, fats: thirds }).composition;
    expect(mass.likely.g.toFixed(20)).toBe('3000.00000000000000000000');
  });

  it('ranges move the bounds and not the weights', () => {
    const ranged: BaseFromTargetInput = {
      ...clear,
      alkali: { naoh: { solution: { hydroxide: { low: { percent: 49 }, high: { percent: 51 } } } } },
      supplies: { ...clear.supplies, sorbitol: { assay: { low: { percent: 69 }, high: { percent: 71 } } } },
    };
    const { weigh, composition, superfat } = baseOf(ranged);
    expect(textOf(weigh.water)).toBe(textOf(baseOf(clear).weigh.water));
    expect(composition.components.sorbitol.share.low.percent.toFixed(3)).toBe('11.829'); // 12 * 69 / 70
    expect(superfat.low.percent.lt(0)).toBe(true);
    expect(codes(baseOf(ranged).cautions)).toContain('free-caustic-possible');
  });

  it('the working has the figures that are weighed', () => {
    const plan = baseOf({ ...clear, evaporated: { g: 60 } });
    const steps = new Map(workingOf(plan).map(({ figure, value }) => [figure, value.toString()]));
    expect(steps.get('water to add')).toBe(plan.weigh.water.g.toString());
    expect(steps.get('naoh to weigh')).toBe(plan.weigh.naoh.g.toString());
    expect(steps.get('Coconut lot to weigh')).toBe(plan.weigh.fats[0]?.mass.g.toString());
    expect(steps.get('water, which makes up the rest')).toBe(plan.shares.water?.percent.toString());
  });
});

describe('baseFromTarget: notes and cautions', () => {
  it('tell what was assumed, and warn of lye in portions, hot soap and water into strong lye', () => {
    const { notes, cautions } = baseOf(clear);
    expect(codes(notes)).toEqual([
      'no-uncertainty-stated',
      'acid-value-taken-as-zero',
      'strength-taken-as-exact',
      'rest-counts-as-water',
      'solved-for-likely-lots',
      'water-to-add',
      'remainder-follows-the-fats',
      'weights-are-unrounded',
    ]);
    expect(codes(cautions)).toEqual([
      'caustic-burns',
      'diluting-warms',
      'crystallised-stock',
      'hot-soap-scalds',
      'lye-into-hot-soap',
      'none-left-on-paper',
      'no-aluminium-zinc-tin',
      'children-and-animals',
      'sums-not-a-certificate',
    ]);
  });

  it('say nothing of a remainder that there is none of', () => {
    const { notes, remainder } = baseOf({ ...clear, superfat: { percent: 0 } });
    expect(remainder.mass.g.isZero()).toBe(true);
    expect(codes(notes)).toEqual(codes(baseOf(clear).notes).filter((code) => code !== 'remainder-follows-the-fats'));
  });

  it('say nothing of glycerol where acids set none free', () => {
    const acids = baseOf({
      ...clear,
      fats: [{ fat: stearic, share: { percent: 100 } }],
      target: { soap: { percent: 40 } },
      supplies: {},
    });
    expect(codes(acids.notes)).not.toContain('glycerol-as-formed');
  });

  it('say where a solid does not dissolve in all the water there is', () => {
    const dry = (percent: number): BaseFromTargetInput => ({
      ...clear,
      alkali: { naoh: { solid: { hydroxide: { percent: 99 } } } },
      target: {
        soap: { percent: 40 },
        propyleneGlycol: { percent: 10 },
        sorbitol: { percent: 10 },
        water: { percent },
      },
    });
    expect(codes(baseOf(dry(12)).cautions)).toContain('solid-into-cold-water');
    expect(codes(baseOf(dry(12)).cautions)).not.toContain('stronger-than-dissolves');
    expect(codes(baseOf(dry(8)).cautions)).toContain('stronger-than-dissolves');
  });
});
