/** What a charge becomes, under everything that may not matter, and over every lawful pot. */
import fc from 'fast-check';
import {
  fatFromBlend,
  planLye,
  soapFromLye,
  superfatFromLye,
  type FatKind,
  type LyeChargeInput,
  type SoapFromLyeResult,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { asInput, becomes, turnsAt, type Box, type BoxFat, type BoxLye, type Span, type Spot } from './pot.js';
import { deviation, Exact } from '../laws/exact.js';

type Figures = Readonly<Record<string, readonly [low: Exact, likely: Exact, high: Exact]>>;
const exact = (value: { toString(): string }): Exact => new Exact(value.toString());

/** All masses, moles and the extent of a result, as three figures each. */
const figuresOf = ({ products, soap, extent }: SoapFromLyeResult): Figures =>
  Object.fromEntries([
    ...Object.entries(products).map(([key, { low, likely, high }]) => [key, [low.g, likely.g, high.g].map(exact)]),
    ...Object.entries(soap).map(([key, { low, likely, high }]) => [key, [low.mol, likely.mol, high.mol].map(exact)]),
    ['extent', [extent.low, extent.likely, extent.high].map(({ percent }) => exact(percent))],
  ]) as Figures;

/** Two results are the same, the second times a factor, within 1e-26 of the batch. */
function expectSame(one: SoapFromLyeResult, other: SoapFromLyeResult, factor: number | string = 1): void {
  const [found, wanted] = [figuresOf(one), figuresOf(other)];
  const batch = exact(one.charge.g);
  for (const [key, values] of Object.entries(found)) {
    for (const [i, value] of values.entries()) {
      const scaled = (wanted[key]?.[i] ?? new Exact(NaN)).times(key === 'extent' ? 1 : factor);
      expect(value.minus(scaled).abs().div(batch).lte('1e-26'), `${key} ${String(i)}`).toBe(true);
    }
  }
}

// Boxes of pots: everything in whole tenths.
const tenth = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);
const span = (min: number, max: number, width: number): fc.Arbitrary<Span> =>
  fc.tuple(tenth(min, max), tenth(0, width)).map(([low, wide]) => [low, Math.round((low + wide) * 10) / 10]);

const VALUES: Readonly<Record<FatKind, fc.Arbitrary<Span>>> = {
  triglyceride: span(170, 255, 15),
  'free-fatty-acid': span(190, 215, 10),
  rosin: span(150, 175, 15),
  'wax-ester': span(80, 120, 20),
};

const boxFat = (kinds: readonly FatKind[], acidShares: readonly number[]): fc.Arbitrary<BoxFat> =>
  fc.constantFrom(...kinds).chain((kind) =>
    fc
      .record({
        kind: fc.constant(kind),
        grams: fc.integer({ min: 10, max: 500 }),
        value: VALUES[kind],
        acidShare: fc.constantFrom(...acidShares),
        unsaponifiable: fc.constantFrom<Span>([0, 0], [0, 1], [2, 4]),
        moisture: fc.constantFrom<Span>([0, 0], [0, 0.5]),
      })
      .map(({ acidShare, ...fat }) => ({ ...fat, acid: Math.round(fat.value[0] * acidShare * 10) / 10 })),
  );

type Store = 'solid' | 'solution' | 'with carbonate';
const STORES: Readonly<Record<Store, Readonly<Record<'naoh' | 'koh', fc.Arbitrary<Span>>>>> = {
  solid: { naoh: span(95, 99, 3), koh: span(83, 90, 5) },
  solution: { naoh: span(30, 50, 3), koh: span(30, 50, 3) },
  'with carbonate': { naoh: span(94, 97, 3), koh: span(84, 90, 4) },
};
const HYDROXIDE = { naoh: 39.997, koh: 56.105 } as const;

/** So much of an alkali that it brings a share of the hydroxide aimed at. */
const boxLye = (alkali: 'naoh' | 'koh', stores: readonly Store[], mol: number): fc.Arbitrary<BoxLye> =>
  fc.constantFrom(...stores).chain((store) =>
    fc
      .record({ total: STORES[store][alkali], carbonate: fc.constantFrom<Span>([0, 3], [1, 2], [2, 2]) })
      .map(({ total, carbonate }) => ({
        alkali,
        state: store === 'solution' ? ('solution' as const) : ('solid' as const),
        grams: Math.max(1, Math.round((mol * HYDROXIDE[alkali] * 2000) / (total[0] + total[1])) / 10),
        total,
        ...(store === 'with carbonate' ? { carbonate } : {}),
      })),
  );

