import { describe, expectTypeOf, it } from 'vitest';
import {
  fattyAcidOf,
  fatFromProfile,
  isCalculationError,
  molarMassOf,
  naohFromKoh,
  sources,
  splitToStep,
  toJson,
  valueIn,
  type CalculationError,
  type Decimal,
  type ErrorCode,
  type Estimate,
  type FattyAcid,
  type FattyAcidProfileInput,
  type Fraction,
  type Json,
  type Mass,
  type MassInput,
  type NaohFromKohResult,
  type SourceId,
} from 'laurate';

describe('Json', () => {
  it('is the same shape with texts for Decimals', () => {
    expectTypeOf<Json<Decimal>>().toEqualTypeOf<string>();
    expectTypeOf<Json<Mass>>().toEqualTypeOf<{ readonly g: string }>();
    expectTypeOf<Json<Estimate<Fraction>>>().toEqualTypeOf<{
      readonly low: { readonly percent: string };
      readonly likely: { readonly percent: string };
      readonly high: { readonly percent: string };
    }>();
    expectTypeOf<Json<readonly Mass[]>>().toEqualTypeOf<readonly { readonly g: string }[]>();
    expectTypeOf<Json<readonly ['a', Decimal]>>().toEqualTypeOf<readonly ['a', string]>();
    expectTypeOf<Json<'naoh' | 3 | true | null>>().toEqualTypeOf<'naoh' | 3 | true | null>();
    expectTypeOf<Json<{ readonly mass?: Mass }>>().toEqualTypeOf<{ readonly mass?: { readonly g: string } }>();
  });

  it('is what toJson gives', () => {
    const json = toJson(molarMassOf('NaOH'));
    expectTypeOf(json.molarMass).toEqualTypeOf<{ readonly gPerMol: string }>();
    expectTypeOf(json.basis).toEqualTypeOf<readonly SourceId[]>();
    expectTypeOf(json.edition).toEqualTypeOf<string>();
  });

  it('is accepted as input again', () => {
    const [first] = toJson(splitToStep([{ g: 1 }], { g: 1 }));
    expectTypeOf<Json<Mass>>().toExtend<MassInput>();
    if (first !== undefined) expectTypeOf(valueIn(first, 'kg')).toEqualTypeOf<Decimal>();
  });
});

describe('results', () => {
  it('are readonly', () => {
    const result = molarMassOf('NaOH');
    // @ts-expect-error: readonly
    result.edition = 'mine';
    // @ts-expect-error: readonly within
    result.molarMass.gPerMol = result.molarMass.gPerMol.times(2);
    expectTypeOf(result.basis).toEqualTypeOf<readonly SourceId[]>();
    // @ts-expect-error: a readonly list of masses
    splitToStep([{ g: 1 }], { g: 1 })[0] = { g: result.molarMass.gPerMol };
    const [source] = sources(['iupac-2021']);
    // @ts-expect-error: readonly
    if (source !== undefined) source.title = 'mine';
  });

  it('hold quantities, never bare numbers', () => {
    expectTypeOf<NaohFromKohResult['naoh']>().toEqualTypeOf<Mass>();
    const { naoh } = naohFromKoh({ koh: { g: 1 }, kohAssay: { percent: 90 }, naohAssay: { percent: 98 } });
    expectTypeOf(naoh).toExtend<MassInput>();
    // @ts-expect-error: grams are said
    expectTypeOf(naoh.times);
  });
});

describe('inputs', () => {
  it('have no unknown and no missing options', () => {
    const pure = { percent: 100 };
    // @ts-expect-error: an unknown option
    naohFromKoh({ koh: { g: 1 }, kohAssay: pure, naohAssay: pure, purity: pure });
    // @ts-expect-error: an assay is always stated
    naohFromKoh({ koh: { g: 1 }, naohAssay: pure });
    // @ts-expect-error: an assay is a share, not a number
    naohFromKoh({ koh: { g: 1 }, kohAssay: 90, naohAssay: pure });
    // @ts-expect-error: optional is not the same as undefined
    naohFromKoh({ koh: { g: 1 }, kohAssay: pure, naohAssay: undefined });
  });
});

describe('fatty acids', () => {
  it('are literals, so that an editor completes them', () => {
    expectTypeOf<'C12:0'>().toExtend<FattyAcid>();
    expectTypeOf<'C18:1-OH'>().toExtend<FattyAcid>();
    expectTypeOf<string>().not.toExtend<FattyAcid>();
    expectTypeOf<`C${number}:${number}`>().not.toExtend<FattyAcid>();
    // @ts-expect-error: no such acid
    fattyAcidOf('C13:9');
    // @ts-expect-error: capitals count
    fattyAcidOf('c12:0');
  });

  it('are the keys of a profile', () => {
    expectTypeOf<{ 'C16:0': number; 'C18:0': { low: number; high: string } }>().toExtend<FattyAcidProfileInput>();
    expectTypeOf<{ 'C16:0': { percent: number } }>().toExtend<FattyAcidProfileInput>();
    expectTypeOf<{
      'C16:0': { low: { percent: number }; high: { fraction: number } };
    }>().toExtend<FattyAcidProfileInput>();
    // @ts-expect-error: no such acid
    fatFromProfile({ name: 'x', kind: 'triglyceride', profile: { 'C13:9': 100 } });
    // @ts-expect-error: a share is no mass
    fatFromProfile({ name: 'x', kind: 'triglyceride', profile: { 'C16:0': { g: 100 } } });
  });
});

describe('errors', () => {
  it('are told from anything else', () => {
    const caught: unknown = new Error('x');
    if (isCalculationError(caught)) {
      expectTypeOf(caught).toEqualTypeOf<CalculationError>();
      expectTypeOf(caught.code).toEqualTypeOf<ErrorCode>();
    }
  });

  it('have the codes agreed on, no more and no less', () => {
    expectTypeOf<ErrorCode>().toEqualTypeOf<
      | 'not-a-number'
      | 'out-of-range'
      | 'missing'
      | 'unknown-key'
      | 'unknown-unit'
      | 'two-units'
      | 'unknown-fat'
      | 'unknown-acid'
      | 'profile-does-not-close'
      | 'outside-table'
      | 'infeasible'
      | 'bad-shape'
    >();
  });
});
