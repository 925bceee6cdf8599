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

/** An audit, of which each finding and each slip must say what it is, where and why. */
export function audited(recipe: unknown, options: object = {}): AuditRecipeResult {
  const result = auditRecipe(recipe, { fats, ...options });
  const said = result.findings.flatMap(({ code, severity, path, explanation, slips }) => [
    code, severity, path, explanation, ...slips.flatMap((slip) => [slip.code, slip.how, ...('path' in slip ? [slip.path] : []), slip.explanation, slip.tell, ...Object.values(slip.words)]),
  ]); // prettier-ignore
  // a word or figure that is not there would stand in a text by such a name
  const isWhole = said.every((one: unknown) => typeof one === 'string' && !/^$|undefined|NaN|Infinity|\[object/.test(one));
  if (!isWhole) throw new Error(`a finding that is not whole: ${said.join(', ')}`);
  return result;
} // prettier-ignore

export function findingIn({ findings }: AuditRecipeResult, code: FindingCode): Finding {
  const found = findings.find((finding) => finding.code === code);
  if (found === undefined) throw new Error(`no ${code} among ${findings.map((one) => one.code).join(', ')}`);
  return found;
}

export const codesOf = ({ findings }: AuditRecipeResult): readonly string[] => findings.map(({ code }) => code);
export const slipsIn = ({ findings }: AuditRecipeResult): readonly Slip[] => findings.flatMap(({ slips }) => slips);

/** A recipe with all that may stand in one. */
export const full = {
  version: 1,
  title: 'All of it',
  fats: [
    { fat: 'coconut-oil', mass: { g: '700' }, claimed: { saponificationValue: { gNaohPerG: '0.183' }, share: { percent: '70' } } },
    { fat: 'Drum', mass: { oz: '10' }, claimed: { saponificationValue: { saponificationEquivalent: '220' } } },
    { fat: 'stearic acid 50', mass: { lb: '0.2' } },
  ],
  lye: [
    { alkali: 'naoh', mass: { g: '200' }, solid: { totalAlkali: { percent: '97' }, carbonate: { low: { percent: 0 }, high: { percent: 3 } } } },
    { alkali: 'koh', mass: { g: '60' }, solution: { hydroxide: { percent: 49 } } },
    { alkali: 'koh', mass: { g: '10' } },
  ],
  water: { g: '300' },
  additions: [{ solvent: 'glycerol', mass: { g: '250' }, assay: { percent: '99.5' } }, { name: 'scent', volume: { mL: 4 } }],
  target: { superfat: { percent: 3 } },
  claimed: { superfat: { percent: '9' }, strength: { percent: 49 }, waterPerAlkali: '2', waterPerFat: { percent: '33' }, kohShare: { percent: '40' }, total: { g: '1474.7' }, ph: '9', freeCausticAlkali: { percentNaoh: '0.05' } },
  temperatures: [{ stage: 'saponification', time: { minutes: 20 }, temperature: { celsius: 64 } }],
}; // prettier-ignore

/** A small pot of which everything is printed that hangs on what it is made of; each audit of it costs more. */
export const whole = {
  version: 1,
  fats: [{ fat: 'Drum', mass: { g: '100' } }],
  lye: [{ alkali: 'naoh', mass: { g: '34' }, solution: { hydroxide: { percent: 50 } } }],
  additions: [
    { solvent: 'ethanol', volume: { mL: '30' }, assay: { percentByVolume: '96' }, claimed: { share: { percent: '9' } } },
    { solvent: 'sorbitol', mass: { g: '20' }, claimed: { share: { percent: '30' } } },
    { name: 'citric acid', mass: { g: '1' } },
  ],
  claimed: { shares: { soap: { percent: '10' }, water: { percent: '80' }, spirit: { percent: '3' }, polyol: { percent: '7' } }, clearingAgentsPerSoap: '2', waterPerSoap: '9', ph: '7', total: { g: '150' } },
  temperatures: [{ stage: 'saponification', temperature: { celsius: '140' } }, { stage: 'pouring', temperature: { fahrenheit: '50' } }],
}; // prettier-ignore
