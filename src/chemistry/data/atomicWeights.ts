import type { SourceId } from '../../sources/index.js';

/** An element whose atomic weight is on file. */
export type Element = 'H' | 'C' | 'N' | 'O' | 'Na' | 'S' | 'Cl' | 'K' | 'I';

/** One element of the table of atomic weights. */
export interface AtomicWeight {
  /** Abridged standard atomic weight, as printed. */
  readonly value: string;
  /** Its printed uncertainty. */
  readonly uncertainty: string;
  readonly source: SourceId;
  /** How the figure came here. */
  readonly obtained: 'read' | 'memory';
}

/**
 * Abridged standard atomic weights 2021 of the elements that soap making meets. The column was recalled. Value and
 * uncertainty cover the interval of the full table of the same report, which was read for all but iodine.
 */
export const atomicWeights: Readonly<Record<Element, AtomicWeight>> = {
  H: { value: '1.0080', uncertainty: '0.0002', source: 'iupac-2021', obtained: 'memory' },
  C: { value: '12.011', uncertainty: '0.002', source: 'iupac-2021', obtained: 'memory' },
  N: { value: '14.007', uncertainty: '0.001', source: 'iupac-2021', obtained: 'memory' },
  O: { value: '15.999', uncertainty: '0.001', source: 'iupac-2021', obtained: 'memory' },
  Na: { value: '22.990', uncertainty: '0.001', source: 'iupac-2021', obtained: 'memory' },
  S: { value: '32.06', uncertainty: '0.02', source: 'iupac-2021', obtained: 'memory' },
  Cl: { value: '35.45', uncertainty: '0.01', source: 'iupac-2021', obtained: 'memory' },
  K: { value: '39.098', uncertainty: '0.001', source: 'iupac-2021', obtained: 'memory' },
  I: { value: '126.90', uncertainty: '0.01', source: 'iupac-2021', obtained: 'memory' },
};
