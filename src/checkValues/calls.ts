import { auditRecipe } from '../audit/index.js';
import { molarMassOf, type FattyAcid } from '../chemistry/index.js';
import {
  compositionFrom,
  mixtureDensity,
  ratiosOf,
  solventDensity,
  spiritStrengthFromVolume,
  totalFattyMatterOf,
  type Composition,
} from '../composition/index.js';
import {
  fat,
  fatFromCertificate,
  fatFromProfile,
  fattyAcidOf,
  iodineValueFromProfile,
  saponificationValueFromProfile,
  saponificationValueOf,
  triglycerideOf,
  type Fat,
  type FatFromCertificateInput,
  type FatFromProfileInput,
  type IodineValueFromProfileInput,
  type SaponificationValueFromProfileInput,
} from '../fats/index.js';
import {
  acidityFromTitration,
  acidValueFromTitration,
  alkaliAssayFromBariumChloride,
  alkaliAssayFromTwoIndicators,
  correctFreeAlkali,
  correctSuperfat,
  esterValueFromTitrations,
  freeAlkaliBehindPh,
  freeCausticAlkaliFromTitration,
  judgeFreeAlkali,
  lyeStrengthFromTitration,
  saponificationValueFromTitration,
  soapSolutionPhFrom,
  titrantFromStandard,
  totalFreeAlkaliFromTitration,
} from '../freeAlkali/index.js';
import {
  alkaliContentOf,
  dilutedLye,
  hydroxideFromOxideGrade,
  kohFromNaoh,
  lyeDensity,
  lyeFreezingPoint,
  lyeStrengthFromDensity,
  lyeStrengthFromMixing,
  lyeTemperatureFromDissolving,
  naohFromKoh,
} from '../lye/index.js';
import { heatOfEvaporation, potHeatFromReaction } from '../process/index.js';
import { valueIn, type MassInput, type Quantity, type UnitFor } from '../quantities/index.js';
import type { Recipe, RecipeFat } from '../recipe/index.js';
import {
  alkaliDemandOf,
  planLye,
  soapFromLye,
  superfatFromLye,
  type SoapFromLyeResult,
} from '../saponification/index.js';

/** A fat in a check: the id of a published one, a certificate, or a profile. */
export type CheckFat =
  | string
  | { readonly certificate: FatFromCertificateInput; readonly profile?: never }
  | { readonly profile: FatFromProfileInput; readonly certificate?: never };

/** A fat in a check, with its mass. */
export interface CheckCharge {
  readonly fat: CheckFat;
  readonly mass: MassInput;
}

/** Fats and lye of a check. */
export type CheckSoap = Omit<Parameters<typeof soapFromLye>[0], 'fats'> & { readonly fats: readonly CheckCharge[] };

/** A whole pot of a check: fats and lye, and what is added. */
export type CheckPot = Omit<Parameters<typeof compositionFrom>[0], 'soap'> & { readonly soap: CheckSoap };

/** A recipe in a check, its fats as plain data. */
export type CheckRecipe = Omit<Recipe, 'version' | 'fats'> & {
  readonly fats: readonly (Omit<RecipeFat, 'fat'> & { readonly fat: CheckFat })[];
};

/** What each tested function is given in a check: its own input, with fats as plain data. */
export interface CallInputs {
  readonly valueIn: { readonly quantity: Quantity; readonly unit: UnitFor<Quantity> };
  readonly molarMassOf: { readonly formula: string };
  readonly fattyAcidOf: { readonly acid: FattyAcid };
  readonly triglycerideOf: { readonly acid: FattyAcid };
  readonly saponificationValueFromProfile: SaponificationValueFromProfileInput;
  readonly iodineValueFromProfile: IodineValueFromProfileInput;
  readonly saponificationValueOf: { readonly fat: CheckFat };
  readonly naohFromKoh: Parameters<typeof naohFromKoh>[0];
  readonly kohFromNaoh: Parameters<typeof kohFromNaoh>[0];
  readonly alkaliContentOf: Parameters<typeof alkaliContentOf>[0];
  readonly hydroxideFromOxideGrade: Parameters<typeof hydroxideFromOxideGrade>[0];
  readonly lyeStrengthFromMixing: Parameters<typeof lyeStrengthFromMixing>[0];
  readonly lyeDensity: Parameters<typeof lyeDensity>[0];
  readonly lyeStrengthFromDensity: Parameters<typeof lyeStrengthFromDensity>[0];
  readonly dilutedLye: Parameters<typeof dilutedLye>[0];
  readonly lyeFreezingPoint: Parameters<typeof lyeFreezingPoint>[0];
  readonly lyeTemperatureFromDissolving: Parameters<typeof lyeTemperatureFromDissolving>[0];
  readonly alkaliDemandOf: { readonly charge: readonly CheckCharge[] };
  readonly planLye: Omit<Parameters<typeof planLye>[0], 'fats'> & { readonly fats: readonly CheckCharge[] };
  readonly superfatFromLye: Omit<Parameters<typeof superfatFromLye>[0], 'fats'> & {
    readonly fats: readonly CheckCharge[];
  };
  readonly soapFromLye: CheckSoap;
  readonly compositionFrom: CheckPot;
  readonly ratiosOf: CheckPot;
  readonly totalFattyMatterOf: CheckPot;
  readonly solventDensity: Parameters<typeof solventDensity>[0];
  readonly mixtureDensity: Parameters<typeof mixtureDensity>[0];
  readonly spiritStrengthFromVolume: Parameters<typeof spiritStrengthFromVolume>[0];
  readonly freeCausticAlkaliFromTitration: Parameters<typeof freeCausticAlkaliFromTitration>[0];
  readonly totalFreeAlkaliFromTitration: Parameters<typeof totalFreeAlkaliFromTitration>[0];
  readonly acidValueFromTitration: Parameters<typeof acidValueFromTitration>[0];
  readonly acidityFromTitration: Parameters<typeof acidityFromTitration>[0];
  readonly saponificationValueFromTitration: Parameters<typeof saponificationValueFromTitration>[0];
  readonly esterValueFromTitrations: Parameters<typeof esterValueFromTitrations>[0];
  readonly alkaliAssayFromTwoIndicators: Parameters<typeof alkaliAssayFromTwoIndicators>[0];
  readonly alkaliAssayFromBariumChloride: Parameters<typeof alkaliAssayFromBariumChloride>[0];
  readonly lyeStrengthFromTitration: Parameters<typeof lyeStrengthFromTitration>[0];
  readonly titrantFromStandard: Parameters<typeof titrantFromStandard>[0];
  readonly judgeFreeAlkali: Parameters<typeof judgeFreeAlkali>[0];
  readonly correctFreeAlkali: Parameters<typeof correctFreeAlkali>[0];
  readonly correctSuperfat: Parameters<typeof correctSuperfat>[0];
  readonly soapSolutionPhFrom: Parameters<typeof soapSolutionPhFrom>[0];
  readonly freeAlkaliBehindPh: Parameters<typeof freeAlkaliBehindPh>[0];
  readonly potHeatFromReaction: Omit<Parameters<typeof potHeatFromReaction>[0], 'fats'> & {
    readonly fats: readonly CheckCharge[];
  };
  readonly heatOfEvaporation: Parameters<typeof heatOfEvaporation>[0];
  readonly auditRecipe: CheckRecipe;
}

