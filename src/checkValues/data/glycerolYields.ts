import type { CheckFat, CheckSoap } from '../calls.js';
import type { CheckValue } from '../checkValue.js';
import { chemistryChecks } from './chemistry.js';

/** Neutral fats of a handbook, per cent of glycerine that all of it gives. */
const NEUTRAL: readonly (readonly [fat: string, printed: string, called: string])[] = [
  ['tallow', '10.7', 'tallow'],
  ['coconut-oil', '13.9', 'coconut oil'],
  ['olive-oil', '10.3', 'olive oil'],
  ['palm-oil', '11.0', 'palm oil'],
  ['corn-oil', '10.4', 'corn oil'],
];

/** A hundred grams of a fat with more lye than any fat takes, so that grams of glycerol are per cent. */
function splitWhole(fat: CheckFat): CheckSoap {
  return {
    fats: [{ fat, mass: { g: '100' } }],
    lye: [{ alkali: 'naoh', mass: { g: '40' }, solid: { hydroxide: { percent: '100' } } }],
  };
}

/**
 * Glycerol that fats give when all of them is split: pure glycerides, whose printed yields are those that `triglycerideOf` is
 * held to, and neutral fats as they come, inside what the published lots of the fat give.
 */
export function glycerolYieldChecks(): readonly CheckValue[] {
  return [...chemistryChecks.flatMap(ofPureGlyceride), ...NEUTRAL.map(ofNeutralFat)];
}

function ofPureGlyceride(row: CheckValue): readonly CheckValue[] {
  if (row.call !== 'triglycerideOf' || row.result !== 'glycerolYield' || !('expected' in row)) return [];
  const { acid } = row.inputs;
  const fat = {
    profile: { name: `triglyceride of ${acid}`, kind: 'triglyceride', profile: { [acid]: '100' } },
  } as const;
  return [
    {
      ...row,
      id: row.id.replace('yield', 'formed'),
      call: 'soapFromLye',
      inputs: splitWhole(fat),
      result: 'products.glycerol.likely',
      unit: 'g',
    },
  ];
}

function ofNeutralFat([fat, printed, called]: (typeof NEUTRAL)[number]): CheckValue {
  return {
    id: `thomssen-glycerol-of-neutral-${fat}`,
    call: 'soapFromLye',
    inputs: splitWhole(fat),
    result: 'products.glycerol',
    printed,
    expectedInside: printed,
    unit: 'g',
    why: 'the yield of a neutral fat lies among those of all its published lots',
    source: 'thomssen-1922',
    where: `Appendix, glycerine content of common oils: ${called}, neutral`,
    obtained: 'read',
  };
}
