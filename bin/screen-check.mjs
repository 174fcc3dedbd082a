/**
 * `npm run screen-check`: pages for the screen in a real browser.
 *
 * Each paper of each demo car, and two samples, is shown at 360 and 1200 px, light and dark: axe-core must find nothing, nothing may be fetched,
 * nothing may stick out at the side. A step is ticked and must still be ticked after a reload, and so with what is written
 * into fields; ticks of another day are told; a page without scripts must hold its words; a print repeats the heads of tables. Pictures are left in a folder.
 *
 * With words, only the pages whose name has all of them: `npm run screen-check -- heron manual`.
 *
 * Needs Chromium, which is not installed by the project: `apt-get install chromium` on Debian, or name another in
 * KETTLEBOOK_BROWSER. Exit code 0 if all is good, 1 if anything is not, 2 if there is no browser.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { browserPath, quiet } from './browser.mjs';
import { build as buildProgram } from './build.mjs';
import { carFiles } from './carFiles.mjs';
import { installIfNeeded } from './install.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const screens = [
  { width: 360, height: 740, phone: true },
  { width: 1200, height: 900, phone: false },
];
const schemes = ['light', 'dark'];
/** Chromium cuts taller pictures off; in pixels of the device. */
const tallestPicture = 16_384;

/** Words of the command: only pages whose name has all of them are checked. */
const wanted = process.argv.slice(2);

const faults = [];
let accessRuns = 0;
const fault = (page, what) => {
  faults.push(`${page}: ${what}`);
  console.log(`  not good: ${what}`);
};
const expect = (page, holds, what) => {
  if (!holds) fault(page, what);
};

installIfNeeded(root);
const executablePath = browserPath();
const folder = mkdtempSync(join(tmpdir(), 'kettlebook-screen-'));
const pages = await writePages(folder);
if (pages.length === 0) fault(wanted.join(' ') || 'the program', 'there is no such page');
const { chromium } = await import('playwright-core');
const { source: axe, version: axeVersion } = createRequire(import.meta.url)('axe-core');
// started with an empty profile, which is removed when it is closed
const browser = await chromium.launch({ executablePath, args: quiet, chromiumSandbox: false });
for (const page of pages) await checkPage(page);
await browser.close();
console.log(`Pages and pictures: ${folder}`);
console.log(`${pages.length} pages, ${accessRuns} runs of axe-core ${axeVersion}`);
console.log(faults.length === 0 ? 'screen-check: good' : `screen-check: ${faults.length} faults`);
process.exitCode = faults.length === 0 ? 0 : 1;

/** The pages of the samples, and those of every car as the command makes them, in `into`. */
async function writePages(into) {
  const ofSamples = (await samplePages(into)).map(({ name, html }) => {
    const file = join(into, `${name}.html`);
    writeFileSync(file, html);
    return { name, file };
  });
  await buildProgram();
  const ofCars = carFiles(root).flatMap((spec) => carPages(spec, into));
  return [...ofSamples, ...ofCars]
    .filter(({ name }) => wanted.every((part) => name.includes(part)))
    .map(({ name, file }) => ({ name, file, url: pathToFileURL(file).href }));
}

function carPages(spec, into) {
  const car = basename(spec, '.yaml');
  const make = [join(root, 'bin', 'kettlebook.mjs'), 'make', spec, '--out', into];
  const { status, stderr } = spawnSync(process.execPath, make, { cwd: root, encoding: 'utf8' });
  if (status !== 0) {
    fault(car, `its papers cannot be made: ${stderr}`);
    return [];
  }
  const made = readdirSync(join(into, car)).filter((file) => file.endsWith('.html'));
  return made.map((file) => ({
    name: `${car}-${file.slice(0, -'.html'.length)}`,
    file: join(into, car, file),
  }));
}

