import type { FatKind } from '../../fats/index.js';
import type { Alkali } from '../../lye/index.js';
import type { SourceId } from '../../sources/index.js';

/** A printed charge of clear soap or of one beside it, with its alkali over its demand as worked out apart from the library. */
export interface AuditedCharge {
  readonly id: string;
  readonly unit: 'g' | 'kg' | 'lb';
  readonly fats: readonly {
    readonly name: string;
    /** Saponification value taken, mg KOH/g. */
    readonly value: string;
    readonly kind?: FatKind;
    readonly amount: string;
  }[];
  readonly lye: {
    readonly alkali: Alkali;
    readonly amount: string;
    readonly state: 'solid' | 'solution';
    /** Percent of hydroxide. */
    readonly percent: string;
  };
  readonly water?: string;
  readonly additions: Readonly<Record<string, string>>;
  /** Alkali charged over alkali demanded. */
  readonly ratio: string;
  /** 100·(1 − ratio). */
  readonly superfat: string;
  readonly source: SourceId;
  readonly where: string;
}

// the middle of each range in the table of constants of the manual of 1922
const TALLOW = { name: 'tallow', value: '196.5' } as const;
const COCONUT = { name: 'coconut oil', value: '251.5' } as const;
const CASTOR = { name: 'castor oil', value: '182' } as const;
const OLIVE = { name: 'olive oil', value: '193.5' } as const;
const LARD = { name: 'lard', value: '195.95' } as const;
// recalled
const ROSIN = { name: 'rosin', value: '165', kind: 'rosin' } as const;

