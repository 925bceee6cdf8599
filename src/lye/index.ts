export {
  ALKALIS,
  carbonateMolarMass,
  hydroxideMolarMass,
  hydroxidePerCarbonate,
  hydroxidePerOxide,
  type Alkali,
} from './alkali.js';
export { CARBONATE, SOLID, STRENGTH } from './limits.js';
export {
  alkaliContentOf,
  alkaliContentOfSteps,
  type AlkaliContentOfInput,
  type AlkaliContentOfResult,
} from './alkaliContentOf.js';
export {
  readAlkaliSource,
  type AlkaliSource,
  type HydroxideAssay,
  type ReadSource,
  type SolidAssay,
  type SolutionStrength,
  type TotalAlkaliAssay,
} from './alkaliSource.js';
export { CRYSTALLISED_STOCK, DILUTING_WARMS } from './benchCautions.js';
export {
  alkaliCautions,
  BEYOND_KNOWN_FATS,
  CARBONATE_FOAMS,
  CONTRADICTED_CERTIFICATE,
  FREE_CAUSTIC_CERTAIN,
  FREE_CAUSTIC_LIKELY,
  FREE_CAUSTIC_POSSIBLE,
  FREE_FATTY_ACID,
  HOT_SOAP_SCALDS,
  LYE_INTO_HOT_SOAP,
  NONE_LEFT_ON_PAPER,
  SOLID_INTO_COLD_WATER,
  STRONGER_THAN_DISSOLVES,
  PERCENT_LIKE_FRACTION,
} from './cautions.js';
export {
  dilutedLye,
  dilutedLyeSteps,
  type DilutedAmount,
  type DilutedLyeInput,
  type DilutedLyeResult,
  type GivenDilutedAmount,
} from './dilutedLye.js';
export { dissolvesTo } from './dissolvesTo.js';
export { lyeHeatCapacity } from './lyeHeats.js';
export {
  hydroxideFromOxideGrade,
  hydroxideFromOxideGradeSteps,
  type HydroxideFromOxideGradeInput,
  type HydroxideFromOxideGradeResult,
} from './hydroxideFromOxideGrade.js';
export { kohFromNaoh, kohFromNaohSteps, type KohFromNaohInput, type KohFromNaohResult } from './kohFromNaoh.js';
export {
  kohShareFromMassShare,
  kohShareFromMassShareSteps,
  type KohShareFromMassShareInput,
  type KohShareFromMassShareResult,
} from './kohShareFromMassShare.js';
export { givenCharge, readLyeCharge, type LyeCharge, type LyeChargeGiven, type LyeChargeInput } from './lyeCharge.js';
export type { LyeDensityTable } from './densityColumn.js';
export { lyeDensity, lyeDensitySteps, type LyeDensityInput, type LyeDensityResult } from './lyeDensity.js';
export {
  lyeFreezingPoint,
  lyeFreezingPointSteps,
  type LyeFreezingPointInput,
  type LyeFreezingPointResult,
} from './lyeFreezingPoint.js';
export {
  lyeStrengthFromDensity,
  lyeStrengthFromDensitySteps,
  type LyeStrengthFromDensityInput,
  type LyeStrengthFromDensityResult,
} from './lyeStrengthFromDensity.js';
export {
  lyeTemperatureFromDissolving,
  lyeTemperatureFromDissolvingSteps,
  type LyeTemperatureFromDissolvingInput,
  type LyeTemperatureFromDissolvingResult,
} from './lyeTemperatureFromDissolving.js';
export { mayFreezeInStore } from './mayFreezeInStore.js';
export {
  lyeStrengthFromMixing,
  lyeStrengthFromMixingSteps,
  type LyeStrengthFromMixingInput,
  type LyeStrengthFromMixingResult,
} from './lyeStrengthFromMixing.js';
export { naohFromKoh, naohFromKohSteps, type NaohFromKohInput, type NaohFromKohResult } from './naohFromKoh.js';
export { waterDensityTo100 } from './waterDensityTo100.js';
