import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/numbers/index.js';
import { readNumberFormat } from '../../src/reports/numberFormat.js';
import { sheetWriter, type SheetUnits, type UnitSystem, type Weighed } from '../../src/reports/sheet/sheetWriter.js';

const writer = (units: SheetUnits) => sheetWriter(units, readNumberFormat('numbers', {}));
const spread = (low: string, likely: string, high: string) => ({
  low: new Decimal(low),
  likely: new Decimal(likely),
  high: new Decimal(high),
});
const grams = (low: string, likely = low, high = low) => ({
  low: { g: new Decimal(low) },
  likely: { g: new Decimal(likely) },
  high: { g: new Decimal(high) },
});
const litres = (low: string, likely = low, high = low) => ({
  low: { mL: new Decimal(low) },
  likely: { mL: new Decimal(likely) },
  high: { mL: new Decimal(high) },
});

describe('masses to weigh', () => {
  const weighed = (g: string, system: UnitSystem, direction: Weighed['direction'], step?: string) =>
    writer('both').weighed({ g: new Decimal(g) }, system, {
      scaleStep: step === undefined ? undefined : new Decimal(step),
      direction,
    });

  it.each<[string, UnitSystem, Weighed['direction'], string | undefined, string]>([
    // without a step: a tenth of a gram, a hundredth of an ounce, or three digits where that is finer
    ['345.58', 'metric', 'nearest', undefined, '345.6'],
    ['345.58', 'metric', 'down', undefined, '345.5'],
    ['3.4567', 'metric', 'nearest', undefined, '3.46'],
    ['3.4567', 'metric', 'down', undefined, '3.45'],
    ['0.045678', 'metric', 'down', undefined, '0.0456'],
    ['0', 'metric', 'nearest', undefined, '0.0'],
    ['283.49523125', 'us', 'nearest', undefined, '10.00'],
    ['2.8349523125', 'us', 'nearest', undefined, '0.100'],
    ['0', 'us', 'nearest', undefined, '0.00'],
    // to the step of the scale, which has been kept to before
    ['345.5', 'metric', 'nearest', '0.5', '345.5'],
    ['345', 'metric', 'nearest', '5', '345'],
    ['345.12', 'metric', 'down', '0.01', '345.12'],
    ['0.0345', 'metric', 'nearest', '0.0005', '0.0345'],
    // a step of one system is none of the other
    ['345', 'us', 'down', '1', '12.16'], // 12.1695
    ['345', 'us', 'nearest', '1', '12.17'],
    ['28.349523125', 'us', 'nearest', '1.41747615625', '1.00'], // of 0.05 oz
    ['28.349523125', 'metric', 'nearest', '1.41747615625', '28.3'],
  ])('%s g, %s, %s, by a step of %s: %s', (g, system, direction, step, expected) => {
    expect(weighed(g, system, direction, step)).toBe(expected);
  });
});

describe('figures of the text', () => {
  it.each([
    [grams('987.654'), '988 g (34.8 oz)'],
    [grams('12.3456'), '12.3 g (0.435 oz)'],
    [grams('9999.6'), '10000 g (353 oz)'],
    [grams('10000'), '10 kg (353 oz)'],
    [grams('12345.6'), '12.35 kg (435 oz)'],
    [grams('9000', '9999', '11000'), '9000 to 11000 g (317 to 388 oz)'],
    [grams('9000', '10001', '11000'), '9.00 to 11.00 kg (317 to 388 oz)'],
    [grams('40', '40.5', '41.2'), '40.0 to 41.2 g (1.41 to 1.45 oz)'],
    [grams('40', '41', '41.2'), '40 to 41 g (1.41 to 1.45 oz)'], // as exact as the likely figure
  ])('masses: %#', (mass, expected) => {
    expect(writer('both').massSpan(mass)).toBe(expected);
    expect([writer('metric').massSpan(mass), writer('us').massSpan(mass)].join(' (')).toBe(expected.replace(')', ''));
  });

  it.each([
    [litres('90'), '90 mL (3.04 US fl oz)'], // 90/29.5735295625
    [litres('9999.99'), '10000 mL (338 US fl oz)'],
    [litres('10000'), '10 L (338 US fl oz)'],
    [litres('12345.5', '12345.6', '12354'), '12.35 L (417 to 418 US fl oz)'],
    [litres('12000', '12345.6', '12700'), '12.00 to 12.70 L (406 to 429 US fl oz)'],
  ])('volumes: %#', (volume, expected) => {
    expect(writer('both').volumeSpan(volume)).toBe(expected);
    expect(writer('metric').volumeSpan(volume)).toBe(expected.split(' (')[0]);
    const { low } = volume;
    expect(writer('both').volume(low)).toBe(writer('both').volumeSpan({ low, likely: low, high: low }));
  });

  it('temperatures: a tenth of a °C where there is one, whole °F', () => {
    const at = (celsius: string) => ({ celsius: new Decimal(celsius) });
    expect(writer('both').temperature(at('62'))).toBe('62 °C (144 °F)');
    expect(writer('both').temperature(at('62.56'))).toBe('62.6 °C (145 °F)');
    expect(writer('us').temperature(at('-10.5'))).toBe('13 °F');
    expect(writer('metric').temperature(at('-10.5'))).toBe('−10.5 °C');
    expect(writer('both').temperatureSpan(at('60'), at('65.5'))).toBe('60 to 65.5 °C (140 to 150 °F)');
  });

  it('spans: one figure where both ends are written alike', () => {
    const { span } = writer('metric');
    expect(span(spread('1.04', '9', '1.14'), 1)).toBe('1.0 to 1.1');
    expect(span(spread('1.04', '9', '1.0'), 1)).toBe('1.0');
    expect(span(spread('-0.04', '0', '0.04'), 1)).toBe('0.0');
    expect(writer('us').systems).toEqual(['us']);
    expect(writer('both').systems).toEqual(['metric', 'us']);
  });
});