/** The sample papers, which hold one of everything, bundled with what writes pages. */
async function samplePages(into) {
  const bundle = join(into, 'pages.cjs');
  const entry = join(root, 'tests', 'html', 'pages.ts');
  await build({
    entryPoints: [entry],
    outfile: bundle,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    logLevel: 'error',
    // modules that ask where they stand look for the shared files, two folders up
    define: { 'import.meta.url': JSON.stringify(pathToFileURL(entry).href) },
  });
  return createRequire(import.meta.url)(bundle).samplePages();
}

async function checkPage(page) {
  console.log(page.name);
  for (const screen of screens) {
    for (const colorScheme of schemes) {
      await orFault(`${page.name} ${screen.width} ${colorScheme}`, checkScreen(page, screen, colorScheme));
    }
  }
  await orFault(`${page.name} without scripts`, checkWithoutScripts(page));
  await orFault(`${page.name} printed`, checkPrint(page));
}

/** A check that breaks off, because something it works with is not there, is a fault too. */
async function orFault(label, checking) {
  try {
    await checking;
  } catch (error) {
    fault(label, `broke off: ${error instanceof Error ? error.message.split('\n')[0] : error}`);
  }
}

/** A page in a browsing context of its own, so that nothing is remembered from another check. */
async function inBrowser(options, work) {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(60_000);
  try {
    return await work(await context.newPage());
  } finally {
    await context.close();
  }
}

async function checkScreen({ name, url }, { width, height, phone }, colorScheme) {
  const label = `${name} ${width} ${colorScheme}`;
  await inBrowser(
    {
      viewport: { width, height },
      colorScheme,
      reducedMotion: 'reduce',
      isMobile: phone,
      hasTouch: phone,
      deviceScaleFactor: phone ? 2 : 1,
    },
    async (page) => {
      const asked = [];
      const complaints = [];
      page.on('request', (request) => asked.push(request.url()));
      page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
      page.on('pageerror', (error) => complaints.push(error.message));
      await page.goto(url);
      await checkAccess(page, label);
      await checkWidth(page, width, label);
      await takePictures(page, label);
      // what happens on the page does not hang on its width
      if (phone && (await page.locator('input[data-step]').count()) > 0) await checkTicks(page, label);
      if (phone && (await page.locator('[data-field]').count()) > 0) await checkFields(page, label);
      const outside = asked.filter((address) => address !== url && !address.startsWith('data:'));
      expect(label, outside.length === 0, `asked for ${outside.join(', ')}`);
      expect(label, complaints.length === 0, `complained: ${complaints.join('; ')}`);
    },
  );
}

/** axe-core with every rule of WCAG 2.2 AA and its best practices; enhanced contrast but for the signal words. */
async function checkAccess(page, label) {
  await page.evaluate(() => window.scrollTo(0, 0));
  accessRuns += 1;
  await page.evaluate(axe);
  const found = await page.evaluate(async () => {
    const rules = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: false } };
    const whole = await globalThis.axe.run(document, { rules });
    // the bar at the foot of the screen covers by half whatever lies there before the page is moved: sizes of the rest without it
    const only = { runOnly: ['target-size'] };
    const bars = [...document.querySelectorAll('.bar')];
    const ofBars = await Promise.all(bars.slice(0, 1).map((bar) => globalThis.axe.run(bar, only)));
    for (const bar of bars) bar.style.visibility = 'hidden';
    const ofRest = await globalThis.axe.run(document, only);
    for (const bar of bars) bar.style.visibility = '';
    return [whole, ...ofBars, ofRest]
      .flatMap(({ violations }) => violations)
      .flatMap(({ id, help, nodes }) =>
        nodes.map(({ html, target }) => ({ id, help, html, target: target.join(' ') })),
      );
  });
  const counted = found.filter(
    ({ id, html }) => !(id === 'color-contrast-enhanced' && /_caution-\d+/.test(html)),
  );
  for (const { id, help, html, target } of counted.slice(0, 8))
    fault(label, `${id}: ${help}: ${target} ${html.slice(0, 160)}`);
  expect(label, counted.length <= 8, `and ${counted.length - 8} more of the kind`);
}

