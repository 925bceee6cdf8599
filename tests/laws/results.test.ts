/** What holds of every result of every public function. */
import * as laurate from 'laurate';
import { sources, toJson, valueIn, type SourceId } from 'laurate';
import { describe, expect, it } from 'vitest';
import { unitsByKind } from '../../src/quantities/kinds/index.js';
import { textOf, throughJson } from './exact.js';
import { examples, objectsIn, results } from './examples.js';

const units = new Set(Object.values(unitsByKind()).flatMap((kind) => Object.keys(kind)));

/** Every quantity in a result as it stands in JSON: an object whose one key is a unit. */
const quantitiesIn = (result: unknown) =>
  objectsIn(toJson(result)).filter(([, object]) => {
    const [key, second] = Object.keys(object);
    return key !== undefined && second === undefined && units.has(key);
  });

it('the examples are of every public function that calculates', () => {
  const functions = Object.entries(laurate).flatMap(([name, value]) => (typeof value === 'function' ? [name] : []));
  const beside = ['CalculationError', 'isCalculationError', 'toJson'];
  const tried = examples.map(({ name }) => name);
  expect(functions.filter((name) => !tried.includes(name)).sort()).toEqual(beside);
});

describe.each(results)('a result of %s', (name, result) => {
  it('is frozen through and through, decimals excepted', () => {
    expect(objectsIn(result).filter(([, object]) => !Object.isFrozen(object)).map(([path]) => path)).toEqual([]);
  }); // prettier-ignore

  it('has no field without a value, and no object without fields', () => {
    const isBare = (object: object): boolean =>
      Object.values(object).includes(undefined) || (!Array.isArray(object) && Object.keys(object).length === 0);
    expect(objectsIn(result).filter(([, object]) => isBare(object)).map(([path]) => path)).toEqual([]);
  }); // prettier-ignore

  it('has no figure that is none', () => {
    expect(textOf(result)).not.toMatch(/NaN|Infinity/);
    // in JSON a NaN of plain numbers is null; a published record has nulls of its own, for limits that nobody set
    if (name !== 'publishedRecordOf') expect(textOf(result)).not.toContain('null');
  });

  it('goes through JSON unchanged', () => {
    expect(JSON.stringify(throughJson(result))).toBe(JSON.stringify(toJson(result)));
  });

  it('is the same each time', () => {
    const { run, args } = examples.find((one) => one.name === name) ?? { run: () => undefined, args: [] };
    expect(args.map((set) => textOf(run(...set)))).toContain(textOf(result));
  });

  it('has quantities that are accepted as input again, with nothing lost', () => {
    for (const [path, quantity] of quantitiesIn(result)) {
      const [[unit, value] = []] = Object.entries(quantity) as [string, string][];
      // by value: a recipe keeps noughts as they are printed
      expect([path, valueIn(quantity as never, unit as never).eq(value ?? '')]).toEqual([path, true]);
    }
  });
});

describe('quantities', () => {
  it('are found in all results that have any', () => {
    const without = results.filter(([, result]) => quantitiesIn(result).length === 0).map(([name]) => name);
    // names of publications; a bare number asked for; steps and cells, which carry their unit as a word
    expect([...new Set(without)].sort()).toEqual([
      'publishedRecordOf',
      'solventRecordOf',
      'sources',
      'valueIn',
      'workingOf',
    ]);
  });
});

describe('basis, edition and cautions', () => {
  const plain = [
    'sources',
    'mapEstimate',
    'roundToStep',
    'splitToStep',
    'valueIn',
    'workingOf',
    'publishedRecordOf',
    'solventRecordOf',
    'readRecipe',
    'processWindows',
    'orderOfWork',
    'publishedFormulas',
    'publishedWindows',
  ];
  const based = results.filter(([name]) => !plain.includes(name)) as [
    string,
    { basis: readonly SourceId[]; edition: string; cautions?: readonly laurate.Remark[]; notes?: readonly laurate.Remark[] },
  ][]; // prettier-ignore

  it.each(based)('%s names its publications, all of them in the bibliography, and the edition', (_name, { basis, edition }) => {
    expect(basis.length).toBeGreaterThan(0);
    expect(sources(basis).map(({ id }) => id)).toEqual([...basis]);
    expect(new Set(basis).size).toBe(basis.length);
    expect(edition).toMatch(/^\d{4}\.\d+$/);
  }); // prettier-ignore

  it.each(based)('%s: notes and cautions have a code and a text', (_name, { cautions = [], notes = [] }) => {
    for (const { code, text } of [...cautions, ...notes]) {
      expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
      expect(text).toMatch(/^\S.+[.]$/s);
    }
  });

  it('what leads to handling lye, acid or spirit has cautions, burns first; nothing else has', () => {
    const cautioned = based.filter(([, { cautions }]) => cautions !== undefined);
    for (const [, { cautions }] of cautioned) expect(cautions?.[0]?.code).toBe('caustic-burns');
    expect([...new Set(cautioned.map(([name]) => name))].sort()).toEqual([
      'acidValueFromTitration',
      'acidityFromTitration',
      'alkaliAssayFromBariumChloride',
      'alkaliAssayFromTwoIndicators',
      'baseFromTarget',
      'batchVolumeOf',
      'checkTemperatures',
      'compositionFrom',
      'correctFreeAlkali',
      'correctSuperfat',
      'dilutedLye',
      'freeAlkaliBehindPh',
      'freeCausticAlkaliFromTitration',
      'heatOfEvaporation',
      'heatOfWarming',
      'judgeFreeAlkali',
      'kohFromNaoh',
      'lyeDensity',
      'lyeFreezingPoint',
      'lyeStrengthFromDensity',
      'lyeStrengthFromMixing',
      'lyeStrengthFromTitration',
      'lyeTemperatureFromDissolving',
      'naohFromKoh',
      'planBatch',
      'planLye',
      'potHeatFromReaction',
      'saponificationValueFromTitration',
      'soapFromLye',
      'soapStateFromTest',
      'stagedLye',
      'superfatFromLye',
      'totalFreeAlkaliFromTitration',
    ]);
  });
});