const middle = ([low, high]: Span): number => (low + high) / 2;
const isAcid = ({ kind }: BoxFat): boolean => kind === 'free-fatty-acid' || kind === 'rosin';
/** Moles the fats take up, and of it what is free acid, in the middle of their lots. */
const demandOf = (fats: readonly BoxFat[]): readonly [all: number, free: number] => {
  const mol = (of: (fat: BoxFat) => number): number =>
    fats.reduce((sum, fat) => sum + (fat.grams * of(fat)) / 56105, 0);
  return [mol(({ value }) => middle(value)), mol((fat) => (isAcid(fat) ? middle(fat.value) : fat.acid))];
};

interface Family {
  readonly kinds: readonly FatKind[];
  readonly most: number;
  readonly acidShares: readonly number[];
  readonly stores: readonly Store[];
  readonly alkalis: readonly (readonly ('naoh' | 'koh')[])[];
  /** Hydroxide aimed at: share of the way from none to the free acid, and on from there to all. */
  readonly aims: readonly (readonly [ofFree: number, ofEsters: number])[];
}

const AROUND_DEMAND = [[1, 0.95], [1, 1], [1, 1.03], [1, 0.6], [1, 1.3]] as const; // prettier-ignore
const AROUND_ACID = [[1, 0], [0.98, 0], [0.9, 0], [0.6, 0], [1, 0.03]] as const; // prettier-ignore

const fatsOf = ({ kinds, most, acidShares }: Family): fc.Arbitrary<BoxFat[]> =>
  fc.array(boxFat(kinds, acidShares), { minLength: 1, maxLength: most });

const boxes = (family: Family, fatsOfIt: fc.Arbitrary<BoxFat[]> = fatsOf(family)): fc.Arbitrary<Box> => {
  const { stores, alkalis, aims } = family;
  return fatsOfIt.chain((fats) =>
    fc
      .record({ alkali: fc.constantFrom(...alkalis), aim: fc.constantFrom(...aims) })
      .chain(({ alkali, aim: [ofFree, ofEsters] }) => {
        const [all, free] = demandOf(fats);
        const aimed = free * ofFree + (all - free) * ofEsters;
        // fats without acid have no acid to be short of
        const mol = (aimed > 0 ? aimed : all) / alkali.length;
        return fc.tuple(...alkali.map((one) => boxLye(one, stores, mol)));
      })
      .map((lye) => ({ fats, lye, water: 100 })),
  );
};

const ONE_ALKALI = [['naoh'], ['koh']] as const;
const BOTH = [['naoh', 'koh']] as const;
const TWO_STORES = [
  ['naoh', 'naoh'],
  ['koh', 'koh'],
] as const;
const OILS: Family = {
  kinds: ['triglyceride'],
  most: 3,
  acidShares: [0, 0.01, 0.1, 0.8],
  stores: ['solid', 'solution', 'with carbonate'],
  alkalis: [...ONE_ALKALI, ...BOTH, ...TWO_STORES],
  aims: AROUND_DEMAND,
};
const OILS_AND_ACIDS: Family = {
  ...OILS,
  kinds: ['triglyceride', 'free-fatty-acid', 'rosin'],
  stores: ['solid', 'solution'],
  alkalis: [...ONE_ALKALI, ...BOTH],
};
const A_WAX: Family = { ...OILS, kinds: ['wax-ester'], most: 1, acidShares: [0, 0.2, 0.3, 0.6] };
const SHORT_OF_ACID: Family = { ...OILS_AND_ACIDS, aims: AROUND_ACID };

// A generator of our own for spots: fast-check would try to shrink hundreds of figures.
function randomOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Spots all over the box, every fat and every alkali by itself; the ends are tried more often. */
function spotsOf({ fats, lye }: Box, count: number, seed: number): readonly Spot[] {
  const random = randomOf(seed);
  return Array.from({ length: count }, () =>
    Array.from({ length: 3 * fats.length + 2 * lye.length }, () => {
      const draw = random();
      return draw < 0.3 ? 0 : draw < 0.6 ? 1 : random();
    }),
  );
}

/**
 * Spots where extremes may stand: corners at which fats of a kind keep together, and places between two such corners
 * where the reaction turns or, for a wax, where a mass is level.
 */
