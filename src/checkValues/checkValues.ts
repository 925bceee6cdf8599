import type { CheckValue } from './checkValue.js';
import { auditChecks } from './data/audits.js';
import { chemistryChecks } from './data/chemistry.js';
import { fattyMatterChecks } from './data/fattyMatter.js';
import { foodTableChecks } from './data/foodTables.js';
import { freeAlkaliChecks } from './data/freeAlkali.js';
import { glycerolYieldChecks } from './data/glycerolYields.js';
import { handbookFatChecks } from './data/handbookFats.js';
import { hydrometerChecks } from './data/hydrometer.js';
import { lyeChecks } from './data/lye.js';
import { lyeBenchChecks } from './data/lyeBench.js';
import { lyeDensityChecks } from './data/lyeDensities.js';
import { oxideColumnChecks } from './data/oxideColumn.js';
import { printedCompositionChecks } from './data/printedCompositions.js';
import { printedRecipeChecks } from './data/printedRecipes.js';
import { processHeatChecks } from './data/processHeats.js';
import { profileBoundsChecks } from './data/profileBounds.js';
import { quantityChecks } from './data/quantities.js';
import { sampledFatChecks } from './data/sampledFats.js';
import { saponificationChecks } from './data/saponification.js';
import { solventDensityChecks } from './data/solventDensities.js';
import { soapYieldChecks } from './data/soapYields.js';
import { standardRangeChecks } from './data/standardRanges.js';

let all: readonly CheckValue[] | undefined;

/**
 * Every published figure the library is checked against. Some rows are made from the published records, when first asked
 * for.
 *
 * @returns the rows: inputs, printed figure, tolerance with its reason, source
 *
 * @example
 * ```ts
 * const row = checkValues().find(({ id }) => id === 'exercise-naoh-to-neutralise-15-g');
 * row?.printed; // => '0.075'
 * ```
 */
export function checkValues(): readonly CheckValue[] {
  all ??= [
    ...quantityChecks,
    ...chemistryChecks,
    ...handbookFatChecks,
    ...sampledFatChecks(),
    ...standardRangeChecks(),
    ...profileBoundsChecks(),
    ...foodTableChecks(),
    ...hydrometerChecks(),
    ...lyeChecks,
    ...oxideColumnChecks(),
    ...lyeDensityChecks(),
    ...lyeBenchChecks(),
    ...saponificationChecks,
    ...soapYieldChecks,
    ...glycerolYieldChecks(),
    ...printedRecipeChecks,
    ...solventDensityChecks(),
    ...printedCompositionChecks(),
    ...fattyMatterChecks(),
    ...freeAlkaliChecks,
    ...processHeatChecks(),
    ...auditChecks(),
  ];
  return all;
}
