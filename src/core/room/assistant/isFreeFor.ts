import type { RequestId } from '../../commands/command.ts';
import type { AssistantDoing } from '../picture.ts';

/** What an assistant goes on from who has the probe or its cord in hand already. */
const FROM: Readonly<Partial<Record<RequestId, readonly AssistantDoing[]>>> = {
  lower: ['overMouth'],
  letGo: ['bringingProbe', 'overMouth', 'lowering', 'holdingCord', 'supportingCord'],
  giveSlack: ['holdingCord', 'supportingCord'],
  pullTail: ['supportingCord'],
};

/** Whether an assistant who is at that would turn to a request now; not while it is being done, or something else is. */
export const isFreeFor = (request: RequestId, doing: AssistantDoing): boolean => doing === 'waiting' || doing === 'stopped' || (FROM[request]?.includes(doing) ?? false);
