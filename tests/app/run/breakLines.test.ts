import { describe, expect, it } from 'vitest';
import { chainLines } from '../../../src/app/run/breakLines.ts';
import { breakWith } from '../support/breakWith.ts';

const words = (id: string): string => ({ drape: 'drape, left side', cuff: 'left cuff', sheath: 'probe sheath' })[id] ?? id;

describe('lines of a break', () => {
  it('tell the root, then what it went on to and how long ago', () => {
    const broken = breakWith({
      surface: 'drape',
      against: 'cord',
      spread: [
        { surface: 'drape', depth: 0, step: 0, touch: 1, from: null },
        { surface: 'cuff', depth: 1, step: 240, touch: 2, from: 'drape' },
      ],
    });
    expect(chainLines(broken, 'Drape on the bare cord.', words, 720)).toEqual({
      lines: [
        { number: 1, text: 'Drape on the bare cord.' },
        { number: 2, text: 'Left cuff touched drape, left side 4 s ago.' },
      ],
      more: 0,
    });
  });

  it('count what does not fit', () => {
    const spread = Array.from({ length: 7 }, (_, k) => ({ surface: `s${k}`, depth: k, step: k, touch: k, from: k === 0 ? null : `s${k - 1}` }));
    expect(chainLines(breakWith({ spread }), 'Told.', words, 10).more).toBe(3);
  });
});
