/** A program that uses every entry of the package, as an ES module and as CommonJS, and what it prints. */

/** Two figures that can be had by hand; and each further entry has to load and answer. */
export const use = `
  const { naoh } = naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
  const { weigh } = planLye({
    fats: [{
      fat: fatFromCertificate({ name: 'lot', kind: 'triglyceride', saponificationValue: { mgKohPerG: '256.4' } }),
      mass: { g: 1000 },
    }],
    alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
    target: { superfat: { percent: 5 } },
    dilution: 'as-is',
  });
  const { met, known, total } = selfCheck();
  console.log(naoh.g.toFixed(3), weigh.naoh.g.toFixed(3), total > 0 && met + known === total, typeof workingOf);
  const recipe = {
    version: 1,
    fats: [{ fat: 'coconut-oil', mass: { g: '900' } }],
    lye: [{ alkali: 'naoh', mass: { g: '180' }, solid: { hydroxide: { percent: '99' } } }],
  };
  try {
    planLye(5);
  } catch (error) {
    console.log(error.constructor.name);
  }
  console.log(readRecipe(recipe).fats[0].fat.name, auditRecipe(recipe).verdict, schema.required.join());
`;
// 90 / 56.105 * 39.997 / 0.98; and 1000 * 0.2564 * 0.95 / 56.105 * 39.997 / 0.5
// 178 g of hydroxide for at most 170 g that 900 g of coconut oil can take up
export const expected = '65.470 347.294 true function\nCalculationError\nCoconut oil dangerous version,fats,lye\n';

export const imports = `
  import { naohFromKoh, planLye, fatFromCertificate } from 'laurate';
  import { workingOf } from 'laurate/reports';
  import { selfCheck } from 'laurate/check-values';
  import { readRecipe } from 'laurate/recipe';
  import { auditRecipe } from 'laurate/audit';
`;
export const schemaImport = "import schema from 'laurate/recipe.schema.json' with { type: 'json' };\n";
export const requires = `
  const { naohFromKoh, planLye, fatFromCertificate } = require('laurate');
  const { workingOf } = require('laurate/reports');
  const { selfCheck } = require('laurate/check-values');
  const { readRecipe } = require('laurate/recipe');
  const { auditRecipe } = require('laurate/audit');
  const schema = require('laurate/recipe.schema.json');
`;
