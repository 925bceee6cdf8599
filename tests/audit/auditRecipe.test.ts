import { toJson } from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { describe, expect, it } from 'vitest';
import { throughJson } from '../laws/exact.js';
import { audited, codesOf, drumWith, fats, findingIn, naoh, slipsIn } from './recipes.js';

// 1 kg of a fat of 250 to 260 takes up 178.2238, likely 181.7883, at most 185.353 g of NaOH: 250·39.997/56.105 ...
describe('free caustic', () => {
  it.each([
    ['178', 'sound', 'worst-case', '0.000'],
    ['181', 'doubtful', 'free-caustic-above-limit-at-leanest-lot', '0.235'], // (181 − 178.2238)/1181
    ['185', 'dangerous', 'free-caustic-above-limit', '0.572'], // likely (185 − 181.7883)/1185 = 0.271
    ['187', 'dangerous', 'free-caustic-above-limit', '0.739'],
  ])('of %s g is %s', (g, verdict, code, worst) => {
    const result = audited(drumWith(g));
    expect(result.verdict).toBe(verdict);
    expect(codesOf(result)).toEqual([code]);
    expect(result.implied?.freeCausticAlkali.high.percentNaoh.toFixed(3)).toBe(worst);
    expect(toJson(findingIn(result, code as 'worst-case').computed)).toEqual(toJson(result.implied?.freeCausticAlkali));
  });

  it('above the limit for every lot is said to be so', () => {
    expect(findingIn(audited(drumWith(185)), 'free-caustic-above-limit').explanation).toContain('Only a richer lot');
    expect(findingIn(audited(drumWith(187)), 'free-caustic-above-limit').explanation).toContain(
      'No lot within the published ranges',
    );
  });

  it('the worst case of a sound recipe is told with its figures', () => {
    // 100·(1 − 178/178.2238)
    expect(findingIn(audited(drumWith(178)), 'worst-case').explanation).toContain('superfat is 0.126 %');
    const atLeanest = findingIn(audited(drumWith(181)), 'free-caustic-above-limit-at-leanest-lot');
    expect(atLeanest.explanation).toContain('superfat 0.434 %'); // 100·(1 − 181/181.7883)
    expect(atLeanest.explanation).toContain('leave 0.235 % NaOH');
  });

  it('is a share of everything in the pot', () => {
    const diluted = audited(drumWith(185, { water: { kg: '5' }, additions: [{ name: 'clay', mass: { kg: '1' } }] }));
    expect(diluted.implied?.freeCausticAlkali.likely.percentNaoh.toFixed(4)).toBe('0.0447'); // 3.213/7185
    expect(diluted.verdict).toBe('doubtful');
  });

  it('above a limit of one’s own', () => {
    const verdictAt = (limit: object): string => audited(drumWith(185), { limit }).verdict;
    expect(verdictAt({ percentNaoh: '0.27' })).toBe('dangerous');
    expect(verdictAt({ percentNaoh: '0.28' })).toBe('doubtful');
    expect(verdictAt({ percentKoh: '0.28' })).toBe('dangerous'); // 0.2 % NaOH
    expect(verdictAt({ percentNaoh: '0.58' })).toBe('doubtful'); // below the limit, and in excess all the same
    expect(codesOf(audited(drumWith(185), { limit: { percentNaoh: '0.58' } }))).toEqual(['free-caustic-below-limit']);
    expect(audited(drumWith(185)).limit.percentNaoh.toString()).toBe('0.05');
  });

  it('a limit or fats that cannot be read leave the other as it is', () => {
    const badLimit = audited(drumWith(185), { limit: { percentNaoh: 50 } });
    expect([badLimit.verdict, badLimit.limit.percentNaoh.toString()]).toEqual(['dangerous', '0.05']);
    expect(findingIn(badLimit, 'unreadable').path).toBe('options.limit.percentNaoh');
    const badFats = auditRecipe(drumWith(185), { fats: 7 as never, limit: { percentNaoh: 1 } });
    expect([badFats.verdict, badFats.limit.percentNaoh.toString()]).toEqual(['cannot-tell', '1']);
    const odd = audited(drumWith(185), { limits: 1 });
    expect([odd.verdict, findingIn(odd, 'unreadable').error]).toEqual(['dangerous', 'unknown-key']);
  });
});

