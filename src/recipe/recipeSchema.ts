import * as v from 'valibot';
import { SOLVENT_IDS, type SolventId } from '../composition/index.js';
import { ALKALIS, ASSAY, CARBONATE, readLyeCharge, STRENGTH, type Alkali } from '../lye/index.js';
import { readText, refuse } from '../numbers/index.js';
import {
  readAlkaliContent,
  readMass,
  readPercent,
  readQuantity,
  readSaponificationValue,
  readTemperature,
  unitsByKind,
  type AlkaliContentInput,
  type FractionInput,
  type MassInput,
  type SaponificationValueInput,
  type SpiritStrengthInput,
  type TemperatureInput,
  type TimeInput,
  type VolumeInput,
} from '../quantities/index.js';
import { readTarget, type LyeTarget } from '../saponification/index.js';
import { leaf, together, type Reader } from './leaf.js';
import { assay, number, quantity, rangedShare, text, word } from './quantitySchemas.js';
import type {
  FatClaims,
  LyeWithoutAssay,
  Recipe,
  RecipeAddition,
  RecipeClaims,
  RecipeFat,
  RecipeLye,
  RecipeStage,
  RecipeTemperature,
} from './recipe.js';

const STAGES: readonly RecipeStage[] = ['lye', 'saponification', 'clearing', 'pouring'];

/** An object of known fields only; its message is their names, for the error about another. */
function shape<E extends v.ObjectEntries>(entries: E): v.StrictObjectSchema<E, string> {
  return v.strictObject(entries, Object.keys(entries).join());
}

const optional = v.exactOptional;
const mass = (): v.GenericSchema<MassInput> => quantity('mass', (path, value) => readMass(path, value));
const share = (): v.GenericSchema<FractionInput> => quantity('fraction', (path, value) => readPercent(path, value));
/** A claim may be beyond reason, and a superfat one of alkali in excess: that is for an audit to find. */
const claimedShare = (least: number): v.GenericSchema<FractionInput> =>
  quantity('fraction', (path, value) => readPercent(path, value, { min: least, max: 1_000_000 }));
const alkaliContent = (): v.GenericSchema<AlkaliContentInput> =>
  quantity('alkaliContent', (path, value) => readAlkaliContent(path, value));
const saponificationValue = (): v.GenericSchema<SaponificationValueInput> =>
  // a slip of the basis or of the decimal point is for the audit to find
  quantity('saponificationValue', (path, value) => readSaponificationValue(path, value, { above: 0 }));
const volume = (): v.GenericSchema<VolumeInput> =>
  quantity('volume', (path, value) => readQuantity(path, value, unitsByKind().volume, { min: 0 }));
const time = (): v.GenericSchema<TimeInput> =>
  quantity('time', (path, value) => readQuantity(path, value, unitsByKind().time, { min: 0 }));
const temperature = (): v.GenericSchema<TemperatureInput> =>
  quantity('temperature', (path, value) => readTemperature(path, value));

/** Exactly one of two fields. */
function eitherOf(one: string, other: string): Reader {
  return (path, value) => {
    const isThere = [one, other].map((key) => key in (value as object));
    if (isThere[0] === isThere[1]) {
      const count = isThere[0] === true ? 'both' : 'neither';
      refuse(count === 'both' ? 'bad-shape' : 'missing', path, `either ${one} or ${other}`, count);
    }
  };
}

const oneOf = (...keys: readonly string[]): object => ({ oneOf: keys.map((key) => ({ required: [key] })) });

/** A name to look a fat up by, or a whole fat; which it is, and whether it is one, the reader of the recipe sees. */
const fatReference = (): v.GenericSchema<RecipeFat['fat']> =>
  leaf((path, value) => (typeof value === 'object' && value !== null ? value : readText(path, value)), {
    anyOf: [
      { type: 'string', pattern: '\\S', maxLength: 200 },
      { type: 'object', required: ['name', 'kind', 'saponificationValue'] },
    ],
  });

const fatClaimsSchema = (): v.GenericSchema<FatClaims> =>
  shape({ saponificationValue: optional(saponificationValue()), share: optional(claimedShare(0)) });

const fatSchema = (): v.GenericSchema<RecipeFat> =>
  shape({
    fat: fatReference(),
    mass: mass(),
    claimed: optional(
      shape({
        saponificationValue: optional(saponificationValue()),
        share: optional(share()),
      }) satisfies v.GenericSchema<FatClaims>,
    ),
  });

