import { molarMass } from '../chemistry/index.js';
import { Decimal, fieldPath, frozen, knotsFrom, monotoneCubic, ONE, refuse, type Fields } from '../numbers/index.js';
import {
  mapEnds,
  readMass,
  readPercent,
  readRanged,
  readTemperature,
  readVolume,
  type Acidity,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type Ranged,
  type Temperature,
  type Volume,
  type VolumeInput,
} from '../quantities/index.js';
import { davies, fattyAcidPKa, ionProductOfWater, lightestAndHeaviestSoap, usualSoapContent } from './data/ph.js';

/** A solution of soap whose pH is asked for or was read. */
export interface SoapSolutionInput {
  /** Soap as weighed. */
  readonly soap: MassInput;
  /** What it was made up to with water. */
  readonly solution: VolumeInput;
  /** Anhydrous soap in it, share by mass, a value or a range; 30 to 100 percent unless stated. */
  readonly soapContent?: Ranged<FractionInput>;
}

/** A solution of soap in a result. */
export interface SoapSolutionGiven {
  readonly soap: Mass;
  readonly solution: Volume;
  readonly soapContent: Estimate<Fraction>;
}

/** A solution of soap as read. */
export interface SoapSolution {
  /** Soap as weighed, grams to a litre. */
  readonly gramsPerLitre: Decimal;
  /** Moles of soap to a litre: least and most. */
  readonly molar: { readonly low: Decimal; readonly high: Decimal };
  readonly given: SoapSolutionGiven;
}

/** What a pH lies between. */
export interface PhBand {
  readonly low: Acidity;
  readonly high: Acidity;
}

/** The fields of a solution of soap. */
export const SOLUTION_KEYS = ['soap', 'solution', 'soapContent'] as const;

/** Reads a solution of soap, 1 to 100 g of soap to a litre. */
export function readSoapSolution(path: string, { soap, solution, soapContent }: Fields): SoapSolution {
  const grams = readMass(fieldPath(path, 'soap'), soap, { above: 0 });
  const millilitres = readVolume(fieldPath(path, 'solution'), solution, { above: 0 });
  const usual = { low: { percent: usualSoapContent.low }, high: { percent: usualSoapContent.high } };
  const content = readRanged(fieldPath(path, 'soapContent'), soapContent ?? usual, (here, part) =>
    readPercent(here, part, { above: 0, min: 1, max: 100 }),
  );
  const gramsPerLitre = grams.times(1000).div(millilitres);
  if (gramsPerLitre.lt(1) || gramsPerLitre.gt(100)) {
    refuse(
      'outside-table',
      fieldPath(path, 'solution'),
      '1 to 100 g of soap to a litre',
      `${gramsPerLitre.toPrecision(4)} g to a litre`,
    );
  }
  const [lightest, heaviest] = lightestAndHeaviestSoap;
  const molar = (percent: Decimal, formula: string): Decimal =>
    gramsPerLitre.times(percent).div(100).div(molarMass(formula));
  return {
    gramsPerLitre,
    molar: { low: molar(content.low, heaviest), high: molar(content.high, lightest) },
    given: frozen({
      soap: frozen({ g: grams }),
      solution: frozen({ mL: millilitres }),
      soapContent: mapEnds(content, (percent) => frozen({ percent })),
    }),
  };
}

/** Temperature at which a pH is read; the pKa on file are those of 25 °C, and move little within these limits. */
export function readSolutionTemperature(value: unknown): Temperature {
  return frozen({ celsius: readTemperature('temperature', value, { min: 10, max: 50 }) });
}

/** pKw at a temperature in °C. */
export function pKwAt(celsius: Decimal): Decimal {
  return monotoneCubic(knotsFrom(ionProductOfWater.celsius, ionProductOfWater.pKw)).at(celsius);
}

/** Activity coefficient of a single charge by Davies' rule, at an ionic strength in mol/L. */
export function activityCoefficient(strength: Decimal): Decimal {
  const root = strength.sqrt();
  const power = root.div(root.plus(1)).minus(strength.times(davies.linear)).times(davies.constant);
  return Decimal.pow(10, power.neg());
}

/** pH of soap at so many mol/L, of a fatty acid of this pKa, without caustic: `x² + K·x = K·c + Kw` for hydroxide x. */
function phOf(molar: Decimal, pKa: Decimal | string, pKw: Decimal): Acidity {
  const kw = Decimal.pow(10, pKw.neg());
  const kb = kw.div(Decimal.pow(10, new Decimal(pKa).neg()));
  const root = kb.pow(2).plus(kb.times(molar).plus(kw).times(4)).sqrt();
  const hydroxide = root.minus(kb).div(2);
  const activity = hydroxide.times(activityCoefficient(molar));
  return frozen({ pH: pKw.plus(activity.log(10)) });
}

/** pH that soap without caustic may have: from single molecules, most dilute, to what associated soap shows at most. */
export function causticFreeBand({ molar }: SoapSolution, pKw: Decimal): PhBand {
  return frozen({
    low: phOf(molar.low, fattyAcidPKa.monomer, pKw),
    high: phOf(molar.high, fattyAcidPKa.apparentAtMost, pKw),
  });
}

/** Hydroxide in a solution at a pH, at most: mol/L, by the least activity coefficient that the soap allows. */
export function hydroxideAt(pH: Decimal, pKw: Decimal, { molar }: SoapSolution): Decimal {
  return Decimal.pow(10, pH.minus(pKw)).div(Decimal.min(ONE, activityCoefficient(molar.high)));
}
