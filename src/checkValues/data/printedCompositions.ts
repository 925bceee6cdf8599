import { Decimal } from '../../numbers/index.js';
import type { FattyAcid } from '../../chemistry/index.js';
import type { AdditionInput } from '../../composition/index.js';
import type { FatKind } from '../../fats/index.js';
import type { LyeChargeInput } from '../../lye/index.js';
import type { MassInput } from '../../quantities/index.js';
import type { SourceId } from '../../sources/index.js';
import type { CallInputs, CheckCharge } from '../calls.js';
import type { CheckValue } from '../checkValue.js';

/** A figure of the finished soap, percent of the whole charge with nothing evaporated. */
type Figure =
  | 'anhydrousSoap'
  | 'water'
  | 'ethanol'
  | 'glycerol'
  | 'sucrose'
  | 'sorbitol'
  | 'propyleneGlycol'
  | 'polyethyleneGlycol'
  | 'salt'
  | 'freeFat'
  | 'freeFattyAcid'
  | 'freeAlkali'
  | 'other';

/** A printed charge, and what others worked out that it comes to. */
interface PrintedComposition {
  readonly id: string;
  readonly source: SourceId;
  readonly where: string;
  readonly fats: readonly CheckCharge[];
  readonly lye: readonly LyeChargeInput[];
  readonly water?: MassInput;
  readonly additions: readonly AdditionInput[];
  readonly finished: Readonly<Partial<Record<Figure, string>>>;
  readonly ratios: Readonly<Record<'clearingAgentsPerSoap' | 'waterPerSoap' | 'polyolPerWater', string>>;
}

function fat(name: string, kind: FatKind, mgKohPerG: string, mass: MassInput): CheckCharge {
  return { fat: { certificate: { name, kind, saponificationValue: { mgKohPerG } } }, mass };
}

/** An acid named in print, by its own molar mass. */
function acid(name: string, id: FattyAcid, mass: MassInput): CheckCharge {
  return { fat: { profile: { name, kind: 'free-fatty-acid', profile: { [id]: 100 } } }, mass };
}

/*
 * Charges as printed. Saponification values are the middles of the table of 1922 (palm kernel, almond and linseed oil,
 * stearic acid and rosin recalled); strengths of lye are those of the tables of the same books. Alcohol without a strength
 * is taken as 95 % by volume, 92.4 % by mass; spirit of the German pharmacopoeia as 86 %, rectified spirit as 84 %.
 */
