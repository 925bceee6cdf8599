import { molarMass } from '../chemistry/index.js';
import { hydroxideMolarMass } from '../lye/index.js';
import {
  fieldPath,
  frozen,
  ONE,
  readFields,
  readShape,
  readWord,
  ZERO,
  type Decimal,
  type Steps,
} from '../numbers/index.js';
import type { Estimate } from '../quantities/index.js';
import {
  readReactingPot,
  valueAt,
  type Dimension,
  type GivenPot,
  type Place,
  type Products,
  type ReactingPot,
} from '../saponification/index.js';
import { readAdditions, type Addition, type GivenAddition } from './additions.js';
import { assayDimension, restOf } from './assays.js';
import { COMPONENTS, isSpirit, SPIRITS, type ComponentName } from './components.js';
import { checkLoss, goneAt, readLoss, type GivenLoss, type Gone, type Loss } from './loss.js';

/** A result of `soapFromLye`, also one read back from JSON: what was charged is worked through again. */
export interface MadeSoap {
  readonly by: 'soapFromLye';
  readonly given: unknown;
}

/** What a composition was worked out from. */
export interface GivenComposition extends GivenLoss {
  readonly soap: { readonly by: 'soapFromLye'; readonly given: GivenPot };
  readonly additions: readonly GivenAddition[];
}

/** What is in one pot, in grams. */
export interface PotContents {
  readonly grams: Readonly<Record<ComponentName, Decimal>>;
  /** All of it. */
  readonly all: Decimal;
  /** Glycerol that came of the fats, and that was weighed in. */
  readonly glycerol: { readonly formed: Decimal; readonly added: Decimal };
  readonly gone: Gone;
  readonly carbonDioxide: Decimal;
  /** Caustic left, as sodium hydroxide. */
  readonly causticAsNaoh: Decimal;
  /** Fatty and rosin acids bound in soap. */
  readonly soapAcid: Decimal;
  /** Soap of triethanolamine, if it took up all the free acid it can. */
  readonly triethanolamineSoap: Decimal;
  /** Where masses turn; see the reaction. */
  readonly turning: readonly Decimal[];
}

/** A pot with all that was weighed in, less what has left it. */
export interface ChargedPot {
  readonly soap: ReactingPot;
  readonly additions: readonly Addition[];
  readonly loss: Loss;
  /** Everything weighed in, grams. */
  readonly charge: Decimal;
  readonly dimensions: readonly Dimension[];
  readonly at: (place: Place) => PotContents;
  readonly given: GivenComposition;
}

const KEYS = ['soap', 'additions', 'evaporated', 'potMass', 'spiritShareOfLoss'];

/**
 * Reads a pot: the soap, the additions and the loss. An empty path is that of the input itself.
 *
 * @throws CalculationError the faults of each, and `infeasible` for a loss that the likely pot cannot have had
 */
export function readChargedPot(path: string, value: unknown, steps?: Steps): ChargedPot {
  const fields = readShape(path === '' ? 'input' : path, value, KEYS);
  const given = givenOf(fieldPath(path, 'soap'), fields['soap'], 'soapFromLye');
  const soap = readReactingPot(fieldPath(path, 'soap.given'), given, steps);
  const additions = readAdditions(fieldPath(path, 'additions'), fields['additions']);
  const loss = readLoss(path, fields);
  const charge = additions.reduce((sum, { grams }) => sum.plus(grams), soap.charge);
  const pot = { soap, additions, loss, charge };

  const { grams, carbonDioxide } = beforeLoss(pot, 'likely');
  checkLoss(path, loss, { water: grams.water, spirit: spiritOf(grams), all: charge.minus(carbonDioxide) });
  return {
    ...pot,
    dimensions: [...soap.dimensions, ...varyingAdditions(additions), ...varyingLoss(loss, additions)],
    at: (place) => contentsAt(pot, place),
    given: frozen({
      soap: frozen({ by: 'soapFromLye' as const, given: soap.given }),
      additions: frozen(additions.map(({ given }) => given)),
      ...loss.given,
    }),
  };
}

/** What a result was worked out from: the one part of it that is read again. */
export function givenOf(path: string, value: unknown, by: string): unknown {
  const fields = readFields(path, value, `a result of ${by}`);
  readWord(fieldPath(path, 'by'), fields['by'], [by]);
  return fields['given'];
}

const holdsSpirit = ({ holds }: Addition): boolean => typeof holds === 'object' && isSpirit(holds.solvent);
const isRange = ({ low, high }: Estimate<Decimal>): boolean => low.lt(high);

