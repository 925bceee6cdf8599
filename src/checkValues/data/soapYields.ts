import type { CheckSoap } from '../calls.js';
import type { CheckValue } from '../checkValue.js';

/** The fat of an exercise that gives 0.92 kg of glycerol from 8.58 kg, split whole. */
const OF_8_58_KG: CheckSoap = {
  fats: [
    {
      fat: {
        certificate: {
          name: 'fat',
          kind: 'triglyceride',
          saponificationValue: { gNaohPerG: '0.13986013986013986014' },
        },
      },
      mass: { kg: '8.58' },
    },
  ],
  lye: [{ alkali: 'naoh', mass: { kg: '2' }, solid: { hydroxide: { percent: '100' } } }],
};

/** The fat of another, 89 g with 42 g of NaOH, split whole. */
const OF_89_G: CheckSoap = {
  fats: [
    {
      fat: {
        certificate: {
          name: 'fat of 661 mg KOH/g',
          kind: 'triglyceride',
          saponificationValue: { gNaohPerG: '0.47191011235955056180' },
        },
      },
      mass: { g: '89' },
    },
  ],
  lye: [{ alkali: 'naoh', mass: { g: '60' }, solid: { hydroxide: { percent: '100' } } }],
};

/**
 * Soap and glycerol that a fat and an alkali give.
 */
