import { acidityUnits, type AcidityUnit } from './acidity.js';
import { alkaliContentUnits, type AlkaliContentUnit } from './alkaliContent.js';
import { amountUnits, type AmountUnit } from './amount.js';
import { densityUnits, type DensityUnit } from './density.js';
import { energyUnits, type EnergyUnit } from './energy.js';
import { fractionUnits, type FractionUnit } from './fraction.js';
import { iodineValueUnits, type IodineValueUnit } from './iodineValue.js';
import { massRatioUnits, type MassRatioUnit } from './massRatio.js';
import { massUnits, type MassUnit } from './mass.js';
import { molarMassUnits, type MolarMassUnit } from './molarMass.js';
import { saponificationValueUnits, type SaponificationValueUnit } from './saponificationValue.js';
import { spiritStrengthUnits, type SpiritStrengthUnit } from './spiritStrength.js';
import { chainLengthUnits, unsaturationUnits, type ChainLengthUnit, type UnsaturationUnit } from './structure.js';
import { temperatureUnits, type TemperatureUnit } from './temperature.js';
import { temperatureDifferenceUnits, type TemperatureDifferenceUnit } from './temperatureDifference.js';
import { timeUnits, type TimeUnit } from './time.js';
import { titrantUnits, type TitrantUnit } from './titrant.js';
import { volumeUnits, type VolumeUnit } from './volume.js';
import type { Units } from '../unit.js';

/** Every kind of quantity with its units. No unit name serves two kinds. */
export interface UnitsByKind {
  readonly mass: MassUnit;
  readonly volume: VolumeUnit;
  readonly temperature: TemperatureUnit;
  readonly temperatureDifference: TemperatureDifferenceUnit;
  readonly time: TimeUnit;
  readonly amount: AmountUnit;
  readonly energy: EnergyUnit;
  readonly fraction: FractionUnit;
  readonly spiritStrength: SpiritStrengthUnit;
  readonly saponificationValue: SaponificationValueUnit;
  readonly alkaliContent: AlkaliContentUnit;
  readonly titrant: TitrantUnit;
  readonly iodineValue: IodineValueUnit;
  readonly massRatio: MassRatioUnit;
  readonly molarMass: MolarMassUnit;
  readonly density: DensityUnit;
  readonly chainLength: ChainLengthUnit;
  readonly unsaturation: UnsaturationUnit;
  readonly acidity: AcidityUnit;
}

/** The unit tables of all kinds; a function, so that who reads one kind does not carry the others. */
export function unitsByKind(): { readonly [K in keyof UnitsByKind]: Units<UnitsByKind[K]> } {
  return {
    mass: massUnits,
    volume: volumeUnits,
    temperature: temperatureUnits,
    temperatureDifference: temperatureDifferenceUnits,
    time: timeUnits,
    amount: amountUnits,
    energy: energyUnits,
    fraction: fractionUnits,
    spiritStrength: spiritStrengthUnits,
    saponificationValue: saponificationValueUnits,
    alkaliContent: alkaliContentUnits,
    titrant: titrantUnits,
    iodineValue: iodineValueUnits,
    massRatio: massRatioUnits,
    molarMass: molarMassUnits,
    density: densityUnits,
    chainLength: chainLengthUnits,
    unsaturation: unsaturationUnits,
    acidity: acidityUnits,
  };
}
