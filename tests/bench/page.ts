/** The page `docs/performance.md`. */
import { cpus } from 'node:os';
import { ratioOf, spreadOf, type Rounds } from './harness.js';
import { improvements } from './improvements.js';
import type { Kept, Stream } from './memory.js';
import type { ImportProfile, Profile } from './profile.js';
import type { Size } from './sizes.js';
import { comparison, short, verdict, withQuartiles } from './table.js';
import { table } from '../pages.js';
import type { MeasuredVerdicts } from './verdicts.js';

/** What was measured; each list begins with the library. */
export interface Measurements {
  readonly rounds: number;
  readonly importRounds: number;
  /** By number of fats. */
  readonly plans: ReadonlyMap<number, readonly Rounds[]>;
  /** Plans of so many fats as the name says. */
  readonly growth: readonly Rounds[];
  readonly profileValue: readonly Rounds[];
  readonly certificate: readonly Rounds[];
  /** Functions without a plain way to compare with. */
  readonly lyeBench: readonly Rounds[];
  readonly verdicts: readonly MeasuredVerdicts[];
  /** Milliseconds. */
  readonly imports: readonly Rounds[];
  readonly sizes: readonly Size[];
  readonly importParts: ImportProfile;
  readonly profiles: readonly Profile[];
  readonly kept: readonly Kept[];
  /** Recipes that call fats by their published names, and recipes that carry every fat whole. */
  readonly streams: readonly Stream[];
  readonly streamsOfLots: readonly Stream[];
}

/** The aims of the design: a plan of five fats against plain decimals, an import against that of decimal.js. */
const [PLAN_AIM, IMPORT_AIM] = [2, 1.5];
/** Verdicts against whole audits, of drawn recipes: at least so many times as fast. */
const VERDICTS_AIM = 10;

function named(measured: readonly Rounds[], name: string): Rounds {
  const found = measured.find((rounds) => rounds.name === name);
  if (found === undefined) throw new Error(`${name} was not measured`);
  return found;
}

const count = (fats: number): string => (fats === 1 ? 'one fat' : `${String(fats)} fats`);

function growthTable(plans: readonly Rounds[]): string {
  const growth = plans.map(({ name, figures }) => ({ name, figures: figures.map((micros) => micros / Number(name)) }));
  const ten = named(growth, '10');
  return table(
    ['fats in the plan', 'µs for each fat', 'times that of ten fats'],
    growth.map((size) => [
      size.name,
      withQuartiles(spreadOf(size.figures)),
      size === ten ? '1' : withQuartiles(ratioOf(size, ten)),
    ]),
  );
}

/** How many times as long an audit takes, of the first corpus, in words. */
function verdictsAim([corpus]: readonly MeasuredVerdicts[]): string {
  const rounds = corpus?.rounds ?? [];
  const ratio = ratioOf(named(rounds, '`auditRecipe`'), named(rounds, '`verdictsOf`'));
  return `aim at least ${String(VERDICTS_AIM)}, measured ${withQuartiles(ratio)}: ${ratio.middle >= VERDICTS_AIM ? 'met' : '**missed**'}`;
}

/** One corpus: the ways, and how many times as fast `verdictsOf` is, and where the script is off. */
function verdictsTable({ name, recipes, rounds, scriptDiffers }: MeasuredVerdicts): string {
  const library = named(rounds, '`verdictsOf`');
  return `### ${name}

${table(
  ['way', 'µs a recipe', 'takes as many times as long as `verdictsOf`'],
  rounds.map((way) => [
    way.name,
    withQuartiles(spreadOf(way.figures)),
    way === library ? '1' : withQuartiles(ratioOf(way, library)),
  ]),
)}

${String(recipes)} recipes; the script comes to another verdict in ${String(scriptDiffers)}.`;
}

const kib = (bytes: number): string => `${(bytes / 1024).toFixed(1)} KiB`;
const percent = (share: number): string => `${share.toFixed(0)} %`;

function profileTable(profiles: readonly Profile[]): string {
  return table(
    ['call', 'decimal.js', 'the library', 'of it most in', 'garbage collector'],
    profiles.map(({ name, decimals, library, most, garbage }) => [
      name,
      percent(decimals),
      percent(library),
      most.map(([of, share]) => `\`${of}\` ${percent(share)}`).join(', '),
      percent(garbage),
    ]),
  );
}

function streamTable(measured: readonly Stream[]): string {
  return table(
    ['recipes', 'µs for each', 'heap left behind'],
    measured.map(({ recipes, microsEach, bytesLeft }) => [
      recipes.toLocaleString('en').replaceAll(',', ' '),
      short(microsEach),
      kib(Math.max(0, bytesLeft)),
    ]),
  );
}

