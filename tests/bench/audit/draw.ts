/**
 * Recipes drawn at random over the whole registry. The lot of every fat is drawn from its published range, so that no
 * likely value of the library is built into what it is tried on; all sums are in floating point, apart from the library.
 */
import { fat, fatFromCertificate, fats, type Alkali, type Fat, type PublishedFatId } from 'laurate';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { drawnAdditions, type DrawnAddition } from './additions.js';

/** A source of chance that can be started again from its seed. */
export interface Chance {
  /** From least to most. */
  readonly between: (least: number, most: number) => number;
  readonly whole: (least: number, most: number) => number;
  readonly oneOf: <T>(list: readonly T[]) => T;
  readonly happens: (share: number) => boolean;
}

export function chanceFrom(seed: number): Chance {
  const generator = xoroshiro128plus(seed);
  const unit = (): number => uniformFloat64(generator);
  const whole = (least: number, most: number): number => uniformInt(generator, least, most);
  return {
    between: (least, most) => least + (most - least) * unit(),
    whole,
    oneOf: (list) => list[whole(0, list.length - 1)] as never,
    happens: (share) => unit() < share,
  };
}

export const M = { koh: 56.105, naoh: 39.997 } as const;

/** Units of mass in which recipes are printed, in grams, and how much of it a batch is. */
export const UNITS = { g: 1, oz: 28.349523125, lb: 453.59237, kg: 1000 } as const;
export type PrintedUnit = keyof typeof UNITS;

/** What the name of a lot that is the workshop's own begins with. */
export const OWN_LOT_OF = 'Own lot of ';

export interface DrawnFat {
  /** The name the recipe calls it by. */
  readonly name: string;
  readonly fat: Fat;
  /** In the printed unit, to its decimals. */
  mass: number;
  /** The lot's true value, mg KOH/g, as its table prints it. */
  readonly value: number;
  readonly acidValue: number;
}

/** An alkali of a recipe before its mass is known. */
export interface DrawnAlkali {
  readonly alkali: Alkali;
  readonly state: 'solid' | 'solution';
  /** Hydroxide as a fraction of one. */
  readonly strength: number;
  /** All alkali as hydroxide, with the carbonate, where the label states both. */
  readonly total?: number;
  /** Share of the hydroxide, by mole. */
  readonly share: number;
}

/** Everything a recipe is written from. */
export interface Draft {
  readonly unit: PrintedUnit;
  readonly decimals: number;
  readonly fats: readonly DrawnFat[];
  readonly alkalis: readonly DrawnAlkali[];
  /** As printed, percent, with its decimals. */
  readonly superfat: string;
  /** Water added, in the printed unit. */
  readonly water: number;
  /** Whether the recipe prints the saponification values it was reckoned with, and in which unit. */
  readonly prints: 'gNaohPerG' | 'mgKohPerG' | undefined;
  readonly additions: readonly DrawnAddition[];
  /** Whether the recipe prints what the pot is made of. */
  readonly printsParts: boolean;
  /** As printed. */
  readonly ph: string | undefined;
  /** Of saponification, in the unit that the recipe prints temperatures in. */
  readonly temperature: { readonly unit: 'celsius' | 'fahrenheit'; readonly celsius: number };
}

const ids: readonly PublishedFatId[] = fats.map(({ id }) => id);

/** A fat of the registry, or now and then a lot of one's own with free acid. */
function drawnFat(chance: Chance, at: number, prints: Draft['prints']): Omit<DrawnFat, 'mass'> {
  const published = fat(chance.oneOf(ids));
  const isOwn = published.kind === 'triglyceride' && chance.happens(0.1);
  const acid = isOwn ? Number(chance.between(4, 20).toFixed(1)) : Number(published.acidValue.mgKohPerG);
  const { low, high } = published.saponificationValue;
  const [least, most] = [Number(low.mgKohPerG), Number(high.mgKohPerG)];
  const used = isOwn
    ? fatFromCertificate({
        name: `${OWN_LOT_OF}${published.name}`,
        kind: 'triglyceride',
        like: published,
        saponificationValue: { low: { mgKohPerG: low.mgKohPerG }, high: { mgKohPerG: high.mgKohPerG } },
        acidValue: { mgKohPerG: acid },
      })
    : published;
  let value: number;
  // printing may carry a value over an end of its range
  do value = printedValue(chance.between(least, most), prints);
  while (value < least || value > most);
  return { name: isOwn ? `own-${String(at)}` : (published.id ?? ''), fat: used, value, acidValue: acid };
}

