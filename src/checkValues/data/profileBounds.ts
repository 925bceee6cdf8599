import { fats } from '../../fats/index.js';
import { Decimal } from '../../numbers/index.js';
import type { CheckValue } from '../checkValue.js';
import { publishedProfileOf } from './standardRanges.js';

type Box = readonly [fat: string, low: string, high: string];

/** Least and greatest saponification value of all profiles inside the published limits that sum to 100. */
const SAPONIFICATION_VALUES: readonly Box[] = [
  ['peanut-oil', '187.4', '192.5'],
  ['babassu-oil', '232.3', '258.0'],
  ['coconut-oil', '246.4', '262.6'],
  ['cottonseed-oil', '194.5', '196.4'],
  ['grapeseed-oil', '191.1', '193.4'],
  ['corn-oil', '191.4', '194.4'],
  ['mustardseed-oil', '170.4', '184.5'],
  ['palm-kernel-oil', '238.0', '254.9'],
  ['palm-kernel-olein', '234.2', '250.4'],
  ['palm-kernel-stearin', '244.1', '253.7'],
  ['palm-oil', '197.3', '200.3'],
  ['palm-oil-high-oleic', '194.1', '198.2'],
  ['palm-olein', '197.2', '199.4'],
  ['palm-stearin', '199.2', '205.0'],
  ['palm-superolein', '195.9', '198.5'],
  ['rapeseed-oil-high-erucic', '168.3', '191.4'],
  ['canola-oil', '188.8', '192.3'],
  ['rice-bran-oil', '192.0', '195.5'],
  ['safflower-oil', '190.8', '192.7'],
  ['safflower-oil-high-oleic', '190.2', '191.7'],
  ['sesame-oil', '191.3', '192.9'],
  ['soybean-oil', '191.5', '193.8'],
  ['sunflower-oil', '190.5', '192.6'],
  ['sunflower-oil-high-oleic', '189.5', '191.1'],
  ['sunflower-oil-mid-oleic', '190.4', '191.8'],
  ['linseed-oil', '191.0', '194.5'],
  ['walnut-oil', '192.0', '192.9'],
  ['almond-oil', '190.8', '192.3'],
  ['hazelnut-oil', '190.7', '192.1'],
  ['pistachio-oil', '191.3', '193.6'],
  ['avocado-oil', '191.7', '200.3'],
  ['olive-oil', '191.2', '194.8'],
  ['olive-pomace-oil', '191.2', '194.8'],
  ['lard', '193.5', '198.4'],
  ['rendered-pork-fat', '193.5', '198.4'],
  ['premier-jus', '194.5', '201.7'],
  ['tallow', '194.5', '201.7'],
  ['castor-oil', '180.9', '182.3'],
  ['castor-oil-hydrogenated', '179.8', '181.2'],
  ['cocoa-butter', '193.6', '195.5'],
  ['shea-butter', '189.2', '192.9'],
  ['hempseed-oil', '191.7', '192.9'],
  ['neem-oil', '192.8', '196.3'],
  ['tung-oil', '192.4', '193.1'],
  ['butterfat', '210.3', '240.3'],
  ['stearic-acid-50', '205.8', '210.2'],
  ['stearic-acid-70', '201.5', '205.8'],
  ['stearic-acid-95', '197.2', '199.4'],
  ['stearic-acid-purified', '197.2', '199.4'],
  ['oleic-acid', '197.9', '206.1'],
  ['myristic-acid', '245.7', '245.7'],
  ['palmitic-acid', '217.5', '218.8'],
];

