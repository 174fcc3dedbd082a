/** Loads the program that stands beside this file, with what the engine has kept of it if that fits this Node. */
'use strict';
const { existsSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const vm = require('node:vm');

require('./engine.cjs');

const path = join(__dirname, 'program.js');
const kept = join(__dirname, 'program.cache');
// the build writes nothing in it beyond ASCII
const script = new vm.Script(readFileSync(path, 'latin1'), {
  filename: path,
  importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  ...(existsSync(kept) ? { cachedData: readFileSync(kept) } : {}),
});
const program = { exports: {} };
script.runInThisContext()(program.exports, require, program, path, __dirname);

module.exports = program.exports;
/** What the engine knows of the program now, for the build to keep. */
Object.defineProperty(module.exports, 'keep', { value: () => script.createCachedData() });
