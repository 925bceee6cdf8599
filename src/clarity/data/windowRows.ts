import type { SourceId } from '../../sources/index.js';

/** A figure of a base that a published window sets limits to. */
export type WindowFigure =
  | 'soap'
  | 'sodiumSoap'
  | 'water'
  | 'glycerol'
  | 'propyleneGlycol'
  | 'polyol'
  | 'sugar'
  | 'polyolAndSugar'
  | 'spirit'
  | 'sugarPerFat'
  | 'polyolAndSugarPerFattyAcid';

/** Limits as printed; a ratio is parts to one part, all else percent by mass. An empty limit is none. */
type Limit = readonly [figure: WindowFigure, low: string, high: string];

export type WindowRow = readonly [
  id: string,
  form: 'bar' | 'gel',
  statement: string,
  source: SourceId,
  where: string,
  obtained: 'read' | 'second-hand' | 'derived',
  confidence: 'good' | 'fair' | 'low',
  caveat: string,
  limits: readonly Limit[],
];

// prettier-ignore
export const windowRows = (): readonly WindowRow[] => [
  ['cast-base', 'bar',
    'Base of a cast transparent soap: soap, sugar with polyol, and alcohol.',
    'jp-6087463', 'paragraph 0008', 'read', 'good', 'The invention is another; the base is described as prior practice.',
    [['soap', '25', '55'], ['polyolAndSugar', '20', '50'], ['spirit', '0', '20']]],
  ['one-polyol-compound', 'bar',
    'Transparent bar claimed free of whitening, blooming and sweating: soap, water, and 2 to 20 % of one polyol compound.',
    'jp-2009-144069', 'abstract', 'read', 'good', 'The structure of the compound was not seen.',
    [['soap', '30', '80'], ['water', '5', '25']]],
  ['without-spirit', 'bar',
    'Bar without spirit: 30 to 40 parts of fatty acids (40 to 80 % of them C12 and C14), 16 to 26 of dipropylene glycol, 15 to 25 of sucrose, 2 to 7 of an ester; soda to potash 85 : 15 to 50 : 50 by mass.',
    'jp-2010-180381', 'abstract; the ratio from its corners, 31/40 to 51/30', 'derived', 'fair', 'Corners, not examples; the water is not in the abstract.',
    [['polyolAndSugarPerFattyAcid', '0.78', '1.7']]],
  ['sugar-on-fat', 'bar',
    'Sugar on the fats of a soap of tallow and coconut oil, 7 : 3, dissolved in spirit.',
    'csj-kinki-q60', 'answer', 'read', 'fair', 'How much spirit is not clear.',
    [['sugarPerFat', '0.25', '0.30']]],
  ['half-soap-with-spirit', 'bar',
    'Bar of about half soap: less than 12 % of alcohol is said not to clear well, more than 14 % to shrink.',
    'handout-clear-soap-brazil', 'calculation of solvents', 'read', 'fair', 'A handout without an author.',
    [['spirit', '12', '14'], ['glycerol', '8', '12'], ['water', '12', '20'], ['sugar', '8', '14']]],
  ['moisture-floor', 'bar',
    'One base of polyols and surfactant stayed clear only above this moisture.',
    'us-5417876', 'Example 2', 'read', 'good', 'Of that base; other bars are clear at 5 to 25 % water.',
    [['water', '17', '']]],
  ['dried-cake', 'bar',
    'Usual soap of spirit, sugar and glycerol after a month or more of drying: 45 to 70 % of sodium soap; tallow to coconut acids 7 : 3 to 8 : 2.',
    'jp-h08-13999', 'prior art', 'read', 'good', 'Of the dried cake, so that no charge is compared with it.', []],
  ['sodium-and-triethanolamine', 'bar',
    'Bar of sodium and triethanolamine soaps, together over 50 %; acids of 6 to 18 carbons, iodine value 8 to 15.',
    'us-4468338', 'abstract', 'read', 'good', 'Darkens with age.', []],
  ['sugar-alone', 'bar',
    'Where sugar alone clears: 10 to 20 % on the soap base, in its own weight of water; coconut oil at least 25 % of the fats.',
    'thomssen-1922', 'p. 83, method 1', 'read', 'good', 'Per cent of a base whose water is not printed; as the water dries off, sugar spots appear.', []],
  ['spirit-and-glycerine', 'bar',
    'Where spirit and glycerine clear: one part of each, the alcohol of 95 %, to two of fatty acid.',
    'thomssen-1922', 'p. 83, method 2', 'read', 'good', '“In the same proportion” is read as one to two for both.', []],
  ['castor', 'bar',
    'Castor oil, up to a third of the fats, stands in for some of the sugar, spirit or glycerine; rosin up to a fifth for tallow.',
    'thomssen-1922', 'pp. 83-87', 'read', 'good', '', []],
  ['solution-in-spirit', 'bar',
    'Base dissolved in spirit: ethanol 20 to 50 %, glycerol 5 to 25 %, syrup 10 to 25 %.',
    'jongko-2014-cited', 'section on transparency', 'second-hand', 'fair', 'Per cent of what is not stated, so that nothing is compared with it.', []],
  ['iodine-values', 'bar',
    'Two older windows for the mixed acids that do not meet: iodine value 31 to 45; and at most 30, with C12:0 15 to 25 % and unsaturated C18 at most 22 %.',
    'jp-2009-144069', 'paragraph 0003', 'second-hand', 'fair', 'Cited there from others.', []],
  ['soap-stick', 'gel',
    'Stick of polyhydric alcohol set with soap; examples of 44 to 52 % glycol or glycerol, 8 % soap, 35 % water.',
    'us-5798094', 'background, quoting US 4,440,742', 'second-hand', 'fair', 'Whether the examples are clear is not said.',
    [['polyol', '20', '90'], ['soap', '2', '15']]],
  ['glycerin-suppository', 'gel',
    'Glycerol set with sodium stearate, limits of the monograph.',
    'usp-35-glycerin-suppositories', 'definition; Water', 'read', 'good', 'It does not ask for clarity.',
    [['glycerol', '75', '90'], ['water', '', '15']]],
  ['ether-stick', 'gel',
    'Clear stick with 24 to 72 % of a polypropylene glycol ether and 5 to 10 % of an ester.',
    'us-5798094', 'background, quoting US 4,268,498', 'second-hand', 'fair', '',
    [['soap', '5', '8'], ['propyleneGlycol', '5', '10'], ['water', '2', '5']]],
  ['polyol-and-ester-stick', 'gel',
    'Stick of polyhydric alcohol, soap and 15 to 40 % of diisopropyl adipate.',
    'us-5798094', 'background, quoting US 4,617,185', 'second-hand', 'fair', 'Clarity is not mentioned.',
    [['polyol', '6', '70'], ['soap', '3', '10']]],
  ['aqueous-stearate-stick', 'gel',
    'Aqueous stick: 1 to 30 parts of sodium stearate to 100 of water, and some polyhydroxyl compound.',
    'us-5798094', 'background, quoting US 4,226,889', 'second-hand', 'fair', 'Clarity is not mentioned.',
    [['polyol', '0.5', '10']]],
];
