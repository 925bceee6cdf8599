/** What an audit says besides what is wrong: how much lye is right, when lots explain it, and no more slips than are read. */
import { fat, fatFromBlend, fatFromCertificate, toJson, type Fat } from 'laurate';
import { auditRecipe, verdictsOf } from 'laurate/audit';
import { describe, expect, it } from 'vitest';
import { audited, codesOf, drumWith, fats, findingIn, naoh, slipsIn } from './recipes.js';

describe('a certificate outside every published range of its fat', () => {
  const lot = (mgKohPerG: number): Fat =>
    fatFromCertificate({ name: 'Drum 9', like: fat('coconut-oil'), saponificationValue: { mgKohPerG } });
  const blend = fatFromBlend({ name: 'Stock', parts: [{ fat: lot(340), mass: { g: 1 } }] });
  // 340 mg KOH/g take up 242.5 g of NaOH
  const recipe = (of: unknown) => ({ version: 1, fats: [{ fat: of, mass: { g: '1000' } }], lye: [naoh(230)] });

  it.each<[string, unknown, object]>([
    ['in the recipe', lot(340), {}],
    ['in the recipe, from JSON', toJson(lot(340)), {}],
    ['among the options', 'mine', { fats: { mine: lot(340) } }],
    ['in a blend', blend, {}],
  ])('is doubtful: %s', (_, of, options) => {
    const result = auditRecipe(recipe(of), options);
    expect(result.verdict).toBe('doubtful');
    const found = findingIn(result, 'fat-contradicts-standard');
    expect(found).toMatchObject({ severity: 'caution', path: 'fats[0].fat' });
    expect(found.explanation).toContain('340.0 mg KOH/g lies outside the published 248 to 265 of Coconut oil');
    expect(toJson(found.claimed)).toEqual({ mgKohPerG: '340' });
    expect(found.values['said']).toContain('lies outside the published');
    expect([...verdictsOf([recipe(of)], options)]).toEqual([{ index: 0, verdict: 'doubtful' }]);
  });

  it.each([
    ['Odd. ', 'Scale: Odd. Superfat and free caustic'],
    ['Odd?', 'Scale: Odd? Superfat'],
    ['Odd', 'Scale: Odd. Superfat'],
  ])('in words of its own, %j', (text, said) => {
    const off = toJson(lot(340)) as Record<string, unknown>;
    const own = { ...off, name: 'Scale', notes: [{ code: 'certificate-outside-published-range', text: text.trim() }] };
    const result = auditRecipe(recipe(own));
    expect(findingIn(result, 'fat-contradicts-standard').explanation).toContain(said);
  });

  it('one inside is not, and no lye is recommended for one outside', () => {
    expect(codesOf(auditRecipe(recipe(lot(250))))).not.toContain('fat-contradicts-standard');
    const danger = findingIn(auditRecipe({ ...recipe(lot(340)), lye: [naoh(250)] }), 'free-caustic-above-limit');
    expect(danger.values).not.toHaveProperty('lye');
    expect(danger.explanation).not.toContain('would be right');
  });
});

