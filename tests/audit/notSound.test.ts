/** Recipes that are not sound although lye and fats fit: lye that does not dissolve, assays of no solid, pots of water; and acid. */
import fc from 'fast-check';
import { toJson } from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { describe, expect, it } from 'vitest';
import { Exact } from '../laws/exact.js';
import { audited, codesOf, drumWith, findingIn, naoh } from './recipes.js';

const koh = (g: string, percent = '100'): object => ({ alkali: 'koh', mass: { g }, solid: { hydroxide: { percent } } });
const solution = (alkali: string, g: string, percent: string | number): object => ({
  alkali,
  mass: { g },
  solution: { hydroxide: { percent } },
});
const made = (lye: readonly object[], g?: string) =>
  audited(drumWith(0, { lye, ...(g === undefined ? {} : { water: { g } }) }));

const CODE = 'lye-stronger-than-dissolves';

describe('lye that does not dissolve', () => {
  // 52.2 % of NaOH, 52.8 % of KOH; of both together the lower
  it.each<[string, readonly object[], string | undefined, string | undefined]>([
    ['170 g of NaOH in 155.6 g of water are 52.21 %', [naoh('170')], '155.6', 'lye'],
    ['and in 155.7 g 52.195 %', [naoh('170')], '155.7', undefined],
    ['none at all', [naoh('170')], '0', 'lye'],
    ['not stated: of solids nothing is said', [naoh('170')], undefined, undefined],
    ['200 g of KOH in 178.7 g are 52.81 %', [koh('200')], '178.7', 'lye'],
    ['and in 178.8 g 52.80 %', [koh('200')], '178.8', undefined],
    ['100 g of each in 183 g are 52.22 %', [naoh('100'), koh('100')], '183', 'lye'],
    ['and in 183.2 g 52.19 %', [naoh('100'), koh('100')], '183.2', undefined],
    ['a solution that is a melt', [solution('naoh', '200', 75)], undefined, 'lye'],
    ['one of KOH', [solution('koh', '300', '60')], undefined, 'lye'],
    ['one that is none, even with water to it', [solution('naoh', '200', '60')], '400', 'lye[0]'],
    ['or with a solid whose water is not stated', [naoh('60'), solution('koh', '60', 60)], undefined, 'lye[1]'],
    ['the usual stock', [solution('naoh', '300', '50')], undefined, undefined],
    ['what is not hydroxide counts as water: 90 % of 188.9 in 136.7 g are 52.21 %', [naoh('188.9', 90)], '136.7', 'lye'],
    ['and in 136.9 g 52.18 %', [naoh('188.9', 90)], '136.9', undefined],
    ['an assay not stated by its likely figure, 97.75 % of 172 g in 150 g: 52.21 %', [{ alkali: 'naoh', mass: { g: '172' } }], '150', 'lye'],
    ['and in 150.2 g 52.18 %', [{ alkali: 'naoh', mass: { g: '172' } }], '150.2', undefined],
  ])('%s', (_, lye, water, path) => {
    const { findings, verdict } = made(lye, water);
    const found = findings.filter(({ code }) => code === CODE);
    expect(found.map((one) => [one.path, one.severity])).toEqual(path === undefined ? [] : [[path, 'caution']]);
    if (path !== undefined) expect(verdict).toBe('doubtful');
  }); // prettier-ignore

  it('is told with the strength, what dissolves, and the least water', () => {
    const { computed, values, explanation } = findingIn(made([naoh('130')], '60'), CODE);
    expect(new Exact((toJson(computed) as { percent: string }).percent).toFixed(3)).toBe('68.421'); // 130/190
    const { leastWater, dissolvesTo } = toJson(values) as { leastWater: { g: string }; dissolvesTo: object };
    expect(new Exact(leastWater.g).toFixed(3)).toBe('119.042'); // 130/0.522 − 130
    expect(dissolvesTo).toEqual({ percent: '52.2' });
    expect(explanation).toContain('68.4 % hydroxide');
    expect(explanation).toContain('at least 119 g of water added; it has 60 g');
    const melt = findingIn(made([solution('koh', '100', '66')], '500'), CODE);
    expect(melt.explanation).toContain('at least 25 g of water more'); // 66/52.8 = 1.25
  });

  it('the least water that is named is enough, and a gram less is not', () => {
    const alkali = fc.constantFrom('naoh', 'koh');
    const row = fc.record({ alkali, g: fc.integer({ min: 50, max: 300 }), percent: fc.integer({ min: 90, max: 101 }) });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 3 }), (rows) => {
        const lye = rows.map((one) => ({ alkali: one.alkali, mass: { g: one.g }, solid: { hydroxide: { percent: one.percent } } }));
        const { leastWater } = toJson(findingIn(made(lye, '0'), CODE).values) as { leastWater: { g: string } };
        const least = new Exact(leastWater.g);
        expect(codesOf(made(lye, least.toFixed(6, Exact.ROUND_UP)))).not.toContain(CODE);
        expect(codesOf(made(lye, least.minus(1).toFixed(6)))).toContain(CODE);
      }),
      { seed: 20261201, numRuns: 40 },
    ); // prettier-ignore
  });

  it('a lye that cannot be read is not judged, nor is one whose water cannot', () => {
    expect(codesOf(audited(drumWith(0, { lye: [naoh('170'), { alkali: 'lime' }], water: { g: '10' } })))).not.toContain(
      CODE,
    );
    expect(codesOf(audited(drumWith(170, { water: { g: 'some' } })))).not.toContain(CODE);
  });
});

