/** The guide of all cautions, written from the code that says them. */
import type { Remark } from 'laurate';
import { alkaliCautions } from '../../src/lye/cautions.js';
import { table } from '../pages.js';

/** Every module of cautions with the heading its own stand under; the always-on ones stand before them all. */
const HEADINGS: Readonly<Record<string, string>> = {
  'lye/cautions': 'Lye, fats and the hot pot',
  'lye/benchCautions': 'The lye bench',
  'composition/cautions': 'What else goes into the pot',
  'process/cautions': 'The heat of the work',
  'freeAlkali/cautions': 'Testing and mending the soap',
};

const modules = import.meta.glob<Record<string, unknown>>('../../src/**/*autions.ts', { eager: true });

function isRemark(value: unknown): value is Remark {
  return typeof value === 'object' && value !== null && 'code' in value && 'text' in value;
}

/** The cautions that a module says, by code; a module without a heading is a fault. */
const groups = Object.entries(modules)
  .map(([file, exported]) => ({
    name: file.replace('../../src/', '').replace('.ts', ''),
    cautions: Object.values(exported)
      .filter(isRemark)
      .sort((a, b) => (a.code < b.code ? -1 : 1)),
  }))
  .filter(({ cautions }) => cautions.length > 0)
  .map(({ name, cautions }) => {
    const heading = HEADINGS[name];
    if (heading === undefined) throw new Error(`src/${name}.ts says cautions and has no heading in the guide`);
    return { heading, place: Object.keys(HEADINGS).indexOf(name), cautions };
  })
  .sort((a, b) => a.place - b.place);

const always = alkaliCautions();

/** Every caution the library can say. */
export const allCautions: readonly Remark[] = [...always, ...groups.flatMap(({ cautions }) => cautions)];

const tableOf = (cautions: readonly Remark[]): string =>
  table(
    ['code', 'what it says'],
    cautions.map(({ code, text }) => [`\`${code}\``, text]),
  );

export const cautionsPage = `---
title: Cautions
---

# Cautions

Caustic burns skin and blinds eyes; spirit burns; hot base scalds. Every result that leads to handling them says so in
\`cautions\`, the most urgent first: show them before the figures. The sentences are our own words; they do not
replace the safety data sheet of the supplier, local codes and licensed practice.

A caution is \`{ code, text }\`. \`code\` is for programs and does not change its meaning; \`text\` is for people, and may be
put better in a later edition. \`notes\` of a result are of the same shape and say what was assumed.

\`\`\`ts
import { fat, planLye } from 'laurate';

const { cautions } = planLye({
  fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
  alkali: { naoh: { solid: { hydroxide: { percent: 99 } } } },
  target: { superfat: { percent: 5 } },
  dilution: { strength: { percent: 33 } },
});
cautions[0]?.code; // => 'caustic-burns'
cautions[1]?.code; // => 'solid-into-cold-water'
\`\`\`

This page is written from the code by \`npx vitest -u tests/docs\`, and the tests compare the two.

## Whenever alkali is handled

${tableOf(always)}

${groups.map(({ heading, cautions }) => `## ${heading}\n\n${tableOf(cautions)}`).join('\n\n')}
`;