export const soapYieldChecks: readonly CheckValue[] = [
  // Glycerol of fats that are partly split: free acid gives none
  {
    id: 'thomssen-glycerol-tallow-5-per-cent-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '196.0101026292629972' },
              acidValue: { mgKohPerG: '10.2301413940033712' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '10.2',
    expected: '10.2',
    unit: 'g',
    tolerance: '0.09767',
    why: '0.05 half a last digit + 0.04767 half a last digit of 10.7. Values are those of a fat of the printed yield, 5 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: tallow, 10.7 per cent when neutral, with 5 per cent of free acid',
    obtained: 'read',
  },
  {
    id: 'thomssen-glycerol-coconut-5-per-cent-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'coconut oil',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '254.8163525393393996' },
              acidValue: { mgKohPerG: '13.4760290654974555' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '13.2',
    expected: '13.2',
    unit: 'g',
    tolerance: '0.09749',
    why: '0.05 half a last digit + 0.04749 half a last digit of 13.9. Values are those of a fat of the printed yield, 5 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: coconut oil, 13.9 per cent when neutral, with 5 per cent of free acid',
    obtained: 'read',
  },
  {
    id: 'thomssen-glycerol-olive-25-per-cent-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '190.3390019009282345' },
              acidValue: { mgKohPerG: '49.1535419361096796' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '7.7',
    expected: '7.7',
    unit: 'g',
    tolerance: '0.08738',
    why: '0.05 half a last digit + 0.03738 half a last digit of 10.3. Values are those of a fat of the printed yield, 25 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: olive oil, 10.3 per cent when neutral, with 25 per cent of free acid',
    obtained: 'read',
  },
  {
    id: 'thomssen-glycerol-palm-50-per-cent-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'palm oil',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '205.8266301293663989' },
              acidValue: { mgKohPerG: '105.3062379214049682' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '5.5',
    expected: '5.5',
    unit: 'g',
    tolerance: '0.07500',
    why: '0.05 half a last digit + 0.02500 half a last digit of 11.0. Values are those of a fat of the printed yield, 50 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: palm oil, 11.0 per cent when neutral, with 50 per cent of free acid',
    obtained: 'read',
  },
  {
    id: 'thomssen-glycerol-corn-10-per-cent-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'corn oil',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '190.9283057259650220' },
              acidValue: { mgKohPerG: '19.8608746229615690' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '9.3',
    expected: '9.3',
    unit: 'g',
    tolerance: '0.09472',
    why: '0.05 half a last digit + 0.04472 half a last digit of 10.4. Values are those of a fat of the printed yield, 10 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: corn oil, 10.4 per cent when neutral, with 10 per cent of free acid',
    obtained: 'read',
  },
  {
    id: 'thomssen-crude-glycerine-tallow',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tallow',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '196.0101026292629972' },
              acidValue: { mgKohPerG: '10.2301413940033712' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '12.75',
    times: '0.8',
    expected: '10.2',
    unit: 'g',
    tolerance: '0.05167',
    why: '0.0040 half a last digit + 0.04767 half a last digit of 10.7. Values are those of a fat of the printed yield, 5 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: tallow, 10.7 per cent when neutral, with 5 per cent of free acid, as crude glycerine of 80 per cent',
    obtained: 'read',
  },
  {
    id: 'thomssen-crude-glycerine-olive',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'olive oil',
              kind: 'triglyceride',
              saponificationValue: { mgKohPerG: '190.3390019009282345' },
              acidValue: { mgKohPerG: '49.1535419361096796' },
            },
          },
          mass: { g: '100' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '25' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '9.62',
    times: '0.8',
    expected: '7.696',
    unit: 'g',
    tolerance: '0.04136',
    why: '0.0040 half a last digit + 0.03736 half a last digit of 10.3. Values are those of a fat of the printed yield, 25 per cent of it split to acid.',
    source: 'thomssen-1922',
    where:
      'Appendix, glycerine content of common oils: olive oil, 10.3 per cent when neutral, with 25 per cent of free acid, as crude glycerine of 80 per cent',
    obtained: 'read',
  },
  // Exercises: mass balances of a saponification, in whole-number molar masses
  {
    id: 'exercise-soap-of-8-58-kg',
    call: 'soapFromLye',
    inputs: OF_8_58_KG,
    result: 'products.soapSodium.likely',
    printed: '8.86',
    expected: '8.86',
    unit: 'kg',
    tolerance: '0.006010',
    why: '0.005 half a last digit + 0.001010 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where:
      'Chemistry for grade 9, p. 147, exercise 4: salts from 8.58 kg of fat and 1.2 kg of NaOH that give 0.92 kg of glycerol',
    obtained: 'read',
  },
  {
    id: 'exercise-glycerol-of-8-58-kg',
    call: 'soapFromLye',
    inputs: OF_8_58_KG,
    result: 'products.glycerol.likely',
    printed: '0.92',
    expected: '0.92',
    unit: 'kg',
    tolerance: '0.006010',
    why: '0.005 half a last digit + 0.001010 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'Chemistry for grade 9, p. 147, exercise 4: glycerol, as given with 8.58 kg of fat and 1.2 kg of NaOH',
    obtained: 'read',
  },
  {
    id: 'exercise-soap-of-8-58-kg-with-free-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat with free acid',
              kind: 'triglyceride',
              saponificationValue: { gNaohPerG: '0.13986013986013986014' },
              acidValue: { gNaohPerG: '0.08391608391608391608' },
            },
          },
          mass: { kg: '8.58' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '2' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.soapSodium.likely',
    printed: '9.412',
    expected: '9.088',
    unit: 'kg',
    tolerance: '0.001198',
    why: '0.0005 half a last digit of the figure held right + 0.000698 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'salts from 8.58 kg of fat and 1.2 kg of NaOH that give 0.368 kg of glycerol',
    obtained: 'read',
    misprint:
      'The answer is fat and NaOH less glycerol. 0.368 kg of glycerol takes 0.48 kg of the NaOH; the other 0.72 kg can only have met free acid, and the 0.324 kg of water formed there is no salt.',
  },
  {
    id: 'exercise-glycerol-of-8-58-kg-with-free-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat with free acid',
              kind: 'triglyceride',
              saponificationValue: { gNaohPerG: '0.13986013986013986014' },
              acidValue: { gNaohPerG: '0.08391608391608391608' },
            },
          },
          mass: { kg: '8.58' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '2' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '0.368',
    expected: '0.368',
    unit: 'kg',
    tolerance: '0.000904',
    why: '0.0005 half a last digit + 0.000404 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'glycerol from 8.58 kg of fat, of whose 1.2 kg of NaOH 0.48 kg split esters',
    obtained: 'read',
  },
  {
    id: 'exercise-soap-of-89-g',
    call: 'soapFromLye',
    inputs: OF_89_G,
    result: 'products.soapSodium.likely',
    printed: '98.8',
    expected: '98.8',
    unit: 'g',
    tolerance: '0.085318',
    why: '0.05 half a last digit + 0.035318 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'soap from 89 g of fat and 42 g of NaOH; no fat takes so much, the sum alone is right',
    obtained: 'read',
  },
  {
    id: 'exercise-glycerol-of-89-g',
    call: 'soapFromLye',
    inputs: OF_89_G,
    result: 'products.glycerol.likely',
    printed: '32.2',
    expected: '32.2',
    unit: 'g',
    tolerance: '0.085318',
    why: '0.05 half a last digit + 0.035318 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'glycerol from 89 g of fat and 42 g of NaOH; no fat takes so much, the sum alone is right',
    obtained: 'read',
  },
  {
    id: 'exercise-soap-of-45-g',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 900 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '300' },
            },
          },
          mass: { g: '45' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '10' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.soapSodium.likely',
    printed: '46.4',
    expected: '46.4',
    unit: 'g',
    tolerance: '0.055150',
    why: '0.05 half a last digit + 0.005150 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'soap from 45 g of fat and 100 mL of 1.5 M NaOH',
    obtained: 'read',
  },
  {
    id: 'exercise-glycerol-of-45-g',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 900 g/mol',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '300' },
            },
          },
          mass: { g: '45' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { g: '10' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '4.6',
    expected: '4.6',
    unit: 'g',
    tolerance: '0.054700',
    why: '0.05 half a last digit + 0.004700 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'glycerol from 45 g of fat and 100 mL of 1.5 M NaOH',
    obtained: 'read',
  },
  {
    id: 'exercise-soap-of-three-glycerides',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'triolein',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '294.66666666666666666667' },
            },
          },
          mass: { kg: '420' },
        },
        {
          fat: {
            certificate: {
              name: 'tristearin',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '296.66666666666666666667' },
            },
          },
          mass: { kg: '367.5' },
        },
        {
          fat: {
            certificate: {
              name: 'tripalmitin',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '268.66666666666666666667' },
            },
          },
          mass: { kg: '262.5' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '200' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.soapSodium.likely',
    printed: '1083.992',
    expected: '1083.984',
    unit: 'kg',
    tolerance: '0.125513',
    why: '0.0005 half a last digit of the figure held right + 0.125013 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'soap from 1.05 t of fat, 40 per cent triolein, 35 tristearin, 25 tripalmitin',
    obtained: 'read',
    misprint: 'Amounts were rounded before they were added up; from its own molar masses the sum is 1083.984.',
  },
  {
    id: 'exercise-soap-of-10-kg-with-free-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat with free acid',
              kind: 'triglyceride',
              saponificationValue: { gNaohPerG: '0.14' },
              acidValue: { gNaohPerG: '0.005' },
            },
          },
          mass: { kg: '10' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '2' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.soapSodium.likely',
    printed: '10.3425',
    expected: '10.3425',
    unit: 'kg',
    tolerance: '0.001206',
    why: '0.00005 half a last digit + 0.001156 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where:
      'soap from 10 kg of fat that takes 1.4 kg of NaOH and gives 1.035 kg of glycerol: 0.05 kg of the NaOH met free acid',
    obtained: 'read',
  },
  {
    id: 'exercise-glycerol-of-10-kg-with-free-acid',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat with free acid',
              kind: 'triglyceride',
              saponificationValue: { gNaohPerG: '0.14' },
              acidValue: { gNaohPerG: '0.005' },
            },
          },
          mass: { kg: '10' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '2' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.glycerol.likely',
    printed: '1.035',
    expected: '1.035',
    unit: 'kg',
    tolerance: '0.001636',
    why: '0.0005 half a last digit + 0.001136 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'glycerol from 10 kg of fat that takes 1.4 kg of NaOH, 0.05 kg of it for free acid',
    obtained: 'read',
  },
  {
    id: 'exercise-stearate-of-698-kg-tristearin',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'tristearin',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '296.66666666666666666667' },
            },
          },
          mass: { kg: '698.05' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '110' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.soapSodium.likely',
    printed: '720',
    expected: '720',
    unit: 'kg',
    tolerance: '0.100632',
    why: '0.005158 half a last digit of 698.05 + 0.014688 amount 0.78433 for 0.784314 + 0.080786 whole-number molar masses in the balance',
    source: 'school-exercise-vietnam',
    where: 'Chemistry for grade 12, p. 16, exercise 5: 698.05 kg of tristearin for 720 kg of sodium stearate',
    obtained: 'read',
  },
  {
    id: 'exercise-stearate-of-fat-with-89-per-cent-tristearin',
    call: 'soapFromLye',
    inputs: {
      fats: [
        {
          fat: {
            certificate: {
              name: 'fat of 89 per cent tristearin',
              kind: 'triglyceride',
              saponificationValue: { saponificationEquivalent: '333.33333333333333333333' },
              unsaponifiable: { percent: '11' },
            },
          },
          mass: { kg: '784.31' },
        },
      ],
      lye: [{ alkali: 'naoh', mass: { kg: '120' }, solid: { hydroxide: { percent: '100' } } }],
    },
    result: 'products.soapSodium.likely',
    printed: '72',
    times: '10',
    expected: '720',
    unit: 'kg',
    tolerance: '0.085375',
    why: '0.004591 half a last digit of 784.31 + 0.080784 whole-number molar masses in the balance. What is no tristearin is taken as unsaponifiable.',
    source: 'school-exercise-vietnam',
    where:
      'Chemistry for grade 12, p. 16, exercise 5: 784.31 kg of fat with 89 per cent of tristearin for a tonne of soap with 72 per cent of sodium stearate',
    obtained: 'read',
  },
];
