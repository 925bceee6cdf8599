import type { GivenAddition } from '../composition/index.js';

/** What an addition that is no solvent on file is called by whoever added it. */
export function ownName(given: GivenAddition): string | undefined {
  if ('solvent' in given) return undefined;
  return 'salt' in given ? given.salt : given.name;
}
