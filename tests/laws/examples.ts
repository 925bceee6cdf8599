/** Every public function with inputs it takes: what the laws across layers are tried on. */
import * as laurate from 'laurate';
import { publishedRecordOf, solventRecordOf, workingOf } from 'laurate/reports';
import { planBatch, readRecipe } from 'laurate/recipe';
import { throughJson } from './exact.js';

const {
  acidValueFromTitration,
  acidityFromTitration,
  alkaliAssayFromBariumChloride,
  alkaliAssayFromTwoIndicators,
  alkaliContentOf,
  alkaliDemandOf,
  batchVolumeOf,
  compositionFrom,
  correctFreeAlkali,
  correctSuperfat,
  esterValueFromTitrations,
  freeAlkaliBehindPh,
  freeCausticAlkaliFromTitration,
  judgeFreeAlkali,
  lyeStrengthFromTitration,
  saponificationValueFromTitration,
  soapSolutionPhFrom,
  soapStateFromTest,
  titrantFromStandard,
  totalFreeAlkaliFromTitration,
  fat,
  fatFromBlend,
  fatFromCertificate,
  fatFromProfile,
  fattyAcidOf,
  hydroxideFromOxideGrade,
  iodineValueFromProfile,
  kohFromNaoh,
  kohShareFromMassShare,
  dilutedLye,
  lyeDensity,
  lyeFreezingPoint,
  lyeStrengthFromDensity,
  lyeTemperatureFromDissolving,
  lyeStrengthFromMixing,
  mapEstimate,
  mixtureDensity,
  molarMassOf,
  naohFromKoh,
  placeAmongPublished,
  planLye,
  profileSummaryOf,
  publishedFormulas,
  publishedWindows,
  ratiosOf,
  readFat,
  roundToStep,
  saponificationValueFromProfile,
  saponificationValueOf,
  soapFromLye,
  solvent,
  solventDensity,
  sources,
  spiritStrengthFromVolume,
  splitToStep,
  superfatFromLye,
  totalFattyMatterOf,
  triglycerideOf,
  valueIn,
} = laurate;

type Run = (...args: never[]) => unknown;

/** A function and arguments it takes, each set by itself. */
export interface Example {
  readonly name: string;
  readonly run: (...args: readonly unknown[]) => unknown;
  readonly args: readonly (readonly unknown[])[];
}

const example = (name: string, run: Run, ...args: readonly (readonly unknown[])[]): Example => ({
  name,
  run: run as Example['run'],
  args,
});

const lot = fatFromCertificate({
  name: 'A lot',
  kind: 'triglyceride',
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: 1 },
});
const blend = fatFromBlend({
  name: 'Stock',
  parts: [
    { fat: lot, mass: { g: 700 } },
    { fat: fat('beeswax'), mass: { g: 300 } },
  ],
});
const profile = { 'C16:0': 10, 'C18:0': { low: 2, high: 4 }, 'C18:1': { low: { percent: 80 }, high: { percent: 90 } } };
const point = { 'C12:0': 46, 'C18:1': '49.5', 'C18:3-conj': { percent: 1 } };
const solid = { hydroxide: { low: { percent: 97 }, high: { percent: 99 } } };
const total = { totalAlkali: { percent: '95.0' }, carbonate: { low: { percent: 1 }, high: { percent: '3.0' } } };
const solution = { hydroxide: { percent: 50 } };
const charge = [
  { fat: lot, mass: { kg: 1 } },
  { fat: fat('stearic-acid-50'), mass: { lb: '0.25' } },
  { fat: blend, mass: { g: 10 } },
];
const stored = [
  { fat: throughJson(lot), mass: { g: '70.5' } },
  { fat: throughJson(blend), mass: { oz: 3 } },
];
const target = { superfat: { percent: 3 } };
// the least that takes every path: a composition is worked through again wherever it is read
const dry = fatFromCertificate({ name: 'Dry', kind: 'triglyceride', saponificationValue: { mgKohPerG: 200 } });
const made = soapFromLye({
  fats: [{ fat: dry, mass: { g: 500 } }],
  lye: [{ alkali: 'naoh', mass: { g: 140 }, solution }],
});
const { by, given } = made;
const pot = {
  soap: { by, given },
  additions: [
    { solvent: 'ethanol', mass: { kg: '0.2' }, assay: { percentByVolume: 96 } },
    { solvent: 'triethanolamine', mass: { g: 20 }, assay: { percent: 85 } },
    { name: 'Colour', mass: { g: 2 } },
  ],
  evaporated: { g: 30 },
} as const;
const { by: composedBy, given: composedOf } = compositionFrom(pot);
const composition = { by: composedBy, given: composedOf };
const titrant = { eqPerL: '0.1' };
const readings = [
  { sample: { g: 10 }, volume: { mL: '2.4' } },
  { sample: { g: '9.8' }, volume: { L: '0.00235' } },
];
const uncertainty = {
  balance: { mg: 1 },
  burette: { mL: '0.02' },
  titrant: { percent: '0.2' },
  sampling: { percent: 1 },
};
const caustic = freeCausticAlkaliFromTitration({ readings, titrant });
const acid = acidValueFromTitration({ sample: { g: 10 }, titrant, volume: { mL: '1.8' } });
const again = { freeCausticAlkali: { percentKoh: '0.13' }, standardUncertainty: { percentNa2o: '0.004' } };