async function checkWidth(page, width, label) {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(label, wide <= width, `the page is ${wide - width} px wider than the screen`);
}

async function takePictures(page, label) {
  const at = (part) => join(folder, `${label.replaceAll(' ', '-')}-${part}.png`);
  await page.screenshot({ path: at('top') });
  const steps = page.locator('ol.steps').first();
  if ((await steps.count()) > 0) {
    await steps.evaluate((list) => list.scrollIntoView({ behavior: 'instant' }));
    await page.screenshot({ path: at('steps') });
  }
  const height = await page.evaluate(() => document.documentElement.scrollHeight * devicePixelRatio);
  if (label.endsWith('light') && height <= tallestPicture)
    await page.screenshot({ path: at('whole'), fullPage: true });
}

async function checkTicks(page, label) {
  const boxes = page.locator('input[data-step]');
  const first = boxes.first();
  const isTicked = () => first.isChecked();
  await page.locator('label.tick').first().click();
  expect(label, await isTicked(), 'a step that was tapped is not ticked');
  await page.reload();
  const stayed = await isTicked();
  expect(label, stayed, stayed ? '' : `a ticked step is not ticked after a reload; ${await keptTicks(page)}`);
  const last = boxes.last();
  await last.focus();
  await page.keyboard.press('Space');
  expect(label, await last.isChecked(), 'a step cannot be ticked from the keyboard');
  await page.screenshot({ path: join(folder, `${label.replaceAll(' ', '-')}-ticked.png`) });
  await checkAccess(page, `${label}, ticked`);
  await checkOtherDay(page, label);
  await page.locator('#_ticks .clear').click();
  expect(label, !(await isTicked()), 'clearing leaves a tick');
  await page.locator('#_ticks .back').click();
  expect(label, await isTicked(), 'what was cleared is not put back');
  await page.locator('#_ticks .clear').click();
  await page.reload();
  expect(label, !(await isTicked()), 'cleared ticks are back after a reload');
}

/** Every field is written into, and must hold that after a reload, until it is cleared. */
async function checkFields(page, label) {
  const fill = () =>
    page.evaluate(() => {
      for (const field of document.querySelectorAll('[data-field]')) {
        if (field.type === 'checkbox') field.checked = true;
        else field.value = `of ${field.name}`;
        field.dispatchEvent(new Event('input', { bubbles: true }));
      }
    });
  const held = () =>
    page.evaluate(() => {
      const fields = [...document.querySelectorAll('[data-field]')];
      const isFull = (field) =>
        field.type === 'checkbox' ? field.checked : field.value === `of ${field.name}`;
      return [fields.filter(isFull).length, fields.length];
    });
  const expectHeld = async (all, what) => {
    const [full, count] = await held();
    expect(label, full === (all ? count : 0), `${what}: ${full} of ${count} fields`);
  };
  await fill();
  await page.reload();
  await expectHeld(true, 'after a reload');
  await checkAccess(page, `${label}, filled in`);
  await page.locator('#_fields .clear').click();
  await expectHeld(false, 'cleared');
  await page.locator('#_fields .back').click();
  await expectHeld(true, 'put back');
  await page.locator('#_fields .clear').click();
  await page.reload();
  await expectHeld(false, 'cleared, and after a reload');
}

/** What is kept, at once and a moment later: for whoever looks into a tick that was lost. */
async function keptTicks(page) {
  const kept = () => page.evaluate(() => JSON.stringify(localStorage));
  const first = await kept();
  await page.waitForTimeout(1000);
  return `kept ${first}, a moment later ${await kept()}`;
}