const printedCharges = (): readonly PrintedComposition[] => [
  {
    id: 'thomssen-cold-typical',
    source: 'thomssen-1922',
    where: 'pp. 84-86, Cold made transparent soap, typical charge',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '193.5' }),
      fat('coconut oil', 'triglyceride', '251.5', { lb: '169.5' }),
      fat('castor oil', 'triglyceride', '182', { lb: '89.5' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '256' }, solution: { hydroxide: { percent: '29.93' } } }],
    water: { lb: '80' },
    additions: [
      { salt: 'sodium carbonate', mass: { lb: '7.75' } },
      { solvent: 'sucrose', mass: { lb: '198' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { lb: '126' }, assay: { percent: '92.4' } },
    ],
    finished: {
      anhydrousSoap: '41.84',
      water: '24.01',
      ethanol: '10.39',
      glycerol: '4.73',
      sucrose: '17.67',
      salt: '0.69',
      freeAlkali: '0.67',
    },
    ratios: { clearingAgentsPerSoap: '0.784', waterPerSoap: '0.574', polyolPerWater: '0.197' },
  },
  {
    id: 'thomssen-cold-i',
    source: 'thomssen-1922',
    where: 'pp. 86-87, Cold made transparent soap, I',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '134' }),
      fat('coconut oil', 'triglyceride', '251.5', { lb: '88' }),
      fat('castor oil', 'triglyceride', '182', { lb: '20' }),
      fat('rosin', 'rosin', '165', { lb: '7' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '135' }, solution: { hydroxide: { percent: '32.47' } } }],
    water: { lb: '32' },
    additions: [
      { solvent: 'sucrose', mass: { lb: '64' }, assay: { percent: '100' } },
      { solvent: 'glycerol', mass: { lb: '34' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { kg: '49.1193504' }, assay: { percent: '92.4' } },
    ],
    finished: {
      anhydrousSoap: '41.49',
      water: '21.17',
      ethanol: '16.08',
      glycerol: '10.04',
      sucrose: '10.28',
      freeAlkali: '0.94',
    },
    ratios: { clearingAgentsPerSoap: '0.877', waterPerSoap: '0.510', polyolPerWater: '0.474' },
  },
  {
    id: 'thomssen-cold-ii',
    source: 'thomssen-1922',
    where: 'pp. 86-87, Cold made transparent soap, II',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '211' }),
      fat('coconut oil', 'triglyceride', '251.5', { lb: '185' }),
      fat('castor oil', 'triglyceride', '182', { lb: '97.5' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '279' }, solution: { hydroxide: { percent: '32.47' } } }],
    water: { lb: '106' },
    additions: [
      { salt: 'sodium carbonate', mass: { lb: '8.5' } },
      { solvent: 'sucrose', mass: { lb: '216' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { lb: '137' }, assay: { percent: '92.4' } },
    ],
    finished: {
      anhydrousSoap: '41.20',
      water: '24.58',
      ethanol: '10.21',
      glycerol: '4.67',
      sucrose: '17.42',
      salt: '0.69',
      freeAlkali: '1.23',
    },
    ratios: { clearingAgentsPerSoap: '0.784', waterPerSoap: '0.597', polyolPerWater: '0.190' },
  },
  {
    id: 'thomssen-cold-iv',
    source: 'thomssen-1922',
    where: 'pp. 86-87, Cold made transparent soap, IV',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '100' }),
      fat('coconut oil', 'triglyceride', '251.5', { lb: '100' }),
      fat('castor oil', 'triglyceride', '182', { lb: '60' }),
      fat('rosin', 'rosin', '165', { lb: '20' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '164' }, solution: { hydroxide: { percent: '29.93' } } }],
    water: { lb: '50' },
    additions: [
      { solvent: 'sucrose', mass: { lb: '40' }, assay: { percent: '100' } },
      { solvent: 'glycerol', mass: { lb: '20' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { kg: '24.5596752' }, assay: { percent: '92.4' } },
    ],
    finished: {
      anhydrousSoap: '47.77',
      water: '27.97',
      ethanol: '8.23',
      glycerol: '8.30',
      sucrose: '6.58',
      freeAlkali: '1.15',
    },
    ratios: { clearingAgentsPerSoap: '0.484', waterPerSoap: '0.586', polyolPerWater: '0.297' },
  },
  {
    id: 'thomssen-cold-v',
    source: 'thomssen-1922',
    where: 'pp. 86-87, Cold made transparent soap, V',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '174' }),
      fat('coconut oil', 'triglyceride', '251.5', { lb: '114' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '170' }, solution: { hydroxide: { percent: '32.47' } } }],
    water: { lb: '72' },
    additions: [
      { solvent: 'sucrose', mass: { lb: '80' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { kg: '49.1193504' }, assay: { percent: '92.4' } },
    ],
    finished: {
      anhydrousSoap: '41.54',
      water: '27.15',
      ethanol: '13.93',
      glycerol: '4.79',
      sucrose: '11.14',
      freeAlkali: '1.45',
    },
    ratios: { clearingAgentsPerSoap: '0.719', waterPerSoap: '0.654', polyolPerWater: '0.176' },
  },
  {
    id: 'formulas-1914-rose-glycerine',
    source: 'formulas-1914',
    where: 'p. 652, Rose-glycerine soap, I',
    fats: [
      fat('coconut oil', 'triglyceride', '251.5', { g: '70000' }),
      fat('tallow', 'triglyceride', '196.5', { g: '40000' }),
      fat('castor oil', 'triglyceride', '182', { g: '30000' }),
    ],
    lye: [{ alkali: 'naoh', mass: { g: '79000' }, solution: { hydroxide: { percent: '32.47' } } }],
    water: { g: '60000' },
    additions: [
      { solvent: 'sucrose', mass: { g: '54000' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { g: '40000' }, assay: { percent: '92.4' } },
      { name: 'Geranium oil (African)', mass: { g: '250' } },
      { name: 'Lemon oil', mass: { g: '200' } },
      { name: 'Palmarosa oil', mass: { g: '1200' } },
      { name: 'Bergamot oil', mass: { g: '80' } },
    ],
    finished: {
      anhydrousSoap: '38.73',
      water: '31.06',
      ethanol: '9.86',
      glycerol: '4.52',
      sucrose: '14.41',
      freeAlkali: '0.96',
      other: '0.46',
    },
    ratios: { clearingAgentsPerSoap: '0.743', waterPerSoap: '0.802', polyolPerWater: '0.146' },
  },
  {
    id: 'formulas-1914-sunflower-glycerine',
    source: 'formulas-1914',
    where: 'p. 653, Sunflower-glycerine soap, III',
    fats: [
      fat('coconut oil', 'triglyceride', '251.5', { g: '70000' }),
      fat('tallow', 'triglyceride', '196.5', { g: '50000' }),
      fat('castor oil', 'triglyceride', '182', { g: '23000' }),
    ],
    lye: [{ alkali: 'naoh', mass: { g: '71000' }, solution: { hydroxide: { percent: '33.69' } } }],
    water: { g: '30000' },
    additions: [
      { solvent: 'sucrose', mass: { g: '40000' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { g: '40000' }, assay: { percent: '92.4' } },
      { name: 'Brown, No. 55', mass: { g: '250' } },
      { name: 'Geranium oil', mass: { g: '720' } },
      { name: 'Bergamot oil', mass: { g: '300' } },
      { name: 'Cedar-wood oil', mass: { g: '120' } },
      { name: 'Palmarosa oil', mass: { g: '400' } },
      { name: 'Vanillin', mass: { g: '10' } },
      { name: 'Tonka tincture', mass: { g: '400' } },
    ],
    finished: {
      anhydrousSoap: '45.46',
      water: '24.56',
      ethanol: '11.33',
      glycerol: '5.30',
      sucrose: '12.26',
      freeAlkali: '0.42',
      other: '0.67',
    },
    ratios: { clearingAgentsPerSoap: '0.636', waterPerSoap: '0.540', polyolPerWater: '0.216' },
  },
  {
    id: 'mixed-acids-patent',
    source: 'jp-5774951',
    where: 'par. 0042-0045, Example 1 (soap composition 1)',
    fats: [fat('mixed fatty acids', 'free-fatty-acid', '228.37', { kg: '100' })],
    lye: [{ alkali: 'naoh', mass: { kg: '48.2' }, solution: { hydroxide: { percent: '34.0248962656' } } }],
    water: { kg: '10' },
    additions: [
      { solvent: 'sucrose', mass: { kg: '25' }, assay: { percent: '100' } },
      { solvent: 'sorbitol', mass: { kg: '10' }, assay: { percent: '100' } },
      { name: 'trisodium hydroxyethylethylenediamine triacetate solution', mass: { kg: '0.5' } },
      { name: 'glucosylglycerol', mass: { kg: '10' } },
    ],
    finished: {
      anhydrousSoap: '53.49',
      water: '24.12',
      sorbitol: '4.91',
      sucrose: '12.27',
      freeAlkali: '0.06',
      other: '5.15',
    },
    ratios: { clearingAgentsPerSoap: '0.321', waterPerSoap: '0.451', polyolPerWater: '0.204' },
  },
  {
    id: 'thomssen-liquid-i',
    source: 'thomssen-1922',
    where: 'pp. 94-95, Liquid soap, I',
    fats: [fat('coconut oil', 'triglyceride', '251.5', { lb: '130' })],
    lye: [{ alkali: 'koh', mass: { lb: '135' }, solution: { hydroxide: { percent: '26.1' } } }],
    water: { lb: '267' },
    additions: [
      { solvent: 'sucrose', mass: { lb: '72' }, assay: { percent: '100' } },
      { salt: 'borax', mass: { lb: '2' } },
    ],
    finished: {
      anhydrousSoap: '23.90',
      water: '60.52',
      glycerol: '2.95',
      sucrose: '11.88',
      salt: '0.33',
      freeAlkali: '0.42',
    },
    ratios: { clearingAgentsPerSoap: '0.621', waterPerSoap: '2.532', polyolPerWater: '0.049' },
  },
  {
    id: 'thomssen-liquid-iii',
    source: 'thomssen-1922',
    where: 'pp. 94-95, Liquid soap, III',
    fats: [fat('coconut oil', 'triglyceride', '251.5', { lb: '100' })],
    lye: [{ alkali: 'koh', mass: { lb: '102' }, solution: { hydroxide: { percent: '26.1' } } }],
    water: { lb: '833' },
    additions: [
      { solvent: 'glycerol', mass: { lb: '100' }, assay: { percent: '100' } },
      { solvent: 'sucrose', mass: { lb: '70' }, assay: { percent: '100' } },
    ],
    finished: { anhydrousSoap: '9.24', water: '75.39', glycerol: '9.44', sucrose: '5.81', freeAlkali: '0.12' },
    ratios: { clearingAgentsPerSoap: '1.650', waterPerSoap: '8.159', polyolPerWater: '0.125' },
  },
  {
    id: 'thomssen-control-cold-coconut',
    source: 'thomssen-1922',
    where: 'pp. 43-44, Cold made cocoanut oil soap',
    fats: [fat('coconut oil', 'triglyceride', '251.5', { g: '846' })],
    lye: [{ alkali: 'naoh', mass: { g: '470' }, solution: { hydroxide: { percent: '28.83' } } }],
    water: { g: '24' },
    additions: [],
    finished: { anhydrousSoap: '58.76', water: '26.75', glycerol: '7.76', freeFat: '6.73' },
    ratios: { clearingAgentsPerSoap: '0.132', waterPerSoap: '0.455', polyolPerWater: '0.290' },
  },
  {
    id: 'thomssen-control-castile-i',
    source: 'thomssen-1922',
    where: 'pp. 79-81, Cold made castile soap, I',
    fats: [
      fat('olive oil', 'triglyceride', '193.5', { g: '2030' }),
      fat('palm kernel oil', 'triglyceride', '247', { g: '674' }),
    ],
    lye: [{ alkali: 'naoh', mass: { g: '1506' }, solution: { hydroxide: { percent: '28.83' } } }],
    additions: [],
    finished: { anhydrousSoap: '66.43', water: '25.46', glycerol: '7.27', freeAlkali: '0.84' },
    ratios: { clearingAgentsPerSoap: '0.109', waterPerSoap: '0.383', polyolPerWater: '0.286' },
  },
  {
    id: 'thomssen-control-shaving-i',
    source: 'thomssen-1922',
    where: 'pp. 87-89, Shaving stick, I',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '360' }),
      fat('stearic acid', 'free-fatty-acid', '205', { lb: '40' }),
    ],
    lye: [
      { alkali: 'naoh', mass: { lb: '147' }, solution: { hydroxide: { percent: '36.25' } } },
      { alkali: 'koh', mass: { lb: '87' }, solution: { hydroxide: { percent: '31.8' } } },
    ],
    water: { lb: '32' },
    additions: [{ name: 'Gum tragacanth', mass: { lb: '1' } }],
    finished: { anhydrousSoap: '63.13', water: '28.14', glycerol: '5.80', freeAlkali: '2.78', other: '0.15' },
    ratios: { clearingAgentsPerSoap: '0.092', waterPerSoap: '0.446', polyolPerWater: '0.206' },
  },
  {
    id: 'thomssen-control-shaving-iii',
    source: 'thomssen-1922',
    where: 'pp. 87-89, Shaving stick, III',
    fats: [
      fat('tallow', 'triglyceride', '196.5', { lb: '400' }),
      fat('coconut oil', 'triglyceride', '251.5', { lb: '176' }),
      fat('stearic acid', 'free-fatty-acid', '205', { lb: '415' }),
    ],
    lye: [
      { alkali: 'naoh', mass: { lb: '182' }, solution: { hydroxide: { percent: '34.96' } } },
      { alkali: 'koh', mass: { lb: '108' }, solution: { hydroxide: { percent: '35.9' } } },
    ],
    additions: [],
    finished: { anhydrousSoap: '49.55', water: '14.77', glycerol: '5.25', freeFattyAcid: '30.43' },
    ratios: { clearingAgentsPerSoap: '0.106', waterPerSoap: '0.298', polyolPerWater: '0.355' },
  },
  {
    id: 'thomssen-control-shaving-cream-i',
    source: 'thomssen-1922',
    where: 'pp. 90-93, Shaving cream, I',
    fats: [
      fat('coconut oil', 'triglyceride', '251.5', { lb: '26' }),
      fat('stearic acid', 'free-fatty-acid', '205', { lb: '165' }),
    ],
    lye: [{ alkali: 'koh', mass: { lb: '69' }, solution: { hydroxide: { percent: '49.4' } } }],
    water: { lb: '38' },
    additions: [{ solvent: 'glycerol', mass: { lb: '76' }, assay: { percent: '100' } }],
    finished: { anhydrousSoap: '48.67', water: '21.86', glycerol: '21.28', freeFattyAcid: '8.19' },
    ratios: { clearingAgentsPerSoap: '0.437', waterPerSoap: '0.449', polyolPerWater: '0.973' },
  },
  {
    id: 'thomssen-control-shaving-cream-iii',
    source: 'thomssen-1922',
    where: 'pp. 90-93, Shaving cream, III',
    fats: [
      fat('coconut oil', 'triglyceride', '251.5', { lb: '18' }),
      fat('stearic acid', 'free-fatty-acid', '205', { lb: '73' }),
    ],
    lye: [{ alkali: 'koh', mass: { lb: '54' }, solution: { hydroxide: { percent: '36.9' } } }],
    water: { lb: '40' },
    additions: [{ solvent: 'glycerol', mass: { lb: '20' }, assay: { percent: '100' } }],
    finished: { anhydrousSoap: '50.35', water: '38.48', glycerol: '10.96', freeAlkali: '0.21' },
    ratios: { clearingAgentsPerSoap: '0.218', waterPerSoap: '0.764', polyolPerWater: '0.285' },
  },
  {
    id: 'perfumery-1857-pearly-cream',
    source: 'perfumery-1857',
    where: 'pp. 187-188, Saponaceous cream of almonds',
    fats: [fat('lard', 'triglyceride', '195.95', { lb: '7' })],
    lye: [{ alkali: 'koh', mass: { lb: '3.75' }, solution: { hydroxide: { percent: '26' } } }],
    additions: [{ solvent: 'ethanol', mass: { oz: '3' }, assay: { percent: '84' } }],
    finished: { anhydrousSoap: '49.52', water: '25.65', ethanol: '1.44', glycerol: '4.88', freeFat: '18.51' },
    ratios: { clearingAgentsPerSoap: '0.128', waterPerSoap: '0.518', polyolPerWater: '0.190' },
  },
  {
    id: 'formulas-1914-almond-glycerine',
    source: 'formulas-1914',
    where: 'p. 644, Miscellaneous soaps, III (almond oil, glycerine)',
    fats: [fat('almond oil', 'triglyceride', '191', { g: '200' })],
    lye: [{ alkali: 'naoh', mass: { g: '50' }, solid: { hydroxide: { percent: '70' } } }],
    water: { g: '590' },
    additions: [
      { solvent: 'glycerol', mass: { g: '160' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { g: '77.7777777778' }, assay: { percent: '85.7' } },
      { name: 'lemon oil', mass: { g: '11.1111111111' } },
      { name: 'bergamot and vervain oil, as much each', mass: { g: '22.2222222222' } },
    ],
    finished: {
      anhydrousSoap: '18.57',
      water: '54.10',
      ethanol: '6.00',
      glycerol: '16.28',
      freeAlkali: '0.70',
      other: '4.35',
    },
    ratios: { clearingAgentsPerSoap: '1.200', waterPerSoap: '2.913', polyolPerWater: '0.301' },
  },
  {
    id: 'drogisten-seifenspiritus',
    source: 'drogisten-praxis-1893',
    where: 'p. 20, Spiritus saponatus (German Pharmacopoeia)',
    fats: [fat('olive oil', 'triglyceride', '193.5', { g: '6' })],
    lye: [{ alkali: 'koh', mass: { g: '7' }, solution: { hydroxide: { percent: '13.9' } } }],
    water: { g: '17' },
    additions: [{ solvent: 'ethanol', mass: { g: '30' }, assay: { percent: '86' } }],
    finished: { anhydrousSoap: '9.12', water: '45.37', ethanol: '43.00', glycerol: '0.89', freeFat: '1.62' },
    ratios: { clearingAgentsPerSoap: '4.813', waterPerSoap: '4.975', polyolPerWater: '0.020' },
  },
  {
    id: 'drogisten-mollin',
    source: 'drogisten-praxis-1893',
    where: 'p. 123, Mollin, superfatted potash salve soap (after Dieterich)',
    fats: [fat('lard', 'triglyceride', '195.95', { g: '500' })],
    lye: [{ alkali: 'koh', mass: { g: '300' }, solution: { hydroxide: { percent: '19.2' } } }],
    additions: [
      { solvent: 'ethanol', mass: { g: '50' }, assay: { percent: '86' } },
      { solvent: 'glycerol', mass: { g: '175' }, assay: { percent: '100' } },
    ],
    finished: { anhydrousSoap: '31.22', water: '24.33', ethanol: '4.20', glycerol: '20.15', freeFat: '20.10' },
    ratios: { clearingAgentsPerSoap: '0.780', waterPerSoap: '0.779', polyolPerWater: '0.828' },
  },
  {
    id: 'drogisten-kaliseife',
    source: 'drogisten-praxis-1893',
    where: 'p. 126, Sapo kalinus (German Pharmacopoeia)',
    fats: [fat('linseed oil', 'triglyceride', '192', { g: '20' })],
    lye: [{ alkali: 'koh', mass: { g: '27' }, solution: { hydroxide: { percent: '14.1' } } }],
    additions: [{ solvent: 'ethanol', mass: { g: '2' }, assay: { percent: '86' } }],
    finished: { anhydrousSoap: '43.98', water: '47.91', ethanol: '3.51', glycerol: '4.25', freeFat: '0.35' },
    ratios: { clearingAgentsPerSoap: '0.176', waterPerSoap: '1.089', polyolPerWater: '0.089' },
  },
  {
    id: 'drogisten-medicinal-soap-glue',
    source: 'drogisten-praxis-1893',
    where: 'p. 126, Sapo medicatus before salting out (German Pharmacopoeia)',
    fats: [fat('lard', 'triglyceride', '195.95', { g: '50' }), fat('olive oil', 'triglyceride', '193.5', { g: '50' })],
    lye: [{ alkali: 'naoh', mass: { g: '120' }, solution: { hydroxide: { percent: '15.2' } } }],
    water: { g: '200' },
    additions: [{ solvent: 'ethanol', mass: { g: '12' }, assay: { percent: '86' } }],
    finished: { anhydrousSoap: '23.90', water: '70.23', ethanol: '2.39', glycerol: '2.47', freeAlkali: '1.01' },
    ratios: { clearingAgentsPerSoap: '0.203', waterPerSoap: '2.938', polyolPerWater: '0.035' },
  },
  {
    id: 'simmons-spirit-and-glycerine',
    source: 'simmons-appleton-1908',
    where: 'p. 57, Transparent, alcohol and glycerine, no castor, no sugar',
    fats: [
      fat('coconut oil', 'triglyceride', '251.5', { lb: '56' }),
      fat('tallow', 'triglyceride', '196.5', { lb: '56' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '56' }, solution: { hydroxide: { percent: '32.93' } } }],
    additions: [
      { solvent: 'glycerol', mass: { lb: '23' }, assay: { percent: '100' } },
      { solvent: 'ethanol', mass: { lb: '45' }, assay: { percent: '92.4' } },
    ],
    finished: { anhydrousSoap: '49.22', water: '17.36', ethanol: '17.62', glycerol: '15.56', freeAlkali: '0.24' },
    ratios: { clearingAgentsPerSoap: '0.674', waterPerSoap: '0.353', polyolPerWater: '0.896' },
  },
  {
    id: 'simmons-castor-and-sugar',
    source: 'simmons-appleton-1908',
    where: 'pp. 57-58, Transparent, castor, glycerine and sugar, no alcohol',
    fats: [
      fat('coconut oil', 'triglyceride', '251.5', { lb: '56' }),
      fat('tallow', 'triglyceride', '196.5', { lb: '56' }),
      fat('castor oil', 'triglyceride', '182', { lb: '56' }),
    ],
    lye: [{ alkali: 'naoh', mass: { lb: '83' }, solution: { hydroxide: { percent: '32.93' } } }],
    water: { lb: '50' },
    additions: [
      { solvent: 'glycerol', mass: { lb: '25' }, assay: { percent: '100' } },
      { solvent: 'sucrose', mass: { lb: '50' }, assay: { percent: '100' } },
      { salt: 'sodium carbonate', mass: { lb: '1.852043' } },
      { solvent: 'water', mass: { lb: '3.147957' } },
    ],
    finished: {
      anhydrousSoap: '45.63',
      water: '28.56',
      glycerol: '11.63',
      sucrose: '13.12',
      salt: '0.49',
      freeAlkali: '0.57',
    },
    ratios: { clearingAgentsPerSoap: '0.542', waterPerSoap: '0.626', polyolPerWater: '0.407' },
  },
  {
    // 0.77 of citric acid takes 0.4809058260 of caustic first: the lye, water and salt here are what is left and made of it
    id: 'clear-soap-patent-claim',
    source: 'clear-soap-patent-1995',
    where: 'claim 1, water as the rest to 100',
    fats: [
      acid('stearic acid', 'C18:0', { g: '5.32' }),
      acid('palmitic acid', 'C16:0', { g: '5.13' }),
      acid('myristic acid', 'C14:0', { g: '2.95' }),
      acid('oleic acid', 'C18:1', { g: '2.84' }),
      acid('lauric acid', 'C12:0', { g: '2.76' }),
    ],
    lye: [{ alkali: 'naoh', mass: { g: '7.1690941740' }, solution: { hydroxide: { percent: '46.6459791552' } } }],
    water: { g: '15.8566042067' },
    additions: [
      { solvent: 'glycerol', mass: { g: '10.88' }, assay: { percent: '100' } },
      { solvent: 'propylene-glycol', mass: { g: '10.88' }, assay: { percent: '100' } },
      { solvent: 'peg-400', mass: { g: '9.6' }, assay: { percent: '100' } },
      { solvent: 'sucrose', mass: { g: '7.84' }, assay: { percent: '100' } },
      { salt: 'sodium chloride and citrate', mass: { g: '1.7443016193' } },
      { name: 'surfactants', mass: { g: '16.79' } },
      { name: 'chelating agents', mass: { g: '0.24' } },
    ],
    finished: {
      anhydrousSoap: '20.66',
      water: '21.04',
      glycerol: '10.88',
      propyleneGlycol: '10.88',
      polyethyleneGlycol: '9.60',
      sucrose: '7.84',
      salt: '1.74',
      freeAlkali: '0.33',
    },
    ratios: { clearingAgentsPerSoap: '1.897', waterPerSoap: '1.018', polyolPerWater: '1.490' },
  },
];

