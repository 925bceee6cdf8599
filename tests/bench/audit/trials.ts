/** What the audit makes of drawn recipes. */
import type { Fat } from 'laurate';
import { auditRecipe, type AuditRecipeResult, type Finding, type Slip } from 'laurate/audit';
import type { Recipe } from 'laurate/recipe';
import { lotOf, partsOf, type Parts } from './additions.js';
import { allFindings } from './allFindings.js';
import { chanceFrom, drawnDraft, hydroxideFor, M, massesFor, rowAt, type Draft, type DrawnFat } from './draw.js';
import { INJECTIONS, type Injection } from './slips.js';
import { recipeOf, type Misprint } from './write.js';

const LIMIT = 0.05;

/** The fats of one's own that a draft calls by name. */
const ownFats = ({ fats }: Draft): Readonly<Record<string, Fat>> =>
  Object.fromEntries(fats.map(({ name, fat }) => [name, fat]));

const step = ({ decimals }: Draft): number => 10 ** -decimals;

/** The masses of the alkalis as the recipe prints them, in the printed unit. */
function printedMasses(draft: Draft, { masses, massText }: Misprint = {}): readonly number[] {
  const all = (masses ?? massesFor(draft, hydroxideFor(draft))).map((mass) => Number(mass.toFixed(draft.decimals)));
  return massText === undefined ? all : [Number(massText), ...all.slice(1)];
}

/** Hydroxide in the masses, in moles to the printed unit. */
const hydroxideIn = ({ alkalis }: Draft, masses: readonly number[]): number =>
  alkalis.reduce((sum, { alkali, strength }, at) => sum + ((masses[at] ?? 0) * strength) / M[alkali], 0);

/** Free caustic, per cent of the pot, that printed masses leave over a demand. */
function freeCaustic(draft: Draft, demand: number): number {
  const masses = printedMasses(draft);
  const others = [...draft.fats, ...draft.additions].map(({ mass }) => mass);
  const pot = [...masses, draft.water, ...others].reduce((sum, mass) => sum + mass, 0);
  return (100 * Math.max(0, hydroxideIn(draft, masses) - demand) * M.naoh) / pot;
}

/** Sound: neither the true lot nor the likely lot leaves free caustic above the limit. */
function isSound(draft: Draft): boolean {
  const likely = hydroxideFor(draft, ({ fat }) => Number(fat.saponificationValue.likely.mgKohPerG), 1);
  return freeCaustic(draft, hydroxideFor(draft, undefined, 1)) <= LIMIT && freeCaustic(draft, likely) <= LIMIT;
}

export interface SoundTrials {
  readonly tried: number;
  readonly verdicts: Readonly<Record<string, number>>;
  /** The first false alarms, for whoever looks into them. */
  readonly alarms: readonly { readonly recipe: Recipe; readonly result: AuditRecipeResult }[];
  /** Drawn, but left aside because the true or the likely lot leaves free caustic. */
  readonly notSound: number;
}

/** Audits of recipes that are sound. */
export function soundTrials(count: number, seed: number): SoundTrials {
  const chance = chanceFrom(seed);
  const verdicts: Record<string, number> = {};
  const alarms: SoundTrials['alarms'][number][] = [];
  let notSound = 0;
  for (let tried = 0; tried < count;) {
    const draft = drawnDraft(chance);
    if (!isSound(draft)) {
      notSound += 1;
      continue;
    }
    tried += 1;
    const recipe = recipeOf(draft);
    const result = auditRecipe(recipe, { fats: ownFats(draft) });
    verdicts[result.verdict] = (verdicts[result.verdict] ?? 0) + 1;
    if (result.verdict !== 'sound' && result.verdict !== 'doubtful') alarms.push({ recipe, result });
  }
  return { tried: count, verdicts, alarms, notSound };
}

/** One slip, tried. */
export interface SlipTrials {
  readonly name: string;
  readonly code: string;
  readonly tried: number;
  /** How many put the figure outside what any lot and any last digit explain. */
  readonly outside: number;
  /** How many of those were found. */
  readonly found: number;
  /** Of those found: how many name the slip first, and among the first three, in all and where it can be told apart. */
  readonly first: number;
  readonly amongThree: number;
  readonly firstOfSeparable: number;
  readonly amongThreeOfSeparable: number;
  /** What was named first, by code. */
  readonly named: Readonly<Record<string, number>>;
  /** What gave the same figure, so that it cannot be told apart. */
  readonly alike: Readonly<Record<string, number>>;
  readonly missed: readonly { readonly recipe: Recipe; readonly result: AuditRecipeResult }[];
}

