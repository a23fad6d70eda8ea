import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['packages/*/src/**/*.test.ts', 'packages/*/src/**/*.test.tsx', 'test/**/*.test.ts', 'torture/**/*.test.ts'],
    exclude: ['**/node_modules/**', '**/dist/**'],
    // a machine that does other work besides is slow, and not wrong
    testTimeout: 90_000,
    hookTimeout: 90_000,
  },
});
