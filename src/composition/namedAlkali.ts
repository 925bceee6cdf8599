/** What caustic is called, as words of a name. */
const CAUSTIC = /\b(?:(?:sodium|potassium) hydroxide|caustic (?:soda|potash)|naoh|koh|lye)\b/;

/** Whether something goes by the name of a caustic alkali, which has its place in the lye. */
export const isNamedAlkali = (name: string): boolean => CAUSTIC.test(name.toLowerCase().replaceAll(/[^a-z]+/g, ' '));
