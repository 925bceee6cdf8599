import { fatFromCertificate, type FatKind, type SingleFat } from 'laurate';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FatCharge } from '../../src/fats/index.js';
import { readLyeCharge, type LyeCharge } from '../../src/lye/index.js';
import { Decimal } from '../../src/numbers/index.js';
import { fatSumsAt } from '../../src/saponification/fatSums.js';
import { lyeSumsAt } from '../../src/saponification/lyeSums.js';
import { carbonateOf, totalAlkaliOf, type Dimension, type Place } from '../../src/saponification/place.js';
import { PRODUCTS, reaction, type Products } from '../../src/saponification/reaction.js';
import { Exact, GLYCERYL, KOH, NAOH } from '../laws/exact.js';

const ZERO = new Decimal(0);
const decimal = (value: number | string): Decimal => new Decimal(value);

describe('reaction: worked by hand', () => {
  const nothing = { mol: ZERO, grams: ZERO };
  const fats = {
    free: nothing,
    triglyceride: nothing,
    wax: nothing,
    waxAlcohol: ZERO,
    unsaponifiable: ZERO,
    moisture: ZERO,
  };
  const none = { hydroxide: ZERO, carbonate: ZERO };
  const lye = { naoh: none, koh: none, water: ZERO, other: ZERO };
  const acid = (mol: number, grams: number) => ({ mol: decimal(mol), grams: decimal(grams) });
  const text = ({ grams }: Products): Record<string, string> =>
    Object.fromEntries(
      PRODUCTS.filter((product) => !grams[product].isZero()).map((product) => [
        product,
        grams[product].toDecimalPlaces(25).toString(),
      ]),
    );

  it('each kind of acid is taken in its turn: free, then bound', () => {
    const mixed = {
      ...fats,
      free: acid(1, 300),
      triglyceride: acid(2, 500),
      wax: acid(1, 400),
      waxAlcohol: decimal('386.017'),
    };
    const made = reaction(mixed, { ...lye, naoh: { hydroxide: decimal('2.5'), carbonate: ZERO } });
    expect(made.extent.toString()).toBe('0.5');
    expect(made.turning.map(String)).toEqual(['-1.5', '1.5', '1.5']);
    expect(text(made)).toEqual({
      soapSodium: '804.955', // 300 + 250 + 200 g of acid, 2.5 * 21.982
      glycerol: '30.698', // 2 * 0.5 / 3 * 92.094
      water: '18.015',
      freeFat: '646.684', // half of 500 + 2 * 12.683, and of 400 + 386.017 - 18.015
      unsaponifiable: '193.0085', // half of the alcohol
    });
  });

  it('nothing charged of a kind leaves nothing of it', () => {
    const made = reaction(
      { ...fats, triglyceride: acid(3, 600) },
      { ...lye, koh: { hydroxide: decimal(3), carbonate: ZERO } },
    );
    expect(made.soapMol.sodium.isZero()).toBe(true);
    expect(made.soapMol.potassium.toString()).toBe('3');
    expect(text(made)).toEqual({ soapPotassium: '714.27', glycerol: '92.094' });
  });

  it('alkali that just meets the demand leaves neither', () => {
    const made = reaction(
      { ...fats, free: acid(1, 300), triglyceride: acid(2, 500) },
      { ...lye, naoh: { hydroxide: decimal(3), carbonate: decimal(1) } },
    );
    expect(made.turning.map(String)).toEqual(['0', '2', '4']);
    expect(made.extent.toString()).toBe('1');
    expect(text(made)).toEqual({
      soapSodium: '865.946',
      glycerol: '61.396',
      water: '18.015',
      sodiumCarbonate: '105.988',
    });
  });

  it('no alkali: all stays as it was', () => {
    const made = reaction({ ...fats, free: acid(1, 300), triglyceride: acid(2, 500) }, { ...lye, water: decimal(9) });
    expect([made.extent, made.soapMol.sodium, made.soapMol.potassium].map(String)).toEqual(['0', '0', '0']);
    expect(made.turning.map(String)).toEqual(['-3', '-1', '-1']);
    expect(text(made)).toEqual({ water: '9', freeFat: '525.366', freeAcid: '300' }); // 500 + 2 * 12.683
  });

  it('no hydroxide: carbonate alone takes the acid and splits no fat', () => {
    const made = reaction(
      { ...fats, free: acid(1, 300), triglyceride: acid(2, 500) },
      { ...lye, koh: { hydroxide: ZERO, carbonate: decimal('0.25') } },
    );
    expect(text(made)).toEqual({
      soapPotassium: '169.045', // half a mole
      water: '4.50375',
      freeFat: '525.366',
      freeAcid: '150',
      carbonDioxide: '11.00225',
    });
  });

  it('moisture, matter that is no fat, water and the rest pass through', () => {
    const made = reaction(
      { ...fats, triglyceride: acid(3, 600), unsaponifiable: decimal(7), moisture: decimal(5) },
      { naoh: { hydroxide: decimal(3), carbonate: ZERO }, koh: none, water: decimal(100), other: decimal(2) },
    );
    expect(text(made)).toMatchObject({ unsaponifiable: '7', water: '105', other: '2' });
  });
});

