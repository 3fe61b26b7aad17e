import type { Answer, Before } from '../../scenario/schema.ts';

/** What the insertion bundle asks about one attempt; ages in days. */
export type BundleInputs = Before;
export type Antiseptic = BundleInputs['antiseptics'][number];
export type BundleElementId = 'handHygiene' | 'skinPrep' | 'dry' | 'barriers';

/** One of the four elements, and why it is met or not. */
export interface BundleElement {
  readonly id: BundleElementId;
  readonly title: string;
  readonly met: boolean;
  readonly why: string;
}

/** Outcome of one attempt. */
export interface InsertionBundle {
  readonly elements: readonly BundleElement[];
  /** All four elements are met; neither age, haste nor a later remedy excuses a missing one. */
  readonly met: boolean;
  /** Dangers that the bundle itself lets pass, each one sentence. */
  readonly safetyFlags: readonly string[];
}

/** Age from which chlorhexidine is asked for, in days; a patient of exactly this age is asked for it. */
export const CHLORHEXIDINE_FROM_DAYS = 60;

/**
 * Insertion bundle of the CDC's surveillance of insertion practices (NHSN, form 57.125 and its published answers): hand hygiene, the
 * right antiseptic, dry skin and all five barriers, each with a clear yes.
 */
export function insertionBundle(inputs: BundleInputs): InsertionBundle {
  const elements = [handHygiene(inputs), skinPrep(inputs), dry(inputs), barriers(inputs)];
  return { elements, met: elements.every(({ met }) => met), safetyFlags: safetyFlags(inputs) };
}

const said = (answer: Answer): string => (answer === 'unknown' ? 'not known, which counts as no' : answer);

const handHygiene = ({ handHygiene: answer }: BundleInputs): BundleElement => ({
  id: 'handHygiene',
  title: 'Hand hygiene before the insertion',
  met: answer === 'yes',
  why: `Hand hygiene: ${said(answer)}.`,
});

const ANTISEPTIC_WORDS: Readonly<Record<Antiseptic, string>> = { chlorhexidine: 'chlorhexidine', povidoneIodine: 'povidone-iodine', alcohol: 'alcohol', other: 'another antiseptic' };

/** Antiseptics in words, or that there were none. */
export const antisepticWords = (antiseptics: readonly Antiseptic[]): string => (antiseptics.length === 0 ? 'no antiseptic' : antiseptics.map((one) => ANTISEPTIC_WORDS[one]).join(', '));

function skinPrep({ antiseptics, ageDays, contraindication }: BundleInputs): BundleElement {
  const used = antisepticWords(antiseptics);
  const element = { id: 'skinPrep', title: 'The right antiseptic on the skin' } as const;
  if (antiseptics.length === 0) return { ...element, met: false, why: 'No antiseptic was used.' };
  if (ageDays < CHLORHEXIDINE_FROM_DAYS) return { ...element, met: true, why: `Under ${CHLORHEXIDINE_FROM_DAYS} days of age any named antiseptic counts; used: ${used}.` };
  if (antiseptics.includes('chlorhexidine')) return { ...element, met: true, why: `Used: ${used}.` };
  if (contraindication === 'yes') return { ...element, met: true, why: `Used: ${used}; a contraindication to chlorhexidine is documented.` };
  return { ...element, met: false, why: `Used: ${used}; from ${CHLORHEXIDINE_FROM_DAYS} days of age chlorhexidine is asked for unless a contraindication is documented.` };
}

const dry = ({ dry: answer }: BundleInputs): BundleElement => ({ id: 'dry', title: 'Skin completely dry at the first puncture', met: answer === 'yes', why: `Dry: ${said(answer)}.` });

function barriers(inputs: BundleInputs): BundleElement {
  const five: readonly (readonly [string, Answer])[] = [
    ['sterile gloves', inputs.gloves],
    ['sterile gown', inputs.gown],
    ['cap', inputs.cap],
    ['mask', inputs.mask],
    ['large sterile drape over the whole body', inputs.drapeWholeBody],
  ];
  const missing = five.filter(([, answer]) => answer !== 'yes').map(([what, answer]) => `${what}: ${said(answer)}`);
  return { id: 'barriers', title: 'All five barriers', met: missing.length === 0, why: missing.length === 0 ? 'Gloves, gown, cap, mask and drape over the whole body: yes.' : `Missing: ${missing.join('; ')}.` };
}

const safetyFlags = ({ contraindication, antiseptics }: BundleInputs): readonly string[] =>
  contraindication === 'yes' && antiseptics.includes('chlorhexidine') ? ['Chlorhexidine was used although a contraindication to it is documented: the bundle passes this, the patient may be harmed.'] : [];
