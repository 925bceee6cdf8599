import { Decimal, frozen, noted, readShape, refuse, readWord, type Remark, type Steps } from '../numbers/index.js';
import {
  mapEnds,
  readAmount,
  readMass,
  readPercent,
  readRanged,
  type Amount,
  type AmountInput,
  type Estimate,
  type Fraction,
  type FractionInput,
  type Mass,
  type MassInput,
  type OneChoice,
  type Ranged,
} from '../quantities/index.js';
import { EDITION, type SourceId } from '../sources/index.js';
import { ALKALIS, hydroxideMolarMass, type Alkali } from './alkali.js';
import { CRYSTALLISED_STOCK, DILUTING_WARMS } from './benchCautions.js';
import { alkaliCautions } from './cautions.js';
import { STRENGTH } from './limits.js';
import { mayFreezeInStore } from './mayFreezeInStore.js';

/** How much is wanted: by its hydroxide, by its mass, or by the stock there is. */
export type DilutedAmount = OneChoice<{
  readonly hydroxide: AmountInput;
  readonly lye: MassInput;
  readonly stock: MassInput;
}>;

/** Input of {@link dilutedLye}. */
export interface DilutedLyeInput {
  readonly alkali: Alkali;
  /** The stock lye; true hydroxide, share of it by mass, a value or a range. */
  readonly stock: { readonly strength: Ranged<FractionInput> };
  /** The lye wanted: its strength, and exactly one of its hydroxide, its mass, or the mass of stock to be used. */
  readonly target: { readonly strength: FractionInput } & DilutedAmount;
}

/** An amount wanted, in a result. */
export type GivenDilutedAmount = OneChoice<{ readonly hydroxide: Amount; readonly lye: Mass; readonly stock: Mass }>;

