/** Recipes for the tests of this folder. Their figures are invented. */
import fc from 'fast-check';
import { fat, fatFromBlend, fatFromCertificate, toJson } from 'laurate';

/** A recipe with every field, as JSON. 900 g of coconut oil need 159 to 170 g of hydroxide; 158 are charged. */
export const WORKED = {
  version: 1,
  title: 'Clear base, small pot',
  fats: [{ fat: 'coconut-oil', mass: { g: '900' }, claimed: { saponificationValue: { gNaohPerG: '0.183' } } }],
  lye: [{ alkali: 'naoh', mass: { g: '322.7' }, solution: { hydroxide: { percent: 49 } } }],
  water: { g: '0' },
  additions: [
    { solvent: 'glycerol', mass: { g: '250' }, assay: { percent: '99.5' } },
    { name: 'colour', mass: { g: 2 } },
  ],
  target: { superfat: { percent: 4 } },
  claimed: {
    superfat: { percent: '4' },
    strength: { percent: 49 },
    total: { g: '1474.7' },
    ph: '9',
    freeCausticAlkali: { percentNaoh: '0.05' },
  },
  temperatures: [{ stage: 'saponification', time: { minutes: 20 }, temperature: { celsius: 64 } }],
};

/** The least a recipe can be. */
export const SMALL = {
  version: 1,
  fats: [{ fat: 'coconut-oil', mass: { g: 900 } }],
  lye: [{ alkali: 'naoh', mass: { g: 158 }, solid: { hydroxide: { percent: 99 } } }],
};

/** A lot by its certificate, and a blend that holds it. */
export const lot = fatFromCertificate({
  name: 'Drum 7',
  like: fat('coconut-oil'),
  saponificationValue: { mgKohPerG: '256.4' },
  uncertainty: { mgKohPerG: 1 },
});
export const blend = fatFromBlend({
  name: 'House blend',
  parts: [
    { fat: lot, mass: { g: 700 } },
    { fat: fat('castor-oil'), mass: { g: 300 } },
  ],
});

/** Numbers from a range, as JSON has them: numbers, or texts in every form. */
const figure = (min: number, max: number): fc.Arbitrary<number | string> =>
  fc
    .tuple(fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }), fc.nat({ max: 3 }))
    .map(([hundredths, form]) => {
      const number = hundredths / 100;
      if (form === 0) return number;
      if (form === 1) return number.toFixed(2);
      return form === 2 ? `${String(hundredths)}e-2` : `${hundredths < 0 ? '' : '+'}${number.toFixed(2)}E0`;
    });

/** A quantity in one of some units; each unit with its least and greatest figure. */
const quantity = (units: Readonly<Record<string, readonly [number, number]>>): fc.Arbitrary<object> =>
  fc.oneof(...Object.entries(units).map(([unit, [min, max]]) => figure(min, max).map((of) => ({ [unit]: of }))));

const mass = quantity({ mg: [0, 1e6], g: [0, 1e6], kg: [0, 1e4], oz: [0, 1e4], lb: [0, 1e4] });
const volume = quantity({
  mL: [0, 1e6],
  L: [0, 1e3],
  usFlOz: [0, 1e3],
  usGal: [0, 1e3],
  impFlOz: [0, 1e3],
  impGal: [0, 1e3],
});
const share = quantity({ percent: [0, 99], fraction: [0, 0.99], ppm: [0, 990_000] });
const alkaliContent = quantity({ percentNaoh: [0, 5], percentKoh: [0, 5], percentNa2o: [0, 3] });
const saponificationValue = quantity({
  mgKohPerG: [20, 700],
  gKohPerG: [0.02, 0.7],
  gNaohPerG: [0.02, 0.5],
  saponificationEquivalent: [100, 2000],
});
const time = quantity({ minutes: [0, 600], hours: [0, 48] });
const temperature = quantity({ celsius: [-20, 150], fahrenheit: [0, 300], kelvin: [250, 420] });

/** A share as one figure or as a range. */
const ranged = (min: number, max: number): fc.Arbitrary<object> =>
  fc.oneof(
    quantity({ percent: [min, max], fraction: [Math.max(min / 100, 0.01), max / 100] }),
    fc.tuple(fc.integer({ min, max }), fc.integer({ min, max }), fc.boolean()).map(([one, other, isSaid]) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      return {
        low: { percent: low },
        high: { percent: String(high) },
        ...(isSaid ? { likely: { percent: low } } : {}),
      };
    }),
  );

