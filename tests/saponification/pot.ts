/**
 * What a pot becomes, worked out by itself, fat by fat, in floating point: what the bounds of the library are tried
 * against. Nothing here comes from the library.
 */
import {
  fatFromCertificate,
  type AlkaliSource,
  type ChargedFatInput,
  type FatKind,
  type LyeChargeInput,
  type SoapFromLyeInput,
} from 'laurate';

/** From one figure to another. */
export type Span = readonly [low: number, high: number];

/** A fat of a box of pots. */
export interface BoxFat {
  readonly kind: FatKind;
  readonly grams: number;
  /** Saponification value, mg KOH/g. */
  readonly value: Span;
  /** Acid value, mg KOH/g; of an acid it is not used. */
  readonly acid: number;
  /** Unsaponifiable matter and moisture, percent. */
  readonly unsaponifiable: Span;
  readonly moisture: Span;
}

/** An alkali of a box of pots; shares in percent, `total` being total alkali where there is carbonate. */
export interface BoxLye {
  readonly alkali: 'naoh' | 'koh';
  readonly state: 'solid' | 'solution';
  readonly grams: number;
  readonly total: Span;
  readonly carbonate?: Span;
}

/** All lawful pots of a charge. */
export interface Box {
  readonly fats: readonly BoxFat[];
  readonly lye: readonly BoxLye[];
  readonly water: number;
}

/** Each thing that varies, from its low end (0) to its high end (1): three of every fat, then two of every alkali. */
export type Spot = readonly number[];

// g/mol, added up by hand from H 1.008, C 12.011, O 15.999, Na 22.990, K 39.098
const [WATER, GLYCEROL, HYDROGEN, GAS] = [18.015, 92.094, 1.008, 44.009] as const;
const METAL = { naoh: 22.99, koh: 39.098 } as const;
const HYDROXIDE = { naoh: 39.997, koh: 56.105 } as const;
const CARBONATE = { naoh: 105.988, koh: 138.204 } as const;

const isAcid = ({ kind }: BoxFat): boolean => kind === 'free-fatty-acid' || kind === 'rosin';
const within = ([low, high]: Span, at: number): number => low + (high - low) * at;
const sum = <T>(parts: readonly T[], of: (part: T) => number): number =>
  parts.reduce((total, part) => total + of(part), 0);
const at = (spot: Spot, index: number): number => spot[index] ?? 0;

/** A fat of one pot: moles of free and bound acid, molar mass of that acid, grams of what is no acid. */
interface PotFat {
  readonly fat: BoxFat;
  readonly free: number;
  readonly bound: number;
  readonly mean: number;
  /** Grams of alcohol that splitting sets free. */
  readonly alcohol: number;
  readonly inert: number;
  readonly moisture: number;
}

function potFat(fat: BoxFat, value: number, unsaponifiable: number, moisture: number): PotFat {
  const acids = (fat.grams * value) / 56105;
  const free = isAcid(fat) ? acids : (fat.grams * fat.acid) / 56105;
  const bound = acids - free;
  const inert = (fat.grams * unsaponifiable) / 100;
  const damp = (fat.grams * moisture) / 100;
  const grams = fat.grams - inert - damp;
  // half of a wax is acid; else free·M + bound·(mass of the ester that binds one M) = grams
  const acidGrams = fat.kind === 'wax-ester' ? grams / 2 : grams - (bound * (GLYCEROL - 3 * WATER)) / 3;
  const alcohol = fat.kind === 'wax-ester' ? grams / 2 + bound * WATER : 0;
  return { fat, free, bound, mean: acidGrams / (free + bound), alcohol, inert, moisture: damp };
}

interface PotLye {
  readonly lye: BoxLye;
  readonly hydroxide: number;
  readonly carbonate: number;
  readonly rest: number;
}

function potLye(lye: BoxLye, total: number, carbonate: number): PotLye {
  const { alkali, grams } = lye;
  const salt = (grams * carbonate) / 100;
  const hydroxide = (grams * total) / 100 - (salt * 2 * HYDROXIDE[alkali]) / CARBONATE[alkali];
  return {
    lye,
    hydroxide: hydroxide / HYDROXIDE[alkali],
    carbonate: salt / CARBONATE[alkali],
    rest: grams - hydroxide - salt,
  };
}

/** The fats and alkalis of the pot at a spot of its box. */
function potAt({ fats, lye }: Box, spot: Spot): { readonly fats: readonly PotFat[]; readonly lye: readonly PotLye[] } {
  return {
    fats: fats.map((fat, i) =>
      potFat(
        fat,
        within(fat.value, at(spot, 3 * i)),
        within(fat.unsaponifiable, at(spot, 3 * i + 1)),
        within(fat.moisture, at(spot, 3 * i + 2)),
      ),
    ),
    lye: lye.map((one, i) => {
      const first = 3 * fats.length + 2 * i;
      return potLye(one, within(one.total, at(spot, first)), within(one.carbonate ?? [0, 0], at(spot, first + 1)));
    }),
  };
}