/** Result of {@link dilutedLye}. */
export interface DilutedLyeResult {
  readonly by: 'dilutedLye';
  /** The inputs as read. */
  readonly given: {
    readonly alkali: Alkali;
    readonly stock: { readonly strength: Estimate<Fraction> };
    readonly target: { readonly strength: Fraction } & GivenDilutedAmount;
  };
  /** Stock to weigh. */
  readonly stock: Mass;
  /** Water to weigh. */
  readonly water: Mass;
  /** The lye they make. */
  readonly lye: {
    readonly mass: Mass;
    /** As asked for with the likely stock; low and high with the weakest and strongest the stock may be. */
    readonly strength: Estimate<Fraction>;
  };
  /** Hydroxide in it, with the likely stock. */
  readonly hydroxide: Amount;
  /** Most urgent first. */
  readonly cautions: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

const AMOUNTS = ['hydroxide', 'lye', 'stock'] as const;
const BASIS: readonly SourceId[] = /* @__PURE__ */ frozen<SourceId[]>(['iupac-2021', 'ghs-naoh']);

/**
 * Stock and water to weigh for a weaker lye.
 *
 * Formula: `m(stock) = n·M/w(stock)`, `m(lye) = n·M/w(lye)`, `m(water) = m(lye) − m(stock)`, with n the hydroxide (mol), M
 * its molar mass (g/mol), w strengths by mass (fraction). By mass throughout: volumes of lye and water do not add up.
 * A stock known as a range is weighed by its likely strength.
 *
 * Source: conservation of mass; molar masses from the IUPAC 2021 atomic weights.
 *
 * @param input - the alkali, the stock's strength, and the lye wanted
 * @returns masses in g, hydroxide in mol, the strength with its bounds
 * @throws CalculationError `infeasible` for a target stronger than the stock, `missing`, `bad-shape`, `out-of-range` and the
 * faults of a quantity
 *
 * @example
 * ```ts
 * const { stock, water } = dilutedLye({
 *   alkali: 'naoh',
 *   stock: { strength: { percent: 50 } },
 *   target: { strength: { percent: 33 }, lye: { g: 1000 } },
 * });
 * [stock.g, water.g]; // => ['660', '340']
 * ```
 */
export function dilutedLye(input: DilutedLyeInput): DilutedLyeResult {
  return dilutedLyeSteps(input);
}

/** The kernel, with room for the working. */
export function dilutedLyeSteps(input: DilutedLyeInput, steps?: Steps): DilutedLyeResult {
  const fields = readShape('input', input, ['alkali', 'stock', 'target']);
  const alkali = readWord('alkali', fields['alkali'], ALKALIS);
  const stockStrength = readRanged(
    'stock.strength',
    readShape('stock', fields['stock'], ['strength'])['strength'],
    readStrength,
  );
  const target = readTarget(fields['target']);
  const wanted = target.strength.percent;
  refuseStronger(wanted, stockStrength.likely);

  const share = stockStrength.likely.div(100);
  const pure = noted(steps, 'hydroxide in the lye', 'n·M, or m·w', 'g', pureGrams(target, alkali, share));
  const stock = noted(steps, 'stock', 'm(stock) = n·M/w(stock)', 'g', target.stock?.g ?? pure.div(share));
  const lye = noted(steps, 'lye', 'm(lye) = n·M/w(lye)', 'g', target.lye?.g ?? pure.times(100).div(wanted));
  // a target of the stock's own strength must not come to less than no water by the last digit
  const water = noted(steps, 'water', 'm(lye) − m(stock)', 'g', Decimal.max(lye.minus(stock), 0));
  const mol = noted(steps, 'hydroxide', 'n', 'mol', target.hydroxide?.mol ?? pure.div(hydroxideMolarMass(alkali)));
  return frozen({
    by: 'dilutedLye',
    given: frozen({
      alkali,
      stock: frozen({ strength: mapEnds(stockStrength, (percent) => frozen({ percent })) }),
      target,
    }),
    stock: frozen({ g: stock }),
    water: frozen({ g: water }),
    lye: frozen({
      mass: frozen({ g: lye }),
      strength: mapEnds(stockStrength, (percent) =>
        frozen({ percent: percent.eq(stockStrength.likely) ? wanted : percent.times(stock).div(lye) }),
      ),
    }),
    hydroxide: frozen({ mol }),
    cautions: mayFreezeInStore(alkali, stockStrength.high)
      ? alkaliCautions(DILUTING_WARMS, CRYSTALLISED_STOCK)
      : alkaliCautions(DILUTING_WARMS),
    basis: BASIS,
    edition: EDITION,
  });
}

function readStrength(path: string, value: unknown): Decimal {
  return readPercent(path, value, STRENGTH);
}

function readTarget(value: unknown): DilutedLyeResult['given']['target'] {
  const fields = readShape('target', value, ['strength', ...AMOUNTS]);
  const strength = frozen({ percent: readStrength('target.strength', fields['strength']) });
  const [way, second] = AMOUNTS.filter((amount) => fields[amount] !== undefined);
  if (second !== undefined)
    refuse('bad-shape', 'target', `exactly one of ${AMOUNTS.join(', ')}`, `${String(way)} and ${second}`);
  switch (way) {
    case 'hydroxide':
      return frozen({
        strength,
        hydroxide: frozen({ mol: readAmount('target.hydroxide', fields[way], { above: 0 }) }),
      });
    case 'lye':
      return frozen({ strength, lye: frozen({ g: readMass('target.lye', fields[way], { above: 0 }) }) });
    case 'stock':
      return frozen({ strength, stock: frozen({ g: readMass('target.stock', fields[way], { above: 0 }) }) });
    default:
      return refuse('missing', 'target', `one of ${AMOUNTS.join(', ')}`, 'none of them');
  }
}

/** Grams of pure hydroxide wanted. */
function pureGrams(target: DilutedLyeResult['given']['target'], alkali: Alkali, stockShare: Decimal): Decimal {
  if (target.hydroxide !== undefined) return target.hydroxide.mol.times(hydroxideMolarMass(alkali));
  if (target.lye !== undefined) return target.lye.g.times(target.strength.percent).div(100);
  return target.stock.g.times(stockShare);
}

function refuseStronger(wanted: Decimal, stock: Decimal): void {
  if (wanted.lte(stock.times('1.000000000000000000000001'))) return;
  const most = stock.toDecimalPlaces(2, Decimal.ROUND_DOWN).toString();
  refuse('infeasible', 'target.strength', `at most ${most} percent, the strength of the stock`, wanted.toString());
}
