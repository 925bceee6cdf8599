import type { CheckValue } from './checkValue.js';
import { chemistryChecks } from './data/chemistry.js';
import { handbookFatChecks } from './data/handbookFats.js';
import { lyeChecks } from './data/lye.js';
import { quantityChecks } from './data/quantities.js';
import { sampledFatChecks } from './data/sampledFats.js';
import { saponificationChecks } from './data/saponification.js';
import { standardRangeChecks } from './data/standardRanges.js';

/** Every published figure the library is checked against. */
export const checkValues: readonly CheckValue[] = [
  ...quantityChecks,
  ...chemistryChecks,
  ...handbookFatChecks,
  ...sampledFatChecks,
  ...standardRangeChecks,
  ...lyeChecks,
  ...saponificationChecks,
];
