import type { GivenAddition } from '../composition/index.js';

/** What an addition that is no solvent on file is called by whoever added it. */
export function ownName(given: GivenAddition): string | undefined {
  const { salt, name }: Pick<GivenAddition, 'mass'> & { readonly salt?: string; readonly name?: string } = given;
  return salt ?? name;
}
