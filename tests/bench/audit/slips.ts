/** Each slip as a writer makes it: from a draft to what is printed wrongly. Written apart from the library. */
import { fats as listings, fat, lyeDensity } from 'laurate';
import type { SlipCode } from 'laurate/audit';
import {
  hydroxideFor,
  M,
  massesFor,
  rowAt,
  superfatOf,
  UNITS,
  type Chance,
  type Draft,
  type DrawnFat,
} from './draw.js';
import { hasParts, partsOf, type DrawnAddition } from './additions.js';
import { lyeOf, type Misprint } from './write.js';

/** A slip at a place drawn at random. */
export interface Injection {
  /** Under what it is listed. */
  readonly name: string;
  readonly code: SlipCode;
  /** Row of the fats it happens in. */
  readonly row?: number;
  /** Words of the diagnosis that tell it from others of the same code. */
  readonly words?: Readonly<Record<string, string>>;
  /** Which printed figure is wrong. */
  readonly figure:
    | 'lye'
    | 'value'
    | 'strength'
    | 'waterPerAlkali'
    | 'waterPerFat'
    | 'kohShare'
    | 'total'
    | 'addition'
    | 'clearingAgents'
    | 'spirit'
    | 'waterPerSoap'
    | 'temperature';
  /** Undefined where the draft has no place for it. */
  readonly misprint: Misprint | undefined;
  /** What the figure should have been, if only the last digit of the misprint told. */
  readonly printed?: number;
}

type Inject = (draft: Draft, chance: Chance) => Injection;

const RESIDUE = 38.049; // glyceryl residue C3H2, g/mol
const perMol = 1000 * M.koh;

const lye = (
  name: string,
  code: SlipCode,
  masses: readonly number[] | undefined,
  more: Partial<Injection> = {},
): Injection => ({
  name,
  code,
  figure: 'lye',
  misprint: masses === undefined ? undefined : { masses },
  ...more,
});

/** The lye of other values. */
const byValues =
  (name: string, code: SlipCode, taken: (row: DrawnFat) => number | undefined): Inject =>
  (draft) => {
    const applies = draft.fats.some((row) => taken(row) !== undefined);
    return lye(
      name,
      code,
      applies
        ? massesFor(
            draft,
            hydroxideFor(draft, (row) => taken(row) ?? row.value),
          )
        : undefined,
    );
  };

/** The lye of another value for one fat. */
const byRow =
  (
    name: string,
    code: SlipCode,
    taken: (row: DrawnFat, draft: Draft, chance: Chance) => number | undefined,
    words?: (row: DrawnFat) => Record<string, string>,
  ): Inject =>
  (draft, chance) => {
    const at = chance.whole(0, draft.fats.length - 1);
    const row = rowAt(draft, at);
    const value = draft.fats.length < 2 ? undefined : taken(row, draft, chance);
    const masses =
      value === undefined
        ? undefined
        : massesFor(
            draft,
            hydroxideFor(draft, (one) => (one === row ? value : one.value)),
          );
    return lye(name, code, masses, { row: at, ...(words === undefined ? {} : { words: words(row) }) });
  };

/** The lye times a factor for each alkali. */
const byFactor =
  (
    name: string,
    code: SlipCode,
    factor: (alkali: Draft['alkalis'][number], draft: Draft) => number | undefined,
    words?: Record<string, string>,
  ): Inject =>
  (draft) => {
    const factors = draft.alkalis.map((alkali) => factor(alkali, draft));
    const right = massesFor(draft, hydroxideFor(draft));
    const masses = factors.some((one) => one === undefined)
      ? undefined
      : right.map((mass, at) => mass * (factors[at] ?? 1));
    return lye(name, code, masses, words === undefined ? {} : { words });
  };

const bySuperfat =
  (code: SlipCode, kept: (superfat: number) => number): Inject =>
  (draft) =>
    lye(
      code,
      code,
      superfatOf(draft) === 0 ? undefined : massesFor(draft, hydroxideFor(draft, undefined, kept(superfatOf(draft)))),
    );

