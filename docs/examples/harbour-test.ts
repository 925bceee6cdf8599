/**
 * The pot of the harbour workshop when it is clear: what is in it, what the test says, and what is done about it.
 *
 * Weights, readings and tests are invented.
 */
import {
  compositionFrom,
  correctFreeAlkali,
  freeAlkaliLimits,
  freeCausticAlkaliFromTitration,
  judgeFreeAlkali,
  ratiosOf,
  roundToStep,
  soapFromLye,
  soapStateFromTest,
  sources,
  totalFattyMatterOf,
  type AlkaliContent,
  type Estimate,
  type Fraction,
  type MassRatio,
} from 'laurate';
import { fats, plan, stock } from './harbour-batch.js';

// By the log of the scale ten grams more of the stock went in than planned: the tap dripped.
const lye = [{ alkali: 'naoh', mass: { g: 312 }, solution: { hydroxide: stock } }] as const;
const water = plan.weigh.water;
const pot = compositionFrom({
  soap: soapFromLye({ fats, lye, water }),
  additions: [
    { solvent: 'propylene-glycol', mass: { g: 330 }, assay: { percent: '99.5' } },
    { solvent: 'glycerol', mass: { g: 260 }, assay: { percent: '99.5' } },
    { solvent: 'sorbitol', mass: { g: 520 }, assay: { percent: 70 } },
  ],
  potMass: { g: 2415 },
});
const ratios = ratiosOf(pot);
const fattyMatter = totalFattyMatterOf(pot);
const batch = { g: 2415 };

const percent = ({ percent: value }: Fraction): string => `${value.toFixed(1)} %`;
const parts = ({ partsPerPart }: MassRatio): string => partsPerPart.toFixed(2);
const content = ({ percentNaoh }: AlkaliContent): string => `${percentNaoh.toFixed(3)} % NaOH`;

function row<Q>(label: string, { low, likely, high }: Estimate<Q>, text: (quantity: Q) => string): string {
  return `  ${label.padEnd(38)}${[low, likely, high].map((figure) => text(figure).padStart(15)).join('')}`;
}

/** What is in the pot. */
export const potLines: readonly string[] = [
  'POT when all is clear, weighed: 2415 g; the rest has gone as steam (weights, readings and tests are invented)',
  '  By the log of the scale 312 g of the stock lye went in, ten more than planned: the figures of the plan hold no longer.',
  '  Added: 330 g of propylene glycol and 260 g of glycerol, 99.5 % each, 520 g of sorbitol solution, 70 %.',
  `  ${''.padEnd(38)}${['lowest', 'likely', 'highest'].map((head) => head.padStart(15)).join('')}`,
  row('sodium soap', pot.components.soapSodium.share, percent),
  row('water', pot.components.water.share, percent),
  row('glycerol, formed and added', pot.components.glycerol.share, percent),
  row('propylene glycol', pot.components.propyleneGlycol.share, percent),
  row('sorbitol', pot.components.sorbitol.share, percent),
  row('fat left free', pot.components.freeFat.share, percent),
  row('clearing agents to one part of soap', ratios.clearingAgentsPerSoap, parts),
  row('total fatty matter', fattyMatter.totalFattyMatter, percent),
  row('free caustic on paper', pot.freeCausticAlkali, content),
];

// Ten grams of soap, titrated twice with acid of 0.1 eq/L: when it is clear, and again after an hour of heat.
const test = (mL: string, again: string) =>
  freeCausticAlkaliFromTitration({
    readings: [
      { sample: { g: '10.03' }, volume: { mL } },
      { sample: { g: '9.96' }, volume: { mL: again } },
    ],
    titrant: { eqPerL: '0.1' },
  });
const first = test('2.76', '2.74');
const second = test('2.71', '2.70');
const last = test('0.48', '0.47');

const state = soapStateFromTest({ fats, lye, water, batchMass: batch, measured: first });
const mend = {
  batch,
  alkali: 'naoh',
  target: { percentNaoh: '0.02' },
  corrector: { acid: 'citric-monohydrate', strength: { percent: 25 } },
} as const;
const atOnce = correctFreeAlkali({ ...mend, measured: first });
const afterHeat = correctFreeAlkali({
  ...mend,
  measured: second,
  reactionComplete: { earlier: first, apart: { hours: 1 } },
});
const limit = freeAlkaliLimits.find(({ id }) => id === 'toilet-soap-is-2888');
const judged = judgeFreeAlkali({ measured: last, limit: 'toilet-soap-is-2888' });
const cited = new Set([pot, fattyMatter, first, state, afterHeat, judged].flatMap(({ basis }) => basis));

/** What the tests say and what is done about it. */
export const testLines: readonly string[] = [
  `TEST: ${content(first.freeCausticAlkali)}, standard uncertainty ${content(first.standardUncertainty)}`,
  `  Either some of it has not met its fat yet: then ${percent(state.extent.low)} to ${percent(state.extent.high)} of the demand is taken up so far.`,
  `  Or it is excess: lots and assays leave ${content(state.expected.low)} to ${content(state.expected.high)}. One test: ${state.state}.`,
  `  Correct at once? ${atOnce.decision}.`,
  `An hour of heat later: ${content(second.freeCausticAlkali)}. The two tests agree: ${afterHeat.decision}.`,
  `  ${roundToStep(afterHeat.add, { g: '0.1' }, 'down').g.toFixed(1)} g of citric acid monohydrate solution, 25 %; that leaves ${content(afterHeat.leaves.low)} to ${content(afterHeat.leaves.high)}.`,
  `  It changes the pot by ${afterHeat.changes.map(({ component, mass }) => `${component} ${mass.g.toFixed(1)} g`).join(', ')}.`,
  `Stirred in, tested again: ${content(last.freeCausticAlkali)}, standard uncertainty ${content(last.standardUncertainty)};`,
  `  against ${content(judged.limit)} for ${limit?.soap ?? 'soap'}: ${judged.verdict}. ${limit?.note ?? ''}`,
  '  Cautions of the correction, the pot and the test; of each the most urgent first',
  ...[...afterHeat.cautions, ...pot.cautions, ...last.cautions]
    .filter(({ code }, at, all) => all.findIndex((other) => other.code === code) === at)
    .map(({ text }, at) => `  ${String(at + 1)}. ${text}`),
  '  Figures from',
  ...sources([...cited]).map(({ title, edition }) => `  - ${title}; ${edition}`),
];
