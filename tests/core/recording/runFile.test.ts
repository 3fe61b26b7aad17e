import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { readRunFile } from '../../../src/core/recording/readRunFile.ts';
import type { RunFile } from '../../../src/core/recording/recording.ts';
import { writeRunFile } from '../../../src/core/recording/writeRunFile.ts';
import { finishedRun, playFor } from './support/sampleRun.ts';

const reread = (run: RunFile): RunFile => {
  const read = readRunFile(writeRunFile(run));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

describe('A run file', () => {
  it('gives back exactly what was played', () => {
    const run = finishedRun(1000);
    expect(run.hashes).toHaveLength(9);
    expect(reread(run)).toEqual(run);
  });

  it('keeps every kind of command, in order within a step', () => {
    const run = finishedRun(500);
    const commands: RunFile['commands'] = [
      { step: 0, commands: [{ type: 'hand.grip', hand: 'left' }, { type: 'hand.move', hand: 'left', xMm: -3000, yMm: 3000 }, { type: 'hand.release', hand: 'left' }, { type: 'hand.move', hand: 'left', xMm: 3000, yMm: 0 }] },
      { step: 7, commands: [{ type: 'hand.turn', hand: 'right', angleDeg: -120 }, { type: 'hand.use', hand: 'right', on: true }, { type: 'hand.turn', hand: 'right', angleDeg: 120 }] },
      { step: 120, commands: [{ type: 'remedy.start', remedy: 'changeGlove', thing: 'glove.left#1' }, { type: 'remedy.cancel' }, { type: 'remedy.start', remedy: 'newSheath' }] },
      { step: 499, commands: [{ type: 'ask', request: 'wipeFace' }, { type: 'pace', slowdown: 4 }, { type: 'notice' }, { type: 'run.end' }] },
    ];
    expect(reread({ ...run, commands }).commands).toEqual(commands);
  });

  it('keeps a run that was broken off, without a result', () => {
    const run = playFor(333).recorder.soFar();
    expect(run.result).toBeNull();
    expect(reread(run)).toEqual(run);
  });

  it('keeps an empty run', () => {
    const run = playFor(0).recorder.soFar();
    expect(reread(run)).toEqual(run);
  });

  it('says at its very beginning what it is', () => {
    expect(writeRunFile(finishedRun())).toMatch(/^\{"format":"sterile-field-run","version":2,/);
  });

  it('holds fifteen minutes of busy work in 300 kB gzipped', () => {
    const text = writeRunFile(finishedRun(15 * 60 * 120));
    expect(gzipSync(text).length).toBeLessThanOrEqual(300_000);
    expect(readRunFile(text).ok).toBe(true);
  });
});
