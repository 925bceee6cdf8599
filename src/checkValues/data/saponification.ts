import type { CheckValue } from '../checkValue.js';

/**
 * Alkali that a fat takes, by mass of hydroxide and by mass of lye.
 */
export const saponificationChecks: readonly CheckValue[] = [
  // Litres of lye for a tonne of fat of known mean molar mass; printed litres times the specific gravity are kilograms
  {
    id: 'thomssen-lye-naoh-670-at-1-1',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 670 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '223.333333333333' },
            },
          },
          mass: { kg: '1000' },
        },
      ],
      alkali: { naoh: { solution: { hydroxide: { percent: '8.68' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.naoh',
    printed: '1875.83',
    times: '1.1',
    expected: '2063.413',
    unit: 'kg',
    tolerance: '0.1603',
    why: '0.0055 half a last digit + 0.1548 M(NaOH) 40 for 39.997',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 1000 kg of fat of mean molar mass 670, lye of specific gravity 1.1, 8.68 % in the lye table of the book',
    obtained: 'read',
  },
  {
    id: 'thomssen-lye-koh-670-at-1-1',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 670 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '223.333333333333' },
            },
          },
          mass: { kg: '1000' },
        },
      ],
      alkali: { koh: { solution: { hydroxide: { percent: '12.0' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.koh',
    printed: '1902.99',
    times: '1.1',
    expected: '2093.289',
    unit: 'kg',
    tolerance: '0.1921',
    why: '0.0055 half a last digit + 0.1866 M(KOH) 56.1 for 56.105',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 1000 kg of fat of mean molar mass 670, lye of specific gravity 1.1, 12.0 % in the lye table of the book',
    obtained: 'read',
  },
  {
    id: 'thomssen-lye-koh-670-at-1-2',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 670 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '223.333333333333' },
            },
          },
          mass: { kg: '1000' },
        },
      ],
      alkali: { koh: { solution: { hydroxide: { percent: '22.5' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.koh',
    printed: '930.35',
    times: '1.2',
    expected: '1116.42',
    unit: 'kg',
    tolerance: '0.1055',
    why: '0.006 half a last digit + 0.0995 M(KOH) 56.1 for 56.105',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 1000 kg of fat of mean molar mass 670, lye of specific gravity 1.2, 22.5 % in the lye table of the book',
    obtained: 'read',
  },
  {
    id: 'thomssen-lye-naoh-860-at-1-1',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 860 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '286.666666666667' },
            },
          },
          mass: { kg: '1000' },
        },
      ],
      alkali: { naoh: { solution: { hydroxide: { percent: '8.68' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.naoh',
    printed: '1461.40',
    times: '1.1',
    expected: '1607.54',
    unit: 'kg',
    tolerance: '0.1261',
    why: '0.0055 half a last digit + 0.1206 M(NaOH) 40 for 39.997',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 1000 kg of fat of mean molar mass 860, lye of specific gravity 1.1, 8.68 % in the lye table of the book',
    obtained: 'read',
  },
  {
    id: 'thomssen-lye-naoh-860-at-1-2',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 860 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '286.666666666667' },
            },
          },
          mass: { kg: '1000' },
        },
      ],
      alkali: { naoh: { solution: { hydroxide: { percent: '17.67' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.naoh',
    printed: '658.05',
    times: '1.2',
    expected: '789.66',
    unit: 'kg',
    tolerance: '0.0653',
    why: '0.006 half a last digit + 0.0593 M(NaOH) 40 for 39.997',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 1000 kg of fat of mean molar mass 860, lye of specific gravity 1.2, 17.67 % in the lye table of the book',
    obtained: 'read',
  },
  {
    id: 'thomssen-lye-koh-860-at-1-2',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 860 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '286.666666666667' },
            },
          },
          mass: { kg: '1000' },
        },
      ],
      alkali: { koh: { solution: { hydroxide: { percent: '22.5' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.koh',
    printed: '724.81',
    times: '1.2',
    expected: '869.772',
    unit: 'kg',
    tolerance: '0.0836',
    why: '0.006 half a last digit + 0.0776 M(KOH) 56.1 for 56.105',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 1000 kg of fat of mean molar mass 860, lye of specific gravity 1.2, 22.5 % in the lye table of the book',
    obtained: 'read',
  },
  {
    id: 'thomssen-lye-naoh-860-five-tonnes',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 860 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '286.666666666667' },
            },
          },
          mass: { kg: '5000' },
        },
      ],
      alkali: { naoh: { solution: { hydroxide: { percent: '17.67' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.naoh',
    printed: '3290.80',
    times: '1.2',
    expected: '3948.36',
    unit: 'kg',
    tolerance: '0.3022',
    why: '0.006 half a last digit + 0.2962 M(NaOH) 40 for 39.997',
    source: 'thomssen-1922',
    where:
      'Appendix, volumes of lye for 5000 kg of fat of mean molar mass 860, lye of specific gravity 1.2, 17.67 % in the lye table of the book',
    obtained: 'read',
    misprint: '3290.80 litres are printed; five times the 658.059 litres of one tonne are 3290.30.',
  },
  // Alkali for the triglyceride and the free acid in one gram of fat
  {
    id: 'exercise-ester-value-tristearin-acid-value-7',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: { profile: { name: 'tristearin', kind: 'triglyceride', profile: { 'C18:0': '100' } } },
          mass: { g: '0.9645' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '182',
    expected: '182',
    unit: 'mg',
    tolerance: '0.8407',
    why: '0.5 half a last digit + 0.3407 M(KOH) 56 for 56.105',
    source: 'school-exercise-vietnam',
    where:
      'grade 12 textbook, lesson 2, exercise 5, solution: acid value 7 is 0.0355 g of stearic acid (284 g/mol), the rest tristearin; ester value',
    obtained: 'read',
  },
  {
    id: 'exercise-saponification-value-tristearin-acid-value-7',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: { profile: { name: 'tristearin', kind: 'triglyceride', profile: { 'C18:0': '100' } } },
          mass: { g: '0.9645' },
        },
        {
          fat: { profile: { name: 'stearic acid', kind: 'free-fatty-acid', profile: { 'C18:0': '100' } } },
          mass: { g: '0.0355' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '189',
    expected: '189',
    unit: 'mg',
    tolerance: '0.8538',
    why: '0.5 half a last digit + 0.3538 M(KOH) 56 for 56.105',
    source: 'school-exercise-vietnam',
    where: 'grade 12 textbook, lesson 2, exercise 5, solution: saponification value of the same fat',
    obtained: 'read',
  },
  {
    id: 'exercise-ester-value-89-per-cent-tristearin',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: { profile: { name: 'tristearin', kind: 'triglyceride', profile: { 'C18:0': '100' } } },
          mass: { g: '0.89' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '168',
    expected: '168',
    unit: 'mg',
    tolerance: '0.8145',
    why: '0.5 half a last digit + 0.3145 M(KOH) 56 for 56.105',
    source: 'school-exercise-vietnam',
    where: 'problem with solution: ester value of a fat with 89 % tristearin',
    obtained: 'read',
  },
  {
    id: 'exercise-saponification-value-89-per-cent-tristearin',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: { profile: { name: 'tristearin', kind: 'triglyceride', profile: { 'C18:0': '100' } } },
          mass: { g: '0.89' },
        },
        {
          fat: { profile: { name: 'stearic acid', kind: 'free-fatty-acid', profile: { 'C18:0': '100' } } },
          mass: { g: '0.0355' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '175',
    expected: '175',
    unit: 'mg',
    tolerance: '0.8276',
    why: '0.5 half a last digit + 0.3276 M(KOH) 56 for 56.105',
    source: 'school-exercise-vietnam',
    where: 'problem with solution: the same fat, acid value 7; saponification value',
    obtained: 'read',
  },
  {
    id: 'exercise-hydroxide-for-1-kg-of-value-200',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: { name: 'fat of value 200', kind: 'triglyceride', saponificationValue: { mgKohPerG: '200' } },
          },
          mass: { kg: '1' },
        },
      ],
    },
    result: 'hydroxide.likely',
    printed: '3.572',
    expected: '3.572',
    unit: 'mol',
    tolerance: '0.0157',
    why: '0.009 half a last digit of 200 + 0.0067 M(KOH) 56 for 56.105',
    source: 'school-exercise-vietnam',
    where: 'problem with solution: 1 kg of fat takes 3.572 L of 1 M KOH; saponification value 200',
    obtained: 'read',
  },
  // Fats of the handbook that the library has no record of: the printed equivalent is the mass that 56.1 g of KOH saponify (p. 118)
  {
    id: 'simmons-oil-40',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'cottonseed stearine, typical',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '285.1' },
            },
          },
          mass: { g: '285.1' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 28, cottonseed stearine, typical',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-50',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, pale seal',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '289' },
            },
          },
          mass: { g: '289' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, pale seal',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-52',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, brown seal',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '291' },
            },
          },
          mass: { g: '291' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, brown seal',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-53',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, whale',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '297' },
            },
          },
          mass: { g: '297' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, whale',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-55',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, Japan fish',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '296' },
            },
          },
          mass: { g: '296' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, Japan fish',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-56',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, Japan fish',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '302' },
            },
          },
          mass: { g: '302' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, Japan fish',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-58',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, pure herring',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '288' },
            },
          },
          mass: { g: '288' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, pure herring',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-59',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'fish and marine animal oil, kipper',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '297' },
            },
          },
          mass: { g: '297' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, fish and marine animal oil, kipper',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-61',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'waste fat, white skin grease',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '287.2' },
            },
          },
          mass: { g: '287.2' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, waste fat, white skin grease',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-62',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'waste fat, pale skin grease',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '286.3' },
            },
          },
          mass: { g: '286.3' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, waste fat, pale skin grease',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-64',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'waste fat, brown bone fat',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '289.1' },
            },
          },
          mass: { g: '289.1' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, waste fat, brown bone fat',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-65',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'waste fat, brown bone fat',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '292' },
            },
          },
          mass: { g: '292' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, waste fat, brown bone fat',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-67',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'waste fat, melted stuff',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '286.3' },
            },
          },
          mass: { g: '286.3' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 30, waste fat, melted stuff',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-70',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: "mowrah-seed oil, authors' analysis",
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '291' },
            },
          },
          mass: { g: '291' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: "chapter III, p. 31, mowrah-seed oil, authors' analysis",
    obtained: 'read',
  },
  {
    id: 'simmons-oil-71',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: "mowrah-seed oil, authors' analysis",
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '291.5' },
            },
          },
          mass: { g: '291.5' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: "chapter III, p. 31, mowrah-seed oil, authors' analysis",
    obtained: 'read',
  },
  {
    id: 'simmons-oil-73',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: "mowrah-seed oil, authors' analysis",
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '292' },
            },
          },
          mass: { g: '292' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: "chapter III, p. 31, mowrah-seed oil, authors' analysis",
    obtained: 'read',
  },
  {
    id: 'simmons-oil-74',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'Chinese vegetable tallow, typical',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '280.2' },
            },
          },
          mass: { g: '280.2' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 32, Chinese vegetable tallow, typical',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-76',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'carapa (andiroba) oil, Deering, Imperial Institute Journ. 1898, 313',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '287' },
            },
          },
          mass: { g: '287' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 32, carapa (andiroba) oil, Deering, Imperial Institute Journ. 1898, 313',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-77-low',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'candlenut oil, De Negri, Chem. Centr. 1898, 493',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '299' },
            },
          },
          mass: { g: '299' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 33, candlenut oil, De Negri, Chem. Centr. 1898, 493 (lower end)',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-77-high',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'candlenut oil, De Negri, Chem. Centr. 1898, 493',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '304.9' },
            },
          },
          mass: { g: '304.9' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 33, candlenut oil, De Negri, Chem. Centr. 1898, 493 (upper end)',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-79',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'candlenut oil, Kassler, Farben-Zeitung 1903, 359',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '296' },
            },
          },
          mass: { g: '296' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 33, candlenut oil, Kassler, Farben-Zeitung 1903, 359',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-80',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'curcas oil, Archbutt, J.S.C.I. 1898, 1010',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '291.4' },
            },
          },
          mass: { g: '291.4' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 33, curcas oil, Archbutt, J.S.C.I. 1898, 1010',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-82',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'curcas oil, Klein, Zeits. angew. Chem. 1898, 1012',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '283.1' },
            },
          },
          mass: { g: '283.1' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 33, curcas oil, Klein, Zeits. angew. Chem. 1898, 1012',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-83',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'kokum (goa) butter, Crossley and Le Sueur, J.S.C.I. 1898, 993',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '300' },
            },
          },
          mass: { g: '300' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 33, kokum (goa) butter, Crossley and Le Sueur, J.S.C.I. 1898, 993',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-88',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'maripa fat, Bassiere, J.S.C.I. 1903, 1137',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '217' },
            },
          },
          mass: { g: '217' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 34, maripa fat, Bassiere, J.S.C.I. 1903, 1137',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-89',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'niam fat, Lewkowitsch, J.S.C.I. 1907, 1266',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '295.1' },
            },
          },
          mass: { g: '295.1' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 34, niam fat, Lewkowitsch, J.S.C.I. 1907, 1266',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-91-low',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'cohune-nut oil, Imperial Institute Bulletin 1903, 25',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '253.9' },
            },
          },
          mass: { g: '253.9' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 35, cohune-nut oil, Imperial Institute Bulletin 1903, 25 (lower end)',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-91-high',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'cohune-nut oil, Imperial Institute Bulletin 1903, 25',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '255.3' },
            },
          },
          mass: { g: '255.3' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 35, cohune-nut oil, Imperial Institute Bulletin 1903, 25 (upper end)',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-92',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'mafura tallow, De Negri and Fabris, Annal. Lab. Chim. Gabelle 1891-2, 271',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '253.8' },
            },
          },
          mass: { g: '253.8' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 35, mafura tallow, De Negri and Fabris, Annal. Lab. Chim. Gabelle 1891-2, 271',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-94',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'pongam oil, extracted in laboratory; Lewkowitsch, Analyst 1903, 342',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '315' },
            },
          },
          mass: { g: '315' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 35, pongam oil, extracted in laboratory; Lewkowitsch, Analyst 1903, 342',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-95',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'pongam oil, Indian specimen; Lewkowitsch, Analyst 1903, 342',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '306' },
            },
          },
          mass: { g: '306' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 35, pongam oil, Indian specimen; Lewkowitsch, Analyst 1903, 342',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-97',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'dika fat (wild mango), Lewkowitsch, Analyst 1905, 395',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '229.4' },
            },
          },
          mass: { g: '229.4' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 36, dika fat (wild mango), Lewkowitsch, Analyst 1905, 395',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-98',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'persimmon-seed oil, Lane, J.S.C.I. 1905, 390',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '298.4' },
            },
          },
          mass: { g: '298.4' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 36, persimmon-seed oil, Lane, J.S.C.I. 1905, 390',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-100',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'wheat-germ oil, Frankforter and Harding, J. Amer. Chem. Soc. 1899, 758',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '297' },
            },
          },
          mass: { g: '297' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 37, wheat-germ oil, Frankforter and Harding, J. Amer. Chem. Soc. 1899, 758',
    obtained: 'read',
  },
  {
    id: 'simmons-oil-101',
    call: 'alkaliDemandOf',
    inputs: {
      charge: [
        {
          fat: {
            certificate: {
              name: 'tangkallah fat, Schroeder, Arch. Pharm. 1905, 635',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '209' },
            },
          },
          mass: { g: '209' },
        },
      ],
    },
    result: 'koh.likely',
    printed: '56.1',
    expected: '56.1',
    unit: 'g',
    tolerance: '0.05',
    why: '0.05 half a last digit',
    source: 'simmons-appleton-1908',
    where: 'chapter III, p. 37, tangkallah fat, Schroeder, Arch. Pharm. 1905, 635',
    obtained: 'read',
  },
];
