/** Why a branch may never be taken. What no line here explains is an open case: the page says so. */
export interface BranchReason {
  /** The files it holds for, by their path below `src`. */
  readonly file: RegExp;
  /** The line of code that the branch stands in. */
  readonly code: RegExp;
  readonly why: string;
}

const SAME_LENGTH =
  'Never reached: an entry of a list that is as long as the one gone through. The compiler asks for it.';
const CLOSED_LIST = 'Never reached: the key is one of a closed list, and each has its entry. The compiler asks for it.';
const OF_A_TABLE =
  'Never reached with the table as it is, of which each row has what is asked for. The compiler asks for it.';
const FOR_THE_AUDIT =
  'Never reached, or to the same verdict: what float64 cannot tell is left to the audit, which decides.';

export const branchReasons: readonly BranchReason[] = [
  { file: /^audit\/slips\/chargeSlips/, code: /fats\[at\]|withRow|molOf/, why: SAME_LENGTH },
  { file: /^batch\/(?:weighedRecipe|lyeOfRecipe)/, code: /\?\? ZERO/, why: SAME_LENGTH },
  { file: /^fats\/profileRatio/, code: /shares\[at\] \?\? ZERO/, why: SAME_LENGTH },
  { file: /^composition\/mixtureCurve/, code: /y \?\? ZERO/, why: SAME_LENGTH },
  { file: /^reports\/sheet\/weighOut/, code: /names\[at\] \?\? ''/, why: SAME_LENGTH },
  { file: /^audit\/slips\/unitSlips/, code: /\?\? \[\]|\?\? ONE/, why: CLOSED_LIST },
  { file: /^audit\/(?:slips\/words|figures|fewOfEachCode)/, code: /\?\?/, why: CLOSED_LIST },
  { file: /^reports\/(?:markdown|publishedRecordOf|sheet\/itemNames)/, code: /\?\?/, why: CLOSED_LIST },
  { file: /^checkValues\/data\//, code: /\?\?|=== undefined/, why: OF_A_TABLE },
  { file: /^chemistry\/(?:fattyAcid|formulaMass)/, code: /\?\?/, why: 'Never reached: there is always one sum, that of the outermost bracket, and every name of the closed list matches. The compiler asks for it.' },
  { file: /^audit\/clear\//, code: /undefined|Number\.NaN|99\.9|\?\? \[\]|low < 0|kept\.size/, why: FOR_THE_AUDIT },
  { file: /^numbers\/readShape/, code: /\?\? best/, why: SAME_LENGTH },
  { file: /^saponification\/dilution/, code: /default/, why: 'Never reached: the ways to dilute are a closed list, of which all are named. The compiler asks for it.' },
  { file: /\.ts$/, code: /isCalculationError\(error\).*throw error;$/, why: 'Never taken: nothing but our own error is thrown there. Were it otherwise, it must not be swallowed.' },
  { file: /^audit\/slips\/chargeSlips/, code: /first\?\.|first === undefined|sum\.isZero/, why: 'Never reached: slips of the lye are looked for where there is lye. The compiler asks for it.' },
  { file: /^audit\/checks\/(?:causticClaim|freeCaustic|partShares|ph|spreadOfLots|rightLye|counted|acids)/, code: /\?\?|isZero\(\)\) return undefined|lye\.length === 0/, why: 'Never reached: the check is asked only where fats, lye and what it goes by are known. The compiler asks for it.' },
  { file: /^audit\/checks\/partValues/, code: /unlessRefused\(others\)/, why: 'Never reached: what is worked out of a pot as weighed is not refused at the ends of its last digits. Were it, the other places would be left out, and nothing thrown.' },
  { file: /^audit\/checks\/(?:partShares|partValues|strength|temperatures)/, code: /=== undefined/, why: 'Never reached: asked only where everything it goes by is known. The compiler asks for it.' },
  { file: /^audit\/potAdditions/, code: /\?\?|=== undefined/, why: 'Never reached: an addition has a name or a solvent, a mass or a volume; the schema refuses all else.' },
  { file: /^audit\/solventDensities/, code: /density\?\./, why: CLOSED_LIST },
  { file: /^composition\/chargedPot/, code: /turning\[2\]/, why: SAME_LENGTH },
  { file: /^lye\/lyeHeats/, code: /\?\? coldest/, why: 'Never reached: there is at least one row. The compiler asks for it.' },
  { file: /^(?:numbers\/readNumber|quantities\/unit)/, code: /\?\? (?:0|'')/, why: CLOSED_LIST },
  { file: /^reports\/(?:charts\/stageLog|declaration\/(?:inOrder|ingredientNames))/, code: /\?\?|=== undefined/, why: CLOSED_LIST },
  { file: /^fats\/fat\.ts/, code: /row\.acidValue|exact === undefined/, why: OF_A_TABLE },
  { file: /^batch\/scaleFactor/, code: /\?\?/, why: 'Never reached: asked for only where moulds, or a step of the scale, are given. The compiler asks for it.' },
]; // prettier-ignore
