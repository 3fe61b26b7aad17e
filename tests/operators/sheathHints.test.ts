import { describe, expect, it } from 'vitest';
import { Loading } from '../support/loading.ts';
import { runOperator, type ShippedRoom } from '../support/runOperator.ts';

/** Hints one after the other, each once as long as it stays. */
function told(room: ShippedRoom, play: (loading: Loading) => unknown): string[] {
  const hints: string[] = [];
  runOperator((op) => {
    op.watchLeast(() => {
      const { hint } = op.run.progress;
      if (hint !== hints.at(-1)) hints.push(hint);
      return 0;
    });
    play(new Loading(op));
  }, room);
  return hints;
}

describe('What the hint says while the probe is loaded', () => {
  it('is each line once, from the folded sheath to the probe in the hand', () => {
    expect(told('sheath-short', (l) => l.fetch().open().aside().gel().op.wait(5) && l.bring().under().lower().takeProbe().letGo())).toEqual([
      'Take the sheath, and open its mouth with the other hand.',
      'Open its mouth with the other hand.',
      'Sterile gel into the closed end: hold the packet over the mouth and squeeze.',
      'Enough gel is in. Wait until it has run down into the closed end.',
      'Ask for the probe.',
      'Hold the mouth open and keep still while the probe comes.',
      'Have it lowered into the mouth. Keep hands and film clear of it.',
      'Take hold of it through the film.',
      'Have the assistant let go.',
      'You have it. Hold it like this for a moment.',
      'Draw the film along the cord.',
    ]);
  });
});