const ratio = M.koh / M.naoh;
const oxide = { naoh: (2 * M.naoh) / 61.979, koh: (2 * M.koh) / 94.195 } as const;
const ofAcids = ({ value, fat: { kind } }: DrawnFat): number | undefined =>
  kind === 'triglyceride' ? perMol / (perMol / value - RESIDUE / 3) : undefined;
const withAcid = ({ value, acidValue, fat: { kind } }: DrawnFat, sign: 1 | -1): number | undefined =>
  (kind === 'triglyceride' || kind === 'wax-ester') && acidValue > 0 ? value + sign * acidValue : undefined;

const names = [...listings]
  .map(({ name, id }) => ({ name, id }))
  .sort((one, other) => (one.name < other.name ? -1 : 1));

/** A lot of the fat that stands before or after one in a list by name. */
function neighbour({ fat: { id } }: DrawnFat, chance: Chance): number | undefined {
  const at = names.findIndex((listing) => listing.id === id);
  const other = at < 0 ? undefined : names[at + (chance.happens(0.5) ? 1 : -1)];
  if (other === undefined) return undefined;
  const { low, high } = fat(other.id).saponificationValue;
  return chance.between(Number(low.mgKohPerG), Number(high.mgKohPerG));
}

/** The lye in another unit under the printed one. */
const lyeInUnit =
  (printed: 'g' | 'oz' | 'kg' | 'lb', meant: 'g' | 'oz' | 'kg' | 'lb'): Inject =>
  (draft, chance) =>
    byFactor(
      `${meant} printed as ${printed}, lye`,
      'unit-mistaken',
      (_, { unit }) => (unit === printed ? UNITS[printed] / UNITS[meant] : undefined),
      { meant, of: 'the lye' },
    )(draft, chance);

const lyeInVolume: Inject = (draft, chance) =>
  byFactor(
    'mL printed as g, lye',
    'unit-mistaken',
    ({ alkali, state, strength }, { unit, alkalis }) => {
      if (unit !== 'g' || state !== 'solution' || alkalis.length > 1) return undefined;
      const { density } = lyeDensity({ alkali, strength: { fraction: strength }, temperature: { celsius: 20 } });
      return 1 / Number(density.gPerML);
    },
    { meant: 'mL', of: 'the lye' },
  )(draft, chance);

/** One fat in another unit; the lye is for what was weighed. */
const fatInUnit =
  (printed: 'g' | 'oz' | 'lb' | 'kg', meant: 'g' | 'oz' | 'lb' | 'kg'): Inject =>
  (draft, chance) => {
    const at = chance.whole(0, draft.fats.length - 1);
    const fatMasses = draft.fats.map(({ mass }, row) => (row === at ? (mass * UNITS[printed]) / UNITS[meant] : mass));
    const applies = draft.unit === printed && Number((fatMasses[at] ?? 0).toFixed(draft.decimals)) > 0;
    return {
      name: `${meant} printed as ${printed}, one fat`,
      code: 'unit-mistaken',
      figure: 'lye',
      row: at,
      words: { meant },
      misprint: applies ? { fatMasses } : undefined,
    };
  };

const exchanged: Inject = (draft, chance) => {
  const text = (massesFor(draft, hydroxideFor(draft))[0] ?? 0).toFixed(draft.decimals);
  const places = Array.from(text, (_, at) => at).filter(
    (at) => /\d/.test(text[at] ?? '') && /\d/.test(text[at + 1] ?? '') && text[at] !== text[at + 1],
  );
  const at = places.length === 0 ? undefined : chance.oneOf(places);
  // only the recipe's own values make an exact claim of it
  const applies = at !== undefined && draft.prints !== undefined && draft.alkalis.length === 1;
  const massText =
    at === undefined ? text : `${text.slice(0, at)}${text[at + 1] ?? ''}${text[at] ?? ''}${text.slice(at + 2)}`;
  return {
    name: 'digits-exchanged',
    code: 'digits-exchanged',
    figure: 'lye',
    misprint: applies ? { massText } : undefined,
  };
};

