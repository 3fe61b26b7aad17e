import type { EventKind } from '../../../core/debrief/events.ts';
import type { Framing } from '../../input/keyMap.ts';
import { layerOfKey, type Layers } from '../room/LayerToggles.tsx';

/** What a key does in the debrief. */
export type DebriefOrder =
  | { readonly kind: 'play' }
  | { readonly kind: 'by'; readonly seconds: number }
  | { readonly kind: 'end'; readonly which: 'first' | 'last' }
  | { readonly kind: 'event'; readonly event: EventKind; readonly direction: 1 | -1 }
  | { readonly kind: 'speed'; readonly by: 1 | -1 }
  | { readonly kind: 'layer'; readonly layer: keyof Layers }
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'frame'; readonly framing: Framing }
  | { readonly kind: 'focus'; readonly on: 'follow' | 'whatIf' | 'timeline' }
  | { readonly kind: 'help' };

const EVENT_KEYS: Readonly<Record<string, EventKind>> = { KeyB: 'break', KeyT: 'touch', KeyC: 'command' };

const PLAIN: Readonly<Record<string, DebriefOrder>> = {
  Space: { kind: 'play' },
  KeyK: { kind: 'play' },
  Home: { kind: 'end', which: 'first' },
  End: { kind: 'end', which: 'last' },
  PageUp: { kind: 'by', seconds: 10 },
  PageDown: { kind: 'by', seconds: -10 },
  Comma: { kind: 'speed', by: -1 },
  Period: { kind: 'speed', by: 1 },
  Equal: { kind: 'zoom', factor: 1.2 },
  NumpadAdd: { kind: 'zoom', factor: 1.2 },
  Minus: { kind: 'zoom', factor: 1 / 1.2 },
  NumpadSubtract: { kind: 'zoom', factor: 1 / 1.2 },
  Digit9: { kind: 'frame', framing: 'reach' },
  Digit0: { kind: 'frame', framing: 'field' },
  KeyF: { kind: 'focus', on: 'follow' },
  KeyW: { kind: 'focus', on: 'whatIf' },
  KeyL: { kind: 'focus', on: 'timeline' },
  F1: { kind: 'help' },
};

/** Meaning of a key, or null. Letters go on to the next, with Shift back to the one before. */
export function debriefOrder({ code, key, shiftKey }: Pick<KeyboardEvent, 'code' | 'key' | 'shiftKey'>): DebriefOrder | null {
  if (key === '?') return { kind: 'help' };
  if (code === 'ArrowRight' || code === 'ArrowLeft') return { kind: 'by', seconds: (code === 'ArrowRight' ? 1 : -1) * (shiftKey ? 1 : 0.1) };
  const event = EVENT_KEYS[code];
  if (event) return { kind: 'event', event, direction: shiftKey ? -1 : 1 };
  const layer = layerOfKey(code);
  return layer ? { kind: 'layer', layer } : (PLAIN[code] ?? null);
}

/** Whether a key belongs to the field that has the focus: text, a choice, keys that scroll the panel, Space on a button. */
export function isTaken(target: EventTarget | null, code: string): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.closest('dialog[open]')) return true;
  if (target instanceof HTMLSelectElement || target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLInputElement) return target.type !== 'radio' || code.startsWith('Arrow') || code === 'Space';
  const moves = code.startsWith('Arrow') || code === 'Home' || code === 'End';
  if (target.closest('[role="tablist"]') && moves) return true;
  if (target.closest('[role="tabpanel"]') && (code.startsWith('Page') || code === 'Home' || code === 'End')) return true;
  return code === 'Space' && target.closest('button, summary, a') !== null;
}
