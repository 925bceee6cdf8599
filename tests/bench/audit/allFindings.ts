/** What an audit finds, with every slip that gives a figure: `auditRecipe` lists the first three of a finding. */
import type { Fat } from 'laurate';
import type { Finding } from 'laurate/audit';
import type { Recipe } from 'laurate/recipe';
import { readAuditOptions } from '../../../src/audit/auditRecipe.js';
import { arePartsClaimed } from '../../../src/audit/checks/partShares.js';
import { partPoints } from '../../../src/audit/checks/partValues.js';
import { judged } from '../../../src/audit/judged.js';
import { potOf } from '../../../src/audit/pot.js';
import { readParts } from '../../../src/recipe/readParts.js';

export function allFindings(recipe: Recipe, fats: Readonly<Record<string, Fat>>): readonly Finding[] {
  const parts = readParts(recipe, { fats });
  const pot = potOf(parts);
  const points = arePartsClaimed(parts.claimed) ? partPoints(pot) : undefined;
  return judged(pot, parts, points, readAuditOptions({}).limit);
}
