/** Chromium, which is not installed by the project: where it is, and how it is started so that it asks for nothing. */
import { existsSync } from 'node:fs';

const places = [process.env.KETTLEBOOK_BROWSER, '/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** What it is started with. */
export const quiet = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Its path; ends the command with 2, saying what to do, if there is none. */
export function browserPath() {
  const found = places.find((path) => path !== undefined && existsSync(path));
  if (found !== undefined) return found;
  console.error(
    'No Chromium here. Install it (`apt-get install chromium`), or name one in KETTLEBOOK_BROWSER.',
  );
  process.exit(2);
}
