import { orderOfWork } from 'laurate';
import { describe, expect, it } from 'vitest';
import { SOLVENT_IDS } from '../../src/composition/index.js';
import { orderOfAdditions } from '../../src/process/orderOfAdditions.js';

describe('the order of additions', () => {
  const order = orderOfAdditions();

  it('holds every solvent once', () => {
    expect([...order].sort()).toEqual([...SOLVENT_IDS].sort());
  });

  it('is that of the route, with what the route does not name before its last, and what spoils in heat or burns at the end', () => {
    const ofRoute = orderOfWork().flatMap(({ id }) =>
      id.startsWith('add-') && id !== 'add-lye' ? [id.slice('add-'.length)] : [],
    );
    expect(ofRoute.length).toBeGreaterThan(1);
    expect(order.filter((solvent) => ofRoute.includes(solvent))).toEqual(ofRoute);
    expect(order.slice(-5)).toEqual(['sucrose', 'glucose', 'triethanolamine', 'ethanol', '2-propanol']);
    const last = order.indexOf(ofRoute.at(-1) as never);
    const unnamed = SOLVENT_IDS.filter((solvent) => !ofRoute.includes(solvent) && !order.slice(-5).includes(solvent));
    expect(unnamed.length).toBeGreaterThan(0);
    expect(order.slice(last - unnamed.length, last)).toEqual(unnamed);
  });
});
