import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { indexOf } from '../../../core/debrief/logIndex.ts';
import type { TraceView } from '../../../core/debrief/traceTypes.ts';
import type { Alternative } from '../../../core/debrief/whatIfTypes.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { Legend } from '../../run/Legend.tsx';
import type { MountStage, StagePort } from '../../run/stagePort.ts';
import { ZoomButtons } from '../../run/ZoomButtons.tsx';
import type { Debrief } from '../useDebrief.ts';
import type { PlayHead } from '../PlayHead.ts';
import { momentText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';
import type { Box } from './boxes.ts';
import type { ChainLink } from './chainLinks.ts';
import { ChainOverlay } from './ChainOverlay.tsx';
import { HandHeat, HandPaths } from './HandLayers.tsx';
import { InstantTwin } from './InstantTwin.tsx';
import { LayerToggles, type Layers } from './LayerToggles.tsx';
import { partOf } from './partOf.ts';
import { RoomFrames, type RoomSight } from './RoomFrames.ts';
import { useRoomPointer } from './useRoomPointer.ts';
import { whatIfMarks } from './whatIfMarks.ts';
import { ZoneLayer } from './ZoneLayer.tsx';

/** Ways of the hands are drawn anew this often, in steps. */
const PATH_STEPS = 6;

export interface RoomViewProps {
  readonly debrief: Debrief & { readonly head: PlayHead };
  readonly mountStage: MountStage;
  readonly links: readonly ChainLink[];
  /** Shown instead of the run as it was. */
  readonly whatIf: Alternative | null;
  readonly layers: Layers;
  readonly onLayers: (layers: Layers) => void;
  readonly onLink: (link: ChainLink) => void;
  readonly onStage: (stage: StagePort) => void;
}

/** The room at the instant that is shown, with the sterility that nobody could see, and what is drawn over it. */
export function RoomView(props: RoomViewProps) {
  const { debrief, layers, whatIf, onLayers } = props;
  const outer = useRef<HTMLElement>(null);
  const { host, stage, sight, trouble } = useStage(props);
  useRoomPointer(host, stage);
  return (
    <section ref={outer} class="stage debrief-stage" aria-label="The room at the instant shown">
      <div ref={host} class="room debrief-room">
        {trouble && <p class="room-trouble">{trouble}</p>}
      </div>
      {sight && debrief.source && <Overlays {...props} sight={sight} trace={debrief.source.trace} outer={outer} />}
      <Legend />
      <LayerToggles layers={layers} onLayers={onLayers} />
      <ZoomButtons onZoom={(factor) => stage?.zoom(factor, sight ? sight.width / 2 : 0, sight ? sight.height / 2 : 0)} onFrame={(framing) => stage?.fit(framing)} />
      {whatIf && (
        <p class="room-what-if" role="status">
          What if: {whatIf.title}
        </p>
      )}
      <Replaying debrief={debrief} />
    </section>
  );
}

interface OverlaysProps extends RoomViewProps {
  readonly sight: RoomSight;
  readonly trace: TraceView;
  readonly outer: { readonly current: HTMLElement | null };
}

/** What is drawn over the room: ways of the hands, zones, the chain. */
function Overlays({ debrief: { head }, sight, trace, layers, links, whatIf, outer, onLink }: OverlaysProps) {
  const furniture = useFurniture(outer, sight);
  const step = usePlayHead(head, (now) => (layers.paths ? Math.floor(now.step / PATH_STEPS) * PATH_STEPS : Math.floor(now.step)));
  const spared = useMemo(() => whatIf && new Set(whatIf.outcome.spared.map(({ surface }) => surface)), [whatIf]);
  return (
    <>
      <InstantTwin picture={sight.picture} />
      <svg class="overlay" width={sight.width} height={sight.height} aria-hidden="true" focusable="false">
        {layers.heat && <HandHeat sight={sight} trace={trace} />}
        {layers.zones && <ZoneLayer sight={sight} />}
        {layers.paths && <HandPaths sight={sight} trace={trace} step={Math.min(step, head.playable)} />}
      </svg>
      {layers.chain && links.length > 0 && <ChainOverlay sight={sight} links={links} step={step} furniture={furniture} spared={spared} onLink={onLink} />}
    </>
  );
}

/** How far the recording has been played again, while that goes on. */
function Replaying({ debrief: { head, source, fault } }: Pick<RoomViewProps, 'debrief'>) {
  const waiting = usePlayHead(head, (now) => now.waiting);
  const share = source?.share ?? 0;
  if (fault !== null || share >= 1) return null;
  return (
    <p class="room-waiting">
      <span>
        {waiting ? 'This instant is still to come: the recording is being played again' : 'The recording is being played again'}, up to {momentText(Math.max(0, head.playable))}.
      </span>
      <progress max={1} value={share} aria-label="Played again" />
    </p>
  );
}

/** Mounts the stage, draws in it and tells what overlays need. */
function useStage({ debrief: { head, source, log, revision }, mountStage, layers, links, onStage, whatIf }: RoomViewProps) {
  const trace = source?.trace ?? null;
  const part = useMemo(() => partOf(links, log?.scenario ?? null), [links, log?.scenario]);
  const host = useRef<HTMLDivElement>(null);
  const frames = useRef<RoomFrames | null>(null);
  const traceNow = useRef(trace);
  traceNow.current = trace;
  const change = useMemo(() => (whatIf && log ? whatIfMarks(whatIf.outcome, (surface) => indexOf(log).surfaces.get(surface)?.initial ?? 'sterile') : null), [whatIf, log]);
  const changeNow = useRef(change);
  changeNow.current = change;
  const [stage, setStage] = useState<StagePort | null>(null);
  const [sight, setSight] = useState<RoomSight | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const named = !layers.chain && !layers.zones;
  useEffect(() => {
    let gone = false;
    let stop = (): void => {};
    mountStage(host.current!, true).then(
      (mounted) => {
        if (gone) return mounted.destroy();
        const pictureAt = (step: number) => pictureNow(traceNow.current, changeNow.current, step);
        const loop = new RoomFrames(mounted, host.current!, head, pictureAt, setSight, named);
        const sizes = new ResizeObserver(() => loop.nudge());
        sizes.observe(host.current!);
        frames.current = loop;
        stop = () => {
          sizes.disconnect();
          loop.stop();
          mounted.destroy();
        };
        const nudged = nudging(mounted, loop);
        setStage(nudged);
        onStage(nudged);
      },
      () => setTrouble('The room cannot be drawn in this browser. A current version of any common browser will do.'),
    );
    return () => {
      gone = true;
      stop();
    };
  }, [mountStage, head]);
  useEffect(() => {
    if (frames.current) frames.current.named = named;
    frames.current?.nudge();
  }, [revision, named, stage, change]);
  const drawn = sight !== null;
  useEffect(() => {
    if (stage && drawn) stage.fit(part);
  }, [stage, drawn, part]);
  return { host, stage, sight, trouble };
}

function pictureNow(trace: TraceView | null, change: ((picture: RoomPicture) => RoomPicture) | null, step: number): RoomPicture | null {
  if (trace === null || trace.lastStep < 0) return null;
  const picture = trace.pictureAt(step);
  return change ? change(picture) : picture;
}

/** The same stage; whatever moves its camera also has it drawn. */
function nudging(stage: StagePort, frames: RoomFrames): StagePort {
  return {
    ...stage,
    zoom: (factor, x, y) => {
      stage.zoom(factor, x, y);
      frames.nudge();
    },
    pan: (dx, dy) => {
      stage.pan(dx, dy);
      frames.nudge();
    },
    fit: (framing) => {
      stage.fit(framing);
      frames.nudge();
    },
  };
}

/** Boxes of legend and buttons over the room, which words in the room must not lie under. */
function useFurniture(outer: { readonly current: HTMLElement | null }, sight: RoomSight | null): readonly Box[] {
  const [boxes, setBoxes] = useState<readonly Box[]>([]);
  useEffect(() => {
    const element = outer.current!;
    const origin = element.getBoundingClientRect();
    setBoxes([...element.querySelectorAll('.legend, .zoom-buttons, .layer-toggles')].map((child) => {
      const box = child.getBoundingClientRect();
      return { x0: box.left - origin.left - 4, y0: box.top - origin.top - 4, x1: box.right - origin.left + 4, y1: box.bottom - origin.top + 4 };
    }));
  }, [sight?.width, sight?.height]);
  return boxes;
}
