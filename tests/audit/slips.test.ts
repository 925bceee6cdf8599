/** Each slip made on purpose: the audit must find it among those that give the figure. */
import { fat, fatFromBlend, fats as listings, lyeDensity, valueIn, lyeStrengthFromDensity } from 'laurate';
import type { SlipCode } from 'laurate/audit';
import { auditRecipe } from 'laurate/audit';
import { describe, expect, it } from 'vitest';
import { Exact, GLYCERYL, KOH, NAOH } from '../laws/exact.js';
import { audited, findingIn, naoh, slipsIn } from './recipes.js';

const OXIDE = NAOH.times(2).div('61.979'); // g NaOH to a gram of Na2O
/** Grams of NaOH that split so many grams of a fat of such a value. */
const demand = (value: number | Exact, grams: number): Exact => NAOH.times(value).times(grams).div(KOH.times(1000));
const all = demand(250, 1000);
/** Of 1 kg of 250 at a superfat of 5 %. */
const due = all.times('0.95');

interface Case {
  readonly code: SlipCode;
  readonly grams: Exact;
  readonly fats?: readonly (readonly [name: string, grams: number, claimed: number])[];
  readonly lye?: object;
  readonly more?: object;
  readonly digits?: number;
}

const solid = (percent: number): object => ({ solid: { hydroxide: { percent } } });
const two = [['Lot', 1000, 250], ['Second', 500, 190]] as const; // prettier-ignore

const ofCharge: readonly Case[] = [
  { code: 'claimed-values-used', fats: [['Lot', 1000, 300]], grams: demand(300, 1000).times('0.95') },
  { code: 'koh-value-as-naoh', grams: due.times(KOH).div(NAOH) },
  { code: 'naoh-value-as-koh', grams: due.times(NAOH).div(KOH) },
  { code: 'equivalent-as-value', grams: demand(KOH.times(1000).div(250), 1000).times('0.95') },
  {
    code: 'value-per-fatty-acids',
    grams: demand(KOH.times(1000).div(KOH.times(1000).div(250).minus(GLYCERYL.div(3))), 1000).times('0.95'),
  },
  { code: 'saponification-plus-acid-value', fats: [['Sour', 1000, 250]], grams: demand(260, 1000).times('0.95') },
  { code: 'ester-value-as-saponification-value', fats: [['Sour', 1000, 250]], grams: demand(240, 1000).times('0.95') },
  { code: 'fat-left-out', fats: two, grams: due },
  { code: 'rows-swapped', fats: two, grams: demand(250, 500).plus(demand(190, 1000)).times('0.95') },
  { code: 'superfat-left-out', grams: all, digits: 2 },
  { code: 'superfat-added', grams: all.times('1.05') },
  { code: 'superfat-as-divisor', grams: all.div('1.05'), more: { superfat: { percent: '5.0' } } },
  { code: 'superfat-twice', grams: due.times('0.95') },
  { code: 'superfat-percent-as-fraction', grams: all.times('0.9995'), digits: 2 },
  { code: 'solution-as-solid', grams: due.div('0.5'), lye: solid(98), more: { strength: { percent: '50' } } },
  { code: 'solid-as-solution', grams: due, lye: { solution: { hydroxide: { percent: 50 } } } },
  { code: 'assay-ignored', grams: due, lye: solid(90) },
  { code: 'assay-twice', grams: due.div('0.81'), lye: solid(90) },
  { code: 'assay-upside-down', grams: due.times('0.9'), lye: solid(90) },
  { code: 'oxide-percent-as-hydroxide', grams: due.div('0.76').div(OXIDE), lye: solid(76) },
  { code: 'hydroxide-percent-as-oxide', grams: due.div('0.76').times(OXIDE), lye: solid(76) },
  {
    code: 'carbonate-counted',
    grams: due.div('0.95'),
    lye: { solid: { totalAlkali: { percent: 95 }, carbonate: { percent: 3 } } },
    digits: 2,
  },
  { code: 'unit-mistaken', grams: due.div('28.349523125'), digits: 3 },
];

