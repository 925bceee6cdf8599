/**
 * Arithmetic in float64 that knows how far it may be off, for verdicts that are clear without exact decimals.
 *
 * **What is compared.** Every check of `clearVerdict.ts` asks whether one figure is above another, `A > B`. Both are made of
 * products, quotients and sums of figures that are not negative, so that relative errors never grow by cancellation. In the
 * standard model each operation gives `fl(x ∘ y) = (x ∘ y)(1 + δ)` with `|δ| ≤ u = 2⁻⁵³`, and a figure behind m roundings is
 * `(1 + θ_m)` times the true one with `|θ_m| ≤ γ_m = m·u/(1 − m·u)` (for sums of k terms: k − 1 roundings more than the worst
 * term). Nothing under- or overflows: read figures are nought or lie between 1e-8 and 1e8, factors of units between 1e-4 and 1e6.
 *
 * **How many roundings**, with k the rows of the recipe (fats, alkalis, additions, water):
 *
 * - a printed figure: its digits are an integer below 10¹⁵ and exact, as is the power of ten; their quotient is rounded once
 *   (half an ulp), and so are the ends of its last digit. In the canonical unit: the factor and the product, hence θ_3.
 * - strength of an alkali: θ_3 and a division by 100, θ_4; of total alkali t and carbonate c (as hydroxide, θ_5), taken only
 *   where c ≤ t/2, so that `t + c ≤ 3·(t − c)`: 3·5, the difference and the division, θ_17.
 * - hydroxide charged, `A = Σ m·w/M`: 3 + 17, two operations, M, and k − 1 sums: θ_(22+k); pure alkali `Σ m·w`: θ_(20+k).
 * - demand, `n = Σ m·SV/(1000·M)`: 3 + 1, the product, the divisor, the division, k − 1 sums: θ_(6+k).
 * - everything in the pot: a volume times a density θ_5, k − 1 sums: θ_(4+k).
 * - free caustic, as `A > n + limit·pot/(100·M)`: the constant and the product on θ_(4+k), one sum: θ_(7+k) against θ_(22+k).
 * - superfat s, as `100·A` against `n·(100 − s)`, taken only where `|s| < 90`: an error of γ_3·90 in a difference of at least 10
 *   is 9·3, and its own rounding θ_28; with n and the product θ_(35+k). By own values, `Σ m·v` in the place of n: θ_(37+k).
 * - solubility, `100·pure` against `52.2·whole`: (20 + k) + 1 against (3 + k) + 2; the pot against six times its fats: fewer.
 * - strength of the lye, `100·pure/whole`: (20 + k) + (3 + k) + 2; water to alkali, as `whole/pure` against the figure plus
 *   one: the same; water to fats, as `100·whole` against `figure·fats + 100·pure`: less.
 * - share of KOH, `100·a/(a + b)`: (22 + k) + (23 + k) + 2, **θ_(47+2k)**, the longest of all.
 * - shares of fats and additions, the total, acid against lye: fewer.
 *
 * So each side is off by at most γ_N of itself, N = 48 + 2k.
 *
 * **What is clear.** From `A ≤ B` follows `a ≤ A(1 + γ) ≤ B(1 + γ) ≤ b·(1 + γ)/(1 − γ) < b·(1 + 2.1·γ)`. Hence `a > b·(1 + 4γ)`
 * proves `A > B`; of the `1.9·γ > 90·u` to spare the sum and the product here take 3·u. The exact audit rounds to 34 digits,
 * and subtracts where we do not; what that puts between its comparison and the true one is some 1e-32 of A and B, far less
 * than the rest. All else is not clear.
 */
const U = 1.1102230246251565e-16; // 2 to the power of −53, exactly

/** How far either side of a comparison may be off, relative to itself: γ of 48 + 2k roundings. */
export function relativeErrorOf(rows: number): number {
  const rounded = (48 + 2 * rows) * U;
  return rounded / (1 - rounded);
}

/** What a comparison tells; undefined where it is not clear. */
export type Told = boolean | undefined;

/** Whether one figure is above another, of a recipe of so many rows. What is no number is never clear. */
export function aboveOf(rows: number): (one: number, other: number) => Told {
  const factor = 1 + 4 * relativeErrorOf(rows);
  return (one, other) => {
    if (one > 0 ? one > other * factor : one > other) return true;
    return other > 0 ? (other > one * factor ? false : undefined) : other > one ? false : undefined;
  };
}

/** Whether any of some is so. */
export function anyOf(told: readonly Told[]): Told {
  return told.includes(true) ? true : told.includes(undefined) ? undefined : false;
}

export const not = (told: Told): Told => (told === undefined ? undefined : !told);

/** A figure as printed, and the ends of its last digit, in the canonical unit of its kind. */
export interface FloatPrinted {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

const DIGITS = /^-?\d{1,8}(?:\.\d{1,7})?$/;
/** Exact, whatever an engine makes of powers. */
const TENS = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7];
const NOT_READ: FloatPrinted = { low: NaN, value: NaN, high: NaN };

/**
 * A number or decimal text of at most 15 digits as printed, times the factor of its unit. Of anything else no number: it may
 * well be one, but that is not for here to say.
 */
export function printedFloat(came: unknown, factor: number): FloatPrinted {
  const text = typeof came === 'number' ? String(came) : came;
  if (typeof text !== 'string' || text.length > 17 || !DIGITS.test(text)) return NOT_READ;
  const point = text.indexOf('.');
  const decimals = point < 0 ? 0 : text.length - point - 1;
  const digits = Number(point < 0 ? text : text.slice(0, point) + text.slice(point + 1));
  const unit = TENS[decimals] ?? Number.NaN;
  // as `mayStandFor` has it: one above nothing stays so
  const least = digits === 1 ? 0.5 : digits - 1;
  return { low: (least / unit) * factor, value: (digits / unit) * factor, high: ((digits + 1) / unit) * factor };
}
