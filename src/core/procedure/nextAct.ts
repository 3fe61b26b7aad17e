import type { RequestId } from '../commands/command.ts';
import type { NextHold } from './nextHold.ts';

/** What the assistant is to be asked for next. Plain data. */
export interface NextRequest {
  readonly ask: RequestId;
}

/** The next thing to do: a hold of a hand, or a request to the assistant. Of a list, holds are done before what is asked. */
export type NextAct = NextHold | NextRequest;

export const asking = (request: RequestId): NextRequest => ({ ask: request });

const isRequest = (act: NextAct): act is NextRequest => 'ask' in act;

/** The holds among the acts. */
export const holdsAmong = (acts: readonly NextAct[]): readonly NextHold[] => acts.filter((act): act is NextHold => !isRequest(act));

/** The request among the acts, or null. */
export const requestAmong = (acts: readonly NextAct[]): RequestId | null => acts.find(isRequest)?.ask ?? null;