const KINDS = ['triglyceride', 'free-fatty-acid', 'wax-ester', 'rosin'] as const;
const tenth = (min: number, max: number): fc.Arbitrary<string> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => `${String(tenths)}e-1`);

const fatCharge: fc.Arbitrary<FatCharge<SingleFat>> = fc
  .record({
    kind: fc.constantFrom<FatKind>(...KINDS),
    grams: fc.integer({ min: 1, max: 2000 }),
    low: fc.integer({ min: 80, max: 260 }),
    width: fc.integer({ min: 0, max: 20 }),
    acidShare: fc.constantFrom(0, 0, 0.05, 0.6),
    unsaponifiable: tenth(0, 8),
    moisture: tenth(0, 3),
  })
  .map(({ kind, grams, low, width, acidShare, unsaponifiable, moisture }) => ({
    fat: fatFromCertificate({
      name: 'A lot',
      kind,
      saponificationValue: { low: { mgKohPerG: low }, high: { mgKohPerG: low + width } },
      ...(kind === 'triglyceride' || kind === 'wax-ester'
        ? { acidValue: { mgKohPerG: Math.floor(low * acidShare) } }
        : {}),
      unsaponifiable: { low: { percent: 0 }, high: { percent: unsaponifiable } },
      moisture: { low: { percent: 0 }, high: { percent: moisture } },
    }),
    grams: decimal(grams),
  }));

const lyeCharge: fc.Arbitrary<LyeCharge> = fc
  .record({
    alkali: fc.constantFrom('naoh', 'koh'),
    g: fc.integer({ min: 1, max: 800 }),
    source: fc.constantFrom(
      { solid: { hydroxide: { low: { percent: 88 }, high: { percent: 101 } } } },
      { solution: { hydroxide: { low: { percent: 30 }, high: { percent: 33 } } } },
      {
        solid: {
          totalAlkali: { low: { percent: 85 }, high: { percent: 99 } },
          carbonate: { low: { percent: 0 }, high: { percent: 40 } },
        },
      },
    ),
  })
  .map(({ alkali, g, source }) => readLyeCharge('lye', { alkali, mass: { g }, ...source }));

const DIMENSIONS: readonly Dimension[] = [
  'triglycerides',
  'waxes',
  'acids',
  'unsaponifiable',
  'moisture',
  ...[0, 1, 2].flatMap((at): Dimension[] => [totalAlkaliOf(at), carbonateOf(at)]),
];
const place: fc.Arbitrary<Place> = fc
  .array(fc.constantFrom('0', '1', '0.25', '0.7134'), { minLength: DIMENSIONS.length, maxLength: DIMENSIONS.length })
  .map((shares) => new Map(DIMENSIONS.map((dimension, i) => [dimension, decimal(shares[i] ?? 0)])));

