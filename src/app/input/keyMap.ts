import type { AnswerId, RemedyId, RequestId } from '../../core/commands/command.ts';
import type { Side } from '../../core/base/side.ts';

/** Views that can be asked for: the work on the field, or all within reach. */
export type Framing = 'field' | 'reach';

export type Direction = 'up' | 'down' | 'left' | 'right';

/** What a key means; positions of keys (codes), so that the clusters keep their shape on every keyboard layout. */
export type KeyMeaning =
  | { readonly kind: 'move'; readonly side: Side; readonly direction: Direction }
  | { readonly kind: 'turn'; readonly side: Side; readonly anticlockwise: 1 | -1; readonly followsMouse: boolean }
  | { readonly kind: 'grip'; readonly side: Side; readonly followsMouse: boolean }
  | { readonly kind: 'use'; readonly side: Side; readonly followsMouse: boolean }
  | { readonly kind: 'gripActive' }
  | { readonly kind: 'otherHand' }
  | { readonly kind: 'notice' }
  | { readonly kind: 'remedy'; readonly remedy: RemedyId; readonly digit: number }
  | { readonly kind: 'ask'; readonly request: RequestId }
  | { readonly kind: 'answer'; readonly how: AnswerId }
  | { readonly kind: 'say' }
  | { readonly kind: 'pause' }
  | { readonly kind: 'help' }
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'frame'; readonly framing: Framing };

/** Remedies in the order of their keys 1 to 6. */
export const REMEDY_KEYS: readonly RemedyId[] = ['coverDrape', 'changeGlove', 'changeGownAndGloves', 'newSheath', 'replaceItem', 'prepAndDrape'];
/** A request to the assistant with its key: what is on the key, and its position. */
export interface RequestKey {
  readonly request: RequestId;
  readonly cap: string;
  readonly code: string;
  /** What must be in a run so that it can be asked for: a probe to be sheathed, packets that are still closed, a bed that goes up and down, a gown to be put on. */
  readonly needs?: 'sheath' | 'packets' | 'bed' | 'gown';
}

/** Requests to the assistant. */
export const REQUEST_KEYS: readonly RequestKey[] = [
  { request: 'takeCord', cap: '7', code: 'Digit7' },
  { request: 'giveSlack', cap: 'G', code: 'KeyG' },
  { request: 'letGo', cap: 'V', code: 'KeyV' },
  { request: 'stop', cap: 'X', code: 'KeyX' },
  { request: 'wipeFace', cap: '8', code: 'Digit8' },
  { request: 'takeAway', cap: 'T', code: 'KeyT' },
  { request: 'bringProbe', cap: 'C', code: 'KeyC', needs: 'sheath' },
  { request: 'lower', cap: 'Z', code: 'KeyZ', needs: 'sheath' },
  { request: 'pullTail', cap: ',', code: 'Comma', needs: 'sheath' },
  { request: 'openPacket', cap: '.', code: 'Period', needs: 'packets' },
  { request: 'offerPacket', cap: ';', code: 'Semicolon', needs: 'packets' },
  { request: 'bedUp', cap: 'PgUp', code: 'PageUp', needs: 'bed' },
  { request: 'bedDown', cap: 'PgDn', code: 'PageDown', needs: 'bed' },
  { request: 'tieBack', cap: '[', code: 'BracketLeft', needs: 'gown' },
  { request: 'takeCard', cap: ']', code: 'BracketRight', needs: 'gown' },
];
/** Answers to the assistant. */
export const ANSWER_KEYS: readonly { readonly how: AnswerId; readonly cap: string; readonly code: string }[] = [
  { how: 'stop', cap: 'N', code: 'KeyN' },
  { how: 'fine', cap: 'M', code: 'KeyM' },
];

const move = (side: Side, direction: Direction): KeyMeaning => ({ kind: 'move', side, direction });
/** Turns as they are seen on the screen. */
const turn = (side: Side, anticlockwise: 1 | -1, followsMouse: boolean): KeyMeaning => ({ kind: 'turn', side, anticlockwise, followsMouse });

/**
 * The operator's right hand is on the left of the screen and has the left cluster of keys, the left hand the right one. The
 * clusters mirror each other: move W A S D and I J K L, wrist Q E and U O, grip R and Y, use F and H.
 */
const KEYS: Readonly<Record<string, KeyMeaning>> = {
  KeyW: move('right', 'up'),
  KeyA: move('right', 'left'),
  KeyS: move('right', 'down'),
  KeyD: move('right', 'right'),
  KeyQ: turn('right', 1, true),
  KeyE: turn('right', -1, true),
  KeyR: { kind: 'grip', side: 'right', followsMouse: true },
  KeyF: { kind: 'use', side: 'right', followsMouse: true },
  KeyI: move('left', 'up'),
  KeyJ: move('left', 'left'),
  KeyK: move('left', 'down'),
  KeyL: move('left', 'right'),
  KeyU: turn('left', 1, false),
  KeyO: turn('left', -1, false),
  KeyY: { kind: 'grip', side: 'left', followsMouse: false },
  KeyH: { kind: 'use', side: 'left', followsMouse: false },
  Space: { kind: 'gripActive' },
  Tab: { kind: 'otherHand' },
  KeyB: { kind: 'notice' },
  KeyP: { kind: 'pause' },
  F1: { kind: 'help' },
  Equal: { kind: 'zoom', factor: 1.2 },
  NumpadAdd: { kind: 'zoom', factor: 1.2 },
  Minus: { kind: 'zoom', factor: 1 / 1.2 },
  NumpadSubtract: { kind: 'zoom', factor: 1 / 1.2 },
  Digit9: { kind: 'frame', framing: 'reach' },
  Digit0: { kind: 'frame', framing: 'field' },
  ...Object.fromEntries(REMEDY_KEYS.map((remedy, k) => [`Digit${k + 1}`, { kind: 'remedy', remedy, digit: k + 1 } as const])),
  Enter: { kind: 'say' },
  ...Object.fromEntries(REQUEST_KEYS.map(({ request, code }) => [code, { kind: 'ask', request } as const])),
  ...Object.fromEntries(ANSWER_KEYS.map(({ how, code }) => [code, { kind: 'answer', how } as const])),
};

/** Meaning of a key, or null for one that means nothing here. `key` is asked only for "?", which sits elsewhere on some layouts. */
export function keyMeaning(code: string, key: string): KeyMeaning | null {
  if (key === '?') return { kind: 'help' };
  return KEYS[code] ?? null;
}
