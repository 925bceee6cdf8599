/**
 * The main job on real input, from a certificate and a hydrometer to poured and costed clear base, and the audit of a
 * leaflet, as a sheet to pin above the bench.
 *
 * The workshop by the harbour, its drums, readings, prices and certificate are invented; the published figures are not.
 * Run it with `npm run demo`.
 */
import { lyeFreezingPoint, sources, toJson } from 'laurate';
import { auditRecipe } from 'laurate/audit';
import { planBatch, type Batch } from 'laurate/recipe';
import { estimateRow, grams, HEADS, left, percent, row } from './columns.js';
import { auditLines } from './ferry-leaflet.js';
import { batch, coconut, recipe, stock } from './harbour-batch.js';
import { potLines, testBasis, testLines } from './harbour-test.js';

const freezing = lyeFreezingPoint({ alkali: 'naoh', strength: stock.likely });
const uncertified = planBatch(
  { ...recipe, fats: [{ fat: 'coconut-oil', mass: { g: 610 } }, ...recipe.fats.slice(1)] },
  { scaleStep: { g: 1 } },
);

/** What lots and assays do to a batch. */
const spread = (of: Batch): readonly string[] => [
  HEADS,
  estimateRow('superfat, of the alkali demand', of.superfat, percent),
  estimateRow('fat left unsaponified, of the fats', of.superfatByMass, percent),
  estimateRow('free caustic, of the finished base', of.freeCausticAlkali, left),
  estimateRow('strength of lye and water together', of.lye.strength, percent),
];

const { reaction, portions } = batch.heat;
const parted = portions?.portions ?? [];
const { figures, precedent, nearest } = batch.place;
const { composition, moulds, cost } = batch;
const money = ({ amount }: { readonly amount: { toFixed: (places: number) => string } }): string =>
  `${amount.toFixed(2)} ${cost?.currency ?? ''}`;

const planLines = [
  `PLAN: ${recipe.title ?? ''} (an invented batch), scaled by ${batch.scale.partsPerPart.toFixed(3)} to fill its moulds`,
  '',
  'Cautions, most urgent first',
  ...batch.cautions.map(({ text }, at) => `  ${String(at + 1)}. ${text}`),
  '',
  `Certificate of the coconut oil: saponification value ${coconut.saponificationValue.low.mgKohPerG.toFixed(1)} to ${coconut.saponificationValue.high.mgKohPerG.toFixed(1)} mg KOH/g`,
  'Stock lye in the drum: hydrometer 104 degrees Twaddell, read to half a degree, at 18 °C',
  HEADS,
  estimateRow('NaOH, by mass', stock, percent),
  `  It throws crystals near ${freezing.freezingPoint.celsius.toFixed(0)} °C: then warm it, mix it, and measure it again.`,
  '',
  'Weigh (alkali is rounded down to the gram; what follows holds for the weights as rounded)',
  ...batch.weigh.map(({ item, mass }) => row(item === 'naoh' ? 'stock lye' : item, grams(mass))),
  '',
  'What lots and the strength of the stock do to it, after complete reaction; target 3 % superfat',
  ...spread(batch),
  '',
  'The same without the certificate: any lawful coconut oil (a superfat below zero is caustic in excess)',
  ...spread(uncertified),
];

const heatLines = [
  'HEAT of the reaction: an estimate, no heat of a fat was found measured',
  HEADS,
  estimateRow('rise of the pot, all lye at once', reaction.rise, (rise) => `${rise.celsiusDegrees.toFixed(0)} degrees`),
  `  From ${reaction.given.start.pot.celsius.toString()} °C: ${String(parted.length)} portions of the lye and its water together, ${grams(parted.at(-1)?.mass ?? { g: batch.lye.mass.g })} to ${grams(parted[0]?.mass ?? { g: batch.lye.mass.g })} each, brought back to it between them, stay below ${portions?.given.ceiling.celsius.toString() ?? ''} °C.`,
  '  Order of work',
  ...batch.order.map(({ does, until }, at) => `  ${String(at + 1)}. ${does} ${until}`),
  '  What the log of the pot says',
  ...(batch.temperatures?.stages ?? []).map(
    ({ stage, highest, verdict, meaning, beyond: [passed] }) =>
      `  ${stage}: up to ${highest.celsius.toString()} °C, ${verdict}${passed?.time === undefined ? '' : `, ${passed.time.minutes.toFixed(0)} min beyond ${passed.limit.celsius.toString()} °C`}. ${meaning.text}`,
  ),
];

