import { describe, expect, it } from 'vitest';
import { InputMode } from '../../../src/app/input/InputMode.ts';

describe('modes of the controls', () => {
  it('begin with the right hand, playing', () => {
    const mode = new InputMode();
    expect([mode.mode, mode.context.active]).toEqual(['playing', 'right']);
  });

  it('change hands by Tab and by choice', () => {
    const mode = new InputMode();
    mode.send({ type: 'hand.swap' });
    expect(mode.context.active).toBe('left');
    mode.send({ type: 'hand.choose', side: 'left' });
    expect(mode.context.active).toBe('left');
  });

  it('do not change hands during a pause', () => {
    const mode = new InputMode();
    mode.send({ type: 'pause' });
    mode.send({ type: 'hand.swap' });
    expect([mode.mode, mode.context.active]).toEqual(['paused', 'right']);
  });

  it('come back from help to the pause it was opened in', () => {
    const mode = new InputMode();
    mode.send({ type: 'pause' });
    mode.send({ type: 'dialog.open' });
    expect(mode.mode).toBe('dialog');
    mode.send({ type: 'dialog.close' });
    expect(mode.mode).toBe('paused');
    mode.send({ type: 'resume' });
    mode.send({ type: 'dialog.open' });
    mode.send({ type: 'dialog.close' });
    expect(mode.mode).toBe('playing');
  });

  it('give a finger the nearest free hand, and a third finger none', () => {
    const mode = new InputMode();
    mode.send({ type: 'finger.down', pointer: 1, nearest: 'right' });
    mode.send({ type: 'finger.down', pointer: 2, nearest: 'right' });
    mode.send({ type: 'finger.down', pointer: 3, nearest: 'left' });
    expect(mode.context.fingers).toEqual({ 1: 'right', 2: 'left' });
    mode.send({ type: 'finger.up', pointer: 1 });
    expect(mode.context.fingers).toEqual({ 2: 'left' });
    expect(mode.context.leader).toBe('touch');
  });

  it('lift all fingers when the run is paused', () => {
    const mode = new InputMode();
    mode.send({ type: 'finger.down', pointer: 1, nearest: 'right' });
    mode.send({ type: 'pause' });
    expect(mode.context.fingers).toEqual({});
  });

  it('tell listeners of changes until they leave', () => {
    const mode = new InputMode();
    let heard = 0;
    const leave = mode.subscribe(() => heard++);
    mode.send({ type: 'pause' });
    leave();
    mode.send({ type: 'resume' });
    expect(heard).toBe(1);
  });
});
