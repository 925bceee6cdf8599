/** What fats say and keep at the edges: names, certificates beside published ranges, shares left out, charges of nothing. */
import { fat, fatFromBlend, fatFromCertificate, fatFromProfile, iodineValueFromProfile, readFat } from 'laurate';
import { describe, expect, it } from 'vitest';
import { isPublishedFat, isSameName } from '../../src/fats/publishedNames.js';
import { readFatCharges } from '../../src/fats/fatCharges.js';
import { EDITION } from '../../src/sources/index.js';
import { textOf, throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const codes = (remarks: readonly { readonly code: string }[]): string[] => remarks.map(({ code }) => code);

describe('names', () => {
  it.each([
    ['Flax-seed oil', 'flaxseed oil', true],
    ['Flax--seed oil', 'flaxseed oil', true],
    ['Grade 50--fifty', 'grade 50fifty', true],
    ['Lot 1.5', 'Lot 15', false],
    ['Lot 1-5', 'Lot 15', false],
    ['Lot 1, 5', 'Lot 15', false],
    ['Lot 1 , 5', 'Lot 15', false],
    ['Lot 1 , 5', 'Lot 1 5', false],
    ['Lot 1 , drum', 'Lot 1drum', true],
    ['Lot 1.5.7', 'Lot 1.57', false],
    ['Lot 1. 5. drum', 'lot 1. 5 drum', true],
    ['. 5', '5', true],
    ['Drum , , 5', 'drum5', true],
    ['!?', '!?', true],
    ['!?', '...', false],
    ['drum', 'dram', false],
  ])('%s and %s are one: %s', (name, called, isOne) => {
    expect(isSameName(name, called)).toBe(isOne);
  });

  it('of published fats are known in any spelling', () => {
    expect(['COPRA oil', 'coconut-oil', 'drum 7'].map(isPublishedFat)).toEqual([true, true, false]);
  });

  it('that hold what was written are offered, five at most, for what tells fats apart', () => {
    const offered = (written: string) => {
      const [, list = ''] = /did you mean ([^?]*)/.exec(refusal(() => fat(written)).message) ?? [];
      return list.split(' or ').length;
    };
    expect([offered('acid'), offered('rosi')]).toEqual([5, 3]);
    expect(refusal(() => fat('bab')).message).toContain('did you mean babassu-oil?');
    // the beginning of any of its words
    expect(refusal(() => fat('kerne')).message).toContain('palm-kernel-oil');
    for (const word of ['oi', 'oil', 'ba', 12, null])
      expect(refusal(() => fat(word as string)).message).not.toContain('did you mean');
  });
});

describe('fatFromCertificate', () => {
  const coconut = fat('coconut-oil');
  const lot = (mgKohPerG: number | string) =>
    fatFromCertificate({
      name: 'Drum',
      like: coconut,
      saponificationValue: { mgKohPerG },
      uncertainty: { mgKohPerG: 1 },
      acidValue: { mgKohPerG: 0 },
    });

  it.each([
    [248, []],
    [265, []],
    ['247.9', ['certificate-outside-published-range']],
    ['265.1', ['certificate-outside-published-range']],
  ])('of %s mg KOH/g beside a published 248 to 265', (value, notes) => {
    expect(codes(lot(value).notes)).toEqual(notes);
  });

  it.each([
    // 183 and 257 mg: the same lot per gram of NaOH and of KOH, 56.105/39.997 apart
    [183, '183 fits if it is mg of NaOH, not of KOH'],
    [360, '256.6 fits if it is mg of KOH, not of NaOH'],
    [300, 'is it a lot of this fat, and the unit right?'],
  ])('of %s mg KOH/g asks what may have been meant', (value, asked) => {
    expect(lot(value).notes[0]?.text).toContain(asked);
  });

  it('has its own kind, if it states one, and nothing to say against a fat that is not like any', () => {
    const stated = { name: 'Drum', kind: 'free-fatty-acid', saponificationValue: { mgKohPerG: 200 } } as const;
    const acid = fatFromCertificate({ ...stated, like: coconut });
    expect([acid.kind, acid.acidValue.mgKohPerG.toString()]).toEqual(['free-fatty-acid', '200']);
    const bare = fatFromCertificate({ ...stated, kind: 'rosin', uncertainty: { mgKohPerG: 1 } });
    expect([bare.notes, 'iodineValue' in bare, 'profile' in bare]).toEqual([[], false, false]);
  });

  it('says nothing of an acid value that it has from the fat it is like', () => {
    const wax = fatFromCertificate({
      name: 'Blocks',
      like: fat('beeswax'),
      saponificationValue: { mgKohPerG: 95 },
      uncertainty: { mgKohPerG: 1 },
    });
    expect([wax.acidValue, wax.notes]).toEqual([fat('beeswax').acidValue, []]);
  });

  it('says that of a range of acid values the middle counts', () => {
    const ranged = fatFromCertificate({
      name: 'Drum',
      kind: 'triglyceride',
      saponificationValue: { mgKohPerG: 200 },
      uncertainty: { mgKohPerG: 1 },
      acidValue: { low: { mgKohPerG: 1 }, high: { mgKohPerG: 3 } },
    });
    expect([ranged.acidValue.mgKohPerG.toString(), ...codes(ranged.notes)]).toEqual(['2', 'middle-of-acid-values']);
  });
});

describe('profiles', () => {
  const ranges = { 'C12:0': { low: 40, likely: 45, high: 50 }, 'C18:1': { low: 50, high: 60 } };

  it('keep in what is given a likely share that was stated, and none that was not', () => {
    const { given } = iodineValueFromProfile({ profile: ranges, kind: 'triglyceride' });
    const { 'C12:0': lauric, 'C18:1': oleic } = throughJson(given.profile) as Record<string, object>;
    expect(lauric).toEqual({ low: { percent: '40' }, likely: { percent: '45' }, high: { percent: '50' } });
    expect(oleic).toEqual({ low: { percent: '50' }, high: { percent: '60' } });
  });

  it('leave out an acid of no share', () => {
    const whole = { 'C12:0': 45, 'C18:1': 55 };
    const of = (profile: object) => iodineValueFromProfile({ profile, kind: 'triglyceride' });
    expect(textOf(of({ ...whole, 'C16:0': undefined }))).toBe(textOf(of(whole)));
  });

  it('of free acids have no acid value taken as zero', () => {
    const notes = (kind: 'free-fatty-acid' | 'triglyceride') =>
      codes(fatFromProfile({ name: 'Lot', kind, profile: { 'C18:1': 100 }, unsaponifiable: { percent: 0 } }).notes);
    expect(notes('free-fatty-acid')).toEqual(['bounds-by-convention']);
    expect(notes('triglyceride')).toEqual(['bounds-by-convention', 'acid-value-taken-as-zero']);
  });
});

describe('readFat', () => {
  it('takes the edition of this library where none is told', () => {
    const told = { ...(throughJson(fat('tallow')) as object), edition: undefined };
    expect(readFat(told).edition).toBe(EDITION);
  });

  it('reads a blend of a name and a note that are as long as they may be', () => {
    const long = readFat({
      ...(throughJson(fat('tallow')) as object),
      id: undefined,
      name: 'n'.repeat(200),
      notes: [{ code: 'told', text: 'x'.repeat(1000) }],
    });
    const blend = fatFromBlend({ name: 'Stock', parts: [{ fat: long, mass: { g: 1 } }] });
    expect(textOf(readFat(throughJson(blend)))).toBe(textOf(blend));
  });
});

describe('charges', () => {
  const charge = (...grams: readonly number[]) =>
    readFatCharges(
      'fats',
      grams.map((g) => ({ fat: fat('tallow'), mass: { g } })),
    );

  it('weigh something together', () => {
    expect(charge(0, 1).map(({ grams }) => grams.toString())).toEqual(['0', '1']);
    expect(refusal(() => charge(0, 0))).toMatchObject({ code: 'out-of-range', path: 'fats' });
  });
});
