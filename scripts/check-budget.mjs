#!/usr/bin/env node
/**
 * Fails when the built page loads more script up to its first frame than a slow ward network should wait for. Counts the entry of
 * the page and all that it imports statically, gzipped, from the build's manifest. Usage: node scripts/check-budget.mjs [dist]
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';

const BUDGET_KB = 200;
const dist = path.resolve(process.argv[2] ?? 'dist');
const manifest = JSON.parse(readFileSync(path.join(dist, '.vite/manifest.json'), 'utf8'));

/** Keys of a chunk and of all that it imports statically. */
function withImports(key, seen = new Set()) {
  if (seen.has(key)) return seen;
  seen.add(key);
  for (const imported of manifest[key].imports ?? []) withImports(imported, seen);
  return seen;
}

const entries = Object.keys(manifest).filter((key) => manifest[key].isEntry);
const files = new Set(entries.flatMap((key) => [...withImports(key)]).map((key) => manifest[key].file));
const sizes = [...files].filter((file) => file.endsWith('.js')).map((file) => ({ file, kb: gzipSync(readFileSync(path.join(dist, file))).length / 1000 }));
const totalKb = sizes.reduce((sum, { kb }) => sum + kb, 0);
console.log(`Script up to the first frame: ${totalKb.toFixed(1)} kB gzipped of ${BUDGET_KB} kB`);
if (totalKb > BUDGET_KB) {
  for (const { file, kb } of sizes.sort((a, b) => b.kb - a.kb)) console.error(`  ${kb.toFixed(1).padStart(7)} kB  ${file}`);
  console.error('Load what the first frame does not need with import() instead.');
  process.exitCode = 1;
}
