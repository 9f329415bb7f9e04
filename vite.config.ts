// Builds the page: one origin, offline from a cold start, updated only by consent.

import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { limitFirstLoad } from './build/first-load.ts';
import { hearingModel } from './build/hearing-model.ts';
import { hearingWords } from './build/hearing-words.ts';

/** While developing, Vite puts styles into the page itself, which the page's own policy forbids; the build keeps it. */
const withoutPolicy: Plugin = {
  name: 'without-policy-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
};

/** The recogniser's package brings a Blob for old browsers along, which fails in a worker; the worker's own is taken. */
const BLOB = fileURLToPath(new URL('src/speech/engine/blob.js', import.meta.url));

/** The page of a responder, and the board of a command post. */
const INPUT = ['index.html', 'board.html'].map((file) => fileURLToPath(new URL(file, import.meta.url)));

export default defineConfig({
  base: './',
  resolve: { alias: { 'blob-polyfill': BLOB } },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    target: 'es2023',
    modulePreload: { polyfill: false },
    rolldownOptions: { input: INPUT },
  },
  preview: { host: 'localhost', port: 4173 },
  worker: { format: 'es' },
  plugins: [
    withoutPolicy,
    hearingModel(),
    hearingWords(),
    limitFirstLoad(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Fieldsay',
        short_name: 'Fieldsay',
        description: 'Talk through a head-to-toe examination; check what was heard; hand it over.',
        lang: 'en-GB',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#eceee6',
        theme_color: '#0b4a42',
        categories: ['medical', 'utilities'],
        icons: [
          { src: 'icons/fieldsay-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icons/fieldsay-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icons/fieldsay-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'icons/fieldsay.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      workbox: {
        // The reader of QR symbols is kept from the start: a record is received where there is no network.
        // What is listened for is one text of 3 megabytes, which is sent as 0.7.
        maximumFileSizeToCacheInBytes: 6_000_000,
        globPatterns: ['**/*.{js,css,html,svg,png,talk,webmanifest}', 'assets/zxing_reader*.wasm'],
        // The board belongs to the post and its server; no phone keeps it.
        globIgnores: ['board.html', 'assets/board-*'],
        navigateFallbackDenylist: [/\/board/],
        cleanupOutdatedCaches: true,
        // The page takes control of its first visit too, so that a cold start without a network works at once.
        clientsClaim: true,
      },
    }),
  ],
});
