import * as v from 'valibot';
import { SOLVENT_IDS, type SolventId } from '../composition/index.js';
import { ALKALIS, CARBONATE, readLyeCharge, SOLID, STRENGTH, type Alkali } from '../lye/index.js';
import { readShape, readText, refuse } from '../numbers/index.js';
import type { FractionInput } from '../quantities/index.js';
import { WORK_STAGES } from '../process/index.js';
import { readTarget, type LyeTarget } from '../saponification/index.js';
import { leaf, together, type Reader } from './leaf.js';
import {
  alkaliContent,
  assay,
  mass,
  number,
  rangedShare,
  saponificationValue,
  share,
  temperature,
  text,
  time,
  volume,
  word,
} from './quantitySchemas.js';
import type {
  AdditionClaims,
  FatClaims,
  LyeWithoutAssay,
  RecipeAddition,
  RecipeClaims,
  RecipeFat,
  RecipeLye,
  RecipeTemperature,
  ShareClaims,
} from './recipe.js';

/** A field that may be left out. */
export const optional: typeof v.exactOptional = v.exactOptional;

/** An object of known fields only: an unknown one is named before any that is missing, as it may be that one misspelt. */
export function shape<E extends v.ObjectEntries>(entries: E): v.StrictObjectSchema<E, undefined> {
  const known = Object.keys(entries);
  const isOfShape = leaf((path, value) => readShape(path, value, known), {});
  return v.pipe(isOfShape, v.strictObject(entries)) as unknown as v.StrictObjectSchema<E, undefined>;
}

/** Exactly one of two fields. */
function eitherOf(one: string, other: string): Reader {
  return (path, value) => {
    const [hasOne, hasOther] = [one in (value as object), other in (value as object)];
    if (hasOne && hasOther) refuse('bad-shape', path, `either ${one} or ${other}`, 'both');
    if (!hasOne && !hasOther) refuse('missing', path, `${one} or ${other}`, 'neither');
  };
}

/** The same as JSON Schema; strict validators want a field named before it is required. */
const oneOf = (...keys: readonly string[]): object => ({
  oneOf: keys.map((key) => ({ properties: { [key]: true }, required: [key] })),
});

/** A name to look a fat up by, or a whole fat; which it is, and whether it is one, the reader of the recipe sees. */
const fatReference = (): v.GenericSchema<RecipeFat['fat']> =>
  leaf((path, value) => (typeof value === 'object' && value !== null ? value : readText(path, value)), {
    $ref: '#/$defs/fat',
  });

/** A share may be claimed beyond reason: that is for an audit to find. */
const claimedShare = (): v.GenericSchema<FractionInput> => share({ min: 0 });

export const fatClaimsSchema = (): v.GenericSchema<FatClaims> =>
  shape({ saponificationValue: optional(saponificationValue()), share: optional(claimedShare()) });

export const fatSchema = (): v.GenericSchema<RecipeFat> =>
  shape({ fat: fatReference(), mass: mass(), claimed: optional(fatClaimsSchema()) });

const solidSchema = (): v.GenericSchema =>
  together(
    shape({
      hydroxide: optional(rangedShare(SOLID)),
      totalAlkali: optional(rangedShare(SOLID)),
      carbonate: optional(rangedShare(CARBONATE)),
    }),
    eitherOf('hydroxide', 'totalAlkali'),
    {
      ...oneOf('hydroxide', 'totalAlkali'),
      dependentRequired: { totalAlkali: ['carbonate'], carbonate: ['totalAlkali'] },
    },
  );

const lyeFields = (): v.GenericSchema =>
  shape({
    alkali: word<Alkali>(ALKALIS),
    mass: mass(),
    solid: optional(solidSchema()),
    solution: optional(shape({ hydroxide: rangedShare(STRENGTH) })),
  });

export const lyeSchema = (): v.GenericSchema<RecipeLye> =>
  together(lyeFields(), readLyeCharge, oneOf('solid', 'solution'));

/** An alkali whose assay may be missing, as audits take it. */
export const lyeToAuditSchema = (): v.GenericSchema<RecipeLye | LyeWithoutAssay> =>
  together(
    lyeFields(),
    (path, value) =>
      'solid' in (value as object) || 'solution' in (value as object) ? readLyeCharge(path, value) : value,
    {},
  );

export const additionClaimsSchema = (): v.GenericSchema<AdditionClaims> => shape({ share: optional(claimedShare()) });

export const additionSchema = (): v.GenericSchema<RecipeAddition> =>
  together(
    shape({
      solvent: optional(word<SolventId>(SOLVENT_IDS)),
      name: optional(text()),
      mass: optional(mass()),
      volume: optional(volume()),
      assay: optional(assay()),
      claimed: optional(additionClaimsSchema()),
    }),
    (path, value) => {
      eitherOf('solvent', 'name')(path, value);
      eitherOf('mass', 'volume')(path, value);
      const { solvent, assay: stated } = value as { readonly solvent?: SolventId; readonly assay?: object };
      if (stated === undefined) return;
      if (solvent === undefined) refuse('bad-shape', `${path}.assay`, 'an assay only of a solvent', 'one of a name');
      if ('percentByVolume' in stated && solvent !== 'ethanol') {
        refuse('bad-shape', `${path}.assay`, 'a share by mass; by volume is for ethanol only', solvent);
      }
    },
    {
      allOf: [oneOf('solvent', 'name'), oneOf('mass', 'volume')],
      dependentRequired: { assay: ['solvent'] },
    },
  );

export const targetSchema = (): v.GenericSchema<LyeTarget> =>
  together(
    shape({ superfat: optional(share()), freeCausticAlkaliAtMost: optional(alkaliContent()) }),
    readTarget,
    oneOf('superfat', 'freeCausticAlkaliAtMost'),
  );

/** Names of the parts whose shares may be printed. */
export const CLAIMED_PARTS: readonly (keyof ShareClaims)[] = [
  'soap',
  'water',
  'glycerol',
  'clearingAgents',
  'polyol',
  'sugar',
  'spirit',
];

const sharesSchema = (): v.GenericSchema<ShareClaims> =>
  shape(Object.fromEntries(CLAIMED_PARTS.map((part) => [part, optional(claimedShare())])));

/** Every claim by itself, so that an audit can read the rest where one is wrong. */
export type ClaimSchemas = { readonly [K in keyof RecipeClaims]-?: v.GenericSchema<NonNullable<RecipeClaims[K]>> };

export const claimSchemas = (): ClaimSchemas => ({
  // one of alkali in excess is negative
  superfat: share({}),
  strength: claimedShare(),
  waterPerAlkali: number({ min: 0 }),
  waterPerFat: claimedShare(),
  kohShare: claimedShare(),
  total: mass(),
  shares: sharesSchema(),
  clearingAgentsPerSoap: number({ min: 0 }),
  waterPerSoap: number({ min: 0 }),
  ph: number({ min: 0, max: 14 }),
  freeCausticAlkali: alkaliContent(),
});

export const claimsSchema = (): v.GenericSchema<RecipeClaims> =>
  shape(Object.fromEntries(Object.entries(claimSchemas()).map(([key, schema]) => [key, optional(schema)])));

export const temperatureSchema = (): v.GenericSchema<RecipeTemperature> =>
  shape({ stage: word(WORK_STAGES), time: optional(time()), temperature: temperature() });
