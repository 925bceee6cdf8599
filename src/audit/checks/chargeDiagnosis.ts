import { hydroxideMolarMass } from '../../lye/index.js';
import { Decimal, frozen, ZERO } from '../../numbers/index.js';
import { mapEnds, unitsByKind } from '../../quantities/index.js';
import type { RecipeParts } from '../../recipe/readParts.js';
import { inUnit, type Shown } from '../figures.js';
import { molIn, type Pot } from '../pot.js';
import { printedQuantity, type Printed } from '../printed.js';
import { chargeSlips } from '../slips/chargeSlips.js';
import { chargePoints } from '../slips/chargeValues.js';
import { slipsOf } from '../slips/diagnosis.js';
import type { Slip } from '../slips/slip.js';
import type { Span } from '../span.js';
import { saponificationValueFindings } from './saponificationValues.js';

/** Superfats that a recipe may aim at without a word of it, percent: a convention. */
const UNSPOKEN = { low: '0', likely: '3', high: '8' } as const;

/** How the mass of the lye may have come about, where it does not fit the fats. */
export function slipsOfCharge(pot: Pot, { claimed, target }: RecipeParts): readonly Slip[] {
  const claim = claimed.superfat ?? target?.superfat;
  const superfat =
    claim === undefined
      ? mapEnds(UNSPOKEN, (percent) => new Decimal(percent))
      : printedQuantity(claim, unitsByKind().fraction);
  const slips = slipsOf(
    { span: pot.charged, printed: chargeAsPrinted(pot), shown: shownAsLye(pot) },
    chargePoints(pot, 'value' in superfat ? { ...superfat, likely: superfat.value } : superfat, claim !== undefined),
    // of an unspoken superfat so little is certain that no slip in a single fat is worth saying
    claim === undefined ? chargeSlips(pot).filter(({ path }) => path?.startsWith('fats') !== true) : chargeSlips(pot),
  );
  return causesFirst(slips, pot);
}

/** That the printed values are off stands behind how they came to be off, where their own findings tell it. */
function causesFirst(slips: readonly Slip[], pot: Pot): readonly Slip[] {
  if (slips.every(({ code }) => code !== 'claimed-values-used')) return slips;
  const causes = saponificationValueFindings(pot).flatMap(({ slips: [likeliest] }) => likeliest ?? []);
  const isCause = ({ code, words, path = '' }: Slip): boolean =>
    !path.startsWith('lye') && causes.some((cause) => cause.code === code && cause.words['other'] === words['other']);
  return frozen([...slips.filter(isCause), ...slips.filter((slip) => !isCause(slip))]);
}

/** The hydroxide of a lye, mol, with the last digit of its masses only. */
export function chargeAsPrinted({ lye }: Pot): Printed {
  const at = (end: 'low' | 'value' | 'high'): Decimal =>
    lye.reduce((sum, one) => sum.plus(molIn(one, one.grams[end], 'likely')), ZERO);
  return { low: at('low'), value: at('value'), high: at('high'), text: '', unit: 'mol' };
}

/** Moles of hydroxide as the mass of the lye that holds them, where there is one alkali. */
export function shownAsLye({ lye }: Pot): (span: Span) => Shown {
  const [row] = lye;
  if (row === undefined || lye.length > 1) return inUnit('amount', 'mol');
  const { alkali, charge, grams } = row;
  const perMol = hydroxideMolarMass(alkali).div(charge.source.hydroxide.likely);
  const shown = inUnit('mass', grams.unit);
  return (span) => shown(mapEnds(span, (mol) => mol.times(perMol)));
}