describe('an assay that no solid is sold with', () => {
  it.each<[string, object, string, boolean]>([
    ['naoh', { hydroxide: { percent: '89.9' } }, '89.9', true],
    ['naoh', { hydroxide: { percent: '90' } }, '', false],
    ['naoh', { hydroxide: { percent: '101' } }, '', false],
    ['naoh', { hydroxide: { fraction: '1.011' } }, '101.1', true],
    ['naoh', { hydroxide: { percent: 50 } }, '50', true],
    ['koh', { hydroxide: { percent: 75 } }, '', false],
    ['koh', { hydroxide: { percent: '74.9' } }, '74.9', true],
    ['koh', { hydroxide: { percent: 102 } }, '102', true],
    // all alkali is what is sold; carbonate that is stated explains the rest
    ['naoh', { totalAlkali: { percent: 92 }, carbonate: { percent: 5 } }, '', false],
    ['naoh', { totalAlkali: { percent: '89.5' }, carbonate: { percent: 1 } }, '89.5', true],
    // the likely figure of a range
    ['koh', { hydroxide: { low: { percent: 70 }, high: { percent: 90 } } }, '', false],
  ])('%s, %j', (alkali, solid, percent, isFound) => {
    const { findings } = made([{ alkali, mass: { g: '100' }, solid }], '300');
    const found = findings.find(({ code }) => code === 'assay-not-of-a-solid');
    expect(found?.path).toBe(isFound ? 'lye[0].solid' : undefined);
    if (isFound) {
      expect([toJson(found?.claimed), found?.severity]).toEqual([{ percent }, 'caution']);
      expect(found?.explanation).toContain(Number(percent) < 100 ? 'a solution, which brings its own water' : 'No more than pure');
    }
  }); // prettier-ignore

  it('makes doubtful what is sound otherwise; of a solution, and where none is stated, nothing is said', () => {
    const claimed = { superfat: { percent: '4.6' } };
    const of = (lye: object) => audited(drumWith(0, { lye: [lye], water: { g: '300' }, claimed }));
    expect(of(naoh('347', '50')).verdict).toBe('doubtful');
    expect(of(solution('naoh', '347', '50')).verdict).toBe('sound');
    expect(codesOf(of({ alkali: 'koh', mass: { g: '200' } }))).not.toContain('assay-not-of-a-solid');
  });
});

describe('a pot of which little is soap', () => {
  const poured = (water: string, more: object = {}) => audited(drumWith('170', { water: { g: water }, ...more }));

  it('is doubtful above six times its fats', () => {
    // 1000 + 170 + 4830 = 6000
    expect(poured('4830').verdict).toBe('sound');
    const result = poured('4831');
    expect([result.verdict, codesOf(result)]).toEqual(['doubtful', ['pot-much-diluted', 'worst-case']]);
    expect(toJson(findingIn(result, 'pot-much-diluted'))).toMatchObject({
      severity: 'caution',
      path: 'recipe',
      computed: { number: '6.001' },
      values: { pot: { g: '6001' }, fats: { g: '1000' }, most: { number: '6' } },
    });
  });

  it('whatever it is that fills it', () => {
    expect(codesOf(poured('300', { additions: [{ name: 'clay', mass: { kg: '4.6' } }] }))).toContain('pot-much-diluted');
    expect(codesOf(poured('300', { additions: [{ solvent: 'glycerol', mass: { kg: '4.5' } }] }))).not.toContain('pot-much-diluted');
  }); // prettier-ignore

  it('tells what the free caustic is to the fats alone', () => {
    // (180 − 178.2238)/8180 = 0.0217 % at the leanest lot, 0.178 % of the fats
    const { explanation } = findingIn(audited(drumWith('180', { water: { g: '7000' } })), 'pot-much-diluted');
    expect(explanation).toContain('8.18 times its fats');
    expect(explanation).toContain('at worst 0.0217 % NaOH, which is 0.178 % of the fats');
    expect(findingIn(poured('7000'), 'pot-much-diluted').explanation).not.toContain('at worst');
  });

  it('is not told where a fat cannot be read', () => {
    const fats = [{ fat: 'Drum', mass: { g: '1000' } }, { fat: 1 }];
    expect(codesOf(poured('9000', { fats }))).not.toContain('pot-much-diluted');
  });
});

