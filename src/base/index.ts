export {
  baseFromTarget,
  baseFromTargetSteps,
  type BaseFromTargetBase,
  type BaseFromTargetInput,
  type BasePlan,
  type BasePlanFor,
  type BaseWeights,
} from './baseFromTarget.js';
export type { BlendedFat, BlendedFatInput } from './blend.js';
export type { BaseComponent, BoughtSolvent, SuppliedComponent } from './components.js';
export type { GivenBase } from './readProblem.js';
export type { BaseShares, BaseSupplies, BaseTarget } from './target.js';