const RESULT: Readonly<Record<Figure, string>> = {
  anhydrousSoap: 'shares.soap.likely',
  water: 'components.water.share.likely',
  ethanol: 'components.ethanol.share.likely',
  glycerol: 'components.glycerol.share.likely',
  sucrose: 'components.sucrose.share.likely',
  sorbitol: 'components.sorbitol.share.likely',
  propyleneGlycol: 'components.propyleneGlycol.share.likely',
  polyethyleneGlycol: 'components.polyethyleneGlycol.share.likely',
  salt: 'components.salts.share.likely',
  freeFat: 'components.freeFat.share.likely',
  freeFattyAcid: 'components.freeAcid.share.likely',
  freeAlkali: 'components.freeCaustic.share.likely',
  other: 'components.other.share.likely',
};

const FROM_THE_CHARGE = 'Worked out by others from the printed charge; not itself printed.';
const OTHER_WEIGHTS = '0.0013 M(KOH) 56.106 for 56.105 on 70 of a hundred parts';
const DASHED: Readonly<Record<string, string>> = {
  anhydrousSoap: 'soap',
  propyleneGlycol: 'propylene-glycol',
  polyethyleneGlycol: 'polyethylene-glycol',
  freeFat: 'free-fat',
  freeFattyAcid: 'free-acid',
  freeAlkali: 'free-alkali',
  clearingAgentsPerSoap: 'clearing-agents-to-soap',
  waterPerSoap: 'water-to-soap',
  polyolPerWater: 'polyol-to-water',
};

