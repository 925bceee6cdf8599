/** `verdictsOf` says what `auditRecipe` says: of drawn corpora, at the very edges of every comparison, and of anything else. */
import fc from 'fast-check';
import { fat, fatFromBlend, fatFromCertificate, isCalculationError, toJson, type Fat } from 'laurate';
import { auditRecipe, verdictsOf } from 'laurate/audit';
import type { Recipe } from 'laurate/recipe';
import { describe, expect, it } from 'vitest';
import { clearVerdict } from '../../src/audit/clear/clearVerdict.js';
import { ownFats } from '../../src/recipe/readRecipe.js';
import { slipCorpus, soundCorpus } from '../bench/audit/corpus.js';
import { Exact, NAOH } from '../laws/exact.js';
import { placesIn, replaced } from '../laws/places.js';
import { fats as own } from './recipes.js';

const LIMIT = Number(new Exact('0.05').div(NAOH.times(100)));

const verdicts = (recipes: Iterable<unknown>, options: object = { fats: own }): readonly string[] =>
  Array.from(verdictsOf(recipes, options), ({ verdict }) => verdict);
const audits = (recipes: readonly unknown[], options: object = { fats: own }): readonly string[] =>
  recipes.map((recipe) => auditRecipe(recipe, options).verdict);
const printsParts = ({ claimed }: Recipe): boolean => claimed?.shares !== undefined;
const clear = (recipe: unknown): string | undefined => clearVerdict(recipe, ownFats({ fats: own }), LIMIT);

describe('of drawn recipes', () => {
  it.each([
    ['sound ones', soundCorpus(120, 31)],
    ['ones with a slip', slipCorpus(50, 32)],
    ['ones that print the parts of the pot', soundCorpus(1500, 33).filter(printsParts).slice(0, 12)],
    ['such with a slip', slipCorpus(120, 34).filter(printsParts).slice(0, 10)],
  ])('the verdict is that of the audit: %s', (_, corpus) => {
    expect(corpus.length).toBeGreaterThan(5);
    expect(verdicts(corpus)).toEqual(audits(corpus));
    expect(corpus.filter((recipe) => clear(recipe) !== undefined).length).toBeGreaterThan(0.9 * corpus.length);
  });
});

