/**
 * Mutation tests, layer by layer: `npm run mutation`, or `npm run mutation -- lye process` for some. Every formula file of a
 * layer is mutated, and every mutant tried on the tests of that layer; with `ONE_IN=4` every fourth of them. Reports go to
 * coverage/mutation.
 */
import { readdirSync } from 'node:fs';
import { Stryker } from '@stryker-mutator/core';

/** What holds of every result: that its inputs are given, its sources named, its figures figures, its remarks and steps told. */
const RESULTS = ['given', 'results', 'told', 'workings'].map((name) => `tests/laws/${name}.test.ts`);
/** Layers, and what is tried on them beside their own tests, last and on what those leave. */
const LAYERS = {
  chemistry: [],
  quantities: [],
  numbers: ['tests/quantities'],
  lye: RESULTS,
  fats: RESULTS,
  saponification: RESULTS,
  composition: RESULTS,
  freeAlkali: RESULTS,
  base: RESULTS,
  clarity: RESULTS,
  process: RESULTS,
  recipe: [],
  batch: RESULTS,
  audit: [],
  reports: ['tests/composition/solvents.test.ts', ...RESULTS],
};
/** A test that compiles the source, and those that draw thousands of recipes. */
const LEFT_OUT = /recipeSchema|audit\/(?:fuzz|trials)/;
/** Tables of figures, and texts, are held by tests of their own. */
const NO_FORMULA = ['index.ts', 'cautions.ts', 'benchCautions.ts', 'potCautions.ts', 'notes.ts', 'words.ts', 'data/**'];

const testsIn = (place) =>
  place.endsWith('.ts')
    ? [place]
    : readdirSync(place, { recursive: true, encoding: 'utf8' })
        .map((name) => `${place}/${name}`)
        .filter((name) => name.endsWith('.test.ts') && !LEFT_OUT.test(name));

const asked = process.argv.slice(2);
for (const [layer, beside] of Object.entries(LAYERS)) {
  if (asked.length > 0 && !asked.includes(layer)) continue;
  process.env.MUTATION_TESTS = JSON.stringify([`tests/${layer}`, ...beside].flatMap(testsIn));
  await new Stryker({
    configFile: '.config/stryker.json',
    mutate: [`src/${layer}/**/*.ts`, ...NO_FORMULA.map((name) => `!src/${layer}/**/${name}`)],
    tempDirName: `coverage/stryker-${layer}`,
    jsonReporter: { fileName: `coverage/mutation/${layer}.json` },
  }).runMutationTest();
}
