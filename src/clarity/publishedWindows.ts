import { Decimal, frozen } from '../numbers/index.js';
import type { Fraction, MassRatio } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import { windowRows, type WindowFigure } from './data/windowRows.js';

/** Printed limits of one figure. */
export interface PublishedLimit {
  readonly figure: WindowFigure;
  /** Left out where there is none. */
  readonly low?: Fraction | MassRatio;
  readonly high?: Fraction | MassRatio;
}

/** A published window of composition. */
export interface PublishedWindow {
  readonly id: string;
  readonly form: 'bar' | 'gel';
  /** What is printed, in our words. */
  readonly statement: string;
  /** What a composition can be held against; empty where it cannot. */
  readonly limits: readonly PublishedLimit[];
  readonly source: SourceId;
  readonly where: string;
  readonly obtained: 'read' | 'second-hand' | 'derived';
  /** How sure it is, in the opinion of those who gathered it. */
  readonly confidence: 'good' | 'fair' | 'low';
  readonly caveat?: string;
}

/**
 * Published windows of clear bars and of soap gels: limits and rules in print, with their source and how sure they are.
 *
 * Shares are percent by mass of the whole; per fat and per fatty acid are parts to one part. They come of patents,
 * handbooks and handouts, and some contradict each other.
 *
 * Source: each window names its own.
 *
 * @returns one row a window
 *
 * @example
 * ```ts
 * const base = publishedWindows().find(({ id }) => id === 'cast-base');
 * base?.limits[1]; // => { figure: 'polyolAndSugar', low: { percent: '20' }, high: { percent: '50' } }
 * ```
 */
export function publishedWindows(): readonly PublishedWindow[] {
  return frozen(
    windowRows().map(([id, form, statement, source, where, obtained, confidence, caveat, limits]) =>
      frozen({
        id,
        form,
        statement,
        limits: frozen(
          limits.map(([figure, low, high]) =>
            frozen({
              figure,
              ...(low === '' ? {} : { low: quantityOf(figure, new Decimal(low)) }),
              ...(high === '' ? {} : { high: quantityOf(figure, new Decimal(high)) }),
            }),
          ),
        ),
        source,
        where,
        obtained,
        confidence,
        ...(caveat === '' ? {} : { caveat }),
      }),
    ),
  );
}

/** A value of a window's figure with its unit. */
export function quantityOf(figure: WindowFigure, value: Decimal): Fraction | MassRatio {
  return figure.includes('Per') ? frozen({ partsPerPart: value }) : frozen({ percent: value });
}

/** A figure without its unit. */
export function bareFigure(quantity: Fraction | MassRatio): Decimal {
  return 'percent' in quantity ? quantity.percent : quantity.partsPerPart;
}
