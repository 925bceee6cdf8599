/** Which cautions stand with a plan and with a lye as weighed, and in which order. */
import {
  fat,
  fatFromBlend,
  fatFromCertificate,
  fats,
  lyeTemperatureFromDissolving,
  planLye,
  soapFromLye,
  superfatFromLye,
  type AlkaliChoice,
  type AlkaliSource,
  type Dilution,
  type Fat,
  type FatFromCertificateInput,
  type PublishedFatId,
} from 'laurate';
import { describe, expect, it } from 'vitest';

const lot = (half: number): Fat =>
  fatFromCertificate({
    name: 'A lot',
    kind: 'triglyceride',
    saponificationValue: { mgKohPerG: 250 },
    uncertainty: { mgKohPerG: half },
  });
const solid: AlkaliSource = { solid: { hydroxide: { percent: 98 } } };
const stock: AlkaliSource = { solution: { hydroxide: { percent: 50 } } };
const carbonated: AlkaliSource = { solid: { totalAlkali: { percent: 97 }, carbonate: { percent: 1 } } };

interface Case {
  readonly fats?: readonly Fat[];
  readonly alkali?: AlkaliChoice;
  readonly superfat?: number;
  readonly dilution?: Dilution;
}
const plan = ({
  fats = [lot(1)],
  alkali = { naoh: solid },
  superfat = 5,
  dilution = { strength: { percent: 30 } },
}: Case) =>
  planLye({
    fats: fats.map((one) => ({ fat: one, mass: { g: 500 } })),
    alkali,
    target: { superfat: { percent: superfat } },
    dilution,
  });
const codes = (of: Case): string[] => plan(of).cautions.map(({ code }) => code);

const ALWAYS = [
  'caustic-burns',
  'lye-into-hot-soap',
  'no-aluminium-zinc-tin',
  'children-and-animals',
  'sums-not-a-certificate',
];

