/**
 * Every tolerance must be the sum of its stated parts, and every part must follow from its cause, worked out here anew:
 * `0.05 half a last digit + 0.1223 whole-number atomic weights of C15H26O6`.
 */
import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { fattyAcidOf, molarMassOf, triglycerideOf, type FattyAcid } from 'laurate';
import { checkValues, type CheckValue } from 'laurate/check-values';

type Figure = Extract<CheckValue, { expected: string }>;
type Bounds = Extract<CheckValue, { expectedBounds: readonly [string, string] }>;
type Cause = (row: Figure, ...found: string[]) => Decimal;

const figures = checkValues().filter((row): row is Figure => 'expected' in row);
const bounds = checkValues().filter((row): row is Bounds => 'expectedBounds' in row);

const lastDigit = (printed: string): Decimal => new Decimal(10).pow(-(printed.split('.')[1]?.length ?? 0));
const fraction = (text: string): Decimal => {
  const [over = '', under = '1'] = text.split('/');
  return new Decimal(over).div(under);
};

const WHOLE = { C: 12, H: 1, O: 16, Na: 23, K: 39 } as const;

function wholeNumberMass(formula: string): Decimal {
  return formula.split('·').reduce((total, part) => {
    const [, times = '', atoms = ''] = /^(\d*)(.*)$/.exec(part) ?? [];
    const mass = [...atoms.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce(
      (sum, [, element = '', count]) => sum + WHOLE[element as keyof typeof WHOLE] * Number(count === '' ? 1 : count),
      0,
    );
    return total.plus(mass * Number(times === '' ? 1 : times));
  }, new Decimal(0));
}

/** What whole-number weights make of the figure of a row: the figure with them, less the figure with ours. */
function wholeNumberShift(row: Figure, formula: string): Decimal {
  const theirs = wholeNumberMass(formula);
  const ours = new Decimal(molarMassOf(formula).molarMass.gPerMol);
  const potash = new Decimal(molarMassOf('KOH').molarMass.gPerMol);
  const glycerol = new Decimal(molarMassOf('C3H8O3').molarMass.gPerMol);
  const residue = glycerol.minus(new Decimal(molarMassOf('H2O').molarMass.gPerMol).times(3));
  const hundred = new Decimal(100);
  switch (row.result) {
    case 'molarMass':
      return theirs.minus(ours);
    case 'acidValue':
      return new Decimal(56100).div(theirs).minus(potash.times(1000).div(ours));
    case 'saponificationValue':
      // The equivalent is a third of the molar mass; the exercise that prints a value takes M(KOH) as 56.
      return row.unit === 'saponificationEquivalent'
        ? theirs.minus(ours).div(3)
        : new Decimal(168000).div(theirs).minus(potash.times(3000).div(ours));
    case 'glycerolYield':
    case 'products.glycerol.likely': // of a hundred grams
      return hundred.times(92).div(theirs).minus(hundred.times(glycerol).div(ours));
    case 'fattyAcidYield':
      return hundred
        .times(theirs.minus(38))
        .div(theirs)
        .minus(hundred.times(ours.minus(residue)).div(ours));
    default:
      throw new Error(`${row.id}: whole-number weights of a ${row.result}`);
  }
}

/** How far the iodine value moves if every printed share of an unsaturated acid is half a last digit off. */
function sharesRounding(row: Figure): Decimal {
  if (row.call !== 'iodineValueFromProfile') throw new Error(`${row.id}: shares in a ${row.call}`);
  const shares = Object.entries(row.inputs.profile) as [FattyAcid, string][];
  const digit = Decimal.min(...shares.map(([, share]) => lastDigit(share)));
  const ofAcid = row.inputs.kind === 'free-fatty-acid' ? fattyAcidOf : triglycerideOf;
  const perPercent = shares.map(([acid]) => new Decimal(ofAcid(acid).iodineValue.gI2Per100g).div(100));
  return perPercent
    .reduce((sum, each) => sum.plus(each), new Decimal(0))
    .times(digit)
    .div(2);
}

/**
 * What whole-number molar masses make of a mass balance: fat and NaOH less glycerol and the water of free acid, where the
 * exercise gives masses of NaOH or grams of fat to the mole.
 */
function balanceShift(row: Figure): Decimal {
  if (row.call !== 'soapFromLye') throw new Error(`${row.id}: a mass balance of a ${row.call}`);
  const { fats } = row.inputs;
  const balance = (naoh: Decimal, glycerol: Decimal, water: Decimal): Decimal =>
    fats.reduce((sum, { fat, mass }) => {
      const { saponificationValue, acidValue, unsaponifiable } = (
        fat as unknown as { certificate: Record<string, Record<string, string> | undefined> }
      ).certificate;
      const grams = new Decimal(Object.values(mass as Record<string, string>)[0] ?? NaN);
      const perEquivalent = saponificationValue?.['saponificationEquivalent'];
      const all =
        perEquivalent === undefined
          ? grams.times(saponificationValue?.['gNaohPerG'] ?? NaN).div(naoh)
          : grams.div(perEquivalent);
      const free = grams.times(acidValue?.['gNaohPerG'] ?? 0).div(naoh);
      const made = all.minus(free).div(3).times(glycerol);
      if (row.result === 'products.glycerol.likely') return sum.plus(made);
      const rest = grams.times(new Decimal(100).minus(unsaponifiable?.['percent'] ?? 0)).div(100);
      return sum.plus(rest).plus(all.times(naoh)).minus(made).minus(free.times(water));
    }, new Decimal(0));
  const ours = (formula: string): Decimal => new Decimal(molarMassOf(formula).molarMass.gPerMol);
  return balance(new Decimal(40), new Decimal(92), new Decimal(18)).minus(
    balance(ours('NaOH'), ours('C3H8O3'), ours('H2O')),
  );
}

const CAUSES: readonly (readonly [RegExp, Cause])[] = [
  [
    /^half a last digit$/,
    (row) =>
      lastDigit(row.printed)
        .div(2)
        .times(row.times ?? 1),
  ],
  [/^one last digit, cut not rounded$/, (row) => lastDigit(row.printed).times(row.times ?? 1)],
  [/^half a last digit of the figure held right$/, (row) => lastDigit(row.expected).div(2)],
  [/^half a last digit of ([\d.]+)$/, (row, input) => lastDigit(input).div(2).div(input).times(row.expected)],
  [/([\d./]+) for ([\d./]+)$/, (row, used, ours) => fraction(used).div(fraction(ours)).minus(1).times(row.expected)],
  [/^whole-number atomic weights of (\S+)$/, wholeNumberShift],
  [/^rounding of the printed shares$/, sharesRounding],
  [/^two tables of the time apart, ([\d.]+) and ([\d.]+)$/, (_, one, other) => new Decimal(one).minus(other)],
  [/^a fifth of one per cent$/, (row) => new Decimal(row.expected).times('0.002')],
  [/^a tenth of one per cent$/, (row) => new Decimal(row.expected).times('0.001')],
  [/^whole-number molar masses in the balance$/, balanceShift],
  [/^exact: masses only$/, () => new Decimal(0)],
  // tests/composition/mixtureTables.test.ts holds the tables to these
  [/^stated error between the rows of glycerol$/, () => new Decimal('0.0002')],
  [/^stated error between the rows of sucrose$/, () => new Decimal('0.0001')],
  [
    /^weighing in air, and stated error between the rows of glycerol$/,
    (row) => new Decimal(row.printed).minus(1).times('0.0012').plus('0.0002'),
  ],
  [
    /^volumes at 60 °F for 20 °C, between which ethanol swells by ([\d.]+) percent$/,
    (row, percent) => new Decimal(row.printed).times(percent).div(100),
  ],
  [
    /^half a last digit of (\d+) figures that add up to 100$/,
    (row, count) => lastDigit(row.printed).div(2).times(count),
  ],
  [
    /([\d./]+) for ([\d./]+) on (\d+) of a hundred parts$/,
    (_, used, ours, parts) => fraction(used).div(fraction(ours)).minus(1).times(parts),
  ],
  [
    /^quotient of ([\d.]+) and ([\d.]+), each within ([\d.]+)$/,
    (_, above, below, each) => new Decimal(above).div(below).plus(1).times(each).div(below),
  ],
  [
    /^glyceryl residue ([\d.]+) for ([\d.]+) in ([\d.]+)$/,
    (_, used, ours, molarMass) => new Decimal(ours).minus(used).times(100).div(molarMass),
  ],
];

/** The same for bounds: a part must hold for the end that it moves most. */
const BOUND_CAUSES: readonly (readonly [RegExp, (row: Bounds, ...found: string[]) => Decimal])[] = [
  [/^half a last digit$/, ({ expectedBounds: [low, high] }) => Decimal.max(lastDigit(low), lastDigit(high)).div(2)],
  [
    // superfat is 100 less the alkali over the demand, so the demand moves what is taken off
    /([\d./]+) for ([\d./]+) in the demand$/,
    ({ expectedBounds }, used, ours) =>
      Decimal.max(...expectedBounds.map((bound) => new Decimal(100).minus(bound).abs())).times(
        fraction(used).div(fraction(ours)).minus(1),
      ),
  ],
  [
    /^([\d.]+) for ([\d.]+) g\/mol$/,
    ({ expectedBounds: [, high] }, used, ours) => fraction(used).div(fraction(ours)).minus(1).times(high),
  ],
  [/^point beyond which a difference is explained$/, () => new Decimal(1)],
];

function partsOf({ why }: Figure | Bounds): { amount: Decimal; cause: string }[] {
  const [account = ''] = why.split('. ');
  return account.split(' + ').map((part) => {
    const [, amount, cause = ''] = /^([\d.]+) (.+)$/.exec(part) ?? [];
    if (amount === undefined) throw new Error(`no tolerance account in: ${why}`);
    return { amount: new Decimal(amount), cause };
  });
}

function expectDeserved<R extends Figure | Bounds>(
  row: R,
  causes: readonly (readonly [RegExp, (row: R, ...found: string[]) => Decimal])[],
): void {
  const parts = partsOf(row);
  const sum = parts.reduce((total, { amount }) => total.plus(amount), new Decimal(0));
  expect(sum.toString()).toBe(new Decimal(row.tolerance).toString());
  for (const { amount, cause } of parts) {
    const [pattern, worked] = causes.find(([each]) => each.test(cause)) ?? [];
    if (pattern === undefined || worked === undefined) throw new Error(`${row.id}: no rule for "${cause}"`);
    const [, ...found] = pattern.exec(cause) ?? [];
    // Parts are rounded up in their own last place, and by no more than that.
    const deserved = worked(row, ...found).abs();
    expect(amount.gte(deserved), `${cause} is more than ${amount.toString()}: ${deserved.toString()}`).toBe(true);
    expect(amount.minus(deserved).lt(lastDigit(amount.toFixed())), `${cause} is only ${deserved.toString()}`).toBe(
      true,
    );
  }
}

describe('tolerances', () => {
  it.each(figures)('$id: $tolerance is $why', (row) => {
    expectDeserved(row, CAUSES);
  });

  it.each(bounds)('$id: $tolerance is $why', (row) => {
    expectDeserved(row, BOUND_CAUSES);
  });

  it('there is one for every figure and all bounds', () => {
    expect(figures.length + bounds.length).toBe(checkValues().filter((row) => 'tolerance' in row).length);
  });
});