describe('of recipes that meet what makes doubtful by itself', () => {
  const row = fc.record({
    alkali: fc.constantFrom('naoh' as const, 'koh' as const),
    g: fc.integer({ min: 20, max: 260 }),
    state: fc.constantFrom('solid' as const, 'solution' as const, 'unstated' as const),
    percent: fc.constantFrom('20', '50', '52', '52.2', '52.5', '52.8', '60', '74', '75', '76', '89.9', '90', '98', '100', '101', '102'),
  });
  const name = fc.constantFrom('citric acid', 'Milchsäure', 'vinegar', 'Ätznatron', 'potasse caustique', 'soda ash', 'clay', 'lime oil');
  const drawn = fc.record({
    lye: fc.array(row, { minLength: 1, maxLength: 2 }),
    water: fc.option(fc.constantFrom('0', '60', '150.5', '300', '4500', '5200'), { nil: undefined }),
    additions: fc.array(fc.record({ name, mass: fc.integer({ min: 1, max: 40 }).map((g) => ({ g })) }), { maxLength: 2 }),
    superfat: fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }),
  });
  type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

  const recipeOf = ({ lye: rows, water, additions, superfat }: Drawn): object => ({
    version: 1,
    fats: [{ fat: 'Drum', mass: { g: '1000' } }],
    lye: rows.map(({ alkali, g, state, percent }) => {
      const hydroxide = { percent: state === 'solution' && Number(percent) > 75 ? '50' : percent };
      return { alkali, mass: { g }, ...(state === 'unstated' ? {} : { [state]: { hydroxide } }) };
    }),
    ...(water === undefined ? {} : { water: { g: water } }),
    additions,
    ...(superfat === undefined ? {} : { claimed: { superfat: { percent: superfat } } }),
  });

  it('the verdict is that of the audit, and each of them is met', () => {
    const near = fc.record({ g: fc.integer({ min: 180, max: 205 }), sour: fc.integer({ min: 1, max: 40 }) }).map(({ g, sour }): Drawn => ({
      lye: [{ alkali: 'naoh', g, state: 'solid', percent: '100' }],
      water: '300',
      additions: [{ name: 'citric acid', mass: { g: sour } }],
      superfat: undefined,
    }));
    const seed = 20261203;
    const corpus = [...fc.sample(drawn, { seed, numRuns: 400 }), ...fc.sample(near, { seed, numRuns: 40 })].map(recipeOf);
    expect(verdicts(corpus)).toEqual(audits(corpus));
    const met = new Map<string, number>();
    for (const { code, severity } of corpus.flatMap((recipe) => auditRecipe(recipe, { fats: own }).findings)) {
      met.set(`${code} ${severity}`, (met.get(`${code} ${severity}`) ?? 0) + 1);
    }
    for (const found of [
      'lye-stronger-than-dissolves caution', 'assay-not-of-a-solid caution', 'pot-much-diluted caution', 'acid-not-counted caution',
      'acid-not-counted note', 'alkali-not-counted caution', 'alkali-not-counted danger',
    ]) {
      expect([found, (met.get(found) ?? 0) > 3]).toEqual([found, true]);
    }
  });

  it('those of lye and pot are clear, those of names and assays are for the audit', () => {
    const [usual, strong, thin, odd, sour] = [
      pot({ water: { g: '20000000' } }),
      pot({ water: { g: '9000000' } }),
      pot({ water: { g: '99999999' }, fats: [{ fat: 'Drum', mass: { g: '15000000' } }], lye: [lye('2600000')] }),
      pot({ lye: [lye('24000000', { hydroxide: { percent: '49' } })] }),
      pot({ water: { g: '20000000' }, additions: [{ name: 'citric acid', mass: { g: '5' } }] }),
    ];
    expect([usual, strong, thin, odd, sour].map(clear)).toEqual(['sound', 'doubtful', 'doubtful', undefined, undefined]);
  });
}); // prettier-ignore

/** A recipe as it depends on one figure, which is a text of seven decimals. */
interface Family {
  readonly name: string;
  readonly of: (figure: string) => object;
  /** Two figures of different verdicts; somewhere between them lies an edge. */
  readonly between: readonly [number, number];
}

const lye = (g: string, solid: object = { hydroxide: { percent: '97.3' } }) => ({ alkali: 'naoh', mass: { g }, solid });
const pot = (more: object = {}) => ({
  version: 1,
  fats: [{ fat: 'Drum', mass: { g: '70000000' } }],
  lye: [lye('12000000')],
  ...more,
});
const byLye =
  (claimed: object = {}, fat = 'Drum', solid?: object) =>
  (figure: string) =>
    pot({ fats: [{ fat, mass: { g: '70000000' } }], lye: [lye(figure, solid)], claimed });
const byWater = (claimed: object) => (figure: string) => pot({ water: { g: figure }, claimed });
const value = (g: string) => (figure: string) =>
  pot({ fats: [{ fat: 'Drum', mass: { g: '70000000' }, claimed: { saponificationValue: { [g]: figure } } }] });
const share = (figure: string) =>
  pot({
    fats: [
      { fat: 'Drum', mass: { g: '70000000' }, claimed: { share: { percent: '41.7' } } },
      { fat: 'Second', mass: { g: figure } },
    ],
    lye: [lye('22000000')],
  });
const kohShare = (figure: string) =>
  pot({
    lye: [lye('4000000'), { alkali: 'koh', mass: { g: figure }, solution: { hydroxide: { fraction: '0.49' } } }],
    claimed: { kohShare: { percent: '61.3' } },
  });
const added =
  (addition: object, claimed = {}) =>
  (figure: string) =>
    pot({ water: { oz: figure }, additions: [{ mass: { g: '9000000' }, ...addition }], claimed });
