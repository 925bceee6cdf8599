/** Why a mutant may survive. What no line here explains is an open law: the page says so. */
export interface Reason {
  /** The files it holds for, by the end of their path. */
  readonly file: RegExp;
  /** What was mutated, as it stands in the source. */
  readonly was: RegExp;
  /** What it became. */
  readonly becomes?: RegExp;
  readonly why: string;
}

export const reasons: readonly Reason[] = [
  {
    file: /chemistry\/(?:fattyAcid|molarMass)\.ts$/,
    was: /^kept !== undefined$|^known\.size < KEPT$/,
    why: 'A memory: what is not kept is worked out again, to the same figure; the limit bounds memory only.',
  },
  {
    file: /chemistry\/fattyAcid\.ts$/,
    was: /^\/\^C/,
    why: 'Equivalent: the expression only ever reads names of the closed list of acids, which have less than ten double bonds.',
  },
  {
    file: /chemistry\/fattyAcid\.ts$/,
    was: /^\[\]$/,
    why: 'Never reached: every name of the closed list matches. The compiler asks for it.',
  },
  {
    file: /chemistry\/formulaMass\.ts$/,
    was: /^(?:inner|part) === undefined$/,
    why: 'Never reached: there is always one sum, that of the outermost bracket. The compiler asks for it.',
  },
  {
    file: /chemistry\/formulaMass\.ts$/,
    was: /^\[\]$/,
    why: 'Equivalent: what is no text is refused below, whatever was read of it.',
  },
  {
    file: /saponification\/demand\.ts$/,
    was: /^(?:acidValue\.isZero\(\)|one\.acid !== ZERO|one\.esterGrams !== ZERO)$/,
    why: 'Equivalent: it only saves adding nought.',
  },
  {
    file: /saponification\/balance\.ts$/,
    was: /^acid\.isZero\(\)$/,
    why: 'Equivalent: it only saves working out a part of nought.',
  },
  {
    file: /\.ts$/,
    was: /^steps !== undefined$/,
    becomes: /true/,
    why: 'Equivalent: without a list `noted` notes nothing; it only saves the time.',
  },
  {
    file: /saponification\/reactingPot\.ts$|composition\/chargedPot\.ts$/,
    was: /isRange|isSpirit|\.isZero\(\)$/,
    becomes: /true/,
    why: 'Equivalent: a dimension that does not vary is looked at at both ends, which are the same; it only costs time.',
  },
  {
    file: /saponification\/extremes\.ts$/,
    was: /^to === undefined$/,
    why: 'Never reached: corners come in pairs. The compiler asks for it.',
  },
  {
    file: /numbers\/monotoneCubic\.ts$/,
    was: /^y\.eq\(piece\.from\.y\)$|^left\.secant|^miss\.isZero\(\)$|^next\.gt|^next\.lt|^newton/,
    why: 'The same figure by another way: a shortcut to a knot, a slope that the limit holds at nought anyway, or the choice between the step of Newton and halving, which end at the same root.',
  },
  {
    file: /numbers\/straightLines\.ts$/,
    was: /^x\.eq\(right\.x\)$/,
    why: 'The line itself ends in its last point, but for the last of 34 digits.',
  },
  {
    file: /numbers\/readNumber\.ts$/,
    was: /precision\(\)|constructor === Decimal|number\.e === 15|^typeof value === 'number'$/,
    why: 'Equivalent: it only saves time; the longer way gives the same figure, or the same refusal.',
  },
  {
    file: /numbers\/readNumber\.ts$/,
    was: /^(?:typeof value === 'object'|value !== null|typeof value === 'object' && value !== null)$/,
    why: 'Equivalent: what is no object is no Decimal either, which `decimalText` finds by itself.',
  },
  {
    file: /process\/(?:checkTemperatures|readings)\.ts$/,
    was: /first|last|spans\[at\]/,
    why: 'Never reached, or equivalent: of readings in time there are at least two, or none. The compiler asks for it.',
  },
  {
    file: /lye\/(?:densityColumn|freezingCurve)\.ts$/,
    was: /^(?:parsed|knots) === undefined$/,
    why: 'A memory: what is not kept is worked out again, to the same figure.',
  },
  {
    file: /lye\/lyeHeats\.ts$/,
    was: /^!waterPerHydroxide\.isFinite\(\)$/,
    why: 'Equivalent: a share of no end of water is nought by the division as well.',
  },
  {
    file: /lye\/alkaliContentOf\.ts$/,
    was: /^carbonate === undefined$/,
    why: 'It chooses the words of a formula in the working; texts are left out.',
  },
  {
    file: /saponification\/weighedLye\.ts$/,
    was: /'strength' in dilution$/,
    why: 'It chooses the words of a formula in the working; texts are left out.',
  },
  {
    file: /recipe\/leaf\.ts$/,
    was: /^\{\s*return false;\s*\}$/,
    why: 'Equivalent: a schema takes no answer for a no.',
  },
  {
    file: /recipe\/leaf\.ts$/,
    was: /^value === null$/,
    why: 'Never reached: figures are put in words only after their reader accepted them, and none accepts null.',
  },
  {
    file: /recipe\/readAs\.ts$/,
    was: /^(?:\{ abortEarly: true \}|true)$/,
    why: 'Equivalent: of all faults the first is told either way; it only saves looking for the others.',
  },
  {
    file: /recipe\/readAs\.ts$/,
    was: /value !== 'object'|^value === null$/,
    why: 'Equivalent: what is no object counts as frozen, and what is frozen already stays so; it only saves time.',
  },
  {
    file: /freeAlkali\/measured\.ts$/,
    was: /^\{ min: 0 \}$/,
    why: 'Equivalent but for the words: what is below nothing is refused as too fine as well, by the same code at the same place.',
  },
  {
    file: /freeAlkali\/measured\.ts$/,
    was: /^(?:earlier|apart) === undefined/,
    why: 'Equivalent: an earlier test and the time since are both told, or neither. The compiler asks for each.',
  },
  {
    file: /freeAlkali\/(?:readLimit|readTitration)\.ts$/,
    was: /^\(\{ id \}\) => id$|^way === 'direct'$|^\['at most', 'more'\]$/,
    becomes: /undefined|true|\[\]/,
    why: 'It chooses the words of a refusal; texts are left out.',
  },
  {
    file: /freeAlkali\/titrated\.ts$/,
    was: /^student !== undefined$/,
    why: 'Never reached: both tables have a row for each number of readings. The compiler asks for it.',
  },
  {
    file: /batch\/heat\.ts$/,
    was: /^!isCalculationError\(error\) \|\| error|^error\.code !== 'infeasible'$/,
    becomes: /^false$|&&/,
    why: 'Never reached: what the reaction was worked out from has been read already, so that parting can only be infeasible.',
  },
  {
    file: /batch\/recipeFromBase\.ts$/,
    was: /^(?:mass|source) === undefined/,
    becomes: /^false$|&&/,
    why: 'Equivalent: a base has both the mass and the kind of an alkali, or neither. The compiler asks for each.',
  },
  {
    file: /batch\/optionPaths\.ts$/,
    was: /^\/\^readings|^given === undefined \|\| given === path$|^given === path$/,
    becomes: /^false$|^\/readings/,
    why: 'Equivalent: no path has readings but at its beginning, and a refusal made anew by the same path says the same.',
  },
  {
    file: /batch\/recipeToPlan\.ts$/,
    was: /^target !== undefined$/,
    becomes: /^true$/,
    why: 'Equivalent: without a target, an alkali without its mass is refused by the next line.',
  },
  {
    file: /batch\/moulds\.ts$/,
    was: /^room === undefined$/,
    becomes: /^false$/,
    why: 'Never reached where room is not known: what is too much is then not asked for. The compiler asks for it.',
  },
  {
    file: /fats\/fat\.ts$/,
    was: /^\[\]$/,
    becomes: /Stryker/,
    why: 'Never reached by what is on file: every fatty acid has acid values, every other fat counts none. The compiler asks for it.',
  },
  {
    file: /fats\/fat\.ts$/,
    was: /^Decimal\.min\(\.\.\.unsaponifiable/,
    why: 'Equivalent by what is on file: no two publications of a fat give it two least shares of unsaponifiable matter.',
  },
  {
    file: /fats\/fat\.ts$/,
    was: /^(?:kind === 'rosin'|exact === undefined)$/,
    becomes: /^false$/,
    why: 'Never reached by what is on file: no rosin has a profile, and what has no value has one. The compiler asks for it.',
  },
  {
    file: /fats\/fat\.ts$/,
    was: /^kind === 'wax-ester'$/,
    becomes: /^true$/,
    why: 'Equivalent by what is on file: of glycerides only a greatest acid value is published, which is no range.',
  },
  {
    file: /fats\/readFat\.ts$/,
    was: /value\.kind !== 'blend'$/,
    why: 'A part that is a blend is refused a line above, and a fat of ours that is read again is the same fat: it only saves time.',
  },
  {
    file: /fats\/knownFat\.ts$/,
    was: /^(?:typeof value === 'object'|value !== null|typeof value === 'object' && value !== null)$/,
    becomes: /^true$/,
    why: 'Equivalent: what is no object is in no set of objects.',
  },
  {
    file: /fats\/profile\.ts$/,
    was: /^\[low\.times\(100\)|^from === to$/,
    why: 'It chooses the words of a refusal; texts are left out.',
  },
  {
    file: /fats\/profile\.ts$/,
    was: /^lows\.gt\(1\) \|\| highs\.lt\(1\)$/,
    why: 'Equivalent but for the words: what cannot close is refused by the likely shares too, by the same code at the same place.',
  },
  {
    file: /saponification\/reactingPot\.ts$|composition\/chargedPot\.ts$/,
    was: /^\[\]$/,
    becomes: /Stryker/,
    why: 'Equivalent: a dimension that nothing varies along is looked at at both ends, which are the same; it only costs time.',
  },
  {
    file: /saponification\/balance\.ts$/,
    was: /hydroxide\.low\.eq\(hydroxide\.high\)$/,
    becomes: /undefined/,
    why: 'Equivalent: a single strength is then worked out three times, to the same figure; it only costs time.',
  },
  {
    file: /saponification\/place\.ts$/,
    was: /^place === 'likely'$/,
    becomes: /^true$/,
    why: 'A memory: kept by each place itself, what is kept is seldom found, and worked out again to the same figure.',
  },
  {
    file: /saponification\/dilution\.ts$/,
    was: /^default:/,
    why: 'Never reached: no other field has passed the reader of the shape. The compiler asks for it.',
  },
  {
    file: /composition\/chargedPot\.ts$/,
    was: /^typeof holds === 'object'$/,
    becomes: /^true$/,
    why: 'Equivalent: a word, as salts and other things hold, has no solvent. The compiler asks for it.',
  },
  {
    file: /composition\/chargedPot\.ts$/,
    was: /^spiritShare !== undefined && !isRange\(spiritShare\)$/,
    becomes: /^false$/,
    why: 'Equivalent: a share of the loss that does not vary is looked at at both ends, which are the same; it only costs time.',
  },
  {
    file: /composition\/chargedPot\.ts$/,
    was: /^turning\[2\]\?\.neg$/,
    why: 'Never undefined: there are three turning points. The compiler asks for it.',
  },
  {
    file: /composition\/mixtureCurve\.ts$/,
    was: /\?\.y$/,
    why: 'Never undefined: a grid has a figure for each temperature in each of its rows. The compiler asks for it.',
  },
  {
    file: /numbers\/(?:described|readNumber)\.ts$|recipe\/readRecipe\.ts$/,
    was: /^\{\s*return (?:false|undefined);[^}]*\}$/,
    why: 'Equivalent: without an answer it is not so.',
  },
  {
    file: /numbers\/readShape\.ts$/,
    was: /^least === 0$/,
    becomes: /^false$/,
    why: 'It chooses the words of a refusal; texts are left out.',
  },
  {
    file: /numbers\/decimal\.ts$/,
    was: /^true$/,
    becomes: /^false$/,
    why: 'Equivalent unless somebody set decimal.js before this library is loaded: no test of this run loads it that late.',
  },
  {
    file: /quantities\/unit\.ts$/,
    was: /isCanonical === true$|^true$/,
    why: 'Equivalent: a canonical unit is carried over to itself; it only saves time.',
  },
  {
    file: /lye\/freezingCurve\.ts$/,
    was: /^alkali === 'koh'$/,
    becomes: /^true$/,
    why: 'Equivalent: the lone points of KOH lie below the strength where the curve of NaOH ends.',
  },
  {
    file: /process\/stagedLye\.ts$/,
    was: /^pot\.start\.pot\.gte\(ceiling\)$|^\{\s*refuse\(\s*'infeasible',\s*'start\.pot'/,
    why: 'Equivalent but for the words: a pot that starts at its ceiling passes it with any portion, and is refused by the same code at the same place.',
  },
  {
    file: /batch\/planBatch\.ts$/,
    was: /^fats === undefined$/,
    becomes: /^false$/,
    why: 'Equivalent: fats of no value are no fats, to the reader of the recipe as well.',
  },
  {
    file: /batch\/lyeOfRecipe\.ts$/,
    was: /^target\.superfat === undefined$/,
    becomes: /^true$/,
    why: 'Equivalent: the mass of a batch changes nothing of a lye that a superfat asks for; it only saves planning it twice.',
  },
  {
    file: /batch\/lyeOfRecipe\.ts$/,
    was: /^\{ naoh: ZERO, koh: ZERO \}$/,
    why: 'Equivalent: moles are asked for only where there are two alkalis, of which each has its own by then.',
  },
  {
    file: /batch\/(?:lyeOfRecipe|scaleFactor|weighedRecipe)\.ts$/,
    was: /^(?:weigh\[charge\.alkali\]|weigh\.water|moulds|rounded\[at\])\?\.(?:g|volume|count)$/,
    why: 'Never undefined where it is asked for: what was planned is weighed, and what is scaled to was read. The compiler asks for it.',
  },
  {
    file: /batch\/optionPaths\.ts$/,
    was: /^!isCalculationError\(error\)$|^given === undefined/,
    becomes: /^false$|&&/,
    why: 'Never reached: planning refuses by this error and no other, and each path has a name. The compiler asks for it.',
  },
  {
    file: /batch\/readBatchOptions\.ts$/,
    was: /^typeof value === 'string'$/,
    becomes: /^false$/,
    why: 'Equivalent but for the words: a text is refused by the reader of the shape too, by the same code at the same place.',
  },
  {
    file: /clarity\/outcomes\.ts$/,
    was: /^(?:least|low|high|before|after|most) === undefined/,
    why: 'Equivalent: a list of so many has a first, a last and a middle, or none of them. The compiler asks for each.',
  },
  {
    file: /base\/blend\.ts$/,
    was: /^(?:source|grams) === undefined/,
    becomes: /^false$|&&/,
    why: 'Equivalent: a plan has both the kind and the mass of an alkali, or neither. The compiler asks for each.',
  },
  {
    file: /fats\/readFat\.ts$/,
    was: /^value\.kind !== 'blend'$/,
    why: 'Never reached otherwise: a blend is refused in the line before. The compiler asks for it.',
  },
  {
    file: /fats\/knownFat\.ts$/,
    was: /^typeof value === 'object' && value !== null$/,
    why: 'Equivalent: a set of objects has nothing that is none.',
  },
  {
    file: /fats\/fat\.ts$/,
    was: /^kind === 'wax-ester'$/,
    becomes: /^true$/,
    why: 'Equivalent with the table as it is: no other kind that gets there has limits of its acid value.',
  },
  {
    file: /saponification\/dilution\.ts$/,
    was: /^default:/,
    why: 'Never reached: the ways to dilute are a closed list, of which all are named. The compiler asks for it.',
  },
  {
    file: /audit\/clear\/(?:floatPot|clearVerdict)\.ts$/,
    was: /^(?:fields|of|claimed|pot) === undefined$|^fields\?\.|^typeof value === 'string'$/,
    becomes: /^false$|^true$|^fields\[/,
    why: 'Equivalent: what is read of nothing throws, and what throws is left to the audit as well; it only saves the time.',
  },
  {
    file: /audit\/clear\/remembered\.ts$/,
    was: /^kept\.size < KEPT$|^known !== undefined$/,
    why: 'A memory: what is not kept is worked out again, to the same value; the limit bounds memory only.',
  },
  {
    file: /audit\/clear\/float64\.ts$/,
    was: /^(?:one|other) > 0$/,
    becomes: />=/,
    why: 'Equivalent: nought times a factor is nought.',
  },
  {
    file: /audit\/clear\/clearVerdict\.ts$/,
    was: /^mol\.naoh > 0 && mol\.koh > 0$/,
    becomes: /^false$/,
    why: 'Equivalent by what is on file: soda dissolves to less than potash, so that its limit is that of both.',
  },
  {
    file: /audit\/slips\/chargeSlips\.ts$/,
    was: /^(?:one === undefined|two === undefined|m\.isZero\(\)|n\.isZero\(\)|one === undefined \|\| two === undefined.*)$/,
    why: 'Equivalent: what is divided by nought is no figure, and no slip is seen in it; of a row that is there the demand is known.',
  },
  {
    file: /audit\/slips\/diagnosis\.ts$/,
    was: /isFinite\(\)/,
    why: 'Never reached: each figure that could be divided by nought says so itself. Were one forgotten, no NaN must come of it.',
  },
  {
    file: /audit\/(?:pot|checks\/(?:partValues|superfat|ph))\.ts$/,
    was: /^fat === undefined$|^most === undefined(?: \|\| least === undefined)?$|^least === undefined$/,
    becomes: /^false$|&&/,
    why: 'Never reached: the check is asked only where fats, lye and what it goes by are known. The compiler asks for it.',
  },
  {
    file: /audit\/checks\/temperatures\.ts$/,
    was: /^(?:hot|cold)\?\.verdict$/,
    why: 'Never reached: of one reading there is one stage. The compiler asks for it.',
  },
  {
    file: /audit\/checks\/chargeDiagnosis\.ts$|audit\/slips\/partSlips\.ts$/,
    was: /^\[\]$/,
    becomes: /Stryker was here/,
    why: 'Equivalent: no slip has such a code, and no solvent such a name.',
  },
  {
    file: /audit\/checks\/(?:counted|partShares)\.ts$/,
    was: /\?\.(?:grams|plus)$/,
    why: 'Never reached: an entry of a list that is as long as the one gone through; and there is soap in a pot whose parts are known. The compiler asks for it.',
  },
  {
    file: /audit\/checks\/reading\.ts$|audit\/slips\/chargeSlips\.ts$/,
    was: /^\[\]$/,
    becomes: /Stryker was here/,
    why: 'Equivalent, or never reached: what is no finding has no severity, and is left out; slips of the lye are looked for where all fats are known.',
  },
  {
    file: /audit\/solventDensities\.ts$/,
    was: /^likely === undefined$/,
    becomes: /^false$/,
    why: 'Equivalent: without a density at the middle there is none of the ends either. The compiler asks for it.',
  },
  {
    file: /audit\/clear\/(?:clearVerdict|floatPot)\.ts$/,
    was: /^typeof ph !== 'string' && typeof ph !== 'number'$|^\[\]$|^alkali !== 'naoh' && alkali !== 'koh'$|^grams\.value > 0$/,
    why: 'Equivalent: what is no number, or of no alkali, is NaN, and no comparison with it is clear.',
  },
  {
    file: /audit\/clear\/float64\.ts$/,
    was: /^point < 0$/,
    becomes: /<=/,
    why: 'Equivalent: of a text that begins with its point nothing is read.',
  },
  {
    file: /audit\/checks\/partShares\.ts$/,
    was: /^isMet$|^\{\s*const span/,
    becomes: /^false$|^\{\}$/,
    why: 'Equivalent: it only saves working out the other places of the pot.',
  },
  {
    file: /audit\/checks\/counted\.ts$/,
    was: /^charged\.isZero\(\)$/,
    why: 'Never reached: it is asked of a pot with a balance, which has alkali. Were it forgotten, no NaN must come of it.',
  },
  {
    file: /audit\/slips\/partSlips\.ts$/,
    was: /^\(one\) => one\.isZero\(\)$/,
    why: 'Equivalent: a slip that changes nothing gives the right figure, which the printed one is not.',
  },
  {
    file: /audit\/clear\/clearVerdict\.ts$/,
    was: /faults\.length > 0/,
    why: 'Never reached: of what cannot be read nothing is clear before.',
  },
  {
    file: /audit\/clear\/float64\.ts$/,
    was: /^(?:one > other|other > one) \* factor$/,
    becomes: />=/,
    why: 'Equivalent in what is proved: the factor is wider than it need be, so that a comparison is clear at its very end as well.',
  },
  {
    file: /audit\/checks\/spreadOfLots\.ts$/,
    was: /^\(\): readonly never\[\] => \[\]$/,
    why: 'Equivalent: of these findings it is asked only whether they are there.',
  },
  {
    file: /audit\/clear\/clearVerdict\.ts$/,
    was: /^printed\.low > 0$/,
    becomes: />=/,
    why: 'Equivalent: the lower end of what is printed is above nothing, or below it where nothing is printed.',
  },
  {
    file: /audit\/checks\/ph\.ts$/,
    was: /^(?:low|high)\.band\?\.(?:low|high)$/,
    why: 'Never reached: the readings are of solutions of known strength, which have a band. The compiler asks for it.',
  },
  {
    file: /audit\/printed\.ts$/,
    was: /^\['', '0'\]$/,
    why: 'Never reached: a quantity without unit is refused before. The compiler asks for it.',
  },
  {
    file: /audit\/slips\/unitSlips\.ts$|audit\/solventDensities\.ts$|audit\/checks\/(?:partValues|temperatures)\.ts$/,
    was: /^\[\]$/,
    becomes: /Stryker was here/,
    why: 'Never reached: the key is one of a closed list, and each has its entry; or the check is asked only where all is known. The compiler asks for it.',
  },
  {
    file: /reports\/publishedRecordOf\.ts$/,
    was: /^(?:profile|provenance) === undefined/,
    becomes: /^false$|&&/,
    why: 'Equivalent: the record says where a profile is from wherever the table has one, and nowhere else. The compiler asks for each.',
  },
  {
    file: /reports\/solventRecordOf\.ts$/,
    was: /^sources\.some\(\(one\) => evaluatedSources/,
    becomes: /every/,
    why: 'Equivalent with the table as it is: what was evaluated has one source.',
  },
  {
    file: /reports\/charts\/placeChartOf\.ts$/,
    was: /^(?:low|median|high) === undefined/,
    becomes: /^false$|&&/,
    why: 'Equivalent: a list of so many has a first, a last and a middle, or none of them. The compiler asks for each.',
  },
  {
    file: /reports\/charts\/stageLog\.ts$/,
    was: /^reading\.time === undefined$|^only\?\.verdict$/,
    becomes: /^false$|^only\.verdict$/,
    why: 'Equivalent: where every reading has a time, this one has; and one reading has one stage. The compiler asks for each.',
  },
  {
    file: /reports\/declaration\/ingredientNames\.ts$/,
    was: /^\[\]$/,
    why: 'Never reached, because an addition has a name where it has no solvent; or equivalent, because only a second entry is taken of it.',
  },
  {
    file: /reports\/declaration\/inOrder\.ts$/,
    was: /^(?:share|lead) === undefined|^\[\]$/,
    becomes: /^false$|&&|Stryker/,
    why: 'Never reached: each entry has its share and its lead. The compiler asks for each.',
  },
  {
    file: /reports\/sheet\/work\.ts$/,
    was: /^other\.decimalPlaces\(\) > one\.decimalPlaces\(\)$/,
    becomes: />=/,
    why: 'Equivalent: of two portions that are as fine either serves.',
  },
  {
    file: /fats\/nearFats\.ts$/,
    was: /^coreOf\(name\)\.length > 2$/,
    becomes: /^true$/,
    why: 'Equivalent: what was written has three letters at least, and nothing of less than three is within a quarter of them.',
  },
  {
    file: /clarity\/precedent\.ts$/,
    was: /^shares\?\.soap\?\.percent$/,
    why: 'Never reached with the table as it is: a formula that is complete has soap.',
  },
  {
    file: /batch\/optionPaths\.ts$/,
    was: /^\/\^readings/,
    why: 'Equivalent: no path names readings but at its beginning.',
  },
  {
    file: /batch\/moulds\.ts$/,
    was: /^room === undefined$/,
    becomes: /^false$/,
    why: 'Never reached: what is too much is asked only where a number of moulds is given. The compiler asks for it.',
  },
  {
    file: /audit\/slips\/chargeSlips\.ts$/,
    was: /^row === undefined$/,
    becomes: /^false$/,
    why: 'Never reached: slips of the lye are looked for where there is lye. The compiler asks for it.',
  },
  {
    file: /audit\/verdictsOf\.ts$/,
    was: /^faults\.length > 0$/,
    becomes: /^true$/,
    why: 'Equivalent: it only saves time; the audit comes to the same verdict.',
  },
  {
    file: /audit\/slips\/chargeSlips\.ts$/,
    was: /^COMMON \* COMMON$/,
    why: 'A convention that orders what the figures cannot tell apart: no recipe of the tests has another slip that gives the very figure which the printed values give.',
  },
  {
    file: /numbers\/leftOf\.ts$/,
    was: /^(?:left\.e > )?Math\.max\(a\.e, b\.e\) - ROUNDED_DIGITS$/,
    becomes: /^false$|\+/,
    why: 'Equivalent: where the exponents are not asked the comparison itself tells the same; it only saves time.',
  },
];
