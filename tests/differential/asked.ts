/** What was drawn, as `laurate` is asked it. */
import {
  fat,
  fatFromBlend,
  fatFromCertificate,
  type AlkaliSource,
  type ChargedFatInput,
  type AdditionInput,
  type CompositionFromInput,
  type MadeSoap,
  type PlanLyeInput,
  type SuperfatFromLyeInput,
} from 'laurate';
import type { Drawn, DrawnAddition, DrawnComposition, DrawnFat, DrawnSource } from './drawn.js';
import { of, sum, type Range } from './rational.js';

type Keyed<K extends string> = Record<K, string>;
type KeyedRange<K extends string> = Keyed<K> | { low: Keyed<K>; likely?: Keyed<K>; high: Keyed<K> };

function keyed<K extends string>(unit: K, range: Range): KeyedRange<K> {
  const key = (text: string): Keyed<K> => ({ [unit]: text }) as Keyed<K>;
  if (typeof range === 'string') return key(range);
  const { low, likely, high } = range;
  return { low: key(low), ...(likely !== undefined && { likely: key(likely) }), high: key(high) };
}

function chargedFat(drawn: DrawnFat, at: number): ChargedFatInput {
  const mass = { g: drawn.mass };
  if ('published' in drawn) return { fat: fat(drawn.published), mass };
  const { kind, unit, value, uncertainty, acidValue, unsaponifiable, moisture } = drawn;
  const made = fatFromCertificate({
    name: `lot ${String(at)}`,
    kind,
    saponificationValue: keyed(unit, value) as never,
    ...(uncertainty !== undefined && { uncertainty: { mgKohPerG: uncertainty } }),
    ...(acidValue !== undefined && { acidValue: { mgKohPerG: acidValue } }),
    ...(unsaponifiable !== undefined && { unsaponifiable: keyed('percent', unsaponifiable) }),
    ...(moisture !== undefined && { moisture: keyed('percent', moisture) }),
  });
  return { fat: made, mass };
}

export function chargedFats({ blended, fats }: Drawn): readonly ChargedFatInput[] {
  const parts = fats.map(chargedFat);
  if (!blended) return parts;
  const mass = sum(fats.map((each) => of(each.mass)));
  return [{ fat: fatFromBlend({ name: 'blend', parts }), mass: { g: mass.toString() } }];
}

function sourceOf(source: DrawnSource): AlkaliSource {
  if (source.form !== 'carbonated')
    return { [source.form]: { hydroxide: keyed('percent', source.hydroxide) } } as never;
  const { totalAlkali, carbonate } = source;
  return { solid: { totalAlkali: keyed('percent', totalAlkali), carbonate: keyed('percent', carbonate) } };
}

export function planAsked({ plan }: Drawn, fats: readonly ChargedFatInput[]): PlanLyeInput {
  const { sources, kohShare, target, dilution, scaleStep, batchMass } = plan;
  const [way, figure] = dilution;
  const unit = { strength: 'percent', waterPerFat: 'percent', water: 'g', waterPerAlkali: '', 'as-is': '' }[way];
  return {
    fats,
    alkali: {
      ...(sources.naoh && { naoh: sourceOf(sources.naoh) }),
      ...(sources.koh && { koh: sourceOf(sources.koh) }),
      ...(sources.naoh && sources.koh && { kohShare: { percent: kohShare } }),
    },
    target:
      'superfat' in target
        ? { superfat: { percent: target.superfat } }
        : { freeCausticAlkaliAtMost: { percentNaoh: target.freeCaustic } },
    dilution: way === 'as-is' ? way : ({ [way]: unit === '' ? figure : { [unit]: figure } } as never),
    ...(scaleStep !== undefined && { scaleStep: { g: scaleStep } }),
    ...(batchMass !== undefined && { batchMass: { g: batchMass } }),
  };
}

export function potAsked({ pot }: Drawn, fats: readonly ChargedFatInput[]): Omit<SuperfatFromLyeInput, 'batchMass'> {
  return {
    fats,
    lye: pot.lye.map(({ alkali, mass, source }) => ({ alkali, mass: { g: mass }, ...sourceOf(source) })),
    ...(pot.water !== undefined && { water: { g: pot.water } }),
  };
}

const additionOf = (drawn: DrawnAddition): AdditionInput => {
  const mass = { g: drawn.mass };
  if (!('solvent' in drawn)) return { ...drawn, mass };
  return { solvent: drawn.solvent, assay: keyed('percent', drawn.assay), mass };
};

/** `potMass` is what the scale would say, in grams. */
export function compositionAsked(
  { additions, gone }: DrawnComposition,
  soap: MadeSoap,
  potMass: string,
): CompositionFromInput {
  return {
    soap,
    additions: additions.map(additionOf),
    ...(gone && (gone.says === 'evaporated' ? { evaporated: { g: gone.mass } } : { potMass: { g: potMass } })),
    ...(gone?.spiritShare !== undefined && { spiritShareOfLoss: keyed('percent', gone.spiritShare) }),
  };
}
