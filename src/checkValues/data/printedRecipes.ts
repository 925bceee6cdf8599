import type { CheckValue } from '../checkValue.js';

/**
 * Printed recipes: the superfat that their alkali implies, from the least to the greatest over the lots of their fats, as it
 * was worked out apart from the library.
 */
export const printedRecipeChecks: readonly CheckValue[] = [
  // By the lots that the reckoning states
  {
    id: 'recipe-thomssen-laundry-rosin-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '100' },
        },
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: { low: { mgKohPerG: '160' }, high: { mgKohPerG: '185' } },
            },
          },
          mass: { lb: '60' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '80' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-17.4 to -4.1',
    expectedBounds: ['-17.4', '-4.1'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Semi-boiled laundry soaps, formula I, semi-boiled rosin laundry soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-laundry-rosin-2',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '100' },
        },
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: { low: { mgKohPerG: '160' }, high: { mgKohPerG: '185' } },
            },
          },
          mass: { lb: '60' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '85' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-24.8 to -10.6',
    expectedBounds: ['-24.8', '-10.6'],
    unit: 'percent',
    tolerance: '0.0523',
    why: '0.05 half a last digit + 0.0023 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Semi-boiled laundry soaps, formula II, semi-boiled rosin laundry soap II, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-laundry-rosin-2-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '100' },
        },
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: { low: { mgKohPerG: '160' }, high: { mgKohPerG: '185' } },
            },
          },
          mass: { lb: '60' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '80' },
          solution: { hydroxide: { low: { percent: '28.97598125' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-17.4 to -3.9',
    expectedBounds: ['-17.4', '-3.9'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Semi-boiled laundry soaps, formula II, semi-boiled rosin laundry soap II, silicated; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '1200' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '850' },
          solution: { hydroxide: { low: { percent: '27.9651' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-50.8 to -37.6',
    expectedBounds: ['-50.8', '-37.6'],
    unit: 'percent',
    tolerance: '0.0527',
    why: '0.05 half a last digit + 0.0027 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula I, cold chip soap I, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-1-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '1200' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '694.276795' },
          solution: { hydroxide: { low: { percent: '27.771106767078' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-23.1 to -11.6',
    expectedBounds: ['-23.1', '-11.6'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula I, cold chip soap I, silicated; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-2',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '475' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '100' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '325' },
          solution: { hydroxide: { low: { percent: '30.2834' }, high: { percent: '31.22' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '56' },
          solution: { hydroxide: { low: { percent: '33.853' }, high: { percent: '34.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-40.7 to -28.2',
    expectedBounds: ['-40.7', '-28.2'],
    unit: 'percent',
    tolerance: '0.0526',
    why: '0.05 half a last digit + 0.0026 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula II, cold chip soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-4',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '450' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '255' },
          solution: { hydroxide: { low: { percent: '30.88965' }, high: { percent: '31.845' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '50' },
          solution: { hydroxide: { low: { percent: '34.338' }, high: { percent: '35.4' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-53.9 to -40.4',
    expectedBounds: ['-53.9', '-40.4'],
    unit: 'percent',
    tolerance: '0.0528',
    why: '0.05 half a last digit + 0.0028 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula IV, cold chip soap IV, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-4-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '450' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '170.412153' },
          solution: { hydroxide: { low: { percent: '30.415440865212' }, high: { percent: '31.845' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '50' },
          solution: { hydroxide: { low: { percent: '34.338' }, high: { percent: '35.4' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-9.7 to 1.1',
    expectedBounds: ['-9.7', '1.1'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula IV, cold chip soap IV, silicated; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-5',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '450' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '470' },
          solution: { hydroxide: { low: { percent: '27.9651' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-122.3 to -102.8',
    expectedBounds: ['-122.3', '-102.8'],
    unit: 'percent',
    tolerance: '0.0540',
    why: '0.05 half a last digit + 0.0040 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula V, cold chip soap V, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-5-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '450' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '335.039889' },
          solution: { hydroxide: { low: { percent: '27.616702678259' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-58.5 to -42.8',
    expectedBounds: ['-58.5', '-42.8'],
    unit: 'percent',
    tolerance: '0.0529',
    why: '0.05 half a last digit + 0.0029 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula V, cold chip soap V, silicated; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-powder-fa-2',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil fatty acids',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '258' }, high: { mgKohPerG: '277' } },
            },
          },
          mass: { lb: '25' },
        },
        {
          fat: {
            certificate: {
              name: 'red oil (commercial oleic acid)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { lb: '25' },
        },
        {
          fat: {
            certificate: {
              name: 'bone fat',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '200' } },
            },
          },
          mass: { lb: '70' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '90' },
          solution: { hydroxide: { low: { percent: '22.9599' }, high: { percent: '23.67' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-23.0 to -11.5',
    expectedBounds: ['-23.0', '-11.5'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Soap powders, more expensive powders II, soap powder base from fatty acids II (20 % fat); lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-powder-fa-3',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil fatty acids',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '258' }, high: { mgKohPerG: '277' } },
            },
          },
          mass: { lb: '20' },
        },
        {
          fat: {
            certificate: {
              name: 'red oil (commercial oleic acid)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { lb: '10' },
        },
        {
          fat: {
            certificate: {
              name: 'bone fat',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '200' } },
            },
          },
          mass: { lb: '20' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '30' },
          solution: { hydroxide: { low: { percent: '22.9599' }, high: { percent: '23.67' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '7.8 to 16.5',
    expectedBounds: ['7.8', '16.5'],
    unit: 'percent',
    tolerance: '0.0517',
    why: '0.05 half a last digit + 0.0017 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Soap powders, more expensive powders III, soap powder base from fatty acids III (10 % fat); lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-2',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { g: '2030' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '674' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1523' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-18.3 to -7.6',
    expectedBounds: ['-18.3', '-7.6'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula II, cold castile soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-2-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { g: '2030' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '674' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1506.6' },
          solution: { hydroxide: { low: { percent: '29.022325965751' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-17.0 to -6.4',
    expectedBounds: ['-17.0', '-6.4'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula II, cold castile soap II; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-3',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'palm kernel oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '230' }, high: { mgKohPerG: '254' } },
            },
          },
          mass: { g: '1578' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { g: '940' },
        },
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { g: '7' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1507' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-16.6 to -3.7',
    expectedBounds: ['-16.6', '-3.7'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula III, cold castile-type soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-3-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'palm kernel oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '230' }, high: { mgKohPerG: '254' } },
            },
          },
          mass: { g: '1578' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { g: '940' },
        },
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { g: '7' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1469' },
          solution: { hydroxide: { low: { percent: '29.008873179033' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-13.6 to -1.0',
    expectedBounds: ['-13.6', '-1.0'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula III, cold castile-type soap III; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-5',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { g: '90' },
        },
        {
          fat: {
            certificate: {
              name: 'laurics (coconut or palm kernel)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '230' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '10' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '51' },
          solution: { hydroxide: { low: { percent: '30.2834' }, high: { percent: '31.22' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-18.4 to -6.8',
    expectedBounds: ['-18.4', '-6.8'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula V, cold castile soap V; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-typical',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '193.5' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '169.5' },
        },
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '176' }, high: { mgKohPerG: '187' } },
            },
          },
          mass: { lb: '89.5' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '256' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-13.7 to -3.5',
    expectedBounds: ['-13.7', '-3.5'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, detailed charge, transparent soap, cold/semi-boiled, detailed formula; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-2',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '211' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '185' },
        },
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '176' }, high: { mgKohPerG: '187' } },
            },
          },
          mass: { lb: '97.5' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '279' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-23.2 to -12.2',
    expectedBounds: ['-23.2', '-12.2'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, formula II, transparent soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-3',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '176' }, high: { mgKohPerG: '187' } },
            },
          },
          mass: { lb: '60' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '195' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '120' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '205.5' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-14.5 to -4.2',
    expectedBounds: ['-14.5', '-4.2'],
    unit: 'percent',
    tolerance: '0.0521',
    why: '0.05 half a last digit + 0.0021 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, formula III, transparent soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-5',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '174' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '114' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '170' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-26.2 to -14.9',
    expectedBounds: ['-26.2', '-14.9'],
    unit: 'percent',
    tolerance: '0.0523',
    why: '0.05 half a last digit + 0.0023 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, formula V, transparent soap V; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-shaving-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '360' },
        },
        {
          fat: {
            certificate: {
              name: 'stearic acid (commercial)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '195' }, high: { mgKohPerG: '212' } },
            },
          },
          mass: { lb: '40' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '147' },
          solution: { hydroxide: { low: { percent: '35.1625' }, high: { percent: '36.25' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '87' },
          solution: { hydroxide: { low: { percent: '30.846' }, high: { percent: '31.8' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-34.4 to -22.3',
    expectedBounds: ['-34.4', '-22.3'],
    unit: 'percent',
    tolerance: '0.0524',
    why: '0.05 half a last digit + 0.0024 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving soaps, formula I, shaving stick soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-shaving-3',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '400' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '176' },
        },
        {
          fat: {
            certificate: {
              name: 'stearic acid (commercial)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '195' }, high: { mgKohPerG: '212' } },
            },
          },
          mass: { lb: '415' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '182' },
          solution: { hydroxide: { low: { percent: '33.9112' }, high: { percent: '34.96' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '108' },
          solution: { hydroxide: { low: { percent: '34.823' }, high: { percent: '35.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '36.2 to 42.4',
    expectedBounds: ['36.2', '42.4'],
    unit: 'percent',
    tolerance: '0.0512',
    why: '0.05 half a last digit + 0.0012 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving soaps, formula III, shaving stick soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cream-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '26' },
        },
        {
          fat: {
            certificate: {
              name: 'stearic acid (commercial)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '195' }, high: { mgKohPerG: '212' } },
            },
          },
          mass: { lb: '165' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '69' },
          solution: { hydroxide: { low: { percent: '47.918' }, high: { percent: '49.4' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '11.7 to 21.0',
    expectedBounds: ['11.7', '21.0'],
    unit: 'percent',
    tolerance: '0.0516',
    why: '0.05 half a last digit + 0.0016 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving cream, formula I, shaving cream I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cream-3-base',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '18' },
        },
        {
          fat: {
            certificate: {
              name: 'stearic acid (commercial)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '195' }, high: { mgKohPerG: '212' } },
            },
          },
          mass: { lb: '73' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '54' },
          solution: { hydroxide: { low: { percent: '35.793' }, high: { percent: '36.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-6.6 to 4.5',
    expectedBounds: ['-6.6', '4.5'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving cream, formula III, first part, shaving cream III, soap part; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-pumice-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'laurics (coconut or palm kernel)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '230' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '705' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '378' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-6.2 to 10.6',
    expectedBounds: ['-6.2', '10.6'],
    unit: 'percent',
    tolerance: '0.0519',
    why: '0.05 half a last digit + 0.0019 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Pumice or sand soaps, formula I, pumice soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-liquid-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '130' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '135' },
          solution: { hydroxide: { low: { percent: '25.317' }, high: { percent: '26.1' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-9.3 to 0.8',
    expectedBounds: ['-9.3', '0.8'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Liquid soaps, formula I, liquid soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-liquid-2',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'corn oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '195' } },
            },
          },
          mass: { lb: '130' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '135' },
          solution: { hydroxide: { low: { percent: '23.474' }, high: { percent: '24.2' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-34.4 to -25.0',
    expectedBounds: ['-34.4', '-25.0'],
    unit: 'percent',
    tolerance: '0.0524',
    why: '0.05 half a last digit + 0.0024 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Liquid soaps, formula II, liquid soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-hardened-shaving',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'hardened oil (hydrogenated fish oil)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '185' }, high: { mgKohPerG: '195' } },
            },
          },
          mass: { lb: '50' },
        },
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '10' },
        },
        {
          fat: {
            certificate: {
              name: 'lard',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '192' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { lb: '10' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '20' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '21' },
          solution: { hydroxide: { low: { percent: '33.853' }, high: { percent: '34.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-20.4 to -10.5',
    expectedBounds: ['-20.4', '-10.5'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Use of hardened oils, cold shaving soap from hardened oil; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-wool-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'palm oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '209' } },
            },
          },
          mass: { lb: '200' },
        },
        {
          fat: {
            certificate: {
              name: 'grease (bone/house)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '460' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '357' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-20.9 to -7.9',
    expectedBounds: ['-20.9', '-7.9'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Scouring and fulling soaps, formula I, wool scouring soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-wool-3',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'grease (bone/house)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '185' },
        },
        {
          fat: {
            certificate: {
              name: 'palm oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '209' } },
            },
          },
          mass: { lb: '309' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '309' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-39.0 to -23.4',
    expectedBounds: ['-39.0', '-23.4'],
    unit: 'percent',
    tolerance: '0.0525',
    why: '0.05 half a last digit + 0.0025 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Scouring and fulling soaps, formula III, wool scouring soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-wool-3-less-silicate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'grease (bone/house)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '185' },
        },
        {
          fat: {
            certificate: {
              name: 'palm oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '209' } },
            },
          },
          mass: { lb: '309' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '297' },
          solution: { hydroxide: { low: { percent: '28.995821212121' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-33.6 to -18.5',
    expectedBounds: ['-33.6', '-18.5'],
    unit: 'percent',
    tolerance: '0.0524',
    why: '0.05 half a last digit + 0.0024 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Scouring and fulling soaps, formula III, wool scouring soap III; lye by the table of the book, its alkali 97 to 100 % caustic; less what 20 lb of lye of 36 degrees Baumé hold to 100 lb of silicate, the allowance of the book, all of it caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-wool-thrower-run',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil foots',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '200' } },
            },
          },
          mass: { g: '12' },
        },
        {
          fat: {
            certificate: {
              name: 'corn oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '195' } },
            },
          },
          mass: { g: '46' },
        },
        {
          fat: {
            certificate: {
              name: 'grease (bone/house)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { g: '20' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '3' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
        {
          alkali: 'koh',
          mass: { g: '23' },
          solid: { hydroxide: { low: { percent: '85' }, high: { percent: '100' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-66.7 to -34.8',
    expectedBounds: ['-66.7', '-34.8'],
    unit: 'percent',
    tolerance: '0.0530',
    why: '0.05 half a last digit + 0.0030 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Wool thrower’s soap, wool thrower’s soft soap; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-textile-soft',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'red oil (commercial oleic acid)',
              kind: 'free-fatty-acid',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { g: '80' },
        },
        {
          fat: {
            certificate: {
              name: 'grease (bone/house)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { g: '20' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '3' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
        {
          alkali: 'koh',
          mass: { g: '23.25' },
          solid: { hydroxide: { low: { percent: '85' }, high: { percent: '100' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-29.4 to -3.5',
    expectedBounds: ['-29.4', '-3.5'],
    unit: 'percent',
    tolerance: '0.0524',
    why: '0.05 half a last digit + 0.0024 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. III, Soft soaps, textile formula, textile soft soap; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-auto-soap-1',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'corn oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '195' } },
            },
          },
          mass: { g: '1000' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { g: '697' },
          solution: { hydroxide: { low: { percent: '28.4695' }, high: { percent: '29.35' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-9.4 to -1.8',
    expectedBounds: ['-9.4', '-1.8'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. III, automobile soap, automobile soft soap; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cold-coconut',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '846' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '470' },
          solution: { hydroxide: { low: { percent: '27.9651' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '9.4 to 17.8',
    expectedBounds: ['9.4', '17.8'],
    unit: 'percent',
    tolerance: '0.0517',
    why: '0.05 half a last digit + 0.0017 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. III, Cold process example, cold process coconut soap; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cold-corn-rosin',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'corn oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '187' }, high: { mgKohPerG: '195' } },
            },
          },
          mass: { g: '800' },
        },
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: { low: { mgKohPerG: '160' }, high: { mgKohPerG: '185' } },
            },
          },
          mass: { g: '200' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { g: '790' },
          solution: { hydroxide: { low: { percent: '24.347' }, high: { percent: '25.1' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-9.2 to 0.3',
    expectedBounds: ['-9.2', '0.3'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. III, Cold process, potash formula, cold potash soap, corn oil and rosin; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-rule-coconut-38',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '50' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '8.2 to 16.6',
    expectedBounds: ['8.2', '16.6'],
    unit: 'percent',
    tolerance: '0.0517',
    why: '0.05 half a last digit + 0.0017 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made toilet soaps, rule: cold toilet soap, coconut with half its weight of lye; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-alcohol',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '56' },
          solution: { hydroxide: { low: { percent: '31.9421' }, high: { percent: '32.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-5.5 to 4.1',
    expectedBounds: ['-5.5', '4.1'],
    unit: 'percent',
    tolerance: '0.0519',
    why: '0.05 half a last digit + 0.0019 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'ch. V, Transparent soap, small batch, transparent glycerine soap, small batch; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-castor-glycerine',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '176' }, high: { mgKohPerG: '187' } },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '83' },
          solution: { hydroxide: { low: { percent: '31.9421' }, high: { percent: '32.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-11.5 to -1.5',
    expectedBounds: ['-11.5', '-1.5'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'ch. V, Transparent soap with castor oil, transparent soap with castor oil, glycerine and sugar; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-rosin-caustic',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: { low: { mgKohPerG: '160' }, high: { mgKohPerG: '185' } },
            },
          },
          mass: { lb: '2240' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '4144' },
          solution: { hydroxide: { low: { percent: '7.48355' }, high: { percent: '7.715' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-25.1 to -5.0',
    expectedBounds: ['-25.1', '-5.0'],
    unit: 'percent',
    tolerance: '0.0523',
    why: '0.05 half a last digit + 0.0023 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'ch. IV, Rosin, sodium resinate with caustic soda; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-piesse-transparent-soft',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { lb: '1' },
        },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '6' },
          solution: { hydroxide: { low: { percent: '5.256' }, high: { percent: '6.424' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-109.5 to -60.9',
    expectedBounds: ['-109.5', '-60.9'],
    unit: 'percent',
    tolerance: '0.0538',
    why: '0.05 half a last digit + 0.0038 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'perfumery-1857',
    where: 'Transparent soft soap, transparent soft soap',
    obtained: 'derived',
  },
  {
    id: 'recipe-suffrage-economical',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'mutton or mixed drippings',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { lb: '6' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '0.75' },
          solid: { hydroxide: { low: { percent: '90' }, high: { percent: '109' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-0.6 to 22.3',
    expectedBounds: ['-0.6', '22.3'],
    unit: 'percent',
    tolerance: '0.0518',
    why: '0.05 half a last digit + 0.0018 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'suffrage-cook-book-1915',
    where: 'Economical Soap, p. 244, economical soap without boiling',
    obtained: 'derived',
  },
  {
    id: 'recipe-mountain-6lb',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'kitchen fat (lard/tallow)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { lb: '6' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '0.8125' },
          solid: { hydroxide: { low: { percent: '88' }, high: { percent: '100' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '0.0 to 17.7',
    expectedBounds: ['0.0', '17.7'],
    unit: 'percent',
    tolerance: '0.0518',
    why: '0.05 half a last digit + 0.0018 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'mountain-recipes-1966',
    where: 'Home Made Soap, home made lye soap, 6 lb fat',
    obtained: 'derived',
  },
  {
    id: 'recipe-brief-brief-basic',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat or oil (unspecified)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '209' } },
            },
          },
          mass: { kg: '2.75' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { kg: '0.37' },
          solid: { hydroxide: { low: { percent: '95' }, high: { percent: '100' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-2.6 to 14.2',
    expectedBounds: ['-2.6', '14.2'],
    unit: 'percent',
    tolerance: '0.0519',
    why: '0.05 half a last digit + 0.0019 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'technical-brief-8',
    where: 'basic recipe, basic village soap, 4 kg',
    obtained: 'derived',
  },
  {
    id: 'recipe-brief-brief-blend',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'laurics (coconut or palm kernel)',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '230' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '24' },
        },
        {
          fat: {
            certificate: {
              name: 'soft vegetable oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '198' } },
            },
          },
          mass: { g: '24' },
        },
        {
          fat: {
            certificate: {
              name: 'hard fat',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '209' } },
            },
          },
          mass: { g: '38' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '12' },
          solid: { hydroxide: { low: { percent: '95' }, high: { percent: '100' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '1.9 to 16.1',
    expectedBounds: ['1.9', '16.1'],
    unit: 'percent',
    tolerance: '0.0518',
    why: '0.05 half a last digit + 0.0018 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'technical-brief-8',
    where: 'example blend, suitable blend by parts',
    obtained: 'derived',
  },
  {
    id: 'recipe-brief-brief-ratio-liquid',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'soft vegetable oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '198' } },
            },
          },
          mass: { g: '8' },
        },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1' },
          solid: { hydroxide: { low: { percent: '95' }, high: { percent: '100' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '4.7 to 15.9',
    expectedBounds: ['4.7', '15.9'],
    unit: 'percent',
    tolerance: '0.0517',
    why: '0.05 half a last digit + 0.0017 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'technical-brief-8',
    where: 'table, category B, ratio rule: liquid oils 1:8',
    obtained: 'derived',
  },
  {
    id: 'recipe-school-lard-10g',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'lard',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '192' }, high: { mgKohPerG: '203' } },
            },
          },
          mass: { g: '10' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '3.6' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'superfat',
    printed: '-163.0 to -148.8',
    expectedBounds: ['-163.0', '-148.8'],
    unit: 'percent',
    tolerance: '0.0547',
    why: '0.05 half a last digit + 0.0047 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'school-procedure-lard',
    where: 'how to do, preparation: 10 g lard, 6 N NaOH, ethanol',
    obtained: 'derived',
  },
  {
    id: 'recipe-school-olive-50ml',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '184' }, high: { mgKohPerG: '196' } },
            },
          },
          mass: { g: '45' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '10.8' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'superfat',
    printed: '-83.0 to -71.8',
    expectedBounds: ['-83.0', '-71.8'],
    unit: 'percent',
    tolerance: '0.0533',
    why: '0.05 half a last digit + 0.0033 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'school-exercise-cameroon',
    where: 'exercise I, school preparation: olive oil, ethanol, 9 mol/L NaOH',
    obtained: 'derived',
  },
  {
    id: 'recipe-patent-transparent-claim',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'stearic acid',
              kind: 'free-fatty-acid',
              saponificationValue: { saponificationEquivalent: '284.48' },
            },
          },
          mass: { g: '5.32' },
        },
        {
          fat: {
            certificate: {
              name: 'palmitic acid',
              kind: 'free-fatty-acid',
              saponificationValue: { saponificationEquivalent: '256.42' },
            },
          },
          mass: { g: '5.13' },
        },
        {
          fat: {
            certificate: {
              name: 'myristic acid',
              kind: 'free-fatty-acid',
              saponificationValue: { saponificationEquivalent: '228.37' },
            },
          },
          mass: { g: '2.95' },
        },
        {
          fat: {
            certificate: {
              name: 'oleic acid (pure)',
              kind: 'free-fatty-acid',
              saponificationValue: { saponificationEquivalent: '282.46' },
            },
          },
          mass: { g: '2.84' },
        },
        {
          fat: {
            certificate: {
              name: 'lauric acid',
              kind: 'free-fatty-acid',
              saponificationValue: { saponificationEquivalent: '200.32' },
            },
          },
          mass: { g: '2.76' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '7.65' }, solution: { hydroxide: { percent: '50' } } }],
    },
    result: 'superfat',
    printed: '-26.7 to -26.7',
    expectedBounds: ['-26.7', '-26.7'],
    unit: 'percent',
    tolerance: '0.0523',
    why: '0.05 half a last digit + 0.0023 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'clear-soap-patent-1995',
    where: 'claim 1, transparent bar, patent claim 1 (percent of formula)',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-cold-coconut',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '50' }, solution: { hydroxide: { percent: '32.64' } } }],
    },
    result: 'superfat',
    printed: '7.7 to 13.6',
    expectedBounds: ['7.7', '13.6'],
    unit: 'percent',
    tolerance: '0.0517',
    why: '0.05 half a last digit + 0.0017 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 47, cold process, coconut oil and half its weight of lye of 71.4 degrees Twaddell; lye by Appendix C; values recalled',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-cold-coconut-book-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: {
                low: { saponificationEquivalent: '216' },
                high: { saponificationEquivalent: '214.2' },
              },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '50' }, solution: { hydroxide: { percent: '32.64' } } }],
    },
    result: 'superfat',
    printed: '11.9 to 12.6',
    expectedBounds: ['11.9', '12.6'],
    unit: 'percent',
    tolerance: '0.0516',
    why: '0.05 half a last digit + 0.0016 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 47, cold process, coconut oil and half its weight of lye of 71.4 degrees Twaddell; lye by Appendix C; equivalents of the samples in chapter III of the book',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-spirit',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '56' }, solution: { hydroxide: { percent: '32.93' } } }],
    },
    result: 'superfat',
    printed: '-5.5 to 1.1',
    expectedBounds: ['-5.5', '1.1'],
    unit: 'percent',
    tolerance: '0.0519',
    why: '0.05 half a last digit + 0.0019 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where: 'p. 57, transparent soap with spirit and glycerine; lye by Appendix C; values recalled',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-spirit-book-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: {
                low: { saponificationEquivalent: '216' },
                high: { saponificationEquivalent: '214.2' },
              },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: {
                low: { saponificationEquivalent: '286' },
                high: { saponificationEquivalent: '283.6' },
              },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '56' }, solution: { hydroxide: { percent: '32.93' } } }],
    },
    result: 'superfat',
    printed: '-1.3 to -0.5',
    expectedBounds: ['-1.3', '-0.5'],
    unit: 'percent',
    tolerance: '0.0519',
    why: '0.05 half a last digit + 0.0019 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 57, transparent soap with spirit and glycerine; lye by Appendix C; equivalents of the samples in chapter III of the book',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-castor',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '176' }, high: { mgKohPerG: '187' } },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '83' }, solution: { hydroxide: { percent: '32.93' } } }],
    },
    result: 'superfat',
    printed: '-11.5 to -4.7',
    expectedBounds: ['-11.5', '-4.7'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where: 'p. 57-58, transparent soap with castor oil, glycerine and sugar; lye by Appendix C; values recalled',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-castor-book-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: {
                low: { saponificationEquivalent: '216' },
                high: { saponificationEquivalent: '214.2' },
              },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: {
                low: { saponificationEquivalent: '286' },
                high: { saponificationEquivalent: '283.6' },
              },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: {
                low: { saponificationEquivalent: '310' },
                high: { saponificationEquivalent: '310' },
              },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '83' }, solution: { hydroxide: { percent: '32.93' } } }],
    },
    result: 'superfat',
    printed: '-7.5 to -6.8',
    expectedBounds: ['-7.5', '-6.8'],
    unit: 'percent',
    tolerance: '0.0520',
    why: '0.05 half a last digit + 0.0020 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 57-58, transparent soap with castor oil, glycerine and sugar; lye by Appendix C; equivalents of the samples in chapter III of the book',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-castor-weaker-caustic',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '248' }, high: { mgKohPerG: '265' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '190' }, high: { mgKohPerG: '202' } },
            },
          },
          mass: { lb: '56' },
        },
        {
          fat: {
            certificate: {
              name: 'castor oil',
              kind: 'triglyceride',
              saponificationValue: { low: { mgKohPerG: '176' }, high: { mgKohPerG: '187' } },
            },
          },
          mass: { lb: '56' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '83' }, solution: { hydroxide: { percent: '29.73' } } }],
    },
    result: 'superfat',
    printed: '-0.7 to 5.5',
    expectedBounds: ['-0.7', '5.5'],
    unit: 'percent',
    tolerance: '0.0518',
    why: '0.05 half a last digit + 0.0018 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 57-58, transparent soap with castor oil, glycerine and sugar; the same degree Twaddell of lye made from caustic of 70 per cent, Appendix C; values recalled',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-resinate',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: { low: { mgKohPerG: '155' }, high: { mgKohPerG: '180' } },
            },
          },
          mass: { lb: '2240' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '4144' }, solution: { hydroxide: { percent: '7.715' } } }],
    },
    result: 'superfat',
    printed: '-29.2 to -11.2',
    expectedBounds: ['-29.2', '-11.2'],
    unit: 'percent',
    tolerance: '0.0524',
    why: '0.05 half a last digit + 0.0024 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 43, rosin soap for bleaching, 20 cwt of rosin and 37 cwt of lye of 17 degrees Twaddell; lye by Appendix C; values recalled',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-resinate-book-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'rosin',
              kind: 'rosin',
              saponificationValue: {
                low: { saponificationEquivalent: '330.5' },
                high: { saponificationEquivalent: '312.3' },
              },
            },
          },
          mass: { lb: '2240' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { lb: '4144' }, solution: { hydroxide: { percent: '7.715' } } }],
    },
    result: 'superfat',
    printed: '-17.9 to -11.4',
    expectedBounds: ['-17.9', '-11.4'],
    unit: 'percent',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 M(KOH) 56.106 for 56.105 in the demand. Superfat from the lots stated, worked out apart from the library; negative is alkali in excess.',
    source: 'simmons-appleton-1908',
    where:
      'p. 43, rosin soap for bleaching, 20 cwt of rosin and 37 cwt of lye of 17 degrees Twaddell; lye by Appendix C; equivalents of the samples in chapter III of the book',
    obtained: 'derived',
  },
  // The same recipes by the lots of the published fats
  {
    id: 'recipe-thomssen-chip-cold-1-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'tallow', mass: { lb: '1200' } }],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '850' },
          solution: { hydroxide: { low: { percent: '27.9651' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-50.8 to -37.6',
    expectedBounds: ['-50.8', '-37.6'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula I, cold chip soap I, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-2-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'tallow', mass: { lb: '475' } },
        { fat: 'coconut-oil', mass: { lb: '100' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '325' },
          solution: { hydroxide: { low: { percent: '30.2834' }, high: { percent: '31.22' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '56' },
          solution: { hydroxide: { low: { percent: '33.853' }, high: { percent: '34.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-40.7 to -28.2',
    expectedBounds: ['-40.7', '-28.2'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula II, cold chip soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-4-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'tallow', mass: { lb: '450' } }],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '255' },
          solution: { hydroxide: { low: { percent: '30.88965' }, high: { percent: '31.845' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '50' },
          solution: { hydroxide: { low: { percent: '34.338' }, high: { percent: '35.4' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-53.9 to -40.4',
    expectedBounds: ['-53.9', '-40.4'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula IV, cold chip soap IV, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-chip-cold-5-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'tallow', mass: { lb: '450' } }],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '470' },
          solution: { hydroxide: { low: { percent: '27.9651' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-122.3 to -102.8',
    expectedBounds: ['-122.3', '-102.8'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made chip soaps, formula V, cold chip soap V, silicated; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-2-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'olive-oil', mass: { g: '2030' } },
        { fat: 'coconut-oil', mass: { g: '674' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1523' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-18.3 to -7.6',
    expectedBounds: ['-18.3', '-7.6'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula II, cold castile soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-castile-3-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'palm-kernel-oil', mass: { g: '1578' } },
        { fat: 'tallow', mass: { g: '940' } },
        { fat: 'olive-oil', mass: { g: '7' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '1507' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-16.6 to -3.7',
    expectedBounds: ['-16.6', '-3.7'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Castile soap, formula III, cold castile-type soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-typical-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'tallow', mass: { lb: '193.5' } },
        { fat: 'coconut-oil', mass: { lb: '169.5' } },
        { fat: 'castor-oil', mass: { lb: '89.5' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '256' },
          solution: { hydroxide: { low: { percent: '29.0321' }, high: { percent: '29.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-13.7 to -3.5',
    expectedBounds: ['-13.7', '-3.5'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, detailed charge, transparent soap, cold/semi-boiled, detailed formula; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-2-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'tallow', mass: { lb: '211' } },
        { fat: 'coconut-oil', mass: { lb: '185' } },
        { fat: 'castor-oil', mass: { lb: '97.5' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '279' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-23.2 to -12.2',
    expectedBounds: ['-23.2', '-12.2'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, formula II, transparent soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-3-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'castor-oil', mass: { lb: '60' } },
        { fat: 'coconut-oil', mass: { lb: '195' } },
        { fat: 'tallow', mass: { lb: '120' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '205.5' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-14.5 to -4.2',
    expectedBounds: ['-14.5', '-4.2'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, formula III, transparent soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-transparent-5-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'tallow', mass: { lb: '174' } },
        { fat: 'coconut-oil', mass: { lb: '114' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '170' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-26.2 to -14.9',
    expectedBounds: ['-26.2', '-14.9'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made transparent soap, formula V, transparent soap V; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-shaving-1-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'tallow', mass: { lb: '360' } },
        { fat: 'stearic-acid-50', mass: { lb: '40' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '147' },
          solution: { hydroxide: { low: { percent: '35.1625' }, high: { percent: '36.25' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '87' },
          solution: { hydroxide: { low: { percent: '30.846' }, high: { percent: '31.8' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-34.4 to -22.3',
    expectedBounds: ['-34.4', '-22.3'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving soaps, formula I, shaving stick soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-shaving-3-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'tallow', mass: { lb: '400' } },
        { fat: 'coconut-oil', mass: { lb: '176' } },
        { fat: 'stearic-acid-50', mass: { lb: '415' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '182' },
          solution: { hydroxide: { low: { percent: '33.9112' }, high: { percent: '34.96' } } },
        },
        {
          alkali: 'koh',
          mass: { lb: '108' },
          solution: { hydroxide: { low: { percent: '34.823' }, high: { percent: '35.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '36.2 to 42.4',
    expectedBounds: ['36.2', '42.4'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving soaps, formula III, shaving stick soap III; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cream-1-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'coconut-oil', mass: { lb: '26' } },
        { fat: 'stearic-acid-50', mass: { lb: '165' } },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '69' },
          solution: { hydroxide: { low: { percent: '47.918' }, high: { percent: '49.4' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '11.7 to 21.0',
    expectedBounds: ['11.7', '21.0'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving cream, formula I, shaving cream I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cream-3-base-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'coconut-oil', mass: { lb: '18' } },
        { fat: 'stearic-acid-50', mass: { lb: '73' } },
      ],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '54' },
          solution: { hydroxide: { low: { percent: '35.793' }, high: { percent: '36.9' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-6.6 to 4.5',
    expectedBounds: ['-6.6', '4.5'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Shaving cream, formula III, first part, shaving cream III, soap part; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-liquid-1-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'coconut-oil', mass: { lb: '130' } }],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '135' },
          solution: { hydroxide: { low: { percent: '25.317' }, high: { percent: '26.1' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-9.3 to 0.8',
    expectedBounds: ['-9.3', '0.8'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Liquid soaps, formula I, liquid soap I; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-liquid-2-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'corn-oil', mass: { lb: '130' } }],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '135' },
          solution: { hydroxide: { low: { percent: '23.474' }, high: { percent: '24.2' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-34.4 to -25.0',
    expectedBounds: ['-34.4', '-25.0'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Liquid soaps, formula II, liquid soap II; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-auto-soap-1-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'corn-oil', mass: { g: '1000' } }],
      lye: [
        {
          alkali: 'koh',
          mass: { g: '697' },
          solution: { hydroxide: { low: { percent: '28.4695' }, high: { percent: '29.35' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-9.4 to -1.8',
    expectedBounds: ['-9.4', '-1.8'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. III, automobile soap, automobile soft soap; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-cold-coconut-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'coconut-oil', mass: { g: '846' } }],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '470' },
          solution: { hydroxide: { low: { percent: '27.9651' }, high: { percent: '28.83' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '9.4 to 17.8',
    expectedBounds: ['9.4', '17.8'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. III, Cold process example, cold process coconut soap; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-thomssen-rule-coconut-38-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'coconut-oil', mass: { g: '100' } }],
      lye: [
        {
          alkali: 'naoh',
          mass: { g: '50' },
          solution: { hydroxide: { low: { percent: '31.4959' }, high: { percent: '32.47' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '8.2 to 16.6',
    expectedBounds: ['8.2', '16.6'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'thomssen-1922',
    where:
      'ch. IV, Cold made toilet soaps, rule: cold toilet soap, coconut with half its weight of lye; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-alcohol-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'coconut-oil', mass: { lb: '56' } },
        { fat: 'tallow', mass: { lb: '56' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '56' },
          solution: { hydroxide: { low: { percent: '31.9421' }, high: { percent: '32.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-5.5 to 4.1',
    expectedBounds: ['-5.5', '4.1'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'simmons-appleton-1908',
    where:
      'ch. V, Transparent soap, small batch, transparent glycerine soap, small batch; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-transparent-castor-glycerine-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [
        { fat: 'coconut-oil', mass: { lb: '56' } },
        { fat: 'tallow', mass: { lb: '56' } },
        { fat: 'castor-oil', mass: { lb: '56' } },
      ],
      lye: [
        {
          alkali: 'naoh',
          mass: { lb: '83' },
          solution: { hydroxide: { low: { percent: '31.9421' }, high: { percent: '32.93' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-11.5 to -1.5',
    expectedBounds: ['-11.5', '-1.5'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'simmons-appleton-1908',
    where:
      'ch. V, Transparent soap with castor oil, transparent soap with castor oil, glycerine and sugar; lye by the table of the book, its alkali 97 to 100 % caustic',
    obtained: 'derived',
  },
  {
    id: 'recipe-piesse-transparent-soft-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'olive-oil', mass: { lb: '1' } }],
      lye: [
        {
          alkali: 'koh',
          mass: { lb: '6' },
          solution: { hydroxide: { low: { percent: '5.256' }, high: { percent: '6.424' } } },
        },
      ],
    },
    result: 'superfat',
    printed: '-109.5 to -60.9',
    expectedBounds: ['-109.5', '-60.9'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'perfumery-1857',
    where: 'Transparent soft soap, transparent soft soap',
    obtained: 'derived',
  },
  {
    id: 'recipe-school-lard-10g-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'lard', mass: { g: '10' } }],
      lye: [{ alkali: 'naoh', mass: { g: '3.6' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'superfat',
    printed: '-163.0 to -148.8',
    expectedBounds: ['-163.0', '-148.8'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'school-procedure-lard',
    where: 'how to do, preparation: 10 g lard, 6 N NaOH, ethanol',
    obtained: 'derived',
  },
  {
    id: 'recipe-school-olive-50ml-published-lots',
    call: 'superfatFromLye',
    inputs: {
      fats: [{ fat: 'olive-oil', mass: { g: '45' } }],
      lye: [{ alkali: 'naoh', mass: { g: '10.8' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'superfat',
    printed: '-83.0 to -71.8',
    expectedBounds: ['-83.0', '-71.8'],
    unit: 'percent',
    tolerance: '1',
    why: '1 point beyond which a difference is explained. The same for the lots of the published fats.',
    source: 'school-exercise-cameroon',
    where: 'exercise I, school preparation: olive oil, ethanol, 9 mol/L NaOH',
    obtained: 'derived',
  },
  // Recipes turned round: alkali for a superfat that is stated
  {
    id: 'recipe-simmons-marbled-lye-leanest',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: { name: 'coconut oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '248' } },
          },
          mass: { g: '100' },
        },
      ],
      alkali: { naoh: { solution: { hydroxide: { percent: '14.41' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.naoh',
    printed: '122.7',
    expected: '122.7',
    unit: 'g',
    tolerance: '0.0522',
    why: '0.05 half a last digit + 0.0022 56.106 for 56.105',
    source: 'simmons-appleton-1908',
    where:
      'p. 49, marbled hydrated soap of coconut oil: lye of 32.5 degrees Twaddell that just splits 100 parts, by Appendix C',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-marbled-lye-richest',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: { name: 'coconut oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '265' } },
          },
          mass: { g: '100' },
        },
      ],
      alkali: { naoh: { solution: { hydroxide: { percent: '14.41' } } } },
      target: { superfat: { percent: '0' } },
      dilution: 'as-is',
    },
    result: 'weigh.naoh',
    printed: '131.1',
    expected: '131.1',
    unit: 'g',
    tolerance: '0.0524',
    why: '0.05 half a last digit + 0.0024 56.106 for 56.105',
    source: 'simmons-appleton-1908',
    where:
      'p. 49, marbled hydrated soap of coconut oil: lye of 32.5 degrees Twaddell that just splits 100 parts, by Appendix C',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-superfatted-base-least-naoh',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: { certificate: { name: 'olive oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '184' } } },
          mass: { g: '11.111111111111111111' },
        },
        {
          fat: { certificate: { name: 'tallow', kind: 'triglyceride', saponificationValue: { mgKohPerG: '190' } } },
          mass: { g: '88.888888888888888889' },
        },
      ],
      alkali: {
        naoh: { solid: { hydroxide: { percent: '100' } } },
        koh: { solid: { hydroxide: { percent: '100' } } },
        kohShare: { percent: '26.27802926278029262780' },
      },
      target: { superfat: { percent: '4' } },
      dilution: { waterPerAlkali: '2' },
    },
    result: 'weigh.naoh',
    printed: '9.55',
    expected: '9.55',
    unit: 'g',
    tolerance: '0.00518',
    why: '0.005 half a last digit + 0.00018 56.106 for 56.105. Two parts of soda to one of potash are taken by weight, pure.',
    source: 'simmons-appleton-1908',
    where:
      'p. 87, superfatted base of 1 part olive oil and 8 of beef tallow with 3 to 4 per cent of fat in excess: alkali for 100 parts of fat',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-superfatted-base-least-koh',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: { certificate: { name: 'olive oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '184' } } },
          mass: { g: '11.111111111111111111' },
        },
        {
          fat: { certificate: { name: 'tallow', kind: 'triglyceride', saponificationValue: { mgKohPerG: '190' } } },
          mass: { g: '88.888888888888888889' },
        },
      ],
      alkali: {
        naoh: { solid: { hydroxide: { percent: '100' } } },
        koh: { solid: { hydroxide: { percent: '100' } } },
        kohShare: { percent: '26.27802926278029262780' },
      },
      target: { superfat: { percent: '4' } },
      dilution: { waterPerAlkali: '2' },
    },
    result: 'weigh.koh',
    printed: '4.78',
    expected: '4.78',
    unit: 'g',
    tolerance: '0.00509',
    why: '0.005 half a last digit + 0.00009 56.106 for 56.105. Two parts of soda to one of potash are taken by weight, pure.',
    source: 'simmons-appleton-1908',
    where:
      'p. 87, superfatted base of 1 part olive oil and 8 of beef tallow with 3 to 4 per cent of fat in excess: alkali for 100 parts of fat',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-superfatted-base-most-naoh',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: { certificate: { name: 'olive oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '196' } } },
          mass: { g: '11.111111111111111111' },
        },
        {
          fat: { certificate: { name: 'tallow', kind: 'triglyceride', saponificationValue: { mgKohPerG: '202' } } },
          mass: { g: '88.888888888888888889' },
        },
      ],
      alkali: {
        naoh: { solid: { hydroxide: { percent: '100' } } },
        koh: { solid: { hydroxide: { percent: '100' } } },
        kohShare: { percent: '26.27802926278029262780' },
      },
      target: { superfat: { percent: '3' } },
      dilution: { waterPerAlkali: '2' },
    },
    result: 'weigh.naoh',
    printed: '10.26',
    expected: '10.26',
    unit: 'g',
    tolerance: '0.00519',
    why: '0.005 half a last digit + 0.00019 56.106 for 56.105. Two parts of soda to one of potash are taken by weight, pure.',
    source: 'simmons-appleton-1908',
    where:
      'p. 87, superfatted base of 1 part olive oil and 8 of beef tallow with 3 to 4 per cent of fat in excess: alkali for 100 parts of fat',
    obtained: 'derived',
  },
  {
    id: 'recipe-simmons-superfatted-base-most-koh',
    call: 'planLye',
    inputs: {
      fats: [
        {
          fat: { certificate: { name: 'olive oil', kind: 'triglyceride', saponificationValue: { mgKohPerG: '196' } } },
          mass: { g: '11.111111111111111111' },
        },
        {
          fat: { certificate: { name: 'tallow', kind: 'triglyceride', saponificationValue: { mgKohPerG: '202' } } },
          mass: { g: '88.888888888888888889' },
        },
      ],
      alkali: {
        naoh: { solid: { hydroxide: { percent: '100' } } },
        koh: { solid: { hydroxide: { percent: '100' } } },
        kohShare: { percent: '26.27802926278029262780' },
      },
      target: { superfat: { percent: '3' } },
      dilution: { waterPerAlkali: '2' },
    },
    result: 'weigh.koh',
    printed: '5.13',
    expected: '5.13',
    unit: 'g',
    tolerance: '0.00510',
    why: '0.005 half a last digit + 0.00010 56.106 for 56.105. Two parts of soda to one of potash are taken by weight, pure.',
    source: 'simmons-appleton-1908',
    where:
      'p. 87, superfatted base of 1 part olive oil and 8 of beef tallow with 3 to 4 per cent of fat in excess: alkali for 100 parts of fat',
    obtained: 'derived',
  },
  // Glycerine that factories got
  {
    id: 'simmons-glycerine-in-practice-cottonseed',
    call: 'soapFromLye',
    inputs: {
      fats: [{ fat: 'cottonseed-oil', mass: { g: '100' } }],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol',
    printed: '8.0',
    expectedInside: '8.0',
    unit: 'g',
    why: 'Glycerol that factories got, against what the fat holds; printed as glycerine of 80 per cent.',
    source: 'simmons-appleton-1908',
    where: 'p. 116, yield of glycerine of 80 per cent from 100 parts of cottonseed oil',
    obtained: 'derived',
  },
  {
    id: 'simmons-glycerine-in-practice-coconut',
    call: 'soapFromLye',
    inputs: {
      fats: [{ fat: 'coconut-oil', mass: { g: '100' } }],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol',
    printed: '9.6',
    expectedInside: '9.6',
    unit: 'g',
    why: 'Glycerol that factories got, against what the fat holds; printed as glycerine of 80 per cent.',
    source: 'simmons-appleton-1908',
    where: 'p. 116, yield of glycerine of 80 per cent from 100 parts of coconut oil',
    obtained: 'derived',
  },
  {
    id: 'simmons-glycerine-in-practice-olive',
    call: 'soapFromLye',
    inputs: {
      fats: [{ fat: 'olive-oil', mass: { g: '100' } }],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol',
    printed: '8.0',
    expectedInside: '8.0',
    unit: 'g',
    why: 'Glycerol that factories got, against what the fat holds; printed as glycerine of 80 per cent.',
    source: 'simmons-appleton-1908',
    where: 'p. 116, yield of glycerine of 80 per cent from 100 parts of olive oil',
    obtained: 'derived',
  },
  {
    id: 'simmons-glycerine-in-practice-palm',
    call: 'soapFromLye',
    inputs: {
      fats: [{ fat: 'palm-oil', mass: { g: '100' } }],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol',
    printed: '4.8',
    expectedInside: '4.8',
    unit: 'g',
    why: 'Glycerol that factories got, against what the fat holds; printed as glycerine of 80 per cent.',
    source: 'simmons-appleton-1908',
    where: 'p. 116, yield of glycerine of 80 per cent from 100 parts of palm oil',
    obtained: 'derived',
  },
];
