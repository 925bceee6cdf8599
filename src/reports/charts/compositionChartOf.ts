import {
  COMPONENTS,
  compositionFromSteps,
  givenOf,
  type ComponentName,
  type CompositionFromInput,
  type MadeComposition,
} from '../../composition/index.js';
import { mapEnds } from '../../quantities/index.js';
import type { Chart } from './chart.js';
import { chartFrom, readTitle, type ChartOptions } from './chartFrom.js';
import { inWords, interval } from './figures.js';
import { intervalPanel } from './intervalPanel.js';

const NAMES: Readonly<Record<ComponentName, string>> = {
  soapSodium: 'sodium soap',
  soapPotassium: 'potassium soap',
  glycerol: 'glycerol, formed and added',
  ethanol: 'ethanol',
  isopropanol: 'isopropanol',
  propyleneGlycol: 'propylene glycol',
  dipropyleneGlycol: 'dipropylene glycol',
  butanediol: '1,3-butanediol',
  sorbitol: 'sorbitol',
  sucrose: 'sucrose',
  glucose: 'glucose',
  polyethyleneGlycol: 'polyethylene glycol',
  triethanolamine: 'triethanolamine',
  water: 'water',
  freeFat: 'fat left free',
  freeAcid: 'fatty acid left free',
  freeCaustic: 'caustic left free',
  carbonate: 'carbonate',
  unsaponifiable: 'unsaponifiable matter',
  salts: 'salts',
  other: 'other, or not known',
};

/**
 * What is in a pot as a chart: the share of each component, likely first, with the lowest and highest that lots, assays and
 * losses allow. What is not there is left out.
 *
 * The composition is worked through again from its `given`. Shares are rounded to 0.01 %, intervals outward.
 *
 * @param composition - a result of `compositionFrom`, also one read back from JSON
 * @param options - your own title
 * @returns a Vega-Lite specification as plain data; shares in percent by mass of what is in the pot
 * @throws CalculationError `missing` or `bad-shape` for what is no composition, `unknown-key`, and the faults of its inputs
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const chart = compositionChartOf(compositionFrom({ soap, additions: [] }));
 * const [panel] = chart.concat;
 * panel?.layer[0]?.data.values[0]?.['label']; // => '74.8 % (70.8 to 76.6)'
 * ```
 */
export function compositionChartOf(composition: MadeComposition, options: ChartOptions = {}): Chart {
  const title = readTitle(options);
  const given = givenOf('composition', composition, 'compositionFrom') as CompositionFromInput;
  const { components } = compositionFromSteps(given);
  const rows = COMPONENTS.map((name) => ({ name: NAMES[name], share: mapEnds(components[name].share, percentOf) }))
    .filter(({ share }) => share.high.gt(0))
    .sort((a, b) => b.share.likely.cmp(a.share.likely))
    .map(({ name, share }) => ({ name, interval: interval(share, 2), label: inWords(share, 1, ' %') }));
  return chartFrom({
    title,
    shows: 'What is in the pot',
    legend: [
      'Bar and diamond: the likely share. Line: from the lowest to the highest that lots, assays and losses allow.',
    ],
    description: `What is in the pot, percent by mass: ${rows.map(({ name, label }) => `${name} ${label}`).join('; ')}.`,
    panels: [intervalPanel({ title: 'Share of each component', axis: 'percent by mass of the pot', rows, bars: true })],
    columns: 1,
  });
}

const percentOf = <Q>({ percent }: { readonly percent: Q }): Q => percent;
