/**
 * The live page in a real browser: what it shows is what the built library gives here for the same input.
 * `npm run docs && npm run test:browser`; with no Chromium it is skipped, and says so. With SHOTS=folder the page is also
 * kept as pictures.
 */
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';
import { planLye } from 'laurate';
import type { Browser, Page } from 'playwright-core';
import type { Chart } from 'laurate/reports';
import { inputOf, shownOf, type Entry } from '../../docs/live/plan.js';
import { launched, skippedWithout } from './chromium.js';
import { served } from './served.js';

if (!new URL(import.meta.resolve('laurate')).pathname.endsWith('/dist/index.js')) {
  throw new Error('the page is to be held against the built package, not its sources');
}

const built = fileURLToPath(new URL('../../docs/site', import.meta.url));
const skip = skippedWithout('the live page was');

/** The form as it stands when the page is opened. */
const OPENED: Entry = {
  fats: [
    { fat: 'coconut-oil', grams: '610' },
    { fat: 'stearic-acid-50', grams: '230' },
    { fat: 'castor-oil', grams: '60' },
  ],
  alkali: 'naoh',
  state: 'solution',
  hydroxide: '50',
  superfat: '3',
  strength: '33',
  scaleStep: '1',
};

/** Every text a chart says beside its marks. */
const labelsOf = (chart: Chart): readonly string[] =>
  chart.concat.flatMap(({ layer }) =>
    layer.flatMap(({ mark, data, encoding }) =>
      mark.type === 'text' ? data.values.map((row) => String(row[encoding.text?.field ?? ''])) : [],
    ),
  );

