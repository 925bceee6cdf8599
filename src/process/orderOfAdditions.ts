import { SOLVENT_IDS, type SolventId } from '../composition/index.js';
import { workSteps } from './data/workSteps.js';

/** What the route without spirit does not add, as the trade has it: sugars, then triethanolamine, spirit last, off the heat. */
const AFTER: readonly SolventId[] = ['sucrose', 'glucose', 'triethanolamine', 'ethanol', '2-propanol'];

/** The solvents in the order that they go into the pot: that of the steps of work; what they do not name stands before sorbitol. */
export function orderOfAdditions(): readonly SolventId[] {
  const ofRoute = Object.keys(workSteps()).flatMap((id) => SOLVENT_IDS.filter((solvent) => id === `add-${solvent}`));
  const last = ofRoute.indexOf('sorbitol');
  const unnamed = SOLVENT_IDS.filter((solvent) => !ofRoute.includes(solvent) && !AFTER.includes(solvent));
  return [...ofRoute.slice(0, last), ...unnamed, ...ofRoute.slice(last), ...AFTER];
}
