import type { Batch } from 'laurate/recipe';
import type { compositionFrom, placeAmongPublished, planLye, soapFromLye, superfatFromLye } from 'laurate';
import { toJson } from 'laurate';
import type { placeChartOf, temperatureChartOf } from 'laurate/reports';
import { compositionChartOf, lotVariationChartOf, type Chart } from 'laurate/reports';
import type { TopLevelSpec } from 'vega-lite';
import { describe, expectTypeOf, it } from 'vitest';

type Composition = ReturnType<typeof compositionFrom>;
declare const composition: Composition;
declare const batch: Batch;

describe('a chart', () => {
  it('is what the drawing library takes', () => {
    expectTypeOf<Chart>().toExtend<TopLevelSpec>();
    expectTypeOf<ReturnType<typeof compositionChartOf>>().toExtend<TopLevelSpec>();
    expectTypeOf<ReturnType<typeof lotVariationChartOf>>().toExtend<TopLevelSpec>();
    expectTypeOf<ReturnType<typeof temperatureChartOf>>().toExtend<TopLevelSpec>();
    expectTypeOf<ReturnType<typeof placeChartOf>>().toExtend<TopLevelSpec>();
  });

  it('has no room for an expression', () => {
    expectTypeOf<{ expr: string }>().not.toExtend<Chart['title']['text'][number]>();
    expectTypeOf<{ expr: string }>().not.toExtend<Chart['concat'][number]['layer'][number]['mark']['color']>();
    expectTypeOf<Chart>().not.toHaveProperty('params');
    expectTypeOf<Chart>().not.toHaveProperty('transform');
    expectTypeOf<Chart['concat'][number]['layer'][number]>().not.toHaveProperty('transform');
  });
});

describe('what a chart is drawn from', () => {
  it('is a result of the right function, as it is or read back from JSON', () => {
    compositionChartOf(composition);
    compositionChartOf(toJson(composition));
    lotVariationChartOf(batch, { limit: { percentNaoh: '0.05' } });
    expectTypeOf<ReturnType<typeof planLye>>().toExtend<Parameters<typeof lotVariationChartOf>[0]>();
    expectTypeOf<ReturnType<typeof superfatFromLye>>().toExtend<Parameters<typeof lotVariationChartOf>[0]>();
    expectTypeOf<ReturnType<typeof soapFromLye>>().toExtend<Parameters<typeof lotVariationChartOf>[0]>();
    expectTypeOf<ReturnType<typeof placeAmongPublished>>().toExtend<Parameters<typeof placeChartOf>[0]>();
    // @ts-expect-error a composition has no superfat
    lotVariationChartOf(composition);
    // @ts-expect-error a batch is no composition
    compositionChartOf(batch);
    // @ts-expect-error no such limit
    lotVariationChartOf(batch, { limit: 'soap' });
  });
});
