import { Decimal } from '../../numbers/index.js';
import type { MixedSolvent, SolventId } from '../../composition/index.js';
import type { SourceId } from '../../sources/index.js';
import type { CheckValue } from '../checkValue.js';

/** Share in percent by mass, or a temperature, and the figure printed beside it. */
type Row = readonly [at: string, printed: string];

/** Half of the last digit as printed, noughts at the end counted. */
const halfDigit = (printed: string): Decimal =>
  new Decimal(5).times(new Decimal(10).pow(-(printed.split('.')[1]?.length ?? 0) - 1));
const dashed = (text: string): string => text.replaceAll('.', '-');

/** Glycerol with water at 20 °C, g/mL: the handbook whose other tables are used here. */
const GLYCEROL_CRC: readonly Row[] = [
  ['0.5', '0.9994'],
  ['2', '1.0028'],
  ['3', '1.0051'],
  ['4', '1.0074'],
  ['6', '1.0120'],
  ['7', '1.0144'],
  ['8', '1.0167'],
  ['10', '1.0215'],
  ['12', '1.0262'],
  ['14', '1.0311'],
  ['18', '1.0409'],
  ['20', '1.0459'],
  ['24', '1.0561'],
  ['32', '1.0770'],
  ['36', '1.0876'],
  ['40', '1.0984'],
  ['48', '1.1200'],
  ['52', '1.1308'],
  ['56', '1.1419'],
  ['64', '1.1643'],
  ['68', '1.1755'],
  ['72', '1.1866'],
  ['80', '1.2085'],
  ['84', '1.2192'],
  ['88', '1.2299'],
  ['96', '1.2508'],
  ['100', '1.2611'],
];

/** Glycerol with water, specific gravity 15/15; the column 20/20 beside it is read by the library, this one not. */
const GLYCEROL_LANGE_15: readonly Row[] = [
  ['10', '1.02415'],
  ['20', '1.04935'],
  ['30', '1.07560'],
  ['40', '1.10255'],
  ['50', '1.12985'],
  ['70', '1.18540'],
  ['80', '1.21290'],
  ['90', '1.23950'],
  ['100', '1.26557'],
];

/** Glycerol with water at 20 °C, g/mL, recalled. */
const GLYCEROL_BOSART_20: readonly Row[] = [
  ['0', '0.99823'],
  ['10', '1.0221'],
  ['20', '1.0469'],
  ['30', '1.0727'],
  ['40', '1.0993'],
  ['50', '1.1263'],
  ['70', '1.18125'],
  ['80', '1.2085'],
  ['90', '1.2351'],
  ['100', '1.26108'],
];

/** The same at 25 °C. */
const GLYCEROL_BOSART_25: readonly Row[] = [
  ['0', '0.99708'],
  ['10', '1.0207'],
  ['20', '1.04525'],
  ['30', '1.0707'],
  ['40', '1.0971'],
  ['50', '1.12375'],
  ['70', '1.1784'],
  ['80', '1.20545'],
  ['90', '1.232'],
  ['100', '1.25802'],
];

/** Glycerol with water at 20 °C, g/mL, evaluated; the library uses its differences from this column, not the column. */
const GLYCEROL_MELINDER_20: readonly Row[] = [
  ['10', '1.0220'],
  ['20', '1.0468'],
  ['30', '1.0724'],
  ['40', '1.0989'],
  ['50', '1.1261'],
];

/** Sucrose with water at 20 °C, g/mL: the rows that the library does not read. */
const SUCROSE: readonly Row[] = [
  ['0.5', '1.0002'],
  ['1', '1.0021'],
  ['2', '1.0060'],
  ['3', '1.0099'],
  ['4', '1.0139'],
  ['5', '1.0178'],
  ['6', '1.0218'],
  ['7', '1.0259'],
  ['8', '1.0299'],
  ['9', '1.0340'],
  ['11', '1.0423'],
  ['12', '1.0465'],
  ['13', '1.0507'],
  ['14', '1.0549'],
  ['15', '1.0592'],
  ['16', '1.0635'],
  ['17', '1.0678'],
  ['18', '1.0722'],
  ['19', '1.0766'],
  ['22', '1.0899'],
  ['24', '1.0990'],
  ['26', '1.1082'],
  ['28', '1.1175'],
  ['32', '1.1366'],
  ['34', '1.1464'],
  ['36', '1.1562'],
  ['38', '1.1663'],
  ['42', '1.1868'],
  ['44', '1.1972'],
  ['46', '1.2079'],
  ['48', '1.2186'],
];

