import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asWritten, described } from '../../src/numbers/described.js';

const fault = (): never => {
  throw new Error('code of the value was run');
};

describe('described: worked by hand', () => {
  it.each([
    ['1,5', '1,5'],
    ['', 'an empty text'],
    [undefined, 'nothing'],
    [null, 'null'],
    [NaN, 'NaN'],
    [-1.5, '-1.5'],
    [1e21, '1e+21'],
    [10n, '10'],
    [false, 'false'],
    [Symbol('secret'), 'a symbol'],
    [() => 1, 'a function'],
    [Date, 'a function'],
    [[], 'a list of 0'],
    [[1, 2, 3], 'a list of 3'],
    [{}, 'an object'],
    [new Date(0), 'an object'],
    [Object.create(null), 'an object'],
  ])('%o is "%s"', (value, text) => {
    expect(described(value)).toBe(text);
  });

  it('keeps 80 characters and cuts the 81st', () => {
    expect(described('x'.repeat(80))).toBe('x'.repeat(80));
    expect(described('x'.repeat(81))).toBe(`${'x'.repeat(79)}…`);
    expect(described(10n ** 100n)).toBe(`1${'0'.repeat(78)}…`);
  });
});

describe('asWritten', () => {
  it.each([
    [' 5', "' 5'"],
    ['', 'an empty text'],
    [5, '5'],
    [undefined, 'nothing'],
    ['x'.repeat(78), `'${'x'.repeat(78)}'`],
    ['x'.repeat(79), `'${'x'.repeat(77)}…'`],
  ])('%o is %s, never longer than 80 characters', (value, text) => {
    expect(asWritten(value)).toBe(text);
    expect(text.length).toBeLessThanOrEqual(80);
  });
});

describe('described: laws', () => {
  it('is never empty and never longer than 80 characters', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true, maxDepth: 2 }), (value) => {
        const { length } = described(value);
        expect(length).toBeGreaterThan(0);
        expect(length).toBeLessThanOrEqual(80);
      }),
    );
  });

  it.each<[string, unknown]>([
    ['toString', { toString: fault }],
    ['valueOf', { valueOf: fault }],
    ['toJSON', { toJSON: fault }],
    ['a primitive', { [Symbol.toPrimitive]: fault }],
    ['a tag', Object.defineProperty({}, Symbol.toStringTag, { get: fault })],
    ['a getter', Object.defineProperty({}, 'length', { get: fault })],
    ['proxy traps', new Proxy({}, { get: fault, has: fault, ownKeys: fault, getPrototypeOf: fault })],
  ])('runs no code of the value: %s', (_what, value) => {
    expect(described(value)).toBe('an object');
  });

  it('runs no code of a list', () => {
    expect(described(Object.assign([1], { toString: fault, join: fault }))).toBe('a list of 1');
  });

  it.each([
    ['a list behind a proxy whose fields throw', new Proxy([1], { get: fault })],
    [
      'a proxy that was revoked',
      ((): unknown => {
        const { proxy, revoke } = Proxy.revocable({}, {});
        revoke();
        return proxy;
      })(),
    ],
  ])('describes %s without failing', (_what, value) => {
    expect(typeof described(value)).toBe('string');
  });
});
