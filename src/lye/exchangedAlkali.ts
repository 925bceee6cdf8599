import { frozen, noted, type Decimal, type Steps } from '../numbers/index.js';
import { readMass, readPercent, type Amount, type Fraction, type Mass } from '../quantities/index.js';
import { hydroxideMolarMass, type Alkali } from './alkali.js';
import { ASSAY } from './limits.js';

/** A mass of one alkali and the assays of both, as read. */
export interface Exchange {
  readonly mass: Mass;
  readonly fromAssay: Fraction;
  readonly toAssay: Fraction;
}

/** Reads a mass of alkali and the two assays, each under its own name. */
export function readExchange(fields: Readonly<Record<string, unknown>>, from: Alkali, to: Alkali): Exchange {
  return {
    mass: frozen({ g: readMass(from, fields[from]) }),
    fromAssay: frozen({ percent: readPercent(`${from}Assay`, fields[`${from}Assay`], ASSAY) }),
    toAssay: frozen({ percent: readPercent(`${to}Assay`, fields[`${to}Assay`], ASSAY) }),
  };
}

/** Grams of one alkali with the hydroxide of another, and that hydroxide in moles. */
export function exchangedAlkali(
  { mass, fromAssay, toAssay }: Exchange,
  from: Alkali,
  to: Alkali,
  steps?: Steps,
): { readonly mass: Mass; readonly hydroxide: Amount } {
  const pure = (percent: Decimal): Decimal => percent.div(100);
  const mol = noted(
    steps,
    'hydroxide',
    'n = m·w/M',
    'mol',
    mass.g.times(pure(fromAssay.percent)).div(hydroxideMolarMass(from)),
  );
  const g = noted(
    steps,
    `${to} with the same hydroxide`,
    'm = n·M/w',
    'g',
    mol.times(hydroxideMolarMass(to)).div(pure(toAssay.percent)),
  );
  return { mass: frozen({ g }), hydroxide: frozen({ mol }) };
}
