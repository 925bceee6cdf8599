import { frozen, ZERO, type Decimal } from '../../numbers/index.js';
import { unitsByKind, type Estimate, type FractionInput } from '../../quantities/index.js';
import { inUnit } from '../figures.js';
import type { Finding } from '../finding.js';
import { molIn, type Pot, type PotLye } from '../pot.js';
import { printedQuantity } from '../printed.js';
import { COMMON } from '../slips/hypothesis.js';
import { contradiction } from './contradiction.js';
import { percentOf } from './lyeValues.js';

/** How much each alkali brings: moles of hydroxide, and grams of it. */
interface Brought {
  readonly mol: Readonly<Record<'naoh' | 'koh', Decimal>>;
  readonly grams: Readonly<Record<'naoh' | 'koh', Decimal>>;
}

type Ends = Readonly<
  Record<'naoh' | 'koh', { readonly size: 'low' | 'value' | 'high'; readonly assay: keyof Estimate<unknown> }>
>;

/** Whether the printed share of KOH is that of its hydroxide, by mole. */
export function kohShareFinding({ lye }: Pot, claim: FractionInput): Finding | undefined {
  const printed = printedQuantity(claim, unitsByKind().fraction);
  const [least, most] = [
    { size: 'low', assay: 'low' },
    { size: 'high', assay: 'high' },
  ] as const;
  const share = (of: Brought['mol']): Decimal | undefined => percentOf(of.koh, of.koh.plus(of.naoh));
  return contradiction<Brought>({
    code: 'koh-share-contradicted',
    path: 'claimed.kohShare',
    what: 'for KOH a share of the hydroxide',
    printed,
    points: {
      corners: [brought(lye, { koh: least, naoh: most }), brought(lye, { koh: most, naoh: least })],
      likely: brought(lye, { koh: { size: 'value', assay: 'likely' }, naoh: { size: 'value', assay: 'likely' } }),
    },
    readings: [({ mol }) => share(mol)],
    hypotheses: () => [{ code: 'mole-share-as-mass-share', weight: COMMON, figure: ({ grams }) => share(grams) }],
    from: 'the rest of the recipe',
    shown: inUnit('fraction', printed.unit),
    basis: frozen(['iupac-2021']),
  });
}

function brought(lye: readonly PotLye[], ends: Ends): Brought {
  const of = (alkali: 'naoh' | 'koh', amount: (one: PotLye) => Decimal): Decimal =>
    lye.reduce((sum, one) => (one.alkali === alkali ? sum.plus(amount(one)) : sum), ZERO);
  const mol = (one: PotLye): Decimal => molIn(one, one.grams[ends[one.alkali].size], ends[one.alkali].assay);
  const grams = ({ alkali, grams: mass, charge }: PotLye): Decimal =>
    mass[ends[alkali].size].times(charge.source.hydroxide[ends[alkali].assay]);
  return {
    mol: { naoh: of('naoh', mol), koh: of('koh', mol) },
    grams: { naoh: of('naoh', grams), koh: of('koh', grams) },
  };
}
