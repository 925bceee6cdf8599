import * as vega from 'vega';
import { parse, resetSVGDefIds, View, type LoggerInterface } from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';

/**
 * Without a screen the library guesses the width of a text from its length, far too wide; this comes closer, and is the
 * same on every machine. Its types leave this part of it out.
 */
const { textMetrics } = vega as unknown as {
  textMetrics: { width: (item: { fontSize?: number }, text: string | undefined) => number };
};
textMetrics.width = ({ fontSize = 11 }, text) => Math.ceil(0.57 * fontSize * (text ?? '').length);

/** A chart as the real library draws it, and everything it complained of. */
export async function svgOf(
  chart: TopLevelSpec,
): Promise<{ readonly svg: string; readonly complaints: readonly string[] }> {
  const complaints: string[] = [];
  const logger = collecting(complaints);
  const { spec } = compile(chart, { logger });
  // the library counts on in the ids it writes: each figure begins anew, so that its bytes are the same every time
  resetSVGDefIds();
  const view = new View(parse(spec), { renderer: 'none', logger });
  const svg = await view.toSVG();
  view.finalize();
  return { svg, complaints };
}

/** A logger that keeps what is wrong or doubtful. */
function collecting(complaints: string[]): LoggerInterface {
  const keep = (...messages: readonly unknown[]): LoggerInterface => {
    complaints.push(messages.map(String).join(' '));
    return logger;
  };
  const level = ((value?: number) => (value === undefined ? 2 : logger)) as LoggerInterface['level'];
  const logger: LoggerInterface = { level, error: keep, warn: keep, info: () => logger, debug: () => logger };
  return logger;
}

/** Where a figure of the guides stands. */
export function figureFile(name: string): URL {
  return new URL(`../../docs/figures/${name}`, import.meta.url);
}
