/**
 * The audit of a recipe: what its numbers say of each other, and how a wrong one may have come about.
 *
 * @module laurate/audit
 */

export { auditRecipe, type AuditRecipeOptions, type AuditRecipeResult, type Implied } from './auditRecipe.js';
export type { Finding, FindingCode, Severity } from './finding.js';
export type { FindingValue, PlainNumber } from './findingValue.js';
export type { Slip, SlipCode } from './slips/slip.js';
export { verdictsOf, type IndexedVerdict } from './verdictsOf.js';
export type { Verdict } from './verdict.js';
