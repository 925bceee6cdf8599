import type { Composition, Ratios } from '../../composition/index.js';
import { frozen, ZERO, type Decimal, type Numeric } from '../../numbers/index.js';
import { unitsByKind, type Estimate } from '../../quantities/index.js';
import type { RecipeClaims } from '../../recipe/index.js';
import { CLAIMED_PARTS } from '../../recipe/partSchemas.js';
import { asNumber, inUnit, type Shown } from '../figures.js';
import type { Finding, FindingCode } from '../finding.js';
import { printedQuantity, printedRatio, type Printed } from '../printed.js';
import { spanAt } from '../slips/diagnosis.js';
import { COMMON, USUAL, type Hypothesis } from '../slips/hypothesis.js';
import { partSlips, type Part } from '../slips/partSlips.js';
import { meet, type Span } from '../span.js';
import { contradiction } from './contradiction.js';
import { percentOf, ratio } from './lyeValues.js';
import type { PartPoints, PartValues } from './partValues.js';

type Claims = Pick<RecipeClaims, 'shares' | 'clearingAgentsPerSoap' | 'waterPerSoap'>;
type Reading = (values: PartValues) => Decimal | undefined;

/** Whether anything of the parts of the whole is printed. */
export const arePartsClaimed = ({ shares, clearingAgentsPerSoap, waterPerSoap }: Claims): boolean =>
  [shares, clearingAgentsPerSoap, waterPerSoap].some((claim) => claim !== undefined);

/** Whether the printed shares of soap, water and what clears are those of the pot, and their parts to one of soap. */
export function partFindings(
  points: PartPoints,
  { shares = {}, clearingAgentsPerSoap, waterPerSoap }: Claims,
): readonly Finding[] {
  return [
    ...CLAIMED_PARTS.flatMap((part) => {
      const claim = shares[part];
      if (claim === undefined) return [];
      return shareFinding(points, part, printedQuantity(claim, unitsByKind().fraction)) ?? [];
    }),
    ...perSoapFinding(points, 'clearingAgents', clearingAgentsPerSoap),
    ...perSoapFinding(points, 'water', waterPerSoap),
  ];
}

const NAMES: Readonly<Record<Part, string>> = {
  soap: 'anhydrous soap',
  water: 'water',
  glycerol: 'glycerol',
  clearingAgents: 'clearing agents',
  polyol: 'polyols',
  sugar: 'sugars',
  spirit: 'spirit',
};

const shareIn = (
  { components: { glycerol } }: Composition,
  { shares }: Ratios,
  part: Part,
): Estimate<{ readonly percent: Decimal }> => (part === 'glycerol' ? glycerol.share : shares[part]);

function shareFinding(points: PartPoints, part: Part, printed: Printed): Finding | undefined {
  const gramsOf = (values: PartValues): Decimal => {
    const { composition, ratios, end } = values;
    return shareIn(composition, ratios, part)
      [end].percent.times(composition.mass.likely.g)
      .div(100)
      .plus(mayBeToo(part, values));
  };
  const share: Reading = (values) => percentOf(gramsOf(values), values.composition.mass.likely.g);
  const ofAnother = (of: string, total: (values: PartValues) => Decimal): Hypothesis<PartValues> => ({
    code: 'percent-of-another-total',
    words: { of },
    weight: USUAL,
    figure: (values) => percentOf(gramsOf(values), total(values)),
  });
  return found({
    code: 'part-share-contradicted',
    path: `claimed.shares.${part}`,
    what: `for ${NAMES[part]} a share of the whole`,
    printed,
    points,
    readings: [
      share,
      ...asCharged(part).map(
        (grams): Reading =>
          (values) =>
            percentOf(grams(values), values.all),
      ),
    ],
    hypotheses: () => [
      ofAnother('parts to 100 of the fats', ({ fats }) => fats),
      ofAnother('parts to 100 of everything but the lye', ({ withoutLye }) => withoutLye),
      ...(part === 'soap' ? [] : [ofAnother('parts to 100 of the soap', (values) => soapOf(values))]),
      {
        code: 'weight-by-volume-as-by-weight',
        words: { of: 'the whole' },
        weight: USUAL,
        figure: (values) => timesDensity(share(values), values),
      },
      ...partSlips(part, (values, more) => percentOf(gramsOf(values).plus(more), values.all)),
    ],
    shown: inUnit('fraction', printed.unit),
  });
}

