import { molarMass } from '../chemistry/index.js';
import { expandedCharges, isAllAcid, readFat, type Fat, type SingleFat } from '../fats/index.js';
import { frozen, ONE, readShape, readWord, refuse, ZERO, type Decimal, type Remark } from '../numbers/index.js';
import {
  mapEnds,
  readPercent,
  readRanged,
  type Estimate,
  type Fraction,
  type FractionInput,
  type OneChoice,
  type Ranged,
} from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import type { Cation } from './cation.js';
import { soapOf, together, type Changes } from './changes.js';
import { correctingAcids, type CorrectingAcidId } from './data/correctingAcids.js';

/**
 * What takes up free caustic: citric or lactic acid by its assay where it is solid (the rest is not known) or by its strength
 * in solution (the rest is water); or a fat or fatty acid (stearic and lauric acid are fats of the list), which becomes soap.
 */
export type Corrector =
  | ({ readonly acid: CorrectingAcidId; readonly fat?: never } & OneChoice<{
      readonly assay: Ranged<FractionInput>;
      readonly strength: Ranged<FractionInput>;
    }>)
  | { readonly fat: Fat; readonly acid?: never; readonly assay?: never; readonly strength?: never };

/** A corrector in a result. */
export type CorrectorGiven =
  | ({ readonly acid: CorrectingAcidId; readonly fat?: never } & OneChoice<{
      readonly assay: Estimate<Fraction>;
      readonly strength: Estimate<Fraction>;
    }>)
  | { readonly fat: Fat; readonly acid?: never; readonly assay?: never; readonly strength?: never };

/** A corrector as read. */
export interface ReadCorrector {
  /** Whether it is an acid of water, which splits soap when it is too much; a fatty acid is soap's own. */
  readonly splitsSoap: boolean;
  /** Hydroxide that one gram takes, mol. */
  readonly perGram: Estimate<Decimal>;
  /** What so many grams of it bring to the pot and use up there. */
  readonly changes: (grams: Decimal, cation: Cation) => Changes;
  readonly notes: readonly Remark[];
  readonly basis: readonly SourceId[];
  readonly given: CorrectorGiven;
}

const SLOW_FAT: Remark = /* @__PURE__ */ frozen({
  code: 'fat-takes-time',
  text: 'A fat takes up caustic as slowly as in the pot: heat and an hour before the next test. A fatty acid does so at once.',
});
const STRONGER_THAN_DISSOLVES: Remark = /* @__PURE__ */ frozen({
  code: 'acid-stronger-than-dissolves',
  text: 'Water at 20 °C dissolves citric acid to 59 % (65 % as monohydrate): a stronger solution stays partly solid, and what is poured of it is weaker. Dilute it, or weigh the solid by its assay.',
});
const LACTIC_HOLDS_ANHYDRIDES: Remark = /* @__PURE__ */ frozen({
  code: 'lactic-acid-anhydrides',
  text: 'Strong lactic acid holds anhydrides, which take caustic only when warm: its strength is that after saponification, as the certificate should say.',
});

/**
 * Reads what takes up free caustic.
 *
 * @throws CalculationError `missing`, `bad-shape`, `unknown-key`, `out-of-range`, `infeasible` (a wax) and the faults of a fat
 * or quantity
 */
export function readCorrector(path: string, value: unknown): ReadCorrector {
  const fields = readShape(path, value, ['acid', 'assay', 'strength', 'fat']);
  if (fields['fat'] === undefined) return readAcid(path, fields);
  if (fields['acid'] !== undefined) refuse('bad-shape', path, 'either acid or fat', 'both');
  const fat = readFat(fields['fat'], `${path}.fat`);
  const parts = expandedCharges([{ fat, grams: ONE }]);
  if (parts.some((part) => part.fat.kind === 'wax-ester')) {
    refuse('infeasible', `${path}.fat`, 'a fat or fatty acid: a wax takes up caustic too slowly', fat.name);
  }
  const potash = molarMass('KOH').times(1000);
  return {
    splitsSoap: false,
    perGram: mapEnds(fat.saponificationValue, ({ mgKohPerG }) => mgKohPerG.div(potash)),
    changes: (grams, cation) =>
      expandedCharges([{ fat, grams }])
        .map((part) => fatChanges(part.fat, part.grams, cation))
        .reduce(together, {}),
    notes: parts.every((part) => isAllAcid(part.fat.kind)) ? [] : [SLOW_FAT],
    basis: fat.basis,
    given: frozen({ fat }),
  };
}

/** A fat that becomes soap whole: its free acid with water, its esters with glycerol. */
function fatChanges(fat: SingleFat, grams: Decimal, cation: Cation): Changes {
  const perMol = molarMass('KOH').times(1000);
  const mol = grams.times(fat.saponificationValue.likely.mgKohPerG).div(perMol);
  const acid = isAllAcid(fat.kind) ? mol : grams.times(fat.acidValue.mgKohPerG).div(perMol);
  const glycerol = mol.minus(acid).div(3).times(molarMass('C3H8O3'));
  const unsaponifiable = grams.times(fat.unsaponifiable.likely.percent).div(100);
  const moisture = grams.times(fat.moisture.likely.percent).div(100);
  const water = acid.times(molarMass('H2O'));
  const caustic = mol.times(cation.hydroxide);
  const soap = grams.minus(unsaponifiable).minus(moisture).plus(caustic).minus(glycerol).minus(water);
  return {
    ...soapOf(soap.minus(mol.times(cation.metal)), mol, cation),
    glycerol,
    water: water.plus(moisture),
    unsaponifiable,
    freeCaustic: caustic.neg(),
  };
}

function readAcid(path: string, fields: Readonly<Record<string, unknown>>): ReadCorrector {
  const acid = readWord(`${path}.acid`, fields['acid'], ['citric', 'citric-monohydrate', 'lactic']);
  const isSolid = fields['strength'] === undefined;
  if (!isSolid && fields['assay'] !== undefined) refuse('bad-shape', path, 'either assay or strength', 'both');
  const key = isSolid ? 'assay' : 'strength';
  const share = readRanged(`${path}.${key}`, fields[key], (at, part) =>
    readPercent(at, part, { above: 0, min: '0.01', max: 100 }),
  );
  const { formula, crystalWater, takes, dissolvesTo } = correctingAcids[acid];
  const water = molarMass('H2O');
  const pure = molarMass(formula);
  const asSold = pure.plus(water.times(crystalWater));
  const shown = mapEnds(share, (percent) => frozen({ percent }));
  return {
    splitsSoap: true,
    perGram: mapEnds(share, (percent) => percent.div(100).times(takes).div(asSold)),
    changes: (grams, { metal, hydroxide }) => {
      const held = grams.times(share.likely).div(100);
      const mol = held.div(asSold);
      const taken = mol.times(takes);
      const rest = grams.minus(held);
      return {
        salts: mol.times(pure).plus(taken.times(metal.minus(molarMass('H')))),
        water: taken
          .plus(mol.times(crystalWater))
          .times(water)
          .plus(isSolid ? ZERO : rest),
        freeCaustic: taken.times(hydroxide).neg(),
        other: isSolid ? rest : ZERO,
      };
    },
    notes: [
      ...(acid === 'lactic' ? [LACTIC_HOLDS_ANHYDRIDES] : []),
      ...(!isSolid && dissolvesTo !== undefined && share.high.gt(dissolvesTo) ? [STRONGER_THAN_DISSOLVES] : []),
    ],
    basis: [],
    given: frozen(isSolid ? { acid, assay: shown } : { acid, strength: shown }),
  };
}