/** Every public function but the class of errors, `isCalculationError` and `toJson`, which calculate nothing. */
export const examples: readonly Example[] = [
  example('sources', sources, [['iupac-2021', 'ghs-naoh']], [[]]),
  example('molarMassOf', molarMassOf, ['C12H24O2'], ['Na2CO3·10H2O']),
  example(
    'mapEstimate',
    (estimate: laurate.Estimate<laurate.MassInput>) => mapEstimate(estimate, (mass) => Object.freeze({ g: valueIn(mass, 'g') })),
    [{ low: { g: 1 }, likely: { kg: 2 }, high: { lb: 5 } }],
  ),
  example('roundToStep', roundToStep, [{ g: '157.68' }, { g: 1 }, 'down'], [{ oz: 3 }, { g: '0.1' }, 'nearest']),
  example('splitToStep', splitToStep, [[{ g: '33.4' }, { g: '33.4' }, { g: '33.2' }], { g: 1 }]),
  example('valueIn', valueIn, [{ lb: 2 }, 'g'], [{ gNaohPerG: '0.183' }, 'mgKohPerG'], [{ baume145: 36 }, 'gPerML']),
  example('fat', fat, ['coconut-oil'], ['Rosin, Spanish'], ['babassu oil'], ['beeswax']),
  example(
    'fatFromBlend',
    fatFromBlend,
    [{ name: 'Two', parts: [{ fat: lot, mass: { g: 1 } }, { fat: throughJson(blend), mass: { oz: 2 } }] }],
  ),
  example(
    'fatFromCertificate',
    fatFromCertificate,
    [{ name: 'Bare', kind: 'rosin', saponificationValue: { saponificationEquivalent: 320 } }],
    [
      {
        name: 'Full',
        like: throughJson(fat('castor-oil')),
        kind: 'triglyceride',
        saponificationValue: { low: { gNaohPerG: '0.126' }, high: { mgKohPerG: 184 } },
        acidValue: { low: { mgKohPerG: 0 }, high: { mgKohPerG: 2 } },
        iodineValue: { gI2Per100g: 86 },
        unsaponifiable: { percent: '0.5' },
        moisture: { ppm: 2000 },
      },
    ],
    [{ name: 'Drum', kind: 'wax-ester', saponificationValue: { gKohPerG: '0.092' }, uncertainty: { gNaohPerG: '0.001' } }],
  ),
  example(
    'fatFromProfile',
    fatFromProfile,
    [{ name: 'Ranges', kind: 'triglyceride', profile, unsaponifiable: { low: { percent: 0 }, high: { fraction: '0.01' } } }],
    [{ name: 'Point', kind: 'free-fatty-acid', profile: point }],
    [{ name: 'Of oil', kind: 'triglyceride', profile: { 'C16:0': 45, 'C18:1': 50 }, per: '100 g of oil' }],
  ),
  example('fattyAcidOf', fattyAcidOf, ['C18:1-OH'], ['C12:0']),
  example('iodineValueFromProfile', iodineValueFromProfile, [{ profile, kind: 'triglyceride' }], [{ profile: point, kind: 'wax-ester' }]),
  example('profileSummaryOf', profileSummaryOf, [profile], [point]),
  example('readFat', (value: unknown) => readFat(value), [throughJson(lot)], [throughJson(blend)], [throughJson(fat('oleic-acid'))]),
  example(
    'saponificationValueFromProfile',
    saponificationValueFromProfile,
    [{ profile, kind: 'triglyceride', unsaponifiable: { percent: 1 } }],
    [{ profile: point, kind: 'free-fatty-acid' }],
    [{ profile: { 'C16:0': 45, 'C18:1': 50 }, kind: 'triglyceride', per: '100 g of oil' }],
  ),
  example('saponificationValueOf', saponificationValueOf, [lot], [throughJson(blend)]),
  example('triglycerideOf', triglycerideOf, ['C18:1'], ['C4:0']),
  example('alkaliContentOf', alkaliContentOf, [{ alkali: 'naoh', solid: total }], [{ alkali: 'koh', solution }]),
  example('hydroxideFromOxideGrade', hydroxideFromOxideGrade, [{ alkali: 'naoh', grade: { percent: 76 } }]),
  example('kohFromNaoh', kohFromNaoh, [{ naoh: { oz: 3 }, naohAssay: { percent: 98 }, kohAssay: { fraction: '0.9' } }]),
  example('kohShareFromMassShare', kohShareFromMassShare, [{ massShare: { percent: 60 } }]),
  example(
    'dilutedLye',
    dilutedLye,
    [{ alkali: 'naoh', stock: { strength: { low: { percent: 48 }, high: { percent: 50 } } }, target: { strength: { percent: 33 }, lye: { g: 1000 } } }],
    [{ alkali: 'koh', stock: { strength: { percent: 50 } }, target: { strength: { percent: 30 }, hydroxide: { mol: 2 } } }],
    [{ alkali: 'koh', stock: { strength: { percent: 50 } }, target: { strength: { percent: 30 }, stock: { lb: 2 } } }],
  ),
  example(
    'lyeDensity',
    lyeDensity,
    [{ alkali: 'naoh', strength: { percent: 33 }, temperature: { celsius: 25 } }],
    [{ alkali: 'koh', strength: { percent: 50 }, temperature: { fahrenheit: 68 }, table: 'crc-102' }],
  ),
  example('lyeFreezingPoint', lyeFreezingPoint, [{ alkali: 'naoh', strength: { percent: 50 } }], [{ alkali: 'koh', strength: { percent: 45 } }]),
  example(
    'lyeStrengthFromDensity',
    lyeStrengthFromDensity,
    [{ alkali: 'naoh', density: { twaddell: 104 }, temperature: { celsius: 18 } }],
    [{ alkali: 'koh', density: { gPerML: '1.4' }, temperature: { kelvin: 293 }, table: 'recommended' }],
  ),
  example(
    'lyeTemperatureFromDissolving',
    lyeTemperatureFromDissolving,
    [{ alkali: 'naoh', solid: { g: 100 }, water: { g: 200 }, start: { celsius: 20 } }],
    [{ alkali: 'koh', solid: { g: 100 }, assay: { percent: 90 }, water: { g: 900 }, start: { celsius: 5 } }],
  ),
  example(
    'lyeStrengthFromMixing',
    lyeStrengthFromMixing,
    [{ alkali: 'naoh', mass: { g: 200 }, solution, water: { g: 100 } }],
    [{ alkali: 'koh', mass: { lb: 1 }, solid: total, water: { kg: 1 } }],
  ),
  example('naohFromKoh', naohFromKoh, [{ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } }]),
  example('alkaliDemandOf', alkaliDemandOf, [charge], [stored]),
  example(
    'planLye',
    planLye,
    [{ fats: charge, alkali: { naoh: { solution } }, target, dilution: 'as-is' }],
    [{ fats: stored, alkali: { koh: { solid: total } }, target, dilution: { waterPerAlkali: '1.5' }, scaleStep: { g: '0.1' } }],
    [
      {
        fats: charge,
        alkali: { naoh: { solid }, koh: { solution }, kohShare: { percent: 40 } },
        target: { superfat: { fraction: '0.02' } },
        dilution: { strength: { percent: 33 } },
        batchMass: { kg: 2 },
      },
    ],
    [{ fats: charge, alkali: { naoh: { solid } }, target, dilution: { waterPerFat: { percent: 38 } } }],
    [{ fats: charge, alkali: { naoh: { solid } }, target, dilution: { water: { lb: 1 } } }],
  ),
  example(
    'soapFromLye',
    soapFromLye,
    [{ fats: charge, lye: [{ alkali: 'naoh', mass: { g: 340 }, solution }] }],
    [{ fats: stored, lye: [{ alkali: 'naoh', mass: { g: 10 }, solid: total }, { alkali: 'koh', mass: { oz: 1 }, solid }], water: { g: 50 } }],
  ),
  example(
    'superfatFromLye',
    superfatFromLye,
    [{ fats: charge, lye: [{ alkali: 'naoh', mass: { g: 340 }, solution }] }],
    [
      {
        fats: stored,
        lye: [{ alkali: 'naoh', mass: { g: 10 }, solid: total }, { alkali: 'koh', mass: { oz: 1 }, solid }],
        water: { g: 50 },
        batchMass: { kg: '0.3' },
      },
    ],
  ),
  example(
    'compositionFrom',
    compositionFrom,
    [pot],
    [
      {
soap: throughJson({ by, given }) as laurate.MadeSoap,
        additions: [
          { solvent: 'ethanol', mass: { g: 20 }, assay: { percent: 90 } },
          { solvent: '2-propanol', mass: { g: 20 }, assay: { percent: 99 } },
          { solvent: 'sucrose', mass: { oz: 1 }, assay: { fraction: '0.997' } },
          { solvent: 'water', mass: { g: 20 } },
          { salt: 'Sodium chloride', mass: { g: 1 } },
        ],
        potMass: { g: 690 },
        spiritShareOfLoss: { low: { percent: 10 }, high: { percent: 50 } },
      },
    ],
  ),
  example('ratiosOf', ratiosOf, [composition]),
  example('totalFattyMatterOf', totalFattyMatterOf, [throughJson(composition)]),
  example('batchVolumeOf', batchVolumeOf, [{ composition, temperature: { fahrenheit: 68 } }]),
  example('placeAmongPublished', placeAmongPublished, [{ composition }], [{ composition: throughJson(composition), fats: stored, form: 'gel' }]),
  example('publishedFormulas', publishedFormulas, []),
  example('publishedWindows', publishedWindows, []),
  example('solvent', solvent, ['ethanol'], ['sorbitol'], ['peg-400'], ['water']),
  example('solventDensity', solventDensity, [{ solvent: 'glycerol', temperature: { celsius: 62 } }], [{ solvent: 'water', temperature: { celsius: 4 } }], [{ solvent: 'sucrose', temperature: { celsius: 17 } }]),
  example(
    'mixtureDensity',
    mixtureDensity,
    [{ solvent: 'glycerol', share: { percent: 85 }, temperature: { celsius: 25 } }],
    [{ solvent: 'propylene-glycol', share: { fraction: '0.35' }, temperature: { fahrenheit: 86 } }],
    [{ solvent: 'ethanol', share: { percent: 40 }, temperature: { celsius: -10 } }],
    [{ solvent: 'sucrose', share: { percent: 65 }, temperature: { celsius: 20 } }],
  ),
  example('spiritStrengthFromVolume', spiritStrengthFromVolume, [{ strength: { percentByVolume: 96 } }]),
  example('freeCausticAlkaliFromTitration', freeCausticAlkaliFromTitration, [{ sample: { g: 10 }, titrant, volume: { mL: '2.4' } }], [{ readings, titrant, blank: { mL: '0.1' }, method: 'barium-chloride', uncertainty }]),
  example(
    'totalFreeAlkaliFromTitration',
    totalFreeAlkaliFromTitration,
    [{ sample: { g: 10 }, titrant, blank: { mL: 30 }, volume: { mL: '22.6' } }],
    [{ readings: readings.slice(0, 1), titrant, acid: { titrant: { eqPerL: 1 }, volume: { mL: 3 } }, uncertainty }],
  ),
  example('acidValueFromTitration', acidValueFromTitration, [{ readings, titrant, blank: { mL: '0.05' } }]),
  example('acidityFromTitration', acidityFromTitration, [{ as: 'lauric', sample: { g: 10 }, titrant, volume: { mL: '1.8' } }]),
  example('saponificationValueFromTitration', saponificationValueFromTitration, [{ sample: { g: 2 }, titrant: { eqPerL: '0.5' }, blank: { mL: '24.6' }, volume: { mL: '6.35' }, uncertainty }]),
  example(
    'esterValueFromTitrations',
    esterValueFromTitrations,
    [{ saponification: { saponificationValue: { mgKohPerG: 196 }, standardUncertainty: { mgKohPerG: 1 } }, acid: throughJson(acid) }],
  ),
  example(
    'alkaliAssayFromTwoIndicators',
    alkaliAssayFromTwoIndicators,
    [{ alkali: 'naoh', sample: { g: '1.5' }, titrant: { eqPerL: 1 }, phenolphthalein: { mL: '36.6' }, methylOrange: { mL: '0.2' }, uncertainty }],
  ),
  example(
    'alkaliAssayFromBariumChloride',
    alkaliAssayFromBariumChloride,
    [{ alkali: 'koh', sample: { g: 2 }, titrant: { eqPerL: 1 }, bariumChloride: { mL: '31.1' }, methylOrange: { mL: '31.5' } }],
  ),
  example('lyeStrengthFromTitration', lyeStrengthFromTitration, [{ alkali: 'naoh', sample: { g: '2.5' }, titrant: { eqPerL: 1 }, volume: { mL: '31.2' } }]),
  example(
    'titrantFromStandard',
    titrantFromStandard,
    [{ standard: { sodiumCarbonate: { mg: 132 } }, volume: { mL: '24.85' } }],
    [{ standard: { potassiumHydrogenPhthalate: { g: '0.5' } }, volume: { mL: '24.4' }, uncertainty }],
    [{ standard: { solution: { titrant, volume: { mL: 25 } } }, volume: { mL: '24.9' } }],
  ),
  example(
    'judgeFreeAlkali',
    judgeFreeAlkali,
    [{ measured: throughJson(caustic), limit: 'soft-soap-usp' }],
    [{ measured: again, limit: { percentNa2o: '0.05' }, massLoss: { percent: 10 }, triethanolamine: true }],
  ),
  example(
    'correctFreeAlkali',
    correctFreeAlkali,
    [{ batch: { kg: 5 }, alkali: 'naoh', measured: caustic, target: { percentNaoh: '0.02' }, corrector: { acid: 'lactic', strength: { percent: 80 } } }],
    [
      {
        batch: { kg: 5 },
        alkali: { kohShare: { percent: 30 } },
        measured: throughJson(caustic),
        reactionComplete: { earlier: again, apart: { hours: '1.5' } },
        target: { percentNaoh: '0.02' },
        notBelow: { percentNaoh: '0.01' },
        corrector: { acid: 'citric-monohydrate', assay: { low: { percent: 99 }, high: { percent: 100 } } },
      },
    ],
    [
      {
        batch: { lb: 9 },
        alkali: 'koh',
        measured: caustic,
        reactionComplete: { earlier: again, apart: { minutes: 60 } },
        target: { percentNaoh: 0 },
        corrector: { fat: throughJson(fatFromBlend({ name: 'Two', parts: [{ fat: lot, mass: { g: 1 } }, { fat: fat('stearic-acid-50'), mass: { g: 1 } }] })) },
      },
    ],
  ),
  example(
    'correctSuperfat',
    correctSuperfat,
    [{ batch: { kg: 5 }, measured: acid, target: { mgKohPerG: '0.5' }, lye: { alkali: 'naoh', solution } }],
    [
      {
        batch: { kg: 5 },
        measured: throughJson(acid),
        reactionComplete: { earlier: acid, apart: { hours: 2 } },
        target: { mgKohPerG: 0 },
        lye: { alkali: 'koh', solid: total },
      },
    ],
    [
      {
        batch: { kg: 5 },
        measured: { saponificationValue: { gKohPerG: '0.006' }, standardUncertainty: { mgKohPerG: '0.2' } },
        reactionComplete: { earlier: { saponificationValue: { mgKohPerG: '6.1' }, standardUncertainty: { mgKohPerG: '0.2' } }, apart: { hours: 2 } },
        target: { mgKohPerG: 2 },
        notBelow: { mgKohPerG: 1 },
        lye: { alkali: 'naoh', solid },
      },
    ],
  ),
  example(
    'soapStateFromTest',
    soapStateFromTest,
    [{ fats: charge, lye: [{ alkali: 'naoh', mass: { g: 600 }, solution }], measured: caustic }],
    [{ fats: stored, lye: [{ alkali: 'naoh', mass: { g: 30 }, solid: total }], water: { g: 50 }, batchMass: { kg: '0.3' }, measured: throughJson(again) }],
  ),
  example('soapSolutionPhFrom', soapSolutionPhFrom, [{ soap: { g: 1 }, solution: { mL: 100 }, soapContent: { percent: 60 }, temperature: { fahrenheit: 77 } }]),
  example(
    'freeAlkaliBehindPh',
    freeAlkaliBehindPh,
    [{ reading: { pH: '9.8' }, error: { pH: '0.3' }, on: { soap: { g: 1 }, solution: { mL: 100 } }, temperature: { celsius: 20 } }],
    [{ reading: { pH: 9 }, error: { pH: 1 }, on: 'wet-bar', temperature: { celsius: 20 }, triethanolamine: true }],
  ),
  example('workingOf', workingOf, [throughJson(naohFromKoh({ koh: { g: 100 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } }))]),
  example('publishedRecordOf', publishedRecordOf, ['coconut-oil']),
  example('solventRecordOf', solventRecordOf, ['ethanol'], ['1-3-butanediol']),
  example('readRecipe', readRecipe, [
    {
      version: 1,
      title: 'A pot',
      fats: [{ fat: 'coconut-oil', mass: { g: '900' }, claimed: { saponificationValue: { gNaohPerG: '0.183' } } }, ...stored],
      lye: [{ alkali: 'naoh', mass: { g: '322.7' }, solution }, { alkali: 'koh', mass: { oz: 1 }, solid: total }],
      additions: [{ solvent: 'ethanol', mass: { g: '250' }, assay: { percentByVolume: 96 } }, { name: 'colour', volume: { mL: 2 } }],
      target,
      claimed: { superfat: { percent: '4' }, ph: '9' },
      temperatures: [{ stage: 'lye', time: { minutes: 20 }, temperature: { celsius: 64 } }],
    },
    { fats: { 'drum 7': stored[0]?.fat } },
  ]),
  example(
    'planBatch',
    planBatch,
    [
      {
        version: 1,
        fats: [{ fat: 'drum 7', mass: { g: '900' } }, ...stored],
        lye: [{ alkali: 'naoh', solution }],
        additions: [{ solvent: 'ethanol', mass: { g: '250' }, assay: { percentByVolume: 96 } }, { solvent: 'water', mass: { g: 20 } }, { name: 'colour', mass: { oz: 2 } }],
        target,
        temperatures: [{ stage: 'pouring', time: { minutes: 90 }, temperature: { celsius: 64 } }],
      },
      {
        fats: { 'drum 7': stored[0]?.fat },
        scaleTo: { batchMass: { kg: 4 } },
        scaleStep: { g: 1 },
        evaporated: { g: 30 },
        spiritShareOfLoss: { low: { percent: 40 }, high: { percent: 90 } },
        moulds: { volume: { mL: 90 }, count: 40 },
        pourAt: { fahrenheit: 140 },
      },
    ],
    [{ version: 1, fats: stored, lye: [{ alkali: 'naoh', mass: { g: '300' }, solution }, { alkali: 'koh', mass: { g: 30 }, solid: total }], water: { g: 100 } }],
  ),
]; // prettier-ignore

/** Results of all examples, each under the name of its function. */
export const results: readonly (readonly [name: string, result: unknown])[] = examples.flatMap(({ name, run, args }) =>
  args.map((set) => [name, run(...set)] as const),
);

/** Whether a value is a decimal number of the library. */
export const isDecimal = (value: object): boolean =>
  'toSignificantDigits' in value && typeof value.toSignificantDigits === 'function';

/** Every object in a value, lists included and decimals left whole, with its path. */
export function objectsIn(value: unknown, path = ''): (readonly [path: string, object: object])[] {
  if (typeof value !== 'object' || value === null || isDecimal(value)) return [];
  return [[path, value], ...Object.entries(value).flatMap(([key, inner]) => objectsIn(inner, `${path}.${key}`))];
}
