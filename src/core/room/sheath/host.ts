import type { Side } from '../../base/side.ts';
import type { Fact } from '../../ledger/fact.ts';
import type { HandState } from '../handState.ts';

/** What happened to the film, without its step. */
export type SheathFact = Omit<Extract<Fact, { kind: 'torn' }>, 'step'> | Omit<Extract<Fact, { kind: 'gelled' }>, 'step'>;

/** What the sheath needs of the room. */
export interface SheathHost {
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly gone: boolean[];
  readonly carriedOff: boolean[];
  /** Share of each thing's content that is spent. */
  readonly used: readonly number[];
  /** A slot got another surface. */
  replaced(slot: number): void;
  /** What a slot carries was put somewhere else. */
  moved(slot: number): void;
  say(fact: SheathFact): void;
}
