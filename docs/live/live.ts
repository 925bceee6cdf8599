/** The live page: reads the form, asks the library, writes what it says. Built into `docs/site/live` by `npm run docs`. */
import { fats } from 'laurate';
import { draw } from './draw.js';
import { answerTo, type Entry, type Shown } from './plan.js';

/** The element of a name in the page, of the kind it must be. */
function byId<E extends HTMLElement>(id: string, kind: new () => E): E {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`no ${id} in the page`);
  return found;
}

function made<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  fields: Partial<HTMLElementTagNameMap[K]> = {},
  ...children: readonly Node[]
): HTMLElementTagNameMap[K] {
  const element = Object.assign(document.createElement(tag), fields);
  element.append(...children);
  return element;
}

const form = byId('entry', HTMLFormElement);
const rows = byId('rows', HTMLElement);
const add = byId('add', HTMLButtonElement);
const result = byId('result', HTMLElement);
const status = byId('status', HTMLElement);
const valueOf = (id: string): string => byId(id, HTMLInputElement).value;
const choiceOf = <W extends string>(id: string, words: readonly [W, W]): W =>
  byId(id, HTMLSelectElement).value === words[1] ? words[1] : words[0];

const listed = [...fats].sort((a, b) => a.name.localeCompare(b.name, 'en'));

/** A row of the charge: a fat, its mass, and a button that takes the row away. */
function rowOf(id: string, grams: string): HTMLElement {
  const select = made('select', {}, ...listed.map((one) => made('option', { value: one.id, textContent: one.name })));
  select.value = id;
  const input = made('input', { inputMode: 'decimal', value: grams });
  const remove = made('button', { type: 'button', textContent: 'Remove' });
  const row = made(
    'div',
    { className: 'row', role: 'group' },
    made('div', {}, made('label', { textContent: 'Fat' }), select),
    made('div', {}, made('label', { textContent: 'Mass, g' }), input),
    remove,
    made('p', { className: 'error' }),
  );
  remove.addEventListener('click', () => {
    row.remove();
    show();
    add.focus();
  });
  return row;
}

/** Names the parts of every row after its place, which is how the library names them in a refusal. */
function numberRows(): void {
  [...rows.children].forEach((row, at) => {
    const place = String(at);
    row.setAttribute('aria-label', `Fat ${String(at + 1)}`);
    const [select, input, remove, error] = [...row.querySelectorAll('select, input, button, .error')];
    const [ofFat, ofMass] = [...row.querySelectorAll('label')];
    if (select === undefined || input === undefined || error === undefined) return;
    select.id = `fat-${place}`;
    input.id = `mass-${place}`;
    error.id = `fat-${place}-error`;
    ofFat?.setAttribute('for', select.id);
    ofMass?.setAttribute('for', input.id);
    remove?.setAttribute('aria-label', `Remove fat ${String(at + 1)}`);
    input.setAttribute('data-path', `fats[${place}]`);
    input.setAttribute('aria-describedby', error.id);
  });
}

function entry(): Entry {
  return {
    fats: [...rows.children].map((_, at) => ({
      fat: byId(`fat-${String(at)}`, HTMLSelectElement).value,
      grams: valueOf(`mass-${String(at)}`),
    })),
    alkali: choiceOf('alkali', ['naoh', 'koh']),
    state: choiceOf('state', ['solution', 'solid']),
    hydroxide: valueOf('hydroxide'),
    superfat: valueOf('superfat'),
    strength: valueOf('strength'),
    scaleStep: valueOf('scale-step'),
  };
}

function write({ weigh, spread, cautions, notes, sources, charts }: Shown): void {
  const items = (texts: readonly string[]) => texts.map((textContent) => made('li', { textContent }));
  byId('cautions', HTMLElement).replaceChildren(...items(cautions));
  byId('weigh', HTMLElement).replaceChildren(
    ...weigh.flatMap(({ id, label, text }) => [
      made('dt', { textContent: label }),
      made('dd', { id, textContent: text }),
    ]),
  );
  byId('spread', HTMLElement).replaceChildren(
    ...spread.map(({ id, label, ...ends }) =>
      made(
        'tr',
        { id },
        made('th', { scope: 'row', textContent: label }),
        ...(['low', 'likely', 'high'] as const).map((end) => made('td', { textContent: ends[end] })),
      ),
    ),
  );
  byId('notes', HTMLElement).replaceChildren(...items(notes));
  byId('sources', HTMLElement).replaceChildren(...items(sources));
  draw(byId('charts', HTMLElement), charts);
}

/** The field a refusal is of: the one whose path is the longest beginning of the path refused. */
function fieldAt(path: string): Element | undefined {
  const pathOf = (field: Element): string => field.getAttribute('data-path') ?? '';
  const [closest] = [...form.querySelectorAll('[data-path]')]
    .filter((field) => path.startsWith(pathOf(field)))
    .sort((a, b) => pathOf(b).length - pathOf(a).length);
  return closest;
}

/** Writes a refusal beside its field; of no refusal, clears the last one. */
function mark(path?: string, text = ''): void {
  for (const field of form.querySelectorAll('[data-path]')) field.removeAttribute('aria-invalid');
  for (const error of form.querySelectorAll('.error')) error.textContent = '';
  if (path === undefined) return;
  const field = fieldAt(path);
  if (field instanceof HTMLInputElement) field.setAttribute('aria-invalid', 'true');
  byId(field?.getAttribute('aria-describedby') ?? 'fats-error', HTMLElement).textContent = text;
}

function show(): void {
  numberRows();
  const answer = answerTo(entry());
  if ('refused' in answer) {
    const { path, text } = answer.refused;
    mark(path, text);
    result.hidden = true;
    status.className = 'error';
    status.textContent = `No plan. ${text}`;
    return;
  }
  mark();
  write(answer.shown);
  result.hidden = false;
  // said to who hears the page; who sees it sees the cautions first
  status.className = 'unseen';
  status.textContent = `Weigh ${answer.shown.weigh.map(({ label, text }) => `${text} ${label}`).join('; ')}.`;
}

add.addEventListener('click', () => {
  const row = rowOf('olive-oil', '100');
  rows.append(row);
  show();
  row.querySelector('select')?.focus();
});
form.addEventListener('input', show);
form.addEventListener('submit', (event) => {
  event.preventDefault();
});

rows.append(rowOf('coconut-oil', '610'), rowOf('stearic-acid-50', '230'), rowOf('castor-oil', '60'));
show();
