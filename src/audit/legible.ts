/** Text as it came, without the characters that steer a screen, cut where it is longer than is read in one glance. */
export function legible(text: string, longest = 40): string {
  const plain = text.replaceAll(/\p{C}+/gu, ' ');
  return plain.length > longest ? `${plain.slice(0, longest - 1)}…` : plain;
}
