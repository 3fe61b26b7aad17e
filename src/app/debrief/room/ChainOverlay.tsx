import { useRef } from 'preact/hooks';
import { momentText } from '../timeText.ts';
import { arrowPath } from './arrowPath.ts';
import { boxAround, type Box, type Spot } from './boxes.ts';
import { isSpared, type ChainLink } from './chainLinks.ts';
import { keepClear } from './keepClear.ts';
import { placeCallOuts, type PlacedCallOut } from './placeCallOuts.ts';
import { onScreen, type RoomSight } from './RoomFrames.ts';
import { spreadMarkers } from './spreadMarkers.ts';
import { textWidth } from './textWidth.ts';

const RADIUS = 12;
const MARKER_GAP = 31;
/** So many call-outs at the most; further links are told in the list beside the room. */
const CALL_OUTS_MAX = 8;
/** Each arrow takes this long to be drawn. */
const LINK_MS = 250;
const PAD_PX = 12;
const HIGH_PX = 47;

interface ChainOverlayProps {
  readonly sight: RoomSight;
  readonly links: readonly ChainLink[];
  /** The instant that is shown; links after it have not happened yet. */
  readonly step: number;
  readonly furniture: readonly Box[];
  /** Surfaces that the chosen what-if spares, or null. */
  readonly spared: ReadonlySet<string> | null;
  readonly onLink: (link: ChainLink) => void;
}

type Placed = ChainLink & { readonly x: number; readonly y: number };

/** The chain of a break drawn in the room: numbers where it happened, arrows from link to link, words beside them. */
export function ChainOverlay({ sight, links, step, furniture, spared, onLink }: ChainOverlayProps) {
  const before = useRef<{ readonly chain: string; readonly placed: readonly PlacedCallOut[] }>({ chain: '', placed: [] });
  /** Another chain is drawn in order, link by link, and its words find places of their own. */
  const chain = links.map(({ step, short }) => `${step}${short}`).join();
  const shown = links.filter((link): link is Placed => link.x !== null && link.y !== null);
  const places = shown.map((link) => onScreen(sight, link.x, link.y));
  const spots = spreadMarkers(places, MARKER_GAP);
  // What has not happened yet has its number alone; before all of it the root is told.
  const wanted = shown.flatMap((link, k) => (link.step <= step || k === 0 ? [{ key: String(link.number), marker: spots[k]!, wide: widthOf(link), high: HIGH_PX }] : [])).slice(0, CALL_OUTS_MAX);
  const bare = spots.filter((spot) => !wanted.some(({ marker }) => marker === spot)).map((spot) => boxAround([spot], RADIUS + 2));
  const spotOf = (number: number): Spot | undefined => spots[shown.findIndex((link) => link.number === number)];
  const lines = shown.flatMap((link, k): [Spot, Spot][] => {
    const from = link.from === null ? undefined : spotOf(link.from);
    return from ? [[from, spots[k]!]] : [];
  });
  const placed = placeCallOuts(wanted, before.current.chain === chain ? before.current.placed : [], { width: sight.width, height: sight.height, taken: [...keepClear(sight), ...furniture, ...bare], lines });
  before.current = { chain, placed };
  const look = (link: ChainLink): string => (link.step > step || isSpared(link, spared) ? ' chain-later' : '');
  return (
    <svg class="overlay chain-overlay" width={sight.width} height={sight.height} aria-hidden="true" focusable="false">
      {shown.map((link) => {
        const from = link.from === null ? undefined : spotOf(link.from);
        const arrow = from && arrowPath(from, spotOf(link.number)!, RADIUS);
        return arrow && (
          <g key={`${chain} ${link.number}`} class={`chain-arrow${look(link)}`} style={after(link)}>
            <path class="casing" d={arrow.shaft} />
            <path class="casing casing-head" d={arrow.head} />
            <path class="shaft" d={arrow.shaft} pathLength={look(link) === '' ? 1 : undefined} />
            <path class="head" d={arrow.head} />
          </g>
        );
      })}
      {placed.map((box) => {
        const link = shown.find(({ number }) => String(number) === box.key)!;
        const spot = spotOf(link.number)!;
        return (
          <g key={`${chain} ${box.key}`} class={`chain-call-out${look(link)}`} style={after(link)}>
            <path class="leader" d={`M${spot.x} ${spot.y}L${box.tie.x} ${box.tie.y}`} />
            <rect x={box.x0} y={box.y0} width={box.x1 - box.x0} height={box.y1 - box.y0} rx={5} />
            <text class="call-out-words" x={box.x0 + PAD_PX} y={box.y0 + 20}>{titleOf(link)}</text>
            <text class="call-out-when" x={box.x0 + PAD_PX} y={box.y0 + 38}>{isSpared(link, spared) ? 'spared in this what-if' : whenOf(link)}</text>
          </g>
        );
      })}
      {shown.map((link, k) => (
        <g key={`${chain} ${link.number}`} style={after(link)} class={`chain-marker${link.from === null ? ' chain-root-marker' : ''}${look(link)}`} onClick={() => onLink(link)}>
          {Math.hypot(spots[k]!.x - places[k]!.x, spots[k]!.y - places[k]!.y) > 4 && <path class="leader" d={`M${places[k]!.x} ${places[k]!.y}L${spots[k]!.x} ${spots[k]!.y}`} />}
          <circle class="true-place" cx={places[k]!.x} cy={places[k]!.y} r={3} />
          <circle class="marker" cx={spots[k]!.x} cy={spots[k]!.y} r={RADIUS} />
          <text x={spots[k]!.x} y={spots[k]!.y + 5.5} text-anchor="middle">{link.number}</text>
        </g>
      ))}
    </svg>
  );
}

/** Delay with which a link appears, so that the chain is drawn in order. */
const after = ({ number }: ChainLink): { animationDelay: string } => ({ animationDelay: `${Math.min(number - 1, 10) * LINK_MS}ms` });

const titleOf = (link: ChainLink): string => (link.from === null ? `root: ${link.short}` : link.short);
const whenOf = (link: ChainLink): string => `${momentText(link.step)}, ${link.how}`;
const widthOf = (link: ChainLink): number => Math.ceil(Math.max(textWidth(titleOf(link), '600 16px'), textWidth(whenOf(link), '400 15px'))) + 2 * PAD_PX;
