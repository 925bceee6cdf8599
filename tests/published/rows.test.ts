import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { checkValues, knownDisagreements } from 'laurate/check-values';
import { auditChecks } from '../../src/checkValues/data/audits.js';
import { chemistryChecks } from '../../src/checkValues/data/chemistry.js';
import { fattyMatterChecks } from '../../src/checkValues/data/fattyMatter.js';
import { foodTableChecks } from '../../src/checkValues/data/foodTables.js';
import { freeAlkaliChecks } from '../../src/checkValues/data/freeAlkali.js';
import { glycerolYieldChecks } from '../../src/checkValues/data/glycerolYields.js';
import { handbookFatChecks } from '../../src/checkValues/data/handbookFats.js';
import { hydrometerChecks } from '../../src/checkValues/data/hydrometer.js';
import { lyeChecks } from '../../src/checkValues/data/lye.js';
import { lyeBenchChecks } from '../../src/checkValues/data/lyeBench.js';
import { lyeDensityChecks } from '../../src/checkValues/data/lyeDensities.js';
import { oxideColumnChecks } from '../../src/checkValues/data/oxideColumn.js';
import { printedCompositionChecks } from '../../src/checkValues/data/printedCompositions.js';
import { printedRecipeChecks } from '../../src/checkValues/data/printedRecipes.js';
import { processHeatChecks } from '../../src/checkValues/data/processHeats.js';
import { profileBoundsChecks } from '../../src/checkValues/data/profileBounds.js';
import { quantityChecks } from '../../src/checkValues/data/quantities.js';
import { sampledFatChecks } from '../../src/checkValues/data/sampledFats.js';
import { saponificationChecks } from '../../src/checkValues/data/saponification.js';
import { solventDensityChecks } from '../../src/checkValues/data/solventDensities.js';
import { soapYieldChecks } from '../../src/checkValues/data/soapYields.js';
import { standardRangeChecks } from '../../src/checkValues/data/standardRanges.js';
import { sources } from '../../src/sources/index.js';

describe('the rows', () => {
  it('are as many as were carried over, file by file', () => {
    const counts = {
      quantities: quantityChecks.length,
      chemistry: chemistryChecks.length,
      handbookFats: handbookFatChecks.length,
      sampledFats: sampledFatChecks().length,
      standardRanges: standardRangeChecks().length,
      profileBounds: profileBoundsChecks().length,
      foodTables: foodTableChecks().length,
      hydrometer: hydrometerChecks().length,
      lye: lyeChecks.length,
      oxideColumn: oxideColumnChecks().length,
      lyeDensities: lyeDensityChecks().length,
      lyeBench: lyeBenchChecks().length,
      saponification: saponificationChecks.length,
      soapYields: soapYieldChecks.length,
      glycerolYields: glycerolYieldChecks().length,
      printedRecipes: printedRecipeChecks.length,
      solventDensities: solventDensityChecks().length,
      printedCompositions: printedCompositionChecks().length,
      fattyMatter: fattyMatterChecks().length,
      freeAlkali: freeAlkaliChecks.length,
      processHeats: processHeatChecks().length,
      audits: auditChecks().length,
    };
    expect(counts).toEqual({
      quantities: 6,
      chemistry: 94,
      handbookFats: 35,
      sampledFats: 85,
      standardRanges: 133,
      profileBounds: 97,
      foodTables: 88,
      hydrometer: 348,
      lye: 9,
      oxideColumn: 63,
      lyeDensities: 224,
      lyeBench: 31,
      saponification: 47,
      soapYields: 20,
      glycerolYields: 11,
      printedRecipes: 93,
      solventDensities: 257,
      printedCompositions: 213,
      fattyMatter: 6,
      freeAlkali: 56,
      processHeats: 7,
      audits: 121,
    });
    expect(checkValues()).toHaveLength(Object.values(counts).reduce((sum, count) => sum + count, 0));
  });

  it('have names of their own, in kebab-case', () => {
    const ids = checkValues().map((row) => row.id);
    expect(ids).toEqual([...new Set(ids)]);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it('are plain data: JSON gives them back unchanged', () => {
    expect(JSON.parse(JSON.stringify(checkValues()))).toEqual(checkValues());
  });

  it('cite a publication of the bibliography, and a place in it', () => {
    for (const { id, source, where } of checkValues()) {
      expect(sources([source]), id).toHaveLength(1);
      expect(where, id).not.toBe('');
    }
  });

  it('expect what is printed, unless they say what is wrong with it', () => {
    for (const row of checkValues()) {
      if ('expectedWords' in row) {
        // the words follow from a printed or worked out range: a line of its own, below
        expect(row.expectedWords.length, row.id).toBeGreaterThan(0);
      } else if ('expectedInside' in row) {
        expect(new Decimal(row.printed).times(row.times ?? 1).eq(row.expectedInside), row.id).toBe(true);
      } else if ('expectedBounds' in row) {
        expect(row.printed, row.id).toBe(row.expectedBounds.join(' to '));
      } else if ('expectedRange' in row) {
        expect(row.printed, row.id).toBe(row.expectedRange.map((limit) => limit ?? '').join('-'));
      } else {
        const asPrinted = new Decimal(row.printed).times(row.times ?? 1);
        expect(asPrinted.eq(row.expected), row.id).toBe(row.misprint === undefined);
      }
    }
  });
});

describe('the verdicts that are expected of printed recipes', () => {
  const verdicts = checkValues().filter((row) => row.call === 'auditRecipe' && row.result === 'verdict');

  it('follow from the superfat that was worked out', () => {
    const counts = new Map<string, number>();
    for (const row of verdicts) {
      if (!('expectedWords' in row)) throw new Error(row.id);
      const [low = NaN, high = low] = row.printed.split(' to ').map(Number);
      const words = row.expectedWords.join(' or ');
      counts.set(words, (counts.get(words) ?? 0) + 1);
      // to the tenth that they are rounded to
      if (words === 'dangerous') expect(high, row.id).toBeLessThan(0);
      else if (words === 'sound') expect([low > 0, low < 20], row.id).toEqual([true, true]);
      else if (words === 'doubtful') expect(low, row.id).toBeGreaterThan(20);
      else if (words === 'dangerous or doubtful') expect([low < 0, high >= 0], row.id).toEqual([true, true]);
      else expect([words, low], row.id).toEqual(['doubtful or sound', 0]);
    }
    expect(Object.fromEntries(counts)).toEqual({
      dangerous: 63,
      'dangerous or doubtful': 13,
      sound: 13,
      doubtful: 4,
      'doubtful or sound': 1,
    });
  });
});

describe('the known disagreements', () => {
  it('are rows, each with a reason', () => {
    const ids = new Set(checkValues().map((row) => row.id));
    for (const [id, reason] of Object.entries(knownDisagreements)) {
      expect(ids, id).toContain(id);
      expect(reason.length, id).toBeGreaterThan(20);
    }
  });
});
