const LONGEST = 80;

/** Whether it is a list that can be read: a proxy may be revoked, or throw when its length is asked for. */
export function isList(value: unknown): value is readonly unknown[] {
  try {
    return Array.isArray(value) && value.length >= 0;
  } catch {
    return false;
  }
}

function words(value: unknown): string {
  switch (typeof value) {
    case 'undefined':
      return 'nothing';
    case 'string':
      return value === '' ? 'an empty text' : value;
    case 'object':
      if (value === null) return 'null';
      // the text of an object could run code of its own
      return isList(value) ? `a list of ${String(value.length)}` : 'an object';
    case 'function':
    case 'symbol':
      return `a ${typeof value}`;
    default:
      return String(value);
  }
}

/** Any value as short text for an error message; never runs code of the value, never longer than 80 characters. */
export function described(value: unknown): string {
  const text = words(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}

/** The same of what came as it was written: a text in quotes, so that blanks in it are seen. */
export function asWritten(value: unknown): string {
  if (typeof value !== 'string' || value === '') return described(value);
  return `'${value.length > LONGEST - 2 ? `${value.slice(0, LONGEST - 3)}…` : value}'`;
}
