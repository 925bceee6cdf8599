import { readAlkaliSource, type Alkali, type AlkaliSource, type ReadSource } from '../lye/index.js';
import { frozen, ONE, readShape, refuse, type Decimal, type Numeric } from '../numbers/index.js';
import { readPercent, type Fraction, type FractionInput } from '../quantities/index.js';

/** Sodium hydroxide alone. */
export interface NaohAlone {
  readonly naoh: AlkaliSource;
  readonly koh?: never;
  readonly kohShare?: never;
}
/** Potassium hydroxide alone. */
export interface KohAlone {
  readonly koh: AlkaliSource;
  readonly naoh?: never;
  readonly kohShare?: never;
}
/** Both, potassium's share by mole of hydroxide. */
export interface NaohWithKoh {
  readonly naoh: AlkaliSource;
  readonly koh: AlkaliSource;
  /** Share of the hydroxide, by mole, that comes from potassium hydroxide; above 0 and below 100 percent. */
  readonly kohShare: FractionInput;
}

/** The alkali of a plan: NaOH, KOH, or both. */
export type AlkaliChoice = NaohAlone | KohAlone | NaohWithKoh;

/** The alkalis a choice names; of a union of choices, each by itself. */
export type ChosenAlkali<A> = A extends { readonly naoh: AlkaliSource; readonly koh: AlkaliSource }
  ? 'naoh' | 'koh'
  : A extends { readonly naoh: AlkaliSource }
    ? 'naoh'
    : A extends { readonly koh: AlkaliSource }
      ? 'koh'
      : never;

type KeysOf<S> = S extends unknown ? keyof S : never;
type FieldOf<S, K> = S extends unknown ? (K extends keyof S ? S[K] : never) : never;

/** A value's own type with every key forbidden that its declared shape does not have, at any depth. */
export type Exact<A, Shape> = A extends Numeric
  ? A
  : A extends object
    ? { readonly [K in keyof A]: K extends KeysOf<Shape> ? Exact<A[K], FieldOf<Shape, K>> : never }
    : A;

/** One alkali of a plan, as read. */
export interface PlannedAlkali {
  readonly alkali: Alkali;
  readonly source: ReadSource;
  /** Its share of the hydroxide, by mole, as a fraction of one. */
  readonly share: Decimal;
}

/** A choice as it stands in `given`. */
export interface GivenAlkali {
  readonly naoh?: AlkaliSource;
  readonly koh?: AlkaliSource;
  readonly kohShare?: Fraction;
}

const EXPECTED = '{ naoh: { solution: { hydroxide: { percent: 50 } } } }, the same of koh, or both with kohShare';

/**
 * Reads the alkali of a plan.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key` and the faults of a source
 */
export function readAlkaliChoice(
  path: string,
  value: unknown,
): { readonly alkalis: readonly PlannedAlkali[]; readonly given: GivenAlkali } {
  const { naoh, koh, kohShare } = readShape(path, value, ['naoh', 'koh', 'kohShare'], EXPECTED);
  const source = (alkali: Alkali, given: unknown): ReadSource => readAlkaliSource(`${path}.${alkali}`, given, alkali);
  if (naoh !== undefined && koh !== undefined) {
    const percent = readPercent(`${path}.kohShare`, kohShare, { above: 0, below: 100 });
    const [soda, potash, share] = [source('naoh', naoh), source('koh', koh), percent.div(100)];
    return {
      alkalis: [
        { alkali: 'naoh', source: soda, share: ONE.minus(share) },
        { alkali: 'koh', source: potash, share },
      ],
      given: frozen({ naoh: soda.given, koh: potash.given, kohShare: frozen({ percent }) }),
    };
  }
  if (kohShare !== undefined)
    refuse('bad-shape', `${path}.kohShare`, 'a share only where there are two alkalis', 'one alkali');
  const alkali = naoh !== undefined ? 'naoh' : 'koh';
  const only = naoh ?? koh;
  if (only === undefined) refuse('missing', path, 'naoh, koh, or both with kohShare', 'neither');
  const read = source(alkali, only);
  return { alkalis: [{ alkali, source: read, share: ONE }], given: frozen({ [alkali]: read.given }) };
}
