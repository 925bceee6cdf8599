import type { SourceId } from '../../sources/index.js';

/** pKw of water at the pressure of its vapour, by °C: the formulation of 2020, evaluated from its constants. */
export const ionProductOfWater: {
  readonly source: SourceId;
  readonly obtained: 'derived';
  readonly celsius: readonly string[];
  readonly pKw: readonly string[];
} = {
  source: 'arcis-2020',
  obtained: 'derived',
  celsius: ['0', '10', '20', '25', '30', '40', '50', '60', '70', '80', '90', '100'],
  pKw: [
    '14.945',
    '14.534',
    '14.166',
    '13.996',
    '13.835',
    '13.536',
    '13.263',
    '13.016',
    '12.791',
    '12.587',
    '12.401',
    '12.234',
  ],
};

/**
 * pKa of fatty acid in soap solution at 25 °C. In dilute water, as single molecules, it is 4.8 to 5.3 whatever the chain
 * (recalled). On titrating a soap solution it appears as up to 10.15 (stearic, read), because acid and soap associate; the
 * pH of soap solutions that hold no caustic calls for no more than 8.5, a convention of this library.
 */
export const fattyAcidPKa = { monomer: '4.8', apparentAtMost: '8.5' } as const;

/**
 * No soap without caustic shows more than this, at any dilution, on a wet bar, with or without triethanolamine, from 10 to
 * 50 °C: a convention. The band of this library ends at 11.2 in its most favourable case (100 g to a litre, 10 °C).
 */
export const anySoapAtMost = '11.5';

/** More free caustic than this, percent NaOH, is no cap worth the name: a convention. */
export const capAtMost = '10';

/** Formulas of the lightest and the heaviest soap, which bound the moles in a gram: laurate of soda, stearate of potash. */
export const lightestAndHeaviestSoap = ['C12H23O2Na', 'C18H35O2K'] as const;

/** The constant of Davies' rule for activities in water at 25 °C, and its linear term (recalled). */
export const davies = { constant: '0.509', linear: '0.3' } as const;

/** Anhydrous soap in soap and base as sold, percent, where it is not told: clear base to dry bar (common practice). */
export const usualSoapContent = { low: '30', high: '100' } as const;
