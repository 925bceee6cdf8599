/** An audit as a page: its text by hand, names that stay names, and the same page after JSON. */
import { auditRecipe } from 'laurate/audit';
import { auditAsMarkdown, workingOf } from 'laurate/reports';
import { describe, expect, it } from 'vitest';
import { fats, full, naoh } from '../audit/recipes.js';
import { throughJson } from '../laws/exact.js';
import { refusal } from '../laws/refusal.js';

const lines = (audit: object, options?: object): readonly string[] =>
  auditAsMarkdown(audit as never, options).split('\n');

describe('an audit as Markdown', () => {
  // 181.79 g are taken up by the likely lots (178.22 to 185.35); 190 g leave 8.21, 11.78 and 4.65 g in 1190 g
  const danger = {
    version: 1,
    fats: [{ fat: 'Drum', mass: { g: '1000' } }],
    lye: [naoh(190)],
    claimed: { superfat: { percent: '4' } },
    additions: [{ name: 'salt', mass: { g: '10' } }],
  };
  const audit = auditRecipe(danger, { fats });

  it('says it all, the most urgent first', () => {
    const page = lines(audit, { title: 'Bar no. 7' });
    expect(page.slice(0, 9)).toEqual([
      '# Audit of Bar no. 7',
      '',
      '**Verdict: dangerous.** The likely lots of these fats leave free caustic above the limit: do not use it.',
      '',
      'Superfat that the masses give: −6.61 to −2.51 %, likely −4.52 % (negative is alkali in excess).',
      // of 1200 g
      'Free caustic: 0.387 to 0.981 % NaOH of everything in the pot, likely 0.684 %; the limit is 0.05 %.',
      '',
      '## Danger',
      '',
    ]);
    const heads = page.filter((line) => line.startsWith('## '));
    expect(heads).toEqual(['## Danger', '## To be cleared up', '## Good to know', '## Cautions', '## Assumed']);
    expect(page[9]).toBe(`- **lye**: ${audit.findings[0]?.explanation ?? ''}`);
    const [slip] = audit.findings[0]?.slips ?? [];
    expect(page[10]).toBe(`  - It may be so: ${slip?.explanation ?? ''} How to tell: ${slip?.tell ?? ''}`);
    expect(page.filter((line) => line.startsWith('  - It may be so: '))).toHaveLength(2);
    for (const { text } of [...audit.cautions, ...audit.notes]) {
      expect(page.filter((line) => line === `- ${text}`)).toHaveLength(1);
    }
    expect(page.at(-2)).toMatch(/^\*\*Sources:\*\* Standard atomic weights .*Figures of edition 2026\.1\.$/);
    expect(page.at(-1)).toBe('');
  });

  it('of what cannot be judged says so, and needs no title', () => {
    const page = lines(auditRecipe('no recipe'));
    expect(page[0]).toBe('# Audit of a recipe');
    expect(page[2]).toBe(
      '**Verdict: cannot-tell.** Something that decides cannot be read, is not known, or is not said.',
    );
    expect(page[4]).toBe('Superfat and free caustic cannot be told from what can be read.');
    expect(page).not.toContain('## Danger');
    expect(page).not.toContain('## Assumed');
    const sound = lines(auditRecipe({ ...danger, lye: [naoh(170)], claimed: {} }, { fats }));
    expect(sound[4]).toBe('Superfat that the masses give: 4.61 to 8.28 %, likely 6.48 %.');
  });

  it('has no line for what there is nothing of', () => {
    const page = lines({
      by: 'auditRecipe',
      verdict: 'sound',
      findings: [{ severity: 'note', path: 'fats[0]', explanation: 'Seen.', slips: [], basis: [] }],
      limit: { percentNaoh: '0.05' },
      notes: [],
      cautions: [{ code: 'a', text: 'Mind.' }, { code: 'b', text: 'Mind.' }],
      basis: [],
      edition: '2026.1',
    }); // prettier-ignore
    expect(page).toEqual([
      '# Audit of a recipe',
      '',
      '**Verdict: sound.** The figures fit each other. That is arithmetic, not a test of the soap.',
      '',
      'Superfat and free caustic cannot be told from what can be read.',
      '',
      '## Good to know',
      '',
      String.raw`- **fats\[0\]**: Seen.`,
      '',
      '## Cautions',
      '',
      '- Mind.',
      '',
      '**Sources:** Figures of edition 2026.1.',
      '',
    ]);
  });

  it.each([audit, auditRecipe(full, { fats }), auditRecipe({ version: 2 })])('is the same after JSON: %#', (one) => {
    expect(lines(throughJson(one) as object)).toEqual(lines(one));
  });

  it('names stay names', () => {
    const name = 'x | <b>y</b>\n# z [a](http://example.org) `c` ***';
    const hostile = auditRecipe({ ...danger, additions: [{ name, mass: { g: '1' } }], [name]: 1 }, { fats });
    const page = lines(hostile, { title: name });
    expect(page[0]).toBe(String.raw`# Audit of x \| &lt;b&gt;y&lt;/b&gt; \# z \[a\](http\://example.org) \`c\` \*\*\*`);
    expect(page.join('\n')).not.toMatch(/<b>|(?<!\\)\[a|(?<!\\)`/);
    expect(page.filter((line) => line.startsWith('# '))).toHaveLength(1);
    // and a stored audit that somebody has written into
    const stored = throughJson(audit) as { findings: { explanation: string; slips: { tell: string }[] }[] };
    const [first] = stored.findings;
    if (first?.slips[0] === undefined) throw new Error('no slip');
    first.explanation = name;
    first.slips[0].tell = name;
    expect(lines(stored).join('\n')).not.toMatch(/<b>|(?<!\\)\[a|(?<!\\)`|\n# z/);
  });

  const stored = throughJson(audit) as Record<string, unknown>;
  it.each<[string, object, string, string]>([
    ['nothing', {}, 'missing', 'audit.by'],
    ['another result', { by: 'planLye' }, 'bad-shape', 'audit.by'],
    ['a verdict of somebody else', { ...stored, verdict: 'fine' }, 'bad-shape', 'audit.verdict'],
    ['no findings', { ...stored, findings: undefined }, 'missing', 'audit.findings'],
    ['a finding without words', { ...stored, findings: [{ severity: 'note', path: 'lye' }] }, 'missing', 'audit.findings[0].explanation'],
    ['cautions that are texts', { ...stored, cautions: ['x'] }, 'bad-shape', 'audit.cautions[0]'],
    ['no limit', { ...stored, limit: { percentNaoh: 'x' } }, 'not-a-number', 'audit.limit.percentNaoh'],
    ['half of what is implied', { ...stored, implied: { superfat: {} } }, 'missing', 'audit.implied.superfat.low'],
    ['a source that is none', { ...stored, basis: [7] }, 'bad-shape', 'audit.basis[0]'],
  ])('refuses %s', (_, value, code, path) => {
    const error = refusal(() => lines(value));
    expect([error.code, error.path]).toEqual([code, path]);
  }); // prettier-ignore

  it('refuses every figure and word that it prints by its own path, wherever it stands', () => {
    const printed = [
      'by', 'verdict', 'edition', 'limit.percentNaoh', 'basis[0]', 'cautions[0].text', 'notes[0].text',
      ...['severity', 'path', 'explanation', 'basis'].flatMap((key) => [`findings[0].${key}`, `findings[1].${key}`]),
      'findings[0].basis[0]', 'findings[1].basis[0]',
      ...['explanation', 'tell'].flatMap((key) => [`findings[0].slips[0].${key}`, `findings[0].slips[1].${key}`]),
      ...['low', 'likely', 'high'].flatMap((end) => [
        `implied.superfat.${end}.percent`, `implied.freeCausticAlkali.${end}.percentNaoh`,
      ]),
    ];
    for (const path of printed) {
      const copy = structuredClone(stored);
      const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
      const last = keys.pop() ?? '';
      const holder = keys.reduce((one, key) => one[key] as Record<string, unknown>, copy);
      expect(holder, path).toHaveProperty(last);
      holder[last] = false;
      expect(refusal(() => lines(copy)).path).toBe(`audit.${path}`);
    }
  }); // prettier-ignore

  it('is sound without what is implied, also where JSON has null', () => {
    for (const implied of [undefined, null]) {
      expect(lines({ ...stored, implied })[4]).toBe('Superfat and free caustic cannot be told from what can be read.');
    }
  });

  it('refuses other options, and has no working', () => {
    expect(refusal(() => lines(audit, { name: 'x' })).code).toBe('unknown-key');
    expect(refusal(() => lines(audit, { title: ' ' })).path).toBe('options.title');
    const error = refusal(() => workingOf(audit as never));
    expect(error.message).toContain('auditAsMarkdown');
  });
});
