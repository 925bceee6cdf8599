/** How the examples write figures, in columns. */
import type { AlkaliContent, Estimate, Fraction, Mass } from 'laurate';

export const grams = ({ g }: Mass): string => `${g.toFixed(0)} g`;
export const percent = ({ percent: value }: Fraction): string => `${value.toFixed(1)} %`;
export const content = ({ percentNaoh }: AlkaliContent): string => `${percentNaoh.toFixed(3)} % NaOH`;
export const left = (caustic: AlkaliContent): string =>
  caustic.percentNaoh.isZero() ? 'none on paper' : content(caustic);

/** A label with figures in columns beside it. */
export function row(label: string, ...cells: readonly string[]): string {
  return `  ${label.padEnd(38)}${cells.map((cell) => cell.padStart(15)).join('')}`;
}

/** Lowest, likely and highest in columns. */
export function estimateRow<Q>(
  label: string,
  { low, likely, high }: Estimate<Q>,
  text: (quantity: Q) => string,
): string {
  return row(label, text(low), text(likely), text(high));
}

export const HEADS: string = row('', 'lowest', 'likely', 'highest');
