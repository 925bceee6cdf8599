import { molarMass } from '../chemistry/index.js';
import type { Decimal } from '../numbers/index.js';
import { frozen, noted, readShape, refuse, type Fields, type Steps } from '../numbers/index.js';
import {
  readMass,
  readTitrant,
  readVolume,
  type Fraction,
  type Mass,
  type MassInput,
  type OneChoice,
  type Titrant,
  type TitrantInput,
  type Volume,
  type VolumeInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { readUncertainty, type TitrationUncertainty, type TitrationUncertaintyGiven } from './readTitration.js';

/** What a titrant is measured against: a weighed substance, or so much of a solution of known strength. */
export type TitrationStandard = OneChoice<{
  readonly sodiumCarbonate: MassInput;
  readonly potassiumHydrogenPhthalate: MassInput;
  readonly solution: { readonly titrant: TitrantInput; readonly volume: VolumeInput };
}>;

/** A standard in a result. */
export type TitrationStandardGiven = OneChoice<{
  readonly sodiumCarbonate: Mass;
  readonly potassiumHydrogenPhthalate: Mass;
  readonly solution: { readonly titrant: Titrant; readonly volume: Volume };
}>;

/** Input of {@link titrantFromStandard}. */
export interface TitrantFromStandardInput {
  readonly standard: TitrationStandard;
  /** Titrant that the standard takes, less the blank. */
  readonly volume: VolumeInput;
  /** Of the usual ones balance, burette and end point count; of a solution as standard, `titrant` too. */
  readonly uncertainty?: TitrationUncertainty;
}

/** Result of {@link titrantFromStandard}. */
export interface TitrantFromStandardResult {
  readonly by: 'titrantFromStandard';
  /** The inputs as read. */
  readonly given: {
    readonly standard: TitrationStandardGiven;
    readonly volume: Volume;
    readonly uncertainty: TitrationUncertaintyGiven;
  };
  /** Strength of the titrant. */
  readonly titrant: Titrant;
  /** Share of the strength; what a titration with it takes as `uncertainty.titrant`. */
  readonly standardUncertainty: Fraction;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['talbot-1921', 'iupac-2021', 'common-practice']);

/** Formulas of the weighed standards, and the equivalents in one mole. */
const WEIGHED = {
  sodiumCarbonate: ['Na2CO3', 2],
  potassiumHydrogenPhthalate: ['C8H5KO4', 1],
} as const;

/**
 * Strength of a titrant, from a standard that it was titrated with.
 *
 * Formula: `c = 1000·z·m/(M·V)` for a weighed standard of z equivalents to the mole (dried sodium carbonate for acids, potassium
 * hydrogen phthalate for alkalis), `c = c₀·V₀/V` for a solution; c eq/L, m g, M g/mol, V mL.
 *
 * Source: Talbot 1921, problems on standard solutions; atomic weights IUPAC 2021; usual uncertainties are common practice.
 *
 * @param input - the standard, and the titrant it takes
 * @returns eq/L, and the standard uncertainty as a share of it
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range` (no titrant, or a strength beyond 20 eq/L) and the
 * faults of a quantity
 *
 * @example
 * ```ts
 * const acid = titrantFromStandard({ standard: { sodiumCarbonate: { g: '0.1325' } }, volume: { mL: '24.85' } });
 * acid.titrant.eqPerL.toFixed(4); // => '0.1006'
 * ```
 */
export function titrantFromStandard(input: TitrantFromStandardInput): TitrantFromStandardResult {
  return titrantFromStandardSteps(input);
}

/** The kernel, with room for the working. */
export function titrantFromStandardSteps(input: TitrantFromStandardInput, steps?: Steps): TitrantFromStandardResult {
  const fields = readShape('input', input, ['standard', 'volume', 'uncertainty']);
  const standard = readStandard(fields['standard']);
  const volume = readVolume('volume', fields['volume'], { above: 0 });
  const uncertainty = readUncertainty(fields['uncertainty'], 'alkali');
  const { milliequivalents, share } = amountOf(standard, uncertainty);
  const held = noted(steps, 'equivalents in the standard', '1000·z·m/M, or c₀·V₀', 'mmol', milliequivalents);
  const eqPerL = noted(steps, 'strength of the titrant', 'n/V', 'eq/L', held.div(volume));
  if (eqPerL.gt(20) || eqPerL.lt('1e-6')) {
    refuse('out-of-range', 'volume', 'a strength of 1e-6 to 20 eq/L', `${eqPerL.toPrecision(4)} eq/L`);
  }
  const { burette, endPoint } = uncertainty;
  const ofVolume = burette.mL.pow(2).plus(endPoint.mL.pow(2)).sqrt().div(volume);
  const percent = ofVolume.pow(2).plus(share.pow(2)).sqrt().times(100);
  return frozen({
    by: 'titrantFromStandard',
    given: frozen({ standard, volume: frozen({ mL: volume }), uncertainty }),
    titrant: frozen({ eqPerL }),
    standardUncertainty: frozen({ percent: noted(steps, 'standard uncertainty', '100·√Σu²', 'percent', percent) }),
    basis: BASIS,
    edition: EDITION,
  });
}

const KINDS = ['sodiumCarbonate', 'potassiumHydrogenPhthalate', 'solution'] as const;

function readStandard(value: unknown): TitrationStandardGiven {
  const fields = readShape('standard', value, KINDS);
  const [kind, second] = KINDS.filter((one) => fields[one] !== undefined);
  if (kind === undefined) return refuse('missing', 'standard', `one of ${KINDS.join(', ')}`, 'none of them');
  if (second !== undefined) refuse('bad-shape', 'standard', 'exactly one standard', `${kind} and ${second}`);
  const path = `standard.${kind}`;
  if (kind === 'solution')
    return frozen({ solution: readSolution(path, readShape(path, fields[kind], ['titrant', 'volume'])) });
  const mass = frozen({ g: readMass(path, fields[kind], { min: '1e-3' }) });
  return kind === 'sodiumCarbonate' ? frozen({ sodiumCarbonate: mass }) : frozen({ potassiumHydrogenPhthalate: mass });
}

function readSolution(
  path: string,
  { titrant, volume }: Fields,
): { readonly titrant: Titrant; readonly volume: Volume } {
  return frozen({
    titrant: frozen({ eqPerL: readTitrant(`${path}.titrant`, titrant) }),
    volume: frozen({ mL: readVolume(`${path}.volume`, volume, { above: 0 }) }),
  });
}

/** Milliequivalents in a standard, and their standard uncertainty as a share. */
function amountOf(
  { sodiumCarbonate, potassiumHydrogenPhthalate, solution }: TitrationStandardGiven,
  { balance, burette, titrant }: TitrationUncertaintyGiven,
): { readonly milliequivalents: Decimal; readonly share: Decimal } {
  if (solution !== undefined) {
    const ofVolume = burette.mL.div(solution.volume.mL);
    return {
      milliequivalents: solution.titrant.eqPerL.times(solution.volume.mL),
      share: ofVolume.pow(2).plus(titrant.percent.div(100).pow(2)).sqrt(),
    };
  }
  const { g } = sodiumCarbonate ?? potassiumHydrogenPhthalate;
  const [formula, equivalents] =
    WEIGHED[sodiumCarbonate === undefined ? 'potassiumHydrogenPhthalate' : 'sodiumCarbonate'];
  return { milliequivalents: g.times(1000).times(equivalents).div(molarMass(formula)), share: balance.g.div(g) };
}
