import { Decimal as Base } from 'decimal.js';

/** An arbitrary-precision decimal number of decimal.js; values in results are unrounded. */
export type DecimalNumber = Base;
/** The same, by the name of its constructor. */
export type Decimal = DecimalNumber;

/**
 * Our own constructor: 34 significant digits (as IEEE 754 decimal128), ties to even. It is cloned once, so that nobody's
 * `Decimal.set` reaches our arithmetic and ours reaches nobody's. Whoever comes by it through a result cannot set it either.
 */
export const Decimal: Base.Constructor = /* @__PURE__ */ withFixedSettings(
  /* @__PURE__ */ Base.clone({
    defaults: true,
    precision: 34,
    rounding: 6, // Base.ROUND_HALF_EVEN, written out so that an unused copy drops out of a bundle
  }),
);

function withFixedSettings(constructor: Base.Constructor): Base.Constructor {
  const set = (): never => {
    // no input is at fault, so that no error of ours fits
    // eslint-disable-next-line no-restricted-syntax
    throw new TypeError(
      'These settings are fixed, for every result hangs on them: clone() the constructor and set that.',
    );
  };
  return Object.assign(constructor, { set, config: set });
}

/** Nought and one, made once. */
export const ZERO: Decimal = /* @__PURE__ */ new Decimal(0);
export const ONE: Decimal = /* @__PURE__ */ new Decimal(1);
