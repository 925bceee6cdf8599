import { fat, fats, planLye, saponificationValueFromProfile, type PublishedFatId } from 'laurate';
import { describe, expect, it } from 'vitest';
import { publishedFats as table } from '../../src/fats/data/publishedFats.js';
import { Exact } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const publishedFats = table();
const bounds = (id: PublishedFatId): string[] => {
  const { low, likely, high } = fat(id).saponificationValue;
  return [low.mgKohPerG.toString(), likely.mgKohPerG.toFixed(4), high.mgKohPerG.toString()];
};

describe('fat: worked by hand', () => {
  it('takes the union of the standards as bounds', () => {
    // 248-265 in one standard, 250-264 in the other
    expect(bounds('coconut-oil').filter((_, at) => at !== 1)).toEqual(['248', '265']);
    // 90-102, 90-105 and 89.3-105.3; no profile on file, so that the middle is likely
    expect(bounds('lanolin')).toEqual(['89.3', '97.3000', '105.3']);
  });

  it('counts the acid value of a fatty acid as its saponification value', () => {
    // 205-221 as saponification value, 216-220 and 204-220 as acid value
    expect(bounds('palmitic-acid').filter((_, at) => at !== 1)).toEqual(['204', '221']);
    expect(bounds('stearic-acid-50').filter((_, at) => at !== 1)).toEqual(['194', '212']);
  });

  it('takes a likely value from the profile less half the unsaponifiable matter', () => {
    // stearic acid 50: lows 30 + 40, room 30 + 20, t = 0.6, so 48 % C16:0 and 52 % C18:0, nothing unsaponifiable stated
    // 56105 * (0.48/256.430 + 0.52/284.484)
    expect(bounds('stearic-acid-50')[1]).toBe('207.5732');
    // myristic acid: C14:0 97 to 100, alone, so 100 %; 56105/228.376 = 245.6694, less half of 1 %
    expect(bounds('myristic-acid')[1]).toBe('244.4411');
  });

  it('holds an iodine value that a standard limits on one side only', () => {
    const iodine = (id: PublishedFatId) => {
      const { low, likely, high } = fat(id).iodineValue ?? {};
      return [low, likely, high].map((each) => each?.gI2Per100g.toFixed(0));
    };
    expect(iodine('stearic-acid-50')).toEqual(['0', '0', '4']); // at most 4
    expect(iodine('palmitic-acid')).toEqual(['0', '0', '2']); // at most 1, at most 2: a lot inside any is lawful
    expect(iodine('tung-oil')).toEqual(['163', '224', '236']); // at least 163; its profile gives 212 to 236
    expect(iodine('palm-superolein')).toEqual(['56', '64', '72']); // at least 60, which its profile holds already
    expect(iodine('palm-olein')).toEqual(['50', '57', '62']); // a range of both ends, and two of at least 56
    expect(fat('lauric-acid').iodineValue).toBeUndefined(); // at most 3 and no profile: nothing to plan with
  });

  it('takes 7 % about a single observed value', () => {
    expect(bounds('rosin-ww')).toEqual(['157.821', '169.7000', '181.579']); // 169.7 * 0.93, * 1.07
    expect(fat('rosin-ww').from).toBe('observation');
    expect(fat('rosin-ww').acidValue.mgKohPerG.toString()).toBe('169.7'); // all acid
  });

  it('takes the middle of a wax by its published acid values', () => {
    expect(fat('beeswax').acidValue.mgKohPerG.toString()).toBe('20.5'); // 17 to 24
    expect(fat('beeswax').notes.map(({ code }) => code)).toContain('middle-of-acid-values');
  });

  it('says so where the likely profile lies outside the published range', () => {
    const disagreeing = fats.filter(({ id }) =>
      fat(id).notes.some(({ code }) => code === 'profile-and-range-disagree'),
    );
    for (const { id } of disagreeing) {
      const { low, likely, high } = fat(id).saponificationValue;
      expect([id, likely.mgKohPerG.eq(low.mgKohPerG) || likely.mgKohPerG.eq(high.mgKohPerG)]).toEqual([id, true]);
    }
    expect(disagreeing.length).toBeGreaterThan(0);
  });
});

