/** What is drawn besides fats and lye, and what the pot is then made of: in floating point, apart from the library. */
import { mixtureDensity, solventDensity, type SolventId } from 'laurate';
import type { RecipeAddition } from 'laurate/recipe';
import { M, massesFor, hydroxideFor, UNITS, type Chance, type Draft, type DrawnFat, type PrintedUnit } from './draw.js';

/** A volume is printed in the unit that goes with that of the masses. */
const VOLUMES = { g: { unit: 'mL', mL: 1 }, oz: { unit: 'usFlOz', mL: 29.5735295625 } } as const;

export interface DrawnAddition {
  readonly solvent: SolventId;
  /** As printed, with its decimals, under the unit of mass or of volume. */
  readonly printed: string;
  readonly unit: string;
  readonly isByVolume: boolean;
  /** What it weighs, and what it may weigh, in the printed unit of mass. */
  readonly mass: number;
  readonly least: number;
  readonly most: number;
  /** What of it is the solvent, by mass. */
  readonly share: number;
  /** What may be so, where it is not printed. */
  readonly shareLeast: number;
  readonly shareMost: number;
  readonly assay: RecipeAddition['assay'] | undefined;
}

interface Kind {
  readonly solvent: SolventId;
  readonly share: number;
  readonly assay?: object;
  readonly shareLeast?: number;
  readonly density?: (celsius: number) => number;
}

const mixed =
  (solvent: 'ethanol' | 'glycerol', share: number) =>
  (celsius: number): number =>
    Number(mixtureDensity({ solvent, share: { fraction: share }, temperature: { celsius } }).density.gPerML);

/** 96 % by volume is 93.84 % by mass (OIML R 22). */
const SPIRIT = 0.9384;

const KINDS: readonly ((chance: Chance) => Kind)[] = [
  () => ({ solvent: 'glycerol', share: 0.995, assay: { percent: '99.5' }, density: mixed('glycerol', 0.995) }),
  (chance) => ({ solvent: 'glycerol', share: chance.between(0.95, 1), shareLeast: 0.835 }),
  () => ({ solvent: 'ethanol', share: SPIRIT, assay: { percentByVolume: '96' }, density: mixed('ethanol', SPIRIT) }),
  () => ({
    solvent: 'propylene-glycol',
    share: 1,
    assay: { percent: '100' },
    density: (celsius) =>
      Number(solventDensity({ solvent: 'propylene-glycol', temperature: { celsius } }).density.gPerML),
  }),
  () => ({ solvent: 'sorbitol', share: 0.7, assay: { percent: '70' } }),
  () => ({ solvent: 'sorbitol', share: 0.98, assay: { percent: '98' } }),
  () => ({ solvent: 'sucrose', share: 1, assay: { percent: '100' } }),
];

/** None to three of them. */
export function drawnAdditions(
  chance: Chance,
  unit: PrintedUnit,
  decimals: number,
  batch: number,
): readonly DrawnAddition[] {
  const drawn = Array.from({ length: chance.happens(0.5) ? chance.whole(1, 3) : 0 }, () =>
    drawnAddition(chance, unit, decimals, batch),
  );
  return drawn.filter(({ solvent }, at) => drawn.findIndex((one) => one.solvent === solvent) === at);
}

function drawnAddition(chance: Chance, unit: PrintedUnit, decimals: number, batch: number): DrawnAddition {
  const { solvent, share, assay, shareLeast = share, density } = chance.oneOf(KINDS)(chance);
  const printed = chance.between(batch * 0.05, batch * 0.4).toFixed(decimals);
  const shares = {
    share,
    shareLeast,
    shareMost: assay === undefined ? 1 : share,
    assay: assay as RecipeAddition['assay'] | undefined,
  };
  const volume = unit === 'g' || unit === 'oz' ? VOLUMES[unit] : undefined;
  if (density === undefined || volume === undefined || !chance.happens(0.3)) {
    const mass = Number(printed);
    return { solvent, printed, unit, isByVolume: false, mass, least: mass, most: mass, ...shares };
  }
  const weighs = (celsius: number): number => (Number(printed) * volume.mL * density(celsius)) / UNITS[unit];
  const mass = weighs(chance.between(15, 25));
  return {
    solvent,
    printed,
    unit: volume.unit,
    isByVolume: true,
    mass,
    least: weighs(25),
    most: weighs(15),
    ...shares,
  };
}

/** The lot of a fat, and where in the ranges of its unsaponifiable matter and its water it is. */
export interface Lot {
  readonly value: number;
  readonly unsaponifiable: number;
  readonly moisture: number;
}