describe('acid that decides', () => {
  // 1000 g of 250 to 260 mg KOH/g take up 178.2238 to 185.353 g of NaOH, likely 181.7883; of 20 g citric acid come
  // 20/192.123 · 3 · 39.997 = 12.491 g of it, of lactic 20/90.078 · 39.997 = 8.881 g
  const acid = (g: string, more: object = {}, name = 'citric acid') =>
    audited(drumWith(g, { water: { g: '300' }, additions: [{ name, mass: { g: '20' } }], ...more }));

  it.each([
    ['182.5', 'citric acid', 'note', 'doubtful'], // (182.5 − 181.7883)/1502.5 = 0.0474 %: below the limit without it
    ['182.6', 'citric acid', 'caution', 'doubtful'], // 0.054 %
    ['195.0', 'Zitronensäure', 'caution', 'doubtful'], // 182.509 are left, 0.0476 %
    ['195.1', 'Zitronensäure', 'note', 'dangerous'], // 182.609, 0.0542 %
    ['191.4', 'ácido láctico', 'caution', 'doubtful'], // 182.519, 0.0484 %
    ['191.5', 'ácido láctico', 'note', 'dangerous'], // 182.619, 0.055 %
    ['190.0', 'vinegar', 'note', 'dangerous'],
  ])('%s g of NaOH and 20 g of %s', (g, name, severity, verdict) => {
    const result = acid(g, {}, name);
    expect([findingIn(result, 'acid-not-counted').severity, result.verdict]).toEqual([severity, verdict]);
    expect(codesOf(result).includes('free-caustic-above-limit')).toBe(verdict === 'dangerous');
  });

  it('stands first, with both superfats', () => {
    const [first] = acid('190').findings;
    expect([first?.code, first?.path]).toEqual(['acid-not-counted', 'additions[0]']);
    // 100 · (1 − 190/181.7883), 100 · (1 − 177.509/181.7883), (190 − 181.7883)/1510
    expect(first?.explanation).toContain('superfat is −4.52 %, which leaves 0.544 % NaOH');
    expect(first?.explanation).toContain('superfat is 2.35 %');
    const { superfat, superfatWithAcid, atMost } = toJson(first?.values) as Record<string, Record<string, Record<string, string>>>;
    const fixed = (figure: unknown): string => new Exact(String(figure)).toFixed(3);
    expect([superfat?.['likely']?.['percent'], superfatWithAcid?.['likely']?.['percent'], atMost?.['g']].map(fixed)).toEqual(['-4.517', '2.354', '12.491']);
  }); // prettier-ignore

  it('without its mass it decides nothing', () => {
    expect(acid('190', { additions: [{ name: 'citric acid', volume: { mL: '20' } }] }).verdict).toBe('dangerous');
  });

  it('several are counted together and told once; those of unknown kind stay notes', () => {
    const additions = [
      { name: 'citric acid', mass: { g: '10' } },
      { name: 'acide citrique', mass: { g: '10' } },
      { name: 'stearic acid', mass: { g: '10' } },
    ];
    const told = (of: readonly object[]) =>
      acid('190', { additions: of })
        .findings.filter(({ code }) => code === 'acid-not-counted')
        .map(({ path, severity }) => `${path} ${severity}`);
    expect(told(additions)).toEqual(['additions[0] caution', 'additions[2] note']);
    // 6.25 g leave 183.75: more than the likely lots take up
    expect(told(additions.slice(1))).toEqual(['additions[0] note', 'additions[1] note']);
  });

  it('more of it than there is lye leaves none', () => {
    const result = acid('190', { additions: [{ name: 'citric acid', mass: { g: '500' } }] });
    expect(result.verdict).toBe('doubtful');
    expect(findingIn(result, 'acid-not-counted').explanation).toContain('superfat is 100 %');
  });

  it('an assay that is not stated counts at its lowest', () => {
    const of = (g: string) => acid('0', { lye: [{ alkali: 'naoh', mass: { g } }] }).verdict;
    expect([of('200'), of('206')]).toEqual(['doubtful', 'dangerous']); // 190 and 195.7 g
  });

  // 190 g are −6.61 to −2.51 % without, and 177.509 are 0.40 to 4.23 % with all of it
  it.each([['-5', true], ['-1', true], ['2', true], ['5', true], ['6', false], ['-8', false], ['4.4', false]])(
    'a superfat of %s per cent is one that either way of counting gives: %s',
    (percent, fits) => {
      for (const [field, code] of [['claimed', 'superfat-contradicted'], ['target', 'target-missed']] as const) {
        // nobody aims at alkali in excess
        if (field === 'target' && percent.startsWith('-')) continue;
        const result = acid('190.0', { [field]: { superfat: { percent } } });
        expect([codesOf(result).includes(code), result.verdict]).toEqual([!fits, fits ? 'doubtful' : 'wrong']);
      }
    },
  ); // prettier-ignore

  it('the recipe’s own values may have given it lye', () => {
    // 255.1/255 · 181.7883 · 0.971 + 12.491 = 189.08 at most
    const of = (g: string, additions: object[]) =>
      codesOf(
        acid(g, {
          fats: [{ fat: 'Drum', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '255.0' } } }],
          claimed: { superfat: { percent: '3.0' } },
          additions,
        }),
      );
    const citric = [{ name: 'citric acid', mass: { g: '20' } }];
    expect(of('189.0', citric)).not.toContain('own-values-contradicted');
    expect(of('190.0', citric)).toContain('own-values-contradicted');
    expect(of('178.9', [])).toContain('own-values-contradicted'); // superfat −0.4 to 3.5
  });

  it('a limit that is aimed at is not missed if acid keeps it', () => {
    const aim = (g: string, name?: string) =>
      acid(g, { target: { freeCausticAlkaliAtMost: { percentNaoh: '0.01' } } }, name);
    expect(codesOf(aim('190'))).not.toContain('target-missed');
    expect(aim('190').verdict).toBe('doubtful');
    expect(codesOf(aim('190', 'vinegar'))).toContain('target-missed');
    expect(codesOf(aim('199'))).toContain('target-missed'); // 186.5 are left
  });

  it('dangerous if and only if what pure acid leaves is above the limit', () => {
    const grams = fc.integer({ min: 1700, max: 2200 });
    fc.assert(
      fc.property(grams, fc.integer({ min: 0, max: 400 }), fc.constantFrom('citric acid', 'lactic acid'), (tenths, acidTenths, name) => {
        const [g, sour] = [new Exact(tenths).div(10), new Exact(acidTenths).div(10)];
        const additions = acidTenths === 0 ? [] : [{ name, mass: { g: sour.toFixed(1) } }];
        const { verdict } = acid(g.toFixed(1), { additions });
        const perGram = name === 'citric acid' ? new Exact(3).div('192.123') : new Exact(1).div('90.078');
        const free = g.minus(sour.times(perGram).times('39.997')).minus(new Exact('255').times('39.997').div('56.105'));
        const share = free.times(100).div(g.plus(1300).plus(sour));
        // the molar masses stand here to the digits of a handbook
        fc.pre(share.minus('0.05').abs().gt('0.0005'));
        expect(verdict === 'dangerous').toBe(share.gt('0.05'));
        if (verdict === 'sound') expect(g.lte('179')).toBe(true);
      }),
      { seed: 20261202, numRuns: 200 },
    );
  }); // prettier-ignore
});

describe('the findings of the whole', () => {
  it('are data, whatever the limit', () => {
    const recipe = drumWith('190', { lye: [naoh('380', '50')], water: { g: '9000' }, additions: [{ name: 'NaOH', mass: { g: '30' } }] });
    for (const limit of [{ percentNaoh: '0' }, { percentNaoh: '5' }]) {
      const result = auditRecipe(recipe, { limit });
      for (const { explanation } of result.findings) expect(explanation).toMatch(/^[A-Z0-9].*\.$/);
    }
  }); // prettier-ignore
});
