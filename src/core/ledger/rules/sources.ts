import type { PublishedSource } from './rule.ts';

/** Published sources that the rule book rests on. */
export const commonBreaks: PublishedSource = { title: 'Common breaks in sterile technique (vol. 91, pp. 350–364)', body: 'AORN Journal', year: 2010 };
export const gownZones: PublishedSource = { title: 'Article on gowning and gloving for outpatient surgery', body: 'AORN', year: 2006 };
export const teachingTexts: PublishedSource = { title: 'Sterile technique study guides', body: 'nursing teaching texts', year: null };
export const breaksArticle: PublishedSource = { title: 'Common breaks in sterile technique', body: 'nursing journal', year: null };
export const drapeStandard: PublishedSource = { title: 'Standards of Practice for Surgical Drapes', body: 'AST', year: 2008 };
export const catheterGuideline: PublishedSource = {
  title: 'Guidelines for the Prevention of Intravascular Catheter-Related Infections',
  body: 'CDC/HICPAC',
  year: 2011,
  recommendation: 'Hand hygiene and aseptic technique: no palpation after antisepsis unless aseptic technique is kept (IB)',
};
export const probeCover: PublishedSource = { title: 'Statement of December 2022 on covers of transducers', body: 'AIUM', year: 2022 };
