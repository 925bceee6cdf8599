import type { CheckValue } from '../checkValue.js';

/** Freezing depressions of soda lye: strength, kelvins below 0 °C. */
const DEPRESSIONS: readonly (readonly [percent: string, depression: string])[] = [
  ['0.5', '0.43'],
  ['1', '0.86'],
  ['2', '1.74'],
  ['4', '3.59'],
  ['5', '4.57'],
  ['6', '5.60'],
  ['8', '7.87'],
  ['9', '9.12'],
  ['10', '10.47'],
  ['12', '13.42'],
  ['13', '15.04'],
  ['14', '16.76'],
];

const depressions = () =>
  DEPRESSIONS.map(([percent, depression]): CheckValue => ({
    id: `crc-freezing-of-naoh-${percent.replace('.', '-')}`,
    call: 'lyeFreezingPoint',
    inputs: { alkali: 'naoh', strength: { percent } },
    result: 'bounds',
    printed: depression,
    times: '-1',
    expectedInside: `-${depression}`,
    unit: 'celsius',
    why: 'A depression measured apart from the phase diagram that the library reads.',
    source: 'crc-102-2021',
    where: `Concentrative Properties of Aqueous Solutions, ${percent} % of NaOH: freezing point depression`,
    obtained: 'read',
  }));

/** Heat of dissolving one mole of NaOH in a second textbook: name of the dilution, grams of water, kJ given out. */
const HEATS: readonly (readonly [dilution: string, water: string, kJ: string, obtained: 'read' | 'memory'])[] = [
  ['3', '54.045', '28.87', 'memory'],
  ['4', '72.06', '34.43', 'read'],
  ['5', '90.075', '37.74', 'memory'],
  ['20', '360.3', '42.84', 'memory'],
  ['100', '1801.5', '42.34', 'memory'],
  ['no-end-of', '1e12', '42.89', 'memory'],
];

const heats = () =>
  HEATS.map(([dilution, water, kJ, obtained]): CheckValue => ({
    id: `felder-heat-of-naoh-in-${dilution}-water`,
    call: 'lyeTemperatureFromDissolving',
    inputs: { alkali: 'naoh', solid: { g: '39.997' }, water: { g: water }, start: { celsius: '25' } },
    result: 'heat',
    printed: `-${kJ}`,
    times: '-1',
    expected: kJ,
    unit: 'kJ',
    tolerance: '0.005',
    why: '0.005 half a last digit',
    source: 'felder-rousseau',
    where: `Table B.11, NaOH, ${dilution.replaceAll('-', ' ')} mol of water to one`,
    obtained,
  }));

/** A fat of a mean molar mass (a third of it is the equivalent), a lye's strength and gravity, and its printed litres. */
const LITRES: readonly (readonly [
  id: string,
  alkali: 'naoh' | 'koh',
  equivalent: string,
  percent: string,
  gravity: string,
  litres: string,
  kilograms: string,
  half: string,
  molarMass: string,
  tolerance: string,
])[] = [
  [
    'thomssen-lye-volume-670-naoh-11',
    'naoh',
    '223.333333333333333333333333333',
    '8.68',
    '1.1',
    '1875.83',
    '2063.413',
    '0.0055',
    '0.1548',
    '0.1603',
  ],
  [
    'thomssen-lye-volume-670-koh-11',
    'koh',
    '223.333333333333333333333333333',
    '12.0',
    '1.1',
    '1902.99',
    '2093.289',
    '0.0055',
    '0.1866',
    '0.1921',
  ],
  [
    'thomssen-lye-volume-670-koh-12',
    'koh',
    '223.333333333333333333333333333',
    '22.5',
    '1.2',
    '930.35',
    '1116.42',
    '0.006',
    '0.0995',
    '0.1055',
  ],
  [
    'thomssen-lye-volume-860-naoh-11',
    'naoh',
    '286.666666666666666666666666667',
    '8.68',
    '1.1',
    '1461.40',
    '1607.54',
    '0.0055',
    '0.1206',
    '0.1261',
  ],
  [
    'thomssen-lye-volume-860-naoh-12',
    'naoh',
    '286.666666666666666666666666667',
    '17.67',
    '1.2',
    '658.05',
    '789.66',
    '0.006',
    '0.0593',
    '0.0653',
  ],
  [
    'thomssen-lye-volume-860-koh-12',
    'koh',
    '286.666666666666666666666666667',
    '22.5',
    '1.2',
    '724.81',
    '869.772',
    '0.006',
    '0.0776',
    '0.0836',
  ],
];

const planned = (alkali: 'naoh' | 'koh', equivalent: string, percent: string, kg: string) => {
  const lye = { solution: { hydroxide: { percent } } };
  return {
    fats: [
      {
        fat: {
          certificate: {
            name: 'fat of a mean molar mass',
            kind: 'triglyceride',
            saponificationValue: { saponificationEquivalent: equivalent },
          },
        },
        mass: { kg },
      },
    ],
    alkali: alkali === 'naoh' ? { naoh: lye } : { koh: lye },
    target: { superfat: { percent: '0' } },
    dilution: 'as-is',
  } as const;
};

