import { fat, fatFromCertificate, readFat } from 'laurate';
import { publishedRecordOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';

describe('publishedRecordOf', () => {
  it('takes a fat as well as its name, also one that was stored', () => {
    const oil = fat('castor-oil');
    for (const of of [oil, readFat(JSON.parse(JSON.stringify(oil)))]) {
      expect(publishedRecordOf(of)).toEqual(publishedRecordOf('castor oil'));
    }
  });

  it('refuses a fat that is no published one, and what is no fat', () => {
    const lot = fatFromCertificate({ name: 'Drum', like: fat('castor-oil'), saponificationValue: { mgKohPerG: 180 } });
    expect(refusal(() => publishedRecordOf(lot))).toMatchObject({ code: 'unknown-fat', path: 'fat' });
    expect(refusal(() => publishedRecordOf(null as never))).toMatchObject({ code: 'missing', path: 'fat' });
    expect(refusal(() => publishedRecordOf(12 as never))).toMatchObject({ code: 'unknown-fat', path: 'fat' });
  });
});
