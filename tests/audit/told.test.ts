/**
 * What an audit tells of drawn recipes with a slip each, of every kind in turn, and of some that hold everything: findings, their
 * figures to five digits, and slips in the order they are told in. The recipes are invented. The list is told.txt; whoever changes it reads the difference.
 */
import { toJson } from 'laurate';
import type { Finding, Slip } from 'laurate/audit';
import { expect, it } from 'vitest';
import { slipCorpus, soundCorpus } from '../bench/audit/corpus.js';
import { Exact } from '../laws/exact.js';
import { audited, full, whole } from './recipes.js';

const FIGURE = /^-?\d+\.\d+$/;
/** Data in one line, its figures to five digits. */
const brief = (value: unknown): string =>
  JSON.stringify(toJson(value), (_key, one: unknown) =>
    typeof one === 'string' && FIGURE.test(one) ? new Exact(one).toSignificantDigits(5).toString() : one,
  ).replaceAll('"', '');

const slipTold = ({ code, path, how, predicted, words }: Slip): string =>
  `    ${how} ${code}${path === undefined ? '' : ` in ${path}`} ${brief(words)}: ${brief(predicted)}`;

function findingTold({ code, severity, path, claimed, computed, values, slips, basis }: Finding): string {
  const figures = Object.entries({ claimed, computed, values }).flatMap(([name, value]) =>
    value === undefined || brief(value) === '{}' ? [] : [`    ${name} ${brief(value)}`],
  );
  return [
    `  ${severity} ${code} at ${path}, of ${String(basis.length)} sources`,
    ...figures,
    ...slips.map(slipTold),
  ].join('\n');
}

it('is what is written', async () => {
  const recipes = [full, whole, ...soundCorpus(6, 71), ...slipCorpus(96, 72)];
  const told = recipes.map((recipe, at) => {
    const { verdict, findings } = audited(recipe);
    return [`${String(at + 1)}: ${verdict}`, ...findings.map(findingTold), ''].join('\n');
  });
  await expect(told.join('\n')).toMatchFileSnapshot('told.txt');
});
