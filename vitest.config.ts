import { defineConfig } from 'vitest/config';

// svg-builder's ES modules name folders, which Node does not read by itself
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    server: { deps: { inline: ['svg-builder'] } },
    benchmark: { include: ['bench/**/*.bench.ts'] },
  },
});
