import { namedAcid } from '../../composition/namedAdditions.js';
import { isPublishedFat } from '../../fats/index.js';
import { frozen } from '../../numbers/index.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import type { ReadAddition } from '../potAdditions.js';

/** Additions that go by the name of a fat; fatty acids are told as acids. */
export function namedFats({ additions, unweighed }: Pot): readonly ReadAddition[] {
  return [...additions, ...unweighed].filter(
    ({ holds, name }) => holds === undefined && isPublishedFat(name) && namedAcid(name) === undefined,
  );
}

/** What fats among the additions do to the lye, which is not counted. */
export function addedFatFindings(pot: Pot): readonly Finding[] {
  return namedFats(pot).map(({ path, name }) => ({
    code: 'fat-not-counted',
    severity: 'note',
    path,
    values: frozen({}),
    explanation: `${name} goes by the name of a fat. Among the additions it is not judged: neither what it takes up of the lye nor what it adds to the fat left is counted. It belongs among the fats.`,
    slips: frozen([]),
    basis: frozen([]),
  }));
}
