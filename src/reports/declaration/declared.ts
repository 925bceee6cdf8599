import type { Decimal } from '../../numbers/index.js';
import type { Place } from '../../saponification/index.js';
import type { IngredientName } from './ingredientNames.js';

/** One thing that is declared, before things of one name are put together. */
export interface DeclaredPart extends IngredientName {
  /** What it came from, as the recipe calls it. */
  readonly from: string;
  /** Whether it is one of the colourants, which stand last. */
  readonly isColourant: boolean;
}

/** What is declared of a pot. */
export interface Declared {
  readonly parts: readonly DeclaredPart[];
  /** Grams of each, in the order of the parts. */
  readonly gramsAt: (place: Place) => readonly Decimal[];
}
