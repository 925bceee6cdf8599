/** Recipes of the audit tests: one pot, and what is changed in it. */
import { fatFromCertificate, type Fat } from 'laurate';
import { auditRecipe, type AuditRecipeResult, type Finding, type FindingCode, type Slip } from 'laurate/audit';

const drum = (name: string, low: number, high: number, acid = 0): Fat =>
  fatFromCertificate({
    name,
    kind: 'triglyceride',
    saponificationValue: { low: { mgKohPerG: low }, high: { mgKohPerG: high } },
    acidValue: { mgKohPerG: acid },
  });

/** Own fats: one with a spread, the others certified to one value. */
export const fats = {
  Drum: drum('Drum', 250, 260),
  Lot: drum('Lot', 250, 250),
  Second: drum('Second', 190, 190),
  Sour: drum('Sour', 250, 250, 10),
} as const;

export const naoh = (g: string | number, percent: string | number = 100): object => ({
  alkali: 'naoh',
  mass: { g: String(g) },
  solid: { hydroxide: { percent } },
});

/** A kilogram of `Drum` with so much pure NaOH, and whatever else. */
export const drumWith = (g: string | number, more: object = {}): object => ({
  version: 1,
  fats: [{ fat: 'Drum', mass: { g: '1000' } }],
  lye: [naoh(g)],
  ...more,
});

export const audited = (recipe: unknown, options: object = {}): AuditRecipeResult =>
  auditRecipe(recipe, { fats, ...options });

export function findingIn({ findings }: AuditRecipeResult, code: FindingCode): Finding {
  const found = findings.find((finding) => finding.code === code);
  if (found === undefined) throw new Error(`no ${code} among ${findings.map((one) => one.code).join(', ')}`);
  return found;
}

export const codesOf = ({ findings }: AuditRecipeResult): readonly string[] => findings.map(({ code }) => code);
export const slipsIn = ({ findings }: AuditRecipeResult): readonly Slip[] => findings.flatMap(({ slips }) => slips);
