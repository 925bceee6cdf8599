/** Texts are few in any corpus; what they bring beyond that is not kept, so that memory stays bounded. */
const KEPT = 1000;

/** A value by its text, worked out when first needed and then remembered: it changes no result, only the time. */
export function remembered<T>(kept: Map<string, T>, text: string, work: () => T): T {
  const known = kept.get(text);
  if (known !== undefined) return known;
  const value = work();
  if (kept.size < KEPT) kept.set(text, value);
  return value;
}
