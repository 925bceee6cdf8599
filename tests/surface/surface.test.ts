import { readFileSync } from 'node:fs';
import * as laurate from 'laurate';
import * as audit from 'laurate/audit';
import * as checkValues from 'laurate/check-values';
import * as recipe from 'laurate/recipe';
import * as reports from 'laurate/reports';
import { describe, expect, it } from 'vitest';

/** Values (not types) in a report of the public surface. */
function reportedValues(report: string): string[] {
  const text = readFileSync(new URL(`../../docs/api/${report}.api.md`, import.meta.url), 'utf8');
  return [...text.matchAll(/^export (?:declare )?(?:abstract )?(?:class|const|function|let) (\w+)/gm)].flatMap(
    ([, name]) => name ?? [],
  );
}

describe('the public surface', () => {
  it.each([
    ['laurate', laurate],
    ['laurate-recipe', recipe],
    ['laurate-audit', audit],
    ['laurate-reports', reports],
    ['laurate-check-values', checkValues],
  ])('of %s is the one reported in docs/api (npm run api:update writes it)', (report, entry) => {
    expect(Object.keys(entry).sort()).toEqual([...new Set(reportedValues(report))].sort());
  });
});
