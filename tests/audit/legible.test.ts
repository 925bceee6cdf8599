/** What came as text is shown in one line of a length that is read at a glance. */
import { describe, expect, it } from 'vitest';
import { legible } from '../../src/audit/legible.js';

describe('a text that came', () => {
  it.each([40, 41, 300])('of %i letters is shown whole up to 40, else cut to 40', (length) => {
    const shown = legible('x'.repeat(length));
    expect(shown).toBe(length <= 40 ? 'x'.repeat(length) : `${'x'.repeat(39)}…`);
    expect(legible('x'.repeat(length), 300)).toHaveLength(length);
  });

  it('loses what steers a screen', () => {
    expect(legible('moon\u202E\u0007butter\n')).toBe('moon butter ');
  });
});
