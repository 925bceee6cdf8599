import { molarMass, type MolarMass } from '../chemistry/index.js';
import { Decimal, frozen, readWord } from '../numbers/index.js';
import type { Fraction, Temperature } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { componentOfSolvent, type ComponentName } from './components.js';
import { listingOf, SOLVENT_IDS, type SolventId } from './data/solventNames.js';
import { solventData } from './data/solvents.js';

/** A grade that is sold. */
export interface SolventGrade {
  readonly grade: string;
  /** What it holds, share by mass; accepted as an assay. */
  readonly assay: { readonly low: Fraction; readonly high: Fraction };
}

/** A solvent, polyol, sugar or amine on file. */
export interface Solvent {
  readonly id: SolventId;
  readonly name: string;
  /** Ingredient name (INCI), recalled. */
  readonly inciName: string;
  /** What it is called in a composition. */
  readonly component: ComponentName;
  /** Of a substance; a polyethylene glycol is a mixture. */
  readonly formula?: string;
  readonly molarMass?: MolarMass;
  /** At one atmosphere, where it boils undecomposed. */
  readonly boilingPoint?: Temperature;
  /** Lowest and highest figure on file. */
  readonly flashPoint?: { readonly low: Temperature; readonly high: Temperature };
  readonly grades: readonly SolventGrade[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * A solvent, polyol, sugar or amine on file: names, molar mass, flash and boiling point, and the grades that are sold.
 *
 * Boiling and flash points are in °C as printed; where sources differ, the flash point is the span of them. Its density is
 * given by `solventDensity`. Where each figure is from, and whether it was read or recalled, tells `solventRecordOf`.
 *
 * @param id - one of `solvents`, as `'propylene-glycol'`
 * @returns a frozen record; assays in percent by mass
 * @throws CalculationError `missing` or `bad-shape`, with a suggestion where a name comes close
 *
 * @example
 * ```ts
 * const { flashPoint, component } = solvent('ethanol');
 * [flashPoint?.low.celsius, flashPoint?.high.celsius]; // => ['12', '13']
 * component; // => 'ethanol'
 * ```
 */
export function solvent(id: SolventId): Solvent {
  const known = readWord('solvent', id, SOLVENT_IDS);
  const { formula, boilingPoint, flashPoint, grades } = solventData()[known];
  const celsius = (figure: string): Temperature => frozen({ celsius: new Decimal(figure) });
  const percent = (figure: string): Fraction => frozen({ percent: new Decimal(figure) });
  const sources: readonly SourceId[] = [
    ...(formula === undefined ? [] : (['iupac-2021'] as const)),
    ...(boilingPoint === undefined ? [] : [boilingPoint[1]]),
    ...(flashPoint?.[2] ?? []),
    ...grades.map(([, , , source]) => source),
  ];
  return frozen({
    ...listingOf(known),
    component: componentOfSolvent[known],
    ...(formula === undefined ? {} : { formula, molarMass: frozen({ gPerMol: molarMass(formula) }) }),
    ...(boilingPoint === undefined ? {} : { boilingPoint: celsius(boilingPoint[0]) }),
    ...(flashPoint === undefined
      ? {}
      : { flashPoint: frozen({ low: celsius(flashPoint[0]), high: celsius(flashPoint[1]) }) }),
    grades: frozen(
      grades.map(([grade, low, high]) => frozen({ grade, assay: frozen({ low: percent(low), high: percent(high) }) })),
    ),
    basis: frozen([...new Set(sources)]),
    edition: EDITION,
  });
}
