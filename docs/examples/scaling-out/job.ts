/** The job: text in, text out, and nothing else. Whatever can call a function on a line of text can run it. */
import { auditRecipe } from 'laurate/audit';

/** One recipe as JSON becomes its verdict as JSON. It does not throw: a line that is no JSON is audited as a text. */
export function verdictLineOf(line: string): string {
  const { verdict, findings } = auditRecipe(parsed(line));
  const codes = new Set(findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code));
  return JSON.stringify({ verdict, codes: [...codes] });
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return line;
  }
}
