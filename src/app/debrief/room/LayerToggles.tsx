import { KeyCap } from '../../parts/KeyCap.tsx';

/** What is drawn over the room. */
export interface Layers {
  readonly chain: boolean;
  readonly paths: boolean;
  readonly heat: boolean;
  readonly zones: boolean;
}

/** Names and keys of the layers. */
const LAYERS: readonly (readonly [keyof Layers, string, string])[] = [
  ['chain', 'Chain', 'G'],
  ['paths', 'Hand paths', 'H'],
  ['heat', 'Heat map', 'M'],
  ['zones', 'Zones', 'Z'],
];

/** The layer whose key this is, or null. */
export const layerOfKey = (code: string): keyof Layers | null => LAYERS.find(([, , key]) => code === `Key${key}`)?.[0] ?? null;

/** Buttons that show and hide what is drawn over the room. */
export const LayerToggles = ({ layers, onLayers }: { readonly layers: Layers; readonly onLayers: (layers: Layers) => void }) => (
  <div class="layer-toggles" role="group" aria-label="Show in the room">
    {LAYERS.map(([layer, words, key]) => (
      <button key={layer} class="layer-toggle" aria-pressed={layers[layer]} onClick={() => onLayers({ ...layers, [layer]: !layers[layer] })}>
        {words} <KeyCap>{key}</KeyCap>
      </button>
    ))}
  </div>
);
