import { describe, expect, it } from 'vitest';

/** One module for each example; globalSetup.ts has written them. */
const examples = import.meta.glob('./generated/*.ts');

describe('examples of README, guides and doc comments', () => {
  it('are found', () => {
    expect(Object.keys(examples)).not.toHaveLength(0);
  });

  it.each(Object.entries(examples))('%s', async (_, run) => {
    await run();
  });
});
