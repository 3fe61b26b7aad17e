import type { ErrandKind } from './errand.ts';
import { REPLIES } from './replies.ts';

/** What an assistant is doing who is at it. */
export const AT_WORK = { takeCord: 'holdingCord', wipeFace: 'wipingFace', takeAway: 'takingAway', openPacket: 'openingPacket', offerPacket: 'offeringItem', bedUp: 'movingBed', bedDown: 'movingBed' } as const;

/** What an assistant answers to an errand that cannot be begun, where it is more than that there is nothing to take. */
export const NOT_POSSIBLE: Readonly<Partial<Record<ErrandKind, string>>> = { openPacket: REPLIES.noSpare, offerPacket: REPLIES.noSpare, bedUp: REPLIES.bedEnd, bedDown: REPLIES.bedEnd };
