/** A lot of coconut oil by its certificate. */
import { fat, fatFromCertificate } from 'laurate';
import { mustAgree } from './agreement.js';
import type { Contender } from './harness.js';
import { Decimal } from './plainDecimals.js';

const coconut = fat('coconut-oil');

const byLibrary = () =>
  fatFromCertificate({
    name: 'Coconut oil, drum 7',
    like: coconut,
    saponificationValue: { mgKohPerG: '256.4' },
    uncertainty: { mgKohPerG: 1 },
  });

/** An object written down where it is needed, with the one text in it parsed. */
function literal() {
  const value = new Decimal('256.4');
  return { name: 'Coconut oil, drum 7', kind: 'triglyceride', low: value.minus(1), likely: value, high: value.plus(1) };
}

/** The ways to the lot, once they are seen to give the same value. */
export function certificateContenders(): readonly Contender[] {
  const { low, likely, high } = byLibrary().saponificationValue;
  const { name, kind, ...plain } = literal();
  mustAgree(`${name}, ${kind}`, { low: low.mgKohPerG, likely: likely.mgKohPerG, high: high.mgKohPerG }, plain);
  return [
    { name: '`fatFromCertificate`', run: byLibrary },
    { name: 'object literal with one decimal parsed', run: literal },
  ];
}
