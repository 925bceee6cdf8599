/** What is printed of the whole pot: totals with volumes, shares, pH, free caustic and temperatures. */
import { fatFromCertificate, toJson } from 'laurate';
import { describe, expect, it } from 'vitest';
import { audited, codesOf, findingIn, naoh, slipsIn } from './recipes.js';

/** 1000 g of one certified fat, 170 g of pure NaOH, 330 g of water: 1500 g, superfat 4.6 %. */
const pot = (more: object = {}): object => ({
  version: 1,
  fats: [{ fat: 'Lot', mass: { g: '1000' } }],
  lye: [naoh('170.0')],
  water: { g: '330' },
  ...more,
});
const spirit = (mL: string, more: object = {}): object => ({
  solvent: 'ethanol',
  volume: { mL },
  assay: { percentByVolume: '96' },
  ...more,
});
const syrup = (more: object = {}): object => ({
  solvent: 'sorbitol',
  mass: { g: '200' },
  assay: { percent: '70' },
  ...more,
});
const slipCodes = (recipe: object): readonly string[] => slipsIn(audited(recipe)).map(({ code }) => code);

describe('a total with additions by volume', () => {
  const total = (g: string, ...additions: readonly object[]) => audited(pot({ additions, claimed: { total: { g } } }));

  // spirit of 96 % by volume weighs 0.8116 g/mL at 15 and 0.8031 at 25 °C (OIML R 22): 300 mL are 240.9 to 243.5 g
  it.each<[string, string]>([
    ['1740', 'sound'],
    ['1744', 'sound'],
    ['1739', 'wrong'],
    ['1745', 'wrong'],
    ['1800', 'wrong'],
  ])('of %s g is %s', (g, verdict) => {
    expect(total(g, spirit('300')).verdict).toBe(verdict);
  });

  it('that leaves out all of the additions is seen', () => {
    const added = [syrup(), { name: 'clay', mass: { g: '30' } }];
    expect(total('1730', ...added).verdict).toBe('sound');
    expect(findingIn(total('1500', ...added), 'total-contradicted').slips.map(({ words }) => words['part'])).toContain('the additions');
  }); // prettier-ignore

  it('that counts millilitres as grams is seen', () => {
    const { slips } = findingIn(total('1800', spirit('300')), 'total-contradicted');
    expect(slips[0]).toMatchObject({
      code: 'unit-mistaken',
      path: 'additions[0]',
      words: { printed: 'mL', meant: 'g' },
    });
  });

  // 30 US fl oz are 887.2 mL, 30 imperial 852.4 mL, of 0.807 g/mL: 25.3 and 24.3 oz
  it.each(['usFlOz', 'impFlOz'])('that counts fluid ounces (%s) as ounces is seen', (unit) => {
    const oz = (mass: string) => ({ oz: mass });
    const recipe = (total: string) =>
      audited({
        version: 1,
        fats: [{ fat: 'Lot', mass: oz('100.0') }],
        lye: [{ alkali: 'naoh', mass: oz('17.00'), solid: { hydroxide: { percent: 100 } } }],
        water: oz('33.00'),
        additions: [{ solvent: 'ethanol', volume: { [unit]: '30.0' }, assay: { percentByVolume: '96' } }],
        claimed: { total: oz(total) },
      });
    expect(slipsIn(recipe('180.0'))).toMatchObject([
      { code: 'unit-mistaken', path: 'additions[0]', words: { printed: unit, meant: 'oz' } },
    ]);
    expect(recipe(unit === 'usFlOz' ? '175.3' : '174.3').verdict).toBe('sound');
  });

  it('holds over the grades that are sold where the assay is not stated, and says so', () => {
    const unstated = { solvent: 'glycerol', volume: { mL: '100' } };
    // 83.5 to 100 % glycerol: 1.216 to 1.264 g/mL
    expect(total('1624', unstated).verdict).toBe('sound');
    const result = total('1627', unstated);
    expect([result.verdict, findingIn(result, 'assay-missing').path]).toEqual(['sound', 'additions[0]']);
    expect(total('1629', unstated).verdict).toBe('wrong');
  });

  it.each<[string, object]>([
    ['a name', { name: 'scent', volume: { mL: '10' } }],
    ['a syrup, of which no density is on file', { solvent: 'sorbitol', volume: { mL: '10' }, assay: { percent: 70 } }],
    ['spirit that may be of any strength', { solvent: '2-propanol', volume: { mL: '10' } }],
  ])('is not judged with %s', (_, addition) => {
    const result = total('9', addition);
    expect(result.verdict).toBe('sound');
    expect(codesOf(result).filter((code) => code === 'not-judged').length).toBeGreaterThanOrEqual(2);
  });

  it('allows for the heat of a liquid with one figure only', () => {
    // dipropylene glycol: 1.0206 g/mL at 20 °C, half a per cent either way
    const liquid = { solvent: 'dipropylene-glycol', volume: { mL: '1000' }, assay: { percent: 100 } };
    expect(['2514', '2515', '2526', '2527'].map((g) => total(g, liquid).verdict)).toEqual([
      'wrong',
      'sound',
      'sound',
      'wrong',
    ]);
  });
});

