/** The readers that every function takes its inputs through, each with values it reads. */
import { readFattyAcid } from '../../src/chemistry/fattyAcid.js';
import { readBlend } from '../../src/base/blend.js';
import { readSupplies } from '../../src/base/target.js';
import { readAdditions } from '../../src/composition/additions.js';
import { readChargedPot } from '../../src/composition/chargedPot.js';
import { readComposition } from '../../src/composition/readComposition.js';
import { readFatCharges } from '../../src/fats/fatCharges.js';
import { readProfile } from '../../src/fats/profile.js';
import { readFat } from '../../src/fats/readFat.js';
import { readUnsaponifiable } from '../../src/fats/saponificationValueFromProfile.js';
import { readSoapAlkali } from '../../src/freeAlkali/cation.js';
import { readCorrector } from '../../src/freeAlkali/corrector.js';
import { readMeasuredFreeCaustic, readMeasuredValue } from '../../src/freeAlkali/measured.js';
import { readLimit } from '../../src/freeAlkali/readLimit.js';
import { readUncertainty } from '../../src/freeAlkali/readTitration.js';
import { readAlkaliSource } from '../../src/lye/alkaliSource.js';
import { readLyeCharge } from '../../src/lye/lyeCharge.js';
import { readFields, readList, readShape, readText, readWord } from '../../src/numbers/readShape.js';
import { readNumber } from '../../src/numbers/readNumber.js';
import { readReadings } from '../../src/process/readings.js';
import { readRanged } from '../../src/quantities/estimate.js';
import { readAcidity } from '../../src/quantities/kinds/acidity.js';
import { readAlkaliContent } from '../../src/quantities/kinds/alkaliContent.js';
import { readAmount } from '../../src/quantities/kinds/amount.js';
import { readDensity } from '../../src/quantities/kinds/density.js';
import { readPercent } from '../../src/quantities/kinds/fraction.js';
import { readIodineValue } from '../../src/quantities/kinds/iodineValue.js';
import { readMass } from '../../src/quantities/kinds/mass.js';
import {
  readSaponificationValue,
  readSaponificationValueRange,
} from '../../src/quantities/kinds/saponificationValue.js';
import { readSpiritStrength } from '../../src/quantities/kinds/spiritStrength.js';
import { readTemperature } from '../../src/quantities/kinds/temperature.js';
import { readTime } from '../../src/quantities/kinds/time.js';
import { readTitrant } from '../../src/quantities/kinds/titrant.js';
import { readVolume } from '../../src/quantities/kinds/volume.js';
import { readBatchOptions } from '../../src/batch/readBatchOptions.js';
import { readAlkaliChoice } from '../../src/saponification/alkaliChoice.js';
import { readDilution } from '../../src/saponification/dilution.js';
import { readReactingPot } from '../../src/saponification/reactingPot.js';
import { readTarget } from '../../src/saponification/target.js';
import { readNumberFormat } from '../../src/reports/numberFormat.js';
import { examples, type Example } from '../laws/examples.js';

/** What the public function of an example is given. */
function argOf(name: string, at = 0): Record<string, unknown> {
  const found = examples.find((one) => one.name === name)?.args[at]?.[0];
  return found as Record<string, unknown>;
}

type Read = (path: string, value: never) => unknown;

const reader = (name: string, read: Read, ...values: readonly unknown[]): Example => ({
  name,
  run: (value) => read('value', value as never),
  args: values.map((value) => [value]),
});

const pot = argOf('superfatFromLye', 1);
const options = examples.find(({ name }) => name === 'planBatch')?.args[0]?.[1];

