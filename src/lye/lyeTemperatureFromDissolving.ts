import { molarMass } from '../chemistry/index.js';
import {
  Decimal,
  frozen,
  noted,
  onStraightLines,
  readShape,
  readWord,
  refuse,
  type Remark,
  type Steps,
} from '../numbers/index.js';
import {
  readMass,
  readPercent,
  readTemperature,
  type Energy,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type Temperature,
  type TemperatureInput,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, hydroxideMolarMass, type Alkali } from './alkali.js';
import { LYE_WOULD_BOIL, PELLETS_BOIL_LOCALLY } from './benchCautions.js';
import { alkaliCautions, SOLID_INTO_COLD_WATER } from './cautions.js';
import { kohHeatOfSolution, solidHeatCapacity, waterHeatCapacity } from './data/lyeHeats.js';
import {
  HEAT_CAPACITIES,
  HEAT_CAPACITIES_TO,
  HEATS_AT,
  LEAST_WATER,
  naohBoilingPoint,
  naohHeatAt,
  warmingOf,
} from './lyeHeats.js';

/** Input of {@link lyeTemperatureFromDissolving}. */
export interface LyeTemperatureFromDissolvingInput {
  readonly alkali: Alkali;
  /** Solid alkali as weighed; pure hydroxide unless `assay` says otherwise. */
  readonly solid: MassInput;
  /** Hydroxide in the solid, share by mass, at most 100 percent; the rest counts as water. 100 unless given. */
  readonly assay?: FractionInput;
  /** Water it is dissolved in. */
  readonly water: MassInput;
  /** Temperature of both before they meet; 0 to 60 °C. */
  readonly start: TemperatureInput;
}