const lyeFields = () => ({
  alkali: word<Alkali>(ALKALIS),
  mass: mass(),
  solid: optional(
    shape({
      hydroxide: optional(rangedShare(ASSAY)),
      totalAlkali: optional(rangedShare(ASSAY)),
      carbonate: optional(rangedShare(CARBONATE)),
    }),
  ),
  solution: optional(shape({ hydroxide: rangedShare(STRENGTH) })),
});

const lyeSchema = (): v.GenericSchema<RecipeLye> =>
  together(shape(lyeFields()), readLyeCharge, oneOf('solid', 'solution'));

/** An alkali whose assay may be missing, as audits take it. */
const lyeToAuditSchema = (): v.GenericSchema<RecipeLye | LyeWithoutAssay> =>
  together(shape(lyeFields()), (path, value) =>
    'solid' in (value as object) || 'solution' in (value as object) ? readLyeCharge(path, value) : value,
  );

const additionSchema = (): v.GenericSchema<RecipeAddition> =>
  together(
    shape({
      solvent: optional(word<SolventId>(SOLVENT_IDS)),
      name: optional(text()),
      mass: optional(mass()),
      volume: optional(volume()),
      assay: optional(assay<FractionInput | SpiritStrengthInput>()),
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
    { allOf: [oneOf('solvent', 'name'), oneOf('mass', 'volume')] },
  );

const temperatureSchema = (): v.GenericSchema<RecipeTemperature> =>
  shape({ stage: word(STAGES), time: optional(time()), temperature: temperature() });

/** Every claim by itself, so that an audit can read the rest where one is wrong. */
type ClaimSchemas = { readonly [K in keyof RecipeClaims]-?: v.GenericSchema<NonNullable<RecipeClaims[K]>> };

const claimSchemas = (): ClaimSchemas => ({
  superfat: claimedShare(-1000),
  strength: claimedShare(0),
  waterPerAlkali: number({ min: 0 }),
  waterPerFat: claimedShare(0),
  kohShare: claimedShare(0),
  total: mass(),
  ph: number({ min: 0, max: 14 }),
  freeCausticAlkali: alkaliContent(),
});

const claimsSchema = (): v.GenericSchema<RecipeClaims> =>
  shape(Object.fromEntries(Object.entries(claimSchemas()).map(([key, schema]) => [key, optional(schema)])));

const versionSchema = (): v.GenericSchema<1> => leaf(readVersion, { const: 1 });

function readVersion(path: string, value: unknown): unknown {
  if (value === 1) return value;
  return refuse(value === undefined ? 'missing' : 'out-of-range', path, '1, the version of this shape', value);
}

const targetSchema = (): v.GenericSchema<LyeTarget> =>
  together(
    shape({ superfat: optional(share()), freeCausticAlkaliAtMost: optional(alkaliContent()) }),
    readTarget,
    oneOf('superfat', 'freeCausticAlkaliAtMost'),
  );

/** A recipe as a whole; the JSON Schema is made of it. */
export const recipeSchema = (): v.GenericSchema<Recipe> =>
  shape({
    version: versionSchema(),
    title: optional(text()),
    fats: v.pipe(v.array(fatSchema()), v.nonEmpty()),
    lye: v.pipe(v.array(lyeSchema()), v.nonEmpty()),
    water: optional(mass()),
    additions: optional(v.array(additionSchema())),
    target: optional(targetSchema()),
    claimed: optional(claimsSchema()),
    temperatures: optional(v.array(temperatureSchema())),
  });

/** The fields of a recipe. */
export const RECIPE_KEYS: readonly (keyof Recipe)[] = [
  'version', 'title', 'fats', 'lye', 'water', 'additions', 'target', 'claimed', 'temperatures',
]; // prettier-ignore

/** The parts of a recipe by themselves, as an audit reads them. */
export const partSchemas = (): {
  readonly version: v.GenericSchema<1>;
  readonly title: v.GenericSchema<string>;
  readonly fat: v.GenericSchema<RecipeFat>;
  readonly fatClaims: v.GenericSchema<FatClaims>;
  readonly lye: v.GenericSchema<RecipeLye | LyeWithoutAssay>;
  readonly water: v.GenericSchema<MassInput>;
  readonly addition: v.GenericSchema<RecipeAddition>;
  readonly target: v.GenericSchema<LyeTarget>;
  readonly claims: ClaimSchemas;
  readonly temperature: v.GenericSchema<RecipeTemperature>;
} => ({
  version: versionSchema(),
  title: text(),
  fat: fatSchema(),
  fatClaims: fatClaimsSchema(),
  lye: lyeToAuditSchema(),
  water: mass(),
  addition: additionSchema(),
  target: targetSchema(),
  claims: claimSchemas(),
  temperature: temperatureSchema(),
});
