import {
  fat,
  fatFromBlend,
  fatFromCertificate,
  soapFromLye,
  superfatFromLye,
  type AlkaliSource,
  type ChargedFatInput,
  type FatFromCertificateInput,
  type LyeChargeInput,
  type SoapFromLyeResult,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

type Certificate = Partial<Omit<FatFromCertificateInput, 'name'>>;

/** A fat by the grams of it that take up one mole of hydroxide; the molar masses of pure fats are added up by hand. */
const pure = (equivalent: string, g: number | string, more: Certificate = {}): ChargedFatInput => ({
  fat: fatFromCertificate({
    name: 'A pure fat',
    kind: 'triglyceride',
    saponificationValue: { saponificationEquivalent: equivalent },
    ...more,
  }),
  mass: { g },
});
const lot = (mgKohPerG: number, g: number, more: Certificate = {}): ChargedFatInput => ({
  fat: fatFromCertificate({ name: 'A lot', kind: 'triglyceride', saponificationValue: { mgKohPerG }, ...more }),
  mass: { g },
});
const TRISTEARIN = '297.167'; // C57H110O6 891.501, a third of it
const STEARIC = '284.484'; // C18H36O2
const tristearin = (g: string): ChargedFatInput => pure(TRISTEARIN, g);
const stearic = (g: string): ChargedFatInput => pure(STEARIC, g, { kind: 'free-fatty-acid' });

const lye = (alkali: 'naoh' | 'koh', g: number | string, source: AlkaliSource): LyeChargeInput => ({
  alkali,
  mass: { g },
  ...source,
});
const solid = (percent: number | string): AlkaliSource => ({ solid: { hydroxide: { percent } } });
const solution = (percent: number | string): AlkaliSource => ({ solution: { hydroxide: { percent } } });
const withCarbonate = (totalAlkali: string, carbonate: string): AlkaliSource => ({
  solid: { totalAlkali: { percent: totalAlkali }, carbonate: { percent: carbonate } },
});

/** The likely grams of every product that is there at all, to nine places. */
const grams = ({ products }: SoapFromLyeResult): Record<string, string> =>
  Object.fromEntries(
    Object.entries(products)
      .filter(([, { likely }]) => !likely.g.isZero())
      .map(([product, { likely }]) => [product, likely.g.toFixed(9)] as const),
  );
const moles = ({ soap }: SoapFromLyeResult): string[] =>
  [soap.sodium, soap.potassium].map((m) => m.likely.mol.toFixed(9));

describe('soapFromLye: worked by hand', () => {
  it('a mole of tristearin and three of soda: soap and glycerol, nothing else', () => {
    const made = soapFromLye({ fats: [tristearin('891.501')], lye: [lye('naoh', '119.991', solid(100))] });
    // 3 C18H35NaO2 of 306.466, and C3H8O3
    expect(grams(made)).toEqual({ soapSodium: '919.398000000', glycerol: '92.094000000' });
    expect(moles(made)).toEqual(['3.000000000', '0.000000000']);
    expect(made.charge.g.toString()).toBe('1011.492');
    expect(made.extent.likely.percent.toFixed(25)).toBe(`100.${'0'.repeat(25)}`);
    expect(made.by).toBe('soapFromLye');
    expect(Object.isFrozen(made.products.soapSodium.low)).toBe(true);
  });

  it('the same with potash', () => {
    const made = soapFromLye({ fats: [tristearin('891.501')], lye: [lye('koh', '168.315', solid(100))] });
    // 3 C18H35KO2 of 322.574
    expect(grams(made)).toEqual({ soapPotassium: '967.722000000', glycerol: '92.094000000' });
    expect(moles(made)).toEqual(['0.000000000', '3.000000000']);
  });

  it('both, in excess: soap and free caustic keep the proportion charged', () => {
    const made = soapFromLye({
      fats: [tristearin('891.501')],
      lye: [lye('naoh', '119.991', solid(100)), lye('koh', '56.105', solid(100))],
    });
    expect(moles(made)).toEqual(['2.250000000', '0.750000000']); // three to one
    expect(grams(made)).toEqual({
      soapSodium: '689.548500000', // 2.25 * 306.466
      soapPotassium: '241.930500000', // 0.75 * 322.574
      glycerol: '92.094000000',
      freeNaoh: '29.997750000', // a mole is left, three quarters of it soda
      freeKoh: '14.026250000',
    });
  });

  it('half the alkali: half of the fat is left', () => {
    const made = soapFromLye({ fats: [tristearin('891.501')], lye: [lye('naoh', '59.9955', solid(100))] });
    expect(grams(made)).toEqual({
      soapSodium: '459.699000000',
      glycerol: '46.047000000',
      freeFat: '445.750500000',
    });
    expect(made.extent.likely.percent.toFixed(9)).toBe('50.000000000');
    expect(made.superfat.likely.percent.toFixed(9)).toBe('50.000000000');
  });

  it('stearic acid alone: soap and water, no glycerol', () => {
    const made = soapFromLye({ fats: [stearic('284.484')], lye: [lye('naoh', '39.997', solid(100))] });
    expect(grams(made)).toEqual({ soapSodium: '306.466000000', water: '18.015000000' });
  });

  it('rosin: the same', () => {
    const resin = pure('302.458', '302.458', { kind: 'rosin' }); // C20H30O2
    const made = soapFromLye({ fats: [resin], lye: [lye('koh', '56.105', solid(100))] });
    expect(grams(made)).toEqual({ soapPotassium: '340.548000000', water: '18.015000000' });
  });

  it('alkali short of the free acid: no ester is split', () => {
    const made = soapFromLye({
      fats: [tristearin('891.501'), stearic('568.968')],
      lye: [lye('naoh', '39.997', solid(100))],
    });
    expect(grams(made)).toEqual({
      soapSodium: '306.466000000',
      water: '18.015000000',
      freeFat: '891.501000000',
      freeAcid: '284.484000000',
    });
    expect(made.extent.likely.percent.isZero()).toBe(true);
  });

  // 400 g with 2 mol NaOH (79.994 g) and 1 mol Na2CO3 (105.988 g), the rest not known
  const soda = lye('naoh', 400, withCarbonate('39.997', '26.497'));

  it('acid left over takes carbonate, two to one, and gas leaves', () => {
    const made = soapFromLye({ fats: [stearic('1422.42')], lye: [soda] });
    expect(grams(made)).toEqual({
      soapSodium: '1225.864000000', // 2 mol by hydroxide, 2 by carbonate
      water: '54.045000000', // 2 mol and 1
      freeAcid: '284.484000000', // of 5 mol
      other: '214.018000000',
      carbonDioxide: '44.009000000',
    });
  });

  it('acid runs out first: carbonate is left', () => {
    const made = soapFromLye({ fats: [stearic('853.452')], lye: [soda] });
    expect(grams(made)).toEqual({
      soapSodium: '919.398000000',
      water: '45.037500000', // 2 mol and half of one
      sodiumCarbonate: '52.994000000',
      other: '214.018000000',
      carbonDioxide: '22.004500000',
    });
  });

  it('no acid is left: carbonate stays whole, and does not split fat', () => {
    const made = soapFromLye({ fats: [tristearin('891.501')], lye: [soda] });
    expect(grams(made)).toMatchObject({ sodiumCarbonate: '105.988000000', freeFat: '297.167000000' });
    expect(made.products.carbonDioxide.likely.g.isZero()).toBe(true);
  });

  it('carbonate of potash gives potassium soap, whatever the hydroxide is', () => {
    const made = soapFromLye({
      fats: [stearic('711.21')], // 2.5 mol
      // 1 mol NaOH; 1 mol KOH and half a mol K2CO3 (69.102 g) in 400 g, the rest water
      lye: [lye('naoh', '79.994', solution(50)), lye('koh', 400, withCarbonate('28.0525', '17.2755'))],
    });
    expect(moles(made)).toEqual(['1.000000000', '1.500000000']);
    expect(grams(made)).toEqual({
      soapSodium: '306.466000000',
      soapPotassium: '483.861000000',
      water: '355.323750000', // 39.997 + 274.793 + 2.25 * 18.015
      potassiumCarbonate: '34.551000000',
      carbonDioxide: '11.002250000',
    });
  });

  it('a fat as it comes: free acid, moisture, unsaponifiable matter', () => {
    const made = soapFromLye({
      fats: [
        lot(200, 1000, {
          acidValue: { mgKohPerG: 10 },
          unsaponifiable: { percent: 2 },
          moisture: { percent: '0.5' },
        }),
      ],
      lye: [lye('naoh', 240, solution(50))],
    });
    // n = 3.564744675, of it 0.178237234 free; M = (975 - 3.386507441 * 38.049 / 3) / n = 261.463025
    expect(grams(made)).toEqual({
      soapSodium: '850.398854914', // 3.000225017 * (261.463025 + 21.982)
      glycerol: '86.629380966', // 0.83330328722 * 3.386507441 / 3 * 92.094
      water: '128.210943766', // 120 + 5 + 0.178237234 * 18.015
      freeFat: '154.760820354',
      unsaponifiable: '20.000000000',
    });
    expect(made.extent.likely.percent.toFixed(9)).toBe('83.330328722');
  });

  it('a pure wax: half of its mass counts as acid, the rest is alcohol that stays', () => {
    const palmitate = pure('480.862', '480.862', { kind: 'wax-ester' }); // C32H64O2
    const made = soapFromLye({ fats: [palmitate], lye: [lye('naoh', '39.997', solid(100))] });
    // 240.431 + 21.982 and 240.431 + 18.015; of C32H64O2 itself come C16H31NaO2, 278.412, and C16H34O, 242.447: what the
    // convention of half is worth
    expect(grams(made)).toEqual({ soapSodium: '262.413000000', unsaponifiable: '258.446000000' });
  });

  const wax = lot(95, 100, { kind: 'wax-ester', acidValue: { mgKohPerG: 20 } });

  it('a wax like beeswax, with potash in excess', () => {
    const made = soapFromLye({ fats: [wax], lye: [lye('koh', 12, solid(100))] });
    // a 0.035647447, g 0.133677925 mol; 50 g of acid
    expect(grams(made)).toEqual({
      soapPotassium: '56.449603422', // 50 + 0.169325372 * 38.09
      water: '0.642188753',
      unsaponifiable: '52.408207825', // 50 + 0.133677925 * 18.015
      freeKoh: '2.500000000', // 12 - 9.5
    });
  });

  it('and with too little', () => {
    const made = soapFromLye({ fats: [wax], lye: [lye('koh', 5, solid(100))] });
    expect(grams(made)).toEqual({
      soapPotassium: '29.710317591', // 50 * 0.089118617 / 0.169325372 + 0.089118617 * 38.09
      water: '0.642188753',
      unsaponifiable: '20.963283130', // 0.4 of it
      freeFat: '53.684210526', // 0.6 of 50 * g / n and of the other 50
    });
  });

  const three = [
    lot(255, 700, { unsaponifiable: { percent: '0.5' } }),
    lot(180, 200, {
      acidValue: { mgKohPerG: 4 },
      unsaponifiable: { percent: 1 },
      moisture: { percent: '0.2' },
    }),
    lot(205, 100, { kind: 'free-fatty-acid' }),
  ];
  const both = [lye('naoh', 150, solid(98)), lye('koh', 20, solid(90))];

  it('three fats, solid soda of 98 %, solid potash of 90 %', () => {
    const made = soapFromLye({ fats: three, lye: both, water: { g: 300 } });
    expect(grams(made)).toEqual({
      soapSodium: '911.536191412',
      soapPotassium: '84.738904018',
      glycerol: '111.018007992',
      water: '309.239310222', // 300, the 2 of the potash, the 0.4 of the castor oil, and what forms
      freeFat: '44.967586355',
      unsaponifiable: '5.500000000',
      other: '3.000000000', // the rest of the soda
    });
    expect(made.charge.g.toString()).toBe('1470');
  });

  it('blended first, they come out the same', () => {
    const blend = fatFromBlend({ name: 'Stock', parts: three });
    const made = soapFromLye({ fats: [{ fat: blend, mass: { kg: 1 } }], lye: both, water: { g: 300 } });
    expect(grams(made)).toEqual(grams(soapFromLye({ fats: three, lye: both, water: { g: 300 } })));
  });

  it('a solid of 102 %: the rest is below nothing, so that the masses still add up', () => {
    const made = soapFromLye({ fats: [tristearin('891.501')], lye: [lye('naoh', 100, solid(102))] });
    expect(made.products.other.likely.g.toString()).toBe('-2');
    const potash = soapFromLye({ fats: [tristearin('891.501')], lye: [lye('koh', 100, solid(102))] });
    expect(potash.products.water.likely.g.toString()).toBe('-2');
  });

  it('a fat of no mass changes nothing, whatever is in it', () => {
    const damp = lot(200, 0, { unsaponifiable: { percent: 60 }, moisture: { percent: 40 } });
    const made = soapFromLye({ fats: [...three, damp], lye: both });
    expect(grams(made)).toEqual(grams(soapFromLye({ fats: three, lye: both })));
  });

  it('superfat, free caustic and demand are those of superfatFromLye', () => {
    const charge = { fats: three, lye: both, water: { g: 300 } };
    const made = soapFromLye(charge);
    const { superfat, superfatByMass, freeCausticAlkali, charged, demand } = superfatFromLye(charge);
    expect(made).toMatchObject({ superfat, superfatByMass, freeCausticAlkali, charged, demand });
  });
});

describe('soapFromLye: bounds worked by hand', () => {
  // n from 3.094 to 3.306 mol; soda for 3.150 mol, which lots of 252.5 mg KOH/g just take up
  const coconut = fatFromCertificate({
    name: 'Coconut oil',
    kind: 'triglyceride',
    saponificationValue: { low: { mgKohPerG: 248 }, high: { mgKohPerG: 265 } },
  });
  const { products, extent } = soapFromLye({
    fats: [{ fat: coconut, mass: { g: 700 } }],
    lye: [lye('naoh', 252, solution(50))],
  });
  const ends = (product: keyof typeof products): string[] =>
    [products[product].low, products[product].likely, products[product].high].map(({ g }) => g.toFixed(9));

  it('soap is most where the lot just takes up the alkali', () => {
    // 265, 256.5, and 252.491437 mg KOH/g, which is neither end
    expect(ends('soapSodium')).toEqual(['696.252559508', '718.354498517', '729.294047054']);
  });

  it('fat is left by the richest lot, caustic by the leanest', () => {
    expect(ends('freeFat')).toEqual(['0.000000000', '10.939548536', '33.041487546']);
    expect(ends('freeNaoh')).toEqual(['0.000000000', '0.000000000', '2.241347473']);
    expect(ends('glycerol')).toEqual(['94.985701809', '96.705952946', '96.705952946']);
    expect([extent.low, extent.high].map(({ percent }) => percent.toFixed(6))).toEqual(['95.279787', '100.000000']);
  });

  it('what does not vary has one figure', () => {
    expect(ends('water')).toEqual(['126.000000000', '126.000000000', '126.000000000']);
  });
});

describe('soapFromLye: published fats', () => {
  it.each([['coconut-oil'], ['beeswax'], ['rosin-ww'], ['stearic-acid-50'], ['shea-butter']])(
    '%s: likely lies within low and high, and the masses add up',
    (id) => {
      const made = soapFromLye({
        fats: [{ fat: fat(id), mass: { g: 500 } }],
        lye: [lye('naoh', 60, { solid: { hydroxide: { low: { percent: 97 }, high: { percent: 99 } } } })],
        water: { g: 120 },
      });
      const estimates = Object.values(made.products);
      for (const { low, likely, high } of estimates) {
        expect(low.g.lte(likely.g) && likely.g.lte(high.g)).toBe(true);
      }
      const total = estimates.reduce((sum, { likely }) => sum.plus(likely.g.toString()), new Exact(0));
      expect(deviation(total, 680).lte('1e-28')).toBe(true);
    },
  );
});

describe('soapFromLye: refusals', () => {
  const fats = [lot(200, 100)];
  const good = lye('naoh', 20, solid(98));
  it.each<[string, () => unknown, string, string]>([
    ['no lye', () => soapFromLye({ fats, lye: [] }), 'bad-shape', 'lye'],
    ['no lye at all', () => soapFromLye({ fats } as never), 'missing', 'lye'],
    ['lye of no mass', () => soapFromLye({ fats, lye: [lye('naoh', 0, solid(98))] }), 'out-of-range', 'lye'],
    ['five alkalis', () => soapFromLye({ fats, lye: [good, good, good, good, good] }), 'bad-shape', 'lye'],
    ['no fats', () => soapFromLye({ fats: [], lye: [good] }), 'bad-shape', 'fats'],
    ['fats of no mass', () => soapFromLye({ fats: [lot(200, 0)], lye: [good] }), 'out-of-range', 'fats'],
    ['an unknown option', () => soapFromLye({ fats, lye: [good], batchMass: { g: 1 } } as never), 'unknown-key', 'input.batchMass'],
    ['negative water', () => soapFromLye({ fats, lye: [good], water: { g: -1 } }), 'out-of-range', 'water.g'],
    ['an unknown alkali', () => soapFromLye({ fats, lye: [lye('lioh' as never, 1, solid(98))] }), 'bad-shape', 'lye[0].alkali'],
    ['nothing', () => soapFromLye(undefined as never), 'missing', 'input'],
  ])('%s', (_what, call, code, path) => {
    const refused = refusal(call);
    expect({ code: refused.code, path: refused.path }).toEqual({ code, path });
  }); // prettier-ignore

  it('but not four alkalis, nor one of no mass beside another', () => {
    const four = soapFromLye({ fats, lye: [good, good, good, good] });
    expect(four.given.lye).toHaveLength(4);
    const made = soapFromLye({ fats, lye: [lye('koh', 0, solid(90)), good] });
    expect(made.products).toEqual(soapFromLye({ fats, lye: [good] }).products);
  });

  it('unsaponifiable matter and moisture that leave no room for the acids', () => {
    const damp = lot(200, 100, { unsaponifiable: { percent: 60 }, moisture: { percent: '39.9' } });
    expect(refusal(() => soapFromLye({ fats: [damp], lye: [good] }))).toEqual({
      code: 'infeasible',
      path: 'A lot',
      message:
        'A lot: expected unsaponifiable matter and moisture that leave room for the fatty acids, received 99.90 g of 100.0 g',
    });
  });

  it('also where only the worst lot leaves none', () => {
    const range = { low: { percent: 0 }, likely: { percent: 1 }, high: { percent: 98 } };
    const damp = lot(300, 100, { unsaponifiable: range });
    expect(refusal(() => soapFromLye({ fats: [damp], lye: [good] })).code).toBe('infeasible');
  });
});