const exact = (value: Decimal): Exact => new Exact(value.toString());
const sum = (parts: readonly Exact[]): Exact => parts.reduce((total, part) => total.plus(part), new Exact(0));
const between = (low: Decimal, high: Decimal, share: Decimal): Exact =>
  exact(low).plus(exact(high).minus(exact(low)).times(exact(share)));

/** What is charged, in 60 digits, straight from the certificates and assays at a place: the pot never comes into it. */
function charged(fats: readonly FatCharge<SingleFat>[], lye: readonly LyeCharge[], where: Exclude<Place, 'likely'>) {
  const far = (dimension: Dimension): Decimal => where.get(dimension) ?? ZERO;
  const parts = fats.map(({ fat, grams: weight }) => {
    const lots = fat.kind === 'triglyceride' ? 'triglycerides' : fat.kind === 'wax-ester' ? 'waxes' : 'acids';
    const { low, high } = fat.saponificationValue;
    const grams = exact(weight);
    const acids = grams.times(between(low.mgKohPerG, high.mgKohPerG, far(lots))).div(KOH.times(1000));
    const free = lots === 'acids' ? acids : grams.times(exact(fat.acidValue.mgKohPerG)).div(KOH.times(1000));
    const bound = acids.minus(free);
    const share = ({ low: least, high: most }: SingleFat['moisture'], at: Decimal): Exact =>
      grams.times(between(least.percent, most.percent, at)).div(100);
    const unsaponifiable = share(fat.unsaponifiable, far('unsaponifiable'));
    const rest = grams.minus(unsaponifiable).minus(share(fat.moisture, far('moisture')));
    // grams of all its acid, free and bound: less the glyceryl, or half of a wax
    const acidGrams = lots === 'waxes' ? rest.div(2) : rest.minus(lots === 'acids' ? 0 : bound.times(GLYCERYL).div(3));
    return { lots, acids, bound, acidGrams, unsaponifiable };
  });
  const alkalis = lye.map(({ alkali, grams, source }, at) => {
    const salt = source.carbonate;
    const [hydroxideMass, carbonateMass] =
      alkali === 'naoh' ? [NAOH, new Exact('105.988')] : [KOH, new Exact('138.204')];
    const carbonate =
      salt === undefined ? new Exact(0) : between(salt.low, salt.high, far(carbonateOf(at))).div(carbonateMass);
    const total = between(source.totalAlkali.low, source.totalAlkali.high, far(totalAlkaliOf(at))).div(hydroxideMass);
    return {
      alkali,
      carbonate: carbonate.times(exact(grams)),
      hydroxide: total.minus(carbonate.times(2)).times(exact(grams)),
    };
  });
  return { parts, alkalis };
}

