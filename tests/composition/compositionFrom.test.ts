import fc from 'fast-check';
import {
  batchVolumeOf,
  compositionFrom,
  fat,
  fatFromCertificate,
  soapFromLye,
  type AdditionInput,
  type Composition,
  type CompositionFromInput,
  type MadeSoap,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { codes, Exact, textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

// A mole of tristearin, 891.501 g, and soda for it: 3 C18H35NaO2 of 306.466, C3H8O3 92.094, nothing else but water.
const tristearin = fatFromCertificate({
  name: 'Tristearin',
  kind: 'triglyceride',
  saponificationValue: { saponificationEquivalent: '297.167' },
});
const soapOf = (lye: string, water: number): MadeSoap =>
  soapFromLye({
    fats: [{ fat: tristearin, mass: { g: '891.501' } }],
    lye: [{ alkali: 'naoh', mass: { g: lye }, solid: { hydroxide: { percent: 100 } } }],
    water: { g: water },
  });
const soap = soapOf('119.991', 200);
const compose = (additions: readonly AdditionInput[], more: Partial<CompositionFromInput> = {}): Composition =>
  compositionFrom({ soap, additions, ...more });

/** The likely grams of every component that is there at all. */
const grams = ({ components }: Composition, end: 'low' | 'likely' | 'high' = 'likely'): Record<string, string> =>
  Object.fromEntries(
    Object.entries(components)
      .map(([name, { mass }]) => [name, mass[end].g.toFixed(6)] as const)
      .filter(([, g]) => !/^-?0\.0+$/.test(g)),
  );

describe('compositionFrom: worked by hand', () => {
  it('adds up what the reaction makes and what is weighed in, each with its own water', () => {
    const pot = compose([
      { solvent: 'glycerol', mass: { g: 100 }, assay: { percent: '99.5' } },
      { solvent: 'sorbitol', mass: { g: 200 }, assay: { percent: 70 } },
      { solvent: '1-3-butanediol', mass: { g: 10 }, assay: { percent: 100 } },
      { solvent: 'peg-400', mass: { g: 20 }, assay: { percent: 99 } },
      { solvent: '2-propanol', mass: { g: 30 }, assay: { percent: 90 } },
      { solvent: 'water', mass: { g: 5 } },
      { salt: 'Sodium chloride', mass: { g: 4 } },
      { name: 'Colour', mass: { g: 2 } },
    ]);
    expect(grams(pot)).toEqual({
      soapSodium: '919.398000', // 3 · 306.466
      glycerol: '191.594000', // 92.094 formed, 99.5 added
      sorbitol: '140.000000',
      butanediol: '10.000000',
      polyethyleneGlycol: '19.800000',
      isopropanol: '27.000000',
      water: '268.700000', // 200 + 0.5 + 60 + 0.2 + 3 + 5
      salts: '4.000000',
      other: '2.000000',
    });
    expect(pot.components.glycerol.formed.likely.g.toFixed(6)).toBe('92.094000');
    expect(pot.components.glycerol.added.likely.g.toString()).toBe('99.5');
    expect(pot.charge.g.toString()).toBe('1582.492');
    expect(pot.mass.likely.g.toString()).toBe('1582.492');
    expect(pot.components.sorbitol.share.likely.percent.toFixed(4)).toBe('8.8468'); // 140 / 1582.492
    expect(codes(pot.notes)).toContain('rest-counts-as-water');
  });

  it('takes spirit by volume: 96 % is 93.84 % by mass', () => {
    const { components, basis } = compose([{ solvent: 'ethanol', mass: { g: 100 }, assay: { percentByVolume: 96 } }]);
    expect(components.ethanol.mass.likely.g.toFixed(2)).toBe('93.84');
    expect(components.water.mass.likely.g.toFixed(2)).toBe('206.16');
    expect(basis).toContain('oiml-r-22');
  });

  it('counts caustic left over as such, and as NaOH of what is in the pot', () => {
    const pot = compositionFrom({ soap: soapOf('123.9907', 0), additions: [] }); // a tenth of a mole too much
    expect(pot.components.freeCaustic.mass.likely.g.toFixed(6)).toBe('3.999700');
    expect(pot.freeCausticAlkali.likely.percentNaoh.toFixed(6)).toBe('0.393868'); // 3.9997 / 1015.4917
    expect(pot.freeCausticAlkali.likely.percentNaoh.eq(pot.components.freeCaustic.share.likely.percent)).toBe(true);
  });

  it('counts potash left over as its weight in soda', () => {
    const made = soapFromLye({
      fats: [{ fat: tristearin, mass: { g: '891.501' } }],
      lye: [{ alkali: 'koh', mass: { g: '173.9255' }, solid: { hydroxide: { percent: 100 } } }],
    });
    const { components, freeCausticAlkali, mass } = compositionFrom({ soap: made, additions: [] });
    expect(components.freeCaustic.mass.likely.g.toFixed(6)).toBe('5.610500');
    expect(freeCausticAlkali.likely.percentNaoh.times(mass.likely.g).div(100).toFixed(6)).toBe('3.999700');
  });

  it('takes a loss from the water', () => {
    const pot = compose([{ solvent: 'sucrose', mass: { g: 50 }, assay: { percent: 100 } }], { evaporated: { g: 80 } });
    expect(pot.components.water.mass.likely.g.toFixed(6)).toBe('120.000000');
    expect(pot.gone.water.likely.g.toString()).toBe('80');
    expect(pot.mass.likely.g.toString()).toBe('1181.492');
    // and the same by the scale
    const weighed = compose([{ solvent: 'sucrose', mass: { g: 50 }, assay: { percent: 100 } }], {
      potMass: { g: '1181.492' },
    });
    expect(textOf(weighed.components)).toBe(textOf(pot.components));
    expect(weighed.gone.water.likely.g.toString()).toBe('80');
  });

  const spirit = [{ solvent: 'ethanol', mass: { g: 100 }, assay: { percent: 90 } }] as const;

  it('splits a loss from all water to all spirit where nothing is said, the middle likely', () => {
    const { components, gone, notes } = compose(spirit, { evaporated: { g: 40 } });
    expect(grams({ components } as Composition, 'low')['ethanol']).toBe('50.000000');
    expect(grams({ components } as Composition, 'high')['ethanol']).toBe('90.000000');
    expect([gone.spirit, gone.water].map(({ likely }) => likely.g.toString())).toEqual(['20', '20']);
    expect(components.water.mass.low.g.toString()).toBe('170'); // 210 less 40
    expect(codes(notes)).toContain('loss-split-unknown');
  });

  it('takes no more spirit or water than there is', () => {
    const { gone } = compose(spirit, { evaporated: { g: 250 } });
    // 210 g of water and 90 g of spirit: 40 to 90 g must have been spirit
    expect([gone.spirit.low, gone.spirit.likely, gone.spirit.high].map(({ g }) => g.toString())).toEqual(['40', '65', '90']);
    expect([gone.water.low, gone.water.high].map(({ g }) => g.toString())).toEqual(['160', '210']);
  }); // prettier-ignore

  it('splits it as stated', () => {
    const { gone, notes } = compose(spirit, { evaporated: { g: 40 }, spiritShareOfLoss: { percent: 75 } });
    expect([gone.spirit.low, gone.spirit.high].map(({ g }) => g.toString())).toEqual(['30', '30']);
    expect(codes(notes)).not.toContain('loss-split-unknown');
    const ranged = compose(spirit, {
      potMass: { g: '1271.492' },
      spiritShareOfLoss: { low: { percent: 50 }, high: { percent: 100 } },
    });
    expect([ranged.gone.spirit.low, ranged.gone.spirit.likely, ranged.gone.spirit.high].map(({ g }) => g.toString())).toEqual(['20', '30', '40']);
  }); // prettier-ignore

  it('lets two spirits leave in the proportion they are there', () => {
    const { components, notes } = compose(
      [...spirit, { solvent: '2-propanol', mass: { g: 30 }, assay: { percent: 100 } }],
      { evaporated: { g: 40 }, spiritShareOfLoss: { percent: 100 } },
    );
    expect(components.ethanol.mass.likely.g.toFixed(6)).toBe('60.000000'); // 90 less three quarters of 40
    expect(components.isopropanol.mass.likely.g.toFixed(6)).toBe('20.000000');
    expect(codes(notes)).toContain('spirits-leave-in-proportion');
  });

  it('one spirit leaves nothing of another, and all gone is nothing left, to the last digit', () => {
    const third = { percent: '33.3333333333' };
    const isopropanol = { solvent: '2-propanol', mass: { g: 7 }, assay: third } as const;
    const some = compose([isopropanol], { evaporated: { g: 1 }, spiritShareOfLoss: third });
    expect(some.components.ethanol.mass.likely.g.toString()).toBe('0');
    expect(some.components.isopropanol.mass.likely.g.toString()).toBe('1.999999999998'); // 7 thirds less a third
    const both = compose([isopropanol, { solvent: 'ethanol', mass: { g: 3 }, assay: third }], {
      evaporated: { g: 210 }, // 200 g of water and 10 of spirit and its water
    });
    for (const name of ['ethanol', 'isopropanol', 'water'] as const) {
      expect(both.components[name].mass.likely.g.toString()).toBe('0');
    }
  });

  it('counts carbon dioxide as gone', () => {
    const acid = fatFromCertificate({
      name: 'Stearic acid',
      kind: 'free-fatty-acid',
      saponificationValue: { saponificationEquivalent: '284.484' },
    });
    // 10 % of the total alkali is carbonate, 2 mol of acid to 1 of it
    const made = soapFromLye({
      fats: [{ fat: acid, mass: { g: 1000 } }],
      lye: [{ alkali: 'naoh', mass: { g: 100 }, solid: { totalAlkali: { percent: 95 }, carbonate: { percent: 5 } } }],
    });
    const { gone, mass, charge } = compositionFrom({ soap: made, additions: [] });
    expect(gone.carbonDioxide.likely.g.toFixed(4)).toBe('2.0761'); // 5 / 105.988 · 44.009
    expect(mass.likely.g.plus(gone.carbonDioxide.likely.g).eq(charge.g)).toBe(true);
    // weighed after it has left, nothing has evaporated
    const { gone: none } = compositionFrom({ soap: made, additions: [], potMass: mass.likely });
    expect(none.water.likely.g.abs().lte('1e-28')).toBe(true);
  });

  it('counts triethanolamine as charged, its rest as other, and says what soap it may have made', () => {
    const acid = fatFromCertificate({
      name: 'Stearic acid',
      kind: 'free-fatty-acid',
      saponificationValue: { saponificationEquivalent: '284.484' },
    });
    const short = soapFromLye({
      fats: [{ fat: acid, mass: { g: '569.0' } }], // two moles, near enough
      lye: [{ alkali: 'naoh', mass: { g: '39.997' }, solid: { hydroxide: { percent: 100 } } }],
    });
    const amine = (g: number): AdditionInput => ({ solvent: 'triethanolamine', mass: { g }, assay: { percent: 85 } });
    const some = compositionFrom({ soap: short, additions: [amine(50)] });
    expect(some.components.triethanolamine.mass.likely.g.toString()).toBe('42.5');
    expect(some.components.other.mass.likely.g.toString()).toBe('7.5');
    // 42.5 / 149.19 mol with acid of 284.484: a soap of 433.674
    expect(some.triethanolamineSoapAtMost?.g.toFixed(4)).toBe('123.5414');
    // more amine than acid: all the acid, 569.0 / 284.484 - 1 mol
    const much = compositionFrom({ soap: short, additions: [amine(500)] });
    expect(much.triethanolamineSoapAtMost?.g.toFixed(4)).toBe('433.7228');
    expect(codes(much.notes)).toEqual(expect.arrayContaining(['triethanolamine-as-charged', 'rest-of-amine-counts-as-other']));
    expect(codes(much.cautions)).toContain('amine-hides-alkali');
    // at most: with the weakest lye, which leaves 569.0 / 284.484 - 0.9 mol of acid
    const weak = soapFromLye({
      fats: [{ fat: acid, mass: { g: '569.0' } }],
      lye: [{ alkali: 'naoh', mass: { g: '39.997' }, solid: { hydroxide: { low: { percent: 90 }, high: { percent: 100 } } } }],
    });
    const most = compositionFrom({ soap: weak, additions: [amine(500)] });
    expect(most.triethanolamineSoapAtMost?.g.toFixed(2)).toBe('477.09');
    // no free acid, no soap of it; no amine, no word of it
    expect(compose([amine(50)]).triethanolamineSoapAtMost?.g.toString()).toBe('0');
    expect(compose([])).not.toHaveProperty('triethanolamineSoapAtMost');
  }); // prettier-ignore

  it('warns that hot base scalds, in the pot and at pouring', () => {
    const pot = compose([]);
    expect(codes(pot.cautions)).toContain('hot-soap-scalds');
    const poured = batchVolumeOf({ composition: pot, temperature: { celsius: 62 } });
    expect(codes(poured.cautions).slice(0, 2)).toEqual(['caustic-burns', 'hot-soap-scalds']);
    const spirited = compose([{ solvent: 'ethanol', mass: { g: 50 }, assay: { percentByVolume: 96 } }]);
    const withSpirit = batchVolumeOf({ composition: spirited, temperature: { celsius: 62 } });
    expect(codes(withSpirit.cautions)).toContain('spirit-catches-fire');
  });

  it('warns of an alkali that goes by its name only', () => {
    const named = (name: string) => codes(compose([{ name, mass: { g: 50 } }]).cautions);
    expect(named('Sodium hydroxide, 99 %')).toContain('alkali-among-additions');
    expect(named('Ätznatron')).toContain('alkali-among-additions');
    expect(named('soda ash')).toContain('alkali-among-additions');
    expect(named('colour')).not.toContain('alkali-among-additions');
  });

  it.each([
    'Vodka',
    'denatured alcohol',
    'Isopropyl',
    'IPA, 99 %',
    'methylated spirit',
    'ethanol',
    '2-Propanol',
    'Benzoin tincture',
  ])('warns of fire for %s', (name) => {
    expect(codes(compose([{ name, mass: { g: 50 } }]).cautions)).toContain('spirit-catches-fire');
  });

  it.each([
    'cetyl alcohol',
    'Sugar-alcohol syrup',
    'lanolin alcohols',
    'spirit vinegar',
    'alcohol-free scent',
    'papain',
    'ginger',
  ])('warns of no fire for %s', (name) => {
    expect(codes(compose([{ name, mass: { g: 50 } }]).cautions)).not.toContain('spirit-catches-fire');
  });

  it.each(['citric acid', 'Lactic acid 80 %', 'stearic acid', 'vinegar'])('says that %s is not counted', (name) => {
    const { notes, cautions } = compose([{ name, mass: { g: 50 } }]);
    expect(codes(notes)).toContain('acid-not-counted');
    expect(codes(cautions)).toContain('acid-into-hot-soap');
  });

  it('says nothing of acid where there is none', () => {
    const { notes, cautions } = compose([{ name: 'colour', mass: { g: 50 } }]);
    expect(codes(notes)).not.toContain('acid-not-counted');
    expect(codes(cautions)).not.toContain('acid-into-hot-soap');
  });

  it('warns of spirit and of sugar where they are, after the burns', () => {
    const warned = codes(
      compose([
        { solvent: 'glucose', mass: { g: 1 }, assay: { percent: 99 } },
        { solvent: 'ethanol', mass: { g: 1 }, assay: { percent: 99 } },
      ]).cautions,
    );
    expect(warned[0]).toBe('caustic-burns');
    expect(warned).toEqual(expect.arrayContaining(['spirit-catches-fire', 'sugar-in-hot-lye', 'lye-into-hot-soap']));
    expect(codes(compose([]).cautions)).not.toContain('spirit-catches-fire');
  });

  it('gives bounds of assays that are ranges', () => {
    const { components } = compose([
      { solvent: 'glycerol', mass: { g: 100 }, assay: { low: { percent: 95 }, high: { percent: 100 } } },
      { solvent: 'ethanol', mass: { g: 100 }, assay: { low: { percentByVolume: 95 }, high: { percentByVolume: 97 } } },
    ]);
    const span = (name: 'glycerol' | 'ethanol' | 'water'): string[] =>
      [components[name].mass.low, components[name].mass.high].map(({ g }) => g.toFixed(3));
    expect(span('glycerol')).toEqual(['187.094', '192.094']);
    expect(span('ethanol')).toEqual(['92.408', '95.305']);
    expect(span('water')).toEqual(['204.695', '212.592']);
  });
});

const solvents = fc.constantFrom('ethanol', '2-propanol', 'glycerol', 'sorbitol', 'sucrose', 'triethanolamine');
const addition: fc.Arbitrary<AdditionInput> = fc.oneof(
  fc
    .record({ solvent: solvents, g: fc.integer({ min: 0, max: 500 }), percent: fc.integer({ min: 1, max: 100 }) })
    .map(({ solvent, g, percent }): AdditionInput => ({ solvent, mass: { g }, assay: { percent } })),
  fc.integer({ min: 0, max: 100 }).map((g): AdditionInput => ({ salt: 'A salt', mass: { g } })),
  fc.integer({ min: 0, max: 100 }).map((g): AdditionInput => ({ name: 'Scent', mass: { g } })),
);
const additions = fc.array(addition, { maxLength: 6 });
const oil = soapFromLye({
  fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
  lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { low: { percent: 48 }, high: { percent: 50 } } } }],
});

