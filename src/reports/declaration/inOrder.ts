import type { ChargedPot } from '../../composition/index.js';
import { frozen, ZERO, type Decimal } from '../../numbers/index.js';
import { mapEnds, type Estimate, type Fraction } from '../../quantities/index.js';
import { extremesOf, type Place } from '../../saponification/index.js';
import type { Declared, DeclaredPart } from './declared.js';
import type { NameObtained } from './ingredientNames.js';

/** What is declared under one name. */
interface Group {
  readonly name: string;
  readonly obtained: NameObtained;
  readonly isColourant: boolean;
  readonly from: readonly string[];
  /** Which of the parts are in it. */
  readonly parts: readonly number[];
}

/** A declaration in its order. */
export interface Ordered {
  readonly entries: readonly {
    readonly name: string;
    readonly from: readonly string[];
    readonly share: Estimate<Fraction>;
    readonly obtained: NameObtained;
  }[];
  /** Neighbours whose order lots could turn round. */
  readonly close: readonly (readonly [first: string, second: string])[];
}

/** Nearer than this, in parts of the greater, two masses are close: a convention. */
const CLOSE = '0.01';

/** Parts of one name together; of nothing, nothing. */
function groupsOf({ parts, gramsAt }: Declared): readonly Group[] {
  const likely = gramsAt('likely');
  const groups = new Map<string, Group>();
  for (const [at, part] of parts.entries()) {
    if (likely[at]?.gt(0) !== true) continue;
    const key = `${String(part.isColourant)} ${part.name}`;
    groups.set(key, withPart(groups.get(key), part, at));
  }
  return [...groups.values()];
}

function withPart(group: Group | undefined, { name, obtained, isColourant, from }: DeclaredPart, at: number): Group {
  if (group === undefined) return { name, obtained, isColourant, from: [from], parts: [at] };
  return { ...group, from: [...new Set([...group.from, from])], parts: [...group.parts, at] };
}

/** Entries in descending order of their likely masses, colourants last, and which of them are close. */
export function inOrder(pot: ChargedPot, declared: Declared): Ordered {
  const gramsOf = (group: Group, grams: readonly Decimal[]): Decimal =>
    group.parts.reduce((sum, at) => sum.plus(grams[at] ?? ZERO), ZERO);
  const likely = declared.gramsAt('likely');
  const groups = [...groupsOf(declared)].sort(
    (a, b) => Number(a.isColourant) - Number(b.isColourant) || gramsOf(b, likely).cmp(gramsOf(a, likely)),
  );
  const figures = extremesOf(pot.dimensions, (place: Place) => {
    const grams = declared.gramsAt(place);
    const masses = groups.map((group) => gramsOf(group, grams));
    const all = masses.reduce((sum, mass) => sum.plus(mass), ZERO);
    const shares = masses.map((mass, at) => [`share ${String(at)}`, mass.times(100).div(all)] as const);
    const leads = masses.map((mass, at) => [`lead ${String(at)}`, mass.minus(masses[at + 1] ?? ZERO)] as const);
    return { figures: Object.fromEntries([...shares, ...leads]), turning: pot.at(place).turning };
  });
  const measured = groups.flatMap((group, at) => {
    const [share, lead] = [figures[`share ${String(at)}`], figures[`lead ${String(at)}`]];
    return share === undefined || lead === undefined ? [] : [{ ...group, share, lead }];
  });
  const close = measured.flatMap((group, at) => {
    const next = measured[at + 1];
    if (next?.isColourant !== group.isColourant) return [];
    const least = gramsOf(group, likely).times(CLOSE);
    return group.lead.low.lt(least) ? [[group.name, next.name] as const] : [];
  });
  return {
    entries: frozen(
      measured.map(({ name, from, share, obtained }) =>
        frozen({ name, from: frozen(from), share: mapEnds(share, (percent) => frozen({ percent })), obtained }),
      ),
    ),
    close,
  };
}