/** Name of a function that checks test. */
export type CallName = keyof CallInputs;

/** Each function behind its name. An adaptor passes its inputs on and reckons nothing. */
const calls: { readonly [C in CallName]: (inputs: CallInputs[C]) => unknown } = {
  valueIn: ({ quantity, unit }) => ({ value: { [unit]: valueIn(quantity, unit) } }),
  molarMassOf: ({ formula }) => molarMassOf(formula),
  fattyAcidOf: ({ acid }) => fattyAcidOf(acid),
  triglycerideOf: ({ acid }) => triglycerideOf(acid),
  saponificationValueFromProfile,
  iodineValueFromProfile,
  saponificationValueOf: (inputs) => saponificationValueOf(fatOf(inputs.fat)),
  naohFromKoh,
  kohFromNaoh,
  alkaliContentOf,
  hydroxideFromOxideGrade,
  lyeStrengthFromMixing,
  lyeDensity,
  lyeStrengthFromDensity,
  dilutedLye,
  lyeFreezingPoint,
  lyeTemperatureFromDissolving,
  alkaliDemandOf: ({ charge }) => alkaliDemandOf(charge.map(weighed)),
  planLye: (inputs) => planLye({ ...inputs, fats: inputs.fats.map(weighed) }),
  superfatFromLye: (inputs) => superfatFromLye({ ...inputs, fats: inputs.fats.map(weighed) }),
  soapFromLye: made,
  compositionFrom: composed,
  ratiosOf: (inputs) => ratiosOf(composed(inputs)),
  totalFattyMatterOf: (inputs) => totalFattyMatterOf(composed(inputs)),
  solventDensity,
  mixtureDensity,
  spiritStrengthFromVolume,
  freeCausticAlkaliFromTitration,
  totalFreeAlkaliFromTitration,
  acidValueFromTitration,
  acidityFromTitration,
  saponificationValueFromTitration,
  esterValueFromTitrations,
  alkaliAssayFromTwoIndicators,
  alkaliAssayFromBariumChloride,
  lyeStrengthFromTitration,
  titrantFromStandard,
  judgeFreeAlkali,
  correctFreeAlkali,
  correctSuperfat,
  soapSolutionPhFrom,
  freeAlkaliBehindPh,
  potHeatFromReaction: (inputs) => potHeatFromReaction({ ...inputs, fats: inputs.fats.map(weighed) }),
  heatOfEvaporation,
  auditRecipe: (inputs) =>
    auditRecipe({ version: 1, ...inputs, fats: inputs.fats.map((row) => ({ ...row, fat: fatOf(row.fat) })) }),
};

/** The result of the function that a check names, given its inputs. */
export function resultOf<C extends CallName>(call: C, inputs: CallInputs[C]): unknown {
  return calls[call](inputs);
}

function made(inputs: CheckSoap): SoapFromLyeResult {
  return soapFromLye({ ...inputs, fats: inputs.fats.map(weighed) });
}

function composed(inputs: CheckPot): Composition {
  return compositionFrom({ ...inputs, soap: made(inputs.soap) });
}

function weighed(part: CheckCharge): { readonly fat: Fat; readonly mass: MassInput } {
  return { fat: fatOf(part.fat), mass: part.mass };
}

function fatOf(described: CheckFat): Fat {
  if (typeof described === 'string') return fat(described);
  return described.certificate === undefined
    ? fatFromProfile(described.profile)
    : fatFromCertificate(described.certificate);
}
