/** What the page of the bundles says, as JSON: a lye plan, a whole batch, an audit and reports on them. */
import { fat, planLye, toJson } from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { selfCheck } from 'laurate/check-values';
import { planBatch } from 'laurate/recipe';
import { batchSheetOf, lotVariationChartOf, workingOf } from 'laurate/reports';

export function figures(): string {
  const plan = planLye({
    fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
    alkali: { naoh: { solution: { hydroxide: { percent: 50 } } } },
    target: { superfat: { percent: 2 } },
    dilution: { strength: { percent: 33 } },
    scaleStep: { g: 1 },
  });
  const recipe = {
    version: 1,
    fats: [
      { fat: 'coconut-oil', mass: { g: '700' } },
      { fat: 'stearic-acid-50', mass: { g: '200' } },
    ],
    lye: [{ alkali: 'naoh', solution: { hydroxide: { percent: '50' } } }],
    additions: [{ solvent: 'glycerol', mass: { g: '250' }, assay: { percent: '99.5' } }],
    target: { superfat: { percent: '3' } },
  } as const;
  const batch = planBatch(recipe, { scaleStep: { g: 1 } });
  const audit = auditRecipe({
    version: 1,
    fats: [{ fat: 'coconut-oil', mass: { g: '900' } }],
    lye: [{ alkali: 'naoh', mass: { g: '180' }, solid: { hydroxide: { percent: '99' } } }],
  });
  const { met, known, total } = selfCheck();
  return JSON.stringify({
    weigh: [plan.weigh.naoh.g, plan.weigh.water.g],
    plan: toJson(plan),
    batch: toJson(batch),
    verdict: audit.verdict,
    audit: toJson(audit),
    sheet: batchSheetOf(batch),
    chart: lotVariationChartOf(plan),
    working: toJson(workingOf(plan)),
    selfCheck: [met + known === total, total > 0],
  });
}
