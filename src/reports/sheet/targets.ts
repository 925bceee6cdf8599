import { Decimal, frozen } from '../../numbers/index.js';
import { freeAlkaliLimits } from '../../freeAlkali/index.js';
import {
  mapEnds,
  valueIn,
  type AlkaliContentInput,
  type Estimate,
  type FractionInput,
} from '../../quantities/index.js';
import { escaped, table } from '../markdown.js';
import type { Sheet } from './sheet.js';

/** A limit of free caustic with where it is from. */
interface CausticLimit {
  readonly percentNaoh: Decimal;
  readonly from: string;
}

/** The limit that the recipe sets; else that of toilet soap, which is recalled. */
function causticLimit({ batch }: Sheet): CausticLimit {
  const wanted: AlkaliContentInput | undefined = batch.recipe.target?.freeCausticAlkaliAtMost;
  if (wanted !== undefined) return frozen({ percentNaoh: valueIn(wanted, 'percentNaoh'), from: 'target' });
  const [strictest] = [...freeAlkaliLimits]
    .map(({ atMost, soap }) => ({ percentNaoh: valueIn(atMost, 'percentNaoh'), from: `${soap}, recalled` }))
    .sort((a, b) => a.percentNaoh.cmp(b.percentNaoh)) as [CausticLimit];
  return strictest;
}

/** The limit in words; cut after four decimals, so that what is printed is no more than what is allowed. */
export function causticLimitText(sheet: Sheet): { readonly atMost: string; readonly from: string } {
  const { percentNaoh, from } = causticLimit(sheet);
  const shown = percentNaoh.toDecimalPlaces(4, Decimal.ROUND_DOWN);
  return { atMost: `at most ${sheet.write.number(shown, shown.decimalPlaces())}`, from };
}

/** What the batch should be, what lots and assays make of it, and its limits. */
export function targets(sheet: Sheet): readonly string[] {
  const { batch, write } = sheet;
  const { ratios, fattyMatter, composition, volume, cost } = batch;
  /** What does not vary stands once. */
  const line = (figure: string, planned: string, span: string, limit = ''): readonly string[] => [
    figure,
    planned,
    span === planned ? '' : span,
    limit,
  ];
  const row = (figure: string, values: Estimate<Decimal>, decimals: number, limit?: string): readonly string[] =>
    line(figure, write.number(values.likely, decimals), write.span(values, decimals), limit);
  const percent = <Q extends { readonly percent: Decimal }>(values: Estimate<Q>): Estimate<Decimal> =>
    mapEnds(values, (value) => value.percent);
  const wanted: FractionInput | undefined = batch.recipe.target?.superfat;
  const aim = wanted === undefined ? '' : `aim ${write.number(valueIn(wanted, 'percent'), 2)}`;
  const limit = causticLimitText(sheet);
  const caustic = mapEnds(batch.freeCausticAlkali, ({ percentNaoh }) => percentNaoh);
  return [
    '## Targets and limits',
    '',
    ...table(
      [
        ['figure', 'left'],
        ['planned', 'right'],
        ['over all lots and assays', 'right'],
        ['aim or limit', 'left'],
      ],
      [
        row('superfat, % of the alkali demand', percent(batch.superfat), 2, aim),
        row('free caustic, % NaOH', caustic, 3, `${limit.atMost} (${limit.from})`),
        line('finished base', write.mass(composition.mass.likely), write.massSpan(composition.mass)),
        row('soap, %', percent(ratios.shares.soap), 1),
        row('water, %', percent(ratios.shares.water), 1),
        row(
          'clearing agents to soap',
          mapEnds(ratios.clearingAgentsPerSoap, ({ partsPerPart }) => partsPerPart),
          2,
        ),
        row('total fatty matter, %', percent(fattyMatter.totalFattyMatter), 1),
        line('volume at pouring', write.volume(volume.volume.likely), write.volumeSpan(volume.volume)),
        ...(cost === undefined
          ? []
          : [
              row(
                `cost of a kilogram, ${escaped(cost.currency)}`,
                mapEnds(cost.perKilogram, ({ amount }) => amount),
                2,
                `batch ${write.number(cost.batch.amount, 2)}`,
              ),
            ]),
      ],
    ),
  ];
}
