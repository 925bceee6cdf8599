/**
 * The main job on real input: the lye for a pot of clear soap base, as a sheet to pin above the bench.
 *
 * The workshop by the harbour, its drum and its certificate are invented; the published figures are not.
 * Run it with `npm run demo`.
 */
import {
  fat,
  fatFromCertificate,
  planLye,
  sources,
  type AlkaliContent,
  type Estimate,
  type Fraction,
  type LyePlan,
  type Mass,
} from 'laurate';
import { workingOf } from 'laurate/reports';

// A lot of coconut oil whose supplier certifies it; the other fats stand for any lawful lot of their kind.
const coconut = fatFromCertificate({
  name: 'Coconut oil, drum 7',
  like: fat('coconut-oil'),
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: '1.0' },
  acidValue: { mgKohPerG: '0.2' },
});
const others = [
  { fat: fat('stearic-acid-50'), mass: { g: 230 } },
  { fat: fat('castor-oil'), mass: { g: 60 } },
];
// The drum says 50 %; a drum that has stood open is rarely better known than this.
const bench = {
  alkali: { naoh: { solution: { hydroxide: { low: { percent: '49.5' }, high: { percent: '50.5' } } } } },
  target: { superfat: { percent: 3 } },
  dilution: { strength: { percent: 33 } },
  scaleStep: { g: 1 },
} as const;

const plan = planLye({ ...bench, fats: [{ fat: coconut, mass: { g: 610 } }, ...others] });
const uncertified = planLye({ ...bench, fats: [{ fat: fat('coconut-oil'), mass: { g: 610 } }, ...others] });

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

/** What lots and assays do to a plan: lowest, likely and highest figure of each quantity. */
function spread(of: LyePlan): readonly string[] {
  return [
    row('', 'lowest', 'likely', 'highest'),
    estimateRow('superfat, of the alkali demand', of.superfat, percent),
    estimateRow('fat left unsaponified, of the fats', of.superfatByMass, percent),
    estimateRow('free caustic, of fats, lye and water', of.freeCausticAlkali, caustic),
    estimateRow('strength of the diluted lye', of.lye.strength, percent),
  ];
}

const sheet = [
  'LYE PLAN: clear base, about 2.5 kg when finished (harbour workshop, an invented batch)',
  '',
  'Fats in the pot',
  ...plan.given.fats.map((charged) => row(charged.fat.name, grams(charged.mass))),
  '',
  'Weigh',
  row('stock lye, NaOH 49.5 to 50.5 %', grams(plan.weigh.naoh)),
  row('water, to dilute it', grams(plan.weigh.water)),
  row('together, the lye for the pot', grams(plan.lye.mass)),
  `  Target: ${percent(plan.given.target.superfat)} superfat. Alkali is rounded down to the gram; what follows holds for the weights as rounded.`,
  '',
  'What lots and the strength of the stock do to it, after complete reaction',
  ...spread(plan),
  '',
  'The same without the certificate: any lawful coconut oil (a superfat below zero is caustic in excess)',
  row('stock lye', grams(uncertified.weigh.naoh)),
  ...spread(uncertified),
  '',
  'Working in short (n: demand, A: hydroxide charged, m: mass, w: hydroxide by mass, s: superfat)',
  ...workingOf(plan).map(
    ({ figure, value, unit, formula }) =>
      `  ${figure.padEnd(56)}${value.toFixed(3).padStart(8)} ${unit.padEnd(13)} ${formula}`,
  ),
  '',
  'Assumed',
  ...plan.notes.map(({ text }) => `  - ${text}`),
  '',
  'Cautions, most urgent first',
  ...plan.cautions.map(({ text }, at) => `  ${String(at + 1)}. ${text}`),
  '',
  'Figures from',
  ...sources(plan.basis).map(({ title, edition }) => `  - ${title}; ${edition}`),
];

process.stdout.write(`${sheet.join('\n')}\n`);
