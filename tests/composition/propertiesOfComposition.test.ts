/** What is said of a composition: its ratios, its fatty matter, its volume. */
import fc from 'fast-check';
import {
  batchVolumeOf,
  compositionFrom,
  fat,
  fatFromCertificate,
  ratiosOf,
  soapFromLye,
  totalFattyMatterOf,
  type AdditionInput,
  type Composition,
  type MadeComposition,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

// A mole of tristearin and soda for it: soap 919.398, glycerol 92.094; 200 g of water.
const soap = soapFromLye({
  fats: [
    {
      fat: fatFromCertificate({
        name: 'Tristearin',
        kind: 'triglyceride',
        saponificationValue: { saponificationEquivalent: '297.167' },
      }),
      mass: { g: '891.501' },
    },
  ],
  lye: [{ alkali: 'naoh', mass: { g: '119.991' }, solid: { hydroxide: { percent: 100 } } }],
  water: { g: 200 },
});
const compose = (...additions: readonly AdditionInput[]): Composition => compositionFrom({ soap, additions });
const full = compose(
  { solvent: 'glycerol', mass: { g: 100 }, assay: { percent: 100 } },
  { solvent: 'propylene-glycol', mass: { g: 50 }, assay: { percent: 100 } },
  { solvent: 'sucrose', mass: { g: 80 }, assay: { percent: 100 } },
  { solvent: 'ethanol', mass: { g: 60 }, assay: { percent: 100 } },
  { solvent: 'triethanolamine', mass: { g: 10 }, assay: { percent: 100 } },
);
const lean = compositionFrom({
  soap: soapFromLye({
    fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
    lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
  }),
  additions: [{ solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } }],
  evaporated: { g: '124.25' },
});

describe('ratiosOf: worked by hand', () => {
  it('polyol, sugar, spirit and water to soap', () => {
    const ratios = ratiosOf(full);
    const shown = [
      ratios.polyolPerSoap,
      ratios.spiritPerSoap,
      ratios.clearingAgentsPerSoap,
      ratios.waterPerSoap,
      ratios.polyolPerWater,
    ].map((one) => one?.likely.partsPerPart.toFixed(6));
    // 242.094, 60, 382.094 and 200 of 919.398; 242.094 of 200
    expect(shown).toEqual(['0.263318', '0.065260', '0.415592', '0.217534', '1.210470']);
    // of 1511.492 g
    const { soap: anhydrous, polyol, sugar, spirit, clearingAgents, water } = ratios.shares;
    expect([anhydrous, polyol, sugar, spirit, clearingAgents, water].map(({ likely }) => likely.percent.toFixed(4))).toEqual([
      '60.8272',
      '16.0169',
      '5.2928',
      '3.9696',
      '25.2793',
      '13.2320',
    ]);
  }); // prettier-ignore

  it('leaves out what is told by water where there may be none', () => {
    // 123 g of water in the lye and 1.25 g in the glycerol, none formed: all gone
    expect(ratiosOf(lean).waterPerSoap.likely.partsPerPart.toString()).toBe('0');
    expect(ratiosOf(lean)).not.toHaveProperty('polyolPerWater');
  });
});

describe('totalFattyMatterOf: worked by hand', () => {
  it('is the acid of the soap', () => {
    const { totalFattyMatter, mass } = totalFattyMatterOf(full);
    expect(mass.likely.g.toFixed(6)).toBe('853.452000'); // 3 · 284.484
    expect(totalFattyMatter.likely.percent.toFixed(4)).toBe('56.4642');
  });

  it('with what is left of fat, of acid, and unsaponifiable', () => {
    const certificate = {
      name: 'A lot',
      kind: 'triglyceride',
      saponificationValue: { mgKohPerG: 190 },
      unsaponifiable: { percent: 2 },
    } as const;
    const half = soapFromLye({
      fats: [{ fat: fatFromCertificate(certificate), mass: { g: 1000 } }],
      lye: [{ alkali: 'naoh', mass: { g: '67.7252651' }, solid: { hydroxide: { percent: 100 } } }], // half of 1000 · 190 / 56105 mol
    });
    const { mass } = totalFattyMatterOf(compositionFrom({ soap: half, additions: [] }));
    // of half the fat the glyceryl has left: 38.049 · 0.5 · 190 / 56.105 / 3
    expect(mass.likely.g.toFixed(3)).toBe('978.524');
  });
});

