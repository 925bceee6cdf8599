import { solvent, type ChargedPot, type SolventId } from '../../composition/index.js';
import { publishedFatRecords } from '../../fats/data/publishedFatRecords.js';
import { expandedCharges, isSameName, type SingleFat } from '../../fats/index.js';
import { frozen, readFields, readShape, readText, refuse, suggestion } from '../../numbers/index.js';
import { oneLine } from '../markdown.js';
import { ownName } from '../ownName.js';

/** Names of the caller for one thing that is weighed. */
export interface OwnIngredientNames {
  /** As charged; of an addition the name that is declared. */
  readonly name?: string;
  /** Of a fat: its sodium soap. */
  readonly sodiumSoap?: string;
  /** Of a fat: its potassium soap. */
  readonly potassiumSoap?: string;
}

/** How an ingredient name was come by; `unknown` is the name of the trade in the place of one. */
export type NameObtained = 'memory' | 'caller' | 'unknown';

/** A name to declare. */
export interface IngredientName {
  readonly name: string;
  readonly obtained: NameObtained;
}

/** The metal of a soap. */
export type Metal = 'sodium' | 'potassium';

/** Gives each ingredient its name. */
export interface IngredientNames {
  readonly fat: (fat: SingleFat) => IngredientName;
  readonly soap: (fat: SingleFat, metal: Metal) => IngredientName;
  readonly solvent: (id: SolventId) => IngredientName;
  readonly hydroxide: (metal: Metal) => IngredientName;
  readonly carbonate: (metal: Metal) => IngredientName;
  readonly named: (name: string) => IngredientName;
}

const HYDROXIDE_ITEMS = { sodium: 'naoh', potassium: 'koh' } as const;
const METALS = { sodium: 'Sodium', potassium: 'Potassium' } as const;

/** What the things in a pot may be called in options. */
export function itemsOf({ soap, additions }: ChargedPot): readonly string[] {
  return [
    ...expandedCharges(soap.fats).flatMap(({ fat: { name, id } }) => (id === undefined ? [name] : [name, id])),
    ...soap.lye.map(({ alkali }) => alkali),
    'water',
    'glycerol',
    ...additions.flatMap(({ given }) => ('solvent' in given ? [given.solvent] : (ownName(given) ?? []))),
  ];
}

/**
 * Reads the names that a caller gives.
 *
 * @throws CalculationError `unknown-key` for a name of nothing in the pot, `missing`, `bad-shape`
 */
export function readIngredientNames(path: string, value: unknown, pot: ChargedPot): IngredientNames {
  const own = Object.entries(readFields(path, value ?? {})).map(([item, given]) => {
    const here = `${path}.${item}`;
    const known = itemsOf(pot);
    if (!known.some((one) => isSameName(one, item))) {
      refuse('unknown-key', here, `something in the batch${suggestion(item, known)}`, item);
    }
    const fields = readShape(here, given, ['name', 'sodiumSoap', 'potassiumSoap']);
    const names = Object.entries(fields).map(([key, name]) => [key, readText(`${here}.${key}`, name)] as const);
    return [item, frozen(Object.fromEntries(names))] as const;
  });
  return namesFrom(own);
}

function namesFrom(own: readonly (readonly [string, OwnIngredientNames])[]): IngredientNames {
  /** The caller's name, else ours, else the name of the trade. */
  const chosen = (
    items: readonly (string | undefined)[],
    key: keyof OwnIngredientNames,
    recalled: string | undefined,
    common: string,
  ): IngredientName => {
    const [, names] =
      own.find(([item, one]) => one[key] !== undefined && items.some((name) => isSameName(name ?? '', item))) ?? [];
    if (names?.[key] !== undefined) return frozen({ name: oneLine(names[key]), obtained: 'caller' });
    return recalled === undefined
      ? frozen({ name: oneLine(common), obtained: 'unknown' })
      : frozen({ name: recalled, obtained: 'memory' });
  };
  const soap = (fat: SingleFat, metal: Metal): IngredientName => {
    // potassium soaps are named as the sodium soaps are
    const recalled = recordOf(fat)?.sodiumSoap?.replace(METALS.sodium, METALS[metal]);
    return chosen([fat.name, fat.id], `${metal}Soap`, recalled, `${METALS[metal]} soap of ${fat.name}`);
  };
  return {
    soap,
    fat: (fat) => chosen([fat.name, fat.id], 'name', recordOf(fat)?.fat, fat.name),
    solvent: (id) => chosen([id], 'name', solvent(id).inciName, id),
    hydroxide: (metal) => chosen([HYDROXIDE_ITEMS[metal]], 'name', `${METALS[metal]} Hydroxide`, metal),
    carbonate: (metal) => frozen({ name: `${METALS[metal]} Carbonate`, obtained: 'memory' }),
    named: (name) => chosen([name], 'name', undefined, name),
  };
}

/** Ingredient names on file of a published fat; a stored fat may carry an id that is on file nowhere. */
function recordOf({ id = '' }: SingleFat): { readonly fat: string; readonly sodiumSoap?: string } | undefined {
  return Object.hasOwn(publishedFatRecords, id)
    ? publishedFatRecords[id as keyof typeof publishedFatRecords].inciNames
    : undefined;
}
