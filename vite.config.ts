import { defineConfig } from 'vite';
import { contentPolicyPlugin } from './scripts/build/contentPolicyPlugin.ts';
import { offlinePlugin } from './scripts/build/offlinePlugin.ts';

/** The page is built to plain files that work from any folder of any server, and offline after the first visit. */
export default defineConfig({
  root: 'src',
  base: './',
  publicDir: false,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  server: { fs: { allow: ['..'] } },
  worker: { format: 'es' },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    manifest: true,
    // Everything stays a file of its own, so that the content policy needs no data: or inline sources.
    assetsInlineLimit: 0,
  },
  plugins: [contentPolicyPlugin(), offlinePlugin()],
});