describe('an assay that is not stated', () => {
  const unstated = (g: string) => audited(drumWith(0, { lye: [{ alkali: 'naoh', mass: { g } }] }));

  it.each([
    ['176', 'sound', 'worst-case'], // 100.5 % is 176.9
    ['185', 'cannot-tell', 'free-caustic-hangs-on-assay'], // 175.75 to 185.9
    ['190', 'doubtful', 'free-caustic-above-limit-at-leanest-lot'], // 180.5 to 190.95
    ['192', 'dangerous', 'free-caustic-above-limit'], // 182.4 at the least
  ])('%s g are %s', (g, verdict, code) => {
    const result = unstated(g);
    expect(result.verdict).toBe(verdict);
    expect(codesOf(result)).toEqual([code, 'assay-missing']);
  });

  it('both figures are told', () => {
    const open = findingIn(unstated('185'), 'free-caustic-hangs-on-assay');
    // (185.925 − 178.2238)/1185
    expect(open.explanation).toContain('leave 0 % NaOH free caustic, at the highest 0.65 % NaOH');
    const leanest = findingIn(unstated('190'), 'free-caustic-above-limit-at-leanest-lot');
    // (180.5 − 178.2238)/1190, (190.95 − 178.2238)/1190
    expect(leanest.explanation).toContain('leave 0.191 % NaOH; at the highest assay they leave 1.07 % NaOH');
    expect(toJson(leanest.values)).toMatchObject({ atLowestAssay: { low: { percentNaoh: '0' } } });
    expect(findingIn(unstated('192'), 'free-caustic-above-limit').explanation).toMatch(/^Even at the lowest assay/);
  });

  it('of KOH is 82 to 100 %', () => {
    const saying = (alkali: string): string =>
      findingIn(audited(drumWith(0, { lye: [{ alkali, mass: { g: '170' } }] })), 'assay-missing').explanation;
    expect([saying('naoh'), saying('koh')]).toEqual([
      expect.stringContaining('95 to 100.5 %'),
      expect.stringContaining('82 to 100 %'),
    ]);
    const { implied } = audited(drumWith(0, { lye: [{ alkali: 'koh', mass: { g: '250' } }] }));
    expect(implied?.superfat.low.percent.toFixed(6)).toBe('0.000000'); // 250 of 250
    expect(implied?.superfat.high.percent.toFixed(6)).toBe('21.153846'); // 205 of 260
  });
});

