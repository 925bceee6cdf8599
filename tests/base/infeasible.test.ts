import fc from 'fast-check';
import { type BaseComponent, type BaseFromTargetInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { baseOf, clear, coconut, refused } from './bases.js';

const target = (change: BaseFromTargetInput['target']): BaseFromTargetInput => ({
  ...clear,
  target: { ...clear.target, ...change },
});
const percent = (figure: number | string): { readonly percent: number | string } => ({ percent: figure });

/** A figure that a refusal names, as an input with that figure in the place of the one that was refused. */
interface Named {
  readonly at: BaseFromTargetInput;
  readonly past: BaseFromTargetInput;
}

const SHARE = /(\w+) of at (least|most) ([\d.]+) percent with/;
const LOSS = /at least ([\d.]+) g evaporated/;

/** The figures that a refusal names, each with the one just past it. */
function named(input: BaseFromTargetInput, expected: string): readonly Named[] {
  const found: Named[] = [];
  const share = SHARE.exec(expected);
  if (share !== null) {
    const [, name = '', side, text = ''] = share;
    const past = Number(text) + (side === 'least' ? -0.0002 : 0.0002);
    const withShare = (figure: string | number): BaseFromTargetInput => ({
      ...input,
      target: { ...input.target, [name as BaseComponent]: percent(figure) },
    });
    found.push({ at: withShare(text), past: withShare(past.toFixed(4)) });
  }
  const loss = LOSS.exec(expected);
  if (loss !== null) {
    const withLoss = (g: string | number): BaseFromTargetInput => ({ ...input, evaporated: { g } });
    found.push({ at: withLoss(loss[1] ?? ''), past: withLoss((Number(loss[1]) - 0.0002).toFixed(4)) });
  }
  return found;
}

/** Refused as infeasible with so many figures, each of them feasible, and just past it not. */
function expectNearest(
  input: BaseFromTargetInput,
  figures: number,
): { readonly path: string; readonly message: string } {
  const refusal = refused(input);
  expect(refusal?.code).toBe('infeasible');
  const all = named(input, refusal?.expected ?? '');
  expect(all).toHaveLength(figures);
  for (const { at, past } of all) {
    expect(refused(at)?.message).toBeUndefined();
    expect(refused(past)?.code).toBe('infeasible');
  }
  return { path: refusal?.path ?? '', message: refusal?.message ?? '' };
}

describe('baseFromTarget: infeasible targets name the bound and the nearest feasible figure', () => {
  it('water that the lye and the solutions bring already', () => {
    // 55 % soap: fats 1650 / 1.032 169 942 = 1598.573 969 g, 289.952 5 g of water with the lye: 9.67 % of the base;
    // sorbitol 360 / 0.7 brings 154.285 714, the glycol 1.809 045, glycerol (450 - 222.540 762) / 0.995 * 0.005 = 1.143 g
    const { path, message } = expectNearest(target({ soap: percent(55) }), 2);
    expect(path).toBe('target.water');
    expect(message).toContain('the lye alone brings 9.67 percent of the base, fats and reaction 0, the additions 5.24');
  });

  it('water that is asked for, and another share left out', () => {
    const { sorbitol, ...others } = clear.target;
    expect(sorbitol).toBeDefined();
    const { path, message } = expectNearest({ ...clear, target: { ...others, water: percent(10) } }, 2);
    expect(path).toBe('target.water');
    expect(message).toContain('with sorbitol making up the rest');
    const { soap, ...without } = clear.target;
    expect(soap).toBeDefined();
    expect(expectNearest({ ...clear, target: { ...without, water: percent(7) } }, 2).message).toContain(
      'with soap making',
    );
  });

  it('water where some evaporates already, and where solid alkali must be dissolved', () => {
    const { message } = expectNearest({ ...target({ soap: percent(58) }), evaporated: { g: 30 } }, 2);
    expect(message).toContain(', 1 evaporates');
    const solid: BaseFromTargetInput = {
      ...clear,
      alkali: { koh: { solid: { hydroxide: { percent: 90 } } } },
      target: {
        soap: percent(40),
        sorbitol: percent(30),
        glycerol: percent(15),
        propyleneGlycol: percent(0),
        water: percent('11.99'),
      },
    };
    const { glycerol, ...open } = solid.target;
    expect(glycerol).toBeDefined();
    expect(expectNearest({ ...solid, target: open }, 2).message).toContain('solid alkali must be dissolved');
  });

  it('water for one solid alkali beside a solution', () => {
    const naoh = { solution: { hydroxide: percent(50) } };
    const both = { naoh, koh: { solid: { hydroxide: percent(90) } }, kohShare: percent(10) };
    const { message } = expectNearest({ ...target({ soap: percent(55) }), alkali: both }, 2);
    expect(message).toContain('solid alkali must be dissolved');
  });

  it('a solid in no water at all', () => {
    const solid = (water: string): BaseFromTargetInput => ({
      ...clear,
      alkali: { naoh: { solid: { hydroxide: percent(100) } } },
      target: { soap: percent(40), water: percent(water) },
      supplies: { propyleneGlycol: { assay: percent(100) } },
    });
    const refusal = refused(solid('0'));
    expect([refusal?.code, refusal?.path]).toEqual(['infeasible', 'target.water']);
    expect(refusal?.expected).toMatch(/^water of at least 0.0001 percent with propyleneGlycol making up the rest: /);
    expect(refused(solid('0.0001'))).toBeUndefined();
  });

  it('glycerol that the fats set free', () => {
    // 3000 * 0.40 / 1.032 169 942 * 0.139 212 051 = 161.847 826 g: 5.394 928 %
    const { path, message } = expectNearest(target({ glycerol: percent(5) }), 1);
    expect(path).toBe('target.glycerol');
    expect(message).toContain('glycerol of at least 5.395 percent with water making up the rest');
    expect(message).toContain('bring 5.3949 percent of the base, received 5 percent');
  });

  it('glycerol that the fats set free before the water, which follows from it', () => {
    // 5.394 928 % · 60/40 = 8.092 % of glycerol forms, and the water of the lye has no room either
    const both = refused(target({ soap: percent(60), glycerol: percent(5) }));
    expect([both?.code, both?.path]).toEqual(['infeasible', 'target.glycerol']);
    expect(both?.expected).toContain('fats, lye and other additions bring 8.0924 percent of the base');
  });

  it('shares that leave no room before all that must be weighed', () => {
    const both = refused(target({ soap: percent(75), glycerol: percent(5) }));
    expect([both?.code, both?.path]).toEqual(['infeasible', 'target']);
    expect(both?.received).toContain('104 percent');
  });

  it('glycerol that is left out, and is less than what forms', () => {
    const { glycerol, ...others } = clear.target;
    expect(glycerol).toBeDefined();
    const { path } = expectNearest({ ...clear, target: { ...others, water: percent(34) } }, 1);
    expect(path).toBe('target.glycerol');
  });

  it('other that amines bring already', () => {
    const { path, message } = expectNearest(
      {
        ...clear,
        target: { soap: percent(30), triethanolamine: percent(10), other: percent(1) },
        supplies: { triethanolamine: { assay: percent(85) }, other: { name: 'Colour' } },
      },
      1,
    );
    expect(path).toBe('target.other');
    expect(message).toContain('bring 1.7647 percent of the base'); // 10 / 0.85 - 10
  });

  it('shares above 100', () => {
    const { path, message } = expectNearest(target({ soap: percent(75) }), 1);
    expect(path).toBe('target');
    expect(message).toContain('received 114 percent, and 0.7266 that it does not name, without any water'); // 0.01 * 75 / 1.0322
    const { soap, ...without } = clear.target;
    expect(soap).toBeDefined();
    expect(expectNearest({ ...clear, target: { ...without, water: percent(70) } }, 1).path).toBe('target');
  });

  it('shares above 100 without any soap: there is no nearest figure', () => {
    const input = target({ glycerol: percent(50), sorbitol: percent(60) });
    const refusal = refused(input);
    expect([refusal?.code, refusal?.path]).toEqual(['infeasible', 'target']);
    expect(refusal?.expected).toMatch(/^another target: /);
  });

  it('all shares given that do not close: the water that closes them', () => {
    const refusal = refused(target({ water: percent(20) }));
    expect([refusal?.code, refusal?.path]).toEqual(['infeasible', 'target']);
    expect(refusal?.expected).toBe(
      'shares that add up to 100 percent with the 0.3875 percent that it does not name: water of 20.6125 percent, or one component left out',
    ); // 0.01 * 40 / 1.032 169 942
    expect(refusal?.received).toBe('99.3875 percent, 0.6125 percent too little');
    expect(refused(target({ water: percent(21) }))?.received).toBe('100.3875 percent, 0.3875 percent too much');
    expect(refused(target({ water: percent('20.6125') }))).toBeUndefined();
    expect(refused(target({ water: percent('20.6124') }))?.code).toBe('infeasible');
    expect(refused(target({ water: percent('20.6126') }))?.code).toBe('infeasible');
  });

  it('spirit that evaporates to the last trace, or where there is none', () => {
    const spirited: BaseFromTargetInput = {
      ...clear,
      target: { soap: percent(40), ethanol: percent(0) },
      supplies: { ethanol: { assay: percent(96) } },
      evaporated: { g: 50 },
      spiritShareOfLoss: percent(50),
    };
    expect(refused(spirited)).toMatchObject({ code: 'infeasible', path: 'target.ethanol' });
    expect(refused({ ...spirited, target: { ...spirited.target, ethanol: percent('0.0001') } })).toBeUndefined();
    expect(refused({ ...clear, evaporated: { g: 50 }, spiritShareOfLoss: percent(10) })).toMatchObject({
      code: 'infeasible',
      path: 'spiritShareOfLoss',
      expected: '0 percent, where there is no spirit',
      received: '10 percent',
    });
    expect(refused({ ...clear, evaporated: { g: 50 }, spiritShareOfLoss: percent(0) })).toBeUndefined();
  });

  it('a loss that is all spirit does not take water away', () => {
    const input: BaseFromTargetInput = {
      ...clear,
      target: { ...clear.target, soap: percent(50), ethanol: percent(8) },
      supplies: { ...clear.supplies, ethanol: { assay: percent(96) } },
      evaporated: { g: 50 },
      spiritShareOfLoss: percent(100),
    };
    expectNearest(input, 1);
    // and of a loss that has the strength of the spirit, each gram brings as much water as it takes
    expectNearest({ ...input, spiritShareOfLoss: percent(96) }, 1);
  });

  it('water that a thin solution brings: no soap and no loss of this world makes room for it', () => {
    const refusal = refused({
      ...clear,
      target: { soap: percent(40), sorbitol: percent(30) },
      supplies: { sorbitol: { assay: percent('0.1') } },
    });
    expect([refusal?.code, refusal?.path]).toEqual(['infeasible', 'target.water']);
    expect(refusal?.expected).toMatch(/^another target: .*, the additions 29970$/); // 30 / 0.001 - 30
  });

  it('law: whatever is asked is answered, or refused with figures that are feasible and, just past, are not', () => {
    let [answered, figures] = [0, 0];
    const share = (max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max });
    const asked = fc.record({
      soap: fc.integer({ min: 5, max: 75 }),
      glycerol: share(30),
      propyleneGlycol: share(25),
      sorbitol: share(30),
      water: share(40),
    });
    fc.assert(
      fc.property(asked, fc.integer({ min: 0, max: 4 }), share(200), fc.boolean(), (shares, without, g, isSolid) => {
        const names = Object.keys(shares) as (keyof typeof shares)[];
        const kept = names.filter((_, at) => at !== without);
        const input: BaseFromTargetInput = {
          ...clear,
          alkali: isSolid ? { naoh: { solid: { hydroxide: { percent: 98 } } } } : clear.alkali,
          target: Object.fromEntries(kept.map((name) => [name, percent(shares[name])])),
          evaporated: { g },
        };
        const refusal = refused(input);
        if (refusal === undefined) answered += 1;
        else expect(refusal.code).toBe('infeasible');
        for (const { at, past } of named(input, refusal?.expected ?? '')) {
          figures += 1;
          expect(refused(at)?.message).toBeUndefined();
          expect(refused(past)?.code).toBe('infeasible');
        }
      }),
      { seed: 20261127, numRuns: 200 },
    );
    // the law is about both
    expect(answered).toBeGreaterThan(20);
    expect(figures).toBeGreaterThan(20);
  });
});

