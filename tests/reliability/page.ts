/** How docs/reliability.md shows its figures. */
import { table } from '../pages.js';

/** A count as it is read: groups of three. */
export const counted = (count: number): string => String(count).replaceAll(/\B(?=(?:\d{3})+$)/g, ' ');

/** A table with wide cells, which padding would blow up. */
export const unpadded = (...cells: Parameters<typeof table>): string =>
  `<!-- prettier-ignore-start -->\n\n${table(...cells)}\n\n<!-- prettier-ignore-end -->`;