const recipeOf = ({ grams, fats = [['Lot', 1000, 250]], lye = solid(100), more = {}, digits = 1 }: Case, claims: boolean) => ({
  version: 1,
  fats: fats.map(([name, g, value]) => ({
    fat: name,
    mass: { g: String(g) },
    ...(claims ? { claimed: { saponificationValue: { mgKohPerG: String(value) } } } : {}),
  })),
  lye: [{ alkali: 'naoh', mass: { g: grams.toFixed(digits) }, ...lye }],
  claimed: { superfat: { percent: '5' }, ...more },
}); // prettier-ignore

describe('a slip in the mass of the lye', () => {
  it.each(ofCharge)('$code reproduces it from the values that the recipe claims', (one) => {
    const slip = slipsIn(audited(recipeOf(one, true))).find(({ code }) => code === one.code);
    expect(slip).toMatchObject({ code: one.code, how: 'reproduces' });
    expect(slip?.explanation).toContain(
      one.code === 'unit-mistaken'
        ? 'In ounces the figure fits: 5.972 oz would be right there'
        : 'From the recipe’s own figures that gives',
    );
    expect(slip?.tell).not.toBe('');
  });

  it.each(ofCharge.filter(({ code }) => code !== 'claimed-values-used'))('$code explains it without them', (one) => {
    const slips = slipsIn(audited(recipeOf(one, false)));
    expect(slips.find(({ code }) => code === one.code)).toMatchObject({ how: 'explains' });
    // of a single fat a slip in its value is one in all values, and is told once
    const told = slips.map(({ code, words }) => [code, ...Object.values(words)].join());
    expect(told).toEqual([...new Set(told)]);
  });

  it('the value of the fat beside it in a list', () => {
    const names = [...listings].sort((a, b) => (a.name < b.name ? -1 : 1));
    const next = names[names.findIndex(({ id }) => id === 'coconut-oil') + 1]?.id ?? 'coconut-oil';
    const grams = demand(new Exact(fat(next).saponificationValue.likely.mgKohPerG.toString()), 900).times('0.95');
    const slips = slipsIn(
      audited({
        version: 1,
        fats: [{ fat: 'coconut-oil', mass: { g: '900' } }],
        lye: [naoh(grams.toFixed(1))],
        claimed: { superfat: { percent: '5' } },
      }),
    );
    const found = slips.find(({ code }) => code === 'neighbouring-fat-value');
    expect(found).toMatchObject({ how: 'explains', path: 'fats[0]' });
    expect(found?.words['other']).toMatch(/^(Cocoa butter|Corn oil)$/); // of nearly one value: the figures cannot tell
  });

  it('a fat in ounces, printed as pounds', () => {
    const recipe = (unit: string) => ({
      version: 1,
      fats: [{ fat: 'Lot', mass: { lb: '2' }, claimed: { saponificationValue: { mgKohPerG: '250' } } }, { fat: 'Second', mass: { [unit]: '8' }, claimed: { saponificationValue: { mgKohPerG: '190' } } }],
      lye: [{ alkali: 'naoh', mass: { oz: demand(250, 907).plus(demand(190, 227)).times('0.95').div('28.35').toFixed(1) }, solid: { hydroxide: { percent: 100 } } }],
      claimed: { superfat: { percent: '5' } },
    }); // prettier-ignore
    expect(audited(recipe('oz')).verdict).toBe('sound');
    expect(slipsIn(audited(recipe('lb')))).toContainEqual(
      expect.objectContaining({
        code: 'unit-mistaken',
        how: 'reproduces',
        path: 'fats[1]',
        words: { printed: 'lb', meant: 'oz', of: 'Second' },
      }),
    );
  });

  it('a slip of the pen, behind all others and only of exact claims', () => {
    // 169.3 g are due
    const printed = (g: string, claims: boolean) =>
      slipsIn(audited(recipeOf({ code: 'digits-exchanged', grams: new Exact(g) }, claims)));
    expect(due.toFixed(1)).toBe('169.3');
    expect(printed('196.3', true).at(-1)).toMatchObject({ code: 'digits-exchanged', words: { meant: '169.3' } });
    // the point of the lye, or that of the one fat
    expect(printed('1693.1', true).slice(-2)).toMatchObject([
      { code: 'decimal-point-moved', path: 'lye[0]', words: { meant: '169.31' } },
      { code: 'decimal-point-moved', path: 'fats[0]' },
    ]);
    expect(printed('196.3', false).map(({ code }) => code)).not.toContain('digits-exchanged');
  });

  it('what reproduces the figure stands before what only explains it', () => {
    const hows = slipsIn(audited(recipeOf({ code: 'superfat-added', grams: all.times('1.05') }, true))).map(({ how }) => how);
    expect(hows[0]).toBe('reproduces');
    expect(hows).toEqual([...hows].sort().reverse());
  }); // prettier-ignore

  it('two rows that reproduce it alike are both told', () => {
    const row = (g: string) => ({ fat: 'Lot', mass: { g }, claimed: { saponificationValue: { mgKohPerG: '250' } } });
    const slips = slipsIn(
      audited({
        version: 1,
        fats: [row('500'), row('500'), row('1000')],
        lye: [naoh(demand(250, 1500).times('0.95').toFixed(1))],
        claimed: { superfat: { percent: '5' } },
      }),
    );
    expect(slips.filter(({ code }) => code === 'fat-left-out').map(({ path }) => path)).toEqual(['fats[0]', 'fats[1]']);
  });

  it('without a superfat no slip in a single fat is guessed, but those of the whole lye are', () => {
    const recipe = recipeOf({ code: 'koh-value-as-naoh', grams: new Exact(0), fats: two }, false);
    const grams = demand(250, 1000).plus(demand(190, 500)).times('1.37');
    const slips = slipsIn(audited({ ...recipe, lye: [naoh(grams.toFixed(1))], claimed: {} }));
    expect(slips.map(({ code }) => code)).toContain('koh-value-as-naoh');
    expect(slips.filter(({ path = '' }) => path.startsWith('fats'))).toEqual([]);
    // nor does any figure of the recipe follow from a superfat that it does not print
    const own = recipeOf({ code: 'koh-value-as-naoh', grams: new Exact(0), fats: two }, true);
    const most = demand(250, 1000).plus(demand(190, 500)).times(KOH).div(NAOH).times('0.97');
    const printed = slipsIn(audited({ ...own, lye: [naoh(most.toFixed(1))], claimed: {} }));
    expect(printed.map(({ code, how }) => `${how} ${code}`)).toContain('explains koh-value-as-naoh');
    expect(printed.filter(({ how }) => how === 'reproduces')).toEqual([]);
  });
});