describe('superfat', () => {
  // 172.7 g leave 3.10 to 6.83 %, likely 5.00 %
  const claims = (percent: string, more: object = {}) =>
    audited(drumWith('172.7', { claimed: { superfat: { percent } }, ...more }));

  it.each(['3', '5', '6.9', '7', '3.1'])('of %s %% is one that some lot gives, to its last digit', (percent) => {
    expect(claims(percent).verdict).toBe('sound');
  });

  it.each(['2', '8', '7.2', '-5'])('of %s %% is contradicted', (percent) => {
    const result = claims(percent);
    expect(result.verdict).toBe('wrong');
    const found = findingIn(result, 'superfat-contradicted');
    expect(found.path).toBe('claimed.superfat');
    expect(toJson(found.claimed)).toEqual({ percent });
    expect(found.explanation).toContain('3.1 to 6.83 %');
  });

  it('that is aimed at is looked at as well', () => {
    const result = audited(drumWith('172.7', { target: { superfat: { percent: '12' } } }));
    const missed = findingIn(result, 'target-missed');
    expect([result.verdict, missed.path]).toEqual(['wrong', 'target.superfat']);
    expect(missed.explanation).toContain('aims at a superfat of 12 %');
    expect(findingIn(claims('12'), 'superfat-contradicted').explanation).toContain('claims a superfat of 12 %');
    // that it does not follow from the recipe's own values either goes without saying
    const own = [{ fat: 'Lot', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '250' } } }];
    for (const aim of [{ target: { superfat: { percent: '12' } } }, { claimed: { superfat: { percent: '12' } } }])
      expect(codesOf(audited(drumWith('172.7', { fats: own, ...aim })))).not.toContain('own-values-contradicted');
    const both = claims('12', { target: { superfat: { percent: '12' } } });
    expect(codesOf(both)).toEqual(['superfat-contradicted', 'target-missed', 'worst-case']);
    // one figure is in question, so its slips are told once
    expect(findingIn(both, 'superfat-contradicted').slips.length).toBeGreaterThan(0);
    expect(findingIn(both, 'target-missed').slips).toEqual([]);
  });

  it('a limit that is aimed at is missed where no lot keeps it', () => {
    const aim = (g: number) => audited(drumWith(g, { target: { freeCausticAlkaliAtMost: { percentNaoh: '0.1' } } }));
    // the richest lots leave none, but such a limit is meant for every lot
    expect(codesOf(aim(185))).toEqual(['free-caustic-above-limit', 'target-missed-at-leanest-lot']);
    const missed = aim(190); // (190 − 185.353)/1190 = 0.39 %
    expect(findingIn(missed, 'target-missed').path).toBe('target.freeCausticAlkaliAtMost');
    expect(missed.verdict).toBe('dangerous');
  });

  it('much of it that nobody speaks of is doubtful, and may be what a slip left', () => {
    expect(audited(drumWith(143)).verdict).toBe('sound'); // at least 19.8 %
    const result = audited(drumWith(126)); // 29.3 to 32.0 %
    expect([result.verdict, codesOf(result)]).toEqual(['doubtful', ['much-fat-left', 'worst-case']]);
    expect(slipsIn(result).map(({ code }) => code)).toContain('naoh-value-as-koh');
    const meant = audited(drumWith(126, { claimed: { superfat: { percent: '30' } } }));
    expect(meant.verdict).toBe('sound');
  });
});

describe('a lye and the values its recipe prints', () => {
  it('part where the last digits of value and superfat together do not bear it', () => {
    // 255 ± 1 and 5 ± 1 %: from 254·0.94 = 238.76 mg KOH/g up; 170.7 g are 239.4, 169.7 g are 238.0
    const codesAt = (g: string) =>
      codesOf(
        audited(
          drumWith(g, {
            fats: [{ fat: 'Drum', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '255' } } }],
            claimed: { superfat: { percent: '5' } },
          }),
        ),
      );
    expect(codesAt('170.7')).not.toContain('own-values-contradicted');
    expect(codesAt('169.7')).toContain('own-values-contradicted');
  });
});

describe('printed figures of the fats', () => {
  const printing = (claimed: object) =>
    audited(drumWith(170, { fats: [{ fat: 'Drum', mass: { g: '1000' }, claimed }] }));

  it.each([
    { mgKohPerG: '249' }, { mgKohPerG: '261' }, { mgKohPerG: '255.0' }, { gKohPerG: '0.26' },
    { gNaohPerG: '0.178' }, { saponificationEquivalent: '220' },
  ])('a saponification value that a lawful lot has, to its last digit: %j', (saponificationValue) => {
    expect(printing({ saponificationValue }).verdict).toBe('sound');
  }); // prettier-ignore

  it.each([
    { mgKohPerG: '248' }, { mgKohPerG: '260.2' }, { gNaohPerG: '0.176' }, { saponificationEquivalent: '214' },
  ])('and one that none has: %j', (saponificationValue) => {
    const result = printing({ saponificationValue });
    expect(result.verdict).toBe('wrong');
    const found = findingIn(result, 'saponification-value-contradicted');
    expect(found.path).toBe('fats[0].claimed.saponificationValue');
    expect(toJson(found.claimed)).toEqual(saponificationValue);
    expect(Object.keys((found.computed as { low: object }).low)).toEqual(Object.keys(saponificationValue));
  }); // prettier-ignore

  it.each([['60', 'sound'], ['59', 'sound'], ['58', 'wrong'], ['60.0', 'sound'], ['61.0', 'wrong']])(
    'a share of %s %% of 600 g in 1000 g is %s',
    (percent, verdict) => {
      const result = audited({
        version: 1,
        fats: [
          { fat: 'Lot', mass: { g: '600' }, claimed: { share: { percent } } },
          { fat: 'Second', mass: { g: '400' } },
        ],
        lye: [naoh(140)],
      });
      expect(result.verdict).toBe(verdict);
    },
  ); // prettier-ignore
});

