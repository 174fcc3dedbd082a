/** Loads the program that stands beside this file, with what the engine has kept of it if that fits this Node. */
'use strict';
const { existsSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const vm = require('node:vm');

const path = join(__dirname, 'program.js');
const kept = join(__dirname, 'program.cache');
const script = new vm.Script(
  `(function (exports, require, module, __filename, __dirname) {${readFileSync(path, 'utf8')}\n})`,
  {
    filename: path,
    importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
    ...(existsSync(kept) ? { cachedData: readFileSync(kept) } : {}),
  },
);
const program = { exports: {} };
script.runInThisContext()(program.exports, require, program, path, __dirname);

module.exports = program.exports;
/** What the engine knows of the program now, for the build to keep. */
Object.defineProperty(module.exports, 'keep', { value: () => script.createCachedData() });
