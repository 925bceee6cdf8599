import { POLYOLS, SPIRITS, SUGARS, type ChargedPot, type ComponentName } from '../composition/index.js';
import { Decimal, frozen, ZERO } from '../numbers/index.js';
import type { Fraction } from '../quantities/index.js';
import type { ClearingAgentKind, PublishedForm } from './data/formulaRows.js';
import { byBasis, isClear, type ByBasis } from './outcomes.js';
import type { PublishedFormula } from './publishedFormulas.js';

/** What sort of soap it is. */
export interface SoapKind {
  readonly form: PublishedForm;
  /** By what was weighed in; the glycerol that the fats set free does not count. */
  readonly clearingAgents: ClearingAgentKind;
}

/** What is published of the same kind. */
export interface Precedent {
  /** How many complete formulas of this form and these clearing agents, by outcome. */
  readonly clear: ByBasis<number>;
  readonly notClear: ByBasis<number>;
  /** Formulas of this kind with amounts missing: they are seen to exist, and no more. */
  readonly incomplete: number;
  /** What was weighed in that no complete formula of this form holds. */
  readonly unseen: readonly ComponentName[];
  /** Of these clearing agents in any form: the next less soap that is published. Only where there is none of this kind. */
  readonly soapBelow?: Fraction;
  /** And the next more. */
  readonly soapAbove?: Fraction;
  readonly text: string;
}

const amountOf = (pot: ChargedPot, names: readonly ComponentName[]): Decimal => {
  const { grams, glycerol } = pot.at('likely');
  return names.reduce((sum, name) => sum.plus(name === 'glycerol' ? glycerol.added : grams[name]), ZERO);
};

/** The kind of a pot, by what was weighed in. Whether it holds surfactant cannot be told. */
export function clearingAgentsOf(pot: ChargedPot): ClearingAgentKind {
  if (amountOf(pot, SPIRITS).gt(0)) return 'with-spirit';
  if (amountOf(pot, SUGARS).gt(0)) return 'with-sugar';
  return amountOf(pot, POLYOLS).gt(0) ? 'polyol-only' : 'none-added';
}

/** Complete: every amount is known. */
export const isComplete = ({ shares }: PublishedFormula): boolean => shares !== undefined;

/** What is published of the same kind as a pot with this much soap, in percent. */
export function precedentOf(
  kind: SoapKind,
  pot: ChargedPot,
  soap: Decimal,
  formulas: readonly PublishedFormula[],
): Precedent {
  const sameAgents = formulas.filter(({ clearingAgents }) => clearingAgents === kind.clearingAgents);
  const sameKind = sameAgents.filter(({ form }) => form === kind.form);
  const complete = sameKind.filter(isComplete);
  const count = (some: readonly PublishedFormula[]): number => some.length;
  const gap = complete.length > 0 ? {} : soapGap(soap, sameAgents);
  return frozen({
    clear: byBasis(complete.filter(isClear), count),
    notClear: byBasis(
      complete.filter((one) => !isClear(one)),
      count,
    ),
    incomplete: sameKind.length - complete.length,
    unseen: frozen(unseenIn(pot, kind.form, formulas)),
    ...gap,
    text: textOf(kind, sameKind, gap),
  });
}

/** The next less and the next more of soap among complete formulas. */
function soapGap(soap: Decimal, formulas: readonly PublishedFormula[]): Pick<Precedent, 'soapBelow' | 'soapAbove'> {
  const shares = formulas.flatMap(({ shares }) => shares?.soap?.percent ?? []);
  const below = shares.filter((one) => one.lte(soap));
  const above = shares.filter((one) => one.gt(soap));
  return {
    ...(below.length === 0 ? {} : { soapBelow: frozen({ percent: Decimal.max(...below) }) }),
    ...(above.length === 0 ? {} : { soapAbove: frozen({ percent: Decimal.min(...above) }) }),
  };
}

function unseenIn(
  pot: ChargedPot,
  form: PublishedForm,
  formulas: readonly PublishedFormula[],
): readonly ComponentName[] {
  const held = new Set(formulas.flatMap((one) => (one.form === form ? Object.keys(one.shares ?? {}) : [])));
  return [...POLYOLS, ...SUGARS, ...SPIRITS, 'triethanolamine' as const].filter(
    (name) => amountOf(pot, [name]).gt(0) && !held.has(name),
  );
}

const FORMS: Readonly<Record<PublishedForm, string>> = {
  bar: 'a bar',
  soft: 'a soft soap',
  cream: 'a cream',
  gel: 'a soap gel',
  liquid: 'a liquid soap',
};
const AGENTS: Readonly<Record<ClearingAgentKind, string>> = {
  'none-added': 'without any clearing agent',
  'polyol-only': 'with polyols alone, without sugar, spirit or surfactant',
  'with-sugar': 'with sugar, without spirit or surfactant',
  'with-spirit': 'with spirit, without surfactant',
  'with-surfactant': 'with surfactant',
};

function textOf(
  { form, clearingAgents }: SoapKind,
  sameKind: readonly PublishedFormula[],
  { soapBelow, soapAbove }: Pick<Precedent, 'soapBelow' | 'soapAbove'>,
): string {
  const kind = `${FORMS[form]} ${AGENTS[clearingAgents]}`;
  const complete = sameKind.filter(isComplete).length;
  if (complete > 0) {
    const number = complete === 1 ? 'One complete formula is' : `${String(complete)} complete formulas are`;
    return `${number} published of this kind: ${kind}.`;
  }
  const amounts = sameKind.length === 0 ? '' : ' with all its amounts';
  const sides = [soapBelow, soapAbove].flatMap((one) => (one === undefined ? [] : `${one.percent.toString()} %`));
  const elsewhere =
    sides.length === 0
      ? ''
      : ` With these clearing agents in other forms the nearest hold ${sides.join(' and ')} of soap.`;
  return `No published formula of this kind was found${amounts}: ${kind}. That speaks neither for it nor against it; those nearest to it are of other kinds.${elsewhere}`;
}
