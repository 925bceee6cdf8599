/**
 * The fatty acids on file, by lipid number: carbons, double bonds, and what sets an acid apart (iso and anteiso: branched;
 * OH: hydroxy; oxo: keto; conj: conjugated double bonds).
 */
// prettier-ignore
export const FATTY_ACIDS = [
  'C4:0', 'C5:0', 'C6:0', 'C8:0', 'C10:0', 'C12:0', 'C14:0', 'C14:0-iso', 'C14:1', 'C15:0', 'C15:0-iso',
  'C15:0-anteiso', 'C16:0', 'C16:0-iso', 'C16:1', 'C16:2', 'C17:0', 'C17:0-iso', 'C17:0-anteiso', 'C17:1', 'C18:0',
  'C18:0-OH', 'C18:0-oxo', 'C18:1', 'C18:1-OH', 'C18:2', 'C18:3', 'C18:3-conj', 'C18:4', 'C20:0', 'C20:1', 'C20:2',
  'C20:3', 'C20:4', 'C20:5', 'C22:0', 'C22:1', 'C22:2', 'C22:4', 'C22:5', 'C22:6', 'C24:0', 'C24:1',
] as const;

/** A fatty acid by lipid number: carbons, double bonds, and what sets it apart. */
export type FattyAcid = (typeof FATTY_ACIDS)[number];
