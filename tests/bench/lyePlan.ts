/** A lye plan by the library, by plain decimals, by floating point and by a units library; and with many fats. */
import { fat, fats, planLye, type SingleFat } from 'laurate';
import { mustAgree } from './agreement.js';
import { floatPlan } from './floatingPoint.js';
import type { Contender } from './harness.js';
import { Decimal, decimalPlan, type Value } from './plainDecimals.js';
import { unitsPlan, unitsValue } from './unitsLibrary.js';

/** The lye plan of the README, not rounded to a scale: a 50 % lye brought to 33 %, 2 % of the demand left out. */
const [STOCK, SUPERFAT, STRENGTH] = [50, '2', 33];

interface Charge {
  readonly id: string;
  readonly fat: SingleFat;
  readonly mass: number | string;
}

/** So many of the fats on file, in turn; masses as numbers and as texts. */
function chargesOf(count: number): readonly Charge[] {
  return Array.from({ length: count }, (_, at) => {
    const id = fats[at % fats.length]?.id ?? 'none';
    const grams = 100 + 37.5 * (at % 20);
    return { id, fat: fat(id), mass: at % 2 === 0 ? grams : String(grams) };
  });
}

/** A plan from objects made for it, as by somebody who reads a form. */
const planOf = (charges: readonly Charge[], fatOf: (charge: Charge) => SingleFat) =>
  planLye({
    fats: charges.map((charge) => ({ fat: fatOf(charge), mass: { g: charge.mass } })),
    alkali: { naoh: { solution: { hydroxide: { percent: STOCK } } } },
    target: { superfat: { percent: SUPERFAT } },
    dilution: { strength: { percent: STRENGTH } },
  });
const kept = (charge: Charge): SingleFat => charge.fat;
const lookedUp = (charge: Charge): SingleFat => fat(charge.id);

function figuresOf(plan: ReturnType<typeof planOf>): Record<string, Decimal> {
  const { demand, weigh, superfat, freeCausticAlkali } = plan;
  return {
    demandLow: demand.low.mol,
    demandLikely: demand.likely.mol,
    demandHigh: demand.high.mol,
    naoh: weigh.naoh.g,
    water: weigh.water.g,
    superfatLow: superfat.low.percent,
    superfatLikely: superfat.likely.percent,
    superfatHigh: superfat.high.percent,
    freeCausticLow: freeCausticAlkali.low.percentNaoh,
    freeCausticLikely: freeCausticAlkali.likely.percentNaoh,
    freeCausticHigh: freeCausticAlkali.high.percentNaoh,
  };
}

/** The ways to a plan of so many fats, once they are seen to give the same figures. */
export function lyePlanContenders(count: number): readonly Contender[] {
  const charges = chargesOf(count);
  const masses = charges.map(({ mass }) => mass);
  const decimals = charges.map(({ fat: { saponificationValue: value } }): Value<Decimal> => [
    new Decimal(value.low.mgKohPerG.toString()),
    new Decimal(value.likely.mgKohPerG.toString()),
    new Decimal(value.high.mgKohPerG.toString()),
  ]);
  const floats = decimals.map(([low, likely, high]): Value<number> => [
    low.toNumber(),
    likely.toNumber(),
    high.toNumber(),
  ]);
  const units = floats.map(([, likely]) => unitsValue(likely));

  const figures = figuresOf(planOf(charges, kept));
  mustAgree('fats by name', figures, figuresOf(planOf(charges, lookedUp)));
  mustAgree('plain decimals', figures, decimalPlan(masses, decimals, STOCK, SUPERFAT, STRENGTH));
  mustAgree('floating point', figures, floatPlan(masses, floats, STOCK, SUPERFAT, STRENGTH));
  mustAgree('units library', figures, unitsPlan(masses, units, STOCK, SUPERFAT, STRENGTH));
  return [
    { name: '`planLye`', run: () => planOf(charges, kept) },
    { name: "`planLye`, each fat by `fat('…')`", run: () => planOf(charges, lookedUp) },
    { name: 'plain decimals', run: () => decimalPlan(masses, decimals, STOCK, SUPERFAT, STRENGTH) },
    { name: 'floating point', run: () => floatPlan(masses, floats, STOCK, SUPERFAT, STRENGTH) },
    { name: 'units library', run: () => unitsPlan(masses, units, STOCK, SUPERFAT, STRENGTH) },
  ];
}

/** The library's plan alone, for a number of fats. */
export function growthContender(count: number): Contender {
  const charges = chargesOf(count);
  return { name: String(count), run: () => planOf(charges, kept) };
}