describe('the share of an addition', () => {
  const withShare = (percent: string, addition: object, ...others: readonly object[]): object =>
    pot({ additions: [{ ...addition, claimed: { share: { percent } } }, ...others] });
  const verdict = (percent: string, addition: object) => audited(withShare(percent, addition)).verdict;

  it('is one of everything in the pot, as weighed', () => {
    // 200 g in 1700 g: 11.76 %
    expect(['11.8', '11.7', '11.9', '12'].map((percent) => verdict(percent, syrup()))).toEqual([
      'sound', 'sound', 'wrong', 'sound',
    ]); // prettier-ignore
    const found = findingIn(audited(withShare('20.0', syrup())), 'addition-share-contradicted');
    expect([found.path, found.claimed]).toEqual(['additions[0].claimed.share', { percent: '20.0' }]);
  });

  it.each<[string, object, string, string]>([
    ['20.0', syrup(), 'percent-of-another-total', 'parts to 100 of the fats'],
    ['16.7', syrup(), 'percent-of-another-total', 'parts to 100 of everything but the lye'],
    ['13.3', syrup(), 'percent-of-another-total', 'parts to 100 of everything else'],
    // soap: (1000/4.4559 − 12.683 + 21.982) g/mol · 4.2503 mol = 993.3 g
    ['20.1', syrup(), 'percent-of-another-total', 'parts to 100 of the soap'],
    // 140 g of dry substance in 1700 g
    ['8.24', syrup(), 'dry-as-syrup', ''],
    // 300 mL counted as 300 g in 1800 g
    ['16.7', spirit('300'), 'unit-mistaken', 'g'],
    // 242.2 g as if they were 242.2 mL: 195.5 g in 1695.5 g
    ['11.53', { solvent: 'ethanol', mass: { g: '242.2' }, assay: { percentByVolume: '96' } }, 'unit-mistaken', 'mL'],
  ])('of %s %% is explained', (percent, addition, code, word) => {
    const found = findingIn(audited(withShare(percent, addition)), 'addition-share-contradicted');
    expect(found.slips.some((slip) => slip.code === code && Object.values(slip.words).join().includes(word))).toBe(
      true,
    );
  });

  it('in volume of the pot is seen', () => {
    // soap 1.0 to 1.1 g/mL, and syrup: 11.76 g in 100 g are more in 100 mL
    expect(slipCodes(withShare('12.4', syrup()))).toContain('weight-by-volume-as-by-weight');
  });

  it('is not judged where not every mass is known, and is named then', () => {
    const result = audited(withShare('50', syrup(), { name: 'scent', volume: { mL: '1' } }));
    expect(result.verdict).toBe('sound');
    expect(result.findings.map(({ path }) => path)).toContain('additions[0].claimed.share');
  });

  it('that cannot be read leaves the addition itself to be judged', () => {
    const additions = [{ ...syrup(), claimed: { share: { percent: -1 } } }];
    const result = audited(pot({ additions, claimed: { total: { g: '1600' } } }));
    expect(codesOf(result)).toEqual(expect.arrayContaining(['unreadable', 'total-contradicted']));
  });
});

