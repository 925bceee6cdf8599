import { Decimal } from '../../numbers/index.js';
import type { CheckValue } from '../checkValue.js';

/** Pure triglycerides of a manual of 1922: molar masses in whole numbers, and the fatty acid that 100 parts give. */
const YIELDS: readonly (readonly [name: string, triglyceride: string, printed: string])[] = [
  ['stearin', '890', '95.73'],
  ['margarin', '848', '95.52'],
  ['palmitin', '806', '95.28'],
  ['laurin', '638', '94.04'],
  ['caprin', '554', '93.14'],
  ['butyrin', '302', '87.41'],
];

/**
 * Fatty matter of soap made of a pure triglyceride with alkali in excess: what acid sets free of it again is all the acid
 * the fat holds.
 */
export const fattyMatterChecks = (): readonly CheckValue[] =>
  YIELDS.map(([name, molarMass, printed]) => {
    // three acids and glycerol less three waters: 38 in whole numbers, 38.049 here
    const residue = new Decimal('4.9').div(molarMass).toDecimalPlaces(6, Decimal.ROUND_UP);
    return {
      id: `thomssen-fatty-matter-of-${name}`,
      call: 'totalFattyMatterOf',
      inputs: {
        soap: {
          fats: [
            {
              fat: {
                certificate: {
                  name,
                  kind: 'triglyceride',
                  saponificationValue: {
                    saponificationEquivalent: new Decimal(molarMass).div(3).toSignificantDigits(12).toString(),
                  },
                },
              },
              mass: { g: '100' },
            },
          ],
          lye: [{ alkali: 'naoh', mass: { g: '50' }, solid: { hydroxide: { percent: '100' } } }],
        },
        additions: [],
      },
      result: 'mass.likely',
      printed,
      expected: printed,
      unit: 'g',
      tolerance: residue.plus('0.01').toFixed(),
      why: `0.01 one last digit, cut not rounded + ${residue.toFixed()} glyceryl residue 38 for 38.049 in ${molarMass}`,
      source: 'thomssen-1922',
      where: 'Appendix, fatty acids from triglycerides, percent',
      obtained: 'read',
    };
  });
