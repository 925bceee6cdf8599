/** A result of one function is an input of the next: as it is, and stored as JSON in between. */
import {
  alkaliContentOf,
  fat,
  fatFromCertificate,
  hydroxideFromOxideGrade,
  iodineValueFromProfile,
  kohFromNaoh,
  kohShareFromMassShare,
  lyeStrengthFromMixing,
  naohFromKoh,
  planLye,
  readFat,
  saponificationValueFromProfile,
  superfatFromLye,
} from 'laurate';
import { describe, expect, it } from 'vitest';
import { deviation, textOf, throughJson } from './exact.js';

const stored = <T>(result: T): T => throughJson(result) as T;
const asIs = <T>(result: T): T => result;

describe.each([
  ['as it is', asIs],
  ['through JSON', stored],
] as const)('a result, %s', (_way, pass) => {
  it('values from a profile make a certificate', () => {
    const profile = { 'C12:0': { low: 40, high: 60 }, 'C18:1': { low: 40, high: 60 } };
    const { saponificationValue } = pass(saponificationValueFromProfile({ kind: 'triglyceride', profile }));
    const { iodineValue } = pass(iodineValueFromProfile({ kind: 'triglyceride', profile }));
    const made = fatFromCertificate({ name: 'x', kind: 'triglyceride', saponificationValue, iodineValue });
    expect(textOf(made.saponificationValue)).toBe(textOf(saponificationValue));
    expect(textOf(made.iodineValue)).toBe(textOf(iodineValue));
  });

  it('an assay worked out makes an alkali, a mixed lye another', () => {
    const { hydroxide } = pass(
      alkaliContentOf({ alkali: 'naoh', solid: { totalAlkali: { percent: '95.0' }, carbonate: { percent: '3.0' } } }),
    );
    const mixed = pass(
      lyeStrengthFromMixing({ alkali: 'naoh', mass: { g: 100 }, solid: { hydroxide }, water: { g: 100 } }),
    );
    const { charged } = superfatFromLye({
      fats: [{ fat: fat('tallow'), mass: { kg: 1 } }],
      lye: [{ alkali: 'naoh', mass: mixed.lye, solution: { hydroxide: mixed.strength } }],
    });
    // the strength is a quotient of 34 digits
    expect(deviation(String(charged.likely.mol), String(mixed.hydroxide.likely.mol)).lte('1e-32')).toBe(true);
  });

  it('a grade in oxide makes an assay', () => {
    const { hydroxide } = pass(hydroxideFromOxideGrade({ alkali: 'koh', grade: { percent: 75 } }));
    const { naoh } = pass(naohFromKoh({ koh: { g: 100 }, kohAssay: hydroxide, naohAssay: { percent: 98 } }));
    const { koh } = kohFromNaoh({ naoh, naohAssay: { percent: 98 }, kohAssay: hydroxide });
    expect(koh.g.toFixed(28)).toBe(`100.${'0'.repeat(28)}`);
  });

  it('a share by mass makes a share by mole, a plan makes a charge', () => {
    const { kohShare } = pass(kohShareFromMassShare({ massShare: { percent: 50 } }));
    const solid = { hydroxide: { percent: 100 } };
    const fats = [{ fat: readFat(pass(fat('tallow'))), mass: { g: 1000 } }];
    const { weigh } = pass(
      planLye({
        fats,
        alkali: { naoh: { solid }, koh: { solid }, kohShare },
        target: { superfat: { percent: 5 } },
        dilution: { waterPerAlkali: 2 },
      }),
    );
    // half by mass: as much of the one as of the other
    expect(deviation(String(weigh.koh.g), String(weigh.naoh.g)).lte('1e-30')).toBe(true);
    const { superfat } = superfatFromLye({
      fats,
      lye: [
        { alkali: 'naoh', mass: weigh.naoh, solid },
        { alkali: 'koh', mass: weigh.koh, solid },
      ],
    });
    expect(superfat.likely.percent.toFixed(25)).toBe(`5.${'0'.repeat(25)}`);
  });
});