const ofValues = (figure: string) =>
  pot({
    fats: [{ fat: 'Drum', mass: { g: '70000000' }, claimed: { saponificationValue: { mgKohPerG: '256.1' } } }],
    lye: [lye(figure)],
    claimed: { superfat: { percent: '4.0' } },
  });

const families: readonly Family[] = [
  { name: 'free caustic of the likely lot', of: byLye(), between: [13_120_000, 13_600_000] },
  { name: 'free caustic of the leanest lot', of: byLye(), between: [12_500_000, 13_050_000] },
  { name: 'alkali in excess below the limit', of: byLye({}, 'Lot'), between: [12_700_000, 12_860_000] },
  { name: 'free caustic above the limit, of one lot', of: byLye({}, 'Lot'), between: [12_835_000, 13_100_000] },
  { name: 'free caustic, assay not stated', of: (figure) => pot({ lye: [{ alkali: 'naoh', mass: { g: figure } }] }), between: [11_000_000, 12_850_000] },
  { name: 'free caustic, assay not stated, the weakest', of: (figure) => pot({ lye: [{ alkali: 'naoh', mass: { g: figure } }] }), between: [12_500_000, 13_450_000] },
  { name: 'free caustic, total alkali', of: (figure) => pot({ lye: [lye(figure, { totalAlkali: { percent: '98.1' }, carbonate: { fraction: '0.0213' } })] }), between: [12_500_000, 14_000_000] },
  { name: 'much fat left', of: byLye(), between: [9_000_000, 11_500_000] },
  { name: 'lye that dissolves', of: byWater({}), between: [9_000_000, 11_000_000] },
  { name: 'two alkalis that dissolve', of: (figure) => pot({ lye: [lye('10000000'), { alkali: 'koh', mass: { g: '6000000' }, solution: { hydroxide: { fraction: '0.49' } } }], water: { g: figure } }), between: [5_000_000, 10_000_000] },
  { name: 'a solution that is none', of: (figure) => pot({ lye: [{ alkali: 'koh', mass: { g: '31000000' }, solution: { hydroxide: { percent: figure } } }] }), between: [50, 55] },
  { name: 'a pot of six times its fats', of: (figure) => pot({ fats: [{ fat: 'Drum', mass: { g: '15000000' } }], lye: [lye('2600000')], water: { g: figure } }), between: [60_000_000, 80_000_000] },
  { name: 'superfat, the low end', of: byLye({ superfat: { percent: '9.3' } }, 'Lot'), between: [11_640_000, 12_600_000] },
  { name: 'superfat, the high end', of: byLye({ superfat: { fraction: '0.093' } }, 'Drum'), between: [11_000_000, 11_900_000] },
  { name: 'superfat aimed at', of: (figure) => pot({ lye: [lye(figure)], target: { superfat: { percent: '8' } } }), between: [11_000_000, 11_900_000] },
  { name: 'negative superfat', of: byLye({ superfat: { percent: '-0.03' } }, 'Lot'), between: [12_700_000, 12_825_500] },
  { name: 'own values', of: ofValues, between: [11_500_000, 12_600_000] },
  { name: 'strength, the low end', of: byWater({ strength: { percent: '33.3' } }), between: [20_000_000, 23_060_000] },
  { name: 'strength, the high end', of: byWater({ strength: { percent: '33.3' } }), between: [23_060_000, 26_000_000] },
  { name: 'water to alkali', of: byWater({ waterPerAlkali: '2.13' }), between: [20_000_000, 24_865_000] },
  { name: 'water to alkali as weighed', of: byWater({ waterPerAlkali: 2.13 }), between: [25_560_000, 27_000_000] },
  { name: 'water to alkali, of one digit', of: byWater({ waterPerAlkali: '2' }), between: [28_000_000, 33_000_000] },
  { name: 'water to fats', of: byWater({ waterPerFat: { percent: '33.1' } }), between: [20_000_000, 22_850_000] },
  { name: 'water to fats, as added', of: byWater({ waterPerFat: { percent: '33.1' } }), between: [23_170_000, 25_000_000] },
  { name: 'total, the low end', of: byWater({ total: { kg: '102000.000' } }), between: [19_000_000, 20_000_000] },
  { name: 'total, the high end', of: byWater({ total: { lb: '224871.5' } }), between: [20_000_001, 21_000_000] },
  { name: 'share of a fat', of: share, between: [90_000_000, 97_865_700] },
  { name: 'share of KOH', of: kohShare, between: [15_000_000, 17_650_000] },
  { name: 'a saponification value', of: value('mgKohPerG'), between: [200, 255] },
  { name: 'a saponification value of NaOH', of: value('gNaohPerG'), between: [0.15, 0.182] },
  { name: 'share of an addition', of: added({ solvent: 'glycerol', claimed: { share: { percent: '8.1' } } }), between: [200_000, 710_000] },
  { name: 'total with a volume', of: added({ mass: undefined, volume: { mL: '9000000' }, solvent: 'glycerol' }, { total: { kg: '110000' } }), between: [200_000, 590_800] },
]; // prettier-ignore

