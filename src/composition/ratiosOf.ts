import { frozen, noted, ZERO, type Decimal, type Steps } from '../numbers/index.js';
import { mapEnds, type Estimate, type Fraction, type MassRatio } from '../quantities/index.js';
import { extremesOf } from '../saponification/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { POLYOLS, SOAPS, SPIRITS, SUGARS, type ComponentName } from './components.js';
import { composedFrom, readComposition, type ComposedFrom, type MadeComposition } from './readComposition.js';

/** The parts of a pot that its clarity turns on. */
export type PotPart = 'soap' | 'polyol' | 'sugar' | 'spirit' | 'clearingAgents' | 'water';

/** Result of {@link ratiosOf}. */
export interface Ratios {
  readonly by: 'ratiosOf';
  /** The composition, as read. */
  readonly given: ComposedFrom;
  readonly polyolPerSoap: Estimate<MassRatio>;
  readonly spiritPerSoap: Estimate<MassRatio>;
  /** Polyols, sugars and spirits together. */
  readonly clearingAgentsPerSoap: Estimate<MassRatio>;
  readonly waterPerSoap: Estimate<MassRatio>;
  /** Left out where the pot may hold no water. */
  readonly polyolPerWater?: Estimate<MassRatio>;
  /** Of what is in the pot. */
  readonly shares: Readonly<Record<PotPart, Estimate<Fraction>>>;
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/**
 * The ratios that makers of clear soap go by, of anhydrous soap, polyols, sugars, spirits and water.
 *
 * Formula: `Σ m / Σ m` by mass. Soap: sodium and potassium soap, anhydrous. Polyol: glycerol, formed and added, glycols,
 * butanediol, sorbitol and polyethylene glycol. Sugar: sucrose and glucose. Spirit: ethanol and 2-propanol. Clearing agents:
 * these three together. Triethanolamine and its soap are counted in none of them.
 *
 * Low and high are those of each ratio itself over all lots, assays and splits of the loss.
 *
 * Source: the composition's own.
 *
 * @param composition - a result of `compositionFrom`, also one read back from JSON
 * @returns parts to one part, and shares in percent by mass, with bounds
 * @throws CalculationError `missing` or `bad-shape` for what is no composition, and the faults of its inputs
 *
 * @example
 * ```ts
 * const soap = soapFromLye({
 *   fats: [{ fat: fat('coconut-oil'), mass: { g: 700 } }],
 *   lye: [{ alkali: 'naoh', mass: { g: 246 }, solution: { hydroxide: { percent: 50 } } }],
 * });
 * const additions = [{ solvent: 'glycerol', mass: { g: 250 }, assay: { percent: '99.5' } }] as const;
 * const { polyolPerSoap } = ratiosOf(compositionFrom({ soap, additions }));
 * polyolPerSoap.likely.partsPerPart.toFixed(3); // => '0.485'
 * ```
 */
export function ratiosOf(composition: MadeComposition): Ratios {
  return ratiosOfSteps(composition);
}

/** The components of each part; a function, so that a bundle that asks for no ratios does not carry it. */
const componentsOf = (): Readonly<Record<PotPart, readonly ComponentName[]>> => ({
  soap: SOAPS,
  polyol: POLYOLS,
  sugar: SUGARS,
  spirit: SPIRITS,
  clearingAgents: [...POLYOLS, ...SUGARS, ...SPIRITS],
  water: ['water'],
});
const PART_NAMES = ['soap', 'polyol', 'sugar', 'spirit', 'clearingAgents', 'water'] as const;

/** The kernel, with room for the working. */
export function ratiosOfSteps(composition: MadeComposition, steps?: Steps): Ratios {
  const pot = readComposition('composition', composition);
  const components = componentsOf();
  const ratios = extremesOf(pot.dimensions, (place) => {
    const { grams, all, turning } = pot.at(place);
    const sum = (names: readonly ComponentName[]): Decimal =>
      names.reduce((total, name) => total.plus(grams[name]), ZERO);
    const part = mapParts((name) => sum(components[name]));
    return {
      figures: {
        polyolPerSoap: part.polyol.div(part.soap),
        spiritPerSoap: part.spirit.div(part.soap),
        clearingAgentsPerSoap: part.clearingAgents.div(part.soap),
        waterPerSoap: part.water.div(part.soap),
        polyolPerWater: part.water.isZero() ? ZERO : part.polyol.div(part.water),
        ...mapParts((name) => part[name].times(100).div(all)),
      },
      turning,
    };
  });
  type Ratio = Exclude<keyof typeof ratios, PotPart>;
  const ratio = (name: Ratio, figure: string): Estimate<MassRatio> => {
    noted(steps, figure, 'Σ m / Σ m', 'parts to one part', ratios[name].likely);
    return mapEnds(ratios[name], (partsPerPart) => frozen({ partsPerPart }));
  };
  return frozen({
    by: 'ratiosOf',
    given: composedFrom(pot),
    polyolPerSoap: ratio('polyolPerSoap', 'polyol to soap'),
    spiritPerSoap: ratio('spiritPerSoap', 'spirit to soap'),
    clearingAgentsPerSoap: ratio('clearingAgentsPerSoap', 'clearing agents to soap'),
    waterPerSoap: ratio('waterPerSoap', 'water to soap'),
    ...(ratios.water.low.gt(0) ? { polyolPerWater: ratio('polyolPerWater', 'polyol to water') } : {}),
    shares: frozen(mapParts((name) => mapEnds(ratios[name], (percent) => frozen({ percent })))),
    basis: pot.soap.basis,
    edition: EDITION,
  });
}

/** Something of each part. */
function mapParts<T>(of: (name: PotPart) => T): Record<PotPart, T> {
  return Object.fromEntries(PART_NAMES.map((name) => [name, of(name)])) as Record<PotPart, T>;
}