describe('shares of the whole', () => {
  // soap 993.3 g, glycerol 4.2503 mol · 92.094/3 = 130.5 g, water 330 g, all in 1500 g
  it.each<[string, string, string]>([
    ['soap', '66.2', 'sound'],
    ['soap', '66.4', 'wrong'],
    ['water', '22.0', 'sound'],
    ['water', '22.2', 'wrong'],
    ['glycerol', '8.7', 'sound'],
    ['glycerol', '8.9', 'wrong'],
    ['clearingAgents', '8.7', 'sound'],
    ['polyol', '8.7', 'sound'],
    ['sugar', '0', 'sound'],
    ['spirit', '5', 'wrong'],
  ])('%s of %s %% is %s', (part, percent, verdict) => {
    expect(audited(pot({ claimed: { shares: { [part]: { percent } } } })).verdict).toBe(verdict);
  });

  it('of what clears may leave out the glycerol that forms', () => {
    const claimed = { shares: { clearingAgents: { percent: '8.2' }, polyol: { percent: '8.2' } } };
    // 140 g of sorbitol in 1700 g
    expect(audited(pot({ additions: [syrup()], claimed })).verdict).toBe('sound');
  });

  it('of water holds what of a solid alkali is not known to be alkali', () => {
    const lye = [naoh('178.9', 95)];
    // 330 to 338.9 g in 1508.9 g
    const verdicts = ['21.7', '22.2', '22.5', '22.7'].map(
      (percent) => audited(pot({ lye, claimed: { shares: { water: { percent } } } })).verdict,
    );
    expect(verdicts).toEqual(['wrong', 'sound', 'sound', 'wrong']);
  });

  it('of water is the same whether some of it goes into the lye or in by itself', () => {
    // 430 g in 1600 g: 26.9 %
    const verdicts = (more: object) =>
      ['26.7', '26.9', '27.1'].map(
        (percent) => audited(pot({ ...more, claimed: { shares: { water: { percent } } } })).verdict,
      );
    const apart = { additions: [{ solvent: 'water', mass: { g: '100' } }] };
    expect([verdicts({ water: { g: '430' } }), verdicts(apart)]).toEqual(Array(2).fill(['wrong', 'sound', 'wrong']));
  });

  it.each<[string, object, object, string]>([
    // 140 and 60 g of water, and 130.5 g of glycerol, in 1700 g
    ['a syrup counted whole', { shares: { clearingAgents: { percent: '19.4' } } }, syrup(), 'syrup-as-dry'],
    // 200 g counted as 140 g
    ['a dry sugar as a syrup', { shares: { sugar: { percent: '8.2' } } }, { solvent: 'sucrose', mass: { g: '200' }, assay: { percent: 100 } }, 'dry-as-syrup'],
    // 242.2 g of 93.84 % by mass, reckoned with 96: 232.5 g in 1742.2 g
    ['spirit by volume', { shares: { spirit: { percent: '13.35' } } }, spirit('300'), 'percent-by-volume-as-by-mass'],
    // 270.5 g to 1000 g of fats
    ['a share of the fats', { shares: { clearingAgents: { percent: '27.0' } } }, syrup(), 'percent-of-another-total'],
    ['parts to one of the fats', { clearingAgentsPerSoap: '0.2705' }, syrup(), 'percent-of-another-total'],
    ['a share for a ratio', { waterPerSoap: '0.2294' }, syrup(), 'percent-of-another-total'],
  ])('%s is explained', (_, claimed, addition, code) => {
    const recipe = pot({ additions: [addition], claimed });
    expect(audited(recipe).verdict).toBe('wrong');
    expect(slipCodes(recipe)).toContain(code);
  }); // prettier-ignore

  it.each<[string, string, string]>([
    // 390 g of water, and 130.5 + 140 g of glycerol and sorbitol, to 993.3 g of soap
    ['waterPerSoap', '0.39', 'sound'],
    ['waterPerSoap', '0.41', 'wrong'],
    ['clearingAgentsPerSoap', '0.27', 'sound'],
    ['clearingAgentsPerSoap', '0.14', 'sound'],
    ['clearingAgentsPerSoap', '0.30', 'wrong'],
  ])('%s of %s is %s', (claim, number, verdict) => {
    expect(audited(pot({ additions: [syrup()], claimed: { [claim]: number } })).verdict).toBe(verdict);
  });

  it('of water may leave out what forms of free acid', () => {
    // 140 g of 1280 g go in, 3.5 mol of NaOH make 63 g more of acid: 10.9 or 15.9 %
    const lye = [{ alkali: 'naoh', mass: { g: '280.0' }, solution: { hydroxide: { percent: 50 } } }];
    const acid = { fats: [{ fat: 'stearic-acid-50', mass: { g: '1000' } }], lye, water: undefined };
    const areWrong = ['10.9', '13.0', '15.9'].map(
      (percent) => audited(pot({ ...acid, claimed: { shares: { water: { percent } } } })).verdict === 'wrong',
    );
    expect(areWrong).toEqual([false, true, false]);
  });

  it('of spirit by volume hold over what it may weigh', () => {
    // 300 mL are 240.9 to 243.5 g of 93.84 %, in 1740.9 to 1743.5 g: 12.99 to 13.10 %
    const verdicts = ['12.96', '12.99', '13.10', '13.13'].map(
      (percent) => audited(pot({ additions: [spirit('300')], claimed: { shares: { spirit: { percent } } } })).verdict,
    );
    expect(verdicts).toEqual(['wrong', 'sound', 'sound', 'wrong']);
  });

  it('of water hold that of a syrup, and not its sugar', () => {
    // 330 and 60 g in 1700 g; with all of the syrup it would be 31.2 %
    const verdicts = ['22.9', '23.1', '31.2'].map(
      (percent) => audited(pot({ additions: [syrup()], claimed: { shares: { water: { percent } } } })).verdict,
    );
    expect(verdicts).toEqual(['sound', 'wrong', 'wrong']);
  });

  it('of soap in the volume of the pot are seen', () => {
    // 66.2 g in 100 g are more in 100 mL: 67 to 72.6 g at 1.01 to 1.1 g/mL
    expect(slipCodes(pot({ claimed: { shares: { soap: { percent: '70.0' } } } }))).toEqual(['weight-by-volume-as-by-weight']);
    // 200 g of 85 % counted whole: 330.5 g in 1700 g
    const wet = { solvent: 'glycerol', mass: { g: '200' }, assay: { percent: '85' } };
    expect(slipCodes(pot({ additions: [wet], claimed: { shares: { glycerol: { percent: '19.4' } } } }))).toContain('syrup-as-dry');
    // what a syrup is taken for is no part of spirit: 227.3 g, with all of both solutions 302.2 g, in 1942.2 g
    const both = pot({ additions: [spirit('300'), syrup()], claimed: { shares: { spirit: { percent: '15.6' } } } });
    expect(slipCodes(both)).not.toContain('syrup-as-dry');
    // glycerol is sold dry: nobody takes it for a syrup of 70 %
    const dry = { solvent: 'glycerol', mass: { g: '200' }, assay: { percent: '99.5' } };
    const claimed = { shares: { glycerol: { percent: '15.9' } } }; // 130.5 + 140 g in 1700 g
    expect(slipCodes(pot({ additions: [dry], claimed }))).not.toContain('dry-as-syrup');
  }); // prettier-ignore

  it('are judged with things that have only a name, and say what they are compared with', () => {
    // 993.3 g of soap in 1600 g: 62.1 %; of itself soap is always 100 %
    const withClay = (percent: string) =>
      audited(pot({ additions: [{ name: 'clay', mass: { g: '100' } }], claimed: { shares: { soap: { percent } } } }));
    expect(['62.1', '66.2'].map((percent) => withClay(percent).verdict)).toEqual(['sound', 'wrong']);
    const { explanation, slips } = findingIn(withClay('100'), 'part-share-contradicted');
    expect(explanation).toContain('100 %, but the rest of the recipe gives 62.05 to 62.12 %');
    expect(slips.filter(({ words }) => words['of'] === 'parts to 100 of the soap')).toEqual([]);
  });

  it('to one of soap reach from the least part with the most soap to the most part with the least', () => {
    const Acids = fatFromCertificate({ name: 'Acids', kind: 'free-fatty-acid', saponificationValue: { low: { mgKohPerG: 180 }, high: { mgKohPerG: 260 } } });
    const acids = { fats: [{ fat: 'Acids', mass: { g: '1000' } }], lye: [naoh('133.3', 90)], water: { g: '300' } };
    // 3 mol of soap are 1001 to 713 g; 300 g of water, 54 g that form, and 13.3 g of the solid that may be water: to 0.515
    const areWrong = ['0.513', '0.518'].map((waterPerSoap) => audited(pot({ ...acids, claimed: { waterPerSoap } }), { fats: { Acids } }).verdict === 'wrong');
    expect(areWrong).toEqual([false, true]);
  }); // prettier-ignore

  it('are not judged where a mass is missing, or too much is given by volume, and are named then', () => {
    const claimed = { shares: { water: { percent: '90' } } };
    const volumes = ['ethanol', 'glycerol', 'water', '1-3-butanediol'].map((solvent) => ({
      solvent,
      volume: { mL: '9' },
    }));
    for (const additions of [[{ name: 'scent', volume: { mL: 1 } }], volumes]) {
      const result = audited(pot({ additions, claimed }));
      expect([result.verdict, result.findings.some(({ path }) => path === 'claimed.shares')]).toEqual(['sound', true]);
    }
  });
});

