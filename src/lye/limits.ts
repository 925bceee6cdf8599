import type { Limits } from '../numbers/index.js';

/** Assay of a solid alkali, percent by mass. Pharmacopoeias allow assays over 100: the method's own uncertainty. */
export const ASSAY: Limits = { above: 0, max: 110 };

/** Assay of a solid in the store: with less hydroxide than this it is no solid alkali, and a fraction given as percent is less. */
export const SOLID: Limits = { min: 10, max: 110 };

/** Strength of a lye, percent by mass. A stronger melt is no solution at any bench; a figure above is the assay of a solid. */
export const STRENGTH: Limits = { above: 0, max: 75 };

/** Carbonate in a solid alkali, percent by mass. */
export const CARBONATE: Limits = { min: 0, max: 50 };
