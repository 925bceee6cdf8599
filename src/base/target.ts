import { readAddition, type Addition, type SolventId } from '../composition/index.js';
import { frozen, readShape, refuse, ZERO, type Decimal, type Limits } from '../numbers/index.js';
import {
  readPercent,
  type Fraction,
  type FractionInput,
  type Ranged,
  type SpiritStrengthInput,
} from '../quantities/index.js';
import {
  baseComponents,
  boughtSolvents,
  type BaseComponent,
  type BoughtSolvent,
  type SuppliedComponent,
} from './components.js';

/** What a base should hold, each share of the finished base; `glycerol` is formed and added together. */
export type BaseTarget = { readonly [K in BaseComponent]?: FractionInput };

/** A target, or what came of it, in a result. */
export type BaseShares = { readonly [K in BaseComponent]?: Fraction };

/** What a component is weighed from; ethanol also by its strength by volume. */
export type BaseSupplies = {
  readonly [K in Exclude<BoughtSolvent, 'ethanol'>]?: { readonly assay: Ranged<FractionInput> };
} & {
  readonly ethanol?: { readonly assay: Ranged<FractionInput> | Ranged<SpiritStrengthInput> };
  /** The one salt that is added, by its name. */
  readonly salts?: { readonly salt: string };
  /** The one other thing that is added, by its name. */
  readonly other?: { readonly name: string };
};

/** What each component of a base is weighed from, as read. */
export type Supplies = ReadonlyMap<SuppliedComponent, Addition>;

/** A target as read. */
export interface ReadTarget {
  /** Percent of each component that is stated, or that is not left out. */
  readonly shares: ReadonlyMap<BaseComponent, Decimal>;
  /** The component that makes up the rest: the one left out, or water where all are given. */
  readonly leftOut: BaseComponent;
  /** Water as stated: where all are given it must close them. */
  readonly closing: Decimal | undefined;
  readonly given: BaseShares;
}

/** With less there is nothing to call a soap base; it keeps the fats above nothing. */
export const LEAST_SOAP = '0.01';
const SOAP: Limits = { min: LEAST_SOAP, max: 100 };
const SHARE: Limits = { min: 0, max: 100 };

/**
 * Reads what each component is weighed from.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `unknown-unit` and the faults of an assay
 */
export function readSupplies(path: string, value: unknown): Supplies {
  const solvents = new Map<string, SolventId>(boughtSolvents());
  const fields = readShape(path, value, [...solvents.keys(), 'salts', 'other']);
  const found = new Map<SuppliedComponent, Addition>();
  for (const name of Object.keys(fields) as SuppliedComponent[]) {
    if (fields[name] === undefined) continue;
    const [here, solvent] = [`${path}.${name}`, solvents.get(name)];
    const key = solvent !== undefined ? 'assay' : name === 'salts' ? 'salt' : 'name';
    found.set(name, readAddition(here, { ...readShape(here, fields[name], [key]), solvent }, ZERO));
  }
  return found;
}

/** Supplies as they stand in `given`. */
export function givenSupplies(supplies: Supplies): BaseSupplies {
  const shown = [...supplies].map(([name, { given }]) => {
    if ('assay' in given) return [name, frozen({ assay: given.assay })] as const;
    return [name, frozen('salt' in given ? { salt: given.salt } : { name: given.name })] as const;
  });
  return frozen(Object.fromEntries(shown));
}

/**
 * Reads a target. Of soap, water, and all that has a supply, one may be left out; glycerol that forms needs neither.
 *
 * @throws CalculationError `missing` (a supply, more than one share), `unknown-key` and the faults of a quantity
 */
export function readBaseTarget(path: string, value: unknown, supplies: Supplies): ReadTarget {
  const known = baseComponents();
  const fields = readShape(path, value, known);
  const shares = new Map<BaseComponent, Decimal>();
  for (const name of known) {
    if (fields[name] === undefined) continue;
    shares.set(name, readPercent(`${path}.${name}`, fields[name], name === 'soap' ? SOAP : SHARE));
    const isSupplied = name === 'soap' || name === 'water' || supplies.has(name);
    if (!isSupplied) refuse('missing', `supplies.${name}`, `what ${name} is weighed from`, undefined);
  }
  const given = sharesOf(shares);
  const open = (['soap', ...supplies.keys(), 'water'] as const).filter((name) => !shares.has(name));
  if (open.length > 1) {
    refuse('missing', path, `a share of all of these but one: ${open.join(', ')}`, 'none of them');
  }
  const [leftOut = 'water'] = open;
  const closing = shares.get('water');
  shares.delete(leftOut);
  return { shares, leftOut, closing, given };
}

/** Shares as they stand in a result. */
export function sharesOf(shares: ReadonlyMap<BaseComponent, Decimal>): BaseShares {
  return frozen(Object.fromEntries([...shares].map(([name, percent]) => [name, frozen({ percent })])));
}