/** Half a last digit of each; the greatest takes what is missing to 100. */
function toleranceOf(finished: PrintedComposition['finished'], figure: Figure): { tolerance: string; why: string } {
  const all = Object.values(finished).map((one) => new Decimal(one));
  const isGreatest = Decimal.max(...all).eq(finished[figure] ?? 0);
  const rounding = isGreatest ? new Decimal('0.005').times(all.length) : new Decimal('0.005');
  const cause = isGreatest
    ? `half a last digit of ${String(all.length)} figures that add up to 100`
    : 'half a last digit';
  return {
    tolerance: rounding.plus('0.0013').toString(),
    why: `${rounding.toString()} ${cause} + ${OTHER_WEIGHTS}. ${FROM_THE_CHARGE}`,
  };
}

type Inputs = CallInputs['compositionFrom'];

const inputsOf = ({ fats, lye, water, additions }: PrintedComposition): Inputs => ({
  soap: { fats, lye, ...(water === undefined ? {} : { water }) },
  additions,
});

function finishedChecks(composition: PrintedComposition): readonly CheckValue[] {
  const { id, source, where, finished } = composition;
  const inputs = inputsOf(composition);
  return (Object.entries(finished) as [Figure, string][]).map(([figure, printed]) => {
    const row = {
      id: `${id}-finished-${DASHED[figure] ?? figure}`,
      inputs,
      result: RESULT[figure],
      printed,
      expected: printed,
      unit: 'percent',
      ...toleranceOf(finished, figure),
      source,
      where,
      obtained: 'derived',
    } as const;
    return figure === 'anhydrousSoap' ? { ...row, call: 'ratiosOf' } : { ...row, call: 'compositionFrom' };
  });
}

