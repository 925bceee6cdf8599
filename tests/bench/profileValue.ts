/** The saponification value of coconut oil from its published profile. */
import { fat, fattyAcidOf, saponificationValueFromProfile, type FattyAcid } from 'laurate';
import { mustAgree } from './agreement.js';
import { floatValue } from './floatingPoint.js';
import type { Contender } from './harness.js';
import { Decimal, decimalValue, type AcidLimits } from './plainDecimals.js';

const { profile = {}, unsaponifiable } = fat('coconut-oil');
const limits = (Object.keys(profile) as FattyAcid[]).map((id) => ({
  id,
  low: Number(profile[id]?.low.percent),
  high: Number(profile[id]?.high.percent),
}));
const [least, most] = [Number(unsaponifiable.low.percent), Number(unsaponifiable.high.percent)];
const likely = (least + most) / 2;

/** From a profile made for it: every acid with its limits. */
const byLibrary = () =>
  saponificationValueFromProfile({
    kind: 'triglyceride',
    profile: Object.fromEntries(limits.map(({ id, low, high }) => [id, { low, high }])),
    unsaponifiable: { low: { percent: least }, high: { percent: most } },
  });

/** The ways to the value, once they are seen to give the same. */
export function profileValueContenders(): readonly Contender[] {
  const decimals = limits.map(({ id, low, high }): AcidLimits<Decimal> => [
    low,
    high,
    new Decimal(fattyAcidOf(id).molarMass.gPerMol),
  ]);
  const floats = decimals.map(([low, high, mass]): AcidLimits<number> => [low, high, mass.toNumber()]);

  const figures = { likely: byLibrary().saponificationValue.likely.mgKohPerG };
  mustAgree('plain decimals', figures, { likely: decimalValue(decimals, likely) });
  mustAgree('floating point', figures, { likely: floatValue(floats, likely) });
  return [
    { name: '`saponificationValueFromProfile`', run: byLibrary },
    { name: 'plain decimals, likely value alone', run: () => decimalValue(decimals, likely) },
    { name: 'floating point, likely value alone', run: () => floatValue(floats, likely) },
  ];
}
