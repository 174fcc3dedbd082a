/** Loads the program that stands beside this file, with what the engine has kept of it if that fits this Node. */
'use strict';
const { existsSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const v8 = require('node:v8');
const vm = require('node:vm');
const { isMainThread } = require('node:worker_threads');

// A run of a second or two ends before most of what an optimizing compiler makes is of use, so only code that runs
// long is given to it: bytes of bytecode before a function is looked at, eight times what the engine has. Measured
// with the engine of Node 20, and set for no other. What is set holds for every thread.
if (isMainThread && process.versions.v8.startsWith('11.3.'))
  v8.setFlagsFromString('--interrupt-budget=1000000');
// Several threads that clear away what is short-lived get in each other's way more than they help: a twentieth of a run's processor
// time, and of its wall time too.
if (isMainThread) v8.setFlagsFromString('--no-parallel-scavenge');
// what has been compiled is not thrown away because it has not been used for a while: the build keeps it for all runs
if (isMainThread) v8.setFlagsFromString('--no-flush-bytecode');

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
