/** How much of a source was read for this book; a copy may lag what is published now. */
export type Seen =
  /** A copy of the text. */
  | 'text'
  /** The statement, where others repeat it: exam preparation, questions and answers, a hospital's table. */
  | 'quoted'
  /** Title and abstract. */
  | 'title'
  /** Nothing; it is known from general knowledge. */
  | 'notSeen';

export interface PublishedSource {
  readonly title: string;
  readonly body: string;
  /** Null for an undated page. */
  readonly year: number | null;
  readonly recommendation?: string;
  readonly seen: Seen;
}

export type Source = PublishedSource | 'common practice';

/** How a statement stands to its source: it stands there as read, is generally known, or is worked out from what stands there. */
export type Mark = 'looked-up' | 'memory' | 'derived';

/** Published sources that rules, remedies and policies rest on. */
export const commonBreaks: PublishedSource = { title: 'Common breaks in sterile technique (91: 350–364)', body: 'AORN Journal', year: 2010, seen: 'title' };
export const gownArticle: PublishedSource = { title: 'Article on gowning and gloving in outpatient surgery', body: 'AORN', year: 2006, seen: 'text' };
export const gownZones: PublishedSource = { title: 'Questions and answers on the sterile zones of a gown', body: 'perioperative exam-preparation pages', year: null, seen: 'quoted' };
export const studyGuide: PublishedSource = { title: 'Sterile-technique study guides', body: 'teaching texts that follow AORN', year: null, seen: 'quoted' };
export const breaksArticle: PublishedSource = { title: 'Common breaks in sterile technique', body: 'a nursing journal', year: null, seen: 'text' };
export const drapeStandard: PublishedSource = { title: 'Standards of Practice for Surgical Drapes', body: 'AST', year: 2008, recommendation: 'a placed drape is not repositioned', seen: 'text' };
export const fieldAnswers: PublishedSource = { title: 'Expert answers on sterile technique', body: 'AORN', year: 2022, recommendation: 'a contaminated drape is covered with a new sterile one', seen: 'text' };
export const palpation: PublishedSource = {
  title: 'Guidelines for the Prevention of Intravascular Catheter-Related Infections',
  body: 'CDC/HICPAC',
  year: 2011,
  recommendation: 'Hand hygiene and aseptic technique: no palpation after antisepsis unless aseptic technique is kept (IB)',
  seen: 'notSeen',
};
export const emergencyLine: PublishedSource = {
  title: 'Guidelines for the Prevention of Intravascular Catheter-Related Infections',
  body: 'CDC/HICPAC',
  year: 2011,
  recommendation: 'a line placed without assured asepsis is replaced within 48 hours (IB)',
  seen: 'notSeen',
};
export const probeCover: PublishedSource = { title: 'Statement of December 2022 on covers of transducers', body: 'AIUM', year: 2022, recommendation: 'single-use cover for interventions through the skin', seen: 'text' };
export const sheathManual: PublishedSource = { title: 'User manual of an ultrasound system, on probe covers', body: 'a manufacturer', year: null, recommendation: 'a compromised cover is replaced at once', seen: 'text' };
export const gelReport: PublishedSource = { title: 'Infections linked to non-sterile ultrasound gel (71: 1517–1521)', body: 'CDC, MMWR', year: 2022, recommendation: 'sterile single-use gel before and during punctures', seen: 'text' };
export const breachPage: PublishedSource = { title: 'Page on managing a breach of sterility', body: 'an anaesthesia group', year: null, recommendation: 'a glove alone is changed when the glove alone was touched', seen: 'text' };
export const prepLabel: PublishedSource = { title: 'Labels of applicators with 2 % chlorhexidine in 70 % isopropyl alcohol', body: 'US drug labels', year: 2024, recommendation: '30 s of strokes and at least 3 min of drying on dry hairless skin', seen: 'text' };
export const sheathCatalogue: PublishedSource = { title: 'Sizes of probe covers on the market', body: 'a catalogue', year: null, seen: 'text' };
export const tiltStudies: PublishedSource = { title: 'Review of 22 studies on tilt and the size of the neck vein', body: 'Journal of Vascular Access', year: 2021, recommendation: 'more than 5 degrees enlarges the vein, more than 10 gains nothing', seen: 'title' };