function likelySpots(box: Box): readonly Spot[] {
  const { fats, lye } = box;
  const places = (of: (fat: BoxFat) => boolean, offset: number): number[] =>
    fats.flatMap((fat, i) => (of(fat) ? [3 * i + offset] : []));
  const groups = [
    places(({ kind }) => kind === 'triglyceride', 0),
    places(isAcid, 0),
    ...places(({ kind }) => kind === 'wax-ester', 0).map((one) => [one]),
    places(() => true, 1),
    places(() => true, 2),
    ...lye.flatMap((one, i) => [
      [3 * fats.length + 2 * i],
      ...(one.carbonate === undefined ? [] : [[3 * fats.length + 2 * i + 1]]),
    ]),
  ].filter((group) => group.length > 0);
  const start: Spot = Array.from({ length: 3 * fats.length + 2 * lye.length }, () => 0);
  const moved = (spot: Spot, group: readonly number[], to: number): Spot =>
    spot.map((value, i) => (group.includes(i) ? to : value));
  const corners = groups.reduce<readonly Spot[]>(
    (spots, group) => spots.flatMap((spot) => [spot, moved(spot, group, 1)]),
    [start],
  );
  const edges = groups.flatMap((group) =>
    corners.filter((corner) => corner[group[0] ?? 0] === 0).map((corner) => ({ corner, group })),
  );
  return [
    ...corners,
    ...edges.flatMap(({ corner, group }) =>
      [0, 1, 2].flatMap((turn) => {
        const value = (to: number): number => turnsAt(box, moved(corner, group, to))[turn] ?? 0;
        const [low, high] = [value(0), value(1)];
        return low * high < 0 ? [moved(corner, group, low / (low - high))] : [];
      }),
    ),
    ...edges
      .filter(({ group: [first = 0] }) => first % 3 === 0 && fats[first / 3]?.kind === 'wax-ester')
      .flatMap(({ corner, group }) => levelSpots(box, (to) => moved(corner, group, to))),
  ];
}

/** Where a mass has its least or greatest between two corners, by sections. */
function levelSpots(box: Box, along: (to: number) => Spot): readonly Spot[] {
  return ['soapSodium', 'soapPotassium', 'unsaponifiable'].flatMap((product) =>
    [1, -1].map((sign) => {
      const value = (to: number): number => sign * (becomes(box, along(to))[product] ?? 0);
      let [low, high] = [0, 1];
      for (let i = 0; i < 60; i += 1) {
        const [one, two] = [low + (high - low) / 3, high - (high - low) / 3];
        if (value(one) < value(two)) low = one;
        else high = two;
      }
      return along((low + high) / 2);
    }),
  );
}

/** No pot leaves the bounds, and each bound is reached by one. Returns what fails, in words. */
function faultsOf(box: Box, seed: number): readonly string[] {
  const { products, charge } = soapFromLye(asInput(box));
  const random = spotsOf(box, 200, seed).map((spot) => ({ spot, made: becomes(box, spot) }));
  const chosen = likelySpots(box).map((spot) => ({ spot, made: becomes(box, spot) }));
  return Object.entries(products).flatMap(([product, { low, high }]) => {
    const [least, most] = [Number(low.g), Number(high.g)];
    // 1e-9 of the figure, and for one near nothing what floating point makes of the batch
    const near = 1e-9 * Math.max(Math.abs(least), Math.abs(most)) + 1e-12 * Number(charge.g);
    const of = ({ made }: { made: Readonly<Record<string, number>> }): number => made[product] ?? NaN;
    const left = [...random, ...chosen].filter((pot) => !(of(pot) >= least - near && of(pot) <= most + near));
    const reached = (bound: number): boolean => chosen.some((pot) => Math.abs(of(pot) - bound) <= near);
    return [
      ...left
        .slice(0, 1)
        .map(
          (pot) => `${product} ${String(of(pot))} leaves ${String(least)} to ${String(most)} at ${pot.spot.join(' ')}`,
        ),
      ...(reached(least) ? [] : [`${product} low ${String(least)} is reached by none`]),
      ...(reached(most) ? [] : [`${product} high ${String(most)} is reached by none`]),
    ];
  });
}

