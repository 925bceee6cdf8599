/**
 * Somebody else's numbers: a leaflet from the ferry hall with a recipe for soap base, audited before anything is weighed.
 *
 * Leaflet and recipe are invented, with two slips in them: a value for KOH printed as one for NaOH, and ounces as grams.
 */
import { auditRecipe } from 'laurate/audit';

const leaflet = {
  version: 1,
  title: 'Clear base, from a leaflet',
  fats: [
    { fat: 'coconut-oil', mass: { g: '620' }, claimed: { saponificationValue: { gNaohPerG: '0.257' } } },
    { fat: 'castor-oil', mass: { g: '5.3' }, claimed: { saponificationValue: { gNaohPerG: '0.128' } } },
  ],
  lye: [{ alkali: 'naoh', mass: { g: '343' }, solution: { hydroxide: { percent: '50' } } }],
  water: { g: '120' },
  claimed: { superfat: { percent: '4' }, strength: { percent: '37' } },
};

const audit = auditRecipe(leaflet);

/** The audit as lines to print: what is found, how it may have come about, and what would tell. */
export const auditLines: readonly string[] = [
  `AUDIT of a recipe from a leaflet (invented): ${audit.verdict}`,
  '',
  ...audit.findings.flatMap(({ severity, path, explanation, slips }) => [
    `  ${severity}, ${path}: ${explanation}`,
    ...slips
      .slice(0, 2)
      .flatMap((slip) => [
        `    ${slip.how}${slip.path === undefined ? '' : `, ${slip.path}`}: ${slip.explanation}`,
        `      ${slip.tell}`,
      ]),
  ]),
];
