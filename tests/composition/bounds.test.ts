/**
 * Low and high of a composition over all lots, assays and splits of a loss: tried against a model that shares no code with
 * the library, in floating point, every fat and every addition by itself.
 */
import fc from 'fast-check';
import { compositionFrom, ratiosOf, soapFromLye, totalFattyMatterOf, type AdditionInput } from 'laurate';
import { describe, expect, it } from 'vitest';
import { asInput, becomes, type Box, type Span, type Spot } from '../saponification/pot.js';

interface BoxAddition {
  readonly solvent: 'ethanol' | '2-propanol' | 'glycerol' | 'sorbitol' | 'sucrose';
  readonly grams: number;
  readonly assay: Span;
}
interface Pot {
  readonly box: Box;
  readonly additions: readonly BoxAddition[];
  /** Grams gone, and the split where it is stated. */
  readonly gone: number;
  readonly split: Span | undefined;
}

const COMPONENT = {
  ethanol: 'ethanol',
  '2-propanol': 'isopropanol',
  glycerol: 'glycerol',
  sorbitol: 'sorbitol',
  sucrose: 'sucrose',
} as const;
const within = ([low, high]: Span, at: number): number => low + (high - low) * at;
/** Floating point is good for it. */
const CLOSE = 1e-9;

/** Masses and ratios at a spot: first the spot of the box, then each assay, then how much of the loss is spirit. */
function figuresAt({ box, additions, gone, split }: Pot, spot: Spot): Readonly<Record<string, number>> {
  const made = becomes(box, spot);
  const of = (name: string): number => made[name] ?? 0;
  const first = 3 * box.fats.length + 2 * box.lye.length;
  const masses: Record<string, number> = {
    soapSodium: of('soapSodium'),
    soapPotassium: of('soapPotassium'),
    freeFat: of('freeFat'),
    freeAcid: of('freeAcid'),
    freeCaustic: of('freeNaoh') + of('freeKoh'),
    carbonate: of('sodiumCarbonate') + of('potassiumCarbonate'),
    unsaponifiable: of('unsaponifiable'),
    glycerol: of('glycerol'),
    other: of('other'),
    water: of('water'),
    ethanol: 0,
    isopropanol: 0,
    sorbitol: 0,
    sucrose: 0,
  };
  const add = (name: string, grams: number): void => {
    masses[name] = (masses[name] ?? 0) + grams;
  };
  additions.forEach(({ solvent, grams, assay }, i) => {
    const pure = (grams * within(assay, spot[first + i] ?? 0)) / 100;
    add(COMPONENT[solvent], pure);
    add('water', grams - pure);
  });
  const sum = (...names: string[]): number => names.reduce((total, name) => total + (masses[name] ?? 0), 0);
  const spirit = sum('ethanol', 'isopropanol');
  const [least, most] = [Math.max(0, gone - sum('water')), Math.min(gone, spirit)];
  const last = spot[first + additions.length] ?? 0;
  const spiritGone =
    split === undefined
      ? within([least, most], last)
      : Math.min(most, Math.max(least, (gone * within(split, last)) / 100));
  add('water', spiritGone - gone);
  for (const name of ['ethanol', 'isopropanol'])
    masses[name] = (masses[name] ?? 0) * (spirit === 0 ? 1 : 1 - spiritGone / spirit);

  const all = sum(...Object.keys(masses));
  const soap = sum('soapSodium', 'soapPotassium');
  const polyol = sum('glycerol', 'sorbitol');
  const clearing = polyol + sum('sucrose', 'ethanol', 'isopropanol');
  return {
    ...masses,
    ...Object.fromEntries(Object.entries(masses).map(([name, grams]) => [`share of ${name}`, (grams * 100) / all])),
    polyolPerSoap: polyol / soap,
    clearingAgentsPerSoap: clearing / soap,
    waterPerSoap: sum('water') / soap,
    polyolPerWater: polyol / sum('water'),
    spiritPerSoap: sum('ethanol', 'isopropanol') / soap,
  };
}

/** The bounds that the library gives for the same. */
function boundsOf({ box, additions, gone, split }: Pot): Readonly<Record<string, Span>> {
  const range = ([low, high]: Span) => ({ low: { percent: low }, high: { percent: high } });
  const composition = compositionFrom({
    soap: soapFromLye(asInput(box)),
    additions: additions.map(({ solvent, grams, assay }): AdditionInput => ({
      solvent,
      mass: { g: grams },
      assay: range(assay),
    })),
    evaporated: { g: gone },
    ...(split === undefined ? {} : { spiritShareOfLoss: range(split) }),
  });
  const ratios = ratiosOf(composition);
  const names = ['polyolPerSoap', 'clearingAgentsPerSoap', 'waterPerSoap', 'polyolPerWater', 'spiritPerSoap'] as const;
  return Object.fromEntries([
    ...Object.entries(composition.components).flatMap(([name, { mass, share }]): [string, Span][] => [
      [name, [mass.low.g.toNumber(), mass.high.g.toNumber()]],
      [`share of ${name}`, [share.low.percent.toNumber(), share.high.percent.toNumber()]],
    ]),
    ...names.flatMap((name): [string, Span][] => {
      const found = ratios[name];
      return found === undefined
        ? []
        : [[name, [found.low.partsPerPart.toNumber(), found.high.partsPerPart.toNumber()]]];
    }),
  ]);
}

