/** What is drawn, back to front. The cord passes over the sleeves and under the hands; a hanging gown
 * hangs from hands or arms and so behind them; the opened sheath has it and the probe inside. */
export const DRAWING_ORDER = [
  'wall', 'pole', 'kitTable', 'bin', 'machine', 'assistant',
  'operatorBody',
  'bed', 'patient',
  'skinSurface', 'drapeFar', 'rails', 'drapeEdge', 'level', 'assistantBehind', 'gownTable', 'lyingThings', 'hangingGown', 'assistantBody', 'sleeves', 'neckband',
  'pocketFar', 'hangingProbe', 'cord', 'pocketNear', 'assistantArms', 'hands', 'foldOverFingers', 'nextHolds', 'labels', 'fromSide',
] as const;
export type LayerName = (typeof DRAWING_ORDER)[number];

/** Neighbouring layers that hold still and are kept as one picture. */
export const STILL_GROUPS = {
  room: ['wall', 'pole', 'kitTable', 'bin', 'machine', 'assistant'],
  operator: ['operatorBody'],
  bed: ['bed', 'patient'],
} as const satisfies Record<string, readonly LayerName[]>;
export type StillGroup = keyof typeof STILL_GROUPS;

/** Layers over them that move only now and then: they are put together with them when they have. */
export const FIELD_LAYERS = ['skinSurface', 'drapeFar', 'rails', 'drapeEdge', 'level'] as const satisfies readonly LayerName[];

const kept = new Set<LayerName>([...Object.values(STILL_GROUPS).flat(), ...FIELD_LAYERS]);
/** Layers that are drawn in every frame. */
export const MOVING_LAYERS: readonly LayerName[] = DRAWING_ORDER.filter((name) => !kept.has(name));
