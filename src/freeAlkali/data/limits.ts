import { frozen } from '../../numbers/index.js';
import type { AlkaliContentInput } from '../../quantities/index.js';
import type { SourceId } from '../../sources/index.js';

/** Name of a published or customary limit of free caustic. */
export type FreeAlkaliLimitId =
  | 'toilet-soap-is-2888'
  | 'bathing-bar-is-13498'
  | 'laundry-soap-is-285'
  | 'toilet-soap-customary'
  | 'laundry-soap-customary'
  | 'soft-soap-usp';

/** A limit of free caustic in soap as sold. */
export interface FreeAlkaliLimit {
  readonly id: FreeAlkaliLimitId;
  /** What it is for. */
  readonly soap: string;
  /** Not to be exceeded, in the unit of its text. */
  readonly atMost: AlkaliContentInput;
  readonly source: SourceId;
  /** Read in a copy, recalled, or customary without a text. */
  readonly obtained: 'read' | 'memory' | 'common-practice';
  /** How sure it is. */
  readonly note: string;
}

const listed = (rows: readonly FreeAlkaliLimit[]): readonly FreeAlkaliLimit[] =>
  frozen(rows.map((row) => frozen({ ...row, atMost: frozen(row.atMost) })));

/**
 * Limits of free caustic in soap as sold. None of the requirement tables was reached: all rows are recalled or customary,
 * and say so; who sells soap reads the standard that binds there.
 */
export const freeAlkaliLimits: readonly FreeAlkaliLimit[] = /* @__PURE__ */ listed([
  {
    id: 'toilet-soap-is-2888',
    soap: 'toilet soap',
    atMost: { percentNaoh: '0.05' },
    source: 'is-2888-2004',
    obtained: 'memory',
    note: 'Recalled; the foreword was read, the table of requirements was not.',
  },
  {
    id: 'bathing-bar-is-13498',
    soap: 'bathing bar',
    atMost: { percentNaoh: '0.05' },
    source: 'is-13498-1997',
    obtained: 'memory',
    note: 'Recalled with little confidence.',
  },
  {
    id: 'laundry-soap-is-285',
    soap: 'laundry soap',
    atMost: { percentNaoh: '0.2' },
    source: 'is-285',
    obtained: 'memory',
    note: 'Recalled with little confidence.',
  },
  {
    id: 'toilet-soap-customary',
    soap: 'toilet soap',
    atMost: { percentNaoh: '0.1' },
    source: 'common-practice',
    obtained: 'common-practice',
    note: 'The upper of the figures usually met, 0.05 to 0.1; not verified in a text.',
  },
  {
    id: 'laundry-soap-customary',
    soap: 'laundry soap',
    atMost: { percentNaoh: '0.2' },
    source: 'common-practice',
    obtained: 'common-practice',
    note: 'The upper of the figures usually met, 0.1 to 0.2; not verified in a text.',
  },
  {
    id: 'soft-soap-usp',
    soap: 'soft soap of potash (Green Soap)',
    atMost: { percentKoh: '0.25' },
    source: 'usp-28-nf-23-2005',
    obtained: 'memory',
    note: 'Recalled; the formula and the other limits of the monograph were read.',
  },
]);