const lots: fc.Arbitrary<Span> = fc.constantFrom<Span>([190, 198], [248, 265], [193, 193]);
const box: fc.Arbitrary<Box> = fc.record({
  fats: fc.array(
    fc.record({
      kind: fc.constantFrom('triglyceride' as const, 'triglyceride' as const, 'free-fatty-acid' as const),
      grams: fc.integer({ min: 50, max: 500 }),
      value: lots,
      acid: fc.constantFrom(0, 4),
      unsaponifiable: fc.constantFrom<Span>([0, 0], [0, 1]),
      moisture: fc.constant<Span>([0, 0]),
    }),
    { minLength: 1, maxLength: 2 },
  ),
  lye: fc
    .record({
      alkali: fc.constantFrom('naoh' as const, 'koh' as const),
      state: fc.constant('solution' as const),
      grams: fc.integer({ min: 60, max: 400 }),
      total: fc.constantFrom<Span>([33, 33], [48, 50]),
    })
    .map((one) => [one]),
  water: fc.constant(50),
});
const pots: fc.Arbitrary<Pot> = fc.record({
  box,
  additions: fc.uniqueArray(
    fc.record({
      solvent: fc.constantFrom('ethanol', '2-propanol', 'glycerol', 'sorbitol', 'sucrose'),
      grams: fc.integer({ min: 1, max: 300 }),
      assay: fc.constantFrom<Span>([90, 96], [68, 72], [99, 99]),
    }),
    { maxLength: 3, selector: ({ solvent }) => solvent },
  ),
  gone: fc.integer({ min: 0, max: 60 }),
  split: fc.constant(undefined),
});

/** How far a value lies outside its bounds, relative to them. */
const beyond = (value: number, [low, high]: Span): number =>
  Math.max(low - value, value - high) / Math.max(1, Math.abs(low), Math.abs(high));

describe('bounds of a composition', () => {
  it('no lot, assay or split leaves them', () => {
    fc.assert(
      fc.property(
        pots,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 20, maxLength: 20 }),
        (pot, spot) => {
          const bounds = boundsOf(pot);
          const ends = spot.map((at) => (at < 0.35 ? 0 : at > 0.65 ? 1 : at));
          for (const place of [spot, ends, ends.map((at) => 1 - at)]) {
            const outside = Object.entries(figuresAt(pot, place)).filter(([name, value]) => {
              const found = bounds[name];
              // a pot that may be dry has no ratio to water
              if (found === undefined) return name !== 'polyolPerWater' || (bounds['water']?.[0] ?? 1) > 0;
              return beyond(value, found) > CLOSE;
            });
            expect(outside).toEqual([]);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('and each is reached, where all that is of a kind moves together', () => {
    const one: Pot = {
      box: {
        fats: [
          { kind: 'triglyceride', grams: 500, value: [190, 198], acid: 2, unsaponifiable: [0, 1], moisture: [0, 0] },
        ],
        lye: [{ alkali: 'naoh', state: 'solution', grams: 130, total: [48, 50] }],
        water: 50,
      },
      additions: [
        { solvent: 'ethanol', grams: 100, assay: [90, 96] },
        { solvent: 'sorbitol', grams: 200, assay: [68, 72] },
      ],
      gone: 40,
      split: [20, 70],
    };
    const count = 3 + 2 + 2 + 1;
    const corners = Array.from({ length: 2 ** count }, (_, number) =>
      Array.from({ length: count }, (_one, bit) => Math.floor(number / 2 ** bit) % 2),
    );
    for (const pot of [one, { ...one, split: undefined }, { ...one, gone: 0 }]) {
      const seen = corners.map((corner) => figuresAt(pot, corner));
      for (const [name, [low, high]] of Object.entries(boundsOf(pot))) {
        const values = seen.flatMap((figures) => figures[name] ?? []);
        if (values.length === 0) continue; // a component that is not there
        const scale = Math.max(1, Math.abs(high));
        expect(Math.abs(Math.min(...values) - low) / scale, `${name}, low`).toBeLessThan(CLOSE);
        expect(Math.abs(Math.max(...values) - high) / scale, `${name}, high`).toBeLessThan(CLOSE);
      }
    }
  });

  it('more gone than some lots hold leaves nothing below zero', () => {
    const pot: Pot = {
      box: {
        fats: [
          { kind: 'triglyceride', grams: 500, value: [190, 198], acid: 0, unsaponifiable: [0, 0], moisture: [0, 0] },
        ],
        lye: [{ alkali: 'naoh', state: 'solution', grams: 130, total: [48, 50] }],
        water: 0,
      },
      additions: [],
      gone: 66, // 65 to 67.6 g of water are there
      split: undefined,
    };
    const { water = [Number.NaN, Number.NaN] } = boundsOf(pot);
    expect(water[0]).toBe(0);
    expect(water[1]).toBeCloseTo(1.6, 9);
  });
});

describe('total fatty matter', () => {
  it('lies between all of the fats and the fats less all their glyceryl', () => {
    fc.assert(
      fc.property(box, (some) => {
        const { mass } = totalFattyMatterOf(compositionFrom({ soap: soapFromLye(asInput(some)), additions: [] }));
        const fats = some.fats.reduce((sum, { grams }) => sum + grams, 0);
        expect(mass.high.g.toNumber()).toBeLessThanOrEqual(fats + CLOSE);
        // 38.049 g of glyceryl to three moles of ester
        const most = some.fats.reduce(
          (sum, { grams, value: [, high] }) => sum + (grams * high * 38.049) / (3 * 56105),
          0,
        );
        expect(mass.low.g.toNumber()).toBeGreaterThanOrEqual(fats - most - CLOSE);
      }),
      { numRuns: 60 },
    );
  });
});