describe('the live page', { skip }, () => {
  let browser: Browser;
  let page: Page;
  let site: Awaited<ReturnType<typeof served>>;
  const complaints: string[] = [];
  const requested: string[] = [];

  before(async () => {
    if (!existsSync(`${built}/live/index.html`)) throw new Error('no docs/site: npm run docs first');
    site = await served(built);
    browser = await launched();
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('request', (request) => requested.push(request.url()));
    await page.goto(`${site.url}/live/index.html`);
  });

  after(async () => {
    await browser.close();
    site.close();
    assert.deepEqual(complaints, [], 'the console stays empty');
  });

  const texts = (selector: string): Promise<string[]> => page.locator(selector).allTextContents();
  const picture = async (name: string): Promise<void> => {
    const folder = process.env['SHOTS'];
    if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  };

  /** Every text of the page against the library, asked here. */
  async function agrees(entry: Entry): Promise<void> {
    const shown = shownOf(planLye(inputOf(entry)), entry);
    assert.equal(await page.locator('#result').isVisible(), true);
    assert.deepEqual(
      await texts('#weigh dd'),
      shown.weigh.map(({ text }) => text),
    );
    assert.deepEqual(
      await texts('#weigh dt'),
      shown.weigh.map(({ label }) => label),
    );
    for (const { id, label, low, likely, high } of shown.spread) {
      assert.deepEqual(await texts(`#${id} th, #${id} td`), [label, low, likely, high]);
    }
    assert.equal((await texts('#spread tr')).length, shown.spread.length);
    assert.deepEqual(await texts('#cautions li'), shown.cautions);
    assert.deepEqual(await texts('#notes li'), shown.notes);
    assert.deepEqual(await texts('#sources li'), shown.sources);
    assert.deepEqual(await texts('.error:not(:empty)'), []);
    await page.locator('#charts[aria-busy="false"]').waitFor();
    const drawn = await page.locator('#charts > div').evaluateAll((figures) =>
      figures.map((figure) => ({
        label: figure.getAttribute('aria-label'),
        texts: [...figure.querySelectorAll('text')].map(({ textContent }) => textContent),
      })),
    );
    assert.deepEqual(
      drawn.map(({ label }) => label),
      shown.charts.map(({ description }) => description),
    );
    for (const [at, chart] of shown.charts.entries()) {
      assert.ok(labelsOf(chart).length > 0);
      assert.deepEqual(
        labelsOf(chart).filter((label) => drawn[at]?.texts.includes(label) !== true),
        [],
      );
    }
  }

  it('opens with the plan of its first figures', async () => {
    await agrees(OPENED);
    // of the same charge, worked out by hand from the plan of the guide "From fats to lye": 296 g and a bit at 2 %, so 97/98 of it
    assert.equal(await page.locator('#weigh-naoh').textContent(), '293 g');
    await picture('desktop');
  });

  it('follows every field', async () => {
    await page.getByRole('textbox', { name: 'Superfat' }).fill('5.5');
    await agrees({ ...OPENED, superfat: '5.5' });
    await page.getByRole('textbox', { name: 'Strength of the lye for the pot' }).fill('30');
    await page.getByRole('textbox', { name: 'The scale shows steps of' }).fill('0.1');
    await page.getByLabel('Alkali', { exact: true }).selectOption('koh');
    await page.getByLabel('It is').selectOption('solid');
    await page.getByRole('textbox', { name: 'Hydroxide in it' }).fill('90');
    const potash = { alkali: 'koh', state: 'solid', hydroxide: '90', superfat: '5.5', strength: '30' } as const;
    await agrees({ ...OPENED, ...potash, scaleStep: '0.1' });

    await page.getByRole('button', { name: 'Add a fat' }).click();
    await page.getByRole('group', { name: 'Fat 4' }).getByLabel('Fat', { exact: true }).selectOption('palm-kernel-oil');
    await page.getByRole('group', { name: 'Fat 4' }).getByLabel('Mass, g').fill('123.4');
    await page.getByRole('button', { name: 'Remove fat 2' }).click();
    const [coconut, , castor] = OPENED.fats;
    assert.ok(coconut && castor);
    const fats = [coconut, castor, { fat: 'palm-kernel-oil', grams: '123.4' }];
    await agrees({ ...OPENED, ...potash, scaleStep: '0.1', fats });
  });

  it('says what the library refuses, beside its field, and goes on when it is mended', async () => {
    await page.reload();
    const superfat = page.getByRole('textbox', { name: 'Superfat' });
    await superfat.fill('1,5');
    assert.equal(
      await page.locator('#superfat-error').textContent(),
      "Expected a decimal point: '1.5'; this is '1,5'.",
    );
    assert.equal(await superfat.getAttribute('aria-invalid'), 'true');
    assert.equal(await page.locator('#result').isVisible(), false, 'no figure stays beside a refusal');
    assert.match((await page.getByRole('status').textContent()) ?? '', /^No plan\. /);
    await picture('refused');

    await superfat.fill('3');
    await page.locator('#mass-1').fill('-2');
    assert.match((await page.locator('#fat-1-error').textContent()) ?? '', /^Expected .*; this is -2\.$/);
    await page.locator('#mass-1').fill('230');
    await page.locator('#strength').fill('60');
    assert.match((await page.locator('#strength-error').textContent()) ?? '', /^Expected at most 50 percent/);
    await page.locator('#strength').fill('33');
    await agrees(OPENED);

    for (let left = OPENED.fats.length; left > 0; left -= 1) {
      await page.getByRole('button', { name: 'Remove fat 1' }).click();
    }
    assert.match((await page.locator('#fats-error').textContent()) ?? '', /^Expected a list/);
    await page.reload();
    await agrees(OPENED);
  });

  it('can be used with the keyboard alone, and every field has its label', async () => {
    await page.reload();
    const seen: string[] = [];
    for (let presses = 0; presses < 30; presses += 1) {
      await page.keyboard.press('Tab');
      seen.push(await page.evaluate(() => document.activeElement?.id ?? ''));
    }
    for (const id of ['fat-0', 'mass-2', 'add', 'alkali', 'state', 'hydroxide', 'superfat', 'strength', 'scale-step']) {
      assert.ok(seen.includes(id), `the tabulator reaches ${id}`);
    }
    const unnamed = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')]
        .filter(({ labels }) => labels?.length !== 1)
        .map(({ id }) => id),
    );
    assert.deepEqual(unnamed, []);
    const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map(({ id }) => id));
    assert.equal(new Set(ids).size, ids.length, 'no id stands twice');
    assert.equal(await page.locator('html').getAttribute('lang'), 'en');
    assert.equal(await page.locator('h1').count(), 1);
  });

  it('is not wider than a phone, in light and in dark', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const widths = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth] as const);
      assert.ok(widths[0] <= widths[1], `${String(widths[0])} px in ${String(widths[1])} px`);
      await picture(`phone-${colorScheme}`);
    }
  });

  it('asks nothing of any other host', () => {
    const others = requested.filter((url) => !url.startsWith(site.url) && !url.startsWith('data:'));
    assert.deepEqual(others, []);
  });

  it('is reached from the site, whose search finds a function and a guide', async () => {
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.goto(`${site.url}/functions/laurate.planLye.html`);
    await page.locator('header').getByRole('link', { name: 'Live page' }).first().click();
    await page.waitForURL('**/live/index.html');
    await page.goto(`${site.url}/index.html`);
    await page.locator('#tsd-search-trigger').click();
    await page.locator('#tsd-search-input').fill('naohFromKoh');
    await page.locator('#tsd-search-results').getByText('naohFromKoh').first().waitFor();
    await page.locator('#tsd-search-input').fill('Glossary');
    await page.locator('#tsd-search-results').getByText('Glossary').first().waitFor();
    await page.goto(`${site.url}/documents/Start_here.html`);
    await page.getByRole('link', { name: 'the live page' }).click();
    await page.waitForURL('**/live/index.html');
    await page.goBack();
    await picture('site');
  });
});
