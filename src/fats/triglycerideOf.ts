import {
  fattyAcidFigures,
  molarMass,
  readFattyAcid,
  triglycerideMolarMass,
  type FattyAcid,
  type MolarMass,
} from '../chemistry/index.js';
import { frozen } from '../numbers/index.js';
import type { Fraction, IodineValue, SaponificationValue } from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';

/** Result of {@link triglycerideOf}. */
export interface TriglycerideResult {
  readonly acid: FattyAcid;
  readonly molarMass: MolarMass;
  readonly saponificationValue: SaponificationValue;
  readonly iodineValue: IodineValue;
  /** Glycerol set free by complete splitting, share of the triglyceride by mass. */
  readonly glycerolYield: Fraction;
  /** Fatty acid set free by complete splitting, share of the triglyceride by mass. */
  readonly fattyAcidYield: Fraction;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021']);

/**
 * The simple triglyceride of one fatty acid: glycerol with three times the same acid.
 *
 * Formula: `M_tag = 3·M + M(glycerol) − 3·M(H2O)`, `SV = 3000·M(KOH)/M_tag`, `IV = 300·M(I2)·d/M_tag`, glycerol
 * `100·M(glycerol)/M_tag`, fatty acid `300·M/M_tag`, with M the molar mass of the acid (g/mol), d its double bonds.
 *
 * Source: stoichiometry; atomic weights IUPAC 2021.
 *
 * @param acid - by lipid number, as `'C12:0'` for trilaurin
 * @returns g/mol, mg KOH/g, g I2/100 g, and yields in percent by mass
 * @throws CalculationError `unknown-acid`
 *
 * @example
 * ```ts
 * const tristearin = triglycerideOf('C18:0');
 * tristearin.saponificationValue.mgKohPerG.toFixed(1); // => '188.8'
 * tristearin.glycerolYield.percent.toFixed(2); // => '10.33'
 * ```
 */
export function triglycerideOf(acid: FattyAcid): TriglycerideResult {
  const { id, doubleBonds, molarMass: acidMass } = fattyAcidFigures(readFattyAcid('acid', acid));
  const mass = triglycerideMolarMass(acidMass);
  return frozen({
    acid: id,
    molarMass: frozen({ gPerMol: mass }),
    saponificationValue: frozen({ mgKohPerG: molarMass('KOH').times(3000).div(mass) }),
    iodineValue: frozen({
      gI2Per100g: molarMass('I2')
        .times(300 * doubleBonds)
        .div(mass),
    }),
    glycerolYield: frozen({ percent: molarMass('C3H8O3').times(100).div(mass) }),
    fattyAcidYield: frozen({ percent: acidMass.times(300).div(mass) }),
    basis: BASIS,
    edition: EDITION,
  });
}
