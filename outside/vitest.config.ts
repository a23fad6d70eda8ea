import { defineConfig } from 'vitest/config';

// Papers held by readers that are none of ours: poppler, qpdf, LibreOffice.
export default defineConfig({
  test: { include: ['outside/**/*.outside.ts'], testTimeout: 180_000, hookTimeout: 180_000, fileParallelism: false },
});
