import {
  frozen,
  readFields,
  readList,
  readShape,
  readText,
  readWord,
  refuse,
  type Decimal,
  type Fields,
  type Limits,
} from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  readPercent,
  readRanged,
  readSpiritStrength,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type Ranged,
  type SpiritStrengthInput,
} from '../quantities/index.js';
import { componentOfSolvent, type ComponentName } from './components.js';
import { SOLVENT_IDS, type SolventId } from './data/solventNames.js';
import { ethanolShareFromVolume } from './ethanolWater.js';

/** A solvent, polyol, sugar or amine as weighed in; what it holds besides is water unless said otherwise. */
export type SolventAdditionInput =
  | { readonly solvent: Exclude<SolventId, 'ethanol' | 'water'>; readonly assay: Ranged<FractionInput> }
  | { readonly solvent: 'ethanol'; readonly assay: Ranged<FractionInput> | Ranged<SpiritStrengthInput> }
  | { readonly solvent: 'water'; readonly assay?: Ranged<FractionInput> };

/** What is weighed in beside fats and lye: a solvent with its assay, a salt, or anything else by its name. */
export type AdditionInput = { readonly mass: MassInput } & (
  | (SolventAdditionInput & { readonly salt?: never; readonly name?: never })
  | { readonly salt: string; readonly solvent?: never; readonly name?: never; readonly assay?: never }
  | { readonly name: string; readonly solvent?: never; readonly salt?: never; readonly assay?: never }
);

/** An addition in a result; assays are by mass. */
export type GivenAddition =
  | { readonly solvent: SolventId; readonly mass: Mass; readonly assay: Estimate<Fraction> }
  | { readonly salt: string; readonly mass: Mass }
  | { readonly name: string; readonly mass: Mass };

/** An addition as read. */
export interface Addition {
  readonly grams: Decimal;
  readonly given: GivenAddition;
  /** What its pure substance counts as. */
  readonly component: ComponentName;
  /** The solvent with its assay, a fraction of one; a salt, or anything else, has none. */
  readonly holds: { readonly solvent: SolventId; readonly share: Estimate<Decimal> } | 'salt' | 'other';
}

/**
 * Reads what is added beside fats and lye; the list may be empty.
 *
 * @throws CalculationError `missing` (an assay among others), `bad-shape`, `unknown-key`, `unknown-unit` (percent by volume
 *   of anything but ethanol) and the faults of a quantity
 */
export function readAdditions(path: string, value: unknown): readonly Addition[] {
  return readList(path, value, 0).map((entry, at) => {
    const here = `${path}[${String(at)}]`;
    const fields = readShape(here, entry, ['solvent', 'salt', 'name', 'mass', 'assay']);
    return readAddition(here, fields, readMass(`${here}.mass`, fields['mass']));
  });
}

/** Reads what an addition is among the fields of something else, its mass being known. */
export function readAddition(path: string, fields: Fields, grams: Decimal): Addition {
  const mass = frozen({ g: grams });
  const named = (['solvent', 'salt', 'name'] as const).filter((key) => fields[key] !== undefined);
  if (named.length > 1) refuse('bad-shape', path, 'one of solvent, salt and name', named.join(' and '));
  if (named.length === 0) refuse('missing', path, 'solvent, salt or name', 'none');
  if (named[0] === 'solvent') {
    const solvent = readWord(`${path}.solvent`, fields['solvent'], SOLVENT_IDS);
    const percents = readAssays(`${path}.assay`, fields['assay'], solvent);
    return {
      grams,
      component: componentOfSolvent[solvent],
      given: frozen({ solvent, mass, assay: mapEnds(percents, (percent) => frozen({ percent })) }),
      holds: { solvent, share: mapEnds(percents, (percent) => percent.div(100)) },
    };
  }
  if (fields['assay'] !== undefined) refuse('unknown-key', `${path}.assay`, 'an assay of solvents only', 'an assay');
  if (named[0] === 'salt') {
    const salt = readText(`${path}.salt`, fields['salt']);
    return { grams, component: 'salts', given: frozen({ salt, mass }), holds: 'salt' };
  }
  const name = readText(`${path}.name`, fields['name']);
  return { grams, component: 'other', given: frozen({ name, mass }), holds: 'other' };
}

const SHARE: Limits = { above: 0, max: 100 };

/** Percent by mass. Water is water, unless stated otherwise; nothing else has an assay that goes without saying. */
function readAssays(path: string, value: unknown, solvent: SolventId): Estimate<Decimal> {
  const stated = value === undefined && solvent === 'water' ? { percent: 100 } : value;
  return readRanged(path, stated, (at, one) => readAssay(at, one, solvent));
}

function readAssay(path: string, value: unknown, solvent: SolventId): Decimal {
  const isByVolume = 'percentByVolume' in readFields(path, value, 'an assay in percent by mass');
  if (!isByVolume) return readPercent(path, value, SHARE);
  if (solvent !== 'ethanol') {
    refuse(
      'unknown-unit',
      `${path}.percentByVolume`,
      'percent by mass; by volume is for ethanol only',
      'percentByVolume',
    );
  }
  return ethanolShareFromVolume(readSpiritStrength(path, value, SHARE).div(100)).times(100);
}