describe('a printed pH', () => {
  const found = (ph: string, more: object = {}) => audited(pot({ claimed: { ph }, ...more }));

  // without caustic soap shows 8.3 (1 g in 100 mL) to 10.9 (10 g), see soapSolutionPhFrom; a strip may be off by 0.5
  it.each<[string, string, string]>([
    ['7', 'ph-contradicted', 'wrong'],
    ['7.5', 'ph-contradicted', 'wrong'],
    ['8', 'ph-cannot-tell', 'sound'],
    ['9', 'ph-cannot-tell', 'sound'],
    ['10.5', 'ph-cannot-tell', 'sound'],
    ['11.3', 'ph-cannot-tell', 'sound'],
    ['11.6', 'ph-above-soap', 'doubtful'],
    ['12', 'ph-above-soap', 'doubtful'],
    ['14', 'ph-above-soap', 'doubtful'],
  ])('of %s: %s, %s', (ph, code, verdict) => {
    const result = found(ph);
    expect([findingIn(result, code as 'ph-contradicted').path, result.verdict]).toEqual(['claimed.ph', verdict]);
  });

  it.each<[string, object]>([
    ['triethanolamine', { additions: [{ solvent: 'triethanolamine', mass: { g: 50 }, assay: { percent: 99 } }] }],
    ['what has only a name', { additions: [{ name: 'detergent', mass: { g: 50 } }] }],
    ['an addition that cannot be read', { additions: [{ name: 'detergent' }] }],
    ['free acid', { fats: [{ fat: 'stearic-acid-50', mass: { g: '2000' } }] }],
    ['a fat that is not known', { fats: [{ fat: 'nobody knows', mass: { g: '1000' } }] }],
    ['a fat that cannot be read', { fats: [{ fat: 'Lot', mass: { g: '1000' } }, { fat: 5 }] }],
    ['a lye that cannot be read', { lye: [naoh('170.0'), { alkali: 'x' }] }],
  ])('as low as 7 may be due to %s', (_, more) => {
    expect(codesOf(found('7', more))).toContain('ph-cannot-tell');
  });

  it('is never called safe', () => {
    const texts = ['7', '9', '12'].flatMap((ph) => found(ph).findings.map(({ explanation }) => explanation));
    expect(texts.join(' ')).not.toMatch(/\bsafe\b/i);
    expect(texts.filter((text) => /titrate/i.test(text))).toHaveLength(3);
  });
});

