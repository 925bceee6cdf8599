/** One recipe worked out by both, figure by figure. */
import {
  compositionFrom,
  planLye,
  soapFromLye,
  superfatFromLye,
  type Alkali,
  type ChargedFatInput,
  type Decimal,
  type SoapFromLyeResult,
} from 'laurate';
import { chargedFats, compositionAsked, planAsked, potAsked } from './asked.js';
import { balanceOf, extentOf } from './balance.js';
import { hydroxideOf, lotOf, massOf, sourceOf, type Lot } from './charge.js';
import { potOf } from './composition.js';
import type { Drawn, DrawnComposition } from './drawn.js';
import { AT, balancePairs, ofPercent, pair, refusal, unless, type Pair } from './pairs.js';
import { planOf } from './plan.js';
import { of, sum, ZERO, type Fraction } from './rational.js';
import { chargeOf, productsOf, type Products } from './reaction.js';

function planPairs(drawn: Drawn, lots: readonly Lot[], fats: readonly ChargedFatInput[]): readonly Pair[] {
  const own = planOf(lots, drawn.plan);
  const library = unless('infeasible', () => planLye(planAsked(drawn, fats)));
  if (own === undefined || library === undefined) return [refusal('plan refused', own, library)];
  const batch = own.batch.valueOf();
  const weigh: Partial<Record<Alkali, { g: Decimal }>> = library.weigh;
  const weighed = (alkali: Alkali): Decimal => weigh[alkali]?.g ?? library.weigh.water.g;
  return [
    ...balancePairs('plan', own, library, batch),
    ...own.lye.map(({ alkali, mass }) => pair(`plan ${alkali}`, mass, weighed(alkali), batch)),
    pair('plan water', own.water, library.weigh.water.g, batch),
    pair('plan hydroxide', own.charged.likely, library.hydroxide.mol, batch),
    pair('plan lye', massOf(own.lye).add(own.water), library.lye.mass.g, batch),
    pair('plan batch', own.batch, library.batch.mass.g, batch),
    ...AT.map((at) => ofPercent(`plan strength ${at}`, own.strength[at], library.lye.strength[at].percent)),
  ];
}

function compositionPairs(
  asked: DrawnComposition,
  products: Products,
  soap: SoapFromLyeResult,
  charge: Fraction,
): readonly Pair[] {
  const whole = charge.add(sum(asked.additions.map(({ mass }) => of(mass))));
  const potMass = whole.sub(of(asked.gone?.mass ?? '0'));
  const own = potOf(products, asked, whole, potMass);
  const library = unless('infeasible', () => compositionFrom(compositionAsked(asked, soap, potMass.toString())));
  if (own === undefined || library === undefined) return [refusal('pot refused', own, library)];
  const batch = charge.valueOf();
  const names = Object.keys(library.components) as (keyof typeof library.components)[];
  const ours = (name: keyof typeof own.components): Fraction => own.components[name] ?? ZERO;
  return [
    pair('pot mass', own.mass, library.mass.likely.g, batch),
    pair('pot charge', whole, library.charge.g, batch),
    ofPercent('pot freeCaustic', own.freeCaustic, library.freeCausticAlkali.likely.percentNaoh),
    pair('pot glycerol formed', products.glycerol, library.components.glycerol.formed.likely.g, batch),
    pair('pot gone water', own.gone.water, library.gone.water.likely.g, batch),
    pair('pot gone spirit', own.gone.spirit, library.gone.spirit.likely.g, batch),
    ...names.flatMap((name) => [
      pair(`pot ${name}`, ours(name), library.components[name].mass.likely.g, batch),
      ofPercent(`pot ${name} share`, ours(name).div(own.mass).mul(100), library.components[name].share.likely.percent),
    ]),
  ];
}

function potPairs(drawn: Drawn, lots: readonly Lot[], fats: readonly ChargedFatInput[]): readonly Pair[] {
  const { pot } = drawn;
  const lye = pot.lye.map(({ alkali, mass, source }) => ({ alkali, mass: of(mass), ...sourceOf(alkali, source) }));
  const water = of(pot.water ?? '0');
  const charge = chargeOf(lots, lye, water);
  const batch = charge.valueOf();
  const stated = pot.batchMass === undefined ? charge : of(pot.batchMass);

  const said = potAsked(drawn, fats);
  const balance = superfatFromLye({ ...said, ...(pot.batchMass !== undefined && { batchMass: { g: pot.batchMass } }) });
  const balances = balancePairs('superfat', balanceOf(lots, lye, stated), balance, batch);
  if (!pot.reacts) return balances;

  const soap = soapFromLye(said);
  const products = productsOf(lots, lye, water);
  return [
    ...balances,
    ...balancePairs('soap', balanceOf(lots, lye, charge), soap, batch),
    ofPercent('soap extent', extentOf(lots, hydroxideOf(lye).likely).ester.mul(100), soap.extent.likely.percent),
    ...Object.entries(products).map(([name, mass]) =>
      pair(`soap ${name}`, mass, soap.products[name as keyof typeof products].likely.g, batch),
    ),
    ...(pot.composition === undefined ? [] : compositionPairs(pot.composition, products, soap, charge)),
  ];
}

/** All figures of one recipe. */
export function pairsOf(drawn: Drawn): readonly Pair[] {
  const lots = drawn.fats.map(lotOf);
  const fats = chargedFats(drawn);
  return [...planPairs(drawn, lots, fats), ...potPairs(drawn, lots, fats)];
}
