/**
 * The main job on real input: the lye for a pot of clear soap base, as a sheet to pin above the bench.
 *
 * The workshop by the harbour, its drums, readings and certificate are invented; the published figures are not.
 * Run it with `npm run demo`.
 */
import {
  dilutedLye,
  fat,
  lyeFreezingPoint,
  planLye,
  soapFromLye,
  sources,
  type AlkaliContent,
  type Estimate,
  type Fraction,
  type LyePlan,
  type Mass,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { auditLines } from './ferry-leaflet.js';
import { bench, fats, others, plan, stock } from './harbour-batch.js';
import { potLines, testLines } from './harbour-test.js';

const freezing = lyeFreezingPoint({ alkali: 'naoh', strength: stock.likely });
const uncertified = planLye({ ...bench, fats: [{ fat: fat('coconut-oil'), mass: { g: 610 } }, ...others] });
const jug = dilutedLye({
  alkali: 'naoh',
  stock: { strength: stock },
  target: { strength: plan.lye.strength.likely, stock: plan.weigh.naoh },
});
const made = soapFromLye({
  fats,
  lye: [{ alkali: 'naoh', mass: plan.weigh.naoh, solution: { hydroxide: stock } }],
  water: plan.weigh.water,
});

const grams = ({ g }: Mass): string => `${g.toFixed(0)} g`;
const percent = ({ percent: value }: Fraction): string => `${value.toFixed(1)} %`;
const caustic = ({ percentNaoh }: AlkaliContent): string =>
  percentNaoh.isZero() ? 'none on paper' : `${percentNaoh.toFixed(2)} % NaOH`;

/** A label with figures in columns beside it. */
function row(label: string, ...cells: readonly string[]): string {
  return `  ${label.padEnd(38)}${cells.map((cell) => cell.padStart(15)).join('')}`;
}

function estimateRow<Q>(label: string, { low, likely, high }: Estimate<Q>, text: (quantity: Q) => string): string {
  return row(label, text(low), text(likely), text(high));
}

const HEADS = row('', 'lowest', 'likely', 'highest');

/** What lots and assays do to a plan: lowest, likely and highest figure of each quantity. */
function spread(of: LyePlan): readonly string[] {
  return [
    HEADS,
    estimateRow('superfat, of the alkali demand', of.superfat, percent),
    estimateRow('fat left unsaponified, of the fats', of.superfatByMass, percent),
    estimateRow('free caustic, of fats, lye and water', of.freeCausticAlkali, caustic),
    estimateRow('strength of the diluted lye', of.lye.strength, percent),
  ];
}

const NAMES = {
  soapSodium: 'sodium soap',
  glycerol: 'glycerol formed',
  water: 'water, charged and formed',
  freeFat: 'fat left free',
  freeAcid: 'fatty acid left free',
  freeNaoh: 'sodium hydroxide left free',
  unsaponifiable: 'unsaponifiable matter',
} as const;
const products = (Object.keys(NAMES) as (keyof typeof NAMES)[]).map((product) =>
  estimateRow(NAMES[product], made.products[product], grams),
);

// The plan's cautions, with those of diluting the stock behind the most urgent.
const planned = new Set(plan.cautions.map(({ code }) => code));
const diluting = jug.cautions.filter(({ code }) => !planned.has(code));
const cautions = [...plan.cautions.slice(0, 1), ...diluting, ...plan.cautions.slice(1)];
const cited = [...new Set([...freezing.basis, ...jug.basis, ...plan.basis, ...made.basis])];

const sheet = [
  'LYE PLAN: clear base, about 2.5 kg when finished (harbour workshop, an invented batch)',
  '',
  'Stock lye in the drum: hydrometer 104 degrees Twaddell, read to half a degree, at 18 °C',
  HEADS,
  estimateRow('NaOH, by mass', stock, percent),
  `  It throws crystals near ${freezing.freezingPoint.celsius.toFixed(0)} °C: then warm it, mix it, and measure it again.`,
  '',
  'Fats in the pot',
  ...plan.given.fats.map((charged) => row(charged.fat.name, grams(charged.mass))),
  '',
  'Weigh',
  row('stock lye', grams(plan.weigh.naoh)),
  row('water to dilute it', grams(plan.weigh.water)),
  row('together, the lye for the pot', grams(plan.lye.mass)),
  '  Target: 3 % superfat, lye of 33 %. Alkali is rounded down to the gram; what follows holds for the weights as rounded.',
  '',
  'What lots and the strength of the stock do to it, after complete reaction',
  ...spread(plan),
  '',
  'The same without the certificate: any lawful coconut oil (a superfat below zero is caustic in excess)',
  row('stock lye', grams(uncertified.weigh.naoh)),
  ...spread(uncertified),
  '',
  `What the reaction makes of ${grams(made.charge)} (the likely column adds up)`,
  HEADS,
  ...products,
  '',
  'Working in short (n: demand, A: hydroxide charged, m: mass, w: hydroxide by mass, s: superfat)',
  ...workingOf(plan).map(
    ({ figure, value, unit, formula }) =>
      `  ${figure.padEnd(66)}${value.toFixed(3).padStart(8)} ${unit.padEnd(13)} ${formula}`,
  ),
  '',
  'Assumed',
  ...plan.notes.map(({ text }) => `  - ${text}`),
  '',
  'Cautions, most urgent first',
  ...cautions.map(({ text }, at) => `  ${String(at + 1)}. ${text}`),
  '',
  'Figures from',
  ...sources(cited).map(({ title, edition }) => `  - ${title}; ${edition}`),
  '',
  ...potLines,
  '',
  ...testLines,
  '',
  ...auditLines,
];

process.stdout.write(`${sheet.join('\n')}\n`);
