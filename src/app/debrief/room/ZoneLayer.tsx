import type { StrandPicture } from '../../../core/room/picture.ts';
import { onScreen, type RoomSight } from './RoomFrames.ts';

/** A hand above the operator's face by more than this is out of sight, in metres; as the room watches it. */
const SIGHT_ABOVE_FACE_M = 0.16;

/** Places where a surface counts as unsterile without a touch: below the level, out of sight, the margin of the sheets. */
export function ZoneLayer({ sight }: { readonly sight: RoomSight }) {
  const { picture } = sight;
  const { operator, policy, room } = picture.scenario;
  const level = Array.from(picture.levelX, (x, k) => onScreen(sight, x, picture.levelY[k]!));
  const first = level[0]!;
  const last = level.at(-1)!;
  const line = `M-10 ${first.y}L${level.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}L${sight.width + 10} ${last.y}`;
  const sightY = onScreen(sight, 0, operator.faceM + SIGHT_ABOVE_FACE_M).y;
  const skin = siteLine(sight);
  return (
    <g class="zones">
      <path class="zone-below" d={`${line}V${sight.height + 10}H-10Z`} />
      <path class="zone-line" d={line} />
      <ZoneWords x={16} y={first.y + 20} words="a hand below this line counts as unsterile" />
      {sightY > 0 && (
        <>
          <rect class="zone-below" x={-10} y={-10} width={sight.width + 20} height={sightY + 10} />
          <path class="zone-line" d={`M0 ${sightY}H${sight.width}`} />
          <ZoneWords x={16} y={sightY - 8} words="above this line a hand is out of sight" />
        </>
      )}
      {picture.strands.filter(({ id }) => id.startsWith('drape')).map((strand) => {
        const margin = marginOf(strand, room.rails.xM, policy.marginM);
        if (margin.length < 2) return null;
        const points = margin.map(([x, y]) => onScreen(sight, x, y));
        const at = points[0]!;
        return (
          <g key={strand.id}>
            <path class="zone-margin" d={`M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`} />
            <ZoneWords x={at.x} y={at.y - 12} words="margin" middle />
          </g>
        );
      })}
      {skin && (
        <>
          <path class="zone-site" d={`M${skin.map(({ x, y }) => `${x.toFixed(1)} ${(y - 7).toFixed(1)}`).join('L')}`} />
          <ZoneWords x={skin[skin.length >> 1]!.x} y={skin[skin.length >> 1]!.y - 14} words="opening" middle />
        </>
      )}
    </g>
  );
}

const ZoneWords = ({ x, y, words, middle }: { readonly x: number; readonly y: number; readonly words: string; readonly middle?: boolean }) => (
  <text class="zone-words" x={x} y={y} text-anchor={middle ? 'middle' : 'start'}>
    {words}
  </text>
);

/** Points of a sheet from its margin outwards: where the field ends is over the rail, or the sheet's own end where that comes first. */
function marginOf({ x, y }: StrandPicture, railM: number, marginM: number): [number, number][] {
  let end = x.length - 1;
  for (let i = 0; i < x.length; i++) {
    if (Math.abs(x[i]!) >= railM) {
      end = i;
      break;
    }
  }
  let from = end;
  for (let along = 0; from > 0 && along < marginM; from--) along += Math.hypot(x[from]! - x[from - 1]!, y[from]! - y[from - 1]!);
  return Array.from({ length: end - from + 1 }, (_, k) => [x[from + k]!, y[from + k]!]);
}

/** The skin in the opening of the drape, on the screen. */
function siteLine(sight: RoomSight): { x: number; y: number }[] | null {
  const { skinX, skinY, scenario } = sight.picture;
  const { siteXM, openingM } = scenario.room.patient;
  const shift = ((skinX[0] ?? 0) + (skinX.at(-1) ?? 0)) / 2;
  const points = Array.from(skinX, (x, k) => [x, skinY[k]!] as const).filter(([x]) => Math.abs(x - shift - siteXM) <= openingM / 2 + 1e-6);
  return points.length < 2 ? null : points.map(([x, y]) => onScreen(sight, x, y));
}
