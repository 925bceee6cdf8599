/** The page as a browser runs it. */
import { figures } from './figures.js';

const main = document.createElement('main');
main.textContent = figures();
document.body.append(main);
