/** A name as it came, cut where it is longer than any that is read in one glance. */
export function shortened(text: string, longest = 40): string {
  return text.length > longest ? `${text.slice(0, longest - 1)}…` : text;
}
