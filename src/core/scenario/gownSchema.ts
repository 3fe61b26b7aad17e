import { z } from 'zod';

const metres = (low: number, high: number, value: number) => z.number().min(low).max(high).default(value);
/** Sizes of surgical gloves: about the girth of the palm in inches. */
const gloveSize = z.number().min(5.5).max(9).multipleOf(0.5).default(7.5);

/** Persons of the table of statures (statures.ts). */
export const STATURES = ['given', 'shortWoman', 'woman', 'man', 'tallMan'] as const;

/** What a run that begins with gowning and gloving has besides the rest of the room. */
export const gownSchema = z
  .strictObject({
    lengthM: metres(0.9, 1.6, 1.15).describe('from the shoulder seam to the hem'),
    sleeveM: metres(0.55, 0.95, 0.78).describe('from the armhole to the end of the knit cuff'),
    knitM: metres(0.04, 0.1, 0.06).describe('length of the knit cuff'),
    massKg: metres(0.1, 0.6, 0.25),
    gloveSizes: z.strictObject({ left: gloveSize, right: gloveSize }).prefault({}).describe('of the gloves that lie opened'),
    gloveLengthM: metres(0.24, 0.32, 0.28).describe('from the tip of the middle finger to the edge of the cuff'),
    gloveChange: z.enum(['timed', 'byHand']).default('timed').describe('timed: a change of glove in the middle of the work takes its time and is done; byHand: the assistant pulls the old one off by its cuff and opens a new one on the gown table, which is put on by the open method'),
    palmGirthM: metres(0.16, 0.25, 0.19).describe('of the operator, who needs a glove of about as many inches'),
    table: z
      .strictObject({ xM: z.number().min(-2).max(2).default(-1.95), topM: metres(0.7, 1.2, 0.9), widthM: metres(0.5, 0.9, 0.5) })
      .prefault({})
      .describe('the table with the opened gown and gloves'),
    standXM: z.number().min(-1.9).max(1.9).default(-1.26).describe('where the operator stands to put them on'),
    passer: z
      .strictObject({
        atS: z.number().min(0).max(3600).default(0).describe('when somebody comes by, stands there for a moment and goes back; 0: nobody does'),
        fromXM: z.number().min(-2.2).max(2.2).default(0.6),
        toXM: z.number().min(-2.2).max(2.2).default(-0.6),
      })
      .prefault({}),
  })
  .prefault({})
  .describe('read where a run begins with gowning and gloving, or where gloves are changed by hand');
