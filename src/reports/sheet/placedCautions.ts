import type { Remark } from '../../numbers/index.js';
import { escaped } from '../markdown.js';

/** Places of a sheet where a caution can stand. */
export type CautionPlace =
  'start' | 'weigh' | 'lye' | 'fats' | 'saponify' | 'test' | 'clear' | 'rest' | 'weigh-pot' | 'pour' | 'end';

/** Where the hand meets what each caution is of. */
const PLACES: Readonly<Record<string, readonly CautionPlace[]>> = {
  'caustic-burns': ['weigh'],
  'no-aluminium-zinc-tin': ['weigh'],
  'children-and-animals': ['weigh'],
  'solid-into-cold-water': ['lye'],
  'diluting-warms': ['lye'],
  'crystallised-stock': ['lye'],
  'free-fatty-acid-reacts-at-once': ['fats'],
  'lye-into-hot-soap': ['saponify'],
  'carbonate-foams': ['saponify'],
  'reaction-can-run': ['saponify'],
  'pot-may-boil': ['saponify'],
  'spirit-may-boil': ['saponify'],
  'amine-hides-alkali': ['test'],
  'free-caustic-possible': ['test'],
  'none-left-on-paper': ['test'],
  'sugar-in-hot-lye': ['clear'],
  'spirit-catches-fire': ['clear', 'rest'],
  'acid-into-hot-soap': ['rest'],
  // the pot is hot from the lye on
  'hot-soap-scalds': ['saponify', 'pour'],
  'sums-not-a-certificate': ['end'],
};

const BEFORE_ALL: readonly CautionPlace[] = ['start'];

const placesOf = (code: string): readonly CautionPlace[] =>
  (Object.hasOwn(PLACES, code) ? PLACES[code] : undefined) ?? BEFORE_ALL;

/** The cautions that stand at a place, in one paragraph; what has no place of its own stands before everything. */
export function cautionsAt(place: CautionPlace, cautions: readonly Remark[]): readonly string[] {
  const here = cautions.filter(({ code }) => placesOf(code).includes(place));
  return here.length === 0 ? [] : [`**Caution:** ${here.map(({ text }) => escaped(text)).join(' ')}`];
}