describe('at the edges', () => {
  /** As a recipe prints it, and as the fast arithmetic takes it. */
  const text = (step: bigint): string => `${String(step / 10_000_000n)}.${String(step % 10_000_000n).padStart(7, '0')}`;
  const steps = (figure: number): bigint => BigInt(Math.round(figure * 1e7));
  const [near, far] = [[0n, 1n, 2n, 3n, 7n, 20n, 100n, 1000n], 7_000_001n];

  it.each(families)('$name: the same on both sides, and clear a little off', ({ of, between }) => {
    const verdictAt = (step: bigint): string => verdicts([without(of(text(step)))])[0] ?? '';
    let [low, high] = [steps(between[0]), steps(between[1])];
    const first = verdictAt(low);
    expect(verdictAt(high)).not.toBe(first);
    while (high - low > 1n) {
      const middle = (low + high) / 2n;
      if (verdictAt(middle) === first) low = middle;
      else high = middle;
    }
    const around = near.flatMap((off) => [low - off, high + off]).map((step) => without(of(text(step))));
    expect(verdicts(around)).toEqual(audits(around));
    // closer than any text that is read in float64 can be
    const within = ['49999999', '50000001', '4', '6', '00000000001'].map((digits) =>
      without(of(`${text(low)}${digits}`)),
    );
    expect(verdicts(within)).toEqual(audits(within));
    const span = steps(between[1]) - steps(between[0]);
    const off = span / 100n < far ? span / 100n : far;
    expect([clear(without(of(text(low - off)))), clear(without(of(text(high + off))))]).toEqual([
      first,
      verdictAt(high),
    ]);
  });

  /** Fields without a value are not there. */
  const without = (recipe: object): unknown => JSON.parse(JSON.stringify(recipe)) as unknown;

  /** Masses whose sum, share or ratio falls just on an end of what is printed, in decimals: in float64 it falls beside it. */
  const ties = fc.record({
    tenths: fc.integer({ min: 1001, max: 9999 }),
    hundredths: fc.integer({ min: 3001, max: 9999 }),
    end: fc.constantFrom(-1, 1),
  });

  it('where a comparison is a tie, the audit decides', () => {
    const decided = fc.sample(ties, { seed: 20261128, numRuns: 20 }).flatMap(({ tenths, hundredths, end }) => {
      const [water, percent] = [new Exact(tenths).div(10), new Exact(hundredths).div(100)];
      const fats = (first: Exact) =>
        [first, new Exact(1000).minus(first)].map((g) => ({ fat: 'Lot', mass: { g: g.toFixed() } }));
      const [row, other] = fats(percent.times(10));
      const solution = [{ alkali: 'naoh', mass: { g: '300.30' }, solution: { hydroxide: { percent: '40' } } }];
      const of = (more: object): object => ({ version: 1, fats: [row, other], lye: solution, water: { g: water.toFixed() }, ...more });
      const printed = (exact: Exact, step: string, digits: number): string => exact.plus(new Exact(step).times(end)).toFixed(digits);
      return [
        // 1300.3 g and the water; one hundredth of it is the last digit of the lye
        of({ claimed: { total: { g: printed(water.plus('1300.3').plus(end * 0.01), '0.01', 2) } } }),
        of({ claimed: { waterPerFat: { percent: printed(water.div(10), '0.001', 3) } } }),
        of({ fats: [{ ...row, claimed: { share: { percent: printed(percent, '0.01', 2) } } }, other] }),
      ].map((recipe) => ({ recipe, isClear: clear(recipe) !== undefined }));
    });
    const recipes = decided.map(({ recipe }) => recipe);
    expect(verdicts(recipes)).toEqual(audits(recipes));
    expect(decided.filter(({ isClear }) => isClear)).toEqual([]);
  }); // prettier-ignore
});

