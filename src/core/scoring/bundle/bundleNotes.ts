/** What is read into the published rule where its text is silent; shown with every result. */
export const INTERPRETATIONS: readonly string[] = [
  'An answer that is unknown or missing counts as not yes.',
  'Under a documented contraindication some other antiseptic must still have been used; the published rule about drying implies it.',
  'The five barriers are judged one by one; a general statement that all were used does not outweigh a single no.',
  'A patient of exactly 60 days belongs to the older class.',
  'The copy of the published answers that was read breaks off after the list of the four elements; what may follow there is not in this rule.',
];

/** What a passed bundle says nothing about. */
export const NOT_MEASURED: readonly string[] = [
  'strength and alcohol content of the antiseptic',
  'time and width of the skin preparation',
  'how hands were cleaned',
  'how gown and gloves were put on',
  'what the assistant wore',
  'sheath and gel of the probe',
  'whether the drape moved',
  'breaks during the work and what was done about them',
  'speaking up',
];
