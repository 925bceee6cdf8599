import {
  checkedNumber,
  Decimal,
  isDecimal,
  readFields,
  readNumber,
  refuse,
  refuseKey,
  type Limits,
  type Numeric,
} from '../numbers/index.js';
import type { SourceId } from '../sources/index.js';

/** Exactly one of several keys: the others may not stand beside it. */
export type OneChoice<C> = {
  [K in keyof C]: { readonly [P in K]: C[P] } & { readonly [P in Exclude<keyof C, K>]?: never };
}[keyof C];

/** A quantity as a caller gives it: one unit key with a number, and nothing else. */
export type OneUnit<U extends string> = OneChoice<Record<U, Numeric>>;

/** How one unit stands to the canonical unit of its kind. */
export interface Unit {
  /** The path is for a value that the unit cannot hold. */
  readonly toCanonical: (value: Decimal, path: string) => Decimal;
  readonly fromCanonical: (value: Decimal, path: string) => Decimal;
  /** Whether it is the canonical unit, in which limits are. */
  readonly isCanonical?: boolean;
  /** Whether more of it is less in the canonical unit. */
  readonly isBackward?: boolean;
  /** Publication that fixes the unit. */
  readonly source: SourceId;
}

/** All units of one kind of quantity. */
export type Units<U extends string> = Readonly<Record<U, Unit>>;

/** The canonical unit itself. */
export function canonical(source: SourceId): Unit {
  return { toCanonical: (value) => value, fromCanonical: (value) => value, isCanonical: true, source };
}

/** A unit that is an exact multiple of the canonical one; the factor is parsed or worked out when first used. */
export function scaled(factor: string | (() => Decimal), source: SourceId): Unit {
  let parsed: Decimal | undefined;
  const used = (): Decimal => (parsed ??= typeof factor === 'string' ? new Decimal(factor) : factor());
  return { toCanonical: (value) => value.times(used()), fromCanonical: (value) => value.div(used()), source };
}

function canonicalName<U extends string>(units: Units<U>): string {
  return String(Object.keys(units).find((key) => units[key as U].isCanonical === true));
}

/** What a quantity looks like, in words. */
function aQuantity(units: Units<string>): string {
  const chief = canonicalName(units);
  const others = Object.keys(units).filter((name) => name !== chief);
  return `a quantity such as { ${chief}: … }${others.length === 0 ? '' : ` (or ${others.join(', ')})`}`;
}

/**
 * Reads a quantity: exactly one unit key of its kind, holding one number. Limits are in the canonical unit; refused, they are
 * told in the unit that came.
 *
 * @returns the value in the canonical unit
 * @throws CalculationError `missing`, `bad-shape`, `two-units`, `unknown-unit`, `not-a-number` or `out-of-range`
 */
export function readQuantity<U extends string>(
  path: string,
  value: unknown,
  units: Units<U>,
  limits?: Limits,
): Decimal {
  const fields = readFields(path, value, () => aQuantity(units));
  let found: U | undefined;
  for (const key in fields) {
    if (!Object.hasOwn(units, key)) refuseUnit(path, value, key, units);
    if (found !== undefined) refuse('two-units', path, 'exactly one unit', `${found} and ${key}`);
    found = key as U;
  }
  if (found === undefined) refuse('missing', path, aQuantity(units), 'an empty object');
  const at = `${path}.${found}`;
  const { toCanonical, fromCanonical, isCanonical, isBackward } = units[found];
  const came = readNumber(at, fields[found], isCanonical === true ? limits : undefined);
  if (isCanonical === true) return came;
  const read = toCanonical(came, at);
  if (isBackward === true) {
    return checkedNumber(at, read, limits, came.toString(), String, ` ${canonicalName(units)}`);
  }
  const told = (limit: number | string | Decimal): string =>
    fromCanonical(new Decimal(limit), at).toSignificantDigits(6).toString();
  return checkedNumber(at, read, limits, came.toString(), told);
}

/** A Decimal has fields too, but is a number without its unit. */
function refuseUnit(path: string, value: unknown, key: string, units: Units<string>): never {
  if (isDecimal(value)) refuse('bad-shape', path, aQuantity(units), value.toString());
  return refuseKey('unknown-unit', path, key, Object.keys(units));
}