/** Ethanol with water at 20 °C, g/mL. */
const ETHANOL_CRC: readonly Row[] = [
  ['5', '0.9893'],
  ['10', '0.9819'],
  ['20', '0.9687'],
  ['30', '0.9539'],
  ['40', '0.9352'],
  ['50', '0.9139'],
  ['60', '0.8911'],
  ['70', '0.8676'],
  ['80', '0.8436'],
  ['90', '0.8180'],
  ['92', '0.8125'],
  ['94', '0.8070'],
  ['96', '0.8013'],
  ['98', '0.7954'],
  ['100', '0.7893'],
];

/** Ethanol with water, kg/m³ at 15, 20, 25, 30 and 40 °C, evaluated from the constants that were read. */
const ETHANOL_OIML: readonly (readonly [percent: string, ...figures: string[]])[] = [
  ['0', '999.10', '998.20', '997.04', '995.65', '992.21'],
  ['5', '990.33', '989.38', '988.15', '986.68', '983.05'],
  ['10', '983.03', '981.85', '980.41', '978.73', '974.78'],
  ['15', '976.70', '975.13', '973.33', '971.32', '966.73'],
  ['20', '970.67', '968.61', '966.35', '963.91', '958.51'],
  ['25', '964.21', '961.63', '958.91', '956.02', '949.83'],
  ['30', '956.82', '953.78', '950.63', '947.37', '940.50'],
  ['35', '948.31', '944.92', '941.44', '937.87', '930.50'],
  ['40', '938.80', '935.15', '931.42', '927.64', '919.89'],
  ['45', '928.51', '924.69', '920.80', '916.86', '908.83'],
  ['50', '917.71', '913.77', '909.77', '905.71', '897.44'],
  ['55', '906.58', '902.55', '898.46', '894.31', '885.85'],
  ['60', '895.20', '891.10', '886.94', '882.72', '874.11'],
  ['65', '883.61', '879.45', '875.23', '870.96', '862.23'],
  ['70', '871.83', '867.61', '863.34', '859.02', '850.22'],
  ['75', '859.86', '855.60', '851.29', '846.93', '838.04'],
  ['80', '847.68', '843.39', '839.04', '834.65', '825.68'],
  ['85', '835.19', '830.88', '826.51', '822.10', '813.10'],
  ['90', '822.20', '817.88', '813.53', '809.13', '800.21'],
  ['95', '808.45', '804.14', '799.81', '795.47', '786.72'],
  ['100', '793.51', '789.24', '784.95', '780.65', '771.93'],
];

/** Percent by volume at 20 °C and by mass, evaluated likewise. */
const SPIRIT_OIML: readonly Row[] = [
  ['95', '92.41'],
  ['96', '93.84'],
  ['96.4', '94.42'],
  ['99.5', '99.18'],
  ['99.9', '99.83'],
];

/** Percent by volume at 60 °F and by mass. */
const SPIRIT_USP: readonly Row[] = [
  ['5', '4.00'],
  ['10', '8.05'],
  ['15', '12.14'],
  ['20', '16.27'],
  ['25', '20.44'],
  ['30', '24.67'],
];

/** Propylene glycol by volume, and specific gravity at 60 °F. */
const GLYCOL_LANGE: readonly Row[] = [
  ['5', '1.004'],
  ['10', '1.006'],
  ['15', '1.012'],
  ['20', '1.017'],
  ['25', '1.020'],
  ['30', '1.024'],
  ['35', '1.028'],
  ['40', '1.032'],
  ['45', '1.037'],
  ['50', '1.040'],
];

/** Water by temperature, g/mL, evaluated from the constants that were read. */
const WATER: readonly Row[] = [
  ['0', '0.99984'],
  ['4', '0.99997'],
  ['10', '0.99970'],
  ['15', '0.99910'],
  ['15.56', '0.99901'],
  ['20', '0.99820'],
  ['25', '0.99704'],
  ['30', '0.99565'],
  ['40', '0.99222'],
  ['50', '0.98804'],
  ['60', '0.98320'],
  ['70', '0.97777'],
  ['80', '0.97180'],
  ['90', '0.96532'],
  ['100', '0.95836'],
];

interface Mixture {
  readonly solvent: MixedSolvent;
  readonly name: string;
  readonly celsius: string;
  readonly source: SourceId;
  readonly where: string;
  readonly obtained: CheckValue['obtained'];
  /** What the tolerance holds besides half a last digit, with its cause. */
  readonly beside?: readonly [amount: string, cause: string];
  readonly unit?: 'specificGravity15_15' | 'kgPerM3';
}