describe('baseFromTarget: refusals', () => {
  const change = (more: object): BaseFromTargetInput => ({ ...clear, ...more });
  it.each<[string, BaseFromTargetInput, string, string, string?]>([
    ['a component without a supply', target({ sucrose: percent(5) }), 'missing', 'supplies.sucrose', 'what sucrose is weighed from'],
    ['glycerol without a supply', change({ target: { soap: percent(40), glycerol: percent(10) }, supplies: {} }), 'missing', 'supplies.glycerol'],
    ['two shares left out', change({ target: { soap: percent(40), glycerol: percent(15), sorbitol: percent(10) } }), 'missing', 'target', 'propyleneGlycol, water'],
    ['no supplies', change({ supplies: undefined }), 'missing', 'supplies'],
    ['a supply without an assay', change({ supplies: { ...clear.supplies, sorbitol: {} } }), 'missing', 'supplies.sorbitol.assay'],
    ['a supply of no salt', change({ supplies: { ...clear.supplies, salts: {} } }), 'missing', 'supplies.salts'],
    ['a salt with an assay', change({ supplies: { ...clear.supplies, salts: { salt: 'Salt', assay: percent(99) } } }), 'unknown-key', 'supplies.salts.assay'],
    ['a supply of water', change({ supplies: { ...clear.supplies, water: { assay: percent(100) } } }), 'unknown-key', 'supplies.water'],
    ['percent by volume of glycerol', change({ supplies: { ...clear.supplies, glycerol: { assay: { percentByVolume: 99 } } } }), 'unknown-unit', 'supplies.glycerol.assay.percentByVolume'],
    ['a component by the name of the solvent', change({ target: { ...clear.target, 'propylene-glycol': percent(1) } }), 'unknown-key', 'target.propylene-glycol', 'did you mean "propyleneGlycol"?'],
    ['unsaponifiable matter, which follows from the fats', change({ target: { ...clear.target, unsaponifiable: percent(1) } }), 'unknown-key', 'target.unsaponifiable'],
    ['no soap', target({ soap: percent(0) }), 'out-of-range', 'target.soap.percent', '0.01 to 100'],
    ['a negative share', target({ sorbitol: percent(-1) }), 'out-of-range', 'target.sorbitol.percent'],
    ['fats that do not add up', change({ fats: [{ fat: coconut, share: percent(99) }] }), 'out-of-range', 'fats', 'shares that add up to 100 percent, received 99 percent'],
    ['fats by mass', change({ fats: [{ fat: coconut, mass: { g: 99 } }] }), 'unknown-key', 'fats[0].mass'],
    ['no fats', change({ fats: [] }), 'bad-shape', 'fats'],
    ['all of the fat left', change({ superfat: percent(100) }), 'out-of-range', 'superfat', 'less than 100'],
    ['no alkali', change({ alkali: {} }), 'missing', 'alkali'],
    ['an alkali without an assay', change({ alkali: { naoh: { solid: {} } } }), 'missing', 'alkali.naoh.solid.totalAlkali'],
    ['a batch of nothing', change({ batchMass: { g: 0 } }), 'out-of-range', 'batchMass.g', '1 to 1e9'],
    ['a loss beyond all batches', change({ evaporated: { kg: 301 } }), 'out-of-range', 'evaporated', 'at most a hundred times batchMass'],
    ['a share of no loss', change({ spiritShareOfLoss: percent(0) }), 'missing', 'evaporated'],
    ['a loss of spirit not stated', change({ target: { soap: percent(40), ethanol: percent(10) }, supplies: { ethanol: { assay: { percentByVolume: 96 } } }, evaporated: { g: 20 } }), 'missing', 'spiritShareOfLoss'],
    ['a pot mass', change({ potMass: { g: 3000 } }), 'unknown-key', 'input.potMass'],
  ])('%s', (_name, input, code, path, text = '') => {
    expect(refused(input)).toMatchObject({ code, path });
    expect(refused(input)?.message).toContain(text);
  }); // prettier-ignore

  it('nothing of the input is changed, and spirit without a loss needs no split', () => {
    const before = JSON.stringify(clear);
    const { shares } = baseOf(clear);
    expect(JSON.stringify(clear)).toBe(before);
    expect(shares.soap?.percent.toFixed(20)).toBe('40.00000000000000000000');
    expect(refused({ ...clear, supplies: { ...clear.supplies, sucrose: undefined } } as never)).toBeUndefined();
    expect(refused({ ...clear, target: { soap: percent(40), ethanol: percent(10) }, supplies: { ethanol: { assay: { percentByVolume: 96 } } } })).toBeUndefined();
  }); // prettier-ignore
});