describe('how much lye is right', () => {
  // a kilogram of 250 to 260, likely 255 mg KOH/g: 178.22, 181.79, 185.35 g of NaOH
  const lyeIn = (recipe: object, code: Parameters<typeof findingIn>[1]) => {
    const { values, explanation } = findingIn(audited(recipe), code);
    return { lye: toJson(values['lye']), explanation };
  };

  it('for the superfat that is claimed, rounded down', () => {
    const { lye, explanation } = lyeIn(drumWith(200, { claimed: { superfat: { percent: '5' } } }), 'free-caustic-above-limit');
    // 0.95 of it: 169.31, 172.70, 176.09
    expect(lye).toEqual({ low: { g: '169' }, likely: { g: '172' }, high: { g: '176' } });
    expect(explanation).toContain(
      'For the superfat of 5 % that it claims, 169 to 176 g of this lye would be right, depending on the lots within the published ranges; likely 172 g.',
    );
    expect(explanation).not.toContain('The leanest of these lots');
  }); // prettier-ignore

  it('for the superfat that is aimed at, in the unit and assay of the lye, once in words', () => {
    const recipe = drumWith(0, {
      lye: [{ alkali: 'naoh', mass: { oz: '20' }, solution: { hydroxide: { percent: 50 } } }],
      target: { superfat: { percent: '1' } },
    });
    const result = audited(recipe);
    // 0.99 of it, twice, over 28.3495: 12.447, 12.696, 12.945 oz; the leanest lots take up 12.573 oz
    const expected = { low: { oz: '12.4' }, likely: { oz: '12.6' }, high: { oz: '12.9' } };
    const [danger, missed] = [findingIn(result, 'free-caustic-above-limit'), findingIn(result, 'target-missed')];
    expect([toJson(danger.values['lye']), toJson(missed.values['lye'])]).toEqual([expected, expected]);
    expect(danger.explanation).toMatch(/that it aims at, .* The leanest of these lots take up no more than 12\.5 oz of this lye\.$/);
    expect(missed.explanation).not.toContain('would be right');
  }); // prettier-ignore

  it('without a superfat the most that the leanest lots take up', () => {
    const { lye, explanation } = lyeIn(drumWith(120), 'much-fat-left');
    expect(lye).toEqual({ low: { g: '178' }, likely: { g: '181' }, high: { g: '185' } });
    expect(explanation).toContain('At most 178 g of this lye is what even the leanest lots');
    const negative = lyeIn(drumWith(200, { claimed: { superfat: { percent: '-3' } } }), 'superfat-contradicted');
    expect(negative.lye).toEqual(lye);
  });

  it('of several alkalis a factor for all of them', () => {
    const lye = [naoh(100), { alkali: 'koh', mass: { g: '180' }, solid: { hydroxide: { percent: 90 } } }];
    // 100/39.997 + 162/56.105 = 5.3877 mol; 4.4560, 4.5451 and 4.6342 are taken up
    const found = lyeIn(drumWith(0, { lye, claimed: { superfat: { percent: '4' } } }), 'superfat-contradicted');
    expect(found.lye).toEqual({ low: { number: '0.793' }, likely: { number: '0.809' }, high: { number: '0.825' } });
    const { explanation } = findingIn(audited(drumWith(0, { lye })), 'free-caustic-above-limit');
    expect(explanation).toContain('At most all of the lye times 0.827 is what');
  });

  it('is not told of a fat that is not known', () => {
    const fats = [{ fat: 'Unheard of', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '250' } } }];
    expect(lyeIn({ version: 1, fats, lye: [naoh(250)] }, 'free-caustic-above-limit').lye).toBeUndefined();
  });
});

describe('a lye that the spread of the lots explains', () => {
  const shea = (gNaohPerG: string, g: string) => ({
    version: 1,
    fats: [{ fat: 'shea-butter', mass: { g: '1000' }, claimed: { saponificationValue: { gNaohPerG } } }],
    lye: [naoh(g)],
    claimed: { superfat: { percent: '0' } },
  });

  it('has no slips, though it is a danger', () => {
    // 0.128 g NaOH/g are 179.5 mg KOH/g, within 160 to 195
    const result = audited(shea('0.128', '128'));
    expect([result.verdict, slipsIn(result)]).toEqual(['dangerous', []]);
    const { explanation } = findingIn(result, 'free-caustic-above-limit');
    expect(explanation).toContain(
      'the saponification values that the recipe prints, and they lie within the published',
    );
    const aimed = drumWith(183, {
      fats: [{ fat: 'Drum', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '259' } } }],
      target: { superfat: { percent: '0.9' } },
    });
    expect(slipsIn(audited(aimed))).toEqual([]);
    expect(findingIn(audited(aimed), 'free-caustic-above-limit').explanation).toContain(
      'values that the recipe prints',
    );
    const noValue = audited(drumWith(183, { claimed: { superfat: { percent: '0.5' } } }));
    expect(findingIn(noValue, 'free-caustic-above-limit').explanation).toContain('No slip need be behind it');
    const noAim = audited(
      drumWith(183, {
        fats: [{ fat: 'Drum', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '259' } } }],
      }),
    );
    expect(findingIn(noAim, 'free-caustic-above-limit').explanation).toContain('No slip need be behind it');
    const silent = audited(drumWith(184));
    expect(slipsIn(silent)).toEqual([]);
    expect(findingIn(silent, 'free-caustic-above-limit').explanation).toContain('No slip need be behind it');
  });

  it('has slips as soon as a printed value or the sum is off', () => {
    // 0.158 is 221.6 mg KOH/g
    const [first, second] = slipsIn(audited(shea('0.158', '158')));
    expect([first?.code, second?.code]).toContain('claimed-values-used');
    expect(slipsIn(audited(shea('0.128', '133'))).length).toBeGreaterThan(0);
  });
});

