import { isCalculationError, refuse } from '../numbers/index.js';

/** What the functions a plan calls name a field, and where its caller gave it. */
const PATHS: Readonly<Record<string, string>> = {
  evaporated: 'options.evaporated',
  spiritShareOfLoss: 'options.spiritShareOfLoss',
  scaleStep: 'options.scaleStep',
  temperature: 'options.pourAt',
};

/**
 * Plans, and lets a refusal name the field that the caller of the plan gave.
 *
 * @throws CalculationError those of the plan
 */
export function namingOptions<T>(plan: () => T): T {
  try {
    return plan();
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const { code, path, expected, received } = error;
    const given = Object.hasOwn(PATHS, path) ? PATHS[path] : path.replace(/^readings(?=\[)/, 'temperatures');
    if (given === undefined || given === path) throw error;
    return refuse(code, given, expected, received);
  }
}