function perSoapFinding(
  points: PartPoints,
  part: 'clearingAgents' | 'water',
  claim: Numeric | undefined,
): readonly Finding[] {
  if (claim === undefined) return [];
  const isWater = part === 'water';
  const perSoap: Reading = (values) => {
    const { ratios, end } = values;
    const known = (isWater ? ratios.waterPerSoap : ratios.clearingAgentsPerSoap)[end].partsPerPart;
    return ratio(mayBeToo(part, values), soapOf(values, opposite(values)))?.plus(known);
  };
  const gramsOf = (values: PartValues): Decimal => soapOf(values).times(perSoap(values) ?? ZERO);
  const finding = found({
    code: isWater ? 'water-per-soap-contradicted' : 'clearing-agents-per-soap-contradicted',
    path: `claimed.${part}PerSoap`,
    what: `a ratio of ${NAMES[part]} to soap`,
    printed: printedRatio(claim),
    points,
    readings: [
      perSoap,
      ...asCharged(part).map(
        (grams): Reading =>
          (values) =>
            ratio(grams(values), soapOf(values, opposite(values))),
      ),
    ],
    hypotheses: () => [
      {
        code: 'percent-of-another-total',
        words: { of: 'parts to one of the fats' },
        weight: COMMON,
        figure: (values) => ratio(gramsOf(values), values.fats),
      },
      {
        code: 'percent-of-another-total',
        words: { of: 'parts to one of everything' },
        weight: USUAL,
        figure: (values) => ratio(gramsOf(values), values.all),
      },
      ...partSlips(part, (values, more) => ratio(gramsOf(values).plus(more), soapOf(values))),
    ],
    shown: asNumber,
  });
  return finding === undefined ? [] : [finding];
}

/** Grams in 100 g as grams in 100 mL of the whole. */
function timesDensity(percent: Decimal | undefined, { density, end }: PartValues): Decimal | undefined {
  const gPerML = density()?.[end];
  return gPerML === undefined ? undefined : percent?.times(gPerML);
}

/** What some mean by the word: what goes in, without the glycerol and the water that form. */
function asCharged(part: Part): readonly ((values: PartValues) => Decimal)[] {
  if (part === 'water') return [(values) => values.waterCharged[values.end].plus(mayBeToo(part, values))];
  if (part !== 'glycerol' && part !== 'polyol' && part !== 'clearingAgents') return [];
  return [
    ({ composition: { components, mass }, ratios, end }) => {
      const { share } = part === 'glycerol' ? components.glycerol : { share: ratios.shares[part] };
      return share[end].percent.times(mass[end].g).div(100).minus(components.glycerol.formed[end].g);
    },
  ];
}

/** What may be so much more of a part at its most: what is not known of solid alkali may be water. */
const mayBeToo = (part: Part, { unknownOfSolids, end }: PartValues): Decimal =>
  part === 'water' && end === 'high' ? unknownOfSolids : ZERO;

const opposite = ({ end }: PartValues): PartValues['end'] => (end === 'low' ? 'high' : end === 'high' ? 'low' : end);

function soapOf({ composition: { components }, end }: PartValues, at = end): Decimal {
  return components.soapSodium.mass[at].g.plus(components.soapPotassium.mass[at].g);
}

interface Compared {
  readonly code: FindingCode;
  readonly path: string;
  readonly what: string;
  readonly printed: Printed;
  readonly points: PartPoints;
  readonly readings: readonly Reading[];
  readonly hypotheses: () => readonly Hypothesis<PartValues>[];
  readonly shown: (span: Span) => Shown;
}

function found(compared: Compared): Finding | undefined {
  const { points, readings, printed } = compared;
  // what the pot as weighed gives need not be looked for elsewhere
  const isMet = readings.some((reading) => {
    const span = spanAt(points.asWeighed, reading);
    return span !== undefined && meet(span, printed);
  });
  if (isMet) return undefined;
  const { basis } = points.likely.composition;
  return contradiction({ ...compared, from: 'the rest of the recipe', basis: frozen(basis) });
}