describe('reaction: laws, at every pot', () => {
  const WATER = decimal(100);
  const pots = fc.record({
    fats: fc.array(fatCharge, { minLength: 1, maxLength: 4 }),
    lye: fc.array(lyeCharge, { minLength: 1, maxLength: 3 }),
    where: place,
  });

  it('mass, sodium, potassium, hydroxide, fatty acid and glyceryl are conserved within 1e-28 of the batch', () => {
    fc.assert(
      fc.property(pots, ({ fats, lye, where }) => {
        if (where === 'likely') throw new Error('a place in the box was wanted');
        const made = reaction(fatSumsAt(fats, where), lyeSumsAt(lye, WATER, where));
        const g = (product: (typeof PRODUCTS)[number]): Exact => exact(made.grams[product]);
        const { parts, alkalis } = charged(fats, lye, where);
        const batch = sum([
          ...fats.map(({ grams }) => exact(grams)),
          ...lye.map(({ grams }) => exact(grams)),
          exact(WATER),
        ]);
        const same = (what: string, found: Exact, wanted: Exact): void => {
          const off = found.minus(wanted).abs().div(batch);
          expect(off.lte('1e-28'), `${what}: ${found.toString()} for ${wanted.toString()}`).toBe(true);
        };
        const of = (alkali: 'naoh' | 'koh', what: 'hydroxide' | 'carbonate'): Exact =>
          sum(alkalis.filter((one) => one.alkali === alkali).map((one) => one[what]));
        const [sodium, potassium] = [exact(made.soapMol.sodium), exact(made.soapMol.potassium)];
        const gas = g('carbonDioxide').div('44.009');
        const [causticSoda, causticPotash] = [g('freeNaoh').div(NAOH), g('freeKoh').div(KOH)];

        same('mass', sum(PRODUCTS.map(g)), batch);
        same(
          'sodium',
          sodium.plus(causticSoda).plus(g('sodiumCarbonate').div('105.988').times(2)),
          of('naoh', 'hydroxide').plus(of('naoh', 'carbonate').times(2)),
        );
        same(
          'potassium',
          potassium.plus(causticPotash).plus(g('potassiumCarbonate').div('138.204').times(2)),
          of('koh', 'hydroxide').plus(of('koh', 'carbonate').times(2)),
        );
        same(
          'hydroxide',
          sodium.plus(potassium).minus(gas.times(2)).plus(causticSoda).plus(causticPotash),
          of('naoh', 'hydroxide').plus(of('koh', 'hydroxide')),
        );

        // acid left in fat: what is bound, less what was split; its grams are those of the fat less glyceryl and alcohol
        const left = new Exact(1).minus(exact(made.extent));
        const ofKind = (kind: string) => parts.filter(({ lots }) => lots === kind);
        // the other half of a wax, with the water that splitting takes up
        const alcohol = ofKind('waxes').map(({ bound, acidGrams }) => acidGrams.plus(bound.times('18.015')));
        const glyceryl = sum(ofKind('triglycerides').map(({ bound }) => bound)).div(3);
        const inFat = g('freeFat')
          .minus(left.times(glyceryl).times(GLYCERYL))
          .minus(left.times(sum(alcohol).minus(sum(ofKind('waxes').map(({ bound }) => bound)).times('18.015'))));
        same(
          'fatty acid, grams',
          g('soapSodium')
            .minus(sodium.times('21.982'))
            .plus(g('soapPotassium').minus(potassium.times('38.09')))
            .plus(g('freeAcid'))
            .plus(inFat),
          sum(parts.map(({ acidGrams }) => acidGrams)),
        );
        same('glycerol', g('glycerol').div('92.094').plus(left.times(glyceryl)), glyceryl);
        same(
          'alcohols and other unsaponifiable matter',
          g('unsaponifiable').plus(left.times(sum(alcohol))),
          sum([...alcohol, ...parts.map(({ unsaponifiable }) => unsaponifiable)]),
        );
        for (const product of PRODUCTS) {
          // only the rest of an assay over 100 % is below nothing, and potash of that kind takes it off the water
          if (product !== 'other') expect(g(product).gte(batch.times('-1e-30')), product).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('fatty acid is conserved in moles as well', () => {
    fc.assert(
      fc.property(pots, ({ fats, lye, where }) => {
        if (where === 'likely') throw new Error('a place in the box was wanted');
        const sums = fatSumsAt(fats, where);
        const made = reaction(sums, lyeSumsAt(lye, WATER, where));
        const { parts } = charged(fats, lye, where);
        const bound = sum(parts.map((part) => part.bound));
        const left = new Exact(1).minus(exact(made.extent)).times(bound);
        const free = sums.free.grams.isZero()
          ? new Exact(0)
          : exact(made.grams.freeAcid).div(exact(sums.free.grams)).times(exact(sums.free.mol));
        const found = exact(made.soapMol.sodium).plus(exact(made.soapMol.potassium)).plus(left).plus(free);
        const wanted = sum(parts.map(({ acids }) => acids));
        expect(found.minus(wanted).abs().div(wanted).lte('1e-28')).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
