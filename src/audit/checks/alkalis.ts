import { isNamedAlkali } from '../../composition/namedAdditions.js';
import { frozen } from '../../numbers/index.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';

/** Additions that go by the name of an alkali: nothing tells how much of it they hold. */
export function alkaliFindings({ additions, unweighed }: Pot): readonly Finding[] {
  return [...additions, ...unweighed]
    .filter(({ holds, name }) => holds === undefined && isNamedAlkali(name))
    .map(({ path, name }) => ({
      code: 'alkali-not-counted',
      severity: 'caution',
      path,
      values: frozen({}),
      explanation: `${name} goes by the name of an alkali. Among the additions it is not counted: superfat and free caustic are told without it, and it burns skin. It belongs to the lye.`,
      slips: frozen([]),
      basis: frozen([]),
    }));
}
