/** The page `docs/validation.md`, made from the check values; nothing on it is typed twice. */
import { Decimal } from 'decimal.js';
import { fats, sources } from 'laurate';
import { checkValues, knownDisagreements, selfCheck, type CheckOutcome, type CheckValue } from 'laurate/check-values';
import { publishedRecordOf } from 'laurate/reports';
import { table } from '../pages.js';
import { tables, type PublishedTable } from './tables.js';
import { unchecked } from './unchecked.js';

interface Checked {
  readonly row: CheckValue;
  readonly outcome: CheckOutcome;
}

/** A reason with more rows than this is told by its ends. */
const MANY = 20;

const { rows: outcomes, met, known, total } = selfCheck();
const checked: readonly Checked[] = checkValues().map((row, index) => {
  const outcome = outcomes[index];
  if (outcome?.id !== row.id) throw new Error(row.id);
  return { row, outcome };
});

const isCalled = new Set<string>(checkValues().map(({ call }) => call));

function groupedBy<Item>(items: readonly Item[], key: (item: Item) => string): ReadonlyMap<string, readonly Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}

/** Deviation in tolerances; undefined where a range, bounds or a word leave none. */
function inTolerances({ deviation, tolerance }: CheckOutcome): Decimal | undefined {
  return Number(tolerance) === 0 ? undefined : new Decimal(deviation).abs().div(tolerance);
}

function furthest(some: readonly Checked[]): string {
  const found = some.map(({ outcome }) => inTolerances(outcome)).filter((each) => each !== undefined);
  return found.length === 0 ? '' : Decimal.max(...found).toFixed(2);
}

function title(source: CheckValue['source']): string {
  const [found] = sources([source]);
  if (found === undefined) throw new Error(source);
  return `${found.title}, ${found.edition}`;
}

function bySource(): string {
  const groups = [...groupedBy(checked, ({ row }) => row.source)];
  const order = groups.sort(([one, some], [other, others]) => others.length - some.length || (one < other ? -1 : 1));
  return table(
    ['publication', 'rows', 'met', 'not met', 'largest deviation of the rows met', 'of those not met'],
    order.map(([, some]) => {
      const hit = some.filter(({ outcome }) => outcome.met);
      const missed = some.filter(({ outcome }) => !outcome.met);
      const [first] = some;
      return [
        first === undefined ? '' : title(first.row.source),
        String(some.length),
        String(hit.length),
        missed.length === 0 ? '' : String(missed.length),
        furthest(hit),
        furthest(missed),
      ];
    }),
  );
}

/** A figure with two digits more than what is printed, so that the difference shows. */
function shortened(text: string, like: string): string {
  const digits = Math.max(0, ...[...like.matchAll(/\d+(?:\.(\d+))?/g)].map(([, decimals = '']) => decimals.length));
  return text.replaceAll(/-?\d+(?:\.\d+)?(?:e[+-]\d+)?/g, (figure) =>
    new Decimal(figure).toDecimalPlaces(digits + 2).toString(),
  );
}

function unitOf(row: CheckValue): string {
  return 'unit' in row ? `\`${row.unit}\`` : '';
}

function disagreement({ row, outcome }: Checked): readonly string[] {
  return [
    `\`${row.id}\``,
    outcome.expected,
    shortened(outcome.got, outcome.expected),
    unitOf(row),
    inTolerances(outcome)?.toFixed(1) ?? `${shortened(outcome.deviation, outcome.expected)} beyond`,
  ];
}

const HEAD = ['row', 'in print', 'here', 'unit', 'off, in tolerances'];

function titlesOf(some: readonly Checked[]): string {
  return [...new Set(some.map(({ row }) => title(row.source)))].join('; ');
}

function ofReason([reason, some]: readonly [string, readonly Checked[]]): string {
  const head = `**${String(some.length)} rows.** ${reason}\n\nIn: ${titlesOf(some)}.`;
  if (some.length <= MANY) return `${head}\n\n${table(HEAD, some.map(disagreement))}`;
  const order = [...some].sort((one, other) =>
    new Decimal(one.outcome.deviation).abs().cmp(new Decimal(other.outcome.deviation).abs()),
  );
  const ends = [order[0], order.at(-1)].filter((each) => each !== undefined);
  return `${head} The nearest and the furthest of them:\n\n${table(HEAD, ends.map(disagreement))}`;
}