describe('a printed free caustic', () => {
  const found = (percentNaoh: string, g: string, more: object = {}) =>
    audited(pot({ lye: [naoh(g)], claimed: { freeCausticAlkali: { percentNaoh } }, ...more }), {
      limit: { percentNaoh: 2 },
    });

  // 185.0 g of NaOH, less 178.22 that the fat takes up, leave 6.78 g in 1515 g: 0.448 %, to the last digit 0.441 to 0.454
  it.each<[string, string, readonly string[]]>([
    ['0.44', '185.0', []],
    ['0.40', '185.0', ['free-caustic-contradicted']],
    ['0.00', '185.0', ['free-caustic-contradicted']],
    ['0.48', '185.0', ['free-caustic-not-of-these-masses']],
    ['0.00', '170.0', []],
    ['0.05', '170.0', ['free-caustic-not-of-these-masses']],
  ])('of %s %% with %s g of NaOH: %j', (claim, g, codes) => {
    const ours = codesOf(found(claim, g)).filter((code) => /contradicted|masses/.test(code));
    expect(ours).toEqual(codes);
  });

  it('too low is a contradiction, too high none', () => {
    expect([found('0.40', '185.0').verdict, found('0.05', '170.0').verdict]).toEqual(['wrong', 'sound']);
  });

  it('too low is none where an acid takes some of it, or not all is weighed', () => {
    for (const addition of [
      { name: 'Citric acid', mass: { g: '10' } },
      { name: 'scent', volume: { mL: 5 } },
    ]) {
      expect(codesOf(found('0.00', '185.0', { additions: [addition] }))).toContain('free-caustic-not-of-these-masses');
    }
  });
});

describe('acids among the additions', () => {
  it('are named with what they take up', () => {
    const result = audited(pot({ additions: [{ name: 'citric acid, powder', mass: { g: '10' } }] }));
    const { explanation, values, severity } = findingIn(result, 'acid-not-counted');
    // 10 g / 192.12 g/mol · 3 · 39.997 g/mol = 6.25 g; superfat 4.61 + 100 · 0.1562/4.4559 = 8.12 %
    expect(explanation).toContain('6.25 g of NaOH at most');
    expect(explanation).toContain('from 4.61 to 8.12 %');
    expect(severity).toBe('note');
    expect(Object.keys(values)).toEqual(['atMost']);
  });

  it.each<[string, object, boolean]>([
    ['lactic acid', { mass: { g: '10' } }, true],
    ['lactic acid', { volume: { mL: '10' } }, false],
    ['stearic acid', { mass: { g: '10' } }, false],
    ['vinegar', { mass: { g: '10' } }, false],
  ])('%s %j', (name, amount, isCounted) => {
    const { values } = findingIn(audited(pot({ additions: [{ name, ...amount }] })), 'acid-not-counted');
    expect('atMost' in values).toBe(isCounted);
  });

  it('that decide are named, and only those that are counted', () => {
    const sour = [{ name: 'citric acid', mass: { g: '30' } }, { name: 'vinegar', mass: { g: '5' } }];
    const { explanation } = findingIn(audited(pot({ lye: [naoh('190.0')], additions: sour })), 'acid-not-counted');
    expect(explanation).toContain('What goes by the name of citric acid takes up lye');
  }); // prettier-ignore

  it('are not seen where there is none', () => {
    expect(codesOf(audited(pot({ additions: [{ name: 'colour', mass: { g: '1' } }, syrup()] })))).not.toContain(
      'acid-not-counted',
    );
  });
});

describe('alkalis among the additions', () => {
  const named = (name: string, amount: object, more: object = {}) =>
    audited(pot({ additions: [{ name, ...amount }], ...more }));

  it.each(['sodium hydroxide', 'NaOH, 50 %', 'Ätznatron', 'Lye (KOH)', 'Pottasche', 'borax'])(
    '%s is not sound',
    (name) => {
      // 5 g of pure NaOH beside the 170 are below the 178.22 that the fats take up
      for (const amount of [{ mass: { g: '5' } }, { volume: { mL: '50' } }]) {
        const result = named(name, amount);
        expect(findingIn(result, 'alkali-not-counted')).toMatchObject({ severity: 'caution', path: 'additions[0]' });
        expect(result.verdict).toBe('doubtful');
      }
    },
  );

  // 1000 g of 250 mg KOH/g take up 178.2238 g of NaOH, and 8.2238 g more than are in the lye, 11.5357 g as KOH
  it.each([
    ['Natronlauge', '9', '0.0514', 'dangerous'], // (179 − 178.2238)/1509
    ['Natronlauge', '8.9', '0.0448', 'doubtful'], // 0.6762/1508.9
    ['Kalilauge', '13', '0.069', 'dangerous'], // (13 − 11.5357) · 39.997/56.105/1513
    ['Kalilauge', '12', '0.0219', 'doubtful'],
    ['soda ash', '900', '', 'doubtful'],
  ])('%s, %s g: counted with the lye as if it were pure', (name, g, left, verdict) => {
    const result = named(name, { mass: { g } });
    expect(result.verdict).toBe(verdict);
    const found = findingIn(result, 'alkali-not-counted');
    expect(found.severity).toBe(verdict === 'dangerous' ? 'danger' : 'caution');
    if (verdict === 'dangerous') {
      expect(result.findings[0]).toBe(found);
      expect(found.explanation).toContain(`leaves ${left} % NaOH free`);
      expect(Object.keys(found.values)).toEqual(['limit', 'superfat']);
    }
  });

  it('several are counted together, those of no known mass and weaker ones are not', () => {
    const additions = [
      { name: 'Ätznatron', mass: { g: '5' } },
      { name: 'soude caustique', mass: { g: '4' } },
      { name: 'lye', volume: { mL: '400' } },
      { name: 'washing soda', mass: { g: '1' } },
    ];
    const severities = (more: readonly object[]) =>
      audited(pot({ additions: more }))
        .findings.filter(({ code }) => code === 'alkali-not-counted')
        .map(({ path, severity }) => `${path} ${severity}`);
    expect(severities(additions)).toEqual([
      'additions[0] danger', 'additions[1] danger', 'additions[3] caution', 'additions[2] caution',
    ]);
    expect(severities(additions.slice(1))).toEqual(['additions[0] caution', 'additions[2] caution', 'additions[1] caution']);
    // (what has no known mass stands last) what an acid takes up is taken off, as where it decides by itself
    expect(severities([...additions.slice(0, 2), { name: 'citric acid', mass: { g: '2' } }])).toEqual([
      'additions[0] caution', 'additions[1] caution',
    ]);
  }); // prettier-ignore

  it('an assay that is not stated counts at its lowest, also here', () => {
    const lye = [{ alkali: 'naoh', mass: { g: '178' } }]; // 95 % of it is 169.1: 9.1238 g to go
    expect(named('sosa cáustica', { mass: { g: '9' } }, { lye }).findings.some(({ severity }) => severity === 'danger')).toBe(false);
    expect(named('sosa cáustica', { mass: { g: '10' } }, { lye }).verdict).toBe('dangerous');
  }); // prettier-ignore

  it('and nothing is counted where fats and lye cannot be set against each other', () => {
    const { findings } = named('NaOH', { mass: { g: '900' } }, { fats: [{ fat: 'moon butter', mass: { g: '10' } }] });
    expect(findings.find(({ code }) => code === 'alkali-not-counted')?.severity).toBe('caution');
  });

  it('belong to the lye if they are hydroxides, and are no small matter else', () => {
    const said = (name: string): string => findingIn(named(name, { mass: { g: '1' } }), 'alkali-not-counted').explanation;
    expect(said('potassium hydroxide')).toContain('It burns skin. It belongs to the lye.');
    expect(said('borax')).toContain('It takes part in the reaction');
  }); // prettier-ignore

  it.each(['colour', 'polyethylene scent', 'alkohol', 'salt of soda'])('%s is none', (name) => {
    expect(codesOf(audited(pot({ additions: [{ name, mass: { g: '5' } }] })))).not.toContain('alkali-not-counted');
  });
});

