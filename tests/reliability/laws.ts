/**
 * The laws of every public function, by the titles of the tests that hold them: all tests under `<name>: laws`, and, for
 * functions whose laws stand among those of others, these.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** A title, and the file of its test. */
export interface Law {
  readonly file: string;
  readonly title: string;
}

type Elsewhere = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

const titrations = 'freeAlkali/simulated';
const assays = 'freeAlkali/alkaliAssay';
const soapPh = 'freeAlkali/soapPh';
const charts = 'reports/charts';

export const elsewhere: Elsewhere = {
  acidValueFromTitration: { [titrations]: ['acid value'] },
  acidityFromTitration: { 'freeAlkali/acidAndSaponificationValue': ['acidity is the acid value by M/561.05 whatever the reading'] },
  alkaliAssayFromTwoIndicators: {
    [titrations]: ['hydroxide by two indicators, whose end points are shared'],
    [assays]: ['total alkali is hydroxide and carbonate counted as hydroxide, both ways', 'limits stay a share of the lye'],
  },
  alkaliAssayFromBariumChloride: {
    [titrations]: ['carbonate by barium chloride'],
    [assays]: ['total alkali is hydroxide and carbonate counted as hydroxide, both ways', 'limits stay a share of the lye'],
  },
  batchVolumeOf: { 'composition/propertiesOfComposition': ['is greater when warm, and twice as great for twice as much', '%s: is the same of one read back from JSON'] },
  ratiosOf: {
    'composition/propertiesOfComposition': ['%s: is the same of one read back from JSON'],
    'clarity/placeAmongPublished': ['leading figures are the ratios of the composition, bounds and all'],
  },
  totalFattyMatterOf: {
    'composition/bounds': ['lies between all of the fats and the fats less all their glyceryl'],
    'composition/propertiesOfComposition': ['%s: is the same of one read back from JSON'],
  },
  compositionFrom: { 'composition/bounds': ['no lot, assay or split leaves them', 'and each is reached, where all that is of a kind moves together'] },
  esterValueFromTitrations: { 'laws/given': ['gives the same result', 'gives the same result after JSON'] },
  freeAlkaliBehindPh: {
    [soapPh]: ['the cap rises with pH', 'it falls with the soap that makes the same pH, and rises with the warmth', 'the caustic of a solution worked out from its charges is never above the cap'],
  },
  soapSolutionPhFrom: { [soapPh]: ['the band rises with the soap, and its ends stay in order'] },
  heatOfEvaporation: { 'laws/given': ['gives the same result', 'gives the same result after JSON'] },
  isCalculationError: {
    'numbers/calculationError': ['knows one of another copy of the library, which instanceof does not'],
    'laws/fuzz': ['an error is recognised by what it says of itself, and by nothing less'],
  },
  CalculationError: { 'numbers/calculationError': ['throws it, with what came as text', 'cuts what came at 80 characters'] },
  lyeStrengthFromDensity: {
    'lye/lyeDensity': ['there and back: strength to density to strength, and density to strength to density, within 1e-25'],
    'lye/densityTables': ['rises with strength at every temperature, and falls with temperature from 4 °C on at every strength'],
  },
  lyeStrengthFromTitration: { [titrations]: ['strength of a stock lye'] },
  titrantFromStandard: { [assays]: ['a measured titrant goes into a titration with its uncertainty'] },
  totalFreeAlkaliFromTitration: { [titrations]: ['total free alkali against a blank'] },
  saponificationValueFromTitration: {
    [titrations]: ['saponification value'],
    'freeAlkali/acidAndSaponificationValue': ['the nearer the reading to the blank the lower the saponification value'],
  },
  mapEstimate: { 'quantities/estimate': ['does nothing if the function does nothing, and two steps as one'] },
  orderOfWork: { 'process/orderOfWork': ['names windows that judge, of its own stage'] },
  processWindows: { 'process/processWindows': ['names each window once and none the wrong way round'] },
  publishedFormulas: { 'clarity/publishedFormulas': ['add up to 100, but for the last digits', 'hold what their kind says, and nothing that it leaves out'] },
  publishedWindows: { 'clarity/publishedFormulas': ['are as many as were carried over, with limits that go up'] },
  soapFromLye: {
    'saponification/laws': [
      'oils, one or two alkalis, superfat, excess and between',
      'oils, acids and rosin together',
      'twice of everything makes twice of everything',
      'the order of fats and of alkalis',
      'whether fats are blended first or charged apart',
      'whether water is in the lye or beside it',
      'and the masses add up to the charge, within 1e-28 of it',
    ],
    'saponification/reaction': ['mass, sodium, potassium, hydroxide, fatty acid and glyceryl are conserved within 1e-28 of the batch'],
  },
  solvent: { 'composition/solvents': ['are those that additions may be, and no two have one component'] },
  solventDensity: { 'composition/solvents': ['%s grows lighter as it warms'] },
  spiritStrengthFromVolume: { 'laws/given': ['gives the same result', 'gives the same result after JSON'] },
  planLye: {
    'saponification/target': ['unrounded, the worst lawful pot holds just so much', 'rounded, it never holds more', 'a looser limit never takes less alkali'],
  },
  planBatch: {
    'batch/laws': [
      'is what the single functions make of the recipe as made',
      'weighs whole steps of the scale: alkali never up, the rest to the same sum',
      'scales: every mass by the factor, every share as it was',
      'does not care for the order of rows',
      'planned again as it is made, is the same',
      'is sound where no likely lot leaves caustic, every lot keeps the limit and lye, assay and pot are usual, else doubtful; never worse',
    ],
  },
  auditRecipe: {
    'audit/laws': [
      'claims that are true of some lawful lots are never wrong',
      'it is dangerous if and only if the likely lots leave more free caustic than the limit',
      'an assay left out never makes it worse than the lowest, nor better than the highest',
      'ten times the masses, their text moved with them',
      'the order of the rows',
      'whether figures come as numbers or as text',
    ],
    'audit/fuzz': ['huge and tiny ratios of every mass, with every claim'],
  },
  verdictsOf: { 'audit/verdicts': ['at any place of a recipe', 'where a comparison is a tie, the audit decides', 'takes one recipe at a time, and gives back what it iterates over'] },
  recipeFromBase: { 'batch/planBatch': ['the recipe as made holds the masses that are weighed, the target, and no claims'] },
  batchSheetOf: {
    'reports/batchSheetOf': ['weighs every item, never more alkali than planned, and says every caution at its place, the last of all last', 'comes out the same from JSON, whatever the figures in it have become'],
  },
  ingredientDeclarationOf: {
    'reports/ingredientDeclarationOf': ['descends, adds up to a hundred, and keeps its likely figures inside their bounds', 'as formed holds the soap, fat, water and glycerol of the composition, no more and no less', 'comes out the same from JSON'],
  },
  compositionChartOf: { [charts]: ['is the same of a result read back from JSON', '%s follows the schema of Vega-Lite'] },
  lotVariationChartOf: { [charts]: ['holds each alone inside all together, whatever fats and lye', '%s follows the schema of Vega-Lite'] },
  placeChartOf: { [charts]: ['is the same of a result read back from JSON', '%s follows the schema of Vega-Lite'] },
  temperatureChartOf: { [charts]: ['rounds what is drawn, and judges what was read', '%s follows the schema of Vega-Lite'] },
  workingOf: { 'laws/workings': ['has a name, a formula, a unit and a figure in each step', 'is the same of a result read back from JSON'] },
  auditAsMarkdown: { 'reports/auditAsMarkdown': ['is the same after JSON: %#', 'names stay names'] },
  workingAsMarkdown: { 'reports/markdown': ['is a row a step, from JSON as well', 'reads back, whatever it is'] },
  publishedRecordOf: { 'laws/results': ['is frozen through and through, decimals excepted', 'is the same each time'] },
  solventRecordOf: { 'laws/results': ['is frozen through and through, decimals excepted', 'is the same each time'] },
  checkValues: { 'published/rows': ['are plain data: JSON gives them back unchanged', 'cite a publication of the bibliography, and a place in it'] },
  outcomeOf: { 'published/checkValues': ['but an end of a range, of bounds and of a tolerance is within', 'and reads equivalents, which run the other way'] },
  selfCheck: { 'published/checkValues': ['gives the same rows, and counts them'] },
}; // prettier-ignore

