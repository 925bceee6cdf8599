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
  roundToStep,
  soapFromLye,
  soapStateFromTest,
  type AdditionInput,
  type SourceId,
} from 'laurate';
import { batch, stock } from './harbour-batch.js';
import { content, percent, row } from './columns.js';

// By the log of the scale ten grams more of the stock went in than planned: the tap dripped.
const { fats, water = { g: 0 }, additions = [] } = batch.recipe;
const planned = batch.weigh.find(({ item }) => item === 'naoh')?.mass.g.toNumber() ?? 0;
const lye = [{ alkali: 'naoh', mass: { g: planned + 10 }, solution: { hydroxide: stock } }] as const;
const potMass = { g: 2540 };
const pot = compositionFrom({
  soap: soapFromLye({ fats, lye, water }),
  additions: additions as readonly AdditionInput[],
  potMass,
});

/** What is in the pot. */
export const potLines: readonly string[] = [
  `POT when all is clear, weighed: ${String(potMass.g)} g; the rest has gone as steam (weights, readings and tests are invented)`,
  `  By the log of the scale ${String(planned + 10)} g of the stock lye went in, ten more than planned: the figures of the plan hold no longer.`,
  row('', 'lowest', 'likely', 'highest'),
  ...(
    [
      ['sodium soap', 'soapSodium'],
      ['water', 'water'],
      ['glycerol, formed and added', 'glycerol'],
      ['propylene glycol', 'propyleneGlycol'],
      ['sorbitol', 'sorbitol'],
      ['fat left free', 'freeFat'],
    ] as const
  ).map(([label, component]) => {
    const { low, likely, high } = pot.components[component].share;
    return row(label, percent(low), percent(likely), percent(high));
  }),
  row(
    'free caustic on paper',
    content(pot.freeCausticAlkali.low),
    content(pot.freeCausticAlkali.likely),
    content(pot.freeCausticAlkali.high),
  ),
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

const state = soapStateFromTest({ fats, lye, water, batchMass: potMass, measured: first });
const mend = {
  batch: potMass,
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

/** The publications behind the tests. */
export const testBasis: readonly SourceId[] = [pot, first, state, afterHeat, judged].flatMap(({ basis }) => basis);

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
  '  Cautions of the correction and the test, of each the most urgent first',
  ...[...afterHeat.cautions, ...last.cautions]
    .filter(({ code }, at, all) => all.findIndex((other) => other.code === code) === at)
    .map(({ text }, at) => `  ${String(at + 1)}. ${text}`),
];
