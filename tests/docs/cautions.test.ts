import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { expect, it } from 'vitest';
import { objectsIn, results } from '../laws/examples.js';
import { allCautions, cautionsPage } from './cautionsPage.js';

const page = fileURLToPath(new URL('../../docs/cautions.md', import.meta.url));

it('the guide of cautions says what the code says', async () => {
  const text = await format(cautionsPage, { ...(await resolveConfig(page)), parser: 'markdown' });
  await expect(text).toMatchFileSnapshot(page);
});

it('no result of any function says a caution that is not in the guide', () => {
  const known = new Set(allCautions.map(({ code, text }) => `${code}: ${text}`));
  const said = results.flatMap(([, result]) =>
    objectsIn(result).flatMap(([path, object]) =>
      /(^|\.)cautions[.[]/.test(path) && 'code' in object && 'text' in object
        ? [`${String(object.code)}: ${String(object.text)}`]
        : [],
    ),
  );
  expect(said.length).toBeGreaterThan(0);
  expect(said.filter((caution) => !known.has(caution))).toEqual([]);
});

it('one code has one meaning: it stands under one heading only', () => {
  const texts = allCautions.map(({ text }) => text);
  expect(new Set(texts).size).toBe(texts.length);
});