const solid = fc.oneof(
  fc.record({ hydroxide: ranged(10, 110) }),
  fc.record({ totalAlkali: ranged(85, 110), carbonate: ranged(0, 20) }),
);
const alkali = fc.oneof(
  solid.map((holds) => ({ solid: holds })),
  ranged(1, 75).map((hydroxide) => ({ solution: { hydroxide } })),
);
const lye = fc
  .tuple(fc.constantFrom('naoh', 'koh'), mass, alkali)
  .map(([which, weighed, source]) => ({ alkali: which, mass: weighed, ...source }));

const fats = fc.record(
  {
    fat: fc.oneof(
      fc.constantFrom('coconut-oil', 'Copra oil', 'castor-oil', 'stearic-acid-50', 'beeswax', 'rosin-ww'),
      fc.constantFrom<object>(toJson(lot), toJson(blend), toJson(fat('palm-oil'))),
    ),
    mass,
    claimed: fc.record({ saponificationValue, share }, { requiredKeys: [] }),
  },
  { requiredKeys: ['fat', 'mass'] },
);

const amount = fc.oneof(
  mass.map((weighed) => ({ mass: weighed })),
  volume.map((measured) => ({ volume: measured })),
);
const what = fc.oneof(
  fc.constantFrom('water', '2-propanol', 'sorbitol', 'peg-400', 'triethanolamine').map((solvent) => ({ solvent })),
  quantity({ percent: [1, 100], fraction: [0.01, 1], ppm: [1, 1e6] }).map((assay) => ({ solvent: 'glycerol', assay })),
  quantity({ percentByVolume: [1, 100], percent: [1, 100] }).map((assay) => ({ solvent: 'ethanol', assay })),
  fc.constantFrom('colour', ' scent ', '香').map((name) => ({ name })),
);

const claims = fc.record(
  {
    superfat: quantity({ percent: [-100, 100], fraction: [-1, 1] }),
    strength: share,
    waterPerAlkali: figure(0, 10),
    waterPerFat: quantity({ percent: [0, 300], fraction: [0, 3] }),
    kohShare: share,
    total: mass,
    shares: fc.record(
      { soap: share, water: share, glycerol: share, clearingAgents: share, polyol: share, sugar: share, spirit: share },
      { requiredKeys: [] },
    ),
    clearingAgentsPerSoap: figure(0, 10),
    waterPerSoap: figure(0, 10),
    ph: figure(0, 14),
    freeCausticAlkali: alkaliContent,
  },
  { requiredKeys: [] },
);

/** Recipes over all fields, units and forms, as JSON. */
export const recipe: fc.Arbitrary<object> = fc.record(
  {
    version: fc.constant(1),
    title: fc.constantFrom('Clear base', ' x ', '𝒯'.repeat(100)),
    fats: fc.array(fats, { minLength: 1, maxLength: 3 }),
    lye: fc.array(lye, { minLength: 1, maxLength: 2 }),
    water: mass,
    additions: fc.array(
      fc
        .tuple(what, amount, fc.constantFrom({}, { claimed: {} }, { claimed: { share: { percent: '9.5' } } }))
        .map(([one, much, printed]) => ({ ...one, ...much, ...printed })),
      { maxLength: 3 },
    ),
    target: fc.oneof(
      share.map((superfat) => ({ superfat })),
      alkaliContent.map((freeCausticAlkaliAtMost) => ({ freeCausticAlkaliAtMost })),
    ),
    claimed: claims,
    temperatures: fc.array(
      fc.record(
        { stage: fc.constantFrom('lye', 'saponification', 'clearing', 'pouring'), time, temperature },
        { requiredKeys: ['stage', 'temperature'] },
      ),
      { maxLength: 3 },
    ),
  },
  { requiredKeys: ['version', 'fats', 'lye'] },
);

type Place = readonly (string | number)[];

/** Every place in a value but the value itself. */
export function placesIn(value: unknown, place: Place = []): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, field]) => {
    const here = [...place, Array.isArray(value) ? Number(key) : key];
    return [here, ...placesIn(field, here)];
  });
}

/** A copy of a value with one place changed: `undefined` takes the field or entry out. */
export function changed(value: unknown, [key, ...rest]: Place, by: (old: unknown) => unknown): unknown {
  if (key === undefined) return by(value);
  if (Array.isArray(value)) {
    return value.flatMap((entry: unknown, at) => {
      const next = at === key ? changed(entry, rest, by) : entry;
      return next === undefined ? [] : [next];
    });
  }
  const fields = Object.entries(value as object).map(([name, field]: [string, unknown]) => [
    name,
    name === key ? changed(field, rest, by) : field,
  ]);
  return Object.fromEntries(fields.filter(([, field]) => field !== undefined));
}

/** Whether a value and every object inside it is frozen. */
export function isDeepFrozen(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  // the insides of a Decimal are its own
  if ('toFixed' in value) return true;
  return Object.isFrozen(value) && Object.values(value).every(isDeepFrozen);
}
