import type { CheckFat } from '../calls.js';
import type { CheckValue } from '../checkValue.js';

/** Heat of evaporation of one mole: name, solvent, its mass, °C, kJ. */
const EVAPORATIONS: readonly (readonly [id: string, 'water' | 'ethanol', g: string, celsius: string, kJ: string])[] = [
  ['water-at-25', 'water', '18.015', '25', '43.98'],
  ['water-at-100', 'water', '18.015', '100', '40.65'],
  ['ethanol-at-25', 'ethanol', '46.069', '25', '42.32'],
  ['ethanol-at-78', 'ethanol', '46.069', '78.3', '38.56'],
];

const evaporations = () =>
  EVAPORATIONS.map(([id, solvent, g, celsius, kJ]): CheckValue => ({
    id: `crc-evaporation-of-${id}`,
    call: 'heatOfEvaporation',
    inputs: { solvent, mass: { g }, temperature: { celsius } },
    result: 'heat',
    printed: kJ,
    expected: kJ,
    unit: 'kJ',
    tolerance: '0.005',
    why: '0.005 half a last digit',
    source: 'crc-heat-of-vaporization',
    where: `Enthalpy of Vaporization, ${solvent} at ${celsius} °C`,
    obtained: 'read',
  }));

/** A kilogram of a fat or acid with all the lye it takes, and what it gives out. */
const reaction = (fat: CheckFat, lye: string) =>
  ({
    call: 'potHeatFromReaction',
    inputs: {
      fats: [{ fat, mass: { kg: '1' } }],
      lye: [{ alkali: 'naoh', mass: { g: lye }, solution: { hydroxide: { percent: '50' } } }],
      start: { pot: { celsius: '50' }, lye: { celsius: '25' } },
    },
    result: 'heat',
    unit: 'kJ',
  }) as const;

const certified = (kind: 'triglyceride' | 'free-fatty-acid', mgKohPerG: string): CheckFat => ({
  certificate: { name: 'Of one value', kind, saponificationValue: { mgKohPerG } },
});

/** Heats of the reaction that the library does not read itself, and heats of evaporation of a second compilation. */
export const processHeatChecks = (): readonly CheckValue[] => [
  ...evaporations(),
  {
    id: 'recalled-heat-of-saponification',
    ...reaction(certified('triglyceride', '197'), '281'),
    printed: '250',
    expectedInside: '250',
    why: 'The lower of two technical figures, of a fat that is not named: taken of one as tallow. It lies high in the span.',
    source: 'handbooks-recalled',
    where: 'heat of saponification, kJ to one kg of fat',
    obtained: 'memory',
  },
  {
    id: 'crc-heat-of-splitting-methyl-acetate',
    ...reaction(certified('triglyceride', '56.105'), '79.994'),
    printed: '-49.3',
    times: '-1',
    expectedInside: '49.3',
    why: 'A third ester, worked out from enthalpies of formation; one mole of ester bonds.',
    source: 'crc-thermodynamic-properties',
    where: 'enthalpies of formation of methyl acetate and methanol, with those of the ions',
    obtained: 'derived',
  },
  {
    id: 'recalled-heat-of-neutralisation',
    ...reaction(certified('free-fatty-acid', '56.105'), '79.994'),
    printed: '-56',
    times: '-1',
    expectedInside: '56',
    why: 'The usual technical figure of liquid fatty acids; one mole of acid.',
    source: 'handbooks-recalled',
    where: 'heat of neutralisation of fatty acids, kJ to one mole',
    obtained: 'memory',
  },
];
