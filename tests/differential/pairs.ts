/** Figures of both implementations, side by side. */
import {
  isCalculationError,
  type Amount,
  type Balance as LibraryBalance,
  type Decimal,
  type ErrorCode,
  type Estimate,
} from 'laurate';
import type { Balance } from './balance.js';
import { of, type Fraction } from './rational.js';

/** A figure of both; `scale` is what a deviation is measured by: the batch for a mass, one for a share. */
export interface Pair {
  readonly figure: string;
  readonly own: Fraction;
  readonly library: string;
  readonly scale: number;
}

const PLACES = 45;
const SCALED = 10n ** BigInt(PLACES);
const scaled = (decimal: string): bigint => {
  const [whole = '', places = ''] = decimal.split('.');
  return BigInt(whole + places.padEnd(PLACES, '0'));
};

/** Difference over scale; the library's figure has at most `PLACES` places written out. */
export function deviationOf({ own, library, scale }: Pair): number {
  const difference = (own.s * own.n * SCALED) / own.d - scaled(library);
  return Math.abs(Number(difference)) / 10 ** PLACES / scale;
}

export const pair = (figure: string, own: Fraction, library: Decimal, scale = 1): Pair => ({
  figure,
  own,
  library: library.toFixed(PLACES),
  scale,
});

export const AT = ['low', 'likely', 'high'] as const;
/** A share of one, of a figure in per cent. */
export const ofPercent = (figure: string, own: Fraction, library: Decimal): Pair => pair(figure, own, library, 100);

/** What the library works out, or undefined where it refuses for this reason. */
export function unless<T>(code: ErrorCode, work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (isCalculationError(error) && error.code === code) return undefined;
    throw error;
  }
}

/** Both refuse, or the difference is as great as it can be. */
export function refusal(figure: string, own: unknown, library: unknown): Pair {
  const one = (by: unknown): string => (by === undefined ? '1' : '0');
  return { figure, own: of(one(own)), library: one(library), scale: 1 };
}

export function balancePairs(
  by: string,
  own: Balance,
  library: LibraryBalance & { readonly demand: Estimate<Amount> },
  batch: number,
) {
  return [
    ...AT.flatMap((at) => [
      pair(`${by} demand ${at}`, own.demand[at], library.demand[at].mol, batch),
      pair(`${by} charged ${at}`, own.charged[at], library.charged[at].mol, batch),
      ofPercent(`${by} superfat ${at}`, own.superfat[at], library.superfat[at].percent),
      ofPercent(`${by} freeCaustic ${at}`, own.freeCaustic[at], library.freeCausticAlkali[at].percentNaoh),
    ]),
    ofPercent(`${by} superfatByMass`, own.superfatByMass, library.superfatByMass.likely.percent),
  ];
}