describe('printed figures of the lye', () => {
  // 170 g of 90 %: 153 g pure, 17 g of water in it, 330 g added
  const claims = (claimed: object) =>
    audited(drumWith(0, { lye: [naoh(170, 90)], water: { g: '330' }, claimed })).verdict;

  it.each<[string, object, string]>([
    ['strength 153/500', { strength: { percent: '30.6' } }, 'sound'],
    ['strength, off', { strength: { percent: '31' } }, 'sound'],
    ['strength, further off', { strength: { percent: '31.6' } }, 'wrong'],
    ['all water to pure alkali, 347/153', { waterPerAlkali: '2.27' }, 'sound'],
    ['water added to alkali as weighed, 330/170', { waterPerAlkali: '1.94' }, 'sound'],
    ['water added to pure alkali, 330/153', { waterPerAlkali: '2.16' }, 'sound'],
    ['no water to any alkali', { waterPerAlkali: '2.4' }, 'wrong'],
    ['all water to fats', { waterPerFat: { percent: '34.7' } }, 'sound'],
    ['water added to fats', { waterPerFat: { percent: '33.0' } }, 'sound'],
    ['no water to fats', { waterPerFat: { percent: '36' } }, 'wrong'],
    ['the sum', { total: { g: '1500' } }, 'sound'],
    ['the sum to the last digit of the lye, and its own', { total: { g: '1498' } }, 'sound'],
    ['a sum beyond them', { total: { g: '1497' } }, 'wrong'],
    ['no sum', { total: { g: '1490' } }, 'wrong'],
    ['all hydroxide of NaOH', { kohShare: { percent: '0' } }, 'sound'],
    ['a share of KOH where there is none', { kohShare: { percent: '20' } }, 'wrong'],
  ])('%s', (_, claimed, verdict) => {
    expect(claims(claimed)).toBe(verdict);
  });

  it('are not judged by water that cannot be read, nor by an alkali of no mass', () => {
    const lye = [{ alkali: 'naoh', mass: { g: '340' }, solution: { hydroxide: { percent: 50 } } }];
    const claimed = { strength: { percent: '20' }, waterPerAlkali: '9' };
    const codes = (more: object) => codesOf(audited(drumWith(0, { claimed, ...more })));
    expect(codes({ lye })).toEqual(expect.arrayContaining(['strength-contradicted', 'water-per-alkali-contradicted']));
    expect(codes({ lye, water: { g: 'x' } }).filter((code) => code.endsWith('contradicted'))).toEqual([]);
    expect(codes({ lye: [naoh('0')], water: { g: '100' } })).not.toContain('water-per-alkali-contradicted');
  }); // prettier-ignore

  it('a share of KOH is one of hydroxide, by mole', () => {
    const lye = [naoh(100), { alkali: 'koh', mass: { g: '100' }, solid: { hydroxide: { percent: 100 } } }];
    const share = (percent: string) => audited(drumWith(0, { lye, claimed: { kohShare: { percent } } })).verdict;
    expect(share('41.6')).toBe('sound'); // 1.7824 of 4.2826 mol
    expect(share('43.0')).toBe('wrong');
  });

  it('a strength hangs on an assay that is not stated', () => {
    const strength = (percent: string) =>
      audited(
        drumWith(0, { lye: [{ alkali: 'koh', mass: { g: '220' } }], water: { g: '220' }, claimed: { strength: { percent } } }),
      ).verdict; // prettier-ignore
    expect([strength('42'), strength('50'), strength('38')]).toEqual(['sound', 'sound', 'wrong']);
  });
});

