import { ALKALIS, carbonateMolarMass, hydroxideMolarMass, type Alkali } from '../lye/index.js';
import { Decimal, frozen, readWord, refuse, type Fields, type Remark, type Steps } from '../numbers/index.js';
import {
  readMass,
  readTitrant,
  type Estimate,
  type Fraction,
  type Mass,
  type MassInput,
  type Titrant,
  type TitrantInput,
} from '../quantities/index.js';
import { TWO_SIDED } from './data/titration.js';
import { readUncertainty, type TitrationUncertainty, type TitrationUncertaintyGiven } from './readTitration.js';
import { expressed, titrated } from './titrated.js';

/** What every titration of caustic is told. */
export interface AlkaliTitrationInput {
  readonly alkali: Alkali;
  /** Caustic in the part that is titrated: of an aliquot, its share of what was weighed. */
  readonly sample: MassInput;
  /** Equivalents of acid in a litre. */
  readonly titrant: TitrantInput;
  readonly uncertainty?: TitrationUncertainty;
}

/** What every titration of caustic was told, in a result. */
export interface AlkaliTitrationGiven {
  readonly alkali: Alkali;
  readonly sample: Mass;
  readonly titrant: Titrant;
  readonly uncertainty: TitrationUncertaintyGiven;
}

/** What an assay finds in a caustic, shares by mass. */
export interface AlkaliAssay {
  /** True hydroxide. */
  readonly hydroxide: Fraction;
  /** Carbonate, Na2CO3 or K2CO3. */
  readonly carbonate: Fraction;
  /** All alkali as hydroxide, carbonate included: what pharmacopoeias state. */
  readonly totalAlkali: Fraction;
  readonly standardUncertainty: {
    readonly hydroxide: Fraction;
    readonly carbonate: Fraction;
    readonly totalAlkali: Fraction;
  };
  /** True hydroxide with its limits of 95 %, as an assay or strength takes it. */
  readonly range: Estimate<Fraction>;
  /** What was found out about the readings. */
  readonly notes: readonly Remark[];
}

/** Acid that goes to one part of the alkali, mL; with the squares of what the end points count for in it. */
export interface EndPoints {
  readonly mL: Decimal;
  readonly endPoints: number;
}

export const ALKALI_TITRATION_KEYS = ['alkali', 'sample', 'titrant', 'uncertainty'] as const;

/** Reads what every titration of caustic is told. */
export function readAlkaliTitration(fields: Fields): AlkaliTitrationGiven {
  return frozen({
    alkali: readWord('alkali', fields['alkali'], ALKALIS),
    sample: frozen({ g: readMass('sample', fields['sample'], { min: '1e-3' }) }),
    titrant: frozen({ eqPerL: readTitrant('titrant', fields['titrant']) }),
    uncertainty: readUncertainty(fields['uncertainty'], 'alkali'),
  });
}

/** Pharmacopoeias allow assays over 100; more than this is a slip in sample or titrant. */
const MOST = '110';

/** A share of hydroxide with its limits of 95 %, two-sided, as an assay or strength takes it. */
export function rangeOf(percent: Decimal, uncertainty: Decimal): Estimate<Fraction> {
  if (percent.gt(MOST)) {
    refuse('out-of-range', 'sample', `a sample of at most ${MOST} percent`, `${percent.toPrecision(4)} percent`);
  }
  const margin = uncertainty.times(TWO_SIDED);
  return frozen({
    low: frozen({ percent: Decimal.max(percent.minus(margin), 0) }),
    likely: frozen({ percent }),
    high: frozen({ percent: Decimal.min(percent.plus(margin), MOST) }),
  });
}

/** Hydroxide, carbonate and total alkali, from the acid that goes to each. */
export function assayed(
  { alkali, sample, titrant, uncertainty }: AlkaliTitrationGiven,
  acid: Readonly<Record<'hydroxide' | 'carbonate' | 'totalAlkali', EndPoints>>,
  steps?: Steps,
): AlkaliAssay {
  const perEquivalent = hydroxideMolarMass(alkali).div(10);
  const found = (part: keyof typeof acid, figure: string, factor: Decimal) => {
    const { mL, endPoints } = acid[part];
    const titration = { readings: [{ grams: sample.g, net: mL }], eqPerL: titrant.eqPerL, uncertainty };
    const content = titrated(titration, steps, new Decimal(endPoints));
    return { notes: content.notes, ...expressed(content, factor, [figure, 'x·M/(10·z)', 'percent'], steps) };
  };
  const hydroxide = found('hydroxide', 'hydroxide', perEquivalent);
  const carbonate = found('carbonate', 'carbonate', carbonateMolarMass(alkali).div(20));
  const totalAlkali = found('totalAlkali', 'total alkali', perEquivalent);
  const percent = (share: Decimal): Fraction => frozen({ percent: share });
  return {
    hydroxide: percent(hydroxide.value),
    carbonate: percent(carbonate.value),
    totalAlkali: percent(totalAlkali.value),
    standardUncertainty: frozen({
      hydroxide: percent(hydroxide.uncertainty),
      carbonate: percent(carbonate.uncertainty),
      totalAlkali: percent(totalAlkali.uncertainty),
    }),
    range: rangeOf(hydroxide.value, hydroxide.uncertainty),
    notes: frozen(carbonate.notes),
  };
}