/** A value as a table prints it, in mg KOH/g. */
function printedValue(value: number, prints: Draft['prints']): number {
  const factor = M.naoh / M.koh / 1000;
  return prints === 'gNaohPerG' ? Number((value * factor).toFixed(4)) / factor : Number(value.toFixed(1));
}

function drawnAlkali(chance: Chance, alkali: Alkali, share: number): DrawnAlkali {
  if (chance.happens(0.45)) {
    return { alkali, share, state: 'solution', strength: chance.whole(alkali === 'naoh' ? 25 : 20, 50) / 100 };
  }
  const strength = chance.whole(alkali === 'naoh' ? 950 : 850, alkali === 'naoh' ? 995 : 920) / 1000;
  if (!chance.happens(0.2)) return { alkali, share, state: 'solid', strength };
  // all alkali is what is drawn: no certificate states more than a pure solid
  return { alkali, share, state: 'solid', strength: strength - chance.whole(15, 40) / 1000, total: strength };
}

/** A draft of a recipe; its superfat is 0 to 12 per cent. */
export function drawnDraft(chance: Chance): Draft {
  const unit = chance.oneOf(['g', 'g', 'g', 'oz', 'lb', 'kg'] as const);
  const decimals = chance.oneOf({ g: [0, 1, 2], oz: [1, 2], lb: [1, 2], kg: [2, 3] }[unit]);
  const prints = chance.oneOf([undefined, undefined, 'gNaohPerG', 'mgKohPerG'] as const);
  const batch = { g: 1500, oz: 60, lb: 20, kg: 25 }[unit];
  const rows = Array.from({ length: chance.whole(1, 5) }, (_, at) => ({
    ...drawnFat(chance, at, prints),
    mass: Number(chance.between(batch * 0.1, batch).toFixed(decimals)),
  }));
  // so little of the fats that lye dissolves, and that the pot is one of soap
  const fatMass = rows.reduce((sum, { mass }) => sum + mass, 0);
  const share = chance.whole(5, 95) / 100;
  const alkalis = chance.happens(0.2)
    ? [drawnAlkali(chance, 'naoh', 1 - share), drawnAlkali(chance, 'koh', share)]
    : [drawnAlkali(chance, chance.happens(0.75) ? 'naoh' : 'koh', 1)];
  return {
    unit,
    decimals,
    // one fat twice under one name would be one row
    fats: rows.filter((row, at) => rows.findIndex(({ name }) => name === row.name) === at),
    alkalis,
    superfat: chance.between(0, 12).toFixed(chance.whole(0, 1)),
    water: Number(chance.between(fatMass * 0.3, fatMass * 0.6).toFixed(decimals)),
    prints,
    additions: drawnAdditions(chance, unit, decimals, Math.min(batch, fatMass)),
    // they cost most of the time
    printsParts: chance.happens(0.02),
    ph: chance.happens(0.1) ? chance.between(8.4, 10.5).toFixed(1) : undefined,
    temperature: { unit: chance.oneOf(['celsius', 'fahrenheit']), celsius: chance.whole(45, 75) },
  };
}

/** Moles of hydroxide to a printed unit of mass, with other values or another superfat where these are given. */
export function hydroxideFor(draft: Draft, value = (row: DrawnFat): number => row.value, kept = keptBy(draft)): number {
  return (draft.fats.reduce((sum, row) => sum + row.mass * value(row), 0) / 1000 / M.koh) * kept;
}

export const superfatOf = ({ superfat }: Draft): number => Number(superfat) / 100;
const keptBy = (draft: Draft): number => 1 - superfatOf(draft);

/** The masses of the alkalis, in the printed unit, that bring so much hydroxide. */
export function massesFor({ alkalis }: Draft, hydroxide: number): readonly number[] {
  return alkalis.map(({ alkali, share, strength }) => (hydroxide * share * M[alkali]) / strength);
}

/** A row of the fats, which is there. */
export function rowAt({ fats }: Draft, at: number): DrawnFat {
  const row = fats[at];
  if (row === undefined) throw new RangeError(`no row ${String(at)}`);
  return row;
}