/** The account of a tolerance: half a last digit, and what is named besides. */
function account(printed: string, beside: Mixture['beside']): { readonly tolerance: string; readonly why: string } {
  const digit = halfDigit(printed);
  if (beside === undefined) return { tolerance: digit.toFixed(), why: `${digit.toFixed()} half a last digit` };
  const [amount, cause] = beside;
  return {
    tolerance: digit.plus(amount).toFixed(),
    why: `${digit.toFixed()} half a last digit + ${amount} ${cause}`,
  };
}

function mixtures(rows: readonly Row[], mixture: Mixture): readonly CheckValue[] {
  const { solvent, name, celsius, source, where, obtained, beside, unit = 'gPerML' } = mixture;
  return rows.map(([percent, printed]) => ({
    id: `${name}-${solvent}-of-${dashed(percent)}-at-${dashed(celsius)}`,
    call: 'mixtureDensity',
    inputs: { solvent, share: { percent }, temperature: { celsius } },
    result: 'density',
    printed,
    expected: printed,
    unit,
    ...account(printed, beside),
    source,
    where,
    obtained,
  }));
}

const GLYCEROL_BETWEEN = ['0.0002', 'stated error between the rows of glycerol'] as const;
const SUCROSE_BETWEEN = ['0.0001', 'stated error between the rows of sucrose'] as const;

function glycerolChecks(): readonly CheckValue[] {
  const of = { solvent: 'glycerol', beside: GLYCEROL_BETWEEN } as const;
  const concentrative = {
    source: 'crc-102-2021',
    where: 'Concentrative Properties: glycerol',
    obtained: 'read',
  } as const;
  const bosart = { name: 'bosart', source: 'bosart-snoddy-1927', obtained: 'memory' } as const;
  return [
    ...mixtures(GLYCEROL_CRC, { ...of, ...concentrative, name: 'crc', celsius: '20' }),
    ...GLYCEROL_LANGE_15.flatMap((row) =>
      mixtures([row], {
        ...of,
        name: 'lange',
        celsius: '15',
        unit: 'specificGravity15_15',
        source: 'lange-15',
        where: 'Table 5.13: glycerol, specific gravity 15/15',
        obtained: 'read',
        beside: inAir(row),
      }),
    ),
    ...mixtures(GLYCEROL_BOSART_20, { ...of, ...bosart, celsius: '20', where: 'density at 20 °C' }),
    ...mixtures(GLYCEROL_BOSART_25, { ...of, ...bosart, celsius: '25', where: 'density at 25 °C' }),
    ...mixtures(GLYCEROL_MELINDER_20, {
      ...of,
      name: 'melinder',
      celsius: '20',
      source: 'melinder-2010',
      where: 'aqueous glycerol at 20 °C, evaluated',
      obtained: 'derived',
    }),
  ];
}

/** A gravity weighed in air is above the true one by air's share of what it exceeds one by. */
function inAir([, gravity]: Row): readonly [amount: string, cause: string] {
  const air = new Decimal(gravity).minus(1).times('0.0012').plus('0.0002').toDecimalPlaces(6, Decimal.ROUND_UP);
  return [air.toFixed(), 'weighing in air, and stated error between the rows of glycerol'];
}

function spiritChecks(): readonly CheckValue[] {
  const oiml = { solvent: 'ethanol', name: 'oiml', source: 'oiml-r-22', obtained: 'derived', unit: 'kgPerM3' } as const;
  const row = { call: 'spiritStrengthFromVolume', result: 'strength', unit: 'percent' } as const;
  return [
    ...mixtures(ETHANOL_CRC, {
      solvent: 'ethanol',
      name: 'crc',
      celsius: '20',
      source: 'crc-102-2021',
      where: 'Concentrative Properties: ethanol',
      obtained: 'read',
    }),
    ...['15', '20', '25', '30', '40'].flatMap((celsius, at) =>
      mixtures(
        ETHANOL_OIML.map(([percent, ...figures]): Row => [percent, figures[at] ?? '']),
        { ...oiml, celsius, where: `general formula at ${celsius} °C, evaluated from constants that were read` },
      ),
    ),
    ...SPIRIT_OIML.map(([percentByVolume, printed]): CheckValue => ({
      ...row,
      id: `oiml-spirit-of-${dashed(percentByVolume)}-by-volume`,
      inputs: { strength: { percentByVolume } },
      printed,
      expected: printed,
      ...account(printed, undefined),
      source: 'oiml-r-22',
      where: 'general formula, solved for the share by mass; constants read',
      obtained: 'derived',
    })),
    ...SPIRIT_USP.map(([percentByVolume, printed]): CheckValue => ({
      ...row,
      id: `usp-spirit-of-${percentByVolume}-by-volume`,
      inputs: { strength: { percentByVolume } },
      printed,
      expected: printed,
      ...account(printed, [
        new Decimal(printed).times('0.0048').toDecimalPlaces(4, Decimal.ROUND_UP).toFixed(),
        'volumes at 60 °F for 20 °C, between which ethanol swells by 0.48 percent',
      ]),
      source: 'usp-29-alcoholometric',
      where: 'volume percent at 15.56 °C and weight percent',
      obtained: 'read',
    })),
  ];
}