const pointMoved: Inject = (draft, chance) => {
  const [right = 0] = massesFor(draft, hydroxideFor(draft));
  const by = chance.oneOf([0.1, 10]);
  const applies = draft.prints !== undefined && draft.alkalis.length === 1;
  const massText = (Number(right.toFixed(draft.decimals)) * by).toFixed(Math.max(0, draft.decimals - Math.log10(by)));
  return {
    name: 'decimal-point-moved',
    code: 'decimal-point-moved',
    figure: 'lye',
    misprint: applies ? { massText } : undefined,
  };
};

/** One printed saponification value that is wrong, the lye being right. */
const printedValueOf =
  (name: string, code: SlipCode, taken: (row: DrawnFat, draft: Draft, chance: Chance) => string | undefined): Inject =>
  (draft, chance) => {
    const at = chance.whole(0, draft.fats.length - 1);
    const value = draft.prints === undefined ? undefined : taken(rowAt(draft, at), draft, chance);
    return {
      name: `${name}, printed value`,
      code,
      figure: 'value',
      row: at,
      misprint:
        value === undefined ? undefined : { values: draft.fats.map((_, row) => (row === at ? value : undefined)) },
    };
  };

const asPrinted = (value: number, { prints }: Draft): string =>
  prints === 'gNaohPerG' ? ((value * M.naoh) / perMol).toFixed(4) : value.toFixed(1);

const figureSlip =
  (
    figure: Exclude<Injection['figure'], 'lye' | 'value' | 'addition'>,
    code: SlipCode,
    misprint: (draft: Draft, chance: Chance) => Misprint | undefined,
  ): Inject =>
  (draft, chance) => ({ name: `${code}, ${figure}`, code, figure, misprint: misprint(draft, chance) });

