import { afterEach, describe, expect, it, vi } from 'vitest';
import { CalculationError, isCalculationError, refuse } from '../../src/numbers/index.js';

const negative = new CalculationError('out-of-range', 'koh.g', 'at least 0', '-1');

describe('CalculationError: worked by hand', () => {
  it('says field, expectation and what came', () => {
    expect(negative.message).toBe('koh.g: expected at least 0, received -1');
    expect(negative.name).toBe('CalculationError');
    expect(negative).toBeInstanceOf(Error);
    expect(negative.stack).toContain('koh.g: expected at least 0, received -1');
  });

  it('is plain data in JSON', () => {
    expect(JSON.parse(JSON.stringify(negative))).toEqual({
      name: 'CalculationError',
      code: 'out-of-range',
      path: 'koh.g',
      expected: 'at least 0',
      received: '-1',
      message: 'koh.g: expected at least 0, received -1',
    });
  });
});

describe('refuse', () => {
  it('throws it, with what came as text', () => {
    expect(() => refuse('bad-shape', 'fats[0]', 'an object', ['x'])).toThrow(
      expect.objectContaining({
        name: 'CalculationError',
        code: 'bad-shape',
        path: 'fats[0]',
        expected: 'an object',
        received: 'a list of 1',
        message: 'fats[0]: expected an object, received a list of 1',
      }),
    );
  });

  it('cuts what came at 80 characters', () => {
    expect(() => refuse('not-a-number', 'x', 'a number', 'y'.repeat(1_000_000))).toThrow(
      expect.objectContaining({ received: `${'y'.repeat(79)}…` }),
    );
  });
});

describe('isCalculationError', () => {
  afterEach(() => {
    vi.resetModules();
  });

  it('knows one of ours', () => {
    expect(isCalculationError(negative)).toBe(true);
  });

  it('knows one of another copy of the library, which instanceof does not', async () => {
    vi.resetModules();
    const other = await import('../../src/numbers/calculationError.js');
    const theirs = new other.CalculationError('missing', 'x', 'a number', 'nothing');
    expect(theirs).not.toBeInstanceOf(CalculationError);
    expect(isCalculationError(theirs)).toBe(true);
    expect(other.isCalculationError(negative)).toBe(true);
  });

  it.each([
    ['nothing', undefined],
    ['null', null],
    ['a text', 'CalculationError'],
    ['its own plain data', negative.toJSON()],
    ['another error', new Error('koh.g: expected at least 0, received -1')],
    ['an error that only bears the name', Object.assign(new Error('x'), { name: 'CalculationError' })],
    ['one of the name without a path', Object.assign(new Error('x'), { name: 'CalculationError', code: 'missing' })],
    ['one of the name without a code', Object.assign(new Error('x'), { name: 'CalculationError', path: 'x' })],
    ['an error with code and path of another name', Object.assign(new Error('x'), { code: 'missing', path: 'x' })],
  ])('is false for %s', (_what, value) => {
    expect(isCalculationError(value)).toBe(false);
  });
});
