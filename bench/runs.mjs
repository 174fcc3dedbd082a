/** Timing whole processes: wall time and peak memory, several runs, the median. */
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** One run of Node with these arguments, and variables of its environment set. Throws with its words if it fails. */
function once(args, cwd, set = {}) {
  const started = process.hrtime.bigint();
  const child = spawnSync(process.execPath, ['--require', join(here, 'peak.cjs'), ...args], {
    cwd,
    env: { ...process.env, ...set },
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe', 'pipe'],
    maxBuffer: 64 * 1024 * 1024,
  });
  const milliseconds = Number(process.hrtime.bigint() - started) / 1e6;
  if (child.status !== 0) throw new Error(`${args.join(' ')} ended with ${child.status}\n${child.stderr}`);
  const { maxRSS, processorMs } = JSON.parse(child.output[3]);
  return { milliseconds, processorMs, megabytes: maxRSS / 1024 };
}

/** Median and spread of several runs after one warm-up. */
export function timed(args, cwd, runs = 7) {
  once(args, cwd);
  const measured = Array.from({ length: runs }, () => once(args, cwd));
  const times = measured.map((run) => run.milliseconds);
  return {
    medianMs: median(times),
    leastMs: Math.min(...times),
    mostMs: Math.max(...times),
    megabytes: median(measured.map((run) => run.megabytes)),
  };
}

/**
 * Medians of each of several commands run in turn, so that all meet the same machine: wall time, which is what somebody waits,
 * and processor time, user and system of all threads together, whose ratios hold also on a machine that has other work. A command
 * is `{ args, set }`, `set` the variables of its environment.
 */
export function beside(commands, cwd, runs) {
  const measured = commands.map(() => []);
  for (let run = 0; run <= runs; run += 1) {
    for (const [index, { args, set }] of commands.entries()) {
      const found = once(args, cwd, set);
      if (run > 0) measured[index].push(found);
    }
  }
  const middle = (runsOfOne, key) => median(runsOfOne.map((run) => run[key]));
  return measured.map((runsOfOne) => ({
    wallMs: middle(runsOfOne, 'milliseconds'),
    processorMs: middle(runsOfOne, 'processorMs'),
    megabytes: middle(runsOfOne, 'megabytes'),
  }));
}

/** One line of the report. */
export function report(what, { medianMs, leastMs, mostMs, megabytes }) {
  console.log(
    `${what.padEnd(52)} ${medianMs.toFixed(0).padStart(6)} ms  (${leastMs.toFixed(0)}–${mostMs.toFixed(0)})  ${megabytes.toFixed(0).padStart(5)} MB`,
  );
}