describe('batchVolumeOf: worked by hand', () => {
  it('adds up the volumes of what is there', () => {
    const { volume, density, notes } = batchVolumeOf({ composition: full, temperature: { celsius: 20 } });
    // 919.398/1.05 + 192.094/1.2611 + 50/1.0361 + 80/1.5805 + 60/0.7893 + 10/1.1242 + 200/0.998204
    expect(volume.likely.mL.toFixed(2)).toBe('1412.09');
    expect(density.likely.gPerML.toFixed(4)).toBe('1.0704');
    expect(notes.map(({ code }) => code)).toEqual(['density-of-soap-is-a-convention', 'ideal-mixing', 'density-of-another-temperature']);
    // soap of 1.10 g/mL, and the rest by 3.7 % less; soap of 1.00
    expect(volume.low.mL.toFixed(2)).toBe('1352.44');
    expect(volume.high.mL.toFixed(2)).toBe('1455.87');
    expect(density.low.gPerML.times(volume.high.mL).toFixed(6)).toBe('1511.492000');
    expect(density.high.gPerML.times(volume.low.mL).toFixed(6)).toBe('1511.492000');
  }); // prettier-ignore

  it('says nothing of other temperatures where all are on file', () => {
    const { notes } = batchVolumeOf({ composition: lean, temperature: { celsius: 62 } });
    expect(notes.map(({ code }) => code)).toEqual(['density-of-soap-is-a-convention', 'ideal-mixing']);
  });

  it.each([
    ['ethanol', 77, false],
    ['ethanol', 78, true],
    ['2-propanol', 80, false],
    ['glycerol', 80, false],
  ] as const)('%s at %s °C boils: %s', (solvent, celsius, boils) => {
    const composition = compose({ solvent, mass: { g: 60 }, assay: { percent: 96 } });
    const { notes } = batchVolumeOf({ composition, temperature: { celsius } });
    expect(notes.some(({ code }) => code === 'spirit-boils')).toBe(boils);
  });

  it('of a base with spirit, by its name as well, says that it burns', () => {
    const codes = (...additions: readonly AdditionInput[]): readonly string[] =>
      batchVolumeOf({ composition: compose(...additions), temperature: { celsius: 40 } }).cautions.map(({ code }) => code);
    const mass = { g: 60 };
    expect(codes({ solvent: 'ethanol', mass, assay: { percent: 96 } })).toContain('spirit-catches-fire');
    expect(codes({ name: 'methylated spirit', mass })).toContain('spirit-catches-fire');
    expect(codes({ name: 'clay', mass })).not.toContain('spirit-catches-fire');
  }); // prettier-ignore

  it('is greater when warm, and twice as great for twice as much', () => {
    fc.assert(
      fc.property(fc.integer({ min: 15, max: 79 }), (celsius) => {
        const [here, warmer] = [celsius, celsius + 1].map(
          (one) => batchVolumeOf({ composition: lean, temperature: { celsius: one } }).volume,
        );
        expect(warmer?.likely.mL.gt(here?.likely.mL ?? Number.NaN)).toBe(true);
      }),
      { numRuns: 20 },
    );
  });
});

describe('what is said of a composition', () => {
  const functions = [
    ['ratiosOf', (composition: MadeComposition) => ratiosOf(composition)],
    ['totalFattyMatterOf', (composition: MadeComposition) => totalFattyMatterOf(composition)],
    ['batchVolumeOf', (composition: MadeComposition) => batchVolumeOf({ composition, temperature: { celsius: 40 } })],
  ] as const;

  it.each(functions)('%s: is the same of one read back from JSON', (_name, of) => {
    for (const one of [full, lean]) expect(textOf(of(throughJson(one) as Composition))).toBe(textOf(of(one)));
  });

  it.each(functions)('%s: refuses what is no composition', (_name, of) => {
    expect(refusal(() => of(undefined as never))).toMatchObject({ code: 'missing', path: 'composition' });
    expect(refusal(() => of(soap as never))).toMatchObject({ code: 'bad-shape', path: 'composition.by' });
    expect(refusal(() => of({ by: 'compositionFrom', given: undefined }))).toMatchObject({
      code: 'missing',
      path: 'composition.given',
    });
    const broken = { by: 'compositionFrom', given: { ...full.given, additions: [{ name: 'x', mass: { g: -1 } }] } } as const;
    expect(refusal(() => of(broken))).toMatchObject({
      code: 'out-of-range',
      path: 'composition.given.additions[0].mass.g',
    });
  }); // prettier-ignore

  it.each([14, 81])('batchVolumeOf: refuses %s °C', (celsius) => {
    const call = (): unknown => batchVolumeOf({ composition: full, temperature: { celsius } });
    expect(refusal(call)).toMatchObject({ code: 'outside-table', path: 'temperature' });
  });
});
