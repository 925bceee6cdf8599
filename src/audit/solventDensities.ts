import { mixtureDensity, solvent, solventDensity, type MixedSolvent, type SolventId } from '../composition/index.js';
import { Decimal, unlessRefused, ONE } from '../numbers/index.js';
import { mapEnds, type Estimate } from '../quantities/index.js';
import { spanOver, type Span } from './span.js';

/** Between these a bench measures volumes, most likely at the middle, °C: a convention. */
const BENCH = ['15', '25'] as const;
const MIDDLE = '20';

/** A liquid whose density is on file at one temperature only changes by so much of it over the others: a convention. */
const UNKNOWN_EXPANSION = '0.005';

/** From this share on the density of the pure substance stands for it, the rest counted as water mixed ideally. */
const NEARLY_PURE = 99;

/** Sold as solids: their pure density is not that of what a measure holds. */
const SOLIDS: readonly SolventId[] = ['sorbitol', 'sucrose', 'glucose'];

/**
 * Density of a liquid as it is measured out, g/mL, from 15 to 25 °C and over its assay (fractions of one); undefined where
 * none is on file.
 */
export function benchDensity(of: SolventId, assay: Estimate<Decimal>): Span | undefined {
  const likely = densityAt(of, assay.likely, MIDDLE);
  if (likely === undefined) return undefined;
  // it rises with the assay or falls with it, and falls as it warms
  const ends = assay.low.eq(assay.high) ? [assay.low] : [assay.low, assay.high];
  const found = ends.map((share) => BENCH.map((celsius) => densityAt(of, share, celsius)));
  if (found.every((one): one is Decimal[] => !one.includes(undefined))) return spanOver(likely, found.flat());
  const middles = ends.map((share) => densityAt(of, share, MIDDLE));
  if (middles.includes(undefined)) return undefined;
  const margin = [ONE.minus(UNKNOWN_EXPANSION), ONE.plus(UNKNOWN_EXPANSION)];
  return spanOver(
    likely,
    middles.flatMap((density) => margin.flatMap((by) => density?.times(by) ?? [])),
  );
}

function densityAt(of: SolventId, share: Decimal, celsius: string): Decimal | undefined {
  const percent = share.times(100);
  const temperature = { celsius };
  const inTable = isMixed(of)
    ? unlessRefused(() => mixtureDensity({ solvent: of, share: { percent }, temperature }).density.gPerML)
    : undefined;
  if (inTable !== undefined) return inTable;
  if (SOLIDS.includes(of) || (of !== 'water' && percent.lt(NEARLY_PURE))) return undefined;
  return unlessRefused(() => {
    const pure = solventDensity({ solvent: of, temperature }).density.gPerML;
    const water = solventDensity({ solvent: 'water', temperature }).density.gPerML;
    return ONE.div(share.div(pure).plus(ONE.minus(share).div(water)));
  });
}

const isMixed = (of: SolventId): of is MixedSolvent =>
  of === 'glycerol' || of === 'propylene-glycol' || of === 'ethanol' || of === 'sucrose';

/** Sold under the bare name and not among the grades on file, percent by mass: rubbing spirit; common practice, no source. */
const ALSO_SOLD: Readonly<Partial<Record<SolventId, string>>> = { '2-propanol': '70' };
/** What a bare name most likely means, where the middle of the grades does not say; common practice, no source. */
const MOSTLY: Readonly<Partial<Record<SolventId, string>>> = {
  ethanol: '93.8',
  '2-propanol': '99.5',
  glycerol: '99.5',
  sorbitol: '70',
  glucose: '99.5',
  triethanolamine: '99',
};

/**
 * What a solvent holds where a recipe does not say, fractions of one: from the leanest grade on file that is sold under the
 * bare name to the pure substance.
 */
export function unstatedAssay(of: SolventId): Estimate<Decimal> {
  // diluted spirit is not called spirit
  const lows = solvent(of).grades.flatMap(({ assay: { low } }) => (low.percent.lt(50) ? [] : [low.percent]));
  const low = Decimal.min(100, ...lows, ALSO_SOLD[of] ?? 100);
  const likely = MOSTLY[of] ?? low.plus(100).div(2);
  return mapEnds({ low, likely: new Decimal(likely), high: new Decimal(100) }, (percent) => percent.div(100));
}