/** Assays that are ranges. */
function varyingAdditions(additions: readonly Addition[]): readonly Dimension[] {
  const found = new Set<Dimension>();
  for (const { holds } of additions) {
    if (typeof holds === 'object' && isRange(holds.share)) found.add(assayDimension(holds.solvent));
  }
  return [...found];
}

function varyingLoss({ given, spiritShare }: Loss, additions: readonly Addition[]): readonly Dimension[] {
  const hasLoss = given.evaporated !== undefined || given.potMass !== undefined;
  const isKnown = spiritShare !== undefined && !isRange(spiritShare);
  return hasLoss && !isKnown && additions.some(holdsSpirit) ? ['loss'] : [];
}

type Pot = Pick<ChargedPot, 'soap' | 'additions' | 'loss' | 'charge'>;
type Grams = Record<ComponentName, Decimal>;

const spiritOf = (grams: Grams): Decimal => SPIRITS.reduce((sum, spirit) => sum.plus(grams[spirit]), ZERO);

/** Everything in the pot before anything but gas leaves it. */
function beforeLoss(
  { soap, additions }: Pot,
  place: Place,
): { readonly grams: Grams; readonly made: Products } & Pick<PotContents, 'glycerol' | 'carbonDioxide'> {
  const made = soap.at(place);
  const of = made.grams;
  const grams: Grams = {
    ...(Object.fromEntries(COMPONENTS.map((name) => [name, ZERO])) as Grams),
    soapSodium: of.soapSodium,
    soapPotassium: of.soapPotassium,
    water: of.water,
    freeFat: of.freeFat,
    freeAcid: of.freeAcid,
    freeCaustic: of.freeNaoh.plus(of.freeKoh),
    carbonate: of.sodiumCarbonate.plus(of.potassiumCarbonate),
    unsaponifiable: of.unsaponifiable,
    other: of.other,
  };
  for (const { component, holds, grams: mass } of additions) {
    if (typeof holds === 'string') {
      grams[component] = grams[component].plus(mass);
      continue;
    }
    const pure = mass.times(valueAt(holds.share, place, assayDimension(holds.solvent)));
    const rest = restOf(holds.solvent);
    grams[component] = grams[component].plus(pure);
    grams[rest] = grams[rest].plus(mass.minus(pure));
  }
  const added = grams.glycerol;
  grams.glycerol = added.plus(of.glycerol);
  return { grams, made, glycerol: { formed: of.glycerol, added }, carbonDioxide: of.carbonDioxide };
}

function contentsAt(pot: Pot, place: Place): PotContents {
  const { grams, made, glycerol, carbonDioxide } = beforeLoss(pot, place);
  const kept = pot.charge.minus(carbonDioxide);
  const spirit = spiritOf(grams);
  const gone = goneAt(pot.loss, { water: grams.water, spirit, all: kept }, place);
  grams.water = grams.water.minus(gone.water);
  if (!gone.spirit.isZero()) {
    // two spirits leave in the proportion they are there, a convention
    const left = spirit.minus(gone.spirit);
    for (const name of SPIRITS) grams[name] = left.times(grams[name].div(spirit));
  }
  const metal = (name: string): Decimal => molarMass(name).minus(molarMass('H'));
  const { freeNaoh, freeKoh, soapSodium, soapPotassium } = made.grams;
  return {
    grams,
    all: kept.minus(gone.water).minus(gone.spirit),
    glycerol,
    gone,
    carbonDioxide,
    causticAsNaoh: freeNaoh.plus(freeKoh.times(hydroxideMolarMass('naoh')).div(hydroxideMolarMass('koh'))),
    soapAcid: soapSodium
      .plus(soapPotassium)
      .minus(made.soapMol.sodium.times(metal('Na')))
      .minus(made.soapMol.potassium.times(metal('K'))),
    triethanolamineSoap: triethanolamineSoap(grams, made.turning),
    turning: made.turning,
  };
}

/** Mole for mole with the acid that alkali and carbonate have left; the last turning point is their excess over it. */
function triethanolamineSoap({ triethanolamine, freeAcid }: Grams, turning: readonly Decimal[]): Decimal {
  const acidMol = turning[2]?.neg() ?? ZERO;
  if (triethanolamine.isZero() || acidMol.lte(0)) return ZERO;
  const amine = molarMass('C6H15NO3');
  const amineMol = triethanolamine.div(amine);
  const taken = amineMol.lt(acidMol) ? amineMol.div(acidMol) : ONE;
  return taken.times(freeAcid.plus(acidMol.times(amine)));
}