/** Parts are put down as grams. */
export const auditedCharges = (): readonly AuditedCharge[] => [
  {
    id: 'thomssen-transparent-1',
    unit: 'lb',
    fats: [
      { ...TALLOW, amount: '134' },
      { ...COCONUT, amount: '88' },
      { ...CASTOR, amount: '20' },
      { ...ROSIN, amount: '7' },
    ],
    lye: { alkali: 'naoh', amount: '135', state: 'solution', percent: '32.47' },
    water: '32',
    additions: { sugar: '64', glycerine: '34', 'alcohol, 16 US gallons': '108.32' },
    ratio: '1.155',
    superfat: '-15.5',
    source: 'thomssen-1922',
    where: 'pp. 86-87, cold made transparent soap I; lye of 38 degrees Baumé by the table of the book',
  },
  {
    id: 'thomssen-transparent-4',
    unit: 'lb',
    fats: [
      { ...TALLOW, amount: '100' },
      { ...COCONUT, amount: '100' },
      { ...CASTOR, amount: '60' },
      { ...ROSIN, amount: '20' },
    ],
    lye: { alkali: 'naoh', amount: '164', state: 'solution', percent: '29.93' },
    water: '50',
    additions: { sugar: '40', glycerine: '20', 'alcohol, 8 US gallons': '54.16' },
    ratio: '1.167',
    superfat: '-16.7',
    source: 'thomssen-1922',
    where: 'pp. 86-87, cold made transparent soap IV; lye of 36 degrees Baumé by the table of the book',
  },
  {
    id: 'hiscox-rose-glycerine',
    unit: 'g',
    fats: [
      { ...COCONUT, amount: '70000' },
      { ...TALLOW, amount: '40000' },
      { ...CASTOR, amount: '30000' },
    ],
    lye: { alkali: 'naoh', amount: '79000', state: 'solution', percent: '32.47' },
    water: '60000',
    additions: { sugar: '54000', alcohol: '40000', perfume: '1730' },
    ratio: '1.164',
    superfat: '-16.4',
    source: 'formulas-1914',
    where: 'p. 652, rose-glycerine soap I; lye of 38 degrees Baumé by the table of a manual of 1922',
  },
  {
    id: 'hiscox-sunflower-glycerine',
    unit: 'g',
    fats: [
      { ...COCONUT, amount: '70000' },
      { ...TALLOW, amount: '50000' },
      { ...CASTOR, amount: '23000' },
    ],
    lye: { alkali: 'naoh', amount: '71000', state: 'solution', percent: '33.69' },
    water: '30000',
    additions: { sugar: '40000', alcohol: '40000', 'colour and perfume': '2200' },
    ratio: '1.061',
    superfat: '-6.1',
    source: 'formulas-1914',
    where: 'p. 653, sunflower-glycerine soap III; lye of 39 degrees Baumé by the table of a manual of 1922',
  },
  {
    id: 'hiscox-almond-glycerine',
    unit: 'g',
    fats: [{ name: 'almond oil', value: '191', amount: '200' }],
    lye: { alkali: 'naoh', amount: '50', state: 'solid', percent: '70' },
    water: '590',
    additions: { glycerine: '160', alcohol: '77.8', perfume: '33.3' },
    ratio: '1.285',
    superfat: '-28.5',
    source: 'formulas-1914',
    where:
      'p. 644, miscellaneous soaps III; value of almond oil recalled, spirit and perfume to 1000 parts of the mass',
  },
  {
    id: 'jp-5774951-example-1',
    unit: 'kg',
    fats: [{ name: 'mixed fatty acids', value: '228.37', kind: 'free-fatty-acid', amount: '100' }],
    lye: { alkali: 'naoh', amount: '48.2', state: 'solution', percent: '34' },
    water: '10',
    additions: { sugar: '25', sorbitol: '10', glucosylglycerol: '10', 'chelator, solution': '0.5' },
    ratio: '1.007',
    superfat: '-0.7',
    source: 'jp-5774951',
    where: 'par. 0042-0045, example 1, by the saponification value printed there',
  },
  {
    id: 'piesse-pearly-cream',
    unit: 'lb',
    fats: [{ ...LARD, amount: '7' }],
    lye: { alkali: 'koh', amount: '3.75', state: 'solution', percent: '26' },
    additions: { 'rectified spirit': '0.1875', 'otto of almonds': '0.0156' },
    ratio: '0.711',
    superfat: '28.9',
    source: 'perfumery-1857',
    where: 'pp. 187-188, saponaceous cream of almonds',
  },
  {
    id: 'buchheister-soap-spirit',
    unit: 'g',
    fats: [{ ...OLIVE, amount: '6' }],
    lye: { alkali: 'koh', amount: '7', state: 'solution', percent: '13.9' },
    water: '17',
    additions: { spirit: '30' },
    ratio: '0.838',
    superfat: '16.2',
    source: 'drogisten-praxis-1893',
    where: 'p. 20, Spiritus saponatus; potash lye of gravity 1.128 by a table for 18 °C',
  },
  {
    id: 'buchheister-mollin',
    unit: 'g',
    fats: [{ ...LARD, amount: '500' }],
    lye: { alkali: 'koh', amount: '300', state: 'solution', percent: '19.2' },
    additions: { spirit: '50', glycerine: '175' },
    ratio: '0.588',
    superfat: '41.2',
    source: 'drogisten-praxis-1893',
    where: 'p. 123, Mollin, a superfatted salve soap; potash lye of gravity 1.180 by a table for 18 °C',
  },
  {
    id: 'buchheister-potash-soap',
    unit: 'g',
    fats: [{ name: 'linseed oil', value: '192', amount: '20' }],
    lye: { alkali: 'koh', amount: '27', state: 'solution', percent: '14.1' },
    additions: { spirit: '2' },
    ratio: '0.991',
    superfat: '0.9',
    source: 'drogisten-praxis-1893',
    where: 'p. 126, Sapo kalinus; potash lye of gravity 1.130 by a table for 18 °C, value of linseed oil recalled',
  },
  {
    id: 'buchheister-medicinal-soap',
    unit: 'g',
    fats: [
      { ...LARD, amount: '50' },
      { ...OLIVE, amount: '50' },
    ],
    lye: { alkali: 'naoh', amount: '120', state: 'solution', percent: '15.2' },
    water: '200',
    additions: { spirit: '12' },
    ratio: '1.314',
    superfat: '-31.4',
    source: 'drogisten-praxis-1893',
    where: 'p. 126, Sapo medicatus before it is salted out; soda lye of gravity 1.170, printed 170',
  },
];
