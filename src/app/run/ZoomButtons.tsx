import type { Framing } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';

interface ZoomButtonsProps {
  readonly onZoom: (factor: number) => void;
  readonly onFrame: (framing: Framing) => void;
}

/** Closer, wider, all within reach, the field. */
export const ZoomButtons = ({ onZoom, onFrame }: ZoomButtonsProps) => (
  <div class="zoom-buttons" role="group" aria-label="View">
    <button aria-label="Closer" onClick={() => onZoom(1.25)}>
      +
    </button>
    <button aria-label="Wider" onClick={() => onZoom(0.8)}>
      −
    </button>
    <button onClick={() => onFrame('reach')}>
      Wide <KeyCap>9</KeyCap>
    </button>
    <button onClick={() => onFrame('field')}>
      Field <KeyCap>0</KeyCap>
    </button>
  </div>
);
