/**
 * Every published fat as it is given out: low, likely and high of each figure, what is said of it, and its publications.
 * The list is published.txt; whoever changes it reads the difference beside the tables of src/fats/data.
 */
import { fat, fats, type Estimate } from 'laurate';
import type { Decimal } from 'decimal.js';
import { expect, it } from 'vitest';

type Quantity = Readonly<Record<string, Decimal>>;
const figure = (quantity: Quantity): string =>
  Object.values(quantity)
    .map((value) => value.toSignificantDigits(9).toString())
    .join();
const range = ({ low, likely, high }: Estimate<Quantity>): string => [low, likely, high].map(figure).join(' / ');

it('is what is written', async () => {
  const text = fats.map(({ id }) => {
    const { name, kind, from, saponificationValue, acidValue, unsaponifiable, moisture, iodineValue, profile, notes, basis } = fat(id);
    return [
      `${id}: ${name}, ${kind}, from ${from}`,
      `  saponification value, mg KOH/g: ${range(saponificationValue as unknown as Estimate<Quantity>)}`,
      `  acid value, mg KOH/g: ${figure(acidValue as unknown as Quantity)}`,
      `  unsaponifiable, percent: ${range(unsaponifiable as unknown as Estimate<Quantity>)}`,
      `  moisture, percent: ${range(moisture as unknown as Estimate<Quantity>)}`,
      ...(iodineValue === undefined ? [] : [`  iodine value, g I2/100 g: ${range(iodineValue as unknown as Estimate<Quantity>)}`]),
      ...(profile === undefined ? [] : [`  likely profile, percent: ${Object.entries(profile).map(([acid, { likely }]) => `${acid} ${likely.percent.toFixed(3)}`).join(', ')}`]),
      ...(notes.length === 0 ? [] : [`  notes: ${notes.map(({ code }) => code).join(' ')}`]),
      `  basis: ${basis.join(' ')}`,
      '',
    ].join('\n');
  });
  await expect(text.join('\n')).toMatchFileSnapshot('published.txt');
}); // prettier-ignore

it.each(fats)('$id has no field without a value', ({ id }) => {
  expect(Object.entries(fat(id)).filter(([, value]) => value === undefined)).toEqual([]);
});
