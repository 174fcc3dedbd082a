/** Installs what the project needs, if it is not there or is older than the lock file. */
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Install into `root` when needed; says so, because it takes a while. Throws an Error in plain words if npm fails
 * or if Node is too old.
 */
export function installIfNeeded(root) {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    throw new Error(`Kettlebook needs Node 20.19 or newer; this is ${process.versions.node}.`);
  }
  const lock = join(root, 'package-lock.json');
  const done = join(root, 'node_modules', '.package-lock.json');
  if (existsSync(done) && statSync(done).mtimeMs >= statSync(lock).mtimeMs) return;
  console.log('Installing what Kettlebook needs…');
  const npm = spawnSync('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (npm.status !== 0) throw new Error('npm could not install the packages; its own words stand above.');
}
