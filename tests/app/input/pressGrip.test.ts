import { describe, expect, it } from 'vitest';
import { PressGrip } from '../../../src/app/input/PressGrip.ts';

describe('a press of the button', () => {
  it('closes the hand at once; a click leaves it closed', () => {
    const press = new PressGrip();
    expect(press.down(false, 0)).toBe('close');
    expect(press.up(120)).toBeNull();
  });

  it('opens a closed hand by a click, when the button comes up', () => {
    const press = new PressGrip();
    expect(press.down(true, 0)).toBeNull();
    expect(press.up(120)).toBe('open');
  });

  it('holds while dragging and lets go at the end', () => {
    const press = new PressGrip();
    press.down(false, 0);
    press.moved(40);
    expect(press.up(150)).toBe('open');
  });

  it('holds during a long press without movement, too', () => {
    const press = new PressGrip();
    press.down(false, 0);
    expect(press.up(900)).toBe('open');
  });

  it('never lets go when the hands were changed in between', () => {
    const press = new PressGrip();
    press.down(false, 0);
    press.forget();
    expect(press.up(900)).toBeNull();
  });
});