const PATHS: Readonly<Record<Injection['figure'], string>> = {
  lye: 'lye',
  value: 'fats',
  strength: 'claimed.strength',
  waterPerAlkali: 'claimed.waterPerAlkali',
  waterPerFat: 'claimed.waterPerFat',
  kohShare: 'claimed.kohShare',
  total: 'claimed.total',
  addition: 'additions',
  clearingAgents: 'claimed.shares.clearingAgents',
  spirit: 'claimed.shares.spirit',
  waterPerSoap: 'claimed.waterPerSoap',
  temperature: 'temperatures[0].temperature',
};

/** The findings about the figure that is wrong. */
function findingsOf(findings: readonly Finding[], { figure, row }: Injection): readonly Finding[] {
  if (figure === 'lye')
    return findings.filter(
      ({ code }) =>
        code === 'free-caustic-above-limit' || code === 'superfat-contradicted' || code === 'own-values-contradicted',
    );
  const path =
    figure === 'value'
      ? `fats[${String(row)}].claimed.saponificationValue`
      : figure === 'addition'
        ? `additions[${String(row)}].claimed.share`
        : PATHS[figure];
  return findings.filter((finding) => finding.path === path && finding.severity !== 'note');
}

const apart = (figure: number, low: number, high: number): boolean => figure < low || figure > high;

/** Half of the last digit that decides: one unit either way of what is printed. */
const lastDigit = (text: string): number => 10 ** -(text.split('.')[1]?.length ?? 0);

