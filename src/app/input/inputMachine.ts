import { assign, setup } from 'xstate';
import { otherSide, type Side } from '../../core/base/side.ts';

/** What leads the active hand at the moment. */
export type Leader = 'mouse' | 'keyboard' | 'touch' | 'gamepad';

export interface InputContext {
  readonly active: Side;
  readonly leader: Leader;
  /** Which hand each finger on the screen leads, by pointer id. */
  readonly fingers: Readonly<Record<number, Side>>;
  /** A dialog that was opened during a pause goes back to the pause. */
  readonly pausedUnderDialog: boolean;
}

export type InputEvent =
  | { readonly type: 'pause' }
  | { readonly type: 'resume' }
  | { readonly type: 'dialog.open' }
  | { readonly type: 'dialog.close' }
  | { readonly type: 'hand.swap' }
  | { readonly type: 'hand.choose'; readonly side: Side }
  | { readonly type: 'leader.used'; readonly leader: Leader }
  | { readonly type: 'finger.down'; readonly pointer: number; readonly nearest: Side }
  | { readonly type: 'finger.up'; readonly pointer: number };

/** Hand that a new finger leads: the nearest that no finger leads yet, or none. */
export function handForFinger(fingers: Readonly<Record<number, Side>>, nearest: Side): Side | null {
  const led = Object.values(fingers);
  if (!led.includes(nearest)) return nearest;
  return led.includes(otherSide(nearest)) ? null : otherSide(nearest);
}

function withFinger(context: InputContext, pointer: number, nearest: Side): Partial<InputContext> {
  const side = handForFinger(context.fingers, nearest);
  if (side === null) return {};
  return { fingers: { ...context.fingers, [pointer]: side }, active: side, leader: 'touch' };
}

function withoutFinger(context: InputContext, pointer: number): Partial<InputContext> {
  const { [pointer]: _, ...fingers } = context.fingers;
  return { fingers };
}

/** The modes of the controls: hands move only while playing; pauses and dialogs let go of every finger, never of a grip. */
export const inputMachine = setup({
  types: { context: {} as InputContext, events: {} as InputEvent },
  guards: { 'was paused before the dialog': ({ context }) => context.pausedUnderDialog },
  actions: {
    'lift all fingers': assign({ fingers: {} }),
    'remember the pause': assign({ pausedUnderDialog: true }),
    'forget the pause': assign({ pausedUnderDialog: false }),
  },
}).createMachine({
  id: 'input',
  initial: 'playing',
  context: { active: 'right', leader: 'mouse', fingers: {}, pausedUnderDialog: false },
  states: {
    playing: {
      exit: 'lift all fingers',
      on: {
        pause: 'paused',
        'dialog.open': { target: 'dialog', actions: 'forget the pause' },
        'hand.swap': { actions: assign(({ context }) => ({ active: otherSide(context.active) })) },
        'hand.choose': { actions: assign(({ event }) => ({ active: event.side })) },
        'leader.used': { actions: assign(({ event }) => ({ leader: event.leader })) },
        'finger.down': { actions: assign(({ context, event }) => withFinger(context, event.pointer, event.nearest)) },
        'finger.up': { actions: assign(({ context, event }) => withoutFinger(context, event.pointer)) },
      },
    },
    paused: {
      on: {
        resume: 'playing',
        'dialog.open': { target: 'dialog', actions: 'remember the pause' },
      },
    },
    dialog: {
      on: {
        'dialog.close': [{ guard: 'was paused before the dialog', target: 'paused' }, { target: 'playing' }],
      },
    },
  },
});