describe('fats among the additions', () => {
  it.each(['castor oil', 'Coconut-Oil', 'copra oil'])('%s is not judged there', (name) => {
    for (const amount of [{ mass: { g: '80' } }, { volume: { mL: '80' } }]) {
      const result = audited(pot({ additions: [{ name, ...amount }] }));
      expect(findingIn(result, 'fat-not-counted')).toMatchObject({ severity: 'note', path: 'additions[0]' });
    }
  });

  it.each(['colour', 'lemon oil', 'stearic acid'])('%s is none, or is told as an acid', (name) => {
    expect(codesOf(audited(pot({ additions: [{ name, mass: { g: '5' } }] })))).not.toContain('fat-not-counted');
  });

  it('may take up what is printed as too little free caustic', () => {
    const lean = { lye: [naoh('185.0')], claimed: { freeCausticAlkali: { percentNaoh: '0.00' } } };
    expect(codesOf(audited(pot(lean)))).toContain('free-caustic-contradicted');
    const withFat = audited(pot({ ...lean, additions: [{ name: 'castor oil', mass: { g: '80' } }] }));
    expect(codesOf(withFat)).toContain('free-caustic-not-of-these-masses');
  });
});

describe('shares of one whole', () => {
  const soapAnd = (shares: object) => audited(pot({ claimed: { shares } }));

  it.each<[string, object, string]>([
    [
      'fats',
      {
        fats: [
          { fat: 'Lot', mass: { g: '600' }, claimed: { share: { percent: '60' } } },
          { fat: 'Lot', mass: { g: '400' }, claimed: { share: { percent: '50' } } },
        ],
      },
      '110 %, more than there is: the rounding of their last digits explains no more than 2 %',
    ],
    [
      'additions',
      {
        additions: [
          { name: 'scent', mass: { g: '5' }, claimed: { share: { percent: '70.0' } } },
          { name: 'colour', volume: { mL: '5' }, claimed: { share: { percent: '31.0' } } },
        ],
      },
      '101 %, more than there is: the rounding of their last digits explains no more than 0.2 %',
    ],
    [
      'claimed.shares',
      { claimed: { shares: { soap: { percent: '60.0' }, water: { percent: '45.0' } } } },
      '105 %, more than there is: the rounding of their last digits explains no more than 0.2 %',
    ],
  ])('that add up to more than it are named: %s', (path, change, sum) => {
    const result = audited(pot(change));
    const { explanation, ...finding } = findingIn(result, 'shares-above-whole');
    expect(finding).toMatchObject({ path, severity: 'caution' });
    expect(explanation).toContain(`add up to ${sum}`);
    expect(result.verdict).toBe('wrong');
  });

  it('that hold each other are counted once', () => {
    const half = { percent: '40.0' };
    const nested = { soap: half, glycerol: half, polyol: half, clearingAgents: half };
    expect(codesOf(soapAnd(nested))).not.toContain('shares-above-whole');
    const apart = { soap: half, polyol: half, sugar: half };
    // 120 %, and 0.3 less by the last digits
    const { values } = findingIn(soapAnd(apart), 'shares-above-whole');
    expect(toJson(values)).toEqual({ printed: { percent: '120' }, atLeast: { percent: '119.7' } });
  });

  it('may miss it by their last digits', () => {
    const thirds = ['34', '33', '34'].map((percent, at) => ({
      name: `colour ${String(at)}`,
      mass: { g: '5' },
      claimed: { share: { percent } },
    }));
    expect(codesOf(audited(pot({ additions: thirds })))).not.toContain('shares-above-whole');
  });
});

