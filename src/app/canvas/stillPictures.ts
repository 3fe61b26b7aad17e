import { LAYER_PAINTERS } from './layerPainters.ts';
import { STILL_GROUPS, type StillGroup } from './drawingOrder.ts';
import type { Frame } from './frame.ts';
import { compose, shift } from './pen/affine.ts';
import { Pen } from './pen/pen.ts';
import type { Backend, KeptPicture } from './render/backend.ts';

interface Kept {
  readonly picture: KeptPicture;
  /** What it was drawn from; it is drawn anew when this changes. */
  key: string;
  originX: number;
  originY: number;
}

/** Space that the operator takes up around the midline, in metres. */
const OPERATOR_HALF_M = 0.36;
const OPERATOR_TOP_M = 1.85;
const MARGIN_PX = 4;

/** Wall and furniture, the operator's body, bed and patient: drawn once and kept until the camera or they themselves change. */
export class StillPictures {
  private readonly kept: Readonly<Record<StillGroup, Kept>>;

  constructor(backend: Backend) {
    const keep = (): Kept => ({ picture: backend.keep(), key: '', originX: 0, originY: 0 });
    this.kept = { room: keep(), operator: keep(), bed: keep() };
  }

  update(frame: Frame): void {
    const { picture } = frame;
    const scene = `${frame.camera.toScreen.join(' ')} ${frame.camera.widthPx} ${frame.camera.heightPx} ${frame.pen.density} ${frame.shown}`;
    this.refresh('room', `${scene} ${fixedMarks(frame)}`, frame);
    this.refresh('operator', `${scene} ${frame.markOf(picture.fixed['face'])} ${frame.markOf(picture.fixed['gownFront'])}`, frame);
    this.refresh('bed', `${scene} ${frame.markOf(picture.fixed['bed'])} ${outlineKey(picture.skinX)} ${outlineKey(picture.skinY)}`, frame);
    const { picture: body, originX, originY } = this.kept.operator;
    body.moveTo(originX + Math.round(picture.torsoX * frame.camera.pxPerM * frame.pen.density), originY);
  }

  private refresh(group: StillGroup, key: string, frame: Frame): void {
    const kept = this.kept[group];
    if (kept.key === key) return;
    kept.key = key;
    const [x, y, width, height] = areaOf(group, frame);
    kept.originX = x;
    kept.originY = y;
    kept.picture.reshape(x, y, width, height);
    if (width > 1 && height > 1) {
      const { density } = frame.pen;
      const pen = Pen.over(kept.picture.ctx, compose(shift(-x / density, -y / density), frame.camera.toScreen), density);
      for (const layer of STILL_GROUPS[group]) LAYER_PAINTERS[layer]({ ...frame, pen });
    }
    kept.picture.changed();
  }
}

/** Left, top, width, height in device pixels, cut to the screen. */
function areaOf(group: StillGroup, { camera, pen: { density }, picture }: Frame): [number, number, number, number] {
  const wide = Math.round(camera.widthPx * density);
  const high = Math.round(camera.heightPx * density);
  if (group === 'room') return [0, 0, wide, high];
  const { bed } = picture.scenario.room;
  const half = group === 'operator' ? OPERATOR_HALF_M : bed.mattressWidthM / 2 + 0.08;
  const top = group === 'operator' ? OPERATOR_TOP_M : bed.mattressTopM + picture.scenario.room.patient.heightM + 0.06;
  const a = camera.roomToScreen(-half, top);
  const b = camera.roomToScreen(half, 0);
  const y0 = Math.max(0, Math.floor(a.y * density) - MARGIN_PX);
  const y1 = Math.min(high, Math.ceil(b.y * density) + MARGIN_PX);
  // The operator steps aside, so what lies beside the screen is needed too, up to a sensible size.
  const x0 = Math.max(-wide, Math.floor(a.x * density) - MARGIN_PX);
  const x1 = Math.min(2 * wide, Math.ceil(b.x * density) + MARGIN_PX);
  return [x0, y0, Math.max(1, x1 - x0), Math.max(1, y1 - y0)];
}

/** Outline to half a millimetre: smaller movements are not seen. */
const outlineKey = (row: Float64Array): string => `${Math.round((row[0] ?? 0) * 2000)} ${Math.round((row[row.length >> 1] ?? 0) * 2000)} ${Math.round((row.at(-1) ?? 0) * 2000)}`;

const fixedMarks = ({ picture, markOf }: Frame): string =>
  ['pole', 'machine', 'kitTable', 'tableEdge', 'bin', 'floor'].map((name) => markOf(picture.fixed[name])).join(' ');
