import { useMemo } from 'preact/hooks';
import type { SurfaceMark } from '../../core/room/picture.ts';
import { swatch } from '../canvas/swatches.ts';

/** Small sample of a pattern, as it is drawn in the room. */
export function Swatch({ mark }: { readonly mark: SurfaceMark }) {
  const drawing = useMemo(() => ({ __html: swatch(mark) }), [mark]);
  return <span class="swatch" aria-hidden="true" dangerouslySetInnerHTML={drawing} />;
}
