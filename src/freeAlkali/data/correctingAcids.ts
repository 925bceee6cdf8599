/** Acids that take up free caustic and are no fatty acids. */
export type CorrectingAcidId = 'citric' | 'citric-monohydrate' | 'lactic';

/** An acid as it is sold: what it is without water of crystallisation, that water, and what hydroxide it takes. */
interface CorrectingAcid {
  /** Formula of the acid itself. */
  readonly formula: string;
  /** Moles of water of crystallisation to one of acid. */
  readonly crystalWater: 0 | 1;
  /** Moles of hydroxide to one of acid, in soap at pH 9 and more, where it is taken up whole. */
  readonly takes: 1 | 3;
  /** Percent of it in its saturated solution at 20 °C, where it is a solid (handbooks, recalled). */
  readonly dissolvesTo?: string;
}

export const correctingAcids: Readonly<Record<CorrectingAcidId, CorrectingAcid>> = {
  citric: { formula: 'C6H8O7', crystalWater: 0, takes: 3, dissolvesTo: '59' },
  'citric-monohydrate': { formula: 'C6H8O7', crystalWater: 1, takes: 3, dissolvesTo: '65' },
  lactic: { formula: 'C3H6O3', crystalWater: 0, takes: 1 },
};
