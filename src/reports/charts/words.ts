/** What no picture shows: control characters, halves of characters, and marks that turn the direction of a text. */
const NOT_SHOWN = /[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]/gu;

/** A name of somebody's own as plain text of one line, cut where it is longer than so many characters. */
export function plainText(text: string, longest: number): string {
  const characters = Array.from(text.replaceAll(NOT_SHOWN, ' ').trim());
  return characters.length <= longest ? characters.join('') : `${characters.slice(0, longest - 1).join('')}…`;
}

/** A text in lines of at most so many characters, broken between words. */
export function linesOf(text: string, longest: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const line = lines.pop();
    const longer = line === undefined ? word : `${line} ${word}`;
    if (line === undefined || longer.length <= longest) lines.push(longer);
    else lines.push(line, word);
  }
  return lines;
}