describe('fat: the 7 % of a fat without a published range', () => {
  it('hold the whole range of 40 of the 45 published fats that have a range and a profile, as the guide says', () => {
    const both = fats.filter(({ id }) => fat(id).from === 'standard' && fat(id).profile !== undefined);
    const strays = both.filter(({ id, kind }) => {
      const { profile = {}, unsaponifiable } = publishedFats[id];
      const ranges = Object.fromEntries(Object.entries(profile).map(([acid, [low, high]]) => [acid, { low, high }]));
      const half = Math.max(0, ...(unsaponifiable ?? []).map(([, maximum]) => maximum)) / 2;
      const { saponificationValue } = saponificationValueFromProfile({
        kind: kind as 'triglyceride',
        profile: ranges,
        unsaponifiable: { percent: half },
      });
      const likely = Number(saponificationValue.likely.mgKohPerG);
      const { low, high } = fat(id).saponificationValue;
      return low.mgKohPerG.lt(likely * 0.93) || high.mgKohPerG.gt(likely * 1.07);
    });
    expect(strays.map(({ id }) => id)).toEqual([
      'almond-oil',
      'avocado-oil',
      'shea-butter',
      'palm-superolein',
      'butterfat',
    ]);
    expect([both.length, both.length - strays.length]).toEqual([45, 40]);
  });
});

describe('fat: laws', () => {
  it.each(fats)('$id answers to its id, its name and each synonym, in any spelling', ({ id, name, kind, synonyms }) => {
    const one = fat(id);
    expect(one).toMatchObject({ id, name, kind });
    for (const word of [name, ...synonyms]) {
      for (const spelling of [word, word.toUpperCase(), word.replaceAll(' ', '-'), ` ${word}. `]) {
        expect([spelling, fat(spelling) === one]).toEqual([spelling, true]);
      }
    }
  });

  it.each(fats)('$id: bounds hold every published range, and likely stands between them', ({ id, kind }) => {
    const { low, likely, high } = fat(id).saponificationValue;
    const row = publishedFats[id];
    const limits = [...(row.saponificationValue ?? []), ...(kind === 'free-fatty-acid' ? (row.acidValue ?? []) : [])];
    for (const [least, most] of limits) {
      if (least !== null) expect(low.mgKohPerG.lte(least)).toBe(true);
      if (most !== null) expect(high.mgKohPerG.gte(most)).toBe(true);
    }
    const [observed] = row.observedSaponificationValue ?? [];
    if (observed !== undefined) expect(likely.mgKohPerG.eq(observed)).toBe(true);
    expect(likely.mgKohPerG.gte(low.mgKohPerG) && likely.mgKohPerG.lte(high.mgKohPerG)).toBe(true);
    expect(low.mgKohPerG.gt(20) && high.mgKohPerG.lt(700)).toBe(true);
  });

  it('the seven fats without a value rest on their profile and say so; nobody else does', () => {
    const resting = fats.filter(({ id }) => fat(id).from === 'profile').map(({ id }) => id);
    expect(resting).toEqual([
      'babassu-oil',
      'corn-oil',
      'cottonseed-oil',
      'canola-oil',
      'sesame-oil',
      'hempseed-oil',
      'palm-stearin',
    ]);
    for (const id of resting) {
      const { notes, basis } = fat(id);
      expect(notes.map(({ code }) => code)).toContain('bounds-by-convention');
      expect(basis).toContain('laurate-convention');
    }
  });

  it('of those seven the bounds are 7 % either way, or those of the profile where wider', () => {
    for (const { id } of fats.filter((listing) => fat(listing.id).from === 'profile')) {
      const { saponificationValue, profile, unsaponifiable } = fat(id);
      const exact = saponificationValueFromProfile({
        kind: 'triglyceride',
        profile: profile ?? {},
        unsaponifiable,
      }).saponificationValue;
      const likely = new Exact(exact.likely.mgKohPerG.toString());
      const low = Exact.min(likely.times('0.93'), exact.low.mgKohPerG.toString());
      const high = Exact.max(likely.times('1.07'), exact.high.mgKohPerG.toString());
      // a profile through its result loses at most the last of 34 digits
      expect(low.minus(saponificationValue.low.mgKohPerG.toString()).abs().lte('1e-29')).toBe(true);
      expect(high.minus(saponificationValue.high.mgKohPerG.toString()).abs().lte('1e-29')).toBe(true);
    }
  });

  it.each(fats)('$id can be planned with', ({ id }) => {
    const { superfat } = planLye({
      fats: [{ fat: fat(id), mass: { g: 1000 } }],
      alkali: { naoh: { solid: { hydroxide: { percent: 98 } } } },
      target: { superfat: { percent: 5 } },
      dilution: { strength: { percent: 30 } },
    });
    // where the likely value is a bound itself, 5 comes back but for the last of 34 digits
    expect(superfat.low.percent.lte('5.0000000000000000000000001')).toBe(true);
    expect(superfat.high.percent.gte('4.9999999999999999999999999')).toBe(true);
  });

  it('gives the same object twice', () => {
    expect(fats.every(({ id }) => fat(id) === fat(id))).toBe(true);
  });

  it('all acid is acid by its saponification value; of esters the acid value lies below', () => {
    for (const { id, kind } of fats) {
      const { acidValue, saponificationValue } = fat(id);
      if (kind === 'rosin' || kind === 'free-fatty-acid')
        expect(acidValue.mgKohPerG.eq(saponificationValue.likely.mgKohPerG)).toBe(true);
      else expect(acidValue.mgKohPerG.lt(saponificationValue.low.mgKohPerG)).toBe(true);
    }
  });
});