/** Every slip that is tried. */
export const INJECTIONS: readonly Inject[] = [
  byValues('koh-value-as-naoh', 'koh-value-as-naoh', ({ value }) => value * ratio),
  byValues('naoh-value-as-koh', 'naoh-value-as-koh', ({ value }) => value / ratio),
  byRow('koh-value-as-naoh, one fat', 'koh-value-as-naoh', ({ value }) => value * ratio),
  byRow('naoh-value-as-koh, one fat', 'naoh-value-as-koh', ({ value }) => value / ratio),
  byValues('equivalent-as-value', 'equivalent-as-value', ({ value }) => perMol / value),
  byValues('value-per-fatty-acids', 'value-per-fatty-acids', ofAcids),
  byValues('saponification-plus-acid-value', 'saponification-plus-acid-value', (row) => withAcid(row, 1)),
  byValues('ester-value-as-saponification-value', 'ester-value-as-saponification-value', (row) => withAcid(row, -1)),
  byRow('neighbouring-fat-value', 'neighbouring-fat-value', (row, _, chance) => neighbour(row, chance)),
  byRow('fat-left-out', 'fat-left-out', () => 0),
  (draft) => {
    const [one, other] = draft.fats;
    const swapped =
      one === undefined || other === undefined
        ? undefined
        : draft.fats.map(({ mass }, at) => (at === 0 ? other.mass : at === 1 ? one.mass : mass));
    return {
      name: 'rows-swapped',
      code: 'rows-swapped',
      figure: 'lye',
      row: 0,
      words: { other: other?.fat.name ?? '' },
      misprint: swapped && { fatMasses: swapped },
    };
  },
  bySuperfat('superfat-left-out', () => 1),
  bySuperfat('superfat-added', (superfat) => 1 + superfat),
  bySuperfat('superfat-as-divisor', (superfat) => 1 / (1 + superfat)),
  bySuperfat('superfat-twice', (superfat) => (1 - superfat) ** 2),
  bySuperfat('superfat-percent-as-fraction', (superfat) => 1 - superfat / 100),
  byFactor('assay-ignored', 'assay-ignored', ({ state, strength }) => (state === 'solid' ? strength : undefined)),
  byFactor('assay-twice', 'assay-twice', ({ state, strength }) => (state === 'solid' ? 1 / strength : undefined)),
  byFactor('assay-upside-down', 'assay-upside-down', ({ state, strength }) =>
    state === 'solid' ? strength ** 2 : undefined,
  ),
  byFactor('solid-as-solution', 'solid-as-solution', ({ state, strength }) =>
    state === 'solution' ? strength : undefined,
  ),
  byFactor('solution-as-solid', 'solution-as-solid', ({ state }, draft) => {
    const { weighed, all } = lyeOf(draft);
    return state === 'solid' ? all / weighed : undefined;
  }),
  byFactor('oxide-percent-as-hydroxide', 'oxide-percent-as-hydroxide', ({ alkali }) => 1 / oxide[alkali]),
  byFactor('hydroxide-percent-as-oxide', 'hydroxide-percent-as-oxide', ({ alkali }) => oxide[alkali]),
  byFactor('carbonate-counted', 'carbonate-counted', ({ strength, total }) =>
    total === undefined ? undefined : strength / total,
  ),
  lyeInUnit('g', 'oz'),
  lyeInUnit('oz', 'g'),
  lyeInUnit('kg', 'lb'),
  lyeInUnit('lb', 'kg'),
  lyeInVolume,
  fatInUnit('g', 'oz'),
  fatInUnit('kg', 'lb'),
  fatInUnit('lb', 'kg'),
  exchanged,
  pointMoved,
  printedValueOf('koh-value-as-naoh', 'koh-value-as-naoh', ({ value }, draft) => asPrinted(value * ratio, draft)),
  printedValueOf('naoh-value-as-koh', 'naoh-value-as-koh', ({ value }, draft) => asPrinted(value / ratio, draft)),
  printedValueOf('equivalent-as-value', 'equivalent-as-value', ({ value }, draft) => asPrinted(perMol / value, draft)),
  printedValueOf('value-per-fatty-acids', 'value-per-fatty-acids', (row, draft) => {
    const value = ofAcids(row);
    return value === undefined ? undefined : asPrinted(value, draft);
  }),
  printedValueOf('neighbouring-fat-value', 'neighbouring-fat-value', (row, draft, chance) => {
    const value = neighbour(row, chance);
    return value === undefined ? undefined : asPrinted(value, draft);
  }),
  printedValueOf('decimal-point-moved', 'decimal-point-moved', ({ value }, draft) => asPrinted(value / 10, draft)),
  figureSlip('strength', 'parts-per-100-of-water-as-percent', (draft) => {
    const { pure, water } = lyeOf(draft);
    return { strength: ((100 * pure) / water).toFixed(1) };
  }),
  figureSlip('strength', 'water-and-alkali-inverted', (draft) => {
    const { water, all } = lyeOf(draft);
    return { strength: ((100 * water) / all).toFixed(1) };
  }),
  figureSlip('strength', 'weight-by-volume-as-by-weight', (draft) => {
    const { pure, all } = lyeOf(draft);
    const [first, second] = draft.alkalis;
    if (first === undefined || second !== undefined || pure / all > 0.5) return undefined;
    const { density } = lyeDensity({
      alkali: first.alkali,
      strength: { fraction: pure / all },
      temperature: { celsius: 20 },
    });
    return { strength: (((100 * pure) / all) * Number(density.gPerML)).toFixed(1) };
  }),
  figureSlip('strength', 'strength-as-water-per-fat', (draft) => {
    const { fats } = lyeOf(draft);
    return { strength: ((100 * draft.water) / fats).toFixed(1) };
  }),
  figureSlip('waterPerAlkali', 'water-and-alkali-inverted', (draft) => {
    const { pure, water } = lyeOf(draft);
    return { waterPerAlkali: (pure / water).toFixed(2) };
  }),
  figureSlip('waterPerFat', 'strength-as-water-per-fat', (draft) => {
    const { pure, all } = lyeOf(draft);
    return { waterPerFat: ((100 * pure) / all).toFixed(1) };
  }),
  figureSlip('kohShare', 'mole-share-as-mass-share', (draft) => {
    const [naoh, koh] = draft.alkalis;
    if (naoh === undefined || koh === undefined) return undefined;
    const [one, other] = [naoh.share * M.naoh, koh.share * M.koh];
    return { kohShare: ((100 * other) / (one + other)).toFixed(0) };
  }),
  figureSlip('total', 'part-left-out-of-total', (draft, chance) => {
    const { all, fats } = lyeOf(draft);
    const left = chance.oneOf([draft.water, ...draft.fats.map(({ mass }) => mass)]);
    return { total: (all + fats + added(draft) - left).toFixed(draft.decimals) };
  }),
  figureSlip('total', 'unit-mistaken', (draft) => {
    const measured = draft.additions.find(({ isByVolume }) => isByVolume);
    if (measured === undefined) return undefined;
    const { all, fats } = lyeOf(draft);
    return { total: (all + fats + added(draft) - measured.mass + Number(measured.printed)).toFixed(draft.decimals) };
  }),
  additionSlip('percent-of-another-total', ({ mass }, draft) => mass / lyeOf(draft).fats),
  additionSlip('dry-as-syrup', ({ mass, share, assay }, draft) =>
    share === 1 || assay === undefined ? undefined : (mass * share) / partsOf(draft).all,
  ),
  additionSlip('unit-mistaken', ({ isByVolume, printed, mass }, draft) => {
    const counted = Number(printed);
    return isByVolume ? counted / (partsOf(draft).all - mass + counted) : undefined;
  }),
  partSlip('clearingAgents', 'syrup-as-dry', (draft) => {
    const { clearingAgents, all } = partsOf(draft);
    const water = draft.additions.reduce((sum, { mass, share }) => sum + mass * (1 - share), 0);
    return draft.additions.some(({ share }) => share === 0.7) ? ((clearingAgents + water) / all) * 100 : undefined;
  }),
  partSlip('clearingAgents', 'percent-of-another-total', (draft) => {
    const { clearingAgents, soap } = partsOf(draft);
    return (100 * clearingAgents) / soap;
  }),
  partSlip('spirit', 'percent-by-volume-as-by-mass', (draft) => {
    const spirit = draft.additions.find(({ solvent }) => solvent === 'ethanol');
    return spirit === undefined ? undefined : (96 * spirit.mass) / partsOf(draft).all;
  }),
  partSlip('waterPerSoap', 'percent-of-another-total', (draft) => partsOf(draft).water / lyeOf(draft).fats),
  figureSlip('temperature', 'fahrenheit-as-celsius', ({ temperature: { unit, celsius } }) =>
    unit === 'celsius' ? { temperature: ((celsius * 9) / 5 + 32).toFixed(0) } : undefined,
  ),
];

