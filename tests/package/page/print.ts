/** The same, as Node runs it. */
import { figures } from './figures.js';

process.stdout.write(figures());
