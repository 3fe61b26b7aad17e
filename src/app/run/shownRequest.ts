import type { RequestId } from '../../core/commands/command.ts';
import { isFreeFor } from '../../core/room/assistant/isFreeFor.ts';
import type { LiveRun } from './LiveRun.ts';
import { isNextShown } from './shownHolds.ts';

/** The request whose button is marked: the one that is due, while the assistant is free for it. Null under other coaching than shown, and while holds are not marked either. */
export function shownRequest(live: Pick<LiveRun, 'run' | 'coaching' | 'current'>): RequestId | null {
  const { nextRequest } = live.run;
  return isNextShown(live) && nextRequest !== null && isFreeFor(nextRequest, live.current.assistant.doing) ? nextRequest : null;
}
