/** Pots made the other way round: weights first. Their composition is a target that can be met, by these weights. */
import fc from 'fast-check';
import {
  compositionFrom,
  fat,
  fatFromCertificate,
  planLye,
  soapFromLye,
  type AdditionInput,
  type AlkaliChoice,
  type BaseFromTargetInput,
  type BaseSupplies,
  type BaseTarget,
  type Composition,
  type LyeChargeGiven,
} from 'laurate';
import { Exact } from '../laws/exact.js';
import { coconut, stearic } from './bases.js';

const moist = fatFromCertificate({
  name: 'Moist lot',
  kind: 'triglyceride',
  saponificationValue: { low: { mgKohPerG: 185 }, high: { mgKohPerG: 197 } },
  acidValue: { mgKohPerG: 6 },
  unsaponifiable: { percent: 2 },
  moisture: { percent: 1 },
});
const FATS = [coconut, stearic, moist, fat('castor-oil'), fat('beeswax')];

const naoh = fc.constantFrom(
  { solution: { hydroxide: { percent: 50 } } },
  { solution: { hydroxide: { low: { percent: 31 }, high: { percent: 34 } } } },
  { solid: { hydroxide: { low: { percent: 98 }, high: { percent: 100 } } } },
  { solid: { totalAlkali: { percent: 99 }, carbonate: { percent: 2 } } },
);
const koh = fc.constantFrom(
  { solution: { hydroxide: { percent: 45 } } },
  { solid: { hydroxide: { percent: 86 } } },
  { solid: { totalAlkali: { percent: 89 }, carbonate: { low: { percent: 1 }, high: { percent: 2 } } } },
);
const alkali: fc.Arbitrary<AlkaliChoice> = fc.oneof(
  fc.record({ naoh }),
  fc.record({ koh }),
  fc.record({ naoh, koh, kohShare: fc.integer({ min: 1, max: 99 }).map((percent) => ({ percent })) }),
);

/** What can be added, by component: grams of it and tenths of a percent of assay. */
const bought = fc.record({ grams: fc.integer({ min: 0, max: 400 }), assay: fc.integer({ min: 100, max: 1000 }) });
const ADDED = {
  glycerol: 'glycerol',
  propyleneGlycol: 'propylene-glycol',
  sorbitol: 'sorbitol',
  sucrose: 'sucrose',
  triethanolamine: 'triethanolamine',
  ethanol: 'ethanol',
  isopropanol: '2-propanol',
} as const;
type Added = keyof typeof ADDED;

export const pots = fc.record({
  fats: fc
    .array(fc.integer({ min: 0, max: 500 }), { minLength: 5, maxLength: 5 })
    .filter((all) => all.some((g) => g > 9)),
  alkali,
  superfat: fc.integer({ min: 0, max: 200 }),
  water: fc.integer({ min: 1, max: 600 }),
  added: fc.dictionary(fc.constantFrom(...(Object.keys(ADDED) as Added[])), bought, { maxKeys: 5 }),
  salt: fc.option(fc.integer({ min: 0, max: 20 })),
  colour: fc.option(fc.integer({ min: 0, max: 20 })),
  /** Shares of the water and of the spirit that leave, percent. */
  waterGone: fc.integer({ min: 0, max: 90 }),
  spiritGone: fc.integer({ min: 0, max: 90 }),
});
type Pot = typeof pots extends fc.Arbitrary<infer T> ? T : never;

/** What stands on the scale for a pot. */
export interface Weighed {
  readonly fats: readonly string[];
  readonly lye: readonly LyeChargeGiven[];
  readonly water: number;
  readonly additions: readonly string[];
}

