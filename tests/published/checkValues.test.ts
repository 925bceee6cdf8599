import { describe, expect, it } from 'vitest';
import { checkValues, knownDisagreements, outcomeOf, selfCheck } from 'laurate/check-values';

const rows = checkValues().map((row) => ({ row, outcome: outcomeOf(row) }));

describe('published figures', () => {
  it.each(rows)('$row.call: $row.id ($row.source)', ({ row, outcome }) => {
    if (row.id in knownDisagreements) {
      expect(outcome, 'a listed disagreement that has gone must leave the list').toMatchObject({
        met: false,
        known: knownDisagreements[row.id],
      });
    } else {
      expect(outcome).toMatchObject({ met: true });
      expect(outcome).not.toHaveProperty('known');
    }
  });
});

describe('selfCheck', () => {
  it('gives the same rows, and counts them', () => {
    const { rows: outcomes, met, known, total } = selfCheck();
    expect(outcomes).toEqual(rows.map(({ outcome }) => outcome));
    expect(total).toBe(checkValues().length);
    expect(known).toBe(Object.keys(knownDisagreements).length);
    expect(met + known).toBe(total);
  });
});

describe('outcomeOf can fail', () => {
  const molarMass = {
    id: 'own-row',
    call: 'molarMassOf',
    inputs: { formula: 'NaOH' },
    result: 'molarMass',
    unit: 'gPerMol',
    why: 'a row made to fail',
    source: 'iupac-2021',
    where: 'nowhere',
    obtained: 'derived',
  } as const;

  it.each([
    ['above the tolerance', { printed: '39.996', expected: '39.996', tolerance: '0.0009' }, '0.001'],
    ['below the tolerance', { printed: '39.998', expected: '39.998', tolerance: '0.0009' }, '-0.001'],
    ['above a range', { printed: '-39', expectedRange: [null, '39'] as const }, '0.997'],
    ['below a range', { printed: '40-', expectedRange: ['40', null] as const }, '-0.003'],
  ])('a figure %s', (_, expectation, deviation) => {
    expect(outcomeOf({ ...molarMass, ...expectation })).toMatchObject({ met: false, deviation });
  });

  const bounds = {
    ...molarMass,
    call: 'saponificationValueOf',
    inputs: {
      fat: {
        certificate: {
          name: 'a lot',
          kind: 'triglyceride',
          saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '200' } },
        },
      },
    },
    result: 'saponificationValue',
    unit: 'mgKohPerG',
  } as const;

  it.each([
    ['189', '-1'],
    ['201', '1'],
  ])('an observation of %s outside the bounds', (observed, deviation) => {
    expect(outcomeOf({ ...bounds, printed: observed, expectedInside: observed })).toMatchObject({
      met: false,
      deviation,
    });
  });

  it.each([
    ['the low end', ['191.9', '200'], '-1.9'],
    ['the high end', ['190', '198.9'], '1.1'],
    ['both, the high end more', ['189', '201.5'], '-1.5'],
    ['both, the low end more', ['191.5', '199'], '-1.5'],
  ] as const)('bounds that are off at %s', (_, expectedBounds, deviation) => {
    const row = { ...bounds, printed: expectedBounds.join(' to '), expectedBounds, tolerance: '1' };
    expect(outcomeOf(row)).toMatchObject({
      met: false,
      deviation,
      expected: expectedBounds.join(' to '),
      got: '190 to 200',
    });
    expect(outcomeOf({ ...row, tolerance: '1.9' }).met).toBe(true);
  });

  it('another word than those expected', () => {
    const row = {
      ...molarMass,
      call: 'auditRecipe',
      inputs: {
        fats: [{ fat: 'coconut-oil', mass: { g: '900' } }],
        lye: [{ alkali: 'naoh', mass: { g: '322.7' }, solution: { hydroxide: { percent: 49 } } }],
      },
      result: 'verdict',
      printed: '4',
    } as const;
    expect(outcomeOf({ ...row, expectedWords: ['doubtful', 'wrong'] })).toMatchObject({
      met: false,
      got: 'sound',
      expected: 'doubtful or wrong',
      deviation: '1',
    });
    expect(outcomeOf({ ...row, expectedWords: ['doubtful', 'sound'] })).toMatchObject({ met: true, deviation: '0' });
  });

  it('but an end of a range, of bounds and of a tolerance is within', () => {
    expect(outcomeOf({ ...molarMass, printed: '39.997-', expectedRange: ['39.997', null] }).met).toBe(true);
    expect(outcomeOf({ ...molarMass, printed: '-39.997', expectedRange: [null, '39.997'] }).met).toBe(true);
    expect(outcomeOf({ ...bounds, printed: '190', expectedInside: '190' }).met).toBe(true);
    expect(outcomeOf({ ...bounds, printed: '200', expectedInside: '200' }).met).toBe(true);
    expect(outcomeOf({ ...molarMass, printed: '40', expected: '40', tolerance: '0.003' }).met).toBe(true);
  });

  it('and reads equivalents, which run the other way', () => {
    const equivalents = { ...bounds, unit: 'saponificationEquivalent', printed: '300', expectedInside: '300' } as const;
    expect(outcomeOf(equivalents)).toMatchObject({ met: false, expected: '300' });
    expect(outcomeOf({ ...equivalents, printed: '290', expectedInside: '290' }).met).toBe(true);
  });

  it.each([
    [['1', '2'], '1 to 2'],
    [[null, '2'], 'at most 2'],
    [['1', null], 'at least 1'],
  ] as const)('says the range %j in words', (expectedRange, words) => {
    expect(outcomeOf({ ...molarMass, printed: '', expectedRange }).expected).toBe(words);
  });
});
