/** What the live page says of a form, against the library's own figures; `tests/browser` holds the page to the same. */
import { planLye, type Decimal, type Estimate } from 'laurate';
import { describe, expect, it } from 'vitest';
import { answerTo, inputOf, shownOf, type Entry, type Shown } from '../../docs/live/plan.js';

/** The charge of the README. */
const README: Entry = {
  fats: [{ fat: 'coconut-oil', grams: '700' }],
  alkali: 'naoh',
  state: 'solution',
  hydroxide: '50',
  superfat: '2',
  strength: '33',
  scaleStep: '1',
};

function shown(entry: Entry): Shown {
  const answer = answerTo(entry);
  if ('refused' in answer) throw new Error(answer.refused.text);
  return answer.shown;
}

const rowOf = (entry: Entry, id: string) => shown(entry).spread.find((row) => row.id === id);

describe('the live page: worked by hand', () => {
  it('says of the README’s charge what the README says, bounds rounded outward', () => {
    expect(shown(README).weigh).toEqual([
      { id: 'weigh-naoh', label: 'sodium hydroxide lye', text: '246 g' },
      { id: 'weigh-water', label: 'water to add', text: '127 g' },
      { id: 'lye-mass', label: 'together, the lye for the pot', text: '373 g' },
    ]);
    expect(rowOf(README, 'spread-superfat')).toMatchObject({ low: '0.6', likely: '2.3' });
    expect(rowOf(README, 'spread-free-caustic')).toMatchObject({ low: 'none', likely: 'none', high: 'none' });
    expect(shown(README).cautions[0]).toMatch(/^Caustic burns skin/);
  });

  it('names potash, and solid alkali, for what they are', () => {
    const labels = (entry: Partial<Entry>) => shown({ ...README, ...entry }).weigh.map(({ label }) => label);
    expect(labels({ alkali: 'koh' })[0]).toBe('potassium hydroxide lye');
    expect(labels({ alkali: 'koh', state: 'solid', hydroxide: '90' })[0]).toBe('potassium hydroxide, solid');
    expect(labels({ state: 'solid', hydroxide: '99' })[0]).toBe('sodium hydroxide, solid');
  });

  it('never prints a little caustic as none: it goes up', () => {
    // the leanest lawful lot, 248 mg KOH/g of the likely 252.3, needs 1.70 % less: 1.68 % leaves a trace
    const entry = { ...README, superfat: '1.68', scaleStep: '0.01' };
    const { freeCausticAlkali } = planLye(inputOf(entry));
    expect(freeCausticAlkali.high.percentNaoh.gt(0)).toBe(true);
    expect(freeCausticAlkali.high.percentNaoh.lt('0.005')).toBe(true);
    expect(rowOf(entry, 'spread-free-caustic')?.high).toBe('0.01');
  });
});

describe('the live page: laws', () => {
  const entries: readonly Entry[] = [
    README,
    { ...README, superfat: '0', scaleStep: '0.1' },
    { ...README, alkali: 'koh', state: 'solid', hydroxide: '87.3', strength: '41' },
    {
      ...README,
      superfat: '7.7',
      fats: [
        { fat: 'babassu-oil', grams: '333.3' },
        { fat: 'stearic-acid-50', grams: '120' },
      ],
    },
  ];

  it.each(entries)('shown bounds hold the library’s, and by less than a step of their digits: %j', (entry) => {
    const plan = planLye(inputOf(entry));
    const { spread, notes, cautions } = shownOf(plan, entry);
    const percents = ({ low, likely, high }: Estimate<{ readonly percent: Decimal }>) =>
      [low.percent, likely.percent, high.percent] as const;
    const figures = {
      'spread-superfat': percents(plan.superfat),
      'spread-superfat-by-mass': percents(plan.superfatByMass),
      'spread-strength': percents(plan.lye.strength),
    };
    for (const [id, [low, likely, high]] of Object.entries(figures)) {
      const row = spread.find((each) => each.id === id);
      const apart = (figure: Decimal, text = '') => figure.minus(text).toNumber();
      const isOne = low.eq(high);
      expect(apart(low, row?.low)).toBeGreaterThanOrEqual(isOne ? -0.05 : 0);
      expect(apart(low, row?.low)).toBeLessThan(0.1);
      expect(Math.abs(apart(likely, row?.likely))).toBeLessThanOrEqual(0.05);
      expect(apart(high, row?.high)).toBeLessThanOrEqual(isOne ? 0.05 : 0);
      expect(apart(high, row?.high)).toBeGreaterThan(-0.1);
    }
    expect(notes).toEqual(plan.notes.map(({ text }) => text));
    expect(cautions).toEqual(plan.cautions.map(({ text }) => text));
  });

  it('draws what lots do and what is in the pot', () => {
    const [lots, pot] = shown(README).charts;
    expect(lots?.description).toMatch(/^Superfat 2\.3 % \(0\.6 to /);
    expect(pot?.description).toMatch(/^What is in the pot, percent by mass: sodium soap /);
  });
});

describe('the live page: refusals', () => {
  it.each<[Partial<Entry>, string, string]>([
    [{ superfat: '' }, 'target.superfat.percent', 'Expected a finite number or decimal text; this is an empty text.'],
    [
      { strength: '60' },
      'dilution.strength',
      'Expected at most 50 percent, the strength of the alkali itself; this is 60.',
    ],
    [
      { fats: [] },
      'fats',
      "Expected a list such as [{ fat: fat('coconut-oil'), mass: { g: 500 } }], with at least one entry; this is a list of 0.",
    ],
    [{ scaleStep: '0' }, 'scaleStep.g', 'Expected more than 0; this is 0.'],
  ])('%j is refused with its field, in words', (part, path, text) => {
    expect(answerTo({ ...README, ...part })).toEqual({ refused: { path, text } });
  });

  it('what is no refusal is thrown on', () => {
    expect(() => answerTo({ ...README, fats: undefined as unknown as Entry['fats'] })).toThrow(TypeError);
  });
});
