/** Tables of the publications: how much each holds, and where it stands in the library. */
import type { CheckValue } from 'laurate/check-values';

/** One table, list or set of examples. */
export interface PublishedTable {
  readonly name: string;
  /** How many entries of it were at hand. */
  readonly entries: number;
  /** The check values that come from it. */
  readonly checks?: (row: CheckValue) => boolean;
  /** What the library reads from it itself; a figure that is read is no check of what is worked out. */
  readonly readBy?: string;
  /** A file of tests that holds the library to it in another way. */
  readonly tests?: string;
  /** What is left out, and why. */
  readonly left?: string;
}

const from =
  (...sources: readonly string[]) =>
  ({ source }: CheckValue): boolean =>
    sources.includes(source);
const simmons = from('simmons-appleton-1908');
const thomssen = from('thomssen-1922');
const crc = from('crc-102-2021');

const STANDARD_RANGE = /, (saponification|acid|iodine) value$/;
const isRange = (row: CheckValue): boolean => 'expectedRange' in row && STANDARD_RANGE.test(row.where);
const isBounds = ({ id }: CheckValue): boolean => id.endsWith('-value-bounds');
const isFood = from('usda-sr26-2013', 'ifct-2017', 'taco-2011');
const isSample = ({ call, where, source }: CheckValue): boolean =>
  /FromProfile$|^saponificationValueOf$/.test(call) &&
  !STANDARD_RANGE.test(where) &&
  !where.includes(': least and greatest') &&
  !isFood({ source } as CheckValue) &&
  source !== 'simmons-appleton-1908';
const isPot = ({ call }: CheckValue): boolean => call === 'compositionFrom' || call === 'ratiosOf';
/** Charges that are audited and not among the printed recipes: clear soaps whose alkali was set against their demand. */
const isClearCharge = ({ call, where, source }: CheckValue): boolean =>
  call === 'auditRecipe' && (/^pp?\. /.test(where) || where.startsWith('par. ')) && source !== 'simmons-appleton-1908';
const isRecipe = (row: CheckValue): boolean =>
  (row.call === 'superfatFromLye' || row.call === 'auditRecipe') && !isClearCharge(row) && !simmons(row);
/** Acids and glycerides of the handbook of 1922, by themselves and in a pot. */
const isOfAcids = (row: CheckValue): boolean =>
  thomssen(row) &&
  (/^(fattyAcidOf|triglycerideOf)$/.test(row.call) || row.where.startsWith('Appendix, constants of certain'));
const isExercise = (row: CheckValue): boolean =>
  row.obtained !== 'derived' &&
  /^(school-|laboratory-(report|sheet|page-germany)|forum-|examination-|talbot-|silberberg-|assaying-)/.test(
    row.source,
  ) &&
  row.call !== 'soapSolutionPhFrom';

