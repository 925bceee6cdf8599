/** A balance worked out by itself, straight from the chemistry, in 60 digits: what the library is measured against. */
import fc from 'fast-check';
import { fatFromCertificate, type ChargedFatInput, type FatKind, type LyeChargeInput } from 'laurate';
import { Exact, KOH, NAOH } from '../laws/exact.js';

/** A fat in the test's own terms: everything in whole tenths, so that nothing is rounded on the way in. */
export interface Lot {
  readonly kind: FatKind;
  readonly grams: number;
  /** Saponification value, tenths of mg KOH/g. */
  readonly low: number;
  readonly high: number;
  /** Acid value of the lot, tenths of mg KOH/g; of an acid it is not used. */
  readonly acid: number;
}

/** An alkali in the test's own terms. */
export interface Charge {
  readonly alkali: 'naoh' | 'koh';
  readonly grams: number;
  /** Hydroxide, tenths of a percent. */
  readonly low: number;
  readonly high: number;
}

/** Lots and charges at one point inside their ranges. */
export interface Point {
  readonly fats: readonly { readonly lot: Lot; readonly value: number }[];
  readonly alkalis: readonly { readonly charge: Charge; readonly assay: number }[];
  readonly batch: number | Exact;
}

export interface Reckoned {
  readonly superfat: Exact;
  readonly superfatByMass: Exact;
  readonly freeCausticAlkali: Exact;
}

const isAcid = ({ kind }: Lot): boolean => kind === 'free-fatty-acid' || kind === 'rosin';
const sum = (parts: readonly Exact[]): Exact => parts.reduce((total, part) => total.plus(part), new Exact(0));
const moles = (grams: Exact | number, tenths: number): Exact => new Exact(grams).times(tenths).div(KOH.times(10000));

/**
 * Free acid takes alkali first, mole for mole; then the esters of all fats are split to one and the same extent. A fat
 * of acid value AV and saponification value SV is free acid in AV/SV of its mass and ester in the rest.
 */
export function reckoned({ fats, alkalis, batch }: Point): Reckoned {
  const charged = sum(
    alkalis.map(({ charge, assay }) =>
      new Exact(charge.grams)
        .times(assay)
        .div(1000)
        .div(charge.alkali === 'koh' ? KOH : NAOH),
    ),
  );
  const parts = fats.map(({ lot, value }) => {
    const acidGrams = isAcid(lot) ? new Exact(lot.grams) : new Exact(lot.grams).times(lot.acid).div(value);
    return { acidGrams, esterGrams: new Exact(lot.grams).minus(acidGrams), value };
  });
  const acid = sum(parts.map(({ acidGrams, value }) => moles(acidGrams, value)));
  const ester = sum(parts.map(({ esterGrams, value }) => moles(esterGrams, value)));
  const demand = acid.plus(ester);

  const neutralised = acid.isZero() ? new Exact(1) : Exact.min(1, charged.div(acid));
  const left = Exact.max(0, charged.minus(acid));
  const split = ester.isZero() ? new Exact(1) : Exact.min(1, left.div(ester));
  const unsplit = sum(
    parts.map(({ acidGrams, esterGrams }) =>
      acidGrams.times(new Exact(1).minus(neutralised)).plus(esterGrams.times(new Exact(1).minus(split))),
    ),
  );
  const fatGrams = fats.reduce((total, { lot }) => total + lot.grams, 0);
  return {
    superfat: demand.minus(charged).times(100).div(demand),
    superfatByMass: unsplit.times(100).div(fatGrams),
    freeCausticAlkali: Exact.max(0, charged.minus(demand)).times(NAOH).times(100).div(batch),
  };
}

const tenths = (value: number): string => `${String(value)}e-1`;

/** A lot as the library takes it: a certificate whose range is the lot's. */
export function asFat(lot: Lot, name = 'A lot'): ChargedFatInput {
  return {
    fat: fatFromCertificate({
      name,
      kind: lot.kind,
      saponificationValue: { low: { mgKohPerG: tenths(lot.low) }, high: { mgKohPerG: tenths(lot.high) } },
      ...(isAcid(lot) ? {} : { acidValue: { mgKohPerG: tenths(lot.acid) } }),
    }),
    mass: { g: lot.grams },
  };
}

/** A charge as the library takes it, as a solid. */
export function asLye({ alkali, grams, low, high }: Charge): LyeChargeInput {
  return {
    alkali,
    mass: { g: grams },
    solid: { hydroxide: { low: { percent: tenths(low) }, high: { percent: tenths(high) } } },
  };
}

const lot: fc.Arbitrary<Lot> = fc
  .record({
    kind: fc.constantFrom<FatKind>('triglyceride', 'triglyceride', 'free-fatty-acid', 'wax-ester', 'rosin'),
    grams: fc.integer({ min: 1, max: 5000 }),
    low: fc.integer({ min: 800, max: 2600 }),
    width: fc.integer({ min: 0, max: 300 }),
    acidShare: fc.constantFrom(0, 0, 0.02, 0.3, 0.9),
  })
  .map(({ kind, grams, low, width, acidShare }) => ({
    kind,
    grams,
    low,
    high: low + width,
    acid: Math.floor(low * acidShare),
  }));

export const lots = fc.array(lot, { minLength: 1, maxLength: 4 });

const charge: fc.Arbitrary<Charge> = fc
  .record({
    alkali: fc.constantFrom('naoh' as const, 'koh' as const),
    grams: fc.integer({ min: 1, max: 2000 }),
    low: fc.integer({ min: 300, max: 1000 }),
    width: fc.integer({ min: 0, max: 100 }),
  })
  .map(({ alkali, grams, low, width }) => ({ alkali, grams, low, high: low + width }));

export const charges = fc.array(charge, { minLength: 1, maxLength: 2 });
