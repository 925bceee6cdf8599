/**
 * The packed tarball in a bundle of each common bundler, run in a real browser: what the page says there is, to the last
 * character, what the same program prints in Node. `npm run build && npm run test:bundles`; with no Chromium it is skipped, and says so.
 */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { transform } from 'esbuild';
import type { Browser } from 'playwright-core';
import { launched, skippedWithout } from '../browser/chromium.js';
import { served } from '../browser/served.js';
import { bundlers } from './bundlers.js';
import { installedIn, root } from './packed.js';

const skip = skippedWithout('the bundles of esbuild, rollup, webpack and vite were');

describe('a bundle in the browser', { skip }, () => {
  const home = mkdtempSync(join(tmpdir(), 'laurate-bundles-'));
  let browser: Browser;
  let site: Awaited<ReturnType<typeof served>>;
  let inNode = '';

  before(async () => {
    installedIn(home);
    writeFileSync(join(home, 'package.json'), '{ "type": "module", "private": true }\n');
    const sources = join(root, 'tests/package/page');
    for (const name of readdirSync(sources)) {
      const { code } = await transform(readFileSync(join(sources, name), 'utf8'), { loader: 'ts' });
      writeFileSync(join(home, name.replace(/\.ts$/, '.js')), code);
    }
    inNode = execFileSync('node', ['print.js'], { cwd: home, encoding: 'utf8', maxBuffer: 2 ** 25 });
    site = await served(home);
    browser = await launched();
  });

  after(async () => {
    await browser.close();
    site.close();
    rmSync(home, { recursive: true, force: true });
  });

  it('has something to say', () => {
    const { weigh, verdict, selfCheck } = JSON.parse(inNode) as Record<string, unknown>;
    // as in the README; and 178 g of hydroxide for at most 170 g that 900 g of coconut oil can take up
    assert.deepEqual(
      { weigh, verdict, selfCheck },
      {
        weigh: ['246', '127'],
        verdict: 'dangerous',
        selfCheck: [true, true],
      },
    );
  });

  for (const [name, bundled] of Object.entries(bundlers)) {
    it(`made by ${name} says what Node says`, async () => {
      await bundled(join(home, 'page.js'), join(home, `${name}.bundle.js`));
      writeFileSync(
        join(home, `${name}.html`),
        `<!doctype html><meta charset="utf-8"><title>${name}</title><body><script src="${name}.bundle.js"></script>`,
      );
      const page = await browser.newPage();
      const complaints: string[] = [];
      const requested: string[] = [];
      page.on('console', (message) => complaints.push(message.text()));
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('request', (request) => requested.push(request.url().replace(site.url, '')));
      await page.goto(`${site.url}/${name}.html`);
      assert.deepEqual(complaints, [], 'the console stays empty');
      assert.equal(await page.locator('main').textContent(), inNode);
      assert.deepEqual(requested, [`/${name}.html`, `/${name}.bundle.js`], 'all is in the one script');
      await page.close();
    });
  }
});