const full = {
  version: 1,
  title: 'All of it',
  fats: [
    { fat: 'coconut-oil', mass: { g: '700' }, claimed: { saponificationValue: { mgKohPerG: '252' }, share: { percent: '70' } } },
    { fat: 'Lot', mass: { oz: 10.5 }, claimed: { saponificationValue: { gNaohPerG: '0.1782' } } },
  ],
  lye: [
    { alkali: 'naoh', mass: { g: '110' }, solid: { totalAlkali: { percent: '97' }, carbonate: { percent: 1 } } },
    { alkali: 'koh', mass: { g: '80' }, solution: { hydroxide: { percent: 49 } } },
  ],
  water: { g: '300' },
  additions: [
    { solvent: 'glycerol', mass: { g: '250' }, assay: { percent: '99.5' }, claimed: { share: { percent: '14.4' } } },
    { solvent: 'ethanol', volume: { mL: '50' }, assay: { percentByVolume: '96' } },
    { name: 'scent', mass: { g: 4 } },
  ],
  claimed: { superfat: { percent: '25' }, strength: { percent: 30 }, waterPerAlkali: '2.3', waterPerFat: { percent: '30' }, kohShare: { percent: '21' }, total: { kg: '1.8' }, ph: '9' },
  temperatures: [{ stage: 'saponification', time: { minutes: 20 }, temperature: { celsius: 64 } }],
}; // prettier-ignore

