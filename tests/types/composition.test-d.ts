import {
  batchVolumeOf,
  compositionFrom,
  ratiosOf,
  solvent,
  totalFattyMatterOf,
  valueIn,
  type AdditionInput,
  type Composition,
  type Decimal,
  type MadeSoap,
  type SoapFromLyeResult,
  type SolventId,
} from 'laurate';
import { describe, expectTypeOf, it } from 'vitest';

declare const soap: SoapFromLyeResult;
declare const composition: Composition;

describe('what is added', () => {
  it('a solvent says its assay, water need not', () => {
    expectTypeOf<{ solvent: 'glycerol'; mass: { g: 1 }; assay: { percent: 99 } }>().toExtend<AdditionInput>();
    expectTypeOf<{ solvent: 'water'; mass: { g: 1 } }>().toExtend<AdditionInput>();
    expectTypeOf<{ solvent: 'glycerol'; mass: { g: 1 } }>().not.toExtend<AdditionInput>();
  });

  it('spirit alone may be stated by volume', () => {
    expectTypeOf<{ solvent: 'ethanol'; mass: { g: 1 }; assay: { percentByVolume: 96 } }>().toExtend<AdditionInput>();
    expectTypeOf<{ solvent: '2-propanol'; mass: { g: 1 }; assay: { percentByVolume: 70 } }>().not.toExtend<AdditionInput>();
  }); // prettier-ignore

  it('is one thing, and has an assay only if it is a solvent', () => {
    expectTypeOf<{ name: 'Colour'; mass: { g: 1 } }>().toExtend<AdditionInput>();
    expectTypeOf<{ name: 'Colour'; salt: 'Borax'; mass: { g: 1 } }>().not.toExtend<AdditionInput>();
    expectTypeOf<{ salt: 'Borax'; mass: { g: 1 }; assay: { percent: 99 } }>().not.toExtend<AdditionInput>();
  });

  it('a grade on file is an assay', () => {
    const [grade] = solvent('glycerol').grades;
    if (grade !== undefined) {
      compositionFrom({ soap, additions: [{ solvent: 'glycerol', mass: { g: 1 }, assay: grade.assay }] });
    }
    // @ts-expect-error no such solvent
    solvent('glycerin');
    expectTypeOf<'peg-400'>().toExtend<SolventId>();
  });
});

describe('a composition', () => {
  it('takes a soap as it is, or as little of it as is read again', () => {
    expectTypeOf<SoapFromLyeResult>().toExtend<MadeSoap>();
    expectTypeOf<Composition['given']['soap']>().toExtend<MadeSoap>();
    // @ts-expect-error not a soap
    compositionFrom({ soap: composition, additions: [] });
    // @ts-expect-error what is added is always stated
    compositionFrom({ soap });
  });

  it('has every component, and glycerol by where it is from', () => {
    expectTypeOf(composition.components.isopropanol.mass.likely.g).toEqualTypeOf<Decimal>();
    expectTypeOf(composition.components.glycerol.formed.high.g).toEqualTypeOf<Decimal>();
    expectTypeOf(composition.components.sorbitol).not.toHaveProperty('formed');
  });

  it('is what its properties are taken of', () => {
    expectTypeOf(valueIn(ratiosOf(composition).polyolPerSoap.likely, 'partsPerPart')).toEqualTypeOf<Decimal>();
    expectTypeOf(totalFattyMatterOf(composition).totalFattyMatter.likely.percent).toEqualTypeOf<Decimal>();
    expectTypeOf(batchVolumeOf({ composition, temperature: { celsius: 20 } }).volume.high.mL).toEqualTypeOf<Decimal>();
    // @ts-expect-error a soap is no composition
    ratiosOf(soap);
  });
});
