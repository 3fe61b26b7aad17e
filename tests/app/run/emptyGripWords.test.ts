import { describe, expect, it } from 'vitest';
import { emptyGripWords } from '../../../src/app/run/emptyGripWords.ts';
import type { ItemPicture, RoomPicture } from '../../../src/core/room/picture.ts';

const band = (gone: boolean): ItemPicture => ({ id: 'bandOne', kind: 'band', x: 0, y: 0, c: 1, s: 0, surfaces: [], heldBy: null, gone, used: 0, dress: null });
const picture = (left: string | null, items: ItemPicture[] = []) => ({ hands: { right: { holds: null }, left: { holds: left } }, items, gown: null }) as unknown as RoomPicture;

describe('A hand that holds nothing any more', () => {
  it('got nothing', () => expect(emptyGripWords('right', null, picture(null))).toBe('Nothing within reach of the right hand.'));
  it('lost what it held', () => expect(emptyGripWords('right', 'gel', picture(null))).toBe('The right hand lost its hold.'));
  it('lost a band that lies somewhere', () => expect(emptyGripWords('right', 'bandOne', picture(null, [band(false)]))).toBe('The right hand lost its hold.'));
  it('has put a band on the film', () => expect(emptyGripWords('right', 'bandOne', picture(null, [band(true)]))).toBe('The band is on.'));
  it('has given it to the other hand', () => expect(emptyGripWords('right', 'probe', picture('probe'))).toBeNull());

  const sleeve = (inM: number) => ({ ...picture(null), gown: { arms: { right: { inM } } } }) as unknown as RoomPicture;
  it('has slipped into its sleeve', () => expect(emptyGripWords('right', 'gown', sleeve(0.1))).toBeNull());
  it('lost the gown before', () => expect(emptyGripWords('right', 'gown', sleeve(0))).toBe('The right hand lost its hold.'));
  const glove = (gone: boolean): ItemPicture => ({ ...band(gone), id: 'gloveRight', kind: 'glove' });
  it('has its glove over the end of the sleeve', () => expect(emptyGripWords('right', 'gloveRight', picture(null, [glove(true)]))).toBeNull());
  it('lost its glove', () => expect(emptyGripWords('right', 'gloveRight', picture(null, [glove(false)]))).toBe('The right hand lost its hold.'));
});
