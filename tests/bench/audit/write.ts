/** A draft as the recipe that is printed of it. */
import type { Recipe } from 'laurate/recipe';
import { hasParts, partsOf } from './additions.js';
import { M, massesFor, hydroxideFor, type Draft } from './draw.js';

/** What is printed otherwise than it follows from the draft. */
export interface Misprint {
  /** Masses of the alkalis in the printed unit, before rounding. */
  readonly masses?: readonly number[];
  /** The first alkali's mass as text. */
  readonly massText?: string;
  /** Masses of the fats in the printed unit, before rounding. */
  readonly fatMasses?: readonly number[];
  /** Printed saponification values, by row, in the printed unit. */
  readonly values?: readonly (string | undefined)[];
  readonly strength?: string;
  readonly waterPerAlkali?: string;
  readonly waterPerFat?: string;
  readonly kohShare?: string;
  readonly total?: string;
  /** Printed shares of the additions, by row. */
  readonly additionShares?: readonly (string | undefined)[];
  readonly clearingAgents?: string;
  readonly spirit?: string;
  readonly waterPerSoap?: string;
  readonly temperature?: string;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** What is in the lye of a draft, in the printed unit. */
export function lyeOf(draft: Draft): { weighed: number; pure: number; all: number; water: number; fats: number } {
  const masses = massesFor(draft, hydroxideFor(draft));
  const pure = sum(draft.alkalis.map(({ strength }, at) => (masses[at] ?? 0) * strength));
  const weighed = sum(masses);
  const all = weighed + draft.water;
  return { weighed, pure, all, water: all - pure, fats: sum(draft.fats.map(({ mass }) => mass)) };
}

export function recipeOf(draft: Draft, misprint: Misprint = {}): Recipe {
  const { unit, decimals, alkalis, prints } = draft;
  const masses = misprint.masses ?? massesFor(draft, hydroxideFor(draft));
  const mass = (number: number): never => ({ [unit]: number.toFixed(decimals) }) as never;
  const lye = lyeOf(draft);
  const oxideFactor = M.naoh / M.koh / 1000;
  return {
    version: 1,
    fats: draft.fats.map((row, at) => {
      const printed =
        misprint.values?.[at] ??
        (prints === 'gNaohPerG' ? (row.value * oxideFactor).toFixed(4) : prints && row.value.toFixed(1));
      return {
        fat: row.name,
        mass: mass(misprint.fatMasses?.[at] ?? row.mass),
        ...(prints === undefined ? {} : { claimed: { saponificationValue: { [prints]: printed } as never } }),
      };
    }),
    lye: alkalis.map(({ alkali, state, strength, total }, at) => ({
      alkali,
      mass:
        at === 0 && misprint.massText !== undefined ? ({ [unit]: misprint.massText } as never) : mass(masses[at] ?? 0),
      ...(state === 'solution'
        ? { solution: { hydroxide: { fraction: strength.toFixed(2) } } }
        : { solid: solidOf(alkali, strength, total) }),
    })) as never,
    water: mass(draft.water),
    ...(draft.additions.length === 0 ? {} : { additions: additionsOf(draft, misprint) }),
    temperatures: [{ stage: 'saponification', temperature: temperatureOf(draft, misprint) }],
    claimed: {
      ...(draft.ph === undefined ? {} : { ph: draft.ph }),
      ...partClaims(draft, misprint),
      superfat: { percent: draft.superfat },
      strength: { percent: misprint.strength ?? ((100 * lye.pure) / lye.all).toFixed(1) },
      waterPerAlkali: misprint.waterPerAlkali ?? (lye.water / lye.pure).toFixed(2),
      waterPerFat: { percent: misprint.waterPerFat ?? ((100 * draft.water) / lye.fats).toFixed(1) },
      ...(alkalis.length === 2
        ? { kohShare: { percent: misprint.kohShare ?? (100 * (alkalis[1]?.share ?? 0)).toFixed(0) } }
        : {}),
      total:
        misprint.total === undefined
          ? mass(lye.all + lye.fats + sum(draft.additions.map((one) => one.mass)))
          : ({ [unit]: misprint.total } as never),
    },
  };
}

/** An assay as the label states it: the hydroxide, or all alkali and its carbonate. */
function solidOf(alkali: 'naoh' | 'koh', strength: number, total: number | undefined): object {
  if (total === undefined) return { hydroxide: { fraction: strength.toFixed(3) } };
  const carbonate = (total - strength) * (alkali === 'naoh' ? 105.988 / 2 / M.naoh : 138.205 / 2 / M.koh);
  return { totalAlkali: { fraction: total.toFixed(3) }, carbonate: { fraction: carbonate.toFixed(6) } };
}

function additionsOf(draft: Draft, { additionShares }: Misprint): NonNullable<Recipe['additions']> {
  const { all } = partsOf(draft);
  return draft.additions.map(({ solvent, printed, unit, isByVolume, mass, assay }, at) => ({
    solvent,
    [isByVolume ? 'volume' : 'mass']: { [unit]: printed },
    ...(assay === undefined ? {} : { assay }),
    claimed: { share: { percent: additionShares?.[at] ?? ((100 * mass) / all).toFixed(1) } },
  })) as never;
}

function temperatureOf({ temperature: { unit, celsius } }: Draft, { temperature }: Misprint): never {
  const degrees = unit === 'celsius' ? celsius : (celsius * 9) / 5 + 32;
  return { [unit]: temperature ?? degrees.toFixed(0) } as never;
}

/** What the pot is made of, where the recipe prints it. */
function partClaims(draft: Draft, misprint: Misprint): object {
  const isPrinted =
    draft.printsParts || [misprint.clearingAgents, misprint.spirit, misprint.waterPerSoap].some(Boolean);
  if (!isPrinted || !hasParts(draft)) return {};
  const { soap, water, glycerol, spirit, clearingAgents, all } = partsOf(draft);
  const percent = (part: number): object => ({ percent: ((100 * part) / all).toFixed(1) });
  const or = (text: string | undefined, part: number): object =>
    text === undefined ? percent(part) : { percent: text };
  return {
    shares: {
      soap: percent(soap),
      water: percent(water),
      glycerol: percent(glycerol),
      clearingAgents: or(misprint.clearingAgents, clearingAgents),
      ...(spirit === 0 ? {} : { spirit: or(misprint.spirit, spirit) }),
    },
    waterPerSoap: misprint.waterPerSoap ?? (water / soap).toFixed(2),
    clearingAgentsPerSoap: (clearingAgents / soap).toFixed(2),
  };
}