const clearLines = [
  'BASE as planned',
  HEADS,
  estimateRow('finished', composition.mass, grams),
  estimateRow('sodium soap', composition.components.soapSodium.share, percent),
  estimateRow('water', composition.components.water.share, percent),
  estimateRow('polyols', batch.ratios.shares.polyol, percent),
  estimateRow('clearing agents to one part of soap', batch.ratios.clearingAgentsPerSoap, ({ partsPerPart }) =>
    partsPerPart.toFixed(2),
  ),
  estimateRow('total fatty matter', batch.fattyMatter.totalFattyMatter, percent),
  '',
  'EVIDENCE, as charged: what is in print of clear bars. No verdict comes of so few.',
  row('', 'this base', 'clear, lowest', 'clear, highest'),
  row(
    `clearing agents to soap (${String(figures.clearingAgentsPerSoap.clear.stated.count)} bars)`,
    figures.clearingAgentsPerSoap.value.likely.partsPerPart.toFixed(2),
    figures.clearingAgentsPerSoap.clear.stated.low?.partsPerPart.toFixed(2) ?? '',
    figures.clearingAgentsPerSoap.clear.stated.high?.partsPerPart.toFixed(2) ?? '',
  ),
  row(
    `water (${String(figures.water.clear.stated.count)} bars)`,
    percent(figures.water.value.likely),
    ...[figures.water.clear.stated.low, figures.water.clear.stated.high].map((one) => (one ? percent(one) : '')),
  ),
  `  ${precedent.text}`,
  `  Nearest by these figures: ${nearest
    .slice(0, 3)
    .map(({ title, outcome, outcomeBasis }) => `${title} (${outcome}, ${outcomeBasis})`)
    .join('; ')}.`,
];

const pourLines = [
  `POUR at ${batch.volume.given.temperature.celsius.toString()} °C`,
  HEADS,
  estimateRow('volume', batch.volume.volume, ({ mL }) => `${mL.toFixed(0)} mL`),
  ...(moulds === undefined
    ? []
    : [
        estimateRow('one mould of 110 mL holds', moulds.each.mass, grams),
        `  ${moulds.filled.toString()} moulds are sure to be full; set out ${moulds.setOut.toString()}.`,
      ]),
  '',
  'COST of the ingredients (prices are invented)',
  ...(cost === undefined
    ? []
    : [
        ...cost.lines.map(({ item, cost: one }) => row(item === 'naoh' ? 'stock lye' : item, money(one))),
        row('the batch', money(cost.batch)),
        row('a kilogram of base', money(cost.perKilogram.likely)),
        ...(cost.perMould === undefined ? [] : [row('a mould', money(cost.perMould))]),
      ]),
];

const own = auditRecipe(toJson(batch.recipe));
const cited = [...new Set([...freezing.basis, ...batch.basis, ...testBasis])];

const sheet = [
  ...planLines,
  '',
  ...heatLines,
  '',
  ...clearLines,
  '',
  'Assumed',
  ...batch.notes.map(({ text }) => `  - ${text}`),
  '',
  ...potLines,
  '',
  ...testLines,
  '',
  ...pourLines,
  '',
  `AUDIT of this recipe as planned: ${own.verdict}`,
  '',
  ...auditLines,
  '',
  'Figures from',
  ...sources(cited).map(({ title, edition }) => `  - ${title}; ${edition}`),
];

process.stdout.write(`${sheet.join('\n')}\n`);
