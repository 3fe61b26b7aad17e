import type { RequestId } from '../../commands/command.ts';
import type { Bringing } from './Bringing.ts';
import { REPLIES } from './replies.ts';

/** What the assistant is in when asked. */
export interface AskedAt {
  readonly step: number;
  /** Something else is being done with a hand. */
  readonly busy: boolean;
  /** The sheath is on the probe. */
  readonly covered: boolean;
  /** The assistant was told to stop before: whatever was under way goes on. */
  readonly goesOn: boolean;
}

/** Obeys a request about the probe and its sheath. What is answered, null where nothing need be, false where the request is for others to obey. */
export function obeyLoading(bringing: Bringing, request: RequestId, { step, busy, covered, goesOn }: AskedAt): string | null | false {
  const inHand = bringing.active && bringing.doing !== 'leaving' && bringing.doing !== 'lettingCordDown';
  switch (request) {
    case 'bringProbe':
      if (!inHand && !bringing.holds && !busy && !covered) bringing.begin(step);
      else if (bringing.hasProbe) bringing.bringAgain(step);
      else if (!inHand) return REPLIES.nothingToTake;
      else return goesOn ? null : REPLIES.probeComes;
      return null;
    case 'lower':
      return bringing.lower(step) ? null : REPLIES.nothingToLower;
    case 'pullTail':
      return !busy && bringing.pullTail(step) ? null : REPLIES.noTail;
    case 'letGo':
      return bringing.letGo(step) ? null : false;
    case 'giveSlack':
      if (!bringing.holdsClear) return false;
      bringing.giveSlack();
      return null;
    case 'takeCord':
      return inHand ? null : false;
    default:
      return inHand ? REPLIES.cordInHand : false;
  }
}
