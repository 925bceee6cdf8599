/** What compositions hold at their edges: assays that move apart, losses named where they stand, densities by their sources. */
import {
  batchVolumeOf,
  compositionFrom,
  fatFromCertificate,
  mixtureDensity,
  ratiosOf,
  soapFromLye,
  solventDensity,
  solvents,
  type AdditionInput,
  type BatchVolume,
  type Ranged,
  type FractionInput,
} from 'laurate';
import { workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';

const dry = fatFromCertificate({ name: 'Dry', kind: 'triglyceride', saponificationValue: { mgKohPerG: 200 } });
const soap = soapFromLye({
  fats: [{ fat: dry, mass: { g: 500 } }],
  lye: [{ alkali: 'naoh', mass: { g: 140 }, solution: { hydroxide: { percent: 50 } } }],
});
const volume = (additions: readonly AdditionInput[]): BatchVolume =>
  batchVolumeOf({ composition: compositionFrom({ soap, additions }), temperature: { celsius: 20 } });

describe('assays that are ranges', () => {
  it('of spirit and of the rest move apart: strong spirit lightens a batch, strong syrup makes it heavier', () => {
    const of = (spirit: Ranged<FractionInput>, syrup: Ranged<FractionInput>) =>
      volume([
        { solvent: 'ethanol', mass: { g: 200 }, assay: spirit },
        { solvent: 'sucrose', mass: { g: 200 }, assay: syrup },
      ]).density;
    const wide = of({ low: { percent: 60 }, high: { percent: 100 } }, { low: { percent: 30 }, high: { percent: 90 } });
    const lightest = of({ percent: 100 }, { percent: 30 }).low.gPerML;
    const densest = of({ percent: 60 }, { percent: 90 }).high.gPerML;
    expect([wide.low.gPerML.toFixed(20), wide.high.gPerML.toFixed(20)]).toEqual([
      lightest.toFixed(20),
      densest.toFixed(20),
    ]);
    // either kind by the same end of its range is neither
    expect(lightest.lt(of({ percent: 60 }, { percent: 30 }).low.gPerML)).toBe(true);
    expect(densest.gt(of({ percent: 100 }, { percent: 90 }).high.gPerML)).toBe(true);
  });
});

describe('a loss stated in two ways', () => {
  const both = { evaporated: { g: 10 }, potMass: { g: 600 } };

  it('is named where it stands', () => {
    const said = (call: () => unknown) => refusal(call).path;
    expect(said(() => compositionFrom({ soap, additions: [], ...both }))).toBe('input');
    const given = { soap: { by: soap.by, given: soap.given }, additions: [], ...both };
    expect(said(() => ratiosOf({ by: 'compositionFrom', given } as never))).toBe('composition.given');
  });
});

describe('densities', () => {
  it('the working of a volume has that of each solvent there is, and of no other', () => {
    const made = volume([
      { solvent: 'glycerol', mass: { g: 50 }, assay: { percent: 99 } },
      { solvent: 'ethanol', mass: { g: 50 }, assay: { percent: 96 } },
    ]);
    const figures = workingOf(made).map(({ figure }) => figure);
    expect(figures.filter((figure) => figure.startsWith('density of ')).sort()).toEqual([
      'density of ethanol',
      'density of glycerol',
      'density of water',
    ]);
  });

  it.each(solvents)('$id: each has its sources, each once', ({ id }) => {
    const celsius = { sucrose: 17, glucose: 18 }[id as string] ?? 20;
    const { basis } = solventDensity({ solvent: id, temperature: { celsius } });
    expect(basis.length).toBeGreaterThan(0);
    expect(new Set(basis).size).toBe(basis.length);
  });
});

describe('spirit', () => {
  it.each([
    // OIML R 22, general formula: 40 % by mass, kg/m³ at 15, 20, 30 and 40 °C
    [15, '0.93880'],
    [20, '0.93515'],
    [30, '0.92764'],
    [40, '0.91989'],
  ])('of 40 %% by mass at %s °C has %s g/mL', (celsius, gPerML) => {
    const { density } = mixtureDensity({ solvent: 'ethanol', share: { percent: 40 }, temperature: { celsius } });
    expect(density.gPerML.toFixed(5)).toBe(gPerML);
  });
});
