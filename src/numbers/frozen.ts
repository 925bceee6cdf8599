/** Freezes one object and gives it back; results are frozen where they are made, so that nothing is walked twice. */
export function frozen<T extends object>(value: T): Readonly<T> {
  return Object.freeze(value);
}