describe('a slip in another figure', () => {
  // 300 g of NaOH of 90 % (270 g pure) in 600 g of water; 900 g of lye for 1500 g of fat
  const lye = { lye: [naoh(300, 90)], water: { g: '600' } };
  const slipsOf = (claimed: object, more: object = lye, code = 'strength-contradicted') => {
    const recipe = {
      version: 1,
      fats: [
        { fat: 'Lot', mass: { g: '1000' } },
        { fat: 'Second', mass: { g: '500' } },
      ],
      claimed,
      ...more,
    };
    return findingIn(audited(recipe), code as 'strength-contradicted').slips.map((slip) => slip.code);
  };
  const strength = (percent: string, more?: object) => slipsOf({ strength: { percent } }, more);

  it.each<[SlipCode, string]>([
    ['assay-ignored', '33.3'], // 300/900
    ['parts-per-100-of-water-as-percent', '42.9'], // 270/630
    ['water-and-alkali-inverted', '70'], // 630/900
    ['strength-as-water-per-fat', '40'], // 600/1500
    ['weight-by-volume-as-by-weight', '39.8'], // of 30 % there are 1.3279 g in a mL
    ['baume-degrees-as-percent', '35.8'], // 145 − 145/1.3279
  ])('%s in a strength of 30 %%: %s', (code, percent) => {
    expect(strength(percent)).toContain(code);
  });

  it('another Baumé scale', () => {
    const at = { celsius: 20 } as const;
    const density = lyeDensity({ alkali: 'naoh', strength: { percent: 30 }, temperature: at }).density;
    const read = (one: 'baume145' | 'baume144_3', other: 'baume145' | 'baume144_3') =>
      lyeStrengthFromDensity({
        alkali: 'naoh',
        density: { [other]: valueIn(density, one) } as unknown as { baume145: string },
        temperature: at,
      }).strength.percent.toFixed(2);
    const exact = { lye: [naoh('300.00', 90)], water: { g: '600.00' } };
    expect(strength(read('baume145', 'baume144_3'), exact)).toContain('baume-modulus-mistaken');
    expect(strength(read('baume144_3', 'baume145'), exact)).toContain('baume-modulus-mistaken');
  });

  it.each<[SlipCode, string, object]>([
    ['water-and-alkali-inverted', 'water-per-alkali-contradicted', { waterPerAlkali: '0.5' }],
    ['percent-of-another-total', 'water-per-alkali-contradicted', { waterPerAlkali: '3.33' }], // 900/270
    ['strength-as-water-per-fat', 'water-per-fat-contradicted', { waterPerFat: { percent: '30.0' } }],
    ['percent-of-another-total', 'water-per-fat-contradicted', { waterPerFat: { percent: '60' } }], // 900/1500
    ['percent-of-another-total', 'water-per-fat-contradicted', { waterPerFat: { percent: '26.3' } }], // 630/2400
    ['part-left-out-of-total', 'total-contradicted', { total: { g: '1800' } }], // 2400 less the water
    ['digits-exchanged', 'total-contradicted', { total: { g: '4200' } }],
    ['decimal-point-moved', 'total-contradicted', { total: { g: '24000' } }],
  ])('%s: %s', (slip, code, claimed) => {
    expect(slipsOf(claimed, lye, code)).toContain(slip);
  });

  it('a lye weighed by its water, as weighed and not as pure', () => {
    // 300/600; of what is pure 270/630
    expect(slipsOf({ waterPerAlkali: '0.500' }, lye, 'water-per-alkali-contradicted')).toContain('water-and-alkali-inverted');
    expect(slipsOf({ waterPerAlkali: '0.429' }, lye, 'water-per-alkali-contradicted')).toContain('water-and-alkali-inverted');
    expect(slipsOf({ waterPerAlkali: '0.460' }, lye, 'water-per-alkali-contradicted')).not.toContain('water-and-alkali-inverted');
  }); // prettier-ignore

  it('what it is compared with is said', () => {
    const row = { fat: 'coconut-oil', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '194' } } };
    const { explanation } = findingIn(audited({ version: 1, fats: [row], ...lye }), 'saponification-value-contradicted');
    expect(explanation).toContain('but lots within the published range have 248 to 265 mg KOH/g');
  }); // prettier-ignore

  it('a share of KOH by mass', () => {
    const koh = { alkali: 'koh', mass: { g: '100' }, solid: { hydroxide: { percent: 100 } } };
    expect(slipsOf({ kohShare: { percent: '50.0' } }, { lye: [naoh(100), koh] }, 'koh-share-contradicted')).toEqual([
      'mole-share-as-mass-share',
    ]);
  });

  const ofFat = (fatRow: object, code: 'share-contradicted' | 'saponification-value-contradicted') =>
    findingIn(audited({ version: 1, fats: [fatRow, { fat: 'Second', mass: { g: '500' } }], ...lye }), code).slips;

  it('a share of everything in the pot', () => {
    const row = { fat: 'Lot', mass: { g: '1000' }, claimed: { share: { percent: '41.7' } } }; // 1000/2400
    expect(ofFat(row, 'share-contradicted').map(({ code }) => code)).toEqual(['percent-of-another-total']);
  });

  it.each<[SlipCode, string, object]>([
    ['koh-value-as-naoh', 'Lot', { gNaohPerG: '0.250' }],
    ['naoh-value-as-koh', 'Lot', { mgKohPerG: '178.2' }],
    ['equivalent-as-value', 'Lot', { mgKohPerG: '224.4' }], // 56105/250
    ['value-per-fatty-acids', 'Lot', { mgKohPerG: '265.0' }],
    ['saponification-plus-acid-value', 'Sour', { mgKohPerG: '260' }],
    ['ester-value-as-saponification-value', 'Sour', { mgKohPerG: '240' }],
    ['rows-swapped', 'Lot', { mgKohPerG: '190' }],
    ['neighbouring-fat-value', 'coconut-oil', { mgKohPerG: '194' }],
    ['digits-exchanged', 'Lot', { mgKohPerG: '205' }],
    ['decimal-point-moved', 'Lot', { mgKohPerG: '25.0' }],
  ])('%s in a saponification value of %s: %j', (code, name, saponificationValue) => {
    const row = { fat: name, mass: { g: '1000' }, claimed: { saponificationValue } };
    const slips = ofFat(row, 'saponification-value-contradicted');
    expect(slips.map((slip) => slip.code)).toContain(code);
    if (code === 'digits-exchanged' || code === 'decimal-point-moved') expect(slips.at(-1)?.code).toBe(code);
  });
});