/** By volume: so many mL of glycol, of 1.0397 g/mL, in 100 mL of the mixture, a reading of the heading. */
function glycolChecks(): readonly CheckValue[] {
  return GLYCOL_LANGE.map(([volume, printed]) => ({
    id: `lange-propylene-glycol-of-${volume}-by-volume`,
    call: 'mixtureDensity',
    inputs: {
      solvent: 'propylene-glycol',
      share: { percent: new Decimal(volume).times('1.0397').div(new Decimal(printed).times('0.99901')).toFixed(4) },
      temperature: { fahrenheit: '60' },
    },
    result: 'density',
    printed,
    expected: printed,
    unit: 'specificGravity60F_60F',
    ...account(printed, undefined),
    source: 'lange-15',
    where: 'Table 5.13: propylene glycol by volume, specific gravity at 60 °F',
    obtained: 'read',
  }));
}

/** A pure liquid at a temperature. */
type Pure = readonly [
  id: string,
  solvent: SolventId,
  celsius: string,
  printed: string,
  source: SourceId,
  where: string,
];

const CONSTANTS = 'Physical Constants of Organic Compounds';
const PURE_READ: readonly Pure[] = [
  ['crc-glycerol-at-20', 'glycerol', '20', '1.2613', 'crc-organic-constants', CONSTANTS],
  [
    'mixture-paper-glycerol-at-25',
    'glycerol',
    '25',
    '1.2589',
    'glycerol-glycol-densities',
    'pure glycerol, not quite dry',
  ],
  [
    'mixture-paper-propylene-glycol-at-25',
    'propylene-glycol',
    '25',
    '1.0325',
    'glycerol-glycol-densities',
    'pure glycol',
  ],
  ['crc-2-propanol-at-25', '2-propanol', '25', '0.7809', 'crc-organic-constants', CONSTANTS],
];
const PURE_EVALUATED: readonly Pure[] = [
  ['vdi-ethanol-at-20', 'ethanol', '20', '0.7902', 'vdi-heat-atlas', 'ethanol'],
  ['vdi-2-propanol-at-20', '2-propanol', '20', '0.7864', 'vdi-heat-atlas', '2-propanol'],
  ['vdi-glycerol-at-20', 'glycerol', '20', '1.2612', 'vdi-heat-atlas', 'glycerol'],
  ['perry-propylene-glycol-at-20', 'propylene-glycol', '20', '1.0364', 'perry-8-densities', '1,2-propylene glycol'],
  ['perry-1-3-butanediol-at-20', '1-3-butanediol', '20', '1.0051', 'perry-8-densities', '1,3-butanediol'],
];

function pureChecks(): readonly CheckValue[] {
  const water = WATER.map(([celsius, printed]): Pure => [
    `kell-water-at-${dashed(celsius)}`,
    'water',
    celsius,
    printed,
    'kell-1975',
    'polynomial, evaluated',
  ]);
  const row =
    (obtained: CheckValue['obtained']) =>
    ([id, solvent, celsius, printed, source, where]: Pure): CheckValue => ({
      id,
      call: 'solventDensity',
      inputs: { solvent, temperature: { celsius } },
      result: 'density',
      printed,
      expected: printed,
      unit: 'gPerML',
      ...account(printed, undefined),
      source,
      where,
      obtained,
    });
  return [...PURE_READ.map(row('read')), ...PURE_EVALUATED.map(row('derived')), ...water.map(row('derived'))];
}

/** Densities of solvents and of their mixtures with water. */
export function solventDensityChecks(): readonly CheckValue[] {
  return [
    ...glycerolChecks(),
    ...mixtures(SUCROSE, {
      solvent: 'sucrose',
      name: 'crc',
      celsius: '20',
      source: 'crc-102-2021',
      where: 'Concentrative Properties: sucrose, rows between those that are read',
      obtained: 'read',
      beside: SUCROSE_BETWEEN,
    }),
    ...spiritChecks(),
    ...glycolChecks(),
    ...pureChecks(),
  ];
}
