/** Writes the figures of the guides, as `npm run figures`. */
import { mkdir, writeFile } from 'node:fs/promises';
import { figures } from '../../docs/examples/figures.js';
import { figureFile, svgOf } from './svgOf.js';

await mkdir(figureFile('.'), { recursive: true });
for (const [name, chart] of Object.entries(figures)) {
  const { svg, complaints } = await svgOf(chart);
  if (complaints.length > 0) throw new Error(`${name}: ${complaints.join('; ')}`);
  await writeFile(figureFile(`${name}.svg`), `${svg}\n`);
}
