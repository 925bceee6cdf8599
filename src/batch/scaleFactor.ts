import { batchVolumeOf } from '../composition/index.js';
import { ONE, refuse, toStep, ZERO, type Decimal } from '../numbers/index.js';
import { ingredientsCalled, ingredientsOf } from './ingredients.js';
import { potOf } from './pot.js';
import { lossOf, type GivenBatchOptions } from './readBatchOptions.js';
import type { ReadRecipeToPlan } from './recipeToPlan.js';
import { weighedRecipe } from './weighedRecipe.js';

/**
 * What every mass of a recipe is multiplied by, so that the batch is as great as is asked for.
 *
 * @throws CalculationError `unknown-key` for a stock of nothing in the recipe, `infeasible` for one of nothing that is
 *   weighed, and the faults of a plan
 */
export function scaleFactor(toPlan: ReadRecipeToPlan, options: GivenBatchOptions): Decimal {
  const { scaleTo, scaleStep, moulds, pourAt } = options;
  if (scaleTo === undefined) return ONE;
  const written = weighedRecipe(toPlan, { factor: ONE, scaleStep: undefined, evaporated: lossOf(options) });
  if (scaleTo !== 'moulds' && 'inStock' in scaleTo) {
    const { item, mass } = scaleTo.inStock;
    const called = ingredientsCalled('options.scaleTo.inStock.item', item, ingredientsOf(written));
    const grams = called.reduce((sum, one) => sum.plus(one.grams), ZERO);
    if (grams.isZero()) refuse('infeasible', 'options.scaleTo.inStock.item', 'something that is weighed', item);
    // what the scale cannot show is not in stock
    return (scaleStep === undefined ? mass.g : toStep(mass.g, scaleStep.g, 'down')).div(grams);
  }
  const { composition } = potOf(written, ONE, options);
  const finished = composition.mass.likely.g;
  if (scaleTo !== 'moulds') return scaleTo.batchMass.g.div(finished);
  // moulds are to be full also with the densest lot, and after rounding: a step for each alkali, for the rest, for the water
  const densest = batchVolumeOf({ composition, temperature: pourAt }).density.high.gPerML;
  const volume = (moulds?.volume.mL ?? ZERO).times(moulds?.count ?? ONE);
  const rounding = (scaleStep?.g ?? ZERO).times(written.lye.length + 2);
  return volume.times(densest).plus(rounding).div(finished);
}