/** Whether no lot and no last digit explain the figure that is printed. */
function isOutside(draft: Draft, injection: Injection, misprint: Misprint): boolean {
  const { decimals, fats, alkalis, superfat, water } = draft;
  const small = step(draft);
  const masses = printedMasses(draft, misprint);
  const fatMasses = fats.map(({ mass }, at) => Number((misprint.fatMasses?.[at] ?? mass).toFixed(decimals)));
  if (injection.figure === 'lye') {
    const need = (end: 'low' | 'high', kept: number): number =>
      (fats.reduce(
        (sum, { fat }, at) => sum + (fatMasses[at] ?? 0) * Number(fat.saponificationValue[end].mgKohPerG),
        0,
      ) /
        1000 /
        M.koh) *
      kept;
    const digit = lastDigit(superfat);
    const massDigit = misprint.massText === undefined ? small : lastDigit(misprint.massText);
    const charged = (by: number): number =>
      hydroxideIn(
        draft,
        masses.map((mass, at) => mass + by * (at === 0 ? massDigit : small)),
      );
    const most = need('high', 1 - (Number(superfat) - digit) / 100);
    const least = need('low', 1 - (Number(superfat) + digit) / 100);
    if (charged(1) < least || charged(-1) > most) return true;
    if (draft.prints === undefined) return false;
    // by the values that the recipe prints itself
    const valueDigit = draft.prints === 'gNaohPerG' ? (0.1 / M.naoh) * M.koh : 0.1;
    const own = (by: number): number =>
      (fats.reduce((sum, { value }, at) => sum + (fatMasses[at] ?? 0) * (value + by * valueDigit), 0) / 1000 / M.koh) *
      (1 - (Number(superfat) - by * digit) / 100);
    return charged(1) < own(-1) || charged(-1) > own(1);
  }
  if (injection.figure === 'value') {
    const at = injection.row ?? 0;
    const text = misprint.values?.[at] ?? '';
    const factor = draft.prints === 'gNaohPerG' ? (1000 * M.koh) / M.naoh : 1;
    const { low, high } = rowAt(draft, at).fat.saponificationValue;
    return apart(
      Number(text) * factor,
      Number(low.mgKohPerG) - lastDigit(text) * factor,
      Number(high.mgKohPerG) + lastDigit(text) * factor,
    );
  }
  const all = fatMasses.reduce((sum, mass) => sum + mass, 0);
  /** A figure at the corners of the last digits, and whether the misprint lies apart from it. */
  const isApart = (text: string, ...figures: ((lye: readonly number[], added: number) => number)[]): boolean =>
    figures.every((figure) => {
      const corners = [
        [1, -1],
        [-1, 1],
      ].map(([lye = 0, added = 0]) =>
        figure(
          masses.map((mass) => mass + lye * small),
          water + added * small,
        ),
      );
      return apart(Number(text), Math.min(...corners) - lastDigit(text), Math.max(...corners) + lastDigit(text));
    });
  const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
  const pure = (lye: readonly number[]): number => sum(lye.map((mass, at) => mass * (alkalis[at]?.strength ?? 0)));
  switch (injection.figure) {
    case 'strength':
      return isApart(misprint.strength ?? '', (lye, added) => (100 * pure(lye)) / (sum(lye) + added));
    case 'waterPerAlkali':
      return isApart(
        misprint.waterPerAlkali ?? '',
        (lye, added) => (sum(lye) + added - pure(lye)) / pure(lye),
        (lye, added) => added / sum(lye),
        (lye, added) => added / pure(lye),
      );
    case 'waterPerFat':
      return isApart(
        misprint.waterPerFat ?? '',
        (_, added) => (100 * added) / all,
        (lye, added) => (100 * (sum(lye) + added - pure(lye))) / all,
      );
    case 'kohShare': {
      const share = (by: number): number => {
        const [naoh = 0, koh = 0] = alkalis.map(
          ({ alkali, strength }, at) => (((masses[at] ?? 0) + (at === 1 ? by : -by) * small) * strength) / M[alkali],
        );
        return (100 * koh) / (naoh + koh);
      };
      const text = misprint.kohShare ?? '';
      return apart(Number(text), share(-1) - lastDigit(text), share(1) + lastDigit(text));
    }
    case 'total': {
      const text = misprint.total ?? '';
      const exact = all + sum(masses) + water;
      const digits = (fats.length + masses.length + 1) * small + lastDigit(text);
      const [least, most] = (['least', 'most'] as const).map((end) => sum(draft.additions.map((one) => one[end])));
      return apart(Number(text), exact + (least ?? 0) - digits, exact + (most ?? 0) + digits);
    }
    case 'addition': {
      const at = injection.row ?? 0;
      const text = misprint.additionShares?.[at] ?? '';
      const shares = (['least', 'most'] as const).map((end) => {
        const own = draft.additions[at]?.[end] ?? 0;
        const other = end === 'least' ? 'most' : 'least';
        const rest = sum(draft.additions.map((one, row) => (row === at ? 0 : one[other])));
        const digits = (end === 'least' ? 1 : -1) * masses.length * small;
        return (100 * own) / (own + rest + digits + all + sum(masses) + water);
      });
      return apart(Number(text), Math.min(...shares) - lastDigit(text), Math.max(...shares) + lastDigit(text));
    }
    case 'clearingAgents':
    case 'spirit':
    case 'waterPerSoap': {
      const { figure } = injection;
      const text = misprint[figure] ?? '';
      const figures = potsOf(draft, masses, small).flatMap((parts) => {
        const { soap, water: wet, waterAtLeast, glycerol, clearingAgents, spirit, all: whole } = parts;
        if (figure === 'waterPerSoap') return [wet / soap, waterAtLeast / soap];
        if (figure === 'spirit') return [(100 * spirit) / whole];
        const ofAdditions = sum(
          draft.additions.map(({ solvent, mass, share }) => (solvent === 'glycerol' ? mass * share : 0)),
        );
        return [clearingAgents, clearingAgents - glycerol + ofAdditions].map((part) => (100 * part) / whole);
      });
      const [least, most] = [Math.min(...figures), Math.max(...figures)];
      // between the corners tried here a pot may lie a little further out
      const margin = (most - least) / 4 + lastDigit(text);
      return apart(Number(text), least - margin, most + margin);
    }
    case 'temperature':
      return Number(misprint.temperature) - 1 > 75;
  }
}

/** The parts of a draft at the corners of its lots, volumes, assays and last digits. */
function potsOf(draft: Draft, masses: readonly number[], digit: number): readonly Parts[] {
  const ends = [0, 1] as const;
  const value = ({ fat }: DrawnFat, end: number): number =>
    Number(fat.saponificationValue[end === 0 ? 'low' : 'high'].mgKohPerG);
  return ends.flatMap((lot) =>
    ends.flatMap((rest) =>
      ends.flatMap((size) =>
        ends.flatMap((lye) =>
          ends.map((assay) =>
            partsOf(draft, {
              masses: masses.map((mass) => mass + (lye === 0 ? -digit : digit)),
              lot: (row) => ({ ...lotOf(row, rest), value: value(row, lot) }),
              size: ({ least, most }) => (size === 0 ? least : most),
              pure: ({ shareLeast, shareMost }) => (assay === 0 ? shareLeast : shareMost),
            }),
          ),
        ),
      ),
    ),
  );
}