export const readers: readonly Example[] = [
  reader('readNumber', readNumber, 12, '0.5', '1e-7'),
  reader('readNumber, limited', (path, value) => readNumber(path, value, { above: 0, max: 100 }), 12, '99.9'),
  reader('readFields', (path, value) => Object.keys(readFields(path, value)), { a: 1 }),
  reader('readShape', (path, value) => Object.keys(readShape(path, value, ['low', 'high'])), { low: 1, high: 2 }),
  reader('readWord', (path, value) => readWord(path, value, ['naoh', 'koh']), 'naoh'),
  reader('readText', readText, 'Drum 7'),
  reader('readList', (path, value) => readList(path, value).length, [1, 2]),
  reader('readMass', readMass, { g: 12 }, { lb: '0.5' }, { mg: 700 }),
  reader('readVolume', readVolume, { mL: 12 }, { L: '0.5' }),
  reader('readPercent', readPercent, { percent: 12 }, { fraction: '0.5' }, { ppm: 100 }),
  reader('readDensity', readDensity, { gPerML: '1.2' }, { twaddell: 70 }, { baume145: 36 }),
  reader('readTemperature', readTemperature, { celsius: 20 }, { fahrenheit: '68' }, { kelvin: 300 }),
  reader('readTime', readTime, { minutes: 20 }, { hours: '0.5' }),
  reader('readAmount', readAmount, { mol: 2 }),
  reader('readAcidity', readAcidity, { pH: '9.5' }),
  reader('readTitrant', readTitrant, { eqPerL: '0.1' }),
  reader('readIodineValue', readIodineValue, { gI2Per100g: 86 }),
  reader('readAlkaliContent', readAlkaliContent, { percentNaoh: '0.05' }, { percentKoh: '0.1' }),
  reader('readSpiritStrength', readSpiritStrength, { percentByVolume: 96 }),
  reader('readSaponificationValue', readSaponificationValue, { mgKohPerG: 256 }, { gNaohPerG: '0.183' }),
  reader('readSaponificationValueRange', readSaponificationValueRange, { saponificationEquivalent: 220 }),
  reader('readRanged', (path, value) => readRanged(path, value, readPercent), { low: { percent: 97 }, high: { percent: 99 } }),
  reader('readFattyAcid', readFattyAcid, 'C18:1-OH'),
  reader('readProfile', readProfile, argOf('fatFromProfile')['profile'], argOf('fatFromProfile', 1)['profile']),
  reader('readUnsaponifiable', (path, value) => readUnsaponifiable(value, path), { percent: 1 }),
  reader('readFat', (path, value) => readFat(value, path), argOf('readFat'), argOf('readFat', 1)),
  reader('readFatCharges', readFatCharges, argOf('alkaliDemandOf', 1)),
  reader('readAlkaliSource', (path, value) => readAlkaliSource(path, value, 'koh'), { solution: { hydroxide: { percent: 50 } } }, { solid: argOf('alkaliContentOf')['solid'] }),
  reader('readLyeCharge', readLyeCharge, ...(pot['lye'] as readonly unknown[])),
  reader('readAlkaliChoice', readAlkaliChoice, argOf('planLye', 2)['alkali']),
  reader('readTarget', readTarget, { superfat: { percent: 3 } }, { freeCausticAlkaliAtMost: { percentNaoh: '0.05' } }),
  reader('readDilution', readDilution, 'as-is', { waterPerAlkali: '1.5' }, { strength: { percent: 33 } }, { water: { lb: 1 } }),
  reader('readReactingPot', (path, value) => readReactingPot(path, value), argOf('soapFromLye')),
  reader('readAdditions', readAdditions, argOf('compositionFrom')['additions'], argOf('compositionFrom', 1)['additions']),
  reader('readChargedPot', readChargedPot, argOf('compositionFrom')),
  reader('readComposition', readComposition, argOf('totalFattyMatterOf')),
  reader('readUncertainty', (_path, value) => readUncertainty(value, 'soap'), argOf('saponificationValueFromTitration')['uncertainty']),
  reader('readMeasuredFreeCaustic', readMeasuredFreeCaustic, argOf('judgeFreeAlkali', 1)['measured']),
  reader('readMeasuredValue', readMeasuredValue, { mgKohPerG: '0.5' }),
  reader('readLimit', readLimit, 'soft-soap-usp', { percentNa2o: '0.05' }),
  reader('readSoapAlkali', readSoapAlkali, 'naoh', { kohShare: { percent: 30 } }),
  reader('readCorrector', readCorrector, argOf('correctFreeAlkali')['corrector'], argOf('correctFreeAlkali', 2)['corrector']),
  reader('readBlend', readBlend, argOf('baseFromTarget')['fats']),
  reader('readSupplies', readSupplies, argOf('baseFromTarget', 1)['supplies']),
  reader('readReadings', readReadings, argOf('checkTemperatures', 1)['readings']),
  reader('readBatchOptions', readBatchOptions, options),
  reader('readNumberFormat', readNumberFormat, { decimalMark: ',', groupMark: ' ' }),
]; // prettier-ignore