describe('verdicts', () => {
  const wrong = { superfat: { percent: '20' } };
  const unreadable = { ph: 'nine' };

  it('the worst finding decides', () => {
    expect(audited(drumWith(185, { claimed: { ...wrong, ...unreadable } })).verdict).toBe('dangerous');
    expect(audited(drumWith(181, { claimed: { ...wrong, ...unreadable } })).verdict).toBe('wrong');
    expect(audited(drumWith(181, { claimed: unreadable })).verdict).toBe('doubtful');
    expect(audited(drumWith(170, { claimed: unreadable })).verdict).toBe('cannot-tell');
    expect(audited(drumWith(170)).verdict).toBe('sound');
  });

  it('danger stands first, then cautions, then notes', () => {
    const { findings } = audited(
      drumWith(187, { claimed: { ...wrong, ...unreadable, total: { g: '9' }, freeCausticAlkali: { percentNaoh: 1 } } }),
    );
    expect(findings.map(({ severity }) => severity)).toEqual(['danger', 'caution', 'caution', 'caution', 'note']);
    expect(findings.map(({ code }) => code).slice(0, 2)).toEqual(['free-caustic-above-limit', 'superfat-contradicted']);
  });

  it('a sound one never goes without its worst case', () => {
    expect(findingIn(audited(drumWith(170)), 'worst-case').severity).toBe('note');
  });
});

describe('what cannot be read', () => {
  it('is said, and the rest is judged', () => {
    const result = audited(
      drumWith(187, { water: { g: 'much' }, claimed: { superfat: 5, strength: { percent: '40' } } }),
    );
    expect(result.findings.filter(({ code }) => code === 'unreadable').map(({ path, error }) => [path, error])).toEqual(
      [
        ['water.g', 'not-a-number'],
        ['claimed.superfat', 'bad-shape'],
      ],
    );
    expect(result.verdict).toBe('dangerous');
    expect(codesOf(result)).not.toContain('strength-contradicted'); // the water of the lye is not known
  });

  it('a fat of no known name is taken by the value claimed for it', () => {
    const unknown = (claimed?: object) =>
      audited(drumWith(200, { fats: [{ fat: 'moon butter', mass: { g: '1000' }, ...(claimed && { claimed }) }] }));
    const taken = unknown({ saponificationValue: { mgKohPerG: '250' } });
    expect(taken.verdict).toBe('dangerous');
    expect(codesOf(taken)).toEqual(['free-caustic-above-limit', 'unreadable', 'not-judged']);
    const open = unknown();
    expect([open.verdict, open.implied]).toEqual(['cannot-tell', undefined]);
    expect(unknown({ saponificationValue: { mgKohPerG: '2500' } }).implied).toBeUndefined();
    const isTaken = (mgKohPerG: string) => unknown({ saponificationValue: { mgKohPerG } }).implied !== undefined;
    expect(['19', '20', '700', '701'].map(isTaken)).toEqual([false, true, true, false]); // both ends are values still
  });

  it('a row that cannot be read leaves no balance, but its neighbours are compared', () => {
    const result = audited(
      drumWith(170, {
        fats: [
          { fat: 'Drum', mass: { g: '1000' }, claimed: { saponificationValue: { mgKohPerG: '200' } } },
          { fat: 1 },
        ],
      }),
    );
    expect([result.verdict, result.implied]).toEqual(['wrong', undefined]);
  });

  it('no row of lye, or none of fat, that can be read is said once', () => {
    const none = (more: object) => audited(drumWith(170, more)).findings.map(({ code, path }) => `${code} ${path}`);
    expect(none({ lye: [{ alkali: 'x' }] })).toEqual(['unreadable lye[0].alkali']);
    expect(none({ fats: [{ fat: 5 }] })).toEqual(['unreadable fats[0].fat']);
    const unknown = { fat: 'moon butter', mass: { g: '100' } };
    expect(none({ fats: [unknown] })).toEqual(['unreadable fats[0].fat']);
    // and a value beside it is looked into all the same
    const lot = { fat: 'Lot', mass: { g: '100' }, claimed: { saponificationValue: { mgKohPerG: '25.0' } } };
    expect(none({ fats: [lot, unknown] })).toEqual([
      'saponification-value-contradicted fats[0].claimed.saponificationValue',
      'unreadable fats[1].fat',
    ]);
  });

  it('characters that steer a screen are not passed on', () => {
    const hostile = 'moon\u202Ebutter\u0007';
    const { findings } = audited(drumWith(170, { fats: [{ fat: hostile, mass: { g: '1000' } }], [`k\u001B[31m`]: 1 }));
    expect(JSON.stringify(findings.map(({ path, explanation }) => [path, explanation]))).not.toMatch(
      /\\u00|\p{Cf}|\p{Cc}/u,
    );
  });

  it('figures that are not judged are named', () => {
    const result = audited(
      drumWith(170, {
        additions: [{ name: 'scent', volume: { mL: 10 } }],
        claimed: { ph: 9, total: { g: '1170' } },
        temperatures: [{ stage: 'saponification', temperature: { celsius: 60 } }],
      }),
    );
    expect(result.findings.filter(({ code }) => code === 'not-judged').map(({ path }) => path)).toEqual([
      'water', 'additions', 'additions[0]',
    ]); // prettier-ignore
    expect(result.verdict).toBe('sound');
  });

  it('more than fifty of a kind are counted', () => {
    const rows = Array.from({ length: 60 }, () => ({
      fat: 'Drum',
      mass: { g: '10' },
      claimed: { share: { percent: '50' } },
    }));
    const { findings } = audited(drumWith(100, { fats: rows }));
    const shares = findings.filter(({ code }) => code === 'share-contradicted');
    expect([shares.length, shares.at(-1)?.explanation]).toEqual([51, '10 more findings of this kind are left out.']);
  });
});