describe('fat: refusals', () => {
  it.each([
    ['rosin', ['rosin-ww', 'rosin-n', 'rosin-spanish']],
    ['stearic acid', ['stearic-acid-50', 'stearic-acid-70', 'stearic-acid-95', 'stearic-acid-purified']],
    ['cocnut oil', ['coconut-oil']],
    ['tallo', ['tallow']],
    // the word that tells it from others, alone, misspelt or among words that tell nothing
    ['coconut', ['coconut-oil']],
    ['castor', ['castor-oil']],
    ['olive', ['olive-oil']],
    ['olive oil extra virgin', ['olive-oil']],
    ['cocnut', ['coconut-oil']],
    ['babasu', ['babassu-oil']],
    ['rape oil', ['canola-oil', 'rapeseed-oil-high-erucic']],
    ['coconut oli', ['coconut-oil']],
    ['beas wax', ['beeswax']], // only as one word it comes near
  ])('%s, with what may be meant', (name, candidates) => {
    const { code, path, message } = refusal(() => fat(name));
    expect({ code, path }).toEqual({ code: 'unknown-fat', path: 'fat' });
    const meant = /\(did you mean (.*)\?\)/
      .exec(message)?.[1]
      ?.toLowerCase()
      .replaceAll(/["]/g, '')
      .replaceAll(/\boil\b/g, 'oil');
    for (const candidate of candidates) expect(meant?.replaceAll(' ', '-')).toContain(candidate);
    expect(meant?.startsWith(candidates[0] ?? '')).toBe(true);
  });

  it.each(['motor oil', 'mango butter', 'Goose fat', 'emu oil', 'oil', 'extra virgin oil', 'horse fat', 'unknown wax'])(
    '%s, which is none on file, with nothing but where all are listed',
    (name) => {
      const { message } = refusal(() => fat(name));
      expect(message).not.toContain('did you mean');
      expect(message).toContain('fats.map(({ id }) => id) lists all');
    },
  );

  it.each(['', '  ', 'xyzzyplugh', 'toString', '__proto__', 'coconut oil\u0000palm oil', 12, null, undefined, {}, ['coconut-oil']])(
    '%o',
    (name) => {
      expect(refusal(() => fat(name as never))).toMatchObject({ code: 'unknown-fat', path: 'fat' });
    },
  ); // prettier-ignore

  it('keeps a very long name out of the message', () => {
    expect(refusal(() => fat('a'.repeat(1_000_000))).message.length).toBeLessThan(300);
  });
});
