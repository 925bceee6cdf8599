/** What the prose of a page says and leads to. */

/** A page without its blocks and spans of code: what stands there is no link. */
export const proseOf = (text: string): string =>
  text.replaceAll(/^```[\s\S]*?^```/gm, '').replaceAll(/`[^`\n]*`/g, (code) => code.replaceAll(/[[\]()]/g, ' '));

/** Every link to a file of the project. */
export const linksOf = (text: string): readonly string[] =>
  [...proseOf(text).matchAll(/\]\(([^)\s]+)\)/g)].map(([, link = '']) => link).filter((link) => !/^[a-z]+:/.test(link));