/** Result of {@link lyeTemperatureFromDissolving}. */
export interface LyeTemperatureFromDissolvingResult {
  readonly by: 'lyeTemperatureFromDissolving';
  /** The inputs as read. */
  readonly given: {
    readonly alkali: Alkali;
    readonly solid: Mass;
    readonly assay: Fraction;
    readonly water: Mass;
    readonly start: Temperature;
  };
  /** Temperature of the lye if all dissolves at once, nothing is lost and nothing boils. */
  readonly final: Temperature;
  /** Whether `final` is what to expect, or only a ceiling (KOH). */
  readonly meaning: 'expected' | 'ceiling';
  /** Whether a table was carried on beyond its end to get there. */
  readonly extrapolated: boolean;
  /** Heat given out. */
  readonly heat: Energy;
  /** Hydroxide in the lye, share by mass. */
  readonly strength: Fraction;
  /** Boiling point of that lye at the pressure of the sea; not known for KOH. */
  readonly boilingPoint?: Temperature;
  /** Whether the lye would boil on the way; not told within 4 % of the rise, which is how well the heat is known. */
  readonly boils: 'yes' | 'no' | 'cannot-tell';
  /** How far the figure can be trusted. */
  readonly notes: readonly Remark[];
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** From here on pellets boil the water around them, °C: a convention. */
const LOCAL_BOILING = 80;
const WATER_BOILS = 100;

/** Two compilations of the heat of dissolving differ by this share, so the rise is known no better. */
const HEAT_SPREAD = '0.04';

/** KOH is taken as far as this, percent: what dissolves at 20 °C is little more. */
const STRONGEST_KOH = 50;

const NOTES = {
  'all-at-once':
    'All of it dissolved at once, no heat lost to pot or air, nothing boiled off. Added in portions and cooled, the lye stays cooler.',
  'heats-four-percent-apart': 'Two compilations of the heat of dissolving NaOH put the rise 4 % apart.',
  'ceiling-only':
    'For KOH only the heat of dissolving in much water is known. Strong lye gives out less: it will not get hotter than this, and may stay well below.',
  'beyond-heat-capacities':
    'Heat capacities are tabulated from 20 to 80 °C, and to 40 % for KOH; beyond, they were carried on.',
} as const;

const BASES: Readonly<Record<Alkali, readonly SourceId[]>> = {
  naoh: ['koretsky', 'felder-rousseau', 'olsson-1997'],
  koh: ['parker-1965', 'laliberte-2009'],
};
const COMMON: readonly SourceId[] = ['sonntag-5', 'crc-thermodynamic-properties', 'iupac-2021', 'ghs-naoh'];

/**
 * Temperature that a lye reaches when solid alkali dissolves in water, with nothing lost: what the pot has to be ready for.
 *
 * Formula: `m·∫c dt from 25 °C to t = n·q + (m(water)·c(water) + n·C(solid))·(t₀ − 25 °C)`, with m the mass of the lye, c its
 * heat capacity by strength and temperature, n the hydroxide (mol), q the heat of dissolving at that dilution and 25 °C
 * (kJ/mol), t₀ the temperature at the start.
 *
 * NaOH: q is known from 3 mol of water to 1 of NaOH (42.5 %) on; stronger is refused. Between the tabulated dilutions 5
 * and 20 (10 to 31 %) it is interpolated, within about 1 %. In much water q ends at 42.87 kJ/mol; a later compilation has
 * 44.51 there, without a table by dilution. KOH: q in no end of water, 57.61 kJ/mol, so that the answer is a ceiling.
 * Heat capacities above 80 °C are carried on and the result says so. What an impure solid holds besides hydroxide counts
 * as water.
 *
 * Source: heats: Koretsky, Table 6.1, with Felder and Rousseau, Table B.11 (recalled); Parker 1965. Heat capacities: Olsson
 * 1997, Laliberté 2009. Boiling points: Olsson 1997.
 *
 * @param input - the alkali, the solid and the water by mass, the temperature of both
 * @returns °C, the heat in kJ, the strength, and whether it would boil
 * @throws CalculationError `outside-table` for a lye stronger than the heats are known for, `out-of-range` and the faults of
 * a quantity
 *
 * @example
 * ```ts
 * const { final, boils } = lyeTemperatureFromDissolving({
 *   alkali: 'naoh',
 *   solid: { g: 100 },
 *   water: { g: 200 },
 *   start: { celsius: 20 },
 * });
 * final.celsius.toFixed(0); // => '105'
 * boils; // => 'no'
 * ```
 */
export function lyeTemperatureFromDissolving(
  input: LyeTemperatureFromDissolvingInput,
): LyeTemperatureFromDissolvingResult {
  return lyeTemperatureFromDissolvingSteps(input);
}

/** The kernel, with room for the working. */
export function lyeTemperatureFromDissolvingSteps(
  input: LyeTemperatureFromDissolvingInput,
  steps?: Steps,
): LyeTemperatureFromDissolvingResult {
  const fields = readShape('input', input, ['alkali', 'solid', 'assay', 'water', 'start']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const solid = readMass('solid', fields['solid'], { above: 0 });
  const assay = readPercent('assay', fields['assay'] ?? { percent: 100 }, { above: 0, max: 100 });
  const poured = readMass('water', fields['water'], { above: 0 });
  const start = readTemperature('start', fields['start'], { min: 0, max: 60 });

  const pure = noted(steps, 'hydroxide', 'm(solid)·w', 'g', solid.times(assay).div(100));
  const mol = noted(steps, 'hydroxide', 'n = m/M', 'mol', pure.div(hydroxideMolarMass(alkali)));
  const lye = noted(steps, 'lye', 'm(solid) + m(water)', 'g', solid.plus(poured));
  const strength = noted(steps, 'strength', 'm(hydroxide)/m(lye)', 'percent', pure.times(100).div(lye));
  const water = lye.minus(pure);
  refuseTooStrong(alkali, { mol, water, strength, poured });

  const perMol = noted(steps, 'heat of dissolving', 'q at that dilution', 'kJ/mol', heatPerMol(alkali, mol, water));
  const heat = noted(steps, 'heat given out', 'n·q', 'kJ', perMol.times(mol));
  const brought = noted(
    steps,
    'heat that water and solid bring, from 25 °C',
    '(m(water)·c(water) + n·C(solid))·(t₀ − 25 °C)',
    'kJ',
    water
      .times(waterHeatCapacity.kJPerKgK)
      .plus(mol.times(solidHeatCapacity[alkali]))
      .div(1000)
      .times(start.minus(HEATS_AT)),
  );
  // the curve of warming read backwards: from heat to temperature
  const byHeat = warmingOf(alkali, strength).map(({ x, y }) => ({ x: y, y: x }));
  const final = noted(
    steps,
    'temperature of the lye',
    'm·∫c dt from 25 °C to t = n·q + (m(water)·c(water) + n·C(solid))·(t₀ − 25 °C)',
    '°C',
    onStraightLines(byHeat, heat.plus(brought).div(lye)),
  );
  const boilingPoint = alkali === 'naoh' ? naohBoilingPoint(strength) : undefined;
  const boils = boiling(final, boilingPoint, final.minus(start).abs().times(HEAT_SPREAD));
  const extrapolated =
    final.lt(HEAT_CAPACITIES.from) || final.gt(HEAT_CAPACITIES.to) || strength.gt(HEAT_CAPACITIES_TO[alkali]);
  return frozen({
    by: 'lyeTemperatureFromDissolving',
    given: frozen({
      alkali,
      solid: frozen({ g: solid }),
      assay: frozen({ percent: assay }),
      water: frozen({ g: poured }),
      start: frozen({ celsius: start }),
    }),
    final: frozen({ celsius: final }),
    meaning: alkali === 'naoh' ? 'expected' : 'ceiling',
    extrapolated,
    heat: frozen({ kJ: heat }),
    strength: frozen({ percent: strength }),
    ...(boilingPoint === undefined ? {} : { boilingPoint: frozen({ celsius: boilingPoint }) }),
    boils,
    notes: notesOf(alkali, extrapolated),
    cautions: alkaliCautions(SOLID_INTO_COLD_WATER, ...warnings(final, boils)),
    basis: frozen([...BASES[alkali], ...COMMON]),
    edition: EDITION,
  });
}

interface Mixed {
  readonly mol: Decimal;
  /** All water, that of the solid too, in grams. */
  readonly water: Decimal;
  readonly strength: Decimal;
  /** Water as poured, in grams. */
  readonly poured: Decimal;
}

function refuseTooStrong(alkali: Alkali, { mol, water, strength, poured }: Mixed): void {
  if (alkali === 'koh') {
    if (strength.gt(STRONGEST_KOH)) {
      refuse(
        'outside-table',
        'water',
        `water for a lye of at most ${String(STRONGEST_KOH)} percent`,
        `${strength.toFixed(1)} percent`,
      );
    }
    return;
  }
  const least = molarMass('H2O').times(mol).times(LEAST_WATER);
  if (water.lt(least)) {
    const needed = poured.plus(least).minus(water);
    refuse(
      'outside-table',
      'water',
      `at least ${needed.toDecimalPlaces(1, 2).toString()} g: heats are known to 42.5 percent of naoh`,
      `${poured.toString()} g`,
    );
  }
}

function heatPerMol(alkali: Alkali, mol: Decimal, water: Decimal): Decimal {
  return alkali === 'naoh' ? naohHeatAt(water.div(molarMass('H2O')).div(mol)) : new Decimal(kohHeatOfSolution.kJ);
}

function boiling(final: Decimal, boilingPoint: Decimal | undefined, margin: Decimal): 'yes' | 'no' | 'cannot-tell' {
  if (boilingPoint === undefined) return final.gte(WATER_BOILS) ? 'cannot-tell' : 'no';
  if (final.gte(boilingPoint)) return 'yes';
  return final.plus(margin).gte(boilingPoint) ? 'cannot-tell' : 'no';
}

function warnings(final: Decimal, boils: 'yes' | 'no' | 'cannot-tell'): readonly Remark[] {
  return [...(boils === 'no' ? [] : [LYE_WOULD_BOIL]), ...(final.gte(LOCAL_BOILING) ? [PELLETS_BOIL_LOCALLY] : [])];
}

function notesOf(alkali: Alkali, extrapolated: boolean): readonly Remark[] {
  const codes: readonly (keyof typeof NOTES)[] = [
    'all-at-once',
    // of KOH a single heat is on file, and the ceiling stands on it
    alkali === 'koh' ? 'ceiling-only' : 'heats-four-percent-apart',
    ...(extrapolated ? (['beyond-heat-capacities'] as const) : []),
  ];
  return frozen(codes.map((code) => frozen({ code, text: NOTES[code] })));
}
