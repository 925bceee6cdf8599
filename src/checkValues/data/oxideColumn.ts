import { Decimal } from '../../numbers/index.js';
import type { CheckValue } from '../checkValue.js';
import { SODA_1908 } from './lyeDensities.js';

/** Per cent of Na2O by degrees Twaddell, the column beside that of NaOH. */
const OXIDE_1908: Readonly<Record<string, string>> = {
  '2': '0.742',
  '3': '1.114',
  '5': '1.834',
  '6': '2.194',
  '8': '2.964',
  '9': '3.244',
  '11': '3.943',
  '12': '4.292',
  '14': '4.972',
  '17': '5.981',
  '18': '6.311',
  '20': '6.954',
  '21': '7.276',
  '23': '7.910',
  '24': '8.223',
  '26': '8.893',
  '27': '9.251',
  '29': '9.965',
  '30': '10.313',
  '32': '11.008',
  '33': '11.347',
  '35': '12.025',
  '38': '13.016',
  '39': '13.339',
  '41': '14.058',
  '42': '14.438',
  '45': '15.502',
  '47': '16.299',
  '48': '16.692',
  '50': '17.424',
  '51': '17.800',
  '53': '18.529',
  '54': '18.897',
  '56': '19.609',
  '57': '19.961',
  '59': '20.655',
  '60': '21.156',
  '62': '21.785',
  '63': '22.168',
  '65': '22.926',
  '66': '23.310',
  '68': '24.046',
  '69': '24.410',
  '71': '25.152',
  '72': '25.526',
  '74': '26.285',
  '75': '26.650',
  '77': '27.385',
  '78': '27.745',
  '80': '28.465',
  '81': '28.836',
  '83': '29.570',
  '84': '29.930',
  '86': '30.645',
  '87': '30.995',
  '89': '31.700',
  '90': '32.043',
  '92': '32.870',
  '93': '33.283',
  '95': '34.092',
  '96': '34.500',
  '98': '35.245',
  '99': '35.691',
};

/** 80/62 is 1.2903, and most rows keep 1.2900: so much less than the ratio of today. */
const RATIO = '1.2900 for 79.994/61.979';
const HALF = '0.0005';

const roundedUp = (part: Decimal): Decimal => part.toDecimalPlaces(5, Decimal.ROUND_UP);

/**
 * Hydroxide from oxide, by two columns of a table of 1908. The three rows whose NaOH is misprinted are left out: they are
 * checked by their gravity.
 */
export function oxideColumnChecks(): readonly CheckValue[] {
  return SODA_1908.flatMap(([twaddell, naoh]) => {
    const na2o = OXIDE_1908[twaddell];
    return na2o === undefined ? [] : [oxideCheck(twaddell, naoh, na2o)];
  });
}

function oxideCheck(twaddell: string, naoh: string, na2o: string): CheckValue {
  const ofGrade = roundedUp(new Decimal(HALF).div(na2o).times(naoh));
  const ofRatio = roundedUp(new Decimal('1.29').div('79.994').times('61.979').minus(1).abs().times(naoh));
  return {
    id: `simmons-naoh-of-oxide-at-${twaddell}-twaddell`,
    call: 'hydroxideFromOxideGrade',
    inputs: { alkali: 'naoh', grade: { percent: na2o } },
    result: 'hydroxide',
    printed: naoh,
    expected: naoh,
    unit: 'percent',
    tolerance: ofGrade.plus(ofRatio).plus(HALF).toFixed(),
    why: `${HALF} half a last digit + ${ofGrade.toFixed(5)} half a last digit of ${na2o} + ${ofRatio.toFixed(5)} ratio of the two columns ${RATIO}. Of whole-number weights the ratio is 80/62.`,
    source: 'simmons-appleton-1908',
    where: `Appendix C, pp. 149-150, ${twaddell} degrees Twaddell: per cent of Na2O and of NaOH`,
    obtained: 'read',
  };
}