/** The same for iodine values; fats without a double bond are passed over. */
const IODINE_VALUES: readonly Box[] = [
  ['peanut-oil', '65.2', '116.9'],
  ['babassu-oil', '10.0', '28.2'],
  ['coconut-oil', '5.9', '13.4'],
  ['cottonseed-oil', '98.9', '116.7'],
  ['grapeseed-oil', '119.3', '148.5'],
  ['corn-oil', '96.2', '139.1'],
  ['mustardseed-oil', '86.8', '135.2'],
  ['palm-kernel-oil', '11.9', '23.0'],
  ['palm-kernel-olein', '16.3', '29.3'],
  ['palm-kernel-stearin', '4.3', '9.7'],
  ['palm-oil', '46.4', '60.1'],
  ['palm-oil-high-oleic', '56.8', '81.2'],
  ['palm-olein', '51.4', '62.6'],
  ['palm-stearin', '18.5', '49.9'],
  ['palm-superolein', '55.7', '71.7'],
  ['rapeseed-oil-high-erucic', '82.2', '128.8'],
  ['canola-oil', '96.3', '133.9'],
  ['rice-bran-oil', '77.7', '114.9'],
  ['safflower-oil', '133.8', '152.3'],
  ['safflower-oil-high-oleic', '84.9', '100.8'],
  ['sesame-oil', '100.3', '118.6'],
  ['soybean-oil', '117.5', '148.1'],
  ['sunflower-oil', '110.8', '144.3'],
  ['sunflower-oil-high-oleic', '75.7', '96.0'],
  ['sunflower-oil-mid-oleic', '90.7', '120.2'],
  ['linseed-oil', '151.2', '216.1'],
  ['walnut-oil', '140.3', '162.4'],
  ['almond-oil', '92.4', '109.5'],
  ['hazelnut-oil', '79.5', '99.1'],
  ['pistachio-oil', '77.9', '110.2'],
  ['avocado-oil', '58.9', '105.2'],
  ['olive-oil', '66.3', '99.5'],
  ['olive-pomace-oil', '66.2', '99.5'],
  ['lard', '39.7', '77.7'],
  ['rendered-pork-fat', '39.7', '77.7'],
  ['premier-jus', '29.0', '64.3'],
  ['tallow', '29.0', '64.3'],
  ['castor-oil', '80.3', '90.1'],
  ['cocoa-butter', '29.4', '42.7'],
  ['shea-butter', '30.8', '74.2'],
  ['hempseed-oil', '151.7', '167.1'],
  ['neem-oil', '42.2', '74.1'],
  ['tung-oil', '212.4', '236.1'],
  ['butterfat', '20.8', '40.7'],
  ['oleic-acid', '65.3', '114.4'],
];

const HALF = '0.05';

/**
 * Bounds over the profiles that a standard allows, worked out apart from the library by linear programming. The same limits
 * go in, so that they check the arithmetic and the search for the ends, not the standards.
 */
export function profileBoundsChecks(): readonly CheckValue[] {
  return [
    ...SAPONIFICATION_VALUES.flatMap((box) =>
      rowsOf(box, 'saponification-value', ['56.105', '56.1053']).map((row): CheckValue => ({
        ...row,
        call: 'saponificationValueFromProfile',
        result: 'saponificationValue',
        unit: 'mgKohPerG',
      })),
    ),
    ...IODINE_VALUES.flatMap((box) =>
      rowsOf(box, 'iodine-value', ['253.809', '253.80']).map((row): CheckValue => ({
        ...row,
        call: 'iodineValueFromProfile',
        result: 'iodineValue',
        unit: 'gI2Per100g',
      })),
    ),
  ];
}

function rowsOf([fat, low, high]: Box, slug: string, [used, ours]: readonly [string, string]) {
  const published = publishedProfileOf(fat);
  return fats.flatMap(({ id, kind, name }) => {
    if (id !== fat || kind === 'rosin' || published === undefined) return [];
    const ofWeights = new Decimal(used).minus(ours).abs().times(high).div(ours).toDecimalPlaces(5, Decimal.ROUND_UP);
    return [
      {
        id: `${fat}-${slug}-bounds`,
        inputs: { kind, profile: published.profile },
        printed: `${low} to ${high}`,
        expectedBounds: [low, high] as const,
        tolerance: ofWeights.plus(HALF).toFixed(),
        why: `${HALF} half a last digit + ${ofWeights.toFixed(5)} ${used} for ${ours} g/mol. Worked out from the published limits, and not itself printed.`,
        source: published.source,
        where: `${name}: least and greatest ${slug.replace('-', ' ')} inside the limits of its fatty acids`,
        obtained: 'derived' as const,
      },
    ];
  });
}