/** A pot, what it comes to, and the target that asks for it, one share left out. */
export function madePot(
  pot: Pot,
  leaveOut: number,
): { readonly input: BaseFromTargetInput; readonly composition: Composition; readonly weighed: Weighed } {
  const { alkali: choice, superfat, water } = pot;
  const total = pot.fats.reduce((sum, g) => sum + g, 0);
  const fats = FATS.map((one, at) => ({ fat: one, mass: { g: pot.fats[at] ?? 0 } }));
  const plan = planLye({
    fats,
    alkali: choice,
    target: { superfat: { percent: superfat / 10 } },
    dilution: { water: { g: water } },
  });
  const weigh = plan.weigh as { readonly [K in 'naoh' | 'koh']?: LyeChargeGiven['mass'] };
  const lye = (['naoh', 'koh'] as const).flatMap((name) => {
    const [source, mass] = [plan.given.alkali[name], weigh[name]];
    return source === undefined || mass === undefined ? [] : [{ alkali: name, mass, ...source }];
  });
  const soap = soapFromLye({ fats, lye, water: { g: water } });

  const names = (Object.keys(ADDED) as Added[]).filter((name) => pot.added[name] !== undefined);
  const assayOf = (name: Added) => ({ percent: (pot.added[name]?.assay ?? 1000) / 10 });
  const additions = [
    ...names.map((name) => ({ solvent: ADDED[name], mass: { g: pot.added[name]?.grams ?? 0 }, assay: assayOf(name) })),
    ...(pot.salt === null ? [] : [{ salt: 'Sodium chloride', mass: { g: pot.salt } }]),
    ...(pot.colour === null ? [] : [{ name: 'Colour', mass: { g: pot.colour } }]),
  ] as readonly AdditionInput[];
  const whole = compositionFrom({ soap, additions }).components;

  const spirit = whole.ethanol.mass.likely.g.plus(whole.isopropanol.mass.likely.g);
  const waterGone = Math.floor(whole.water.mass.likely.g.toNumber() * pot.waterGone) / 100;
  const spiritGone = Math.floor(spirit.toNumber() * pot.spiritGone) / 100;
  // a loss whose share of spirit is a short decimal
  const share = waterGone + spiritGone === 0 ? 0 : Math.floor((100 * spiritGone) / (waterGone + spiritGone));
  const evaporated = share === 0 ? waterGone : Math.min(spiritGone / (share / 100), waterGone + spiritGone);
  const loss = {
    evaporated: { g: evaporated.toFixed(3) },
    spiritShareOfLoss: { percent: share },
  };
  const composition = compositionFrom({ soap, additions, ...loss });

  const { soapSodium, soapPotassium, ...others } = composition.components;
  const asked: (keyof BaseTarget)[] = [
    'soap',
    'water',
    ...names,
    ...(pot.salt === null ? [] : (['salts'] as const)),
    ...(pot.colour === null ? [] : (['other'] as const)),
  ];
  asked.splice(leaveOut % asked.length, 1);
  const target = Object.fromEntries(
    asked.map((name) => [
      name,
      name === 'soap'
        ? { percent: soapSodium.share.likely.percent.plus(soapPotassium.share.likely.percent) }
        : others[name].share.likely,
    ]),
  ) as BaseTarget;
  const supplies = {
    ...Object.fromEntries(names.map((name) => [name, { assay: assayOf(name) }])),
    ...(pot.salt === null ? {} : { salts: { salt: 'Sodium chloride' } }),
    ...(pot.colour === null ? {} : { other: { name: 'Colour' } }),
  } as BaseSupplies;
  return {
    input: {
      fats: fats.map(({ fat: one, mass }) => ({
        fat: one,
        share: { percent: new Exact(mass.g).times(100).div(total).toPrecision(34) },
      })),
      alkali: choice,
      superfat: { percent: superfat / 10 },
      batchMass: composition.mass.likely,
      target,
      supplies,
      ...loss,
    },
    composition,
    weighed: {
      fats: fats.map(({ mass }) => String(mass.g)),
      lye,
      water,
      additions: additions.map(({ mass }) => String('g' in mass ? mass.g : undefined)),
    },
  };
}
