import { frozen, type Decimal } from '../numbers/index.js';
import { mapEnds, type Estimate, type Mass, type Volume } from '../quantities/index.js';
import type { BatchVolume } from '../composition/index.js';
import type { GivenBatchOptions } from './readBatchOptions.js';

/** How far a batch goes in moulds. */
export interface Moulds {
  /** What one mould holds when it is full. */
  readonly each: { readonly volume: Volume; readonly mass: Estimate<Mass> };
  /** Moulds that are sure to be full. */
  readonly filled: Decimal;
  /** Moulds to have ready, so that all can be poured. */
  readonly setOut: Decimal;
  /** What the moulds that are there cannot hold, where their number is given. */
  readonly tooMuch?: Estimate<Volume>;
}

/** Fills moulds with a batch, by its volume at pouring. */
export function mouldsOf(
  { volume, density }: BatchVolume,
  { volume: each, count }: NonNullable<GivenBatchOptions['moulds']>,
): Moulds {
  const full = volume.low.mL.div(each.mL).floor();
  const room = count?.times(each.mL);
  const excess = (mL: Decimal): Decimal => (room === undefined || mL.lte(room) ? mL.times(0) : mL.minus(room));
  return frozen({
    each: frozen({ volume: each, mass: mapEnds(density, ({ gPerML }) => frozen({ g: gPerML.times(each.mL) })) }),
    filled: count?.lt(full) === true ? count : full,
    setOut: volume.high.mL.div(each.mL).ceil(),
    ...(room === undefined ? {} : { tooMuch: mapEnds(volume, ({ mL }) => frozen({ mL: excess(mL) })) }),
  });
}
