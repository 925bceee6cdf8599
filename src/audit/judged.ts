import { frozen } from '../numbers/index.js';
import type { AlkaliContent } from '../quantities/index.js';
import type { RecipeParts } from '../recipe/readParts.js';
import { acidFindings } from './checks/acids.js';
import { addedFatFindings } from './checks/addedFats.js';
import { additionShareFindings } from './checks/additionShares.js';
import { alkaliFindings } from './checks/alkalis.js';
import { causticClaimFinding } from './checks/causticClaim.js';
import { contradictedFatFindings } from './checks/contradictedFats.js';
import { slipsOfCharge } from './checks/chargeDiagnosis.js';
import { dilutedFinding } from './checks/diluted.js';
import { dissolvingFindings } from './checks/dissolving.js';
import { fatLeftFinding } from './checks/fatLeft.js';
import { causticTargetFinding, freeCausticFinding, printedCausticFinding } from './checks/freeCaustic.js';
import { kohShareFinding } from './checks/kohShare.js';
import { waterPerAlkaliFinding, waterPerFatFinding } from './checks/lyeWater.js';
import { ownValuesFinding } from './checks/ownValues.js';
import { phFinding } from './checks/ph.js';
import { isAboutLye, withRightLye } from './checks/rightLye.js';
import { saponificationValueFindings } from './checks/saponificationValues.js';
import { shareFindings } from './checks/shares.js';
import { sharesAboveWholeFindings } from './checks/sharesAboveWhole.js';
import { solidAssayFindings } from './checks/solidAssay.js';
import { isSpreadOfLots, withSpreadOfLots } from './checks/spreadOfLots.js';
import { strengthFinding } from './checks/strength.js';
import { superfatFinding } from './checks/superfat.js';
import { temperatureFindings } from './checks/temperatures.js';
import { totalFinding } from './checks/total.js';
import { partFindings } from './checks/partShares.js';
import type { PartPoints } from './checks/partValues.js';
import type { Finding } from './finding.js';
import type { Pot } from './pot.js';
import type { Slip } from './slips/slip.js';

/** Everything that is compared, in the order of the work. */
export function judged(
  pot: Pot,
  parts: RecipeParts,
  points: PartPoints | undefined,
  limit: AlkaliContent,
): readonly Finding[] {
  const { claimed, target } = parts;
  let isDiagnosed = false;
  // danger, claim and target question one figure, the mass of the lye: its slips stand with the first of them
  const slips = (): readonly Slip[] => {
    if (isDiagnosed || isSpreadOfLots(pot, parts)) return frozen([]);
    isDiagnosed = true;
    return slipsOfCharge(pot, parts);
  };
  let isAdvised = false;
  const advised = (found: Finding): Finding => {
    const finding = withSpreadOfLots(found, pot, parts);
    if (!isAboutLye(finding)) return finding;
    const isSaid = isAdvised;
    isAdvised = true;
    return withRightLye(finding, pot, parts, isSaid);
  };
  const isLye = pot.isAllLye && pot.lye.length > 0;
  const isMadeUp = pot.isMadeUp && isLye;
  const superfat = claimed.superfat ?? target?.superfat;
  const ofLots = [
    freeCausticFinding(pot, limit, slips),
    claimed.superfat && superfatFinding(pot, 'claimed.superfat', claimed.superfat, slips),
    target?.superfat && superfatFinding(pot, 'target.superfat', target.superfat, slips),
  ].flatMap((finding) => (finding === undefined ? [] : [advised(finding)]));
  // where no lot explains the superfat, that its own values do not either goes without saying
  const isContradicted = ofLots.some(({ code }) => code === 'superfat-contradicted' || code === 'target-missed');
  const fatLeft = superfat === undefined ? fatLeftFinding(pot, slips) : undefined;
  return [
    ...ofLots,
    superfat && !isContradicted && ownValuesFinding(pot, superfat, slips),
    target?.freeCausticAlkaliAtMost && causticTargetFinding(pot, target.freeCausticAlkaliAtMost),
    claimed.freeCausticAlkali && printedCausticFinding(claimed.freeCausticAlkali, limit),
    claimed.freeCausticAlkali && causticClaimFinding(pot, claimed.freeCausticAlkali),
    fatLeft && advised(fatLeft),
    ...dissolvingFindings(pot),
    ...solidAssayFindings(pot),
    dilutedFinding(pot),
    ...contradictedFatFindings(pot),
    ...saponificationValueFindings(pot),
    ...shareFindings(pot),
    isMadeUp && claimed.strength && strengthFinding(pot, claimed.strength),
    isMadeUp && claimed.waterPerAlkali !== undefined && waterPerAlkaliFinding(pot, claimed.waterPerAlkali),
    isMadeUp && claimed.waterPerFat && waterPerFatFinding(pot, claimed.waterPerFat),
    isLye && claimed.kohShare && kohShareFinding(pot, claimed.kohShare),
    totalFinding(pot, parts),
    ...additionShareFindings(pot),
    ...(points === undefined ? [] : partFindings(points, claimed)),
    ...sharesAboveWholeFindings(pot, claimed),
    claimed.ph !== undefined && phFinding(pot, claimed.ph),
    ...temperatureFindings(pot, parts),
    ...acidFindings(
      pot,
      ofLots.some(({ code }) => code === 'acid-not-counted'),
    ),
    ...alkaliFindings(pot, limit),
    ...addedFatFindings(pot),
  ].flatMap((finding) => (finding === undefined || finding === false ? [] : [finding]));
}
