import type { SourceId } from '../../sources/index.js';
import type { SolventId } from './solventNames.js';

/** Figures of these publications were recalled and not seen again. */
export const recalledSources: readonly SourceId[] = ['handbooks-recalled', 'pharmacopoeias-recalled', 'codex-stan-212'];

/** Figures of these publications were evaluated from equations that were read. */
export const evaluatedSources: readonly SourceId[] = ['kell-1975', 'vdi-heat-atlas', 'perry-8-densities'];

/** Ingredient names, all recalled. */
export const inciNamesFrom = { source: 'handbooks-recalled', obtained: 'memory' } as const;

/** Other figures on file, doubts and disagreements, in words. */
export const solventNotes: Readonly<Record<SolventId, readonly string[]>> = {
  water: ['The density is worked out by the polynomial, from 0 to 100 °C; the figure here is its value at 20 °C.'],
  ethanol: [
    'The correlation by itself gives 0.7902 g/mL at 20 °C, 0.1 % above the measured figure; its differences are used.',
    'Flash points of weaker spirit, recalled: 16.6 °C at 96 % by volume, 22 °C at about 50 %.',
    'Alcohol of the USP is 94.9 to 96.0 % by volume at 15.56 °C; ethanol (96 per cent) is 95.1 to 96.9 %.',
    'With water it boils off as 95.6 % by mass at 78.15 °C, recalled.',
  ],
  '2-propanol': [
    'The correlation by itself gives 0.7864 g/mL at 20 °C; another edition prints 0.7809 at 25 °C, 0.0007 above what is given here.',
  ],
  glycerol: [
    'Other figures at 20 °C: 1.2613 g/mL in another edition; specific gravity 20/20 in air 1.26362.',
    'It boils with decomposition. Flash points: 160 °C closed and 177 °C open cup, recalled; 173.8 °C in a compilation.',
    'Glycerol of the Ph. Eur. is 98.0 to 101.0 % of the anhydrous, with at most 2.0 % water: 96 % at least.',
  ],
  'propylene-glycol': [
    'A compilation gives a flash point of 85.5 °C, far below the usual 99 to 104 °C; it is left out.',
    'With water its density has a flat maximum near 75 to 85 %, so that a density does not tell the strength there.',
  ],
  'dipropylene-glycol': [
    'A mixture of three isomers. Flash point: 117.9 °C in a compilation, 138 °C open cup, recalled.',
  ],
  '1-3-butanediol': [],
  sorbitol: [
    'The density is that of the solid; a syrup of 70.5 % dry substance had 1.301 g/mL at 20 °C.',
    'Sorbitol solution holds at least 64.0 % D-sorbitol, the non-crystallising kind at least 45.0 %, the rest of the dry substance being other hydrogenated sugars. A syrup of 70 % is saturated at 20 to 25 °C.',
  ],
  sucrose: ['The density is that of the solid, at 17 °C.'],
  glucose: ['Everything but the molar mass is recalled. The monohydrate is 90.9 % glucose by formula.'],
  'peg-400': ['A mixture with a mean molar mass of 380 to 420 g/mol. Everything is recalled.'],
  triethanolamine: [
    'It freezes at 21.5 °C. The alkalinity of trolamine NF, 99.0 to 107.4 % as triethanolamine, is no assay by mass.',
    'With nitrosating agents it forms nitrosamines; EU rules for cosmetics ask for 99 % purity, recalled.',
  ],
};
