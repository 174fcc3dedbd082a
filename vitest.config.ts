import { defineConfig } from 'vitest/config';

// svg-builder's ES modules name folders, which Node does not read by itself
const svgBuilder = new URL('node_modules/svg-builder/dist/cjs/index.cjs', import.meta.url).pathname;

export default defineConfig({
  resolve: { alias: { 'svg-builder': svgBuilder } },
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/helpers/seed.ts'],
    testTimeout: 120_000,
    // every core; and files that follow each other in a worker share what they have loaded, since no test changes it
    maxWorkers: '100%',
    isolate: false,
    benchmark: { include: ['bench/**/*.bench.ts'] },
  },
});
