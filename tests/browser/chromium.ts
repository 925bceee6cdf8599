/** The browser the pages are tried in; without one they are skipped, and it is said. */
import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

/** Why a test cannot be had here, or false. */
export function skippedWithout(what: string): string | false {
  if (existsSync(executablePath)) return false;
  const reason = `no Chromium at ${executablePath}`;
  process.stderr.write(`SKIPPED: ${what} not tried in a browser, ${reason}\n`);
  return reason;
}

export const launched = (): Promise<Browser> =>
  chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'] });
