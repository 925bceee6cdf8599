import { frozen } from '../../numbers/index.js';
import { inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';

/** What a solid is sold with, percent of all alkali as hydroxide; common practice, no source. */
export const SOLID_ASSAY = { naoh: { least: 90, most: 101 }, koh: { least: 75, most: 101 } } as const;
const NAMES = { naoh: 'sodium hydroxide', koh: 'potassium hydroxide' } as const;

/** Assays that no solid alkali is sold with: the likeliest slip of a form is a lye entered as a solid. */
export function solidAssayFindings({ lye }: Pot): readonly Finding[] {
  return lye.flatMap(({ path, alkali, charge, isStated }): readonly Finding[] => {
    const { least, most } = SOLID_ASSAY[alkali];
    const percent = charge.source.totalAlkali.likely.times(100);
    if (!isStated || charge.source.state !== 'solid' || (percent.gte(least) && percent.lte(most))) return [];
    const meant = percent.lt(least)
      ? 'So low a figure is usually the strength of a solution, which brings its own water: ask whether it is one, and how much water is then added.'
      : 'No more than pure can be in it: ask for the certificate, and whether the figure is an assay at all.';
    return [
      {
        code: 'assay-not-of-a-solid',
        severity: 'caution',
        path: `${path}.solid`,
        claimed: frozen({ percent }),
        values: frozen({ least: frozen({ percent: String(least) }), most: frozen({ percent: String(most) }) }),
        explanation: `The recipe states ${inWords(percent)} % for solid ${NAMES[alkali]}, which is sold with ${String(least)} to ${String(most)} % (common practice, no source). ${meant}`,
        slips: frozen([]),
        basis: frozen([]),
      },
    ];
  });
}
