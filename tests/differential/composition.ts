/** What is in the pot, at the likely lots. */
import type { ComponentName } from 'laurate';
import { M } from './charge.js';
import type { DrawnComposition } from './drawn.js';
import type { Fraction } from './rational.js';
import { least, most, of, ONE, part, percent, sum, three, ZERO } from './rational.js';
import type { Products } from './reaction.js';

export interface Pot {
  readonly mass: Fraction;
  readonly components: Readonly<Partial<Record<ComponentName, Fraction>>>;
  /** Per cent of the pot, as NaOH. */
  readonly freeCaustic: Fraction;
  readonly gone: { readonly water: Fraction; readonly spirit: Fraction };
}

const COMPONENTS = {
  ethanol: 'ethanol',
  '2-propanol': 'isopropanol',
  glycerol: 'glycerol',
  'propylene-glycol': 'propyleneGlycol',
  'dipropylene-glycol': 'dipropyleneGlycol',
  '1-3-butanediol': 'butanediol',
  sorbitol: 'sorbitol',
  sucrose: 'sucrose',
  glucose: 'glucose',
  'peg-400': 'polyethyleneGlycol',
  triethanolamine: 'triethanolamine',
  water: 'water',
} as const;

/** The components that additions bring; what is not the solvent is water, of triethanolamine something else. */
function broughtBy(additions: DrawnComposition['additions']): readonly (readonly [ComponentName, Fraction])[] {
  return additions.flatMap((addition): readonly (readonly [ComponentName, Fraction])[] => {
    const mass = of(addition.mass);
    if (!('solvent' in addition)) return [['salt' in addition ? 'salts' : 'other', mass]];
    const share = three(addition.assay, percent).likely;
    const component = COMPONENTS[addition.solvent];
    const rest = component === 'triethanolamine' ? 'other' : 'water';
    return [
      [component, mass.mul(share)],
      [rest, mass.mul(ONE.sub(share))],
    ];
  });
}

/** Of a loss, what was spirit: as stated, or midway between all that can have been and all that must. */
function spiritOf(loss: Fraction, water: Fraction, spirit: Fraction, gone: DrawnComposition['gone']): Fraction {
  if (gone?.spiritShare !== undefined) return loss.mul(three(gone.spiritShare, percent).likely);
  return most(ZERO, loss.sub(water)).add(least(loss, spirit)).div(2);
}

/** `charge` is all that goes in, additions too; `potMass` the pot as weighed. Undefined where so much cannot have gone. */
export function potOf(
  products: Products,
  { additions, gone }: DrawnComposition,
  charge: Fraction,
  potMass: Fraction,
): Pot | undefined {
  const brought = broughtBy(additions);
  const added = (component: ComponentName): Fraction =>
    sum(brought.filter(([name]) => name === component).map(([, mass]) => mass));
  const before = charge.sub(products.carbonDioxide);
  const loss = gone === undefined ? ZERO : gone.says === 'evaporated' ? of(gone.mass) : before.sub(potMass);
  const water = products.water.add(added('water'));
  // both alcohols are spirit, and go in the proportion they are there
  const alcohols = added('ethanol').add(added('isopropanol'));
  const spirit = spiritOf(loss, water, alcohols, gone);
  if (loss.lt(0) || spirit.gt(alcohols) || loss.sub(spirit).gt(water)) return undefined;
  const left = ONE.sub(part(spirit, alcohols));
  const byName = Object.fromEntries(Object.values(COMPONENTS).map((name) => [name, added(name)]));
  const mass = before.sub(loss);
  const caustic = products.freeNaoh.add(products.freeKoh.div(M.koh).mul(M.naoh));
  return {
    mass,
    freeCaustic: caustic.div(mass).mul(100),
    gone: { water: loss.sub(spirit), spirit },
    components: {
      ...byName,
      soapSodium: products.soapSodium,
      soapPotassium: products.soapPotassium,
      glycerol: products.glycerol.add(added('glycerol')),
      ethanol: added('ethanol').mul(left),
      isopropanol: added('isopropanol').mul(left),
      water: water.sub(loss.sub(spirit)),
      freeFat: products.freeFat,
      freeAcid: products.freeAcid,
      freeCaustic: products.freeNaoh.add(products.freeKoh),
      carbonate: products.sodiumCarbonate.add(products.potassiumCarbonate),
      unsaponifiable: products.unsaponifiable,
      salts: added('salts'),
      other: products.other.add(added('other')),
    },
  };
}
