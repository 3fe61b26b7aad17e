import type { Side } from '../../base/side.ts';
import type { Fact } from '../../ledger/fact.ts';
import type { HandState } from '../handState.ts';
import type { Slot } from '../surfaces.ts';

/** What the gown needs of the room. */
export interface GownHost {
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly gone: boolean[];
  readonly carriedOff: boolean[];
  readonly torsoX: () => number;
  replaced(slot: Slot): void;
  moved(slot: Slot): void;
  say(fact: GownFact): void;
}

type Stepless<F> = F extends Fact ? Omit<F, 'step'> : never;
/** What happened to gown and gloves beside touches, without its step. */
export type GownFact = Stepless<Extract<Fact, { kind: 'zone.entered' | 'zone.left' | 'glove.torn' }>>;