function disagreements(): string {
  const missed = checked.filter(({ outcome }) => !outcome.met);
  const groups = [...groupedBy(missed, ({ row }) => knownDisagreements[row.id] ?? 'Not explained.')];
  const shared = groups.filter(([, { length }]) => length > 1);
  const single = groups.flatMap(([reason, some]) => (some.length > 1 ? [] : some.map((one) => ({ reason, one }))));
  const own = table(
    [...HEAD, 'why', 'publication'],
    single.map(({ reason, one }) => [...disagreement(one), reason, titlesOf([one])]),
  );
  return `${shared.map(ofReason).join('\n\n')}\n\n**${String(single.length)} rows** have a reason of their own:\n\n${own}`;
}

function obtained(): string {
  const kinds = ['read', 'memory', 'derived'] as const;
  const cells = fats.flatMap(({ id }) => publishedRecordOf(id).cells);
  return table(
    ['', ...kinds],
    [
      ['check values', ...kinds.map((kind) => String(checkValues().filter((row) => row.obtained === kind).length))],
      ['cells of the fats', ...kinds.map((kind) => String(cells.filter((one) => one.obtained === kind).length))],
    ],
  );
}

function recalled(): string {
  const groups = groupedBy(
    checked.filter(({ row }) => row.obtained === 'memory'),
    ({ row }) => row.source,
  );
  return table(
    ['publication', 'rows that are recalled', 'not met'],
    [...groups.values()].map((some) => [
      some[0] === undefined ? '' : title(some[0].row.source),
      String(some.length),
      String(some.filter(({ outcome }) => !outcome.met).length),
    ]),
  );
}

function ofTable({ name, entries, checks, readBy, tests, left }: PublishedTable): readonly string[] {
  const rows = checks === undefined ? [] : checked.filter(({ row }) => checks(row));
  const missed = rows.filter(({ outcome }) => !outcome.met).length;
  const stands = missed === 0 ? String(rows.length) : `${String(rows.length)} (${String(missed)} not met)`;
  const more = [
    ...(readBy === undefined ? [] : [`Read by ${readBy}.`]),
    ...(tests === undefined ? [] : [`Tests: \`${tests}\`.`]),
    ...(left === undefined ? [] : [left]),
  ];
  return [name, String(entries), rows.length === 0 ? '' : stands, more.join(' ')];
}

function inventory(): string {
  return Object.entries(tables)
    .map(
      ([group, some]) =>
        `### ${group}\n\n${table(['table', 'entries at hand', 'check values', 'what else, what is left out'], some.map(ofTable))}`,
    )
    .join('\n\n');
}

/** The page before it is formatted. */
export const validationPage = `---
title: Validation
---

# Validation

Every published figure that the library is held to, source by source. The page is written by \`npm run report\` from
\`selfCheck()\`, and the tests fail if it is stale. How a row comes about, and what it says, stands in
[Sources and validation](sources.md#checked-against-print).

**${String(total)} rows of ${String(new Set(checkValues().map(({ source }) => source)).size)} publications, on ${String(isCalled.size)} functions: ${String(met)} met, ${String(known)} not met and explained, ${String(total - met - known)} not explained.**

A deviation is told in tolerances: 1 is the most that the printed digits, and what the publication says of its own accuracy,
allow. Ranges, bounds that a sample must lie within, and words have no tolerance; there the columns are empty.

\`\`\`ts
import { selfCheck } from 'laurate/check-values';

const { met, known, total } = selfCheck();
[total, met, known]; // => [${String(total)}, ${String(met)}, ${String(known)}]
\`\`\`

## Source by source

${bySource()}

## Where we disagree

Both figures stand, with the reason as far as it is known. "Not met" is not "wrong": most of these rows are samples and old
tables that no sum can meet, kept because leaving them out would make the count look better than it is.

${disagreements()}

## What rests on memory

\`read\` was read in the publication or a restatement of it, \`memory\` was recalled and not seen again, \`derived\` was worked
out apart from the library from figures that were read.

${obtained()}

A row that is recalled and met says less than one that was read.

${recalled()}

## Tables of the references and where they are checked

A figure that the library reads is no check of what it works out; such tables are told by what reads them. Entries are
those that were at hand, as counted when they were carried over.

${inventory()}

## What no publication checks

These functions have no row of their own:

${table(
  ['function', 'what stands in'],
  Object.entries(unchecked).map(([name, reason]) => [`\`${name}\``, reason]),
)}

Nor does print check these: bounds over lots as a whole (they are proved by laws and by sampling), weights that order the
slips of the audit ([its page](audit.md) tells how it does on drawn recipes), densities of soap, the heat of saponification of a
fat (no measured one was found), and whether a base becomes clear. A soap is known by its test, not by any sum.
`;
