/** The tables of `docs/audit.md`. */
import { table } from '../../pages.js';
import type { SlipTrials, SoundTrials } from './trials.js';

const share = (part: number, whole: number): string => (whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`);

/** The commonest entries of a count. */
const most = (counts: Readonly<Record<string, number>>, except: string, whole: number): string =>
  Object.entries(counts)
    .filter(([code, count]) => code !== except && count >= whole / 20)
    .sort(([, one], [, other]) => other - one)
    .slice(0, 4)
    .map(([code, count]) => `${code} (${share(count, whole)})`)
    .join(', ') || '-';

export function tablesOf(sound: SoundTrials, slips: readonly SlipTrials[]): string {
  const sum = (of: (trials: SlipTrials) => number): number => slips.reduce((total, trials) => total + of(trials), 0);
  const [outside, found] = [sum((trials) => trials.outside), sum((trials) => trials.found)];
  return `**Sound recipes.** ${String(sound.tried)} drawn, and ${String(sound.notSound)} left aside because their true or their likely lot leaves free
caustic above the limit. Verdicts: ${Object.entries(sound.verdicts)
    .map(([verdict, count]) => `${verdict} ${String(count)}`)
    .join(', ')}. False alarms (wrong or dangerous): **${String(sound.alarms.length)}**.

**Slips.** ${String(sum(({ tried }) => tried))} recipes with one slip; in ${String(outside)} the figure lies outside what any lot and any last digit explain, and
${String(found)} of these were found (${share(found, outside)}). The slip is named first in ${share(
    sum(({ first }) => first),
    found,
  )}, among the first three in ${share(
    sum(({ amongThree }) => amongThree),
    found,
  )}. Not counting others
that give the same figure: first in ${share(
    sum(({ firstOfSeparable }) => firstOfSeparable),
    found,
  )}, among the first three in ${share(
    sum(({ amongThreeOfSeparable }) => amongThreeOfSeparable),
    found,
  )}.

${table(
  [
    'slip',
    'tried',
    'outside',
    'found',
    'named first',
    'in three',
    'first, where it can be told apart',
    'in three, the same',
  ],
  slips.map((trials) => [
    trials.name,
    String(trials.tried),
    String(trials.outside),
    share(trials.found, trials.outside),
    share(trials.first, trials.found),
    share(trials.amongThree, trials.found),
    share(trials.firstOfSeparable, trials.found),
    share(trials.amongThreeOfSeparable, trials.found),
  ]),
)}

What was named first instead, and what gives the same figure, so that no figure of the recipe tells them apart:

${table(
  ['slip', 'named first instead', 'gives the same figure'],
  slips.map(({ name, code, named, alike, found: of }) => [name, most(named, code, of), most(alike, '', of)]),
)}`;
}