const added = ({ additions }: Draft): number => additions.reduce((sum, { mass }) => sum + mass, 0);

/** One printed share of an addition that is wrong: a fraction of one. */
function additionSlip(code: SlipCode, share: (one: DrawnAddition, draft: Draft) => number | undefined): Inject {
  return (draft, chance) => {
    const at = draft.additions.length === 0 ? -1 : chance.whole(0, draft.additions.length - 1);
    const one = draft.additions[at];
    const wrong = one === undefined ? undefined : share(one, draft);
    return {
      name: `${code}, share of an addition`,
      code,
      figure: 'addition',
      row: at,
      misprint:
        wrong === undefined
          ? undefined
          : { additionShares: draft.additions.map((_, row) => (row === at ? (100 * wrong).toFixed(1) : undefined)) },
    };
  };
}

/** A share of a part, or parts to one of soap, that is wrong. */
function partSlip(
  figure: 'clearingAgents' | 'spirit' | 'waterPerSoap',
  code: SlipCode,
  wrong: (draft: Draft) => number | undefined,
): Inject {
  return (draft) => {
    const number = hasParts(draft) ? wrong(draft) : undefined;
    const misprint = number === undefined ? undefined : { [figure]: number.toFixed(figure === 'waterPerSoap' ? 2 : 1) };
    return { name: `${code}, ${figure}`, code, figure, misprint };
  };
}
