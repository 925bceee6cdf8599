/** Writes the page of validation, as `npm run report`. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { validationPage } from './page.js';

const page = fileURLToPath(new URL('../../docs/validation.md', import.meta.url));
writeFileSync(page, await format(validationPage, { ...(await resolveConfig(page)), parser: 'markdown' }));