const folder = fileURLToPath(new URL('..', import.meta.url));

/** Every title of a test in a file, with the title of the group it stands in. */
function titlesIn(file: string): readonly (Law & { readonly group: string })[] {
  const source = ts.createSourceFile(file, readFileSync(`${folder}${file}`, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: (Law & { readonly group: string })[] = [];
  const visit = (node: ts.Node, group: string): void => {
    const [first] = ts.isCallExpression(node) ? node.arguments : [];
    const called = ts.isCallExpression(node) ? /^(it|describe)\b/.exec(node.expression.getText())?.[1] : undefined;
    const title = first !== undefined && ts.isStringLiteralLike(first) ? first.text : undefined;
    if (called === 'it' && title !== undefined) found.push({ file, title, group });
    ts.forEachChild(node, (child) => {
      visit(child, called === 'describe' && title !== undefined ? title : group);
    });
  };
  visit(source, '');
  return found;
}

/** Every title of every test. */
export const titles = (): ReturnType<typeof titlesIn> =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.test.ts'))
    .sort()
    .flatMap(titlesIn);

/** The laws of each of some functions. */
export function lawsOf(names: readonly string[]): ReadonlyMap<string, readonly Law[]> {
  const all = titles();
  return new Map(
    names.map((name) => {
      const own = all.filter(({ group }) => group === `${name}: laws`);
      const others = Object.entries(elsewhere[name] ?? {}).flatMap(([file, some]) =>
        some.map((title) => ({ file: `${file}.test.ts`, title })),
      );
      return [name, [...own, ...others]];
    }),
  );
}