describe('slips that are easily overlooked', () => {
  const values = { coconut: { gNaohPerG: '0.1818' }, olive: { gNaohPerG: '0.1345' } };
  const recipe = (fats: readonly [string, string][], grams: string, more: object = {}) =>
    auditRecipe({
      version: 1,
      fats: fats.map(([name, g]) => ({
        fat: `${name}-oil`,
        mass: { g },
        claimed: { saponificationValue: values[name as keyof typeof values] },
      })),
      lye: [{ alkali: 'naoh', mass: { g: grams }, solid: { hydroxide: { percent: '100' } } }],
      claimed: { superfat: { percent: '5' } },
      ...more,
    });
  const codesIn = ({ findings }: ReturnType<typeof auditRecipe>) =>
    findings.flatMap(({ slips }) => slips.map(({ code, path }) => `${code} ${path ?? ''}`.trim()));

  it('two fats of one mass do not change places', () => {
    // 500 g of each: (90.9 + 67.25)·0.95 = 150.24
    expect(codesIn(recipe([['coconut', '500'], ['olive', '500']], '190.2'))).not.toContain('rows-swapped fats[0]'); // prettier-ignore
  });

  it('lyes in two units were not both meant in a third', () => {
    // 28.3 times too little of both: ounces printed as grams, if they were in one unit
    const half = demand(250, 950).div(2).div('28.349523125');
    const row = (mass: object): object => ({ alkali: 'naoh', mass, solid: { hydroxide: { percent: 100 } } });
    const slipsOf = (...lye: readonly object[]) => slipsIn(audited({ version: 1, fats: [{ fat: 'Lot', mass: { g: '1000' } }], lye, claimed: { superfat: { percent: '5' } } })).filter(({ code, path = '' }) => code === 'unit-mistaken' && path.startsWith('lye'));
    expect(slipsOf(row({ g: half.toFixed(3) }), row({ g: half.toFixed(3) }))).toHaveLength(1);
    expect(slipsOf(row({ g: half.toFixed(3) }), row({ oz: half.div('28.349523125').toFixed(5) }))).toEqual([]);
  }); // prettier-ignore

  it('without a superfat no fat is said to be left out, though the lye would fit the other', () => {
    const rows = { fats: [{ fat: 'Lot', mass: { g: '1000' } }, { fat: 'Second', mass: { g: '500' } }] };
    const found = slipsIn(audited({ version: 1, ...rows, lye: [naoh(demand(250, 1000).toFixed(0))] }));
    expect(found.length).toBeGreaterThan(0);
    expect(found.filter(({ path = '' }) => path.startsWith('fats'))).toEqual([]);
    const claimed = slipsIn(audited({ version: 1, ...rows, lye: [naoh(demand(250, 950).toFixed(1))], claimed: { superfat: { percent: '5' } } }));
    expect(claimed.map(({ path }) => path)).toContain('fats[1]');
  }); // prettier-ignore

  it('a fat that weighs nothing is none that a slip is in', () => {
    const rows = [{ fat: 'Lot', mass: { g: '1000' } }, { fat: 'Second', mass: { g: '0' } }];
    const found = slipsIn(audited({ version: 1, fats: rows, lye: [naoh('150.0')], claimed: { superfat: { percent: '5' } } }));
    expect(found.length).toBeGreaterThan(0);
    expect(found.filter(({ path }) => path === 'fats[1]')).toEqual([]);
  }); // prettier-ignore

  it('a blend has no neighbours in a list, but its value may be off like that of another fat', () => {
    const parts = [{ fat: fat('coconut-oil'), mass: { g: 60 } }, { fat: fat('olive-oil'), mass: { g: 40 } }];
    const row = { fat: 'Mix', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '23.0' } } };
    const mixed = { version: 1, fats: [row], lye: [naoh('155')], claimed: { superfat: { percent: '5' } } };
    const { findings } = audited(mixed, { fats: { Mix: fatFromBlend({ name: 'Mix', parts }) } });
    const off = findings.find(({ code }) => code === 'saponification-value-contradicted');
    expect(off?.slips.map(({ code }) => code)).toEqual(['decimal-point-moved']);
    const codes = findings.flatMap(({ slips }) => slips.map(({ code }) => code));
    expect(codes).not.toContain('neighbouring-fat-value');
  }); // prettier-ignore

  it('the point of the mass of a fat is looked for, where the own values give the rest', () => {
    // meant: 300 g of olive oil: (90.9 + 40.35)·0.95 = 124.69
    const slips = codesIn(
      recipe(
        [
          ['coconut', '500'],
          ['olive', '30.0'],
        ],
        '124.7',
      ),
    );
    expect(slips).toContain('decimal-point-moved fats[1]');
  });

  it('a lye that is weighed in as solid is named without any claim of its strength', () => {
    const result = recipe(
      [
        ['coconut', '500'],
        ['olive', '500'],
      ],
      '300.5',
      { water: { g: '100' } },
    );
    const slips = result.findings.flatMap((finding) => finding.slips);
    expect(slips.find(({ code }) => code === 'solution-as-solid')?.words).toEqual({ strength: '50' });
    // a recipe that prints another strength did not mean that one
    const claimed = { superfat: { percent: '5' }, strength: { percent: '75' } };
    const other = recipe([['coconut', '500'], ['olive', '500']], '300.5', { water: { g: '100' }, claimed }); // prettier-ignore
    expect(codesIn(other)).not.toContain('solution-as-solid');
  });

  it('a lye reckoned with the strength that is claimed is named', () => {
    // 150.24 g of hydroxide by 38 % would be 395.4 g of lye, which is of 32.4 %
    const slips = codesIn(
      recipe(
        [
          ['coconut', '500'],
          ['olive', '500'],
        ],
        '1',
        {
          lye: [{ alkali: 'naoh', mass: { g: '395.4' }, solution: { hydroxide: { percent: '32.4' } } }],
          claimed: { superfat: { percent: '5' }, strength: { percent: '38' } },
        },
      ),
    );
    expect(slips[0]).toBe('claimed-strength-used');
  });

  it('a superfat printed as a fraction is named', () => {
    expect(codesIn(recipe([['coconut', '1000']], '172.7', { claimed: { superfat: { percent: '0.05' } } }))).toContain(
      'superfat-fraction-as-percent',
    );
  });

  it('strength and total are not judged where the water of a solid is not stated', () => {
    const { verdict, findings } = recipe([['coconut', '1000']], '172.7', {
      claimed: { superfat: { percent: '5' }, strength: { percent: '33' }, waterPerAlkali: '2', total: { g: '1518' } },
    });
    expect(findings.filter(({ code }) => code.endsWith('-contradicted'))).toEqual([]);
    expect(verdict).not.toBe('wrong');
  });

  it('free caustic above the limit that the recipe prints itself is doubtful', () => {
    const { verdict, findings } = recipe([['coconut', '1000']], '165', {
      claimed: { freeCausticAlkali: { percentNaoh: '2' } },
    });
    expect([verdict, findings[0]?.code]).toEqual(['doubtful', 'free-caustic-printed-above-limit']);
  });
});
