import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { settle, settledScene } from '../../../src/core/room/settle.ts';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';

/**
 * The scene that people work in: sheets over both rails, a cord laid in turns and clipped to the drape, and a probe on its end.
 * Once settled it must lie as it was laid: nothing stretched, nothing knotted, nothing moving.
 */
test.each(['quiet-room', 'restless-patient-head-down', 'high-rails-short-sheath'])('%s lies still and whole after settling', (name) => {
  const read = parseScenario(readFileSync(`scenarios/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.error.message);
  const scene = settledScene(read.value, settle(read.value));
  const { world } = scene;
  const before = { x: world.x.slice(), y: world.y.slice() };
  for (let k = 0; k < 240; k++) world.step();
  let farthest = 0;
  for (let i = 0; i < world.x.length; i++) farthest = Math.max(farthest, Math.hypot(world.x[i]! - before.x[i]!, world.y[i]! - before.y[i]!));
  expect(farthest).toBeLessThan(0.005);
  for (const [strand, link] of [[scene.cord, read.value.cord.linkM], [scene.drapes.left, read.value.drape.linkM], [scene.drapes.right, read.value.drape.linkM]] as const) {
    const start = world.strandStart(strand);
    for (let i = start; i < start + world.strandSize(strand) - 1; i++) expect(Math.hypot(world.x[i + 1]! - world.x[i]!, world.y[i + 1]! - world.y[i]!) / link).toBeLessThan(1.02);
  }
});
