/**
 * When a dose is large, and when it is too much, in percent of the batch: conventions of this library. The dose as weighed
 * thins a base and heats or cools it; the salts that an acid leaves dull it. A solution of 25 % citric acid meets both at
 * nearly the same content of caustic: large from 0.46 %, too much from 1.4 %.
 */
export const largeDose = {
  dose: { large: '3', tooMuch: '10' },
  salts: { large: '1', tooMuch: '3' },
} as const;