const litres = () =>
  LITRES.map(
    ([id, alkali, equivalent, percent, gravity, printed, expected, half, molarMass, tolerance]): CheckValue => ({
      id,
      call: 'planLye',
      inputs: planned(alkali, equivalent, percent, '1000'),
      result: `weigh.${alkali}`,
      printed,
      times: gravity,
      expected,
      unit: 'kg',
      tolerance,
      why: `${half} half a last digit + ${molarMass} ${alkali === 'naoh' ? 'M(NaOH) 40 for 39.997' : 'M(KOH) 56.1 for 56.105'}. Litres by the printed gravity are kilograms; the strength is that of the book's own table for this gravity.`,
      source: 'thomssen-1922',
      where: 'appendix, quantities of alkali for the saponification of 1000 kg of fat',
      obtained: 'read',
    }),
  );

const single = (): readonly CheckValue[] => [
  {
    id: 'thomssen-lye-volume-860-naoh-12-for-5000',
    call: 'planLye',
    inputs: planned('naoh', '286.666666666666666666666666667', '17.67', '5000'),
    result: 'weigh.naoh',
    printed: '3290.80',
    times: '1.2',
    expected: '3948.36',
    unit: 'kg',
    tolerance: '0.3012',
    why: '0.005 half a last digit of the figure held right + 0.2962 M(NaOH) 40 for 39.997. Litres by the printed gravity are kilograms.',
    source: 'thomssen-1922',
    where: 'appendix, quantities of alkali for the saponification of 5000 kg of fat',
    obtained: 'read',
    misprint: '3290.30 L fits the column: five times 658.06 L.',
  },
  {
    id: 'handbooks-freezing-of-commercial-lye',
    call: 'lyeFreezingPoint',
    inputs: { alkali: 'naoh', strength: { percent: '50' } },
    result: 'bounds',
    printed: '12',
    expectedInside: '12',
    unit: 'celsius',
    why: 'Lye of 50 % of commerce; often rounded up to 15 °C for storage.',
    source: 'handbooks-recalled',
    where: 'sodium hydroxide lye of 50 %',
    obtained: 'memory',
  },
  {
    id: 'parker-heat-of-naoh-in-no-end-of-water',
    call: 'lyeTemperatureFromDissolving',
    inputs: { alkali: 'naoh', solid: { g: '39.997' }, water: { g: '1e12' }, start: { celsius: '25' } },
    result: 'heat',
    printed: '-44.51',
    times: '-1',
    expected: '44.51',
    unit: 'kJ',
    tolerance: '0.005',
    why: '0.005 half a last digit',
    source: 'parker-1965',
    where: 'enthalpy of solution of electrolytes at infinite dilution, NaOH',
    obtained: 'read',
  },
  {
    id: 'exercise-water-to-dilute-30-per-cent',
    call: 'dilutedLye',
    inputs: {
      alkali: 'naoh',
      stock: { strength: { percent: '30' } },
      target: { strength: { percent: '10' }, stock: { g: '266' } },
    },
    result: 'water',
    printed: '400',
    expected: '532',
    unit: 'g',
    tolerance: '0',
    why: '0 exact: masses only',
    source: 'school-exercise-russia',
    where: '200 mL of lye of 30 %, 1.33 g/mL, to 10 %',
    obtained: 'read',
    misprint: 'The answer keeps 1.33 g/mL for the diluted lye; masses balance with 532 g of water.',
  },
  {
    id: 'exercise-stock-for-a-tenth-mole',
    call: 'dilutedLye',
    inputs: {
      alkali: 'naoh',
      stock: { strength: { percent: '50' } },
      target: { strength: { percent: '1' }, hydroxide: { mol: '0.1' } },
    },
    result: 'stock',
    printed: '8.0',
    expected: '8.0',
    unit: 'g',
    tolerance: '0.0506001',
    why: '0.05 half a last digit + 0.0006001 M(NaOH) 40 for 39.997',
    source: 'school-exercise-dilution',
    where: 'grams of lye of 50 % for one litre of 0.1 M solution',
    obtained: 'read',
  },
  {
    id: 'talbot-koh-of-a-normal-litre',
    call: 'naohFromKoh',
    inputs: { koh: { g: '56.1' }, kohAssay: { percent: '100' }, naohAssay: { percent: '100' } },
    result: 'hydroxide',
    printed: '1',
    expected: '1',
    unit: 'mol',
    tolerance: '0.00089127',
    why: '0.00089127 half a last digit of 56.1',
    source: 'talbot-1921',
    where: 'Problems, volumetric analysis, no. 1: 56.1 g of KOH to a litre of normal solution',
    obtained: 'read',
  },
  {
    id: 'assaying-gravity-of-25-twaddell',
    call: 'valueIn',
    inputs: { quantity: { twaddell: '25' }, unit: 'specificGravity60F_60F' },
    result: 'value',
    printed: '1.125',
    expected: '1.125',
    unit: 'specificGravity60F_60F',
    tolerance: '0.0005',
    why: '0.0005 half a last digit',
    source: 'assaying-textbook',
    where: 'hydrometers, 25 degrees Twaddell',
    obtained: 'read',
  },
];

/**
 * Freezing points, heats, dilution, and the lye that a fat takes by volume.
 */
export const lyeBenchChecks = (): readonly CheckValue[] => [...depressions(), ...heats(), ...litres(), ...single()];
