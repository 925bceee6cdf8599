import type { ChargedPot, SolventId } from '../../composition/index.js';
import { isNamedSpirit } from '../../composition/namedAdditions.js';
import { additionName } from './itemNames.js';
import type { Sheet } from './sheetBatch.js';
import { ceiling, type SheetStep } from './sheetStep.js';

/** In the order of the trade: glycerol, glycols, sorbitol and sugars, then triethanolamine; spirit last, off the heat. */
const LATE: readonly SolventId[] = ['sorbitol', 'sucrose', 'glucose', 'triethanolamine', 'ethanol', '2-propanol'];
const SPIRITS: readonly SolventId[] = ['ethanol', '2-propanol'];

function solventsInOrder({ additions }: ChargedPot): readonly ChargedPot['additions'][number][] {
  const rank = ({ holds }: ChargedPot['additions'][number]): number =>
    typeof holds === 'object' ? LATE.indexOf(holds.solvent) : -1;
  return additions.filter(({ holds }) => typeof holds === 'object').sort((a, b) => rank(a) - rank(b));
}

/** Stirring in what clears the soap; nothing where nothing does. */
export function clearSteps(sheet: Sheet): readonly SheetStep[] {
  const { pot, write } = sheet;
  const solvents = solventsInOrder(pot);
  if (solvents.length === 0) return [];
  const names = solvents.map((one) => additionName(one, write).toLowerCase()).join(', then ');
  const hasSpirit = solvents.some(({ holds }) => typeof holds === 'object' && SPIRITS.includes(holds.solvent));
  const spirit = hasSpirit ? ' The spirit goes in off the heat.' : '';
  const most = ceiling('clearing-usual', sheet);
  return [
    {
      title: 'Clear',
      does: `Stir in ${names}. Keep below ${most} from here on, covered, until all is one clear mass and a cooled sample stays so.${spirit}`,
      cautions: 'clear',
    },
  ];
}

/** Stirring in everything else. */
export function restSteps({ batch, pot, write }: Sheet): readonly SheetStep[] {
  const rest = pot.additions.filter(({ holds }) => typeof holds !== 'object');
  if (rest.length === 0) return [];
  const names = rest.map((one) => additionName(one, write)).join(', ');
  // scent is driven off by heat
  const near = write.temperature(batch.given.options.pourAt);
  const hasSpirit = rest.some(({ given }) => 'name' in given && isNamedSpirit(given.name));
  const spirit = hasSpirit ? ' What is spirit goes in last, off the heat.' : '';
  return [
    {
      title: 'What else goes in',
      does: `Let it come down near ${near} and stir in ${names}.${spirit}`,
      cautions: 'rest',
    },
  ];
}