describe('compositionFrom: laws', () => {
  it('likely masses and shares add up, and what is there and what is gone make the charge', () => {
    fc.assert(
      fc.property(additions, fc.integer({ min: 0, max: 100 }), (some, g) => {
        const { components, mass, gone, charge } = compositionFrom({ soap: oil, additions: some, evaporated: { g } });
        const close = (sum: Exact, to: { toString(): string }): void => {
          expect(sum.minus(to.toString()).abs().div(charge.g.toString()).lte('1e-28')).toBe(true);
        };
        const sum = (all: readonly { toString(): string }[]): Exact =>
          all.reduce((total: Exact, one) => total.plus(one.toString()), new Exact(0));
        close(sum(Object.values(components).map((one) => one.mass.likely.g)), mass.likely.g);
        close(sum(Object.values(components).map((one) => one.share.likely.percent)), '100');
        close(sum([mass.likely.g, ...Object.values(gone).map(({ likely }) => likely.g)]), charge.g);
      }),
    );
  });

  it('the order of additions does not matter, nor whether one is weighed in two parts', () => {
    fc.assert(
      fc.property(additions, (some) => {
        const halves = some.flatMap((one): AdditionInput[] => {
          const half = { ...one, mass: { g: String((one.mass as { g: number }).g / 2) } };
          return [half, half];
        });
        const [one, turned, halved] = [some, [...some].reverse(), halves].map(
          (list) => compositionFrom({ soap: oil, additions: list, evaporated: { g: 20 } }).components,
        );
        for (const [name, { mass }] of Object.entries(one ?? {})) {
          for (const other of [turned, halved]) {
            for (const end of ['low', 'likely', 'high'] as const) {
              const off = mass[end].g.minus(other?.[name as 'water'].mass[end].g ?? Number.NaN);
              expect(off.abs().lte('1e-27'), name).toBe(true);
            }
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('a soap read back from JSON makes the same composition, and so does the composition’s own soap', () => {
    fc.assert(
      fc.property(additions, (some) => {
        const once = compositionFrom({ soap: oil, additions: some });
        expect(textOf(compositionFrom({ soap: throughJson(oil) as MadeSoap, additions: some }))).toBe(textOf(once));
        expect(textOf(compositionFrom({ soap: once.given.soap, additions: once.given.additions }))).toBe(textOf(once));
      }),
      { numRuns: 20 },
    );
  });

  it('more of anything is more of it, and less of a share of everything else', () => {
    const glycerol = (g: number): Composition =>
      compositionFrom({ soap: oil, additions: [{ solvent: 'glycerol', mass: { g }, assay: { percent: 100 } }] });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 1, max: 900 }), (g, more) => {
        const [less, greater] = [glycerol(g), glycerol(g + more)];
        expect(greater.components.glycerol.share.low.percent.gt(less.components.glycerol.share.low.percent)).toBe(true);
        expect(greater.components.soapSodium.share.high.percent.lt(less.components.soapSodium.share.high.percent)).toBe(true);
        expect(greater.components.soapSodium.mass.high.g.eq(less.components.soapSodium.mass.high.g)).toBe(true);
      }),
    );
  }); // prettier-ignore
});

describe('compositionFrom: refusals', () => {
  const glycerol =
    (assay: unknown): (() => unknown) =>
    () =>
      compose([{ solvent: 'glycerol', mass: { g: 1 }, assay } as never]);
  const ethanol = { solvent: 'ethanol', mass: { g: 100 }, assay: { percent: 90 } } as const;

  it.each<[string, () => unknown, string, string, string?]>([
    ['no assay', glycerol(undefined), 'missing', 'additions[0].assay'],
    ['percent by volume of glycerol', glycerol({ percentByVolume: 96 }), 'unknown-unit', 'additions[0].assay.percentByVolume', 'for ethanol only'],
    ['percent by volume at one end', glycerol({ low: { percent: 9 }, high: { percentByVolume: 96 } }), 'unknown-unit', 'additions[0].assay.high.percentByVolume'],
    ['spirit over 100 % by volume', () => compose([{ ...ethanol, assay: { percentByVolume: 101 } }]), 'out-of-range', 'additions[0].assay.percentByVolume'],
    ['an assay of nothing', glycerol({ percent: 0 }), 'out-of-range', 'additions[0].assay.percent'],
    ['an assay over 100 %', glycerol({ percent: '100.1' }), 'out-of-range', 'additions[0].assay.percent'],
    ['a bare assay', glycerol(99), 'bad-shape', 'additions[0].assay'],
    ['an unknown solvent', () => compose([{ solvent: 'glycerin', mass: { g: 1 }, assay: { percent: 9 } } as never]), 'bad-shape', 'additions[0].solvent', 'did you mean "glycerol"?'],
    ['a solvent and a name', () => compose([{ ...ethanol, name: 'x' } as never]), 'bad-shape', 'additions[0]', 'solvent and name'],
    ['neither', () => compose([{ mass: { g: 1 } } as never]), 'missing', 'additions[0]'],
    ['an assay of a colour', () => compose([{ name: 'Colour', mass: { g: 1 }, assay: { percent: 1 } } as never]), 'unknown-key', 'additions[0].assay'],
    ['an assay of a salt', () => compose([{ salt: 'Borax', mass: { g: 1 }, assay: { percent: 1 } } as never]), 'unknown-key', 'additions[0].assay'],
    ['an empty name', () => compose([{ name: ' ', mass: { g: 1 } }]), 'bad-shape', 'additions[0].name'],
    ['no mass', () => compose([{ name: 'Colour' } as never]), 'missing', 'additions[0].mass'],
    ['a negative mass', () => compose([{ name: 'Colour', mass: { g: -1 } }]), 'out-of-range', 'additions[0].mass.g'],
    ['no list', () => compositionFrom({ soap } as never), 'missing', 'additions'],
    ['no soap', () => compositionFrom({ additions: [] } as never), 'missing', 'soap'],
    ['a plan for soap', () => compositionFrom({ soap: { ...soap, by: 'planLye' } as never, additions: [] }), 'bad-shape', 'soap.by'],
    ['soap of no fat', () => compositionFrom({ soap: { by: 'soapFromLye', given: { lye: [] } }, additions: [] }), 'missing', 'soap.given.fats'],
    ['an unknown key', () => compose([], { potmass: { g: 1 } } as never), 'unknown-key', 'input.potmass', 'did you mean "potMass"?'],
    ['both ways of loss', () => compose([], { evaporated: { g: 1 }, potMass: { g: 1 } }), 'bad-shape', 'input'],
    ['a share of no loss', () => compose([ethanol], { spiritShareOfLoss: { percent: 50 } }), 'missing', 'evaporated', 'for spiritShareOfLoss'],
    ['more gone than there is', () => compose([ethanol], { evaporated: { g: 301 } }), 'infeasible', 'evaporated', 'at most 300.000 g'],
    ['less left than cannot go', () => compose([ethanol], { potMass: { g: 1011 } }), 'infeasible', 'potMass', 'at least 1011.49 g'],
    ['a pot above the charge', () => compose([], { potMass: { g: '1211.6' } }), 'infeasible', 'potMass', 'at most 1211.49 g'],
    ['more spirit gone than there is', () => compose([ethanol], { evaporated: { g: 200 }, spiritShareOfLoss: { percent: 50 } }), 'infeasible', 'spiritShareOfLoss', '0.000 to 45.00 percent'],
    ['more water gone than there is', () => compose([ethanol], { evaporated: { g: 250 }, spiritShareOfLoss: { percent: 10 } }), 'infeasible', 'spiritShareOfLoss', '16.00 to 36.00 percent'],
    ['spirit gone where there is none', () => compose([], { evaporated: { g: 10 }, spiritShareOfLoss: { percent: 10 } }), 'infeasible', 'spiritShareOfLoss'],
  ])('%s', (_what, call, code, path, said = '') => {
    const { message, ...rest } = refusal(call);
    expect(rest).toEqual({ code, path });
    expect(message).toContain(said);
  }); // prettier-ignore

  it('but all that can go may go', () => {
    const dry = compose([ethanol], { evaporated: { g: 300 } });
    expect(dry.components.water.mass.high.g.toString()).toBe('0');
    expect(dry.components.ethanol.mass.high.g.toString()).toBe('0');
    expect(dry.mass.likely.g.toString()).toBe('1011.492');
  });
});

describe('compositionFrom: what is noted, and when', () => {
  const spirit: AdditionInput = { solvent: 'ethanol', mass: { g: 100 }, assay: { percent: 95 } };
  const other: AdditionInput = { solvent: '2-propanol', mass: { g: 50 }, assay: { percent: 100 } };
  const glycerol: AdditionInput = { solvent: 'glycerol', mass: { g: 50 }, assay: { percent: 100 } };
  const ofAdditions = /^(?:rest-|loss-|spirits-|triethanolamine-)/;
  const noted = (additions: readonly AdditionInput[], more: Partial<CompositionFromInput> = {}): string[] =>
    codes(compose(additions, more).notes).filter((code) => ofAdditions.test(code));
  const loss = { evaporated: { g: 20 } };

  it.each<[string, readonly AdditionInput[], Partial<CompositionFromInput>, readonly string[]]>([
    ['nothing added', [], {}, []],
    ['what is pure', [glycerol], {}, []],
    ['a salt, and something by its name', [{ salt: 'Salt', mass: { g: 1 } }, { name: 'Colour', mass: { g: 1 } }], {}, []],
    ['what holds water', [spirit], {}, ['rest-counts-as-water']],
    ['a loss without spirit', [glycerol], loss, []],
    ['a loss of water or spirit', [other], loss, ['loss-split-unknown']],
    ['a loss whose split is stated', [other], { ...loss, spiritShareOfLoss: { percent: 50 } }, []],
    ['a loss whose split is stated as a range', [other], { ...loss, spiritShareOfLoss: { low: { percent: 40 }, high: { percent: 60 } } }, []],
    ['two spirits', [spirit, other], {}, ['rest-counts-as-water', 'spirits-leave-in-proportion']],
  ])('of %s', (_what, additions, more, expected) => {
    expect(noted(additions, more)).toEqual(expected);
  }); // prettier-ignore

  it('no loss is given where none was stated', () => {
    expect(Object.keys(compose([spirit]).given)).toEqual(['soap', 'additions']);
  });

  it('water with an assay keeps it', () => {
    const assay = { assay: { percent: 90 } };
    const { given } = compose([{ solvent: 'water', mass: { g: 10 }, ...assay }]);
    expect(given.additions.map((one) => ('assay' in one ? String(one.assay.likely.percent) : ''))).toEqual(['90']);
  });

  it('a loss that nothing in the pot can give is named as it was stated', () => {
    expect(refusal(() => compose([], { evaporated: { g: 5000 } })).message).toContain('received 5000 g');
    expect(refusal(() => compose([], { potMass: { g: 1 } })).message).toContain('received 1 g');
  });
});
