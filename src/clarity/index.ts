export type { BlendedFat, BlendedFatInput } from './baseBlend.js';
export type { BaseComponent, BoughtSolvent, SuppliedComponent } from './baseComponents.js';
export {
  baseFromTarget,
  baseFromTargetSteps,
  type BaseFromTargetBase,
  type BaseFromTargetInput,
  type BasePlan,
  type BasePlanFor,
  type BaseWeights,
} from './baseFromTarget.js';
export type { BaseShares, BaseSupplies, BaseTarget } from './baseTarget.js';
export type { GivenBase } from './readBaseProblem.js';
