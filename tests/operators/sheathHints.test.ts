import { describe, expect, it } from 'vitest';
import { Loading } from '../support/loading.ts';
import { PromptedOperator } from '../support/promptedOperator.ts';
import { freshRun, runOperator, type ShippedRoom } from '../support/runOperator.ts';

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

describe('What is to be asked of the assistant', () => {
  const said = ({ run }: PromptedOperator): string[] => run.cues.filter(({ kind }) => kind === 'assistantSpeaks').map(({ words }) => words);

  it('is to go on, who was told to stop on the way with the probe, and obeyed without a word', () => {
    const op = new PromptedOperator(freshRun('sheath-short'));
    const l = new Loading(op).fetch().open().aside().gel().ask('bringProbe');
    for (const [doing, request] of [['reaching', 'bringProbe'], ['bringingProbe', 'bringProbe'], ['lowering', 'lower']] as const) {
      if (doing === 'lowering') l.untilItHangs().under().ask('lower', 2);
      for (let s = 0; s < 8 && op.run.room.assistant.look().doing !== doing; s += 0.05) op.wait(0.05);
      op.wait(0.3).run.step([{ type: 'ask', request: 'stop' }]);
      op.wait(0.8);
      expect(op.run.room.assistant.look().doing).toBe('stopped');
      expect(op.dueNow).toBe(request);
      l.ask(request, 0.8);
      expect(op.run.room.assistant.look().doing).toBe(doing);
    }
    op.wait(4.5);
    l.takeProbe().letGo();
    expect(said(op)).toEqual([]);
    expect(op.run.breaks).toEqual([]);
    expect(l.done('probeTaken')).toBe(true);
  });

  it('is the packet of a band that is still in it, once the cord is let go', () => {
    const op = new PromptedOperator(freshRun('sheath-hurried'));
    const l = new Loading(op).fetch().open().aside().gel().bring().under().ask('lower', 4.3).takeProbe().drawUp();
    op.wait(3);
    l.tail();
    expect(op.dueNow).toBeNull();
    l.band('bandOne', 0.03);
    for (let s = 0; s < 3 && op.run.progress.current !== 'banded'; s += 0.1) op.wait(0.1);
    expect(op.dueNow).toBe('letGo');
    l.ask('letGo', 6);
    expect(op.dueNow).toBe('openPacket');
    l.ask('openPacket', 12);
    expect(op.dueNow).toBeNull();
    expect(op.run.progress.hint).toBe('A second band along the handle or cord.');
    expect(op.run.breaks).toEqual([]);
  });
});