describe('cautions of a plan', () => {
  it('stand in one order, burns first', () => {
    expect(codes({ fats: [lot(50), fat('stearic-acid-50')], alkali: { naoh: carbonated }, superfat: 0, dilution: { strength: { percent: 60 } } })).toEqual([
      'caustic-burns',
      'solid-into-cold-water',
      'stronger-than-dissolves',
      'lye-into-hot-soap',
      'free-fatty-acid-reacts-at-once',
      'carbonate-foams',
      'free-caustic-possible',
      'no-aluminium-zinc-tin',
      'children-and-animals',
      'sums-not-a-certificate',
    ]);
  }); // prettier-ignore

  describe('a percent below one looks like a fraction of one, and that comes first', () => {
    const fraction = 'percent-looks-like-fraction';
    const two = (kohShare: number | string): AlkaliChoice => ({
      naoh: stock,
      koh: solid,
      kohShare: { percent: kohShare },
    });
    it.each<[string, Case, Case]>([
      ['superfat', { superfat: 0.29 }, { superfat: 0.3 }],
      ['strength', { dilution: { strength: { percent: '0.33' } } }, { dilution: { strength: { percent: 1 } } }],
      ['lye', { alkali: { naoh: { solution: { hydroxide: { percent: '0.5' } } } }, dilution: 'as-is' }, { alkali: { naoh: { solution: { hydroxide: { percent: 1 } } } }, dilution: 'as-is' }],
      ['share of KOH', { alkali: two('0.6') }, { alkali: two(1) }],
    ])('%s', (of, below, from) => {
      const [first, second] = plan(below).cautions;
      expect([first?.code, second?.code]).toEqual([fraction, 'caustic-burns']);
      expect(codes(below)).not.toContain('none-left-on-paper');
      expect(codes(from)).not.toContain(fraction);
      expect(codes(from)).toContain(of === 'superfat' ? 'free-caustic-possible' : 'none-left-on-paper');
    }); // prettier-ignore

    it('nothing asked for is no such percent', () => {
      expect(codes({ superfat: 0 })).not.toContain(fraction);
    });

    it('the lye as weighed, also of soap made', () => {
      const charge = {
        fats: [{ fat: lot(1), mass: { g: 500 } }],
        lye: [{ alkali: 'naoh', mass: { g: 178 }, solution: { hydroxide: { percent: '0.5' } } }],
      } as const;
      for (const { cautions } of [superfatFromLye(charge), soapFromLye(charge)]) {
        expect(cautions.map(({ code }) => code).slice(0, 2)).toEqual([fraction, 'caustic-burns']);
      }
    });
  });

  it('nothing of it hangs on the last digits: lye that just meets the fats leaves none', () => {
    const meets = ['none-left-on-paper'];
    const ofCaustic = (cautions: readonly { readonly code: string }[]): string[] =>
      cautions.map(({ code }) => code).filter((code) => code.startsWith('free-caustic') || meets.includes(code));
    const one = ({ id }: { readonly id: PublishedFatId }): Fat =>
      fatFromCertificate({ name: id, like: fat(id), saponificationValue: fat(id).saponificationValue.likely });
    for (const g of [700, '333.3', 1000]) {
      for (const listing of fats) {
        const [drum, any] = [one(listing), fat(listing.id)].map((each) => [{ fat: each, mass: { g } }]);
        const asked = { alkali: { naoh: stock, koh: solid, kohShare: { percent: 30 } }, dilution: { waterPerFat: { percent: 30 } } };
        const none = planLye({ ...asked, fats: drum ?? [], target: { superfat: { percent: 0 } } });
        expect([listing.id, ofCaustic(none.cautions), none.superfat.low.percent.toString()]).toEqual([listing.id, meets, '0']);
        const limited = planLye({ ...asked, fats: any ?? [], target: { freeCausticAlkaliAtMost: { percentNaoh: 0 } } });
        expect([listing.id, ofCaustic(limited.cautions)]).toEqual([listing.id, meets]);
      }
    }
  }); // prettier-ignore

  it('the lye of flakes is as hot as it is said to be', () => {
    const { final } = lyeTemperatureFromDissolving({
      alkali: 'naoh',
      solid: { g: 330 },
      assay: { percent: 98 },
      water: { g: 650 },
      start: { celsius: 20 },
    });
    // 330 g of 98 % and 650 g of water: 323.4/980 is 33 %
    expect(final.celsius.toFixed(0)).toBe('104');
    expect(plan({}).cautions.find(({ code }) => code === 'solid-into-cold-water')?.text).toContain('passes 100 °C');
  });

  it('are never left out', () => {
    for (const one of [{}, { alkali: { naoh: stock }, dilution: 'as-is' }, { superfat: 99 }] as const) {
      expect(codes(one)).toEqual(expect.arrayContaining(ALWAYS));
      expect(codes(one)[0]).toBe('caustic-burns');
    }
  });

  it('solid into cold water: where any alkali is a solid', () => {
    expect(codes({})).toContain('solid-into-cold-water');
    expect(codes({ alkali: { naoh: stock } })).not.toContain('solid-into-cold-water');
    expect(codes({ alkali: { naoh: stock, koh: solid, kohShare: { percent: 10 } } })).toContain(
      'solid-into-cold-water',
    );
  });

  it('free fatty acid: stearic acid and rosin, also inside a blend', () => {
    const reacts = 'free-fatty-acid-reacts-at-once';
    expect(codes({})).not.toContain(reacts);
    for (const id of ['stearic-acid-50', 'rosin-ww'] as const) {
      expect(codes({ fats: [lot(1), fat(id)] })).toContain(reacts);
      const blend = fatFromBlend({
        name: 'Stock',
        parts: [lot(1), fat(id)].map((one) => ({ fat: one, mass: { g: 1 } })),
      });
      expect(codes({ fats: [blend] })).toContain(reacts);
    }
  });

  it('carbonate foams: only with free acid, and only where there may be carbonate', () => {
    const acid = [lot(1), fat('stearic-acid-50')];
    const none: AlkaliSource = { solid: { totalAlkali: { percent: 97 }, carbonate: { percent: 0 } } };
    expect(codes({ fats: acid, alkali: { naoh: carbonated } })).toContain('carbonate-foams');
    expect(codes({ fats: acid, alkali: { naoh: none } })).not.toContain('carbonate-foams');
    expect(codes({ alkali: { naoh: carbonated } })).not.toContain('carbonate-foams');
  });

  it('free caustic: possible with the leanest lot, or none left on paper; never both, never neither', () => {
    // 250 ± 1 leaves 4.6 % of superfat; 250 ± 20 has lots 8 % leaner
    expect(codes({})).toContain('none-left-on-paper');
    expect(codes({})).not.toContain('free-caustic-possible');
    expect(codes({ fats: [lot(20)] })).toContain('free-caustic-possible');
    expect(codes({ fats: [lot(20)] })).not.toContain('none-left-on-paper');
    // also by the assay alone: up to 110 %, 5 % of superfat is used up
    const wide: AlkaliSource = {
      solid: { hydroxide: { low: { percent: 90 }, likely: { percent: 98 }, high: { percent: 110 } } },
    };
    expect(codes({ fats: [lot(0)], alkali: { naoh: wide } })).toContain('free-caustic-possible');
  });

  it('stronger than dissolves: solid soda to more than 52.2 %, solid potash to more than 52.8 %', () => {
    const at = (percent: number | string, alkali: AlkaliChoice = { naoh: solid }) =>
      codes({ alkali, dilution: { strength: { percent } } }).includes('stronger-than-dissolves');
    expect(at('52.2')).toBe(false);
    expect(at('52.3')).toBe(true);
    // 109 and 112 g to 100 g of water at 20 °C: 109/209, 112/212
    expect(at('52.7', { koh: solid })).toBe(false);
    expect(at('52.9', { koh: solid })).toBe(true);
    // of both together the lower limit, a convention
    const both = { naoh: solid, koh: solid, kohShare: { percent: 50 } };
    expect([at('52.2', both), at('52.3', both)]).toEqual([false, true]);
    // what is called a solution, and is stronger than one can be
    const melt: AlkaliSource = { solution: { hydroxide: { percent: 60 } } };
    expect(codes({ alkali: { koh: melt }, dilution: 'as-is' })).toContain('stronger-than-dissolves');
  });

  it('each has a text that is a sentence', () => {
    const { cautions } = planLye({
      fats: [{ fat: lot(1), mass: { g: 1 } }],
      alkali: { naoh: solid },
      target: { superfat: { percent: 5 } },
      dilution: { waterPerAlkali: 2 },
    });
    for (const { text } of cautions) expect(text).toMatch(/^[A-Z].*\.$/);
  });
});

