/** The limits of what the tests of a soap are read within: the last figure that is read, and the first that is not. */
import * as laurate from 'laurate';
import { describe, expect, it } from 'vitest';
import { refusal } from '../laws/refusal.js';

type Fields = Readonly<Record<string, unknown>>;
const calls = laurate as unknown as Readonly<Record<string, (input: Fields) => unknown>>;

const mg = (mgKohPerG: string | number) => ({ mgKohPerG });
const percentNaoh = (figure: string | number) => ({ percentNaoh: figure });
const caustic = { freeCausticAlkali: percentNaoh('0.05'), standardUncertainty: percentNaoh('0.001') };
const acid = { acidValue: mg(5), standardUncertainty: mg('0.1') };
const lye = { alkali: 'naoh', solution: { hydroxide: { percent: 50 } } };
const citric = { acid: 'citric', assay: { percent: 100 } };
const titrant = { eqPerL: '0.1' };
const usual: Readonly<Record<string, Fields>> = {
  acidValueFromTitration: { sample: { g: 10 }, titrant, volume: { mL: 2 } },
  correctFreeAlkali: { batch: { g: 1000 }, alkali: 'naoh', measured: caustic, target: percentNaoh(0), corrector: citric },
  correctSuperfat: { batch: { g: 1000 }, measured: acid, target: mg(0), lye },
  esterValueFromTitrations: { saponification: { saponificationValue: mg(196) }, acid: { acidValue: mg(1) } },
  freeAlkaliBehindPh: { reading: { pH: 10 }, error: { pH: '0.3' }, on: 'wet-bar', temperature: { celsius: 20 } },
  freeCausticAlkaliFromTitration: { sample: { g: 10 }, titrant, volume: { mL: 2 } },
  judgeFreeAlkali: { measured: caustic, limit: percentNaoh('0.05') },
  soapSolutionPhFrom: { soap: { g: 1 }, solution: { mL: 100 }, temperature: { celsius: 25 } },
  titrantFromStandard: { standard: { sodiumCarbonate: { mg: 132 } }, volume: { mL: '24.85' } },
}; // prettier-ignore

describe('limits', () => {
  it.each<[call: string, inside: Fields, outside: Fields, path: string]>([
    ['correctFreeAlkali', { batch: { mg: 1 } }, { batch: { mg: '0.999' } }, 'batch.mg'],
    ['correctSuperfat', { batch: { mg: 1 } }, { batch: { mg: '0.999' } }, 'batch.mg'],
    ['correctFreeAlkali', { corrector: { ...citric, assay: { percent: '0.01' } } }, { corrector: { ...citric, assay: { percent: '0.0099' } } }, 'corrector.assay.percent'],
    ['correctFreeAlkali', { measured: { ...caustic, freeCausticAlkali: percentNaoh(100) } }, { measured: { ...caustic, freeCausticAlkali: percentNaoh('100.1') } }, 'measured.freeCausticAlkali.percentNaoh'],
    ['correctSuperfat', { measured: { ...acid, acidValue: mg(300) } }, { measured: { ...acid, acidValue: mg('300.1') } }, 'measured.acidValue.mgKohPerG'],
    ['esterValueFromTitrations', { saponification: { saponificationValue: mg(1000) } }, { saponification: { saponificationValue: mg('1000.1') } }, 'saponification.saponificationValue.mgKohPerG'],
    ['esterValueFromTitrations', { acid: { acidValue: mg(0) } }, { acid: { acidValue: mg('-0.1') } }, 'acid.acidValue.mgKohPerG'],
    ['esterValueFromTitrations', { acid: { acidValue: mg(1), standardUncertainty: mg(0) } }, { acid: { acidValue: mg(1), standardUncertainty: mg('-0.1') } }, 'acid.standardUncertainty.mgKohPerG'],
    ['freeAlkaliBehindPh', { error: { pH: 3 } }, { error: { pH: '3.01' } }, 'error.pH'],
    ['freeAlkaliBehindPh', { error: { pH: 0 } }, { error: { pH: '-0.01' } }, 'error.pH'],
    ['judgeFreeAlkali', { massLoss: { percent: 90 } }, { massLoss: { percent: '90.1' } }, 'massLoss.percent'],
    ['judgeFreeAlkali', { limit: percentNaoh(10) }, { limit: percentNaoh('10.1') }, 'limit.percentNaoh'],
    ['soapSolutionPhFrom', { soapContent: { percent: 1 } }, { soapContent: { percent: '0.99' } }, 'soapContent.percent'],
    ['soapSolutionPhFrom', { soapContent: { percent: 100 } }, { soapContent: { percent: '100.1' } }, 'soapContent.percent'],
    ['soapSolutionPhFrom', { soap: { mg: 100 } }, { soap: { mg: 0 } }, 'soap.mg'],
    ['soapSolutionPhFrom', { solution: { mL: 10 } }, { solution: { mL: 0 } }, 'solution.mL'],
    ['titrantFromStandard', { standard: { sodiumCarbonate: { mg: 1 } } }, { standard: { sodiumCarbonate: { mg: '0.999' } } }, 'standard.sodiumCarbonate.mg'],
    ['titrantFromStandard', { standard: { solution: { titrant, volume: { mL: 1 } } } }, { standard: { solution: { titrant, volume: { mL: 0 } } } }, 'standard.solution.volume.mL'],
    ['freeCausticAlkaliFromTitration', { uncertainty: { burette: { mL: 100 } } }, { uncertainty: { burette: { mL: '100.1' } } }, 'uncertainty.burette.mL'],
    ['freeCausticAlkaliFromTitration', { uncertainty: { titrant: { percent: 50 } } }, { uncertainty: { titrant: { percent: '50.1' } } }, 'uncertainty.titrant.percent'],
  ])('%s: %j is read, %j is not', (call, inside, outside, path) => {
    const run = (change: Fields) => calls[call]?.({ ...usual[call], ...change });
    expect(run(inside)).toHaveProperty('basis');
    expect(refusal(() => run(outside))).toMatchObject({ code: 'out-of-range', path });
  }); // prettier-ignore
});

describe('readings', () => {
  const reading = { sample: { g: 10 }, volume: { mL: 2 } };
  const read = (change: Fields) => calls['acidValueFromTitration']?.({ titrant, ...change });

  it('are ten at most', () => {
    const of = (count: number) => ({ readings: Array.from({ length: count }, () => reading) });
    expect(read(of(10))).toHaveProperty('basis');
    expect(refusal(() => read(of(11)))).toMatchObject({ code: 'bad-shape', path: 'readings' });
  });

  it.each<[Fields]>([[reading], [{ sample: reading.sample }], [{ volume: reading.volume }]])(
    'stand for sample and volume, not beside %j',
    (beside) => {
      const refused = refusal(() => read({ readings: [reading], ...beside }));
      expect(refused).toMatchObject({ code: 'bad-shape', path: 'readings' });
    },
  );
});

describe('what is of no kind', () => {
  it('a soap of no alkali', () => {
    const run = () => calls['correctFreeAlkali']?.({ ...usual['correctFreeAlkali'], alkali: null });
    expect(refusal(run)).toMatchObject({ code: 'bad-shape', path: 'alkali' });
  });

  it('a pH on anything but a solution or a wet bar: the one word there is is named', () => {
    const run = () => calls['freeAlkaliBehindPh']?.({ ...usual['freeAlkaliBehindPh'], on: 'dry-bar' });
    expect(refusal(run)).toMatchObject({ code: 'bad-shape', path: 'on', message: expect.stringContaining('wet-bar') as string }); // prettier-ignore
  });
});
