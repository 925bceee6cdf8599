import { SOLVENT_IDS, solvent, type SolventId } from '../../composition/index.js';
import { isSpirit } from '../../composition/components.js';
import { SPIRIT_CATCHES_FIRE } from '../../composition/cautions.js';
import { Decimal, frozen } from '../../numbers/index.js';
import { checkTemperatures, processWindows, type ProcessWindow, type WorkStage } from '../../process/index.js';
import { unitsByKind, type TemperatureInput } from '../../quantities/index.js';
import type { RecipeTemperature } from '../../recipe/index.js';
import type { RecipeParts, Row } from '../../recipe/readParts.js';
import type { SourceId } from '../../sources/index.js';
import { asPrinted, inUnit, inWords } from '../figures.js';
import type { Finding } from '../finding.js';
import type { Pot } from '../pot.js';
import { printedQuantity, type Printed } from '../printed.js';
import { slipsOf } from '../slips/diagnosis.js';
import { COMMON, type Hypothesis } from '../slips/hypothesis.js';
import type { Slip } from '../slips/slip.js';

const WATER_BOILS = 100;
/** Temperatures that a lye ordinarily has at the bench, °C; a convention, for slips of the scale only. */
const ordinaryLye = (): Hull => [new Decimal(20), new Decimal(80)];

/** What goes in besides fats and lye. */
type Additions = Pick<Pot, 'additions' | 'unweighed'>;

/** Whether a lye of so many degrees is judged: no window tells how hot it may be by itself, short of boiling and of ice. */
export const isLyeJudged = (temperature: TemperatureInput): boolean => {
  const { value } = printedTemperature(temperature);
  return value.gte(WATER_BOILS) || isFrozen(value);
};

/** Whether the printed temperatures are those of the work; of a lye by itself, whether it boils or freezes. */
export function temperatureFindings(
  pot: Additions,
  { temperatures }: Pick<RecipeParts, 'temperatures'>,
): readonly Finding[] {
  const windows = temperatures.rows.length === 0 ? [] : processWindows();
  const spirit = lowestBoiling(pot);
  return temperatures.rows.flatMap((row) => {
    const { stage, temperature } = row.row;
    const printed = printedTemperature(temperature);
    if (stage === 'lye') return isLyeJudged(temperature) ? [oddLye(row, printed)] : [];
    const reading = { row, stage, printed, ofStage: windows.filter((window) => window.stage === stage) };
    return [windowFinding(reading, pot), spirit && spiritFinding(reading, spirit)].flatMap((found) => found ?? []);
  });
}

/** A thermometer is off by so much, °C, whatever unit and decimals are printed: a convention. */
const OFF = 1;

function printedTemperature(temperature: TemperatureInput): Printed {
  const printed = printedQuantity(temperature, unitsByKind().temperature);
  return { ...printed, low: printed.value.minus(OFF), high: printed.value.plus(OFF) };
}

function oddLye({ path }: Row<RecipeTemperature>, printed: Printed): Finding {
  const isCold = isFrozen(printed.value);
  const says = `The recipe prints ${asPrinted(printed).text} for the lye.`;
  return {
    code: isCold ? 'temperature-too-cold' : 'temperature-too-hot',
    severity: 'caution',
    path: `${path}.temperature`,
    claimed: asPrinted(printed).value,
    values: frozen({}),
    explanation: isCold
      ? `${says} That is ice cold: a strong lye crystallises there, and soap is not made with it.`
      : `${says} There water boils, and a lye that boils throws caustic about: solid alkali goes into cold water, a little at a time, and the lye cools before it is used.`,
    slips: slipsOfScale(printed, path, ordinaryLye()),
    basis: frozen(['common-practice', 'laurate-convention']),
  };
}

interface Reading {
  readonly row: Row<RecipeTemperature>;
  readonly stage: Exclude<WorkStage, 'lye'>;
  readonly printed: Printed;
  readonly ofStage: readonly ProcessWindow[];
}

function windowFinding(reading: Reading, pot: Additions): Finding | undefined {
  const { stage, printed } = reading;
  const says = `The recipe prints ${asPrinted(printed).text} at ${stage}.`;
  const slips = slipsOfStage(reading);
  const found = (code: Finding['code'], severity: Finding['severity'], explanation: string): Finding =>
    finding(reading, code, severity, `${says} ${explanation}`, slips, ['common-practice']);
  if (printed.low.gt(WATER_BOILS))
    return found('temperature-too-hot', 'caution', 'There the water boils off: it foams up and over, caustic and all.');
  // without sorbitol the window of clearing is that of saponification
  const asStage = stage === 'clearing' && !holds(pot, ['sorbitol']) ? 'saponification' : stage;
  const judged = (celsius: Decimal) =>
    checkTemperatures({ readings: [{ stage: asStage, temperature: { celsius: legibly(celsius) } }] }).stages[0];
  const hot = judged(printed.low);
  if (hot?.verdict === 'too-hot') {
    const [, highest] = hullOf(reading.ofStage);
    // common practice of one route is no reason to doubt another that is published
    const isPublished = printed.low.lte(highest) && asStage !== 'clearing';
    const printedElsewhere = isPublished ? ` Publications of other routes go up to ${inWords(highest)} °C.` : '';
    const severity = stage === 'pouring' || isPublished ? 'note' : 'caution';
    return found('temperature-too-hot', severity, `${hot.meaning.text}${printedElsewhere}`);
  }
  if (isFarTooCold(printed, hullOf(reading.ofStage)))
    return found('temperature-too-cold', 'caution', 'That is far colder than any text works at.');
  const cold = hot?.verdict === 'too-cold' ? judged(printed.high) : undefined;
  if (cold?.verdict === 'too-cold') return found('temperature-too-cold', 'note', cold.meaning.text);
  return undefined;
}