describe('slips', () => {
  const olive = (gNaohPerG: string, g: string) => ({
    version: 1,
    fats: [{ fat: 'olive-oil', mass: { g: '1000' }, claimed: { saponificationValue: { gNaohPerG } } }],
    lye: [naoh(g)],
    claimed: { superfat: { percent: '5' } },
  });
  const codes = (recipe: object, path: string) =>
    audited(recipe)
      .findings.filter((finding) => finding.path === path)
      .flatMap((finding) => finding.slips.map(({ code, words }) => `${code} ${words['other'] ?? ''}`.trim()));

  it('are three at most, and the rest is counted', () => {
    const found = findingIn(audited(olive('0.153', '130')), 'own-values-contradicted');
    expect(found.slips).toHaveLength(3);
    const more = found.values['moreSlips'];
    expect(Number(more)).toBeGreaterThan(0);
    expect(found.explanation).toContain(`${more as string} more would give the figure too`);
  });

  it('the value of a common fat stands before a rare one and an exchange of digits', () => {
    // 0.183 is that of coconut oil; 0.138 would be one of olive oil
    const path = 'fats[0].claimed.saponificationValue';
    expect(codes(olive('0.183', '173'), path)).toEqual([
      'value-of-another-fat Coconut oil', 'koh-value-as-naoh', 'digits-exchanged',
    ]);
    const palm = { version: 1, fats: [{ fat: 'palm-oil', mass: { g: '1000' }, claimed: { saponificationValue: { gNaohPerG: '0.176' } } }], lye: [naoh(120)] };
    expect(codes(palm, path)[0]).toMatch(/Palm kernel oil$/);
  }); // prettier-ignore

  it('the value of a common fat stands before another of the recipe only if it is its own to the digit', () => {
    // palm oil has 190 to 209, likely 197.48
    const row = (value: string) => ({ fat: 'Lot', mass: { g: '100' }, claimed: { saponificationValue: { mgKohPerG: value } } });
    const Broad = fatFromCertificate({ name: 'Broad', kind: 'triglyceride', saponificationValue: { low: { mgKohPerG: 180 }, high: { mgKohPerG: 218 } } });
    const found = (value: string) =>
      findingIn(
        audited({ version: 1, fats: [row(value), { fat: 'Broad', mass: { g: '100' } }], lye: [naoh(30)] }, { fats: { ...fats, Broad } }),
        'saponification-value-contradicted',
      ).slips.flatMap(({ code, words }) => (code === 'rows-swapped' || code === 'value-of-another-fat' ? [words['other']] : []));
    expect(found('199.0')).toEqual(['Broad', 'Palm oil']);

    expect(found('197.5')).toEqual(['Palm oil', 'Broad']);
  }); // prettier-ignore

  it('where a common fat has the value, a rare neighbour stands behind', () => {
    // stearic acid 50 has 194 to 212, palm stearin beside palm olein 187.8 to 216.1; palm oil on its other side ends at 209
    const row = { fat: 'palm-olein', mass: { g: '100' }, claimed: { saponificationValue: { mgKohPerG: '211' } } };
    const Broad = fatFromCertificate({ name: 'Broad', kind: 'triglyceride', saponificationValue: { low: { mgKohPerG: 205 }, high: { mgKohPerG: 290 } } });
    const recipe = { version: 1, fats: [row, { fat: 'Broad', mass: { g: '100' } }], lye: [naoh(30)] };
    const { slips } = findingIn(audited(recipe, { fats: { Broad } }), 'saponification-value-contradicted');
    const others = slips.flatMap(({ words }) => words['other'] ?? []);
    expect(others).toEqual(['Stearic acid, type 50', 'Broad']);
  }); // prettier-ignore

  it('a common fat is not taken for itself', () => {
    // sunflower oil has 187 to 194; olive oil, which is next, 184 to 196
    const row = { fat: 'sunflower-oil', mass: { g: '100' }, claimed: { saponificationValue: { mgKohPerG: '186.5' } } };
    const { slips } = findingIn(audited({ version: 1, fats: [row], lye: [naoh(12)] }), 'saponification-value-contradicted');
    expect(slips.find(({ code }) => code === 'value-of-another-fat')?.words['other']).toBe('Olive oil');
  }); // prettier-ignore

  it('a specific cause stands before printed values that are off', () => {
    // 0.95 of 0.192 and of 0.183, of pure NaOH
    expect(codes(olive('0.192', '182.4'), 'lye').slice(0, 2)).toEqual(['koh-value-as-naoh', 'claimed-values-used']);
    expect(codes(olive('0.183', '173.9'), 'lye').slice(0, 2)).toEqual([
      'value-of-another-fat Coconut oil', 'claimed-values-used',
    ]);
  }); // prettier-ignore

  it('tenfold masses are found without any printed value', () => {
    const superfat = { claimed: { superfat: { percent: '5' } } };
    const [lye] = slipsIn(audited(drumWith('1727', superfat)));
    expect(lye).toMatchObject({ code: 'decimal-point-moved', how: 'explains', path: 'lye[0]', words: { meant: '172.7' } });
    expect(lye?.explanation).toContain('172.7 g of the lye was meant');
    const fats = [{ fat: 'Drum', mass: { g: '100' } }, { fat: 'Second', mass: { g: '500' } }];
    // 0.95 of 181.79 and 67.73 g: of a kilogram of the first
    const row = slipsIn(audited({ version: 1, fats, lye: [naoh('237.0')], ...superfat }));
    expect(row.map(({ code, path }) => `${code} ${path ?? ''}`)).toContain('decimal-point-moved fats[0]');
  }); // prettier-ignore
});

