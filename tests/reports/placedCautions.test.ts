import { describe, expect, it } from 'vitest';
import * as ofAdditions from '../../src/composition/cautions.js';
import * as ofLye from '../../src/lye/cautions.js';
import type { Remark } from '../../src/numbers/index.js';
import * as ofHeat from '../../src/process/cautions.js';
import { cautionsAt, type CautionPlace } from '../../src/reports/sheet/placedCautions.js';

const isRemark = (value: unknown): value is Remark => typeof value === 'object' && value !== null && 'code' in value;
const all = [
  ...[ofLye, ofAdditions, ofHeat].flatMap((cautions) => Object.values<unknown>(cautions).filter(isRemark)),
  ...ofLye.alkaliCautions(),
];

/** Where the hand meets what a caution is of; what is not named here stands before everything. */
const HERE: Readonly<Record<CautionPlace, readonly string[]>> = {
  start: [
    'alkali-among-additions',
    'certificate-beyond-known-fats',
    'certificate-contradicts-standard',
    'free-caustic-certain',
    'free-caustic-likely',
    'percent-looks-like-fraction',
    'stronger-than-dissolves',
  ],
  weigh: ['caustic-burns', 'children-and-animals', 'no-aluminium-zinc-tin'],
  lye: ['solid-into-cold-water'],
  fats: ['free-fatty-acid-reacts-at-once'],
  saponify: [
    'carbonate-foams',
    'hot-soap-scalds',
    'lye-into-hot-soap',
    'pot-may-boil',
    'reaction-can-run',
    'spirit-may-boil',
  ],
  test: ['amine-hides-alkali', 'free-caustic-possible', 'none-left-on-paper'],
  clear: ['spirit-catches-fire', 'sugar-in-hot-lye'],
  rest: ['acid-into-hot-soap', 'spirit-catches-fire'],
  'weigh-pot': [],
  pour: ['hot-soap-scalds'],
  end: ['sums-not-a-certificate'],
};
const PLACES = Object.keys(HERE) as CautionPlace[];

describe('the place of a caution on a sheet', () => {
  it.each(PLACES)('%s: what the hand meets there', (place) => {
    const said = all.filter((one) => cautionsAt(place, [one]).length > 0).map(({ code }) => code);
    expect([...new Set(said)].sort()).toEqual(HERE[place]);
  });

  it('is that of the work with lye for what is known of lye at the bench', () => {
    const placesOf = (code: string) => PLACES.filter((place) => cautionsAt(place, [{ code, text: 'x' }]).length > 0);
    expect(placesOf('diluting-warms')).toEqual(['lye']);
    expect(placesOf('crystallised-stock')).toEqual(['lye']);
  });

  it('is before everything for what has none, also where its code is a word of the language', () => {
    for (const code of ['news', 'constructor', '__proto__']) {
      expect(cautionsAt('start', [{ code, text: 'Mind <it>.' }])).toEqual(['**Caution:** Mind &lt;it&gt;.']);
      for (const place of PLACES.slice(1)) expect(cautionsAt(place, [{ code, text: 'x' }])).toEqual([]);
    }
  });

  it('gathers what stands there in one paragraph, in the order given', () => {
    const two = ['none-left-on-paper', 'caustic-burns', 'free-caustic-possible'].map((code) => ({ code, text: code }));
    expect(cautionsAt('test', two)).toEqual(['**Caution:** none-left-on-paper free-caustic-possible']);
    expect(cautionsAt('test', [])).toEqual([]);
  });
});