describe('of anything else', () => {
  const SEED = { seed: 20261126, numRuns: 60 };
  const thrower = (): never => {
    throw new Error('read');
  };
  const cycle: Record<string, unknown> = {};
  cycle['g'] = cycle;
  const { proxy, revoke } = Proxy.revocable([], {});
  revoke();
  const odd: readonly unknown[] = [
    '1e-5', ' 5', '5.', '+5', '.5', '-5', '-0', '05.50', '0', 0, -1, 5, 1e-7, 1e21, 0.1 + 0.2, NaN, Infinity, '99999999999', `1.${'0'.repeat(60)}`, '١', '5,5', '', null, undefined, true, [], {}, [5],
    new Exact(5), { percent: new Exact('33.3') }, { g: '5', oz: '5' }, { g: '5', stone: 1 }, { stone: '5' }, { percent: '100.1' }, { percent: '74.95' }, { percent: '110' }, { percent: '-3' }, { ppm: '400000' }, { fraction: 0.333 },
    { saponificationEquivalent: '220' }, { gKohPerG: '0.252' }, { g: '0' }, { kg: 99_999_999 }, { low: { percent: 90 }, high: { percent: 99 } }, { celsius: 200 }, { kelvin: '337' }, { fahrenheit: '1e2' }, { hours: -1 },
    Object.defineProperty({}, 'g', { enumerable: true, get: thrower }), Object.defineProperty({}, 'g', { enumerable: true, get: () => '700' }),
    new Proxy({ g: '700' }, {}), new Proxy({}, { ownKeys: thrower, get: thrower }), proxy, cycle, Object.create({ g: '5' }), Object.create(null),
    JSON.parse('{"__proto__":{"g":"5"}}'), JSON.parse('{"g":"5","__proto__":1}'), thrower, 10n, Symbol('g'), 'x'.repeat(1e6), { ['x'.repeat(1e6)]: 1 }, Object.assign(new Array<unknown>(3), { 2: 1 }),
    'olive oil', 'stearic acid', 'Sour', ' ', `coconut-oil${'-'.repeat(300)}`, own.Sour, toJson(own.Lot), fatFromCertificate({ name: 'Off', like: fat('coconut-oil'), saponificationValue: { mgKohPerG: 340 } }), fatFromBlend({ name: 'Both', parts: [{ fat: own.Lot, mass: { g: 1 } }, { fat: own.Sour, mass: { g: 1 } }] }),
  ]; // prettier-ignore
  const places = placesIn(full);
  const changed = (changes: readonly (readonly [readonly string[], unknown])[]): unknown =>
    changes.reduce<unknown>((recipe, [path, by]) => replaced(recipe, path, by), full);

  it('the whole of it is clear as it stands', () => {
    expect(clear(full)).toBeDefined();
    expect(verdicts([full])).toEqual(audits([full]));
  });

  it('at any place of a recipe', () => {
    const change = fc.tuple(fc.constantFrom(...places), fc.oneof(fc.nat(odd.length - 1), fc.anything()));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        // by their places: of a revoked proxy the generators themselves would stumble
        const recipe = changed(changes.map(([path, by]) => [path, typeof by === 'number' ? (odd[by] ?? by) : by]));
        expect(verdicts([recipe])).toEqual(audits([recipe]));
      }),
      SEED,
    );
  });

  it('with a field left out, or one too many', () => {
    const some = places.filter((_, at) => at % 3 === 0);
    const recipes = some.map((path, at) =>
      changed([at % 2 === 0 ? [path, undefined] : [[...path.slice(0, -1), 'besides'], 1]]),
    );
    expect(verdicts(recipes)).toEqual(audits(recipes));
  });

  it('whatever the fats are called, and whatever the options', () => {
    const named: Fat = fatFromCertificate({
      name: 'Named',
      kind: 'triglyceride',
      saponificationValue: { mgKohPerG: '190' },
    });
    const options: readonly unknown[] = [
      undefined, {}, { limit: { percentNaoh: 0 } }, { limit: { percentKoh: '3' } }, { limit: { percentNaoh: 9 } }, { limit: 1 }, { fats: 1 }, { fats: { 'coconut-oil': named } }, { fats: { 'Coconut Oil': toJson(named) } },
      { fats: { 'coconut-oil': 1 } }, { fats: { lot: named, LOT: named } }, { fats: { Lot: named }, limits: 1 }, { fats: own, limit: 1 }, null, proxy, cycle,
    ]; // prettier-ignore
    const recipes = [pot(), replaced(full, ['claimed'], {}), replaced(full, ['fats', '1', 'fat'], named)];
    for (const some of options) {
      expect(verdicts(recipes, some as object)).toEqual(audits(recipes, some as object));
    }
  });

  it('what is read otherwise than in the full one', () => {
    const lyes = [{ solution: { hydroxide: { percent: '50' } } }, {}].map((state) =>
      pot({ lye: [{ alkali: 'naoh', mass: { g: '12000000' }, ...state }] }),
    );
    expect(lyes.map(clear)).toEqual(audits(lyes));
    const spirit = { solvent: 'ethanol', mass: { g: '5' }, assay: { percentByVolume: '90' } };
    const warm = { stage: 'saponification', temperature: { celsius: '60' } };
    const thin = { fats: [{ fat: 'Drum', mass: { g: '7000000' } }], lye: [{ alkali: 'naoh', mass: { g: '14500000' }, solution: { hydroxide: { percent: '8' } } }] };
    const rows = (count: number): object => pot({ lye: Array.from({ length: count }, () => lye('190000')) });
    const parts = ['5', '98'].map((percent) => pot({ water: { g: '24000000' }, claimed: { shares: { soap: { percent } } } }));
    const colours = ['70', '40'].map((percent) => ({ name: 'colour', mass: { g: '5' }, claimed: { share: { percent } } }));
    const read = [
      pot({ additions: colours }), // together more than the whole
      pot({ additions: [spirit] }), pot({ temperatures: [warm] }), pot(thin), rows(60), ...parts,
      pot({ lye: [lye('8700000')], claimed: { superfat: { percent: '33' } } }), pot({ additions: [{ name: 'vinegar', mass: { g: '5' } }] }),
      pot({ water: { g: '11500000' }, claimed: { waterPerAlkali: '0' } }), // of 0.96: nought and a digit more
    ];
    expect(read.map(clear)).toEqual(audits(read));
    expect(parts.map(clear)).toEqual(['wrong', 'wrong']);
    // and what is left to the audit
    const carbonated = (g: string, total: string, carbonate: string): object => lye(g, { totalAlkali: { percent: total }, carbonate: { percent: carbonate } });
    const solvent = (more: object): object => pot({ additions: [{ solvent: 'glycerol', mass: { g: '5' }, ...more }] });
    const heat = (temperature: unknown): object => pot({ temperatures: [{ ...warm, temperature }] });
    const left = [
      pot({ fats: {} }), pot({ fats: [] }), pot({ lye: 5 }), pot({ additions: {} }), pot({ additions: [{ name: 'clay', mass: { g: '0' } }] }), pot({ claimed: { ph: ['9'] } }),
      pot({ water: { g: '24000000' }, claimed: { waterPerAlkali: '-2' } }), pot({ lye: [{ ...lye('12000000'), alkali: 'x' }] }), pot({ lye: [{ alkali: 'x', mass: { g: '24000000' }, solution: { hydroxide: { percent: '50' } } }] }),
      pot({ fats: [0, 1].map(() => ({ fat: 'Drum', mass: { kg: '90000000' } })) }), pot({ lye: [lye('6000000'), lye('6000000', { hydroxide: { percent: '80' } })] }),
      pot({ claimed: { superfat: { percent: '95' } } }), pot({ lye: [lye('12000000', { hydroxide: { percent: '97.3' }, totalAlkali: { percent: '98' } })] }), solvent({ assay: { percent: '0' } }),
      pot({ claimed: [] }), pot({ claimed: 5 }), pot({ claimed: null }), pot({ lye: [lye('13000000', { hydroxide: { percent: '90' } })] }), solvent({ assay: { percent: '150' } }),
      solvent({ assay: { percentByVolume: '90' } }), solvent({ assay: {} }), solvent({ assay: { percent: 'x' } }), solvent({ solvent: 'sorbitol', mass: undefined, volume: { mL: '5' } }),
      pot({ temperatures: [{ ...warm, stage: 'resting' }] }), pot({ temperatures: [60] }), pot({ additions: [5] }), pot({ fats: [5] }), rows(61),
      pot({ lye: [{ alkali: 'naoh', mass: { g: '15000000' }, solution: { hydroxide: { percent: '80' } } }] }), // no solution any more
      pot({ fats: [{ fat: 'Drum', mass: { g: '70000000' }, claimed: { saponificationValue: { saponificationEquivalent: '220' } } }] }),
      heat({ rankine: '600' }), heat({ celsius: 'warm' }), heat({}), heat(undefined),
      pot({ claimed: undefined }), pot({ lye: [{ ...lye('12000000'), solution: undefined }] }),
    ];
    expect(left.map(clear)).toEqual(left.map(() => undefined));
    // a carbonate of 24.9 % as hydroxide: less than half of 60 %, but not of 40 %
    const wrong = [carbonated('33000000', '60', '33'), carbonated('77000000', '40', '33')].map((row) => pot({ lye: [row], claimed: { superfat: { percent: '40' } } }));
    expect([...wrong.map(clear), ...verdicts(wrong)]).toEqual(['wrong', undefined, 'wrong', 'wrong']);
    expect(verdicts(left)).toEqual(audits(left));
  }); // prettier-ignore

  it('temperatures, pH and parts by themselves', () => {
    const stages = ['saponification', 'clearing', 'pouring', 'lye', 'resting'];
    const recipes = stages.flatMap((stage) =>
      [{ celsius: '30' }, { celsius: '83' }, { celsius: '101.5' }, { fahrenheit: '150' }, { celsius: '150' }].map(
        (temperature) => ({ ...full, temperatures: [{ stage, temperature }] }),
      ),
    );
    const withPh = ['6.1', '8', '9.5', '10.9', '12', 14].flatMap((ph) => [
      pot({ claimed: { ph } }),
      pot({ claimed: { ph }, fats: [{ fat: 'oleic-acid', mass: { g: '70000000' } }] }),
      pot({ claimed: { ph }, additions: [{ name: 'clay', mass: { g: '5' } }] }),
      pot({ claimed: { ph }, additions: [{ solvent: 'triethanolamine', mass: { g: '5' } }] }),
    ]);
    const parts = [{ shares: { soap: { percent: '80' } } }, { freeCausticAlkali: { percentNaoh: '0.2' } }].map((claimed) =>
      pot({ claimed }),
    );
    const all = [...recipes, ...withPh, ...parts];
    expect(verdicts(all)).toEqual(audits(all));
  }); // prettier-ignore
});

