/**
 * Builds the program: everything in `src` and every package it uses, in files that start fast.
 *
 * `dist/kettlebook.cjs` understands what was asked and needs little for it; `dist/program.js` does the work, `dist/program.cache` is
 * the same as the engine keeps it in memory (only good for the Node that made it; another Node does without), and
 * `dist/program.cjs` loads the two, as `dist/engine.cjs` sets the engine to work; `dist/mate.cjs` is what a second thread begins
 * with. Nothing else need stand beside them but
 * the folders of data (`shared`, `templates`, `cars`).
 */
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));

/** Build the command. Gives the path of the file to load. Rejects if the sources do not hold together. */
export async function build({ folder = join(dirname(here), 'dist') } = {}) {
  const cli = join(dirname(here), 'src', 'cli');
  await buildProgram({ entry: join(cli, 'work.ts'), folder });
  copyFileSync(join(here, 'mate.cjs'), join(folder, 'mate.cjs'));
  const command = join(folder, 'kettlebook.cjs');
  await bundleOnly(join(cli, 'main.ts'), command, [programApart]);
  return command;
}

/**
 * Build a program from `entry` into `folder`; one that can say what it reads of the folder `shared` has that kept in
 * `shared.json`, each text with its data, so that a text that has not changed is not read again; one that can rehearse a run does so
 * before what is compiled is kept. Gives the path of the file to load.
 */
export async function buildProgram({ entry, folder }) {
  mkdirSync(folder, { recursive: true });
  const loader = join(folder, 'program.cjs');
  for (const old of ['program.cache', 'shared.json']) rmSync(join(folder, old), { force: true });
  await bundleOnly(entry, join(folder, 'program.js'));
  wrap(join(folder, 'program.js'));
  copyFileSync(join(here, 'load.cjs'), loader);
  copyFileSync(join(here, 'engine.cjs'), join(folder, 'engine.cjs'));
  // loaded and rehearsed once, so that what every run needs is already compiled in what is kept
  const { keep, rehearse, textsToKeep } = createRequire(import.meta.url)(loader);
  if (textsToKeep) writeFileSync(join(folder, 'shared.json'), await textsToKeep(dirname(here)));
  if (rehearse) await rehearse(dirname(here));
  writeFileSync(join(folder, 'program.cache'), keep());
  return loader;
}

/**
 * The program as the loader hands it to the engine: the body of a function, every letter beyond ASCII written as an escape, so
 * that the file is read letter by byte and put together with nothing. What is left of such letters stands in patterns, where an
 * escape means the letter; in a raw template it would not, so none may stand there.
 */
function wrap(program) {
  const text = readFileSync(program, 'utf8');
  if (/\braw`[^`]*[\u0080-\uffff]/.test(text))
    throw new Error('write letters of raw templates as \\u escapes');
  const ascii = text.replace(
    /[\u0080-\uffff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  writeFileSync(program, `(function (exports, require, module, __filename, __dirname) {${ascii}\n})`);
}

/** Bundle `entry` and everything it uses into the file `outfile`; with further plugins of the bundler, if they are given. */
export async function bundleOnly(entry, outfile, further = []) {
  await bundle({
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    minifySyntax: true,
    // blanks and comments go, names stay: places in a profile can still be told
    minifyWhitespace: true,
    lineLimit: 120,
    legalComments: 'external',
    logLevel: 'warning',
    // pdfkit asks where it stands, for files of its own that we do not use
    banner: { js: "const programUrl = require('node:url').pathToFileURL(__filename).href;" },
    define: { 'import.meta.url': 'programUrl' },
    plugins: [withoutBrotli, withoutCiphers, tablesLater, ...further],
    // what is loaded later is asked for in the one way that any loader of ours understands
    supported: { 'dynamic-import': false },
  });
}

/**
 * Brotli is only used to read WOFF2 fonts, which cannot be embedded: 1.4 MB for nothing. Whoever gives such a font
 * is told so.
 */
const withoutBrotli = {
  name: 'without-brotli',
  setup(build) {
    build.onResolve({ filter: /^brotli\/decompress\.js$/ }, () => ({
      path: 'brotli',
      namespace: 'left-out',
    }));
    build.onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents:
        "module.exports = () => { throw new Error('WOFF2 fonts cannot be used; give WOFF or TrueType'); };",
    }));
  },
};

/** What the PDF library needs to lock files: setting it up is work for every run, and our files are open to everybody. */
const withoutCiphers = {
  name: 'without-ciphers',
  setup(build) {
    build.onResolve({ filter: /^@noble\/ciphers\/aes$/ }, () => ({ path: 'aes', namespace: 'no-cipher' }));
    build.onLoad({ filter: /.*/, namespace: 'no-cipher' }, () => ({
      contents:
        "const none = () => { throw new Error('a PDF is not locked'); }; export { none as cbc, none as ecb };",
    }));
  },
};

/** Tables of letters are unpacked when a letter is looked up, not when the program is loaded: plain Latin words need none. */
const tablesLater = {
  name: 'tables-later',
  setup(build) {
    build.onLoad({ filter: /[\\/]unicode-trie[\\/]index\.js$/ }, ({ path }) => ({
      contents: `${readFileSync(path, 'utf8')}
const Table = module.exports;
module.exports = class {
  constructor(packed) { this.packed = packed; }
  get(codePoint) { return (this.table ??= new Table(this.packed)).get(codePoint); }
};`,
    }));
  },
};

/** The command asks for the program when there is work to do. */
const programApart = {
  name: 'program-apart',
  setup(build) {
    build.onResolve({ filter: /^\.\/work$/ }, () => ({ path: './program.cjs', external: true }));
  },
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const started = performance.now();
  try {
    const loader = await build();
    const size = readFileSync(join(dirname(loader), 'program.js')).length;
    const seconds = ((performance.now() - started) / 1000).toFixed(2);
    console.log(`${loader}: ${(size / 1e6).toFixed(1)} MB in ${seconds} s`);
  } catch {
    // esbuild has said what is wrong, and where
    process.exitCode = 1;
  }
}
