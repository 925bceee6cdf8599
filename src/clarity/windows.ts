import { frozen, type Decimal } from '../numbers/index.js';
import { mapEnds, type Estimate, type Fraction, type MassRatio } from '../quantities/index.js';
import type { Charge } from './charge.js';
import type { PublishedForm } from './data/formulaRows.js';
import {
  bareFigure,
  publishedWindows,
  quantityOf,
  type PublishedLimit,
  type PublishedWindow,
} from './publishedWindows.js';

/** A printed limit with the base's own figure beside it. */
export interface ComparedLimit extends PublishedLimit {
  readonly own: Estimate<Fraction> | Estimate<MassRatio>;
  /** Where all that is lawful lies; `across` where some of it lies inside and some not. It is no verdict on clarity. */
  readonly stands: 'inside' | 'below' | 'above' | 'across';
}

/** A published window with the base's own figures beside its limits. */
export interface ComparedWindow extends Omit<PublishedWindow, 'limits'> {
  readonly limits: readonly ComparedLimit[];
}

/** The windows of a form; soft soaps and creams have none. */
export function windowsBeside({ figures }: Charge, form: PublishedForm): readonly ComparedWindow[] {
  const compared = ({ figure, low, high }: PublishedLimit): ComparedLimit => {
    const value = figures[figure];
    return frozen({
      figure,
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
      own: mapEnds(value, (one) => quantityOf(figure, one)) as ComparedLimit['own'],
      stands: standsTo(value, low && bareFigure(low), high && bareFigure(high)),
    });
  };
  return frozen(
    publishedWindows()
      .filter((window) => window.form === form)
      .map((window) => frozen({ ...window, limits: frozen(window.limits.map(compared)) })),
  );
}

function standsTo(
  { low, high }: Estimate<Decimal>,
  least: Decimal | undefined,
  most: Decimal | undefined,
): ComparedLimit['stands'] {
  if (least !== undefined && high.lt(least)) return 'below';
  if (most !== undefined && low.gt(most)) return 'above';
  const isInside = (least === undefined || low.gte(least)) && (most === undefined || high.lte(most));
  return isInside ? 'inside' : 'across';
}
