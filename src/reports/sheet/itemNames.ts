import { solvent, type ChargedPot } from '../../composition/index.js';
import type { Alkali } from '../../lye/index.js';
import type { Decimal } from '../../numbers/index.js';
import { mapEnds, type Estimate } from '../../quantities/index.js';
import { escaped } from '../markdown.js';
import { ownName } from '../ownName.js';
import type { Sheet } from './sheet.js';
import type { SheetWriter } from './sheetWriter.js';

const ALKALI_NAMES: Readonly<Record<Alkali, string>> = { naoh: 'Sodium hydroxide', koh: 'Potassium hydroxide' };

/** A share of one as the percent of a label. */
const percent = (write: SheetWriter, share: Estimate<Decimal>): string => {
  const percents = mapEnds(share, (part) => part.times(100));
  const decimals = Math.max(percents.low.decimalPlaces(), percents.high.decimalPlaces());
  return `${write.span(percents, Math.min(decimals, 2))} %`;
};

/** What each item of the weigh-out list is called, as Markdown, with its assay; in the order of the list. */
export function itemNames({ batch, pot, write }: Sheet): readonly string[] {
  const additions = pot.additions.map((addition) => additionName(addition, write));
  return [
    ...pot.soap.fats.map(({ fat }) => escaped(fat.name)),
    ...pot.soap.lye.map((charge) => alkaliName(charge, write)),
    ...batch.weigh.filter(({ kind }) => kind === 'water').map(() => 'Water'),
    ...additions,
  ];
}

function alkaliName({ alkali, source }: ChargedPot['soap']['lye'][number], write: SheetWriter): string {
  const name = ALKALI_NAMES[alkali];
  if (source.state === 'solution') return `${name} as lye of ${percent(write, source.hydroxide)}`;
  if (source.carbonate === undefined) return `${name}, solid, ${percent(write, source.hydroxide)}`;
  const total = percent(write, source.totalAlkali);
  return `${name}, solid, total alkali ${total}, carbonate ${percent(write, source.carbonate)}`;
}

/** A solvent by its name and assay, anything else by the name it was given. */
export function additionName({ holds, given }: ChargedPot['additions'][number], write: SheetWriter): string {
  if (typeof holds !== 'object') return escaped(ownName(given) ?? holds);
  const { name } = solvent(holds.solvent);
  return holds.solvent === 'water' ? name : `${name} of ${percent(write, holds.share)}`;
}
