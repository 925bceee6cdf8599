import type { Fat, SingleFat } from '../../fats/index.js';
import { frozen } from '../../numbers/index.js';
import type { Finding } from '../finding.js';
import { legible } from '../legible.js';
import type { Pot } from '../pot.js';

const CODE = 'certificate-outside-published-range';

const singles = (fat: Fat): readonly SingleFat[] => (fat.kind === 'blend' ? fat.parts.map((part) => part.fat) : [fat]);

/** Whether a certificate lies outside what is published of the fat it is a lot of. */
export const isCertificateContradicted = (fat: Fat): boolean =>
  singles(fat).some(({ notes }) => notes.some(({ code }) => code === CODE));

/** Fats of one's own whose certified value is no value of their fat: what follows from it is as wrong as it is. */
export function contradictedFatFindings({ fats }: Pot): readonly Finding[] {
  return fats.flatMap(({ path, fat }) => {
    const said = fat === undefined ? [] : singles(fat).flatMap((one) => saidOf(one));
    const [first] = said;
    if (fat === undefined || first === undefined) return [];
    return [
      {
        code: 'fat-contradicts-standard',
        severity: 'caution',
        path: `${path}.fat`,
        claimed: first.value,
        values: frozen({ said: first.text }),
        explanation: `${said.map(({ name, text }) => `${name}: ${text}`).join(' ')} Superfat and free caustic are worked out from it all the same. Ask for the certificate again before any lye is weighed.`,
        slips: frozen([]),
        basis: fat.basis,
      },
    ];
  });
}

/** What the fat itself says of its certificate, the published range among it. */
function saidOf({ name, notes, saponificationValue: { likely } }: SingleFat) {
  const note = notes.find(({ code }) => code === CODE);
  // a fat that came as JSON brings its own words
  return note === undefined ? [] : [{ name: legible(name), text: ended(legible(note.text, 300)), value: likely }];
}

const ended = (text: string): string => (/[.?]$/.test(text) ? text : `${text}.`);
