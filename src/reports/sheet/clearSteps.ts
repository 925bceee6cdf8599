import { isSpirit, type ChargedPot, type SolventId } from '../../composition/index.js';
import { orderOfAdditions } from '../../process/orderOfAdditions.js';
import { additionName } from './itemNames.js';
import { hasNamedSpirit, type Sheet } from './sheet.js';
import { ceiling, type SheetStep } from './sheetStep.js';

type Addition = ChargedPot['additions'][number];
type Solvent = Addition & { readonly holds: { readonly solvent: SolventId } };

const isSolvent = (addition: Addition): addition is Solvent => typeof addition.holds === 'object';

function solventsInOrder({ additions }: ChargedPot): readonly Solvent[] {
  const turns = orderOfAdditions();
  const rank = ({ holds }: Solvent): number => turns.indexOf(holds.solvent);
  return additions.filter(isSolvent).sort((a, b) => rank(a) - rank(b));
}

/** Stirring in what clears the soap; nothing where nothing does. */
export function clearSteps(sheet: Sheet): readonly SheetStep[] {
  const { pot, write } = sheet;
  const solvents = solventsInOrder(pot);
  if (solvents.length === 0) return [];
  const names = solvents.map((one) => additionName(one, write).toLowerCase()).join(', then ');
  const hasSpirit = solvents.some(({ holds }) => isSpirit(holds.solvent));
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
export function restSteps(sheet: Sheet): readonly SheetStep[] {
  const { batch, pot, write } = sheet;
  const rest = pot.additions.filter((one) => !isSolvent(one));
  if (rest.length === 0) return [];
  const names = rest.map((one) => additionName(one, write)).join(', ');
  // scent is driven off by heat
  const near = write.temperature(batch.given.options.pourAt);
  const spirit = hasNamedSpirit(sheet) ? ' What is spirit goes in last, off the heat.' : '';
  return [
    {
      title: 'What else goes in',
      does: `Let it come down near ${near} and stir in ${names}.${spirit}`,
      cautions: 'rest',
    },
  ];
}
