/**
 * One paper as one HTML page for a screen: the same blocks that are laid out for printing, with nothing left out.
 *
 * The page needs nothing from outside itself and can be read without scripts. What its small script adds is that ticked
 * steps stay ticked, by the paper's fingerprint, on the device that shows it.
 */
import { createHash } from 'node:crypto';
import type { FontSet } from '../font/metrics';
import type { Block } from '../markup/block';
import { writeBlock } from './blocks/write';
import { element, Html, onLines } from './element';
import { fieldsPanel, footBar, masthead, oldTicks, pageFoot, ticksPanel } from './furniture';
import type { ScreenLook } from './look';
import { styleOf } from './style';
import { beginWriting } from './writing';

/** What a page says of its paper. All of it is text; none of it is markup. */
export interface ScreenPageOptions {
  /** The paper's own title, such as "Owner’s manual". */
  readonly title: string;
  /** BCP 47 language tag of the paper. */
  readonly language: string;
  /** The car's name. */
  readonly car: string;
  /** Issue letter of the spec. */
  readonly issue: string;
  /** Date of the issue, as ISO 8601 writes it. */
  readonly date: string;
  /** Fingerprint of the paper; ticks are kept under it, so they never pass to another paper or issue. */
  readonly fingerprint: string;
  /** The car is made up, and the page must say so. */
  readonly invented: boolean;
  /** Dark whatever the device asks for, for what is read without light. */
  readonly dark?: boolean;
  readonly look: ScreenLook;
  /** The fonts that drawings were measured with; the page itself uses the reader's own. */
  readonly fonts: FontSet;
}

/** The page, as a whole HTML document. The same blocks and options give the same text, letter for letter. */
export function writeScreenPage(blocks: readonly Block[], options: ScreenPageOptions): string {
  const writing = beginWriting(blocks, options, writeBlock);
  const body = element(
    'body',
    {},
    '\n',
    onLines([
      element('a', { class: 'skip', href: '#_text' }, options.look.words.skip),
      masthead(options),
      ...oldTicks(writing),
      element('main', { id: '_text', tabindex: -1 }, '\n', writing.blocks(blocks)),
      ...ticksPanel(writing),
      ...fieldsPanel(writing),
      pageFoot(options, writing),
      ...footBar(writing),
      element('script', {}, Html.sound(`\n${options.look.script}\n`)),
    ]),
  );
  const attributes = {
    lang: options.language,
    dir: 'ltr',
    class: options.dark === true ? 'in-the-dark' : undefined,
    'data-fingerprint': options.fingerprint,
  };
  const page = element('html', attributes, '\n', head(options), '\n', body, '\n');
  return `<!DOCTYPE html>\n${page.text}\n`;
}

function head({ title, car, look, date, issue, fingerprint }: ScreenPageOptions): Html {
  const { light, dark } = look.colours;
  const meta = (name: string, content: string, rest = {}): Html =>
    element('meta', { name, content, ...rest });
  const pieces: readonly Html[] = [
    element('meta', { charset: 'utf-8' }),
    element('meta', { 'http-equiv': 'Content-Security-Policy', content: policy(look) }),
    element('title', {}, `${car}: ${title}`),
    meta('viewport', 'width=device-width, initial-scale=1'),
    meta('description', `${title}; ${car}; ${issue}; ${date}; ${fingerprint}`),
    meta('color-scheme', 'light dark'),
    meta('theme-color', light.band, { media: '(prefers-color-scheme: light)' }),
    meta('theme-color', dark.band, { media: '(prefers-color-scheme: dark)' }),
    meta('format-detection', 'telephone=no'),
    element('link', { rel: 'icon', href: 'data:,' }),
    element('style', {}, Html.sound(`\n${styleOf(look)}\n`)),
  ];
  return element('head', {}, '\n', onLines(pieces));
}

/**
 * Content Security Policy (W3C CSP 3): nothing may be fetched or sent, and no script may run but the page's own, known
 * by its hash. The style may be inline.
 */
function policy({ script }: ScreenLook): string {
  const hash = createHash('sha256').update(`\n${script}\n`).digest('base64');
  return [
    "default-src 'none'",
    `script-src 'sha256-${hash}'`,
    "style-src 'unsafe-inline'",
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}