/** Where the reaction turns: caustic in excess; hydroxide beyond free acid; hydroxide and carbonate beyond free acid. */
export function turnsAt(box: Box, spot: Spot): readonly number[] {
  const { fats, lye } = potAt(box, spot);
  const hydroxide = sum(lye, (one) => one.hydroxide);
  const free = sum(fats, (fat) => fat.free);
  return [
    hydroxide - free - sum(fats, (fat) => fat.bound),
    hydroxide - free,
    hydroxide + 2 * sum(lye, (one) => one.carbonate) - free,
  ];
}

/** Grams of everything in the pot at a spot, after complete reaction. */
export function becomes(box: Box, spot: Spot): Readonly<Record<string, number>> {
  const { fats, lye } = potAt(box, spot);
  const of = (alkali: 'naoh' | 'koh'): readonly PotLye[] => lye.filter((one) => one.lye.alkali === alkali);
  const hydroxide = sum(lye, (one) => one.hydroxide);
  const carbonate = sum(lye, (one) => one.carbonate);
  const free = sum(fats, (fat) => fat.free);
  const bound = sum(fats, (fat) => fat.bound);

  const byHydroxide = Math.min(hydroxide, free);
  const byCarbonate = Math.min(free - byHydroxide, 2 * carbonate);
  const taken = free === 0 ? 0 : (byHydroxide + byCarbonate) / free;
  const split = Math.min(1, Math.max(0, hydroxide - free) / (bound === 0 ? 1 : bound));
  const esterSoap = sum(fats, (fat) => fat.bound) * split;
  const left = Math.max(0, hydroxide - free - bound);

  const acidGrams = sum(fats, (fat) => (fat.free * taken + fat.bound * split) * fat.mean);
  const soaps = byHydroxide + byCarbonate + esterSoap;
  const ester = ({ fat: { kind }, bound: moles, mean, alcohol }: PotFat): number =>
    kind === 'wax-ester' ? moles * (mean - WATER) + alcohol : moles * (mean + (GLYCEROL - 3 * WATER) / 3);

  const made: Record<string, number> = {
    glycerol: sum(fats, (fat) => (fat.fat.kind === 'triglyceride' ? (fat.bound * split * GLYCEROL) / 3 : 0)),
    water:
      box.water +
      sum(fats, (fat) => fat.moisture) +
      sum(lye, ({ lye: one, rest }) => (one.state === 'solution' || one.alkali === 'koh' ? rest : 0)) +
      (byHydroxide + byCarbonate / 2) * WATER,
    freeFat: (1 - split) * sum(fats, ester),
    freeAcid: (1 - taken) * sum(fats, (fat) => fat.free * fat.mean),
    unsaponifiable: sum(fats, ({ inert, alcohol }) => inert + alcohol * split),
    other: sum(lye, ({ lye: one, rest }) => (one.state === 'solid' && one.alkali === 'naoh' ? rest : 0)),
    carbonDioxide: (byCarbonate / 2) * GAS,
  };
  for (const [alkali, soap, caustic, salt] of [
    ['naoh', 'soapSodium', 'freeNaoh', 'sodiumCarbonate'],
    ['koh', 'soapPotassium', 'freeKoh', 'potassiumCarbonate'],
  ] as const) {
    const share = sum(of(alkali), (one) => one.hydroxide) / hydroxide;
    const saltShare = carbonate === 0 ? 0 : sum(of(alkali), (one) => one.carbonate) / carbonate;
    const moles = (byHydroxide + esterSoap) * share + byCarbonate * saltShare;
    made[soap] = moles * (METAL[alkali] - HYDROGEN) + (soaps === 0 ? 0 : (acidGrams * moles) / soaps);
    made[caustic] = left * share * HYDROXIDE[alkali];
    made[salt] = (carbonate - byCarbonate / 2) * saltShare * CARBONATE[alkali];
  }
  return made;
}

const range = ([low, high]: Span): { low: { percent: number }; high: { percent: number } } => ({
  low: { percent: low },
  high: { percent: high },
});

/** The box as the library takes it. */
export function asInput({ fats, lye, water }: Box): SoapFromLyeInput {
  return {
    fats: fats.map((fat, i): ChargedFatInput => ({
      fat: fatFromCertificate({
        name: `Fat ${String(i + 1)}`,
        kind: fat.kind,
        saponificationValue: { low: { mgKohPerG: fat.value[0] }, high: { mgKohPerG: fat.value[1] } },
        ...(isAcid(fat) ? {} : { acidValue: { mgKohPerG: fat.acid } }),
        unsaponifiable: range(fat.unsaponifiable),
        moisture: range(fat.moisture),
      }),
      mass: { g: fat.grams },
    })),
    lye: lye.map(({ alkali, grams, state, total, carbonate }): LyeChargeInput => {
      const source: AlkaliSource =
        carbonate !== undefined
          ? { solid: { totalAlkali: range(total), carbonate: range(carbonate) } }
          : state === 'solid'
            ? { solid: { hydroxide: range(total) } }
            : { solution: { hydroxide: range(total) } };
      return { alkali, mass: { g: grams }, ...source };
    }),
    water: { g: water },
  };
}
