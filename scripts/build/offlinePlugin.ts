import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

export interface BuiltFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** Files that a page needs at run time: not the build's own manifest, maps or the worker itself. */
const isServed = (name: string): boolean => !name.startsWith('.vite/') && !name.endsWith('.map') && name !== 'sw.js';

/** Source of the service worker for these files: the template with their names and a version drawn from their content. */
export function serviceWorkerSource(template: string, files: readonly BuiltFile[]): string {
  const served = files.filter((file) => isServed(file.name)).sort((a, b) => (a.name < b.name ? -1 : 1));
  const hash = createHash('sha256');
  for (const file of served) hash.update(file.name).update('\0').update(file.content).update('\0');
  return template
    .replace('__VERSION__', JSON.stringify(hash.digest('hex').slice(0, 16)))
    .replace('__FILES__', JSON.stringify(served.map((file) => file.name)));
}

/** Emits `sw.js`, which keeps every file of the build for use without a network. */
export function offlinePlugin(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const template = readFileSync(new URL('./serviceWorker.js', import.meta.url), 'utf8');
        const files = Object.values(bundle).map((file) => ({ name: file.fileName, content: file.type === 'chunk' ? file.code : file.source }));
        this.emitFile({ type: 'asset', fileName: 'sw.js', source: serviceWorkerSource(template, files) });
      },
    },
  };
}
