import { describe, expectTypeOf, it } from 'vitest';
import {
  mapEstimate,
  molarMassOf,
  roundToStep,
  splitToStep,
  valueIn,
  type Decimal,
  type DensityInput,
  type Estimate,
  type FractionInput,
  type Mass,
  type MassInput,
  type Numeric,
  type OneChoice,
  type Quantity,
  type Ranged,
  type SaponificationValueInput,
  type UnitFor,
  type UnitsByKind,
} from 'laurate';

type MassUnit = 'mg' | 'g' | 'kg' | 'oz' | 'lb';

describe('a quantity', () => {
  it('is one unit key with a number, a text or a Decimal', () => {
    expectTypeOf<{ g: number }>().toExtend<MassInput>();
    expectTypeOf<{ lb: string }>().toExtend<MassInput>();
    expectTypeOf<{ g: Decimal }>().toExtend<MassInput>();
    expectTypeOf<{ g: bigint }>().not.toExtend<MassInput>();
    expectTypeOf<{ g: null }>().not.toExtend<MassInput>();
    expectTypeOf<Numeric>().toEqualTypeOf<number | string | Decimal>();
  });

  it('has not two units, nor none', () => {
    // @ts-expect-error: there are two units
    roundToStep({ g: 1, kg: 1 }, { g: 1 }, 'down');
    // @ts-expect-error: there is none
    roundToStep({}, { g: 1 }, 'down');
    // @ts-expect-error: a second unit, even of another kind
    valueIn({ g: 1, percent: 1 }, 'kg');
    // @ts-expect-error: two units of one kind
    valueIn({ lb: 1, oz: 1 }, 'kg');
    expectTypeOf<{ g: number; kg: number }>().not.toExtend<MassInput>();
    expectTypeOf<{ percent: number; fraction: number }>().not.toExtend<FractionInput>();
  });

  it('has a known unit', () => {
    // @ts-expect-error: no such unit
    roundToStep({ kgs: 1 }, { g: 1 }, 'down');
    // @ts-expect-error: a unit of another kind
    roundToStep({ percent: 1 }, { g: 1 }, 'down');
    // @ts-expect-error: fluid ounces say whose
    valueIn({ flOz: 1 }, 'mL');
    // @ts-expect-error: a modulus is part of the scale's name
    const baume: DensityInput = { baume: 36 };
    expectTypeOf(baume).toEqualTypeOf<DensityInput>();
  });

  it('is not a bare number', () => {
    // @ts-expect-error: five of what?
    roundToStep(5, { g: 1 }, 'down');
    // @ts-expect-error: nor a text
    valueIn('5 g', 'kg');
    expectTypeOf<number>().not.toExtend<MassInput>();
    expectTypeOf<number>().not.toExtend<Quantity>();
    expectTypeOf<number>().not.toExtend<SaponificationValueInput>();
    expectTypeOf<string>().not.toExtend<SaponificationValueInput>();
    expectTypeOf<{ sap: number }>().not.toExtend<SaponificationValueInput>();
  });
});

describe('OneChoice', () => {
  type Choice = OneChoice<{ readonly solid: number; readonly solution: string }>;

  it('is exactly one of its keys', () => {
    expectTypeOf<{ solid: number }>().toExtend<Choice>();
    expectTypeOf<{ solution: string }>().toExtend<Choice>();
    expectTypeOf<{ solid: number; solution: string }>().not.toExtend<Choice>();
    expectTypeOf<object>().not.toExtend<Choice>();
  });
});