describe('a figure below nothing', () => {
  it('has one minus, printed or worked out', () => {
    // 185 g NaOH of 178.2 g: superfat −3.8 %
    const result = audited(pot({ lye: [naoh('185.0')], claimed: { superfat: { percent: '-9' } } }));
    const { explanation } = findingIn(result, 'superfat-contradicted');
    expect(explanation).toContain('−9 %');
    expect(explanation).toContain('−3.8');
    expect(explanation).not.toContain('-9');
  });
});

describe('what is not known of additions', () => {
  it('is listed by their names', () => {
    const said = (...names: readonly string[]): string =>
      findingIn(audited(pot({ additions: names.map((name) => ({ name, mass: { g: '1' } })) })), 'not-judged').explanation;
    expect(said('scent')).toContain('What is in scent is not known');
    expect(said('scent', 'clay')).toContain('What is in scent and clay is');
    expect(said('scent', 'clay', 'mica')).toContain('What is in scent, clay and mica is');
  }); // prettier-ignore
});

describe('a pot of which something is not known', () => {
  const additions = [{ name: 'citric acid', mass: { g: '5' } }, { name: 'caustic soda', mass: { g: '5' } }, syrup({ claimed: { share: { percent: '50' } } })];
  const claimed = { superfat: { percent: '5' }, freeCausticAlkali: { percentNaoh: '0.05' }, total: { g: '1900' }, shares: { soap: { percent: '60' } }, ph: '7', waterPerAlkali: '2', waterPerFat: { percent: '33' }, strength: { percent: '34' } };
  const printed = (more: object) => audited(pot({ additions, claimed, target: { superfat: { percent: '5' }, freeCausticAlkaliAtMost: { percentNaoh: '0.05' } }, ...more }));

  it.each<[string, object]>([
    ['a fat', { fats: [{ fat: 'moon butter', mass: { g: '1000' } }] }],
    ['one of two fats', { fats: [{ fat: 'Lot', mass: { g: '500' } }, { fat: 'moon butter', mass: { g: '500' } }] }],
    ['a fat that cannot be read', { fats: [{ fat: 5 }] }],
    ['the lye', { lye: [{ alkali: 'x' }] }],
    ['one of two lyes', { lye: [naoh('85.0'), { alkali: 'x' }] }],
  ])('%s: the rest is told, but no superfat', (_, more) => {
    const { findings, implied, basis, notes } = printed(more);
    expect([implied, basis, notes]).toEqual([undefined, [], []]);
    const codes = findings.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['unreadable', 'acid-not-counted', 'alkali-not-counted', 'ph-cannot-tell', 'not-judged']));
    for (const code of ['superfat-contradicted', 'target-missed', 'free-caustic-contradicted', 'worst-case']) expect(codes).not.toContain(code);
    expect(findings.find(({ code }) => code === 'acid-not-counted')?.explanation).not.toContain('superfat from');
  });
}); // prettier-ignore

describe('water among the additions', () => {
  it('is said to be none of the lye', () => {
    const dry = { water: undefined, claimed: { strength: { percent: '34' } } };
    const said = (more: object) => findingIn(audited(pot({ ...dry, ...more })), 'not-judged').explanation;
    expect(said({})).toContain('The water of the lye is not stated, so that');
    expect(said({ additions: [syrup()] })).toContain('The water of the lye is not stated, so that');
    expect(said({ additions: [{ solvent: 'water', mass: { g: '330' } }] })).toContain(
      'not stated: water among the additions is not taken for it, so that',
    );
  });
});

