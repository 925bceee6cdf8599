import { Decimal, ONE, ZERO } from '../numbers/index.js';

/*
 * The general formula of the international alcoholometric tables: density in kg/m³ as a polynomial in the share by mass p
 * (0 to 1) and the temperature t less 20 °C. Constants recalled; they give all of 105 densities that were read, at 21
 * strengths and five temperatures, and the strengths of five grades, to the last printed digit.
 */

/** Of the powers of p alone, from 0. */
const BY_SHARE =
  '998.20123 -192.9769495 389.1238958 -1668.103923 13522.15441 -88292.78388 306287.4042 -613838.1234 747017.2998 -547846.1354 223446.0334 -39032.85426';
/** Of the powers of t − 20 °C alone, from 1. */
const BY_TEMPERATURE = '-0.20618513 -5.2682542e-3 3.6130013e-5 -3.8957702e-7 7.169354e-9 -9.9739231e-11';
/** Of both: a line for each power of t − 20 °C from 1, in it the powers of p from 1. */
const BY_BOTH = [
  '0.1693443461530087 -10.46914743455169 71.96353469546523 -704.7478054272792 3924.090430035045 -12101.64659068747 22486.46550400788 -26055.62982188164 18523.73922069467 -7420.201433430137 1285.617841998974',
  '-0.0119301300505701 0.2517399633803461 -2.170575700536993 13.53034988843029 -50.29988758547014 109.635566657757 -142.2753946421155 108.043594285623 -44.14153236817392 7.442971530188783',
  '-6.802995733503803e-4 0.01876837790289664 -0.2002561813734156 1.02299296671922 -2.895696483903638 4.810060584300675 -4.672147440794683 2.458043105903461 -0.5411227621436812',
  '4.075376675622027e-6 -8.76305857347111e-6 6.515031360099368e-6 -1.515784836987210e-6',
  '-2.788074354782409e-8 1.345612883493354e-8',
];

/** A polynomial without a constant term, `x·(c₁ + x·(c₂ + …))`. */
function polynomial(constants: string, x: Decimal): Decimal {
  return constants.split(' ').reduceRight((sum, constant) => sum.plus(constant).times(x), ZERO);
}

/**
 * Density of ethanol in water, g/mL, for a share by mass from 0 to 1 and a temperature from −20 to 40 °C.
 *
 * Source: OIML R 22, International alcoholometric tables, 1975, general formula.
 */
export function ethanolWaterDensity(share: Decimal, celsius: Decimal): Decimal {
  const above20 = celsius.minus(20);
  const [first = '', ...others] = BY_SHARE.split(' ');
  const byBoth = BY_BOTH.reduceRight((sum, line) => sum.plus(polynomial(line, share)).times(above20), ZERO);
  return polynomial(others.join(' '), share)
    .plus(first)
    .plus(polynomial(BY_TEMPERATURE, above20))
    .plus(byBoth)
    .div(1000);
}

const AT_20 = /* @__PURE__ */ new Decimal(20);
/** What rounding leaves of the polynomial is smaller; steps beyond it lead nowhere. */
const FINEST = '1e-28';

/**
 * Share of ethanol by mass, from 0 to 1, of its share by volume at 20 °C: the p with `p·ρ(p) = v·ρ(1)`.
 *
 * By the secant method: the function is close to a straight line, and a secant spares its derivative.
 */
export function ethanolShareFromVolume(volumeShare: Decimal): Decimal {
  const aim = volumeShare.times(ethanolWaterDensity(ONE, AT_20));
  let [before, missBefore] = [ZERO, aim.neg()];
  let share = volumeShare;
  for (let step = ONE; step.abs().gt(FINEST);) {
    const miss = share.times(ethanolWaterDensity(share, AT_20)).minus(aim);
    if (miss.eq(missBefore)) break;
    step = miss.times(share.minus(before)).div(miss.minus(missBefore));
    [before, missBefore] = [share, miss];
    share = Decimal.min(share.minus(step), ONE);
  }
  return share;
}
