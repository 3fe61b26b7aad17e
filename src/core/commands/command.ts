import { z } from 'zod';

/**
 * The one list of what a person can do. A run is a sequence of these by step number; the schema, the recorder and the player
 * all derive from it. Positions are whole millimetres in the room (x 0 at the patient's midline, y up from the floor) and angles
 * whole degrees, so that a recording holds exactly what was played.
 */
const hand = z.enum(['left', 'right']);

export const commandSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('hand.move'), hand, xMm: z.int().min(-3000).max(3000), yMm: z.int().min(0).max(3000) }),
  z.strictObject({ type: z.literal('hand.turn'), hand, angleDeg: z.int().min(-120).max(120) }),
  z.strictObject({ type: z.literal('hand.grip'), hand }),
  z.strictObject({ type: z.literal('hand.release'), hand }),
  z.strictObject({ type: z.literal('hand.use'), hand, on: z.boolean() }),
  z.strictObject({ type: z.literal('notice') }),
  z.strictObject({ type: z.literal('remedy.start'), remedy: z.enum(['changeGlove', 'changeGownAndGloves', 'replaceItem', 'newSheath', 'coverDrape', 'prepAndDrape']), thing: z.string().max(40).optional() }),
  z.strictObject({ type: z.literal('remedy.cancel') }),
  z.strictObject({ type: z.literal('ask'), request: z.enum(['takeCord', 'giveSlack', 'letGo', 'stop', 'wipeFace', 'takeAway', 'bringProbe', 'lower', 'pullTail', 'openPacket', 'offerPacket', 'bedUp', 'bedDown', 'tieBack', 'takeCard']), thing: z.string().max(40).optional() }),
  z.strictObject({ type: z.literal('answer'), how: z.enum(['stop', 'fine']) }),
  z.strictObject({ type: z.literal('pace'), slowdown: z.union([z.literal(1), z.literal(2), z.literal(4)]) }),
  z.strictObject({ type: z.literal('run.end') }),
]);

export type Command = z.output<typeof commandSchema>;
export type RemedyId = Extract<Command, { type: 'remedy.start' }>['remedy'];
export type AnswerId = Extract<Command, { type: 'answer' }>['how'];
export type RequestId = Extract<Command, { type: 'ask' }>['request'];
