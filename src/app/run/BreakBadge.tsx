import type { StagePoint } from './stagePort.ts';

/** Where the newest break happened in the drawn room: the first number of its chain. */
export const BreakBadge = ({ at }: { readonly at: StagePoint | null }) =>
  at && (
    <span class="break-badge" style={{ left: `${at.x}px`, top: `${at.y}px` }} aria-hidden="true">
      1
    </span>
  );