describe('a result', () => {
  const recipe = drumWith('185.0', {
    fats: [{ fat: 'Drum', mass: { kg: '1' }, claimed: { saponificationValue: { gNaohPerG: '0.255' }, share: { percent: '90' } } }],
    water: { g: '300' },
    claimed: { superfat: { percent: '5' }, strength: { percent: '50' }, waterPerAlkali: '9', total: { lb: '9' }, ph: 9 },
  }); // prettier-ignore

  it('is plain data when it is written out, and frozen throughout', () => {
    const result = audited(recipe);
    expect(throughJson(toJson(result))).toEqual(toJson(result));
    const thawed: string[] = [];
    const look = (value: unknown, path: string): void => {
      if (typeof value !== 'object' || value === null || 'toFixed' in value) return;
      if (!Object.isFrozen(value)) thawed.push(path);
      for (const [key, field] of Object.entries(value)) look(field, `${path}.${key}`);
    };
    look(result, 'result');
    expect(thawed).toEqual([]);
  });

  it('carries the printed and the computed figure of each contradiction as data', () => {
    const contradicted = audited(recipe).findings.filter(({ code }) => code.endsWith('-contradicted'));
    expect(contradicted.map(({ code }) => code)).toEqual([
      'superfat-contradicted', 'saponification-value-contradicted', 'share-contradicted', 'strength-contradicted',
      'water-per-alkali-contradicted', 'total-contradicted',
    ]); // prettier-ignore
    for (const { claimed, computed, code } of contradicted) {
      expect([code, typeof claimed, typeof computed]).toEqual([code, 'object', 'object']);
    }
    expect(toJson(findingIn(audited(recipe), 'water-per-alkali-contradicted').claimed)).toEqual({ number: '9' });
  });

  it('comes with the cautions and sources of its figures', () => {
    const { cautions, basis, notes } = audited(drumWith(187, { fats: [{ fat: 'olive oil', mass: { g: '1000' } }] }));
    expect(cautions.map(({ code }) => code)).toContain('free-caustic-certain');
    expect(basis).toContain('ghs-naoh');
    expect(notes.length).toBeGreaterThan(0);
  });

  it('leaves the recipe as it was', () => {
    const before = JSON.stringify(recipe);
    audited(recipe);
    expect(JSON.stringify(recipe)).toBe(before);
    expect(toJson(audited(Object.freeze(JSON.parse(before))))).toEqual(toJson(audited(recipe)));
  });

  it('one’s own fat stands before a published one of its name, and a whole fat may stand in its place', () => {
    const row = (fat: unknown) => drumWith(170, { fats: [{ fat, mass: { g: '1000' } }] });
    const own = auditRecipe(row('olive-oil'), { fats: { 'olive-oil': fats.Drum } });
    expect(toJson(own.implied)).toEqual(toJson(audited(drumWith(170)).implied));
    expect(toJson(auditRecipe(row(throughJson(fats.Drum))).implied)).toEqual(toJson(own.implied));
  });
});
