import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { demoFolder } from './build/demo-folder.ts';
import { practiceJob } from './build/practice-job.ts';

/** One page, its parts loaded when they are called for; all of it kept by the service worker, so that it opens without network. */
export default defineConfig({
  root: import.meta.dirname,
  // papers and models are large, and loaded only when they are called for
  build: {
    chunkSizeWarningLimit: 4096,
    outDir: 'dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    target: 'es2022',
    modulePreload: { polyfill: false },
    // what every page needs is one file, so that a phone on a bad line asks for it once
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: 'start', tags: ['$initial'] }],
        },
      },
    },
  },
  // the same reader, with the browser's own bytes in place of Node's
  resolve: { alias: { 'csv-parse/sync': 'csv-parse/browser/esm/sync', 'csv-stringify/sync': 'csv-stringify/browser/esm/sync' } },
  worker: { format: 'es' },
  plugins: [
    react(),
    practiceJob(),
    demoFolder(),
    VitePWA({
      // an update waits until a person says so: it never reloads a page in the middle of a joint
      registerType: 'prompt',
      injectRegister: null,
      manifest: {
        id: '/',
        name: 'Clampwright',
        short_name: 'Clampwright',
        description: 'Controlled bolt tightening, bolt by bolt, with or without network.',
        display: 'standalone',
        start_url: '/',
        background_color: '#fbfaf6',
        theme_color: '#14191d',
        icons: [
          { src: '/mark.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: '/mark-192.png', sizes: '192x192', type: 'image/png' },
          { src: '/mark-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,woff2,ttf,wasm,svg,png,json}'],
        globIgnores: ['mark-512.png'],
        navigateFallback: '/index.html',
        navigateFallbackDenylist: [/^\/api\//, /^\/trusted/],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
      },
    }),
  ],
});
