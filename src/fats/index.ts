export { fats, type FatListing, type PublishedFatId } from './data/fatNames.js';
export type { BlendPart, Fat, FatBlend, SaponificationValueOrigin, SingleFat } from './fatType.js';
export { expandedCharges, gramsOf, readFatCharges, type ChargedFatInput, type FatCharge } from './fatCharges.js';
export { fatFromBlend, type FatFromBlendInput } from './fatFromBlend.js';
export {
  fatFromCertificate,
  type FatFromCertificateInput,
  type SaponificationValueUncertainty,
} from './fatFromCertificate.js';
export { fatFromProfile, type FatFromProfileInput } from './fatFromProfile.js';
export { isAllAcid, type FatKind, type ProfileKind } from './fatKind.js';
export { fattyAcidOf, type FattyAcidResult } from './fattyAcidOf.js';
export {
  iodineValueFromProfile,
  iodineValueFromProfileSteps,
  type IodineValueFromProfileInput,
  type IodineValueFromProfileResult,
} from './iodineValueFromProfile.js';
export {
  readProfile,
  type AcidShare,
  type FattyAcidProfile,
  type FattyAcidProfileInput,
  type GivenProfile,
  type ProfileBasis,
} from './profile.js';
export { ratioOverProfile } from './profileRatio.js';
export { profileSummaryOf, type ProfileSummary } from './profileSummaryOf.js';
export { fat, publishedFat } from './fat.js';
export { isPublishedFat, isSameName, lettersOf } from './publishedNames.js';
export { isKnownFat } from './knownFat.js';
export { notesOfFats } from './notesOfFats.js';
export { readFat } from './readFat.js';
export {
  saponificationValueFromProfile,
  saponificationValueFromProfileSteps,
  type SaponificationValueFromProfileInput,
  type SaponificationValueFromProfileResult,
} from './saponificationValueFromProfile.js';
export { saponificationValueOf, type SaponificationValueResult } from './saponificationValueOf.js';
export { triglycerideOf, type TriglycerideResult } from './triglycerideOf.js';
