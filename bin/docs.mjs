/** `npm run docs`: writes the pages and schemas that are made from the program itself. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = mkdtempSync(join(tmpdir(), 'kettlebook-docs-'));
try {
  const outfile = join(folder, 'generatedFiles.mjs');
  await build({
    entryPoints: [join(root, 'src', 'cli', 'generatedFiles.ts')],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
    // the YAML package asks for modules in the older way
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  const { generatedFiles } = await import(pathToFileURL(outfile).href);
  const read = (path) => readFileSync(join(root, path), 'utf8');
  for (const { path, text } of generatedFiles) {
    writeFileSync(join(root, path), text(read));
    console.log(path);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
