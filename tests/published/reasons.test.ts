/** What a reason says of a disagreement is tried where it can be: the other way of reckoning gives what is printed. */
import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { fattyAcidOf, iodineValueFromProfile, type FattyAcid, type SoapFromLyeResult } from 'laurate';
import {
  checkValues,
  knownDisagreements,
  outcomeOf,
  type CheckPot,
  type CheckSoap,
  type CheckValue,
} from 'laurate/check-values';
import { resultOf } from '../../src/checkValues/calls.js';

const rows = new Map(checkValues().map((row) => [row.id, row]));
function rowOf(id: string): CheckValue {
  const row = rows.get(id);
  if (row === undefined) throw new Error(id);
  return row;
}
const saidOf = (words: string): readonly string[] =>
  Object.keys(knownDisagreements).filter((id) => knownDisagreements[id]?.includes(words) === true);

describe('acid added last', () => {
  const ids = saidOf('stearic acid added last');
  const made = (inputs: CheckSoap): SoapFromLyeResult => resultOf('soapFromLye', inputs) as SoapFromLyeResult;
  const grams = ({ products }: SoapFromLyeResult, ...of: (keyof SoapFromLyeResult['products'])[]): Decimal =>
    of.reduce((sum, product) => sum.plus(products[product].likely.g.toString()), new Decimal(0));

  /** The fats with all of the lye, then the acid with what caustic they left. */
  function inTwoPots({ soap }: CheckPot): readonly [SoapFromLyeResult, SoapFromLyeResult] {
    const isAcid = ({ fat }: CheckSoap['fats'][number]): boolean =>
      typeof fat !== 'string' && fat.certificate?.kind === 'free-fatty-acid';
    const first = made({ ...soap, fats: soap.fats.filter((one) => !isAcid(one)) });
    const left = (['naoh', 'koh'] as const).map((alkali) => ({
      alkali,
      mass: first.products[alkali === 'naoh' ? 'freeNaoh' : 'freeKoh'].likely,
      solid: { hydroxide: { percent: 100 } },
    }));
    return [first, made({ fats: soap.fats.filter(isAcid), lye: left })];
  }

  it('is said of seven figures of two soaps', () => {
    expect(ids).toHaveLength(14);
  });

  it.each(ids)('%s: as printed, where the acid meets only what the fats leave', (id) => {
    const row = rowOf(id);
    if ((row.call !== 'compositionFrom' && row.call !== 'ratiosOf') || !('expected' in row)) throw new Error(id);
    const [first, second] = inTwoPots(row.inputs);
    const added = row.inputs.additions.reduce(
      (sum, { mass }) => sum.plus(new Decimal((mass as { lb: string }).lb).times('453.59237')),
      new Decimal(0),
    );
    const both = (...of: (keyof SoapFromLyeResult['products'])[]): Decimal =>
      grams(first, ...of).plus(grams(second, ...of));
    const [soap, water] = [both('soapSodium', 'soapPotassium'), both('water')];
    const glycerol = both('glycerol').plus(added);
    const batch = new Decimal(first.charge.g.toString())
      .plus(added)
      .plus(second.given.fats[0]?.mass.g.toString() ?? NaN);
    const figures: Readonly<Record<string, Decimal>> = {
      'finished-soap': soap.div(batch).times(100),
      'finished-water': water.div(batch).times(100),
      'finished-glycerol': glycerol.div(batch).times(100),
      'finished-free-acid': grams(second, 'freeAcid').div(batch).times(100),
      'clearing-agents-to-soap': glycerol.div(soap),
      'water-to-soap': water.div(soap),
      'polyol-to-water': glycerol.div(water),
    };
    const [figure, value] = Object.entries(figures).find(([name]) => id.endsWith(name)) ?? [];
    expect(value?.minus(row.expected).abs().lte(row.tolerance), `${String(figure)}: ${String(value)}`).toBe(true);
  });
});

describe('corn oil without a range on file', () => {
  it.each(saidOf('No range is on file here'))('%s: as worked out apart, with 187 to 195', (id) => {
    const [row, withRange] = [rowOf(id), rowOf(id.replace('-published-lots', ''))];
    if (!('expectedBounds' in row) || !('expectedBounds' in withRange)) throw new Error(id);
    expect(withRange.expectedBounds).toEqual(row.expectedBounds);
    expect(withRange.inputs).toMatchObject({
      fats: [
        { fat: { certificate: { saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '195' } } } } },
      ],
    });
    expect(outcomeOf(withRange).met).toBe(true);
  });
});

describe('the greatest iodine value of babassu oil', () => {
  const of = (saturated: Readonly<Partial<Record<FattyAcid, string>>>): string =>
    iodineValueFromProfile({ kind: 'triglyceride', profile: { ...saturated, 'C18:1': '20', 'C18:2': '6.6' } })
      .iodineValue.likely.gI2Per100g.toFixed(2); // prettier-ignore

  it('is that printed with the lightest saturated acids that fit, and ours with the heaviest', () => {
    const lightest = { 'C8:0': '7.3', 'C10:0': '7.6', 'C12:0': '40.5', 'C14:0': '11', 'C16:0': '5.2', 'C18:0': '1.8' };
    const heaviest = { 'C8:0': '2.6', 'C10:0': '1.2', 'C12:0': '40', 'C14:0': '11.2', 'C16:0': '11', 'C18:0': '7.4' };
    expect([of(lightest), of(heaviest)]).toEqual(['28.25', '28.34']);
  });

  it('and an oil that was analysed lies inside the range of its saponification value', () => {
    const { met, got, expected } = outcomeOf(rowOf('usda-04534-saponification-value'));
    expect([met, new Decimal(got).toFixed(1), expected]).toEqual([true, '250.6', '245 to 256']);
  });
});

describe('coefficients of the iodine value of acids', () => {
  const IODINE = '253.81';
  const printed = (acid: FattyAcid): string =>
    rowOf(`aocs-iodine-coefficient-free-acid-${acid.toLowerCase().replace(':', '-')}`).printed;
  const massOf = (acid: FattyAcid): Decimal => new Decimal(fattyAcidOf(acid).molarMass.gPerMol.toString());

  it.each<[FattyAcid, string]>([
    ['C16:1', '254.41'],
    ['C18:1', '282.46'],
    ['C18:2', '280.45'],
    ['C18:3', '278.43'],
    ['C22:1', '338.57'],
  ])('%s: as printed of 253.81 and %s', (acid, cut) => {
    expect(massOf(acid).toDecimalPlaces(2, Decimal.ROUND_DOWN).toString()).toBe(cut);
    const places = printed(acid).split('.')[1]?.length ?? 0;
    expect(
      new Decimal(IODINE)
        .times(acid.at(-1) ?? '')
        .div(cut)
        .toFixed(places),
    ).toBe(printed(acid));
  });

  it('C20:1: a digit above, and beside C16:1 no weights of carbon and hydrogen give it', () => {
    expect(new Decimal(IODINE).div('310.52').toFixed(4)).toBe('0.8174');
    expect(printed('C20:1')).toBe('0.8175');
    // M(C20:1) over M(C16:1) is at most what the ends of the two printed figures give; four CH2 lie between
    const most = new Decimal('0.99765').div('0.81745').minus(1).times(massOf('C16:1')).div(4);
    expect(most.toFixed(3)).toBe('14.021');
    expect(massOf('C20:1').minus(massOf('C16:1')).div(4).toFixed(3)).toBe('14.027');
  });
});
