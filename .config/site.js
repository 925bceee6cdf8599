// Completes docs/site after TypeDoc: builds the live page from the built package, then checks every link of every page.
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const site = join(root, 'docs/site');

mkdirSync(join(site, 'live'), { recursive: true });
copyFileSync(join(root, 'docs/live/live.html'), join(site, 'live/index.html'));
// TypeDoc's copy of the source, to which the plugin has left no link
rmSync(join(site, 'media/live.html'), { force: true });
const { metafile } = await build({
  // `laurate` is resolved by the package's own exports, to what is packed.
  entryPoints: [join(root, 'docs/live/live.ts')],
  outfile: join(site, 'live/live.js'),
  bundle: true,
  minify: true,
  metafile: true,
  format: 'iife',
  target: 'es2022',
  logLevel: 'warning',
  // what a chunk imports for its order alone has no effect, as package.json says
  logOverride: { 'ignored-bare-import': 'silent' },
});
const fromSource = Object.keys(metafile.inputs).filter((input) => relative(root, resolve(input)).startsWith('src'));
if (fromSource.length > 0) throw new Error(`the live page is built of sources: ${fromSource.join(', ')}`);

const pages = readdirSync(site, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.html'))
  .map((name) => join(site, name));
const texts = new Map(pages.map((page) => [page, readFileSync(page, 'utf8')]));
const anchors = new Map([...texts].map(([page, text]) => [page, new Set(attributes(text, 'id'))]));

/** Values of an attribute, wherever it stands in a page. */
function attributes(text, name) {
  return [...text.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map(([, value]) => value.replaceAll('&amp;', '&'));
}

const broken = [...texts].flatMap(([page, text]) =>
  [...attributes(text, 'href'), ...attributes(text, 'src')]
    .filter((link) => !/^[a-z]+:/.test(link))
    .filter((link) => !resolves(page, link))
    .map((link) => `${relative(site, page)}: ${link}`),
);

function resolves(page, link) {
  const [path, anchor] = link.split('#').map(decodeURIComponent);
  const target = path === '' ? page : join(dirname(page), path);
  if (!existsSync(target) || !statSync(target).isFile()) return false;
  return anchor === undefined || anchor === '' || !anchors.has(target) || anchors.get(target).has(anchor);
}

for (const fault of new Set(broken)) console.error(`leads nowhere: ${fault}`);
console.log(`docs/site: ${pages.length} pages, ${new Set(broken).size} links that lead nowhere`);
process.exitCode = broken.length === 0 ? 0 : 1;