describe('as a generator', () => {
  it('takes one recipe at a time, and gives back what it iterates over', () => {
    let [read, closed] = [0, false];
    function* endless(): Generator {
      try {
        for (;;) yield (read += 1) === 2 ? null : pot();
      } finally {
        closed = true;
      }
    }
    const found: unknown[] = [];
    for (const { index, verdict } of verdictsOf(endless(), { fats: own })) {
      found.push([index, verdict]);
      if (found.length === 3) break;
    }
    expect(found).toEqual([0, 1, 2].map((index) => [index, index === 1 ? 'cannot-tell' : audits([pot()])[0]]));
    expect([read, closed]).toEqual([3, true]);
  });

  it('hands on what its iterable throws, and no sooner', () => {
    function* broken(): Generator {
      yield pot();
      throw new RangeError('no more');
    }
    const some = verdictsOf(broken(), { fats: own });
    expect(some.next().value).toEqual({ index: 0, verdict: audits([pot()])[0] });
    expect(() => some.next()).toThrow(RangeError);
  });

  it('reads its options once', () => {
    const fats: Record<string, Fat> = { Drum: own.Drum };
    const some = verdictsOf([pot(), pot({ title: ' ' })], { fats });
    const before = some.next().value;
    delete fats['Drum'];
    expect(before?.verdict).toBe('sound');
    expect(some.next().value?.verdict).toBe('cannot-tell');
    expect(auditRecipe(pot(), { fats }).findings.length).toBeGreaterThan(0);
  });

  it('refuses what cannot be iterated over', () => {
    for (const [came, code] of [[undefined, 'missing'], [null, 'bad-shape'], ['[]', 'bad-shape'], [{}, 'bad-shape']] as const) {
      let error: unknown;
      try {
        verdictsOf(came as never);
      } catch (thrown) {
        error = thrown;
      }
      expect(isCalculationError(error) && [error.code, error.path]).toEqual([code, 'recipes']);
    }
  }); // prettier-ignore

  it('a fat of the registry is told by any of its names', () => {
    const of = (name: string): object => pot({ fats: [{ fat: name, mass: { g: '70000000' } }] });
    const names = ['coconut-oil', 'Coconut oil', 'COPRA oil', fat('olive-oil').name];
    expect(names.map((name) => clear(of(name)))).toEqual(audits(names.map(of)));
  });
});
