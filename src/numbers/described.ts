const LONGEST = 80;

function words(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return value === '' ? 'an empty text' : value;
    case 'undefined':
      return 'nothing';
    case 'function':
      return 'a function';
    case 'symbol':
      return 'a symbol';
    case 'object':
      if (value === null) return 'null';
      return Array.isArray(value) ? `a list of ${String(value.length)}` : 'an object';
    default:
      return String(value);
  }
}

/** Any value as short text for an error message; never runs code of the value, never longer than 80 characters. */
export function described(value: unknown): string {
  const text = words(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}