describe('valueIn', () => {
  it('tells a quantity in the units of its own kind', () => {
    expectTypeOf(valueIn({ lb: 2 }, 'g')).toEqualTypeOf<Decimal>();
    expectTypeOf<UnitFor<{ lb: 2 }>>().toEqualTypeOf<MassUnit>();
    expectTypeOf<UnitFor<{ celsius: string }>>().toEqualTypeOf<'celsius' | 'fahrenheit' | 'kelvin'>();
    expectTypeOf<UnitFor<{ percent: number }>>().toEqualTypeOf<UnitsByKind['fraction']>();
    // @ts-expect-error: a mass is no volume
    valueIn({ lb: 2 }, 'mL');
    // @ts-expect-error: a share by mass is no spirit strength
    valueIn({ percent: 2 }, 'percentByVolume');
    // @ts-expect-error: nor an alkali content
    valueIn({ percent: 2 }, 'percentNaoh');
    // @ts-expect-error: no such unit
    valueIn({ lb: 2 }, 'gram');
  });

  it('knows the kind of a variable by its declared type', () => {
    const mass = { g: 1 } as MassInput;
    expectTypeOf<UnitFor<MassInput>>().toEqualTypeOf<MassUnit>();
    expectTypeOf(valueIn(mass, 'kg')).toEqualTypeOf<Decimal>();
    // @ts-expect-error: not for a mass
    valueIn(mass, 'mL');
    const value = { mgKohPerG: 256 } as SaponificationValueInput;
    expectTypeOf(valueIn(value, 'gNaohPerG')).toEqualTypeOf<Decimal>();
    // @ts-expect-error: not for a saponification value
    valueIn(value, 'percentNaoh');
  });

  it('takes what a result holds', () => {
    expectTypeOf<UnitFor<Mass>>().toEqualTypeOf<MassUnit>();
    expectTypeOf(valueIn(molarMassOf('KOH').molarMass, 'gPerMol')).toEqualTypeOf<Decimal>();
    // @ts-expect-error: a molar mass has one unit here
    valueIn(molarMassOf('KOH').molarMass, 'g');
  });
});

describe('Estimate and Ranged', () => {
  it('maps an estimate to an estimate', () => {
    const estimate = { low: { g: 1 }, likely: { g: 2 }, high: { g: 3 } };
    expectTypeOf(mapEstimate(estimate, (mass) => valueIn(mass, 'kg'))).toEqualTypeOf<Estimate<Decimal>>();
    expectTypeOf(mapEstimate(estimate, (mass) => mass.g > 1)).toEqualTypeOf<Estimate<boolean>>();
  });

  it('is a value or a range, and an estimate fits', () => {
    expectTypeOf<{ g: number }>().toExtend<Ranged<MassInput>>();
    expectTypeOf<{ low: { g: number }; high: { kg: string } }>().toExtend<Ranged<MassInput>>();
    expectTypeOf<Estimate<Mass>>().toExtend<Ranged<MassInput>>();
    expectTypeOf<{ low: { g: number } }>().not.toExtend<Ranged<MassInput>>();
    expectTypeOf<{ low: number; high: number }>().not.toExtend<Ranged<MassInput>>();
    const take = (range: Ranged<MassInput>): Ranged<MassInput> => range;
    take({ low: { g: 1 }, likely: { g: 2 }, high: { g: 3 } });
    // @ts-expect-error: a range has no third end
    take({ low: { g: 1 }, middle: { g: 2 }, high: { g: 3 } });
    // @ts-expect-error: either a value or a range
    take({ g: 2, low: { g: 1 }, high: { g: 3 } });
  });
});

describe('rounding', () => {
  it('has three directions', () => {
    expectTypeOf(roundToStep({ lb: 1 }, { g: 1 }, 'nearest')).toEqualTypeOf<Mass>();
    // @ts-expect-error: no such direction
    roundToStep({ lb: 1 }, { g: 1 }, 'floor');
    // @ts-expect-error: a direction is always stated
    roundToStep({ lb: 1 }, { g: 1 });
  });

  it('splits a list of masses', () => {
    expectTypeOf(splitToStep([{ lb: 1 }, { g: '2.5' }], { g: 1 })).toEqualTypeOf<readonly Mass[]>();
    // @ts-expect-error: numbers are no masses
    splitToStep([1, 2], { g: 1 });
  });
});