async function checkOtherDay(page, label) {
  const isOld = () => page.locator('#_old').evaluate((panel) => !panel.hidden);
  expect(label, !(await isOld()), 'ticks of today are called old');
  const keys = await page.evaluate(() => {
    for (const [name, when] of Object.entries(localStorage)) {
      localStorage.setItem(name, String(Number(when) - 3 * 86_400_000));
    }
    return Object.keys(localStorage);
  });
  const fingerprint = await page.evaluate(() => document.documentElement.dataset.fingerprint);
  const isOwn = keys.length > 0 && keys.every((key) => key.includes(fingerprint));
  expect(label, isOwn, 'ticks are not kept under the fingerprint');
  await page.reload();
  expect(label, await isOld(), 'ticks of another day are not told');
  await page.evaluate(() => window.scrollTo({ top: 0, behavior: 'instant' }));
  await page.screenshot({ path: join(folder, `${label.replaceAll(' ', '-')}-old.png`) });
  await checkAccess(page, `${label}, old ticks`);
}

async function checkWithoutScripts({ name, url }) {
  const label = `${name} without scripts`;
  const seen = async (page) => {
    const text = await page.locator('main').evaluate((main) => {
      // what counts ticks is shown by the script
      for (const foot of main.querySelectorAll('.list-foot')) foot.remove();
      // biome-ignore lint/performance/useDomNodeTextContent: what is hidden does not count, and textContent has it too
      return main.innerText;
    });
    return text.replace(/\s+/g, ' ').trim();
  };
  const words = await inBrowser({}, async (page) => {
    await page.goto(url);
    return seen(page);
  });
  await inBrowser({ javaScriptEnabled: false, viewport: { width: 360, height: 740 } }, async (page) => {
    await page.goto(url);
    await page.screenshot({ path: join(folder, `${name}-without-scripts.png`) });
    expect(label, words.length > 200, 'has hardly any words');
    expect(label, (await seen(page)) === words, 'its words are not those of the page with scripts');
    const box = page.locator('input[data-step]').first();
    if ((await box.count()) === 0) return;
    await page.locator('label.tick').first().click();
    expect(label, await box.isChecked(), 'a step cannot be ticked');
  });
}

async function checkPrint({ name, url }) {
  const label = `${name} printed`;
  await inBrowser({ colorScheme: 'dark' }, async (page) => {
    await page.goto(url);
    const printed = await page.pdf({
      path: join(folder, `${name}.pdf`),
      format: 'A4',
      preferCSSPageSize: true,
      tagged: true,
    });
    if (name === 'sample-manual') await checkSheets(printed, label);
    await page.emulateMedia({ media: 'print' });
    const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(label, ground === 'rgb(255, 255, 255)', `is printed on ${ground}`);
    expect(label, !(await page.locator('#_bar').isVisible()), 'the bar is printed');
  });
}

/** The sample manual on paper: its long table goes over a page, and two of its steps have cautions of their own. */
async function checkSheets(printed, label) {
  const sheets = await sheetTexts(printed);
  const has = (text, words) => text.includes(words.replaceAll(' ', ''));
  const ofTable = sheets.filter((text) => /\d+in\d+\.\dUSgal/.test(text));
  expect(label, ofTable.length > 1, 'the long table does not go over a page');
  expect(
    label,
    ofTable.every((text) => has(text, 'Wet on the stick')),
    'a table goes on without its head',
  );
  const pairs = [
    ['A fire under a boiler that is short of water', 'and read the level in the clear tube'],
    ['Liquid fuel on a hot burner', ', then crack the pilot needle valve'],
  ];
  for (const [hazard, step] of pairs) {
    const together = sheets.some((text) => has(text, hazard) && has(text, step));
    expect(label, together, `“${hazard}” stands on another page than its step`);
  }
}

/** The text of each sheet, without spaces: a printed line does not tell where they stood. */
async function sheetTexts(printed) {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const file = await getDocument({ data: new Uint8Array(printed), verbosity: 0 }).promise;
  const numbers = Array.from({ length: file.numPages }, (_, index) => index + 1);
  return Promise.all(
    numbers.map(async (number) => {
      const { items } = await (await file.getPage(number)).getTextContent();
      return items
        .map(({ str }) => str)
        .join('')
        .replace(/\s+/g, '');
    }),
  );
}
