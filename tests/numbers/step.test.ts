import { describe, expect, it } from 'vitest';
import { Decimal, noted, type Steps } from '../../src/numbers/index.js';

describe('noted', () => {
  const value = new Decimal('4.2');

  it('writes the step down and hands the very value on', () => {
    const steps: Steps = [];
    expect(noted(steps, 'hydroxide to charge', 'A = n·(1 − s)', 'mol', value)).toBe(value);
    expect(noted(steps, 'water to add', 'm', 'g', new Decimal(7)).toString()).toBe('7');
    expect(steps).toEqual([
      { figure: 'hydroxide to charge', formula: 'A = n·(1 − s)', unit: 'mol', value },
      { figure: 'water to add', formula: 'm', unit: 'g', value: new Decimal(7) },
    ]);
    expect(steps.every((step) => Object.isFrozen(step))).toBe(true);
  });

  it('hands the value on where nobody asked for the working', () => {
    expect(noted(undefined, 'hydroxide to charge', 'A = n·(1 − s)', 'mol', value)).toBe(value);
  });
});
