/** What a worker of the pool does with one parcel of lines. */
import { verdictLineOf } from './job.js';

export default (lines: readonly string[]): readonly string[] => lines.map(verdictLineOf);