/** The whole page as Markdown, not yet laid out. */
export function pageOf(measurements: Measurements): string {
  const { rounds, importRounds, plans, growth, profileValue, certificate, lyeBench, verdicts, imports } = measurements;
  const { sizes, importParts, profiles, kept, streams, streamsOfLots } = measurements;
  const five = plans.get(5) ?? [];
  const planRatio = ratioOf(named(five, '`planLye`'), named(five, 'plain decimals'));
  const importRatio = ratioOf(named(imports, '`laurate`'), named(imports, '`decimal.js`'));
  return `---
title: Performance
---

# Performance

This page is written by \`npm run bench -- --write\`; figures are not edited by hand. Every figure is a median with its
quartiles in brackets. What is compared runs in turns within one run (${String(rounds)} rounds; imports ${String(importRounds)}), and ratios are taken
inside each round, so that they hold on a busy machine too; the times themselves only give the scale. Measured on the
built package, Node ${process.versions.node}, ${String(cpus().length)} processor cores (${process.arch}), not kept free of other work.

- \`planLye\` of five fats against plain decimals: ${verdict(planRatio, PLAN_AIM)}.
- \`auditRecipe\` against \`verdictsOf\`, of drawn recipes: ${verdictsAim(verdicts)}.
- Import of \`laurate\` against \`decimal.js\` alone: ${verdict(importRatio, IMPORT_AIM)}.

## A lye plan

A 50 % lye brought to 33 %, 2 % of the demand left out; published fats, masses as numbers and as texts, input objects
made afresh for each call. The plain ways are given the saponification values as parsed numbers and work out demand,
alkali, water, superfat and free caustic alkali for the leanest, the likely and the richest lots; the units library only
the likely plan. Before anything is timed, all must give the same figures: decimals to 32 digits, floating point to 13.
The library does more than they do: it reads and checks every field, gives superfat by mass and the strength of the lye
as well, and hands back the input as read, notes, cautions and sources.

${[...plans].map(([fats, measured]) => `### ${count(fats)}\n\n${comparison(measured, 'µs')}`).join('\n\n')}

## Growth

Time of \`planLye\` for each fat. One fat bears the fixed cost of the plan alone; beyond that each fat must cost no more
in a long list than in a short one.

${growthTable(growth)}

Recipes in one stream through \`verdictsOf\`, each read from its JSON as out of a file.

${streamTable(streams)}

The same recipes with every fat carried whole, as a certificate makes it: now each fat has to be read anew, and that takes
most of the time, of an audit as well. Give the lots of a workshop once, by \`options.fats\`, and let the recipes call them.

${streamTable(streamsOfLots)}

## The value of a profile

Coconut oil, twelve acids with the limits of its standard. The library also gives the exact bounds, the mean molar mass
and the profile as used; the plain ways give the likely value alone.

${comparison(profileValue, 'µs')}

## A fat by its certificate

${comparison(certificate, 'µs')}

## At the lye bench, and the soap it makes

No plain way does the same, so only the scale is told.

${table(
  ['call', 'µs'],
  lyeBench.map(({ name, figures }) => [name, withQuartiles(spreadOf(figures))]),
)}

## Verdicts of many recipes

The recipes of \`npm run bench:audit\`, made before anything is timed. \`verdictsOf\` gives the verdicts of \`auditRecipe\`, all of
them compared first, without its findings. Where a recipe prints what the whole pot is made of, that is compared in exact decimals;
these are few and cost most of the time. The script takes the recipe to be right in shape, and leaves out pH, temperatures,
densities and the parts of the pot. Of fewer rounds than the rest (${String(verdicts[0]?.rounds[0]?.figures.length ?? 0)}), as an audit takes long.

${verdicts.map(verdictsTable).join('\n\n')}

## Import

Each import (ESM) in a process of its own, without the start of the process. An empty module shows what the first import
of any process costs; the others are what the library depends on.

${comparison(imports, 'ms')}

The CommonJS files of the main entry are ${(importParts.bytes / 1024).toFixed(0)} KiB of text. Reading them took ${short(importParts.compiled)} ms of
this process, running what stands at their top ${short(importParts.evaluated)} ms: no table is worked out on import, and what an import
costs is the length of the text. Names are left whole in it, so that an error can be followed to its line.

## Size

A bundle of one import, made small and compressed (gzip), by the budgets that \`npm run size\` holds. decimal.js comes on
top of every other row, once. What two parts of an app load apart shares one file with all that both may need: load the
library in one piece, or bundle each part by itself.

${table(
  ['import', 'size', 'budget'],
  sizes.map(({ name, size, sizeLimit }) => [name, kib(size), kib(sizeLimit)]),
)}

## Memory

What one result keeps, with its inputs as read, notes, cautions and sources; texts and fats that all results share count once.

${table(
  ['result', 'keeps'],
  kept.map(({ name, bytes }) => [name, kib(bytes)]),
)}

## Where the time goes

Samples of the engine's own profiler while a call runs over and over, in percent of the time.

${profileTable(profiles)}

What profiles led to, each measured on the version before and after it:

${table(['what a profile showed', 'what was done', 'before', 'after'], improvements)}
`;
}
