export { mapEnds, readRanged, type Estimate, type Ranged, type RangeOf } from './estimate.js';
export { readAcidity, type Acidity, type AcidityInput, type AcidityUnit } from './kinds/acidity.js';
export { readAlkaliContent, type AlkaliContent, type AlkaliContentInput } from './kinds/alkaliContent.js';
export { readDensity, type Density, type DensityInput, type DensityUnit } from './kinds/density.js';
export { readPercent, type Fraction, type FractionInput } from './kinds/fraction.js';
export { unitsByKind, type UnitsByKind } from './kinds/index.js';
export { readMass, readOptionalMass, type Mass, type MassInput } from './kinds/mass.js';
export {
  readSaponificationValue,
  readSaponificationValueRange,
  saponificationValueUnits,
  type SaponificationValue,
  type SaponificationValueInput,
} from './kinds/saponificationValue.js';
export { readAmount, type Amount, type AmountInput } from './kinds/amount.js';
export type { Energy, EnergyInput } from './kinds/energy.js';
export { readIodineValue, type IodineValue, type IodineValueInput } from './kinds/iodineValue.js';
export type { MassRatio, MassRatioInput, MassRatioUnit } from './kinds/massRatio.js';
export type { MolarMassInput } from './kinds/molarMass.js';
export { readSpiritStrength, type SpiritStrengthInput } from './kinds/spiritStrength.js';
export type { ChainLength, Unsaturation } from './kinds/structure.js';
export { readTime, type Time, type TimeInput } from './kinds/time.js';
export { readTitrant, type Titrant, type TitrantInput } from './kinds/titrant.js';
export { readTemperature, type Temperature, type TemperatureInput } from './kinds/temperature.js';
export type { TemperatureDifference, TemperatureDifferenceInput } from './kinds/temperatureDifference.js';
export { readVolume, type Volume, type VolumeInput } from './kinds/volume.js';
export { mapEstimate } from './mapEstimate.js';
export { roundToStep, splitToStep } from './rounded.js';
export { readQuantity, type OneChoice, type OneUnit, type Unit, type Units } from './unit.js';
export { valueIn, type Quantity, type UnitFor } from './valueIn.js';
export type { AlkaliContentUnit } from './kinds/alkaliContent.js';
export type { AmountUnit } from './kinds/amount.js';
export type { ChainLengthInput, ChainLengthUnit, UnsaturationInput, UnsaturationUnit } from './kinds/structure.js';
export type { EnergyUnit } from './kinds/energy.js';
export type { FractionUnit } from './kinds/fraction.js';
export type { IodineValueUnit } from './kinds/iodineValue.js';
export type { MassUnit } from './kinds/mass.js';
export type { MolarMassUnit } from './kinds/molarMass.js';
export type { SaponificationValueUnit } from './kinds/saponificationValue.js';
export type { SpiritStrengthUnit } from './kinds/spiritStrength.js';
export type { TemperatureUnit } from './kinds/temperature.js';
export type { TemperatureDifferenceUnit } from './kinds/temperatureDifference.js';
export type { TimeUnit } from './kinds/time.js';
export type { TitrantUnit } from './kinds/titrant.js';
export type { VolumeUnit } from './kinds/volume.js';
