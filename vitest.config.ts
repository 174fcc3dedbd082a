import { defineConfig } from 'vitest/config';

// svg-builder's ES modules name folders, which Node does not read by itself
const svgBuilder = new URL('node_modules/svg-builder/dist/cjs/index.cjs', import.meta.url).pathname;

export default defineConfig({
  resolve: { alias: { 'svg-builder': svgBuilder } },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    benchmark: { include: ['bench/**/*.bench.ts'] },
  },
});
