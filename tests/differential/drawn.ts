/** Recipes drawn at random, as plain data: what both implementations are told. */
import { fats, type Alkali, type FatKind, type PublishedFatId } from 'laurate';
import type { Chance } from '../bench/audit/draw.js';
import type { Range } from './rational.js';

export type DrawnFat = { readonly mass: string } & (
  | { readonly published: PublishedFatId }
  | {
      readonly kind: FatKind;
      readonly value: Range;
      readonly unit: 'mgKohPerG' | 'gKohPerG' | 'gNaohPerG' | 'saponificationEquivalent';
      readonly uncertainty?: string;
      readonly acidValue?: string;
      readonly unsaponifiable?: Range;
      readonly moisture?: Range;
    }
);

export type DrawnSource =
  | { readonly form: 'solution' | 'solid'; readonly hydroxide: Range }
  | { readonly form: 'carbonated'; readonly totalAlkali: Range; readonly carbonate: Range };

export interface DrawnPlan {
  readonly sources: Readonly<Partial<Record<Alkali, DrawnSource>>>;
  readonly kohShare: string;
  readonly target: { readonly superfat: string } | { readonly freeCaustic: string };
  readonly dilution: readonly ['strength' | 'waterPerAlkali' | 'waterPerFat' | 'water' | 'as-is', string];
  readonly scaleStep?: string;
  readonly batchMass?: string;
}

export type DrawnAddition = { readonly mass: string } & (
  | { readonly solvent: (typeof SOLVENTS)[number]; readonly assay: Range }
  | { readonly salt: string }
  | { readonly name: string }
);

export interface DrawnPot {
  readonly lye: readonly { readonly alkali: Alkali; readonly mass: string; readonly source: DrawnSource }[];
  readonly water?: string;
  readonly batchMass?: string;
  /** Whether what the reaction makes is looked at: now and then, for the library's bounds of it cost most of the time. */
  readonly reacts: boolean;
  /** Of a pot that reacts, what is in it in the end. */
  readonly composition?: DrawnComposition;
}

export interface DrawnComposition {
  readonly additions: readonly DrawnAddition[];
  /** What has gone as water and spirit, or how much less than the charge the pot weighs. */
  readonly gone?: { readonly says: 'evaporated' | 'potMass'; readonly mass: string; readonly spiritShare?: Range };
}

export interface Drawn {
  /** Whether the fats are charged as one blend of them. */
  readonly blended: boolean;
  readonly fats: readonly DrawnFat[];
  readonly plan: DrawnPlan;
  readonly pot: DrawnPot;
}

const SOLVENTS = [
  'ethanol', '2-propanol', 'glycerol', 'propylene-glycol', 'dipropylene-glycol', '1-3-butanediol',
  'sorbitol', 'sucrose', 'glucose', 'peg-400', 'triethanolamine', 'water',
] as const; // prettier-ignore

const VALUES = {
  triglyceride: [120, 350],
  'free-fatty-acid': [150, 380],
  'wax-ester': [70, 180],
  rosin: [150, 195],
} as const;

const figure = (chance: Chance, least: number, most: number, places = 2): string =>
  chance.between(least, most).toFixed(chance.whole(0, places));

/** An exact figure, a range, or a range with its likely value. */
function range(chance: Chance, least: number, most: number, places = 2): Range {
  const [low, likely, high] = [0, 1, 2].map(() => chance.between(least, most)).sort((a, b) => a - b) as [
    number,
    number,
    number,
  ];
  const text = (value: number): string => value.toFixed(places);
  if (chance.happens(0.5)) return text(likely);
  return { low: text(low), high: text(high), ...(chance.happens(0.5) && { likely: text(likely) }) };
}

function fatOf(chance: Chance): DrawnFat {
  const mass = figure(chance, 1, 10 ** chance.between(1, 4), 3);
  if (chance.happens(0.3)) return { mass, published: chance.oneOf(fats).id };
  const kind = chance.oneOf([
    'triglyceride',
    'triglyceride',
    'triglyceride',
    'free-fatty-acid',
    'wax-ester',
    'rosin',
  ] as const);
  const unit = chance.oneOf(['mgKohPerG', 'gKohPerG', 'gNaohPerG', 'saponificationEquivalent'] as const);
  const [least, most] = VALUES[kind].map(
    (mg) =>
      ({ mgKohPerG: mg, gKohPerG: mg / 1000, gNaohPerG: (mg / 56105) * 39.997, saponificationEquivalent: 56105 / mg })[
        unit
      ],
  ) as [number, number];
  const value = range(
    chance,
    Math.min(least, most),
    Math.max(least, most),
    { mgKohPerG: 1, gKohPerG: 4, gNaohPerG: 4, saponificationEquivalent: 2 }[unit],
  );
  const hasAcid = kind === 'triglyceride' || kind === 'wax-ester';
  return {
    mass,
    kind,
    value,
    unit,
    ...(unit === 'mgKohPerG' &&
      typeof value === 'string' &&
      chance.happens(0.5) && { uncertainty: figure(chance, 0.1, 3) }),
    ...(hasAcid && chance.happens(0.6) && { acidValue: figure(chance, 0, 40) }),
    ...(chance.happens(0.6) && { unsaponifiable: range(chance, 0, 12) }),
    ...(chance.happens(0.4) && { moisture: range(chance, 0, 5) }),
  };
}