/** What a pot is made of, in the printed unit of mass. */
export interface Parts {
  readonly soap: number;
  readonly water: number;
  /** Without what forms, and what is not known of solid alkali. */
  readonly waterAtLeast: number;
  readonly glycerol: number;
  readonly spirit: number;
  readonly clearingAgents: number;
  readonly all: number;
}

/** Whether the parts of a draft are reckoned here: glycerides and fatty acids, without carbonate. */
export function hasParts({ fats, alkalis }: Draft): boolean {
  return (
    fats.every(({ fat: { kind } }) => kind === 'triglyceride' || kind === 'free-fatty-acid') &&
    alkalis.every(({ total }) => total === undefined)
  );
}

export function lotOf({ value, fat }: DrawnFat, at = 0.5): Lot {
  const range = (of: 'unsaponifiable' | 'moisture'): number => {
    if (fat.kind === 'blend') return 0;
    const { low, high } = fat[of];
    return (Number(low.percent) + at * (Number(high.percent) - Number(low.percent))) / 100;
  };
  return { value, unsaponifiable: range('unsaponifiable'), moisture: range('moisture') };
}

/** Each acid of a glyceride has a third of the glyceryl residue beside it: C3H2, 38.049 g/mol. */
const RESIDUE = 38.049 / 3;
const METAL = { naoh: 22.99, koh: 39.098 } as const;

/** The parts of a draft: acids are soap first, then all glycerides to one extent. */
export function partsOf(
  draft: Draft,
  {
    masses = massesFor(draft, hydroxideFor(draft)),
    lot = lotOf,
    size = ({ mass }: DrawnAddition): number => mass,
    pure = ({ share }: DrawnAddition): number => share,
  }: {
    masses?: readonly number[];
    lot?: (row: DrawnFat) => Lot;
    size?: (one: DrawnAddition) => number;
    pure?: (one: DrawnAddition) => number;
  } = {},
): Parts {
  const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
  const rows = draft.fats.map((row) => {
    const { value, unsaponifiable, moisture } = lot(row);
    const isAcid = row.fat.kind === 'free-fatty-acid';
    const mol = (row.mass * value) / 1000 / M.koh;
    const acidMol = isAcid ? mol : (row.mass * row.acidValue) / 1000 / M.koh;
    const esterMol = mol - acidMol;
    const acidMass = row.mass * (1 - unsaponifiable - moisture) - esterMol * RESIDUE;
    return { acidMol, esterMol, perMol: acidMass / mol, moisture: row.mass * moisture };
  });
  const moles = draft.alkalis.map(({ alkali, strength }, at) => ((masses[at] ?? 0) * strength) / M[alkali]);
  const alkali = sum(moles);
  const acids = sum(rows.map(({ acidMol }) => acidMol));
  const esters = sum(rows.map(({ esterMol }) => esterMol));
  const taken = acids === 0 ? 0 : Math.min(1, alkali / acids);
  const extent = esters === 0 ? 0 : Math.min(1, Math.max(0, alkali - acids) / esters);
  const metal = sum(draft.alkalis.map((one, at) => ((moles[at] ?? 0) / alkali) * METAL[one.alkali])) - 1.008;
  const soap = sum(
    rows.map(({ acidMol, esterMol, perMol }) => (acidMol * taken + esterMol * extent) * (perMol + metal)),
  );
  const added = (...solvents: readonly SolventId[]): number =>
    sum(draft.additions.map((one) => (solvents.includes(one.solvent) ? size(one) * pure(one) : 0)));
  const rests = sum(draft.additions.map((one) => size(one) * (1 - pure(one))));
  const glycerol = (esters * extent * 92.094) / 3 + added('glycerol');
  const rest = (of: 'solid' | 'solution'): number =>
    sum(draft.alkalis.map(({ strength, state }, at) => (state === of ? (masses[at] ?? 0) * (1 - strength) : 0)));
  const waterAtLeast = rest('solution') + draft.water + rests;
  return {
    soap,
    glycerol,
    spirit: added('ethanol'),
    clearingAgents: glycerol + added('ethanol', 'propylene-glycol', 'sorbitol', 'sucrose'),
    water: waterAtLeast + rest('solid') + acids * taken * 18.015 + sum(rows.map(({ moisture }) => moisture)),
    waterAtLeast,
    all: sum(masses) + draft.water + sum(draft.fats.map(({ mass }) => mass)) + sum(draft.additions.map(size)),
  };
}