const expectBounds = (family: Family, numRuns: number, fats?: fc.Arbitrary<BoxFat[]>): void => {
  fc.assert(
    fc.property(boxes(family, fats), fc.integer({ min: 1, max: 1e9 }), (box, seed) => {
      expect(faultsOf(box, seed)).toEqual([]);
    }),
    { numRuns },
  );
};

describe('bounds of soapFromLye: no lawful pot leaves them, and some pot reaches each', () => {
  it('the model of the test and the library agree in the middle', () => {
    fc.assert(
      fc.property(
        boxes({ ...OILS_AND_ACIDS, kinds: ['triglyceride', 'free-fatty-acid', 'rosin', 'wax-ester'] }),
        (box) => {
          const { products, charge } = soapFromLye(asInput(box));
          const made = becomes(
            box,
            Array.from({ length: 3 * box.fats.length + 2 * box.lye.length }, () => 0.5),
          );
          for (const [product, { likely }] of Object.entries(products)) {
            expect(Math.abs((made[product] ?? NaN) - Number(likely.g)), product).toBeLessThan(1e-12 * Number(charge.g));
          }
        },
      ),
      { numRuns: 100 },
    );
  });

  it('oils, one or two alkalis, superfat, excess and between', () => {
    expectBounds(OILS, 60);
  });

  it('oils, acids and rosin together', () => {
    expectBounds(OILS_AND_ACIDS, 60);
  });

  it('alkali about as much as the acid that is free', () => {
    expectBounds(SHORT_OF_ACID, 40);
  });
});

describe('bounds of soapFromLye: where masses turn in other places', () => {
  // A = a and A + 2C = a: hydroxide and carbonate against free acid
  it('acid takes carbonate as well', () => {
    expectBounds({ ...SHORT_OF_ACID, stores: ['solid', 'solution', 'with carbonate'] }, 60);
  });

  // more hydroxide in the solution is less water, more in the solid is more, because acid makes it
  it('a solid and a solution of one alkali, each with its own assay', () => {
    expectBounds({ ...SHORT_OF_ACID, alkalis: TWO_STORES }, 60);
  });

  // more ester is less free acid and more alcohol
  it('a wax that holds free acid', () => {
    expectBounds(A_WAX, 40);
  });

  // richer in wax is more alcohol, but less alkali to set it free
  it('a wax among oils', () => {
    const fats = fc
      .tuple(fatsOf(A_WAX), fatsOf({ ...OILS_AND_ACIDS, most: 2 }))
      .map(([wax, others]) => [...wax, ...others]);
    expectBounds({ ...OILS, stores: ['solid', 'solution'] }, 25, fats);
  });
});

