import {
  fattyAcidFigures,
  fattyAcidNames,
  molarMass,
  readFattyAcid,
  type FattyAcid,
  type MolarMass,
} from '../chemistry/index.js';
import { frozen } from '../numbers/index.js';
import type { IodineValue, SaponificationValue } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';

/** Result of {@link fattyAcidOf}. */
export interface FattyAcidResult {
  readonly id: FattyAcid;
  readonly name: string;
  /** Formula of the free acid. */
  readonly formula: string;
  /** Carbon atoms. */
  readonly carbons: number;
  /** Carbon-carbon double bonds. */
  readonly doubleBonds: number;
  readonly molarMass: MolarMass;
  /** Acid value of the pure acid. */
  readonly acidValue: SaponificationValue;
  /** Iodine value of the pure acid. */
  readonly iodineValue: IodineValue;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

/**
 * A pure fatty acid by its lipid number.
 *
 * Formula: `AV = 1000·M(KOH)/M`, `IV = 100·M(I2)·d/M`, with M the molar mass of the acid (g/mol) and d its double bonds.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param id - carbons and double bonds, as `'C12:0'`, or `'C18:1-OH'` for ricinoleic acid
 * @returns molar mass in g/mol, acid value in mg KOH/g, iodine value in g I2/100 g
 * @throws CalculationError `unknown-acid`
 *
 * @example
 * ```ts
 * const lauric = fattyAcidOf('C12:0');
 * lauric.formula; // => 'C12H24O2'
 * lauric.acidValue.mgKohPerG.toFixed(1); // => '280.1'
 * ```
 */
export function fattyAcidOf(id: FattyAcid): FattyAcidResult {
  const acid = fattyAcidFigures(readFattyAcid('id', id));
  return frozen({
    id: acid.id,
    name: fattyAcidNames[acid.id],
    formula: acid.formula,
    carbons: acid.carbons,
    doubleBonds: acid.doubleBonds,
    molarMass: frozen({ gPerMol: acid.molarMass }),
    acidValue: frozen({ mgKohPerG: molarMass('KOH').times(1000).div(acid.molarMass) }),
    iodineValue: frozen({
      gI2Per100g: molarMass('I2')
        .times(100 * acid.doubleBonds)
        .div(acid.molarMass),
    }),
    basis: BASIS,
    edition: EDITION,
  });
}
