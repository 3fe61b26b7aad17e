import type { RoomPicture } from '../../../core/room/picture.ts';
import { skinKind } from '../../../core/room/skin.ts';
import { BREAK, BREAK_TINT, PREPARED, PREPARED_DOT } from '../palette.ts';
import { smooth, type Point } from '../pen/curves.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';
import { runsOf } from '../strands/runs.ts';
import type { MarkOf } from './marks.ts';

/** Gel lies this far to each side of the site at most, and this high, in metres. */
const GEL_HALF_M = 0.026;
const GEL_HIGH_M = 0.007;

/** What lies on the skin: the stain of the antiseptic, breaks, gel. The pen's frame is in metres. */
export function paintSkinSurface(pen: Pen, picture: RoomPicture, markOf: MarkOf): void {
  const line = Array.from(picture.skinX, (x, i): Point => [x, picture.skinY[i]!]);
  const middle = line.length > 0 ? (line[0]![0] + line.at(-1)![0]) / 2 : 0;
  const stained = line.slice(0, -1).map(([x], i) => skinKind(picture.scenario, (x + line[i + 1]![0]) / 2 - middle) !== 'patientSkin');
  const from = stained.indexOf(true);
  const to = stained.lastIndexOf(true);
  if (from >= 0) paintPrepared(pen, line.slice(from, to + 2));
  for (const run of runsOf(picture.skinSurfaces, markOf)) {
    if (run.mark !== 'became') continue;
    const stretch = smooth(line.slice(run.from, run.to + 1));
    pen.path(stretch, { line: BREAK, weight: pen.weights.prepared + 4 });
    pen.path(stretch, { line: BREAK_TINT, weight: pen.weights.prepared, dash: [3, 3.6], butt: true });
  }
  if (picture.gelOnSite > 0) paintGel(pen, line, middle + picture.scenario.room.patient.siteXM, picture.gelOnSite);
}

function paintPrepared(pen: Pen, line: readonly Point[]): void {
  const { prepared } = pen.weights;
  const path = smooth(line);
  pen.path(path, { line: PREPARED, weight: prepared });
  pen.path(path, { line: PREPARED_DOT, weight: prepared * 0.62, dash: [0.1, 6] });
}

function paintGel(pen: Pen, line: readonly Point[], siteX: number, amount: number): void {
  const half = GEL_HALF_M * (0.5 + 0.5 * amount);
  const base = line.filter(([x]) => Math.abs(x - siteX) < half);
  if (base.length < 2) return;
  const top = base.map(([x, y]): Point => [x, y + GEL_HIGH_M * amount * Math.sqrt(Math.max(0.1, 1 - ((x - siteX) / half) ** 2))]);
  const dome = smooth([[siteX - half, base[0]![1]], ...top, [siteX + half, base.at(-1)![1]]]);
  pen.path(dome, { fill: down('#EAF4FB', '#B9D6E8'), fillAlpha: 0.85, line: '#5B8FAE', weight: 'd' });
}
