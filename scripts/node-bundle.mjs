// How everything that runs on Node is bundled: what ships, and what is measured.
export const NODE_BUNDLE = {
  bundle: true,
  external: ['better-sqlite3', 'web-ifc', '@node-rs/argon2', 'pg-native', 'pdfkit'],
  platform: 'node',
  format: 'esm',
  target: 'node20',
  jsx: 'automatic',
  // dependencies written as CommonJS ask for these names
  banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
  define: { 'process.env.NODE_ENV': '"production"' },
  logLevel: 'warning',
};