function finding(
  { row: { path }, printed, ofStage }: Reading,
  code: Finding['code'],
  severity: Finding['severity'],
  explanation: string,
  slips: readonly Slip[],
  basis: readonly SourceId[],
): Finding {
  const [lowest, highest] = hullOf(ofStage);
  return {
    code,
    severity,
    path: `${path}.temperature`,
    claimed: asPrinted(printed).value,
    values: frozen({ publishedFrom: frozen({ celsius: lowest }), publishedTo: frozen({ celsius: highest }) }),
    explanation,
    slips,
    basis: frozen([...basis]),
  };
}

/**
 * Colder by this than the coldest that any text or the trade has at a stage is no temperature of the work, °C: a convention. A
 * kettle that starts at the temperature of a warm room is not doubted.
 */
const FAR = 25;

/** By the figure itself, so that it does not matter in which unit it is printed. */
const isFarTooCold = ({ value }: Printed, [lowest]: Hull): boolean => isFrozen(value) || value.lt(lowest.minus(FAR));

/** Ice makes no soap. */
const isFrozen = (celsius: Decimal): boolean => celsius.lte(0);

/** The end of a last digit as a reader takes it: within what a bench has, and no finer than any thermometer. */
const legibly = (celsius: Decimal): Decimal => Decimal.max(-100, Decimal.min(400, celsius)).toDecimalPlaces(12);

type Hull = readonly [lowest: Decimal, highest: Decimal];

/** The coldest and the hottest that any text or the trade has at a stage, °C. */
function hullOf(windows: readonly ProcessWindow[]): Hull {
  const ends = windows.flatMap(({ from, to }) => [from, to].flatMap((end) => end?.celsius ?? []));
  return [Decimal.min(...ends), Decimal.max(...ends)];
}

const slipsOfStage = ({ printed, ofStage, row: { path } }: Reading): readonly Slip[] =>
  slipsOfScale(printed, path, hullOf(ofStage));

/** The scales of the thermometer taken for one another: what would be right as it would then be printed. */
function slipsOfScale(printed: Printed, path: string, [lowest, highest]: Hull): readonly Slip[] {
  if (printed.high.gte(lowest) && printed.low.lte(highest)) return frozen([]);
  const { fahrenheit } = unitsByKind().temperature;
  const asMeant = (other: Decimal): string => other.toDecimalPlaces(0).toString();
  const number = new Decimal(printed.text);
  const taken: Readonly<Record<string, Pick<Hypothesis<Decimal>, 'code' | 'figure'> & { readonly is: Decimal }>> = {
    celsius: {
      code: 'fahrenheit-as-celsius',
      is: fahrenheit.toCanonical(number, path),
      figure: (celsius) => fahrenheit.fromCanonical(celsius, path),
    },
    fahrenheit: {
      code: 'celsius-as-fahrenheit',
      is: fahrenheit.fromCanonical(number, path),
      figure: (celsius) => fahrenheit.toCanonical(celsius, path),
    },
  };
  const slip = taken[printed.unit];
  if (slip === undefined) return frozen([]);
  return slipsOf(
    { span: printed, printed, shown: inUnit('temperature', printed.unit) },
    { corners: [lowest, highest], likely: lowest.plus(highest).div(2) },
    [
      {
        code: slip.code,
        figure: slip.figure,
        path,
        weight: COMMON,
        words: { meant: printed.text, is: asMeant(slip.is) },
      },
    ],
  );
}

interface Boiling {
  readonly name: string;
  readonly celsius: Decimal;
  readonly basis: readonly SourceId[];
}

/** The spirit of the pot that boils first. */
function lowestBoiling(pot: Additions): Boiling | undefined {
  const boiling = SOLVENT_IDS.filter((id) => isSpirit(id) && holds(pot, [id])).flatMap((id): readonly Boiling[] => {
    const { name, boilingPoint, basis } = solvent(id);
    return boilingPoint === undefined ? [] : [{ name, celsius: boilingPoint.celsius, basis }];
  });
  return boiling.sort((one, other) => one.celsius.cmp(other.celsius))[0];
}

const holds = ({ additions, unweighed }: Additions, solvents: readonly SolventId[]): boolean =>
  [...additions, ...unweighed].some((one) => one.holds !== undefined && solvents.includes(one.holds.solvent));

function spiritFinding(reading: Reading, { name, celsius, basis }: Boiling): Finding | undefined {
  const { printed, stage } = reading;
  // to the whole degree: with its water spirit boils a little lower
  if (printed.low.lt(celsius.floor())) return undefined;
  const says = `The recipe prints ${asPrinted(printed).text} at ${stage}, and ${name.toLowerCase()} boils at ${inWords(celsius)} °C: wherever it is in by then, it boils off.`;
  return finding(
    reading,
    'spirit-boils',
    'caution',
    `${says} ${SPIRIT_CATCHES_FIRE.text}`,
    slipsOfStage(reading),
    basis,
  );
}