describe('in words', () => {
  it('units are names, and what is many times too much is not told in per cent', () => {
    const ounces = audited(drumWith(0, { lye: [{ alkali: 'naoh', mass: { oz: '172' }, solid: { hydroxide: { percent: 100 } } }], claimed: { superfat: { percent: '5' } } }));
    const danger = findingIn(ounces, 'free-caustic-above-limit');
    // 4 to 6 % less than 178.22 to 185.35 g
    // 172 oz are 4876 g, of which 181.8 are taken up
    expect(danger.explanation).toContain('The lye holds 27 times the alkali that the likely lots of these fats take up');
    expect(danger.slips[0]).toMatchObject({ code: 'unit-mistaken', words: { meant: 'g' } });
    expect(danger.slips[0]?.explanation).toBe(
      'The figure for the lye seems to be in grams, not in ounces. In grams the figure fits: 167.5 to 177.9 g would be right there.',
    );
    const hot = audited(drumWith(170, { temperatures: [{ stage: 'saponification', temperature: { celsius: '160' } }] }));
    expect(slipsIn(hot)[0]?.explanation).toBe(
      'Degrees Fahrenheit seem to be printed as degrees Celsius: 160 °F, which is 71 °C, was meant.',
    );
  }); // prettier-ignore

  it.each(['2', '2.4'])('a ratio of %s is no rounding of 3.02 or 1.03', (waterPerAlkali) => {
    const recipe = (g: string) => drumWith(170, { water: { g }, claimed: { waterPerAlkali } });
    expect(codesOf(audited(recipe('513')))).toContain('water-per-alkali-contradicted');
    expect(codesOf(audited(recipe('175')))).toContain('water-per-alkali-contradicted');
    expect(codesOf(audited(recipe('399')))).not.toContain('water-per-alkali-contradicted'); // 2.35
  });

  it('only additions that are there are named', () => {
    const additions = [{ name: 'lavender oil', mass: { g: '5' } }, { name: 'salt', mass: { g: '5' } }];
    const said = (some: readonly object[]) =>
      audited(drumWith(170, { additions: some })).findings.filter(({ code }) => code === 'not-judged').map((one) => one.explanation);
    expect(said(additions)).toEqual([
      'What is in lavender oil and salt is not known here: whether it takes up lye or brings alkali is not counted.',
    ]);
    expect(said([{ name: 'citric acid', mass: { g: '5' } }])).toEqual([]);
    expect(said([{ solvent: 'triethanolamine', mass: { g: '5' } }])).toEqual([
      'The alkali that triethanolamine brings is not counted.',
    ]);
    const many = Array.from({ length: 9 }, (_, at) => ({ name: `herb ${String(at)}`, mass: { g: '1' } }));
    expect(said(many)[0]).toContain('herb 4 and 4 more is not known here');
  }); // prettier-ignore
});
