/**
 * How the engine is to work for a run of a second or two. Set before anything else is loaded, so that it holds for every thread: what
 * the build keeps of the program is only taken where it is set as it was then.
 */
'use strict';
const v8 = require('node:v8');
const { isMainThread } = require('node:worker_threads');

if (isMainThread) {
  // Measured with the engine of Node 20, and set for no other.
  if (process.versions.v8.startsWith('11.3.')) {
    // A run ends before most of what an optimizing compiler makes is of use, so only code that runs long is given to it: bytes of
    // bytecode before a function is looked at, eight times what the engine has.
    v8.setFlagsFromString('--interrupt-budget=1000000');
    // Megabytes that a second thread may fill before all that it holds is gone through for what can be cleared away: most of it lives
    // until its papers are made, so that little would be found.
    v8.setFlagsFromString('--initial-old-space-size=256');
  }
  // Several threads that clear away what is short-lived get in each other's way more than they help: a twentieth of a run's processor
  // time, and of its wall time too.
  v8.setFlagsFromString('--no-parallel-scavenge');
  // what has been compiled is not thrown away because it has not been used for a while: the build keeps it for all runs
  v8.setFlagsFromString('--no-flush-bytecode');
}