describe('cautions of a lye as weighed', () => {
  const of = (grams: number, source: AlkaliSource) =>
    superfatFromLye({
      fats: [{ fat: lot(0), mass: { g: 1000 } }],
      lye: [{ alkali: 'naoh', mass: { g: grams }, ...source }],
    }).cautions.map(({ code }) => code);

  it('are the same, by what is in the pot', () => {
    expect(of(100, solid)).toEqual(expect.arrayContaining([...ALWAYS, 'solid-into-cold-water', 'none-left-on-paper']));
    expect(of(500, stock)).toEqual(expect.arrayContaining([...ALWAYS, 'free-caustic-certain', 'crystallised-stock']));
    expect(of(500, stock)).not.toContain('solid-into-cold-water');
    expect(of(500, stock)[0]).toBe('caustic-burns');
  });

  it('caustic: certain, likely, possible or none, by which lots leave it; the worse two stand second', () => {
    // 1000 g of 240 to 260 mg KOH/g take 4.278 to 4.634 mol, the likely 4.456: 349.2, 363.7 and 378.3 g of NaOH of 49 %
    const wide = lot(10);
    const charged = (grams: number): string[] =>
      superfatFromLye({
        fats: [{ fat: wide, mass: { g: 1000 } }],
        lye: [{ alkali: 'naoh', mass: { g: grams }, solution: { hydroxide: { percent: 49 } } }],
      }).cautions.map(({ code }) => code);
    expect(charged(349)).toContain('none-left-on-paper');
    expect(charged(350)).toContain('free-caustic-possible');
    expect(charged(364)[1]).toBe('free-caustic-likely');
    expect(charged(379)[1]).toBe('free-caustic-certain');
  });

  it('a certificate outside every published range is named before any weighing, with the usual cause', () => {
    const castor = (saponificationValue: { gNaohPerG: string } | { gKohPerG: string }): Fat =>
      fatFromCertificate({ name: 'Castor', like: fat('castor-oil'), saponificationValue });
    const cautions = (of: Fat): string[] => codes({ fats: [of] });
    const note = (of: Fat): string =>
      of.notes.find(({ code }) => code === 'certificate-outside-published-range')?.text ?? '';
    // 0.180 g of KOH to the gram is right; 0.180 of NaOH is 252.5 mg of KOH, 0.1283 of KOH is 128.3
    expect(cautions(castor({ gKohPerG: '0.180' }))).not.toContain('certificate-contradicts-standard');
    expect(cautions(castor({ gNaohPerG: '0.180' }))[1]).toBe('certificate-contradicts-standard');
    // nothing reassures beside it
    expect(cautions(castor({ gKohPerG: '0.180' }))).toContain('none-left-on-paper');
    expect(cautions(castor({ gNaohPerG: '0.180' }))).not.toContain('none-left-on-paper');
    expect(note(castor({ gNaohPerG: '0.180' }))).toContain(
      "180.0 fits if it is mg of KOH, not of NaOH, per gram of fat: then { mgKohPerG: '180.0' }",
    );
    expect(note(castor({ gKohPerG: '0.1283' }))).toContain(
      "128.3 fits if it is mg of NaOH, not of KOH, per gram of fat: then { gNaohPerG: '0.1283' }",
    );
    expect(note(castor({ gKohPerG: '0.200' }))).toContain('is it a lot of this fat');
    const blend = fatFromBlend({ name: 'Stock', parts: [{ fat: castor({ gNaohPerG: '0.180' }), mass: { g: 1 } }] });
    expect(cautions(blend)).toContain('certificate-contradicts-standard');
  });

  it('a triglyceride beyond every published one, and oil that is another by its iodine value', () => {
    const made = (more: object): string[] =>
      codes({ fats: [fatFromCertificate({ name: 'Drum', ...more } as FatFromCertificateInput)] });
    const beyond = made({ kind: 'triglyceride', saponificationValue: { mgKohPerG: 356 } });
    expect(beyond[1]).toBe('certificate-beyond-known-fats');
    expect(beyond).not.toContain('none-left-on-paper');
    const unsaturated = made({
      like: fat('coconut-oil'),
      saponificationValue: { mgKohPerG: 256 },
      iodineValue: { gI2Per100g: 90 },
    });
    expect(unsaturated[1]).toBe('certificate-contradicts-standard');
    expect(unsaturated).not.toContain('none-left-on-paper');
  });

  it('much free acid counts by the acid value, whatever the kind', () => {
    const sour = (mgKohPerG: number): Fat =>
      fatFromCertificate({
        name: 'Sour',
        kind: 'triglyceride',
        saponificationValue: { mgKohPerG: 200 },
        acidValue: { mgKohPerG },
      });
    expect(codes({ fats: [sour(10)] })).toContain('free-fatty-acid-reacts-at-once');
    expect(codes({ fats: [sour(9)] })).not.toContain('free-fatty-acid-reacts-at-once');
  });

  it('a stock lye that is diluted warms, and one over 31 % may hold crystals', () => {
    const weak: AlkaliSource = { solution: { hydroxide: { percent: 31 } } };
    const potash: AlkaliSource = { solution: { hydroxide: { percent: 45 } } };
    expect(codes({ alkali: { naoh: stock } })).toEqual(
      expect.arrayContaining(['diluting-warms', 'crystallised-stock']),
    );
    expect(codes({ alkali: { naoh: stock }, dilution: 'as-is' })).not.toContain('diluting-warms');
    expect(codes({ alkali: { naoh: weak } })).not.toContain('crystallised-stock');
    expect(codes({ alkali: { koh: potash } })).not.toContain('crystallised-stock');
    expect(codes({ alkali: { koh: stock } })).toContain('crystallised-stock'); // 50 % freezes at 7 °C
  });

  it('a bare strength is said to be taken as exact, a range is not', () => {
    const notes = (
      hydroxide: { percent: number } | { low: { percent: number }; high: { percent: number } },
    ): string[] =>
      superfatFromLye({
        fats: [{ fat: lot(1), mass: { g: 1000 } }],
        lye: [{ alkali: 'naoh', mass: { g: 300 }, solution: { hydroxide } }],
      }).notes.map(({ code }) => code);
    expect(notes({ percent: 50 })).toContain('strength-taken-as-exact');
    expect(notes({ low: { percent: 49 }, high: { percent: 51 } })).not.toContain('strength-taken-as-exact');
  });
});