describe('printed temperatures', () => {
  it.each([{ celsius: '19' }, { fahrenheit: '66.2' }, { fahrenheit: '104' }])(
    '%j is a cool start, and no doubt',
    (temperature) => {
      const result = audited(pot({ temperatures: [{ stage: 'saponification', temperature }] }));
      expect([result.verdict, codesOf(result).filter((code) => code.startsWith('temperature'))]).toEqual(['sound', []]);
    },
  );

  const found = (stage: string, temperature: object, additions: readonly object[] = []) =>
    audited(pot({ additions, temperatures: [{ stage, temperature }] }));

  it.each<[string, object, string, string | undefined, string | undefined]>([
    ['saponification', { celsius: '64' }, 'sound', undefined, undefined],
    ['saponification', { celsius: '76' }, 'sound', undefined, undefined],
    // published up to 80 °C, though of other routes
    ['saponification', { celsius: '77' }, 'sound', 'temperature-too-hot', undefined],
    ['saponification', { celsius: '81' }, 'sound', 'temperature-too-hot', undefined],
    ['saponification', { celsius: '82' }, 'doubtful', 'temperature-too-hot', undefined],
    ['saponification', { celsius: '140' }, 'doubtful', 'temperature-too-hot', 'fahrenheit-as-celsius'],
    ['saponification', { fahrenheit: '140' }, 'sound', undefined, undefined],
    ['saponification', { fahrenheit: '60' }, 'doubtful', 'temperature-too-cold', 'celsius-as-fahrenheit'],
    ['saponification', { fahrenheit: '100' }, 'sound', undefined, undefined],
    ['saponification', { kelvin: '390' }, 'doubtful', 'temperature-too-hot', undefined],
    ['clearing', { celsius: '74' }, 'sound', undefined, undefined],
    ['clearing', { celsius: '90' }, 'sound', 'temperature-too-hot', undefined],
    ['clearing', { celsius: '102' }, 'doubtful', 'temperature-too-hot', undefined],
    ['clearing', { celsius: '160' }, 'doubtful', 'temperature-too-hot', 'fahrenheit-as-celsius'],
    ['pouring', { celsius: '62' }, 'sound', undefined, undefined],
    ['pouring', { celsius: '50' }, 'sound', 'temperature-too-cold', undefined],
    ['pouring', { celsius: '80' }, 'sound', 'temperature-too-hot', undefined],
    ['pouring', { celsius: '145' }, 'doubtful', 'temperature-too-hot', 'fahrenheit-as-celsius'],
    ['lye', { celsius: '95' }, 'sound', 'not-judged', undefined],
    ['lye', { fahrenheit: '211' }, 'sound', 'not-judged', undefined],
    // 140 °F are 60 °C; 180 °F are 82, and 250 °F are 121 °C: no ordinary lye
    // 43.9 °C is the coldest in print; 25 below it is no temperature of the work, in any unit
    ['saponification', { celsius: '15.6' }, 'doubtful', 'temperature-too-cold', undefined],
    ['saponification', { kelvin: '288.75' }, 'doubtful', 'temperature-too-cold', undefined],
    ['saponification', { celsius: '-5' }, 'doubtful', 'temperature-too-cold', undefined],
    ['saponification', { fahrenheit: '20' }, 'doubtful', 'temperature-too-cold', undefined],
    ['saponification', { fahrenheit: '177.8' }, 'sound', 'temperature-too-hot', undefined], // 81 °C
    ['lye', { celsius: '0' }, 'doubtful', 'temperature-too-cold', undefined],
    ['lye', { fahrenheit: '20' }, 'doubtful', 'temperature-too-cold', 'celsius-as-fahrenheit'],
    ['lye', { celsius: '100' }, 'doubtful', 'temperature-too-hot', 'fahrenheit-as-celsius'],
    ['lye', { celsius: '140' }, 'doubtful', 'temperature-too-hot', 'fahrenheit-as-celsius'],
    ['lye', { celsius: '180' }, 'doubtful', 'temperature-too-hot', undefined],
    ['lye', { fahrenheit: '250' }, 'doubtful', 'temperature-too-hot', undefined],
  ])('%s at %j: %s, %s, %s', (stage, temperature, verdict, code, slip) => {
    const result = found(stage, temperature);
    const ours = result.findings.filter(({ path }) => path.startsWith('temperatures[0]'));
    expect([result.verdict, ours[0]?.code, ours[0]?.slips[0]?.code]).toEqual([verdict, code, slip]);
  });

  it('are lower once sorbitol is in', () => {
    const result = found('clearing', { celsius: '74' }, [syrup()]);
    expect([result.verdict, findingIn(result, 'temperature-too-hot').severity]).toEqual(['doubtful', 'caution']);
  });

  it('at which spirit boils say so, whatever stage', () => {
    const { explanation, severity } = findingIn(found('clearing', { celsius: '80' }, [spirit('100')]), 'spirit-boils');
    expect(severity).toBe('caution');
    expect(explanation).toMatch(/and ethanol boils at 78\.2 °C.*no flame/);
    expect(codesOf(found('clearing', { celsius: '78' }, [spirit('100')]))).not.toContain('spirit-boils');
    expect(codesOf(found('clearing', { celsius: '80' }))).not.toContain('spirit-boils');
    expect(codesOf(found('lye', { celsius: '90' }, [spirit('100')]))).not.toContain('spirit-boils');
  });
});

describe('cautions', () => {
  it('are those of spirit, sugar and triethanolamine where they are in, by volume as well', () => {
    const cautions = (...additions: readonly object[]) => audited(pot({ additions })).cautions.map(({ code }) => code);
    const none = cautions();
    const ours = ['spirit-catches-fire', 'sugar-in-hot-lye', 'amine-hides-alkali'];
    expect(none.filter((code) => ours.includes(code))).toEqual([]);
    expect(
      cautions(
        spirit('5'),
        { solvent: 'glucose', mass: { g: '5' } },
        { solvent: 'triethanolamine', volume: { mL: '5' }, assay: { percent: 85 } },
      ),
    ).toEqual([...none, ...ours]);
  });

  it.each([
    ['vodka', 'spirit-catches-fire'],
    ['denatured alcohol', 'spirit-catches-fire'],
    ['citric acid', 'acid-into-hot-soap'],
  ])('tell of %s by its name, by mass and by volume: %s', (name, code) => {
    const cautions = (...additions: readonly object[]) => audited(pot({ additions })).cautions.map((one) => one.code);
    const none = cautions({ name: 'colour', mass: { g: '5' } });
    for (const amount of [{ mass: { g: '5' } }, { volume: { mL: '5' } }]) {
      expect(cautions({ name, ...amount })).toEqual([...none, code]);
    }
  });
});