function sourceOf(chance: Chance): DrawnSource {
  const form = chance.oneOf(['solution', 'solid', 'carbonated'] as const);
  if (form === 'solution') return { form, hydroxide: range(chance, 25, 50, 1) };
  if (form === 'solid') return { form, hydroxide: range(chance, 84, 100, 1) };
  return { form, totalAlkali: range(chance, 85, 97, 1), carbonate: range(chance, 0, 3, 1) };
}

function planOf(chance: Chance): DrawnPlan {
  const which = chance.oneOf(['naoh', 'koh', 'both'] as const);
  const sources = {
    ...(which !== 'koh' && { naoh: sourceOf(chance) }),
    ...(which !== 'naoh' && { koh: sourceOf(chance) }),
  };
  const allLyes = Object.values(sources).every(({ form }) => form === 'solution');
  const dilution = chance.oneOf([
    'strength',
    'waterPerAlkali',
    'waterPerFat',
    'water',
    allLyes ? 'as-is' : 'strength',
  ] as const);
  const most = { strength: 24, waterPerAlkali: 3, waterPerFat: 60, water: 4000, 'as-is': 1 }[dilution];
  return {
    sources,
    kohShare: figure(chance, 5, 95),
    target: chance.happens(0.75)
      ? { superfat: figure(chance, 0, 15) }
      : { freeCaustic: chance.between(0, 0.3).toFixed(2) },
    dilution: [dilution, dilution === 'as-is' ? '' : figure(chance, most / 4, most)],
    ...(chance.happens(0.5) && { scaleStep: chance.oneOf(['0.01', '0.1', '0.5', '1']) }),
    ...(chance.happens(0.2) && { batchMass: figure(chance, 20000, 200000) }),
  };
}

function additionOf(chance: Chance): DrawnAddition {
  const mass = figure(chance, 0, 10 ** chance.between(0, 3));
  if (chance.happens(0.1)) return { mass, salt: 'sodium chloride' };
  if (chance.happens(0.1)) return { mass, name: 'colour' };
  return { mass, solvent: chance.oneOf(SOLVENTS), assay: range(chance, 60, 100) };
}

/** A pot whose hydroxide runs from far too little, so that acid is left for carbonate, to a good deal too much. */
function potOf(chance: Chance, fatMass: number): DrawnPot {
  const reach = chance.between(0.02, 0.25) * fatMass;
  const lye = Array.from({ length: chance.whole(1, 3) }, (_, at) => {
    const source = sourceOf(chance);
    const mass = (reach * (source.form === 'solution' ? 2.5 : 1)) / (at + 1);
    return { alkali: chance.oneOf(['naoh', 'koh'] as const), mass: mass.toFixed(2), source };
  });
  const additions = Array.from({ length: chance.whole(0, 4) }, () => additionOf(chance));
  const reacts = chance.happens(0.25);
  const gone = {
    says: chance.oneOf(['evaporated', 'potMass'] as const),
    mass: figure(chance, 0, fatMass * 0.1),
    ...(chance.happens(0.5) && { spiritShare: range(chance, 0, 100) }),
  };
  return {
    lye,
    ...(chance.happens(0.8) && { water: figure(chance, 0, fatMass) }),
    ...(chance.happens(0.2) && { batchMass: figure(chance, 3 * fatMass, 4 * fatMass) }),
    reacts,
    ...(reacts && chance.happens(0.4) && { composition: { additions, ...(chance.happens(0.5) && { gone }) } }),
  };
}

export function drawn(chance: Chance): Drawn {
  const fats = Array.from({ length: chance.whole(1, 4) }, () => fatOf(chance));
  const fatMass = fats.reduce((total, { mass }) => total + Number(mass), 0);
  return { blended: chance.happens(0.1), fats, plan: planOf(chance), pot: potOf(chance, fatMass) };
}