export const tables: Readonly<Record<string, readonly PublishedTable[]>> = {
  'Standards of fats and oils': [
    {
      name: 'Limits of fatty acids of 61 fats, acids and waxes: the Codex standards for named oils, fats, olive oils and shea, national rules, pharmacopoeias, trade',
      entries: 838,
      readBy: '`fat`, `publishedRecordOf`',
      checks: isBounds,
      tests: 'tests/fats/data/publishedFats.test.ts',
      left: 'The bounds over each profile were worked out apart; the profiles themselves are read.',
    },
    {
      name: 'Limits of saponification, acid and iodine value of the same fats',
      entries: 127,
      readBy: '`fat`, `publishedRecordOf`',
      checks: isRange,
      left: 'Profile and value are separate columns, so that one is checked by the other; values of waxes and rosin, and iodine values of fats without double bonds, have nothing to be checked by.',
    },
    {
      name: 'Greatest unsaponifiable matter',
      entries: 44,
      readBy: '`fat`',
      left: 'A limit and not a result: nothing published says what should follow from it.',
    },
    {
      name: 'Relative density, refractive index, titre',
      entries: 87,
      readBy: '`publishedRecordOf`',
      left: 'On record only; no calculation takes them.',
    },
    {
      name: 'Ingredient names of fats and their soaps',
      entries: 61,
      readBy: '`ingredientDeclarationOf`',
      left: 'Words, all recalled.',
    },
  ],
  'Oils that were analysed': [
    {
      name: 'Profiles printed beside a saponification or iodine value: papers, a feed table, a handbook (recalled), standards',
      entries: 61,
      checks: isSample,
      left: 'Middles of standards’ ranges are no oil. Partial profiles are used where the value does not hang on what is missing.',
    },
    {
      name: 'Fats and oils of a food table of the United States',
      entries: 104,
      checks: from('usda-sr26-2013'),
      left: 'Fish oils, hardened and mixed fats, fats parted for confectionery, repeated entries, and oils without limits on record.',
    },
    {
      name: 'Edible oils of a food table of India',
      entries: 14,
      checks: from('ifct-2017'),
      left: 'Blends, hardened fat, and oils without limits on record.',
    },
    {
      name: 'Oils of a food table of Brazil',
      entries: 8,
      checks: from('taco-2011'),
      left: 'A babassu oil cut with another, pequi oil, and oils without limits on record.',
    },
    {
      name: 'Profiles of 572 Italian olive oils and of 96 commercial oils',
      entries: 668,
      left: 'Profiles without values, too many to carry. Tried once: of the olive oils ten sum to more than 100.5 % and are refused, the others give saponification values of 191.4 to 193.9 and iodine values of 77.4 to 86.3, all within the standard (184 to 196, 75 to 94); of the commercial oils twelve are refused for their sums.',
    },
  ],
  'Handbooks of soap making, 1908 and 1922': [
    {
      name: 'Degrees Twaddell, degrees Baumé and specific gravity (1908)',
      entries: 174,
      checks: (row) => simmons(row) && row.where.startsWith('Appendix A'),
    },
    {
      name: 'Soda lye: gravity, NaOH, Na2O (1908)',
      entries: 66,
      checks: (row) => simmons(row) && row.where.startsWith('Appendix C') && row.call !== 'lyeDensity',
      left: 'The handbook prints 100 rows; the others were not at hand.',
    },
    {
      name: 'Soda lye: pounds of NaOH in a gallon, from caustic of 77, 74 and 70 per cent (1908)',
      entries: 198,
      checks: (row) => simmons(row) && row.where.startsWith('Appendix C') && row.call === 'lyeDensity',
      left: 'Products of the two columns above; two rows stand for them.',
    },
    {
      name: 'Potash lye: gravity, KOH, pounds in a gallon (1908)',
      entries: 12,
      checks: (row) => simmons(row) && row.where.startsWith('Appendix D'),
      left: 'Pounds in a gallon are products; two rows stand for them.',
    },
    {
      name: 'Saponification equivalents of oils, fats and rosin (1908)',
      entries: 71,
      checks: (row) => simmons(row) && (row.where.startsWith('chapter III') || row.where.startsWith('p. 38')),
      left: 'Iodine value, titre, acidity and gravity of the samples: no function gives bounds for them.',
    },
    {
      name: 'Glycerides: formulas and equivalents (1908)',
      entries: 11,
      checks: (row) => simmons(row) && /^p\. 8\b/.test(row.where),
      left: 'Melting points and refractive indices.',
    },
    {
      name: 'Worked analyses and factors (1908)',
      entries: 26,
      checks: (row) => simmons(row) && row.where.startsWith('chapter X'),
      left: 'Essential oils, glycerine by bichromate and by acetin, chloride, sulphite, sulphide, borate, potassium as platinichloride, moisture: no function does them.',
    },
    {
      name: 'Recipes and yields of glycerine (1908)',
      entries: 28,
      checks: (row) =>
        simmons(row) && /^(p\. 4[379]|pp?\. 57|p\. 87|p\. 116|ch\. (IV|V))/.test(row.where) && !isPot(row),
      left: 'Bleaching, refining, liquoring, perfume and medicated soaps carry no sum that the library does.',
    },
    {
      name: 'Grades of alkali, brines, silicates, spent lye and glycerine (1908)',
      entries: 29,
      left: 'Facts of the trade without an input and a result.',
    },
    {
      name: 'Fatty acids and triglycerides: molar mass, neutralisation value, yields (1922)',
      entries: 42,
      checks: isOfAcids,
    },
  ],
  'Rules, worked examples and printed recipes': [
    {
      name: 'Rules of the standard methods for fats, soap and alkali',
      entries: 25,
      readBy: 'the functions of Fats, Lye, Free alkali',
      checks: from('aocs-cd-1c-85'),
      left: 'Iodine value by titration, hydroxyl value, unsaponifiable matter, moisture, chloride, matter insoluble in ethanol, glycerol and fatty matter by weighing: results of a laboratory that no function works out.',
    },
    {
      name: 'Worked examples with a printed result: handbook of 1922, a textbook of 1921, schools, laboratories, examinations, pages of answers',
      entries: 133,
      checks: (row) =>
        isExercise(row) || (thomssen(row) && !isRecipe(row) && !isPot(row) && !isClearCharge(row) && !isOfAcids(row)),
      left: 'Examples of the handbook of 1908 are counted there. Not carried: iodine value by titration, glycerine assays, fatty matter by weighing, potassium by platinum, a fat said to give more glycerol than it weighs, crystal water of soda, mixing of two solutions, standard acids, and sums that ask one figure twice.',
    },
    {
      name: 'Printed soap recipes with alkali and demand worked out',
      entries: 51,
      checks: isRecipe,
      left: 'Recipes of the handbook of 1908 are counted there. One has crude potash of no known strength.',
    },
  ],
  'Physical properties': [
    {
      name: 'Atomic weights; masses of compounds and acids worked out from them',
      entries: 101,
      readBy: '`molarMassOf` (weights only)',
      tests: 'tests/chemistry/data/atomicWeights.test.ts',
      left: 'Masses that were worked out from the same weights check nothing; printed masses are among the examples.',
    },
    {
      name: 'Soda and potash lye at 20 °C: density, molarity, freezing',
      entries: 118,
      readBy: '`lyeDensity`, `lyeFreezingPoint`',
      checks: (row) => crc(row) && row.call !== 'mixtureDensity',
      tests: 'tests/lye/densityTables.test.ts',
      left: 'Densities are read; molarities and rows of freezing that are not read are checked. Refractive index and viscosity have no function.',
    },
    {
      name: 'Soda lye at other temperatures and strengths: two correlations, an estimate to 6 mol/kg, lye of 50 %',
      entries: 27,
      readBy: '`lyeDensity` (recalled table, 14 rows)',
      checks: from('olsson-1997', 'naoh-density-estimates', 'caustic-lye-text-german', 'laboratory-page-caustic'),
    },
    {
      name: 'Potash lye: recalled table at 15 °C, table at 18 °C, correlation',
      entries: 39,
      readBy: '`lyeDensity` (15 °C, correlation)',
      checks: from('densities-18-polish'),
      tests: 'tests/lye/densityTables.test.ts',
    },
    {
      name: 'Heats of solution, and freezing points of commercial lye',
      entries: 30,
      readBy: '`lyeTemperatureFromDissolving` (one of two compilations)',
      checks: (row) =>
        from('felder-rousseau', 'parker-1965')(row) ||
        (from('handbooks-recalled')(row) && row.call === 'lyeFreezingPoint'),
    },
    {
      name: 'Boiling point, vapour pressure, viscosity, heat capacity and solubility of lye',
      entries: 29,
      readBy: '`lyeTemperatureFromDissolving` (heat capacity)',
      left: 'The rest has no function.',
    },
    {
      name: 'Pure solvents: density by temperature',
      entries: 60,
      readBy: '`solventDensity`',
      checks: from(
        'kell-1975',
        'crc-organic-constants',
        'glycerol-glycol-densities',
        'perry-8-densities',
        'vdi-heat-atlas',
      ),
      left: 'Heights of correlations of which only differences are read are checked. Flash points, limits of explosion and assays stand in `solventRecordOf` and in cautions.',
    },
    {
      name: 'Mixtures with water: glycerol, propylene glycol, ethanol, sucrose',
      entries: 155,
      readBy: '`mixtureDensity`, `spiritStrengthFromVolume`',
      checks: (row) =>
        (crc(row) && row.call === 'mixtureDensity') ||
        from('lange-15', 'bosart-snoddy-1927', 'melinder-2010', 'oiml-r-22', 'usp-29-alcoholometric')(row),
      tests: 'tests/composition/mixtureTables.test.ts',
    },
    {
      name: 'Mixtures of 2-propanol, mannitol, sorbitol, glycerol with propylene glycol; acids and salts in water',
      entries: 196,
      left: 'No function takes these mixtures.',
    },
    {
      name: 'Purity of caustic soda and potash in pharmacopoeias; factors of titration; grades by oxide',
      entries: 24,
      checks: (row) => from('usp-28-nf-23-2005')(row) && !isBounds(row),
      left: 'Limits of purity are no results; grades by oxide were worked out and not printed.',
    },
    {
      name: 'Heats of saponification, neutralisation and evaporation',
      entries: 18,
      readBy: '`potHeatFromReaction`, `heatOfEvaporation`',
      checks: (row) => row.call === 'potHeatFromReaction' || row.call === 'heatOfEvaporation',
    },
    {
      name: 'Specific heats; heats of melting of fatty acids',
      entries: 19,
      readBy: '`heatOfWarming`, `potHeatFromReaction`',
      left: 'Specific heats are read, and none of a soap was found to check them by; heats of melting are not used.',
    },
    {
      name: 'Ion product of water, acidity of fatty acids, acid soap; pH of soaps that were measured',
      entries: 44,
      readBy: '`soapSolutionPhFrom` (ion product)',
      checks: (row) => row.call === 'soapSolutionPhFrom',
      tests: 'tests/freeAlkali/soapPh.test.ts',
      left: 'Constants of acid soap are not used: the band of pH does not rest on them. Ranges that take in synthetic detergents are left out.',
    },
    {
      name: 'Limits of soap standards',
      entries: 7,
      readBy: '`judgeFreeAlkali`',
      left: 'A limit and not a result.',
    },
    {
      name: 'Hazards, limits of exposure, handling',
      entries: 43,
      readBy: 'the cautions, in our own words',
      tests: 'tests/docs/cautions.test.ts',
      left: 'Nothing to reckon.',
    },
  ],
  'Clear soap': [
    {
      name: 'Published formulas, clear and not clear',
      entries: 59,
      readBy: '`publishedFormulas`, `placeAmongPublished`',
      checks: (row) => isPot(row) || isClearCharge(row),
      tests: 'tests/clarity/publishedFormulas.test.ts',
      left: 'Of 37 all amounts are known; the charges among them whose fats and lye can be worked through are checked. What became of the soap is a word of the source, and no function foretells it.',
    },
    {
      name: 'Published windows, ratios, temperatures and causes',
      entries: 93,
      readBy: '`publishedWindows` (22 limits), `processWindows`, `orderOfWork`',
      tests: 'tests/clarity/publishedFormulas.test.ts',
      left: 'Advice without figures, and causes that cannot be reckoned.',
    },
  ],
};