/** Whether a diagnosis is the slip that was made, in its place. */
function isTrue(slip: Slip, { code, row, words, figure }: Injection): boolean {
  if (slip.code !== code) return false;
  if (row !== undefined && figure === 'lye' && slip.path !== `fats[${String(row)}]`) return false;
  if (row === undefined && figure === 'lye' && slip.path?.startsWith('fats') === true && code !== 'rows-swapped')
    return false;
  return Object.entries(words ?? {}).every(([key, word]) => slip.words[key] === word);
}

/** What a slip predicts, as numbers. */
function spanOf({ predicted }: Slip): { readonly low: number; readonly high: number } {
  const at = (end: unknown): number => Number(Object.values(end as object)[0]);
  if (!('low' in predicted)) return { low: at(predicted), high: at(predicted) };
  return { low: at(predicted.low), high: at(predicted.high) };
}

/** A temperature that is too hot is a doubt; other figures contradict each other. */
const VERDICTS: Readonly<Record<'temperature' | 'others', readonly string[]>> = {
  temperature: ['dangerous', 'doubtful'],
  others: ['dangerous', 'wrong'],
};

/** Slips, each at places drawn at random. */
export function slipTrials(each: number, seed: number): readonly SlipTrials[] {
  return INJECTIONS.map((inject, number) => {
    const chance = chanceFrom(seed * 1000 + number);
    let [name, code] = ['', ''];
    const count = {
      tried: 0,
      outside: 0,
      found: 0,
      first: 0,
      amongThree: 0,
      firstOfSeparable: 0,
      amongThreeOfSeparable: 0,
    };
    const named: Record<string, number> = {};
    const alike: Record<string, number> = {};
    const missed: SlipTrials['missed'][number][] = [];
    for (let drawn = 0; drawn < each * 40 && count.tried < each; drawn += 1) {
      const draft = drawnDraft(chance);
      const injection = inject(draft, chance);
      [name, code] = [injection.name, injection.code];
      const { misprint } = injection;
      if (misprint === undefined) continue;
      const recipe = recipeOf(draft, misprint);
      // a slip that leaves nothing to weigh is no recipe
      if (recipe.lye.some(({ mass }) => Number(Object.values(mass)[0]) === 0)) continue;
      count.tried += 1;
      if (!isOutside(draft, injection, misprint)) continue;
      count.outside += 1;
      const result = auditRecipe(recipe, { fats: ownFats(draft) });
      // the audit lists three slips; how they are ordered is measured on all of them
      const about = findingsOf(allFindings(recipe, ownFats(draft)), injection);
      if (
        about.length === 0 ||
        !VERDICTS[injection.figure === 'temperature' ? 'temperature' : 'others'].includes(result.verdict)
      ) {
        missed.push({ recipe, result });
        continue;
      }
      count.found += 1;
      const slips = about.flatMap((finding) => finding.slips);
      const at = slips.findIndex((slip) => isTrue(slip, injection));
      const first = slips[0]?.code ?? 'none';
      named[at === 0 ? injection.code : first] = (named[at === 0 ? injection.code : first] ?? 0) + 1;
      const own = slips[at];
      if (own === undefined) {
        missed.push({ recipe, result });
        continue;
      }
      const { low, high } = spanOf(own);
      const overlaps = (slip: Slip): boolean =>
        spanOf(slip).low <= high + step(draft) && spanOf(slip).high >= low - step(draft);
      for (const other of new Set(slips.filter((slip) => slip !== own && overlaps(slip)).map((slip) => slip.code))) {
        alike[other] = (alike[other] ?? 0) + 1;
      }
      const before = slips.slice(0, at);
      const apartBefore = before.filter((slip) => !overlaps(slip)).length;
      count.first += at === 0 ? 1 : 0;
      count.amongThree += at < 3 ? 1 : 0;
      count.firstOfSeparable += apartBefore === 0 ? 1 : 0;
      count.amongThreeOfSeparable += apartBefore < 3 ? 1 : 0;
    }
    return { name, code, ...count, named, alike, missed };
  });
}