const POLYOLS = ['glycerol', 'sorbitol', 'propyleneGlycol', 'polyethyleneGlycol'] as const;

/** A quotient of two figures of the finished soap, each off by as much as the greatest of them may be. */
function ratioChecks(composition: PrintedComposition): readonly CheckValue[] {
  const { id, source, where, finished, ratios } = composition;
  const of = (...figures: readonly Figure[]): Decimal =>
    figures.reduce((sum, figure) => sum.plus(finished[figure] ?? 0), new Decimal(0));
  const parts = {
    clearingAgentsPerSoap: [of(...POLYOLS, 'ethanol', 'sucrose'), of('anhydrousSoap')],
    waterPerSoap: [of('water'), of('anhydrousSoap')],
    polyolPerWater: [of(...POLYOLS), of('water')],
  } as const;
  const each = new Decimal('0.005').times(Object.keys(finished).length).plus('0.0013');
  return (Object.keys(parts) as (keyof typeof parts)[]).map((result): CheckValue => {
    const [above, below] = parts[result];
    const ratio = above.div(below);
    const rounding = ratio.plus(1).times(each).div(below).toDecimalPlaces(5, Decimal.ROUND_UP);
    return {
      id: `${id}-${DASHED[result] ?? result}`,
      call: 'ratiosOf',
      inputs: inputsOf(composition),
      result: `${result}.likely`,
      printed: ratios[result],
      expected: ratios[result],
      unit: 'partsPerPart',
      tolerance: rounding.plus('0.0005').toString(),
      why: `0.0005 half a last digit + ${rounding.toString()} quotient of ${above.toString()} and ${below.toString()}, each within ${each.toString()}. ${FROM_THE_CHARGE}`,
      source,
      where,
      obtained: 'derived',
    };
  });
}

/** Printed charges of clear soaps, and of others to compare, against what they come to. */
export function printedCompositionChecks(): readonly CheckValue[] {
  return printedCharges().flatMap((one) => [...finishedChecks(one), ...ratioChecks(one)]);
}
