import { evaluatedSources, inciNamesFrom, recalledSources, solventNotes } from '../composition/data/solventRecords.js';
import { solventData, type DensityData } from '../composition/data/solvents.js';
import { solvent, type SolventId } from '../composition/index.js';
import type { Obtained } from '../fats/data/publishedFatRecords.js';
import { Decimal, frozen } from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';

/** One figure of a solvent, or pair of limits, with where it is from. */
export interface SolventCell {
  readonly of: 'density' | 'densityByTemperature' | 'boilingPoint' | 'flashPoint' | 'assay';
  /** Lower limit, or the figure. */
  readonly low: Decimal;
  /** Upper limit, or the figure. */
  readonly high: Decimal;
  /** Unit of both. */
  readonly unit: string;
  /** Temperature of a density; the grade of an assay. */
  readonly conditions?: string;
  /** One, or two where limits are from two. */
  readonly sources: readonly SourceId[];
  /** Read in the publication or a restatement of it, recalled, or evaluated from an equation that was read. */
  readonly obtained: Obtained;
}

/** Everything on file of a solvent, polyol, sugar or amine. */
export interface SolventRecord {
  readonly id: SolventId;
  readonly name: string;
  readonly inciName: { readonly name: string; readonly source: SourceId; readonly obtained: Obtained };
  /** Every figure by itself, with its publication and how it was obtained. */
  readonly cells: readonly SolventCell[];
  /** Other figures, doubts and disagreements, in words. */
  readonly notes: readonly string[];
}

/**
 * The record of a solvent, polyol, sugar or amine, figure by figure: each with its publication and whether it was read,
 * recalled or evaluated.
 *
 * @param id - as for `solvent`
 * @returns figures as printed, in the unit each states
 * @throws CalculationError `missing` or `bad-shape`, with a suggestion where a name comes close
 *
 * @example
 * ```ts
 * const { cells } = solventRecordOf('sucrose');
 * const density = cells.find((cell) => cell.of === 'density');
 * [density?.low, density?.conditions, density?.sources[0], density?.obtained]; // => ['1.5805', '17 °C', 'crc-organic-constants', 'read']
 * ```
 */
export function solventRecordOf(id: SolventId): SolventRecord {
  const known = solvent(id);
  const { density, boilingPoint, flashPoint, grades } = solventData()[known.id];
  const [celsius, gPerML, source] = density.measured;
  return frozen({
    id: known.id,
    name: known.name,
    inciName: frozen({ name: known.inciName, ...inciNamesFrom }),
    cells: frozen([
      cell('density', gPerML, gPerML, 'g/mL', [source], `${celsius} °C`),
      ...byTemperatureCells(density),
      ...(boilingPoint === undefined
        ? []
        : [cell('boilingPoint', boilingPoint[0], boilingPoint[0], '°C', [boilingPoint[1]])]),
      ...(flashPoint === undefined ? [] : [cell('flashPoint', flashPoint[0], flashPoint[1], '°C', flashPoint[2])]),
      ...grades.map(([grade, low, high, from]) => cell('assay', low, high, 'percent', [from], grade)),
    ]),
    notes: frozen([...solventNotes[known.id]]),
  });
}

function byTemperatureCells({ byTemperature }: DensityData): readonly SolventCell[] {
  if (byTemperature === undefined) return [];
  const [temperatures, densities, correlation] = byTemperature;
  const figures = densities.split(' ');
  return temperatures.split(' ').flatMap((celsius, at) =>
    // the figure of this temperature
    figures
      .slice(at, at + 1)
      .map((figure) => cell('densityByTemperature', figure, figure, 'g/mL', [correlation], `${celsius} °C`)),
  );
}

/** A figure is as good as the weakest of its sources. */
function obtainedFrom(sources: readonly SourceId[]): Obtained {
  if (sources.some((one) => recalledSources.includes(one))) return 'memory';
  return sources.some((one) => evaluatedSources.includes(one)) ? 'derived' : 'read';
}

function cell(
  of: SolventCell['of'],
  low: string,
  high: string,
  unit: string,
  sources: readonly SourceId[],
  conditions?: string,
): SolventCell {
  return frozen({
    of,
    low: new Decimal(low),
    high: new Decimal(high),
    unit,
    ...(conditions === undefined ? {} : { conditions }),
    sources: frozen([...sources]),
    obtained: obtainedFrom(sources),
  });
}