describe('soapFromLye: what may not matter', () => {
  const anyBox = boxes({ ...OILS_AND_ACIDS, kinds: ['triglyceride', 'free-fatty-acid', 'rosin', 'wax-ester'] });
  const made = (box: Box): SoapFromLyeResult => soapFromLye(asInput(box));

  it('twice of everything makes twice of everything', () => {
    fc.assert(
      fc.property(anyBox, fc.constantFrom(2, 0.5, 1024), (box, factor) => {
        const scaled = {
          fats: box.fats.map((fat) => ({ ...fat, grams: fat.grams * factor })),
          lye: box.lye.map((one) => ({ ...one, grams: one.grams * factor })),
          water: box.water * factor,
        };
        expectSame(made(scaled), made(box), factor);
      }),
      { numRuns: 30 },
    );
  });

  it('the order of fats and of alkalis', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        const turned = { fats: [...box.fats].reverse(), lye: [...box.lye].reverse(), water: box.water };
        expectSame(made(turned), made(box));
      }),
      { numRuns: 40 },
    );
  });

  it('whether fats are blended first or charged apart', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        const { fats, lye, water = { g: 0 } } = asInput(box);
        const total = box.fats.reduce((sum, { grams }) => sum + grams, 0);
        const blend = fatFromBlend({ name: 'Stock', parts: fats });
        expectSame(
          soapFromLye({ fats: [{ fat: blend, mass: { g: total } }], lye, water }),
          soapFromLye({ fats, lye, water }),
        );
      }),
      { numRuns: 30 },
    );
  });

  it('whether one fat is charged in one portion or in two', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        const halves = box.fats.flatMap((fat) => [
          { ...fat, grams: fat.grams / 2 },
          { ...fat, grams: fat.grams / 2 },
        ]);
        // the two halves of a wax are two waxes to the bounds, which may then differ: only the likely pot is compared
        const [one, other] = [made({ ...box, fats: halves }), made(box)];
        for (const [product, { likely }] of Object.entries(one.products)) {
          const off = exact(likely.g).minus(exact(other.products[product as keyof typeof other.products].likely.g));
          expect(off.abs().div(exact(one.charge.g)).lte('1e-26'), product).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('whether potash is a solid, or the lye made of it', () => {
    // of what a solid potash holds besides hydroxide all is water, so the two are one: 90 % and a third of its mass in water
    fc.assert(
      fc.property(anyBox, fc.integer({ min: 1, max: 900 }), (box, g) => {
        const { fats } = asInput(box);
        const solid: LyeChargeInput = { alkali: 'koh', mass: { g }, solid: { hydroxide: { percent: 90 } } };
        const dissolved: LyeChargeInput = {
          alkali: 'koh',
          mass: { g: 2 * g },
          solution: { hydroxide: { percent: 45 } },
        };
        expectSame(soapFromLye({ fats, lye: [solid], water: { g } }), soapFromLye({ fats, lye: [dissolved] }));
      }),
      { numRuns: 30 },
    );
  });

  it('whether pure soda is a solid, or the lye made of it', () => {
    fc.assert(
      fc.property(anyBox, fc.integer({ min: 1, max: 900 }), (box, g) => {
        const { fats } = asInput(box);
        const solid: LyeChargeInput = { alkali: 'naoh', mass: { g }, solid: { hydroxide: { percent: 100 } } };
        const dissolved: LyeChargeInput = {
          alkali: 'naoh',
          mass: { g: 2 * g },
          solution: { hydroxide: { percent: 50 } },
        };
        expectSame(soapFromLye({ fats, lye: [solid], water: { g } }), soapFromLye({ fats, lye: [dissolved] }));
      }),
      { numRuns: 30 },
    );
  });

  it('whether water is in the lye or beside it', () => {
    fc.assert(
      fc.property(anyBox, fc.integer({ min: 0, max: 500 }), (box, g) => {
        const [dry, wet] = [made({ ...box, water: 0 }), made({ ...box, water: g })];
        expect(
          exact(wet.products.water.likely.g).minus(exact(dry.products.water.likely.g)).minus(g).abs().lte('1e-24'),
        ).toBe(true);
        expectSame({ ...wet, products: { ...wet.products, water: dry.products.water } }, dry);
      }),
      { numRuns: 30 },
    );
  });

  it('and the masses add up to the charge, within 1e-28 of it', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        const { products, charge } = made(box);
        const total = Object.values(products).reduce((sum, { likely }) => sum.plus(exact(likely.g)), new Exact(0));
        expect(total.minus(exact(charge.g)).abs().div(exact(charge.g)).lte('1e-28')).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a plan and what it makes', () => {
  const oils = boxes({ ...OILS_AND_ACIDS, kinds: ['triglyceride', 'free-fatty-acid', 'rosin', 'wax-ester'] });

  it('unrounded, it gives its superfat back', () => {
    fc.assert(
      fc.property(oils, fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 999 }), (box, tenths, share) => {
        const { fats } = asInput(box);
        const superfat = `${String(tenths)}e-1`;
        const [naoh, koh] = [{ solid: { hydroxide: { percent: 98 } } }, { solution: { hydroxide: { percent: 45 } } }];
        const { weigh } = planLye({
          fats,
          alkali: { naoh, koh, kohShare: { percent: `${String(share)}e-1` } },
          target: { superfat: { percent: superfat } },
          dilution: { waterPerAlkali: 1 },
        });
        const charge = {
          fats,
          lye: [
            { alkali: 'naoh' as const, mass: weigh.naoh, ...naoh },
            { alkali: 'koh' as const, mass: weigh.koh, ...koh },
          ],
          water: weigh.water,
        };
        const made = soapFromLye(charge);
        for (const found of [made.superfat, superfatFromLye(charge).superfat]) {
          expect(deviation(found.likely.percent.toString(), superfat).lte('1e-25')).toBe(true);
        }
        // and sodium and potassium are in the soap as they were asked for
        const { sodium, potassium } = made.soap;
        const both = exact(sodium.likely.mol).plus(exact(potassium.likely.mol));
        expect(exact(potassium.likely.mol).div(both).minus(new Exact(share).div(1000)).abs().lte('1e-28')).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
