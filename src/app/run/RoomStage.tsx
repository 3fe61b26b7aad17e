import { useEffect, useRef, useState } from 'preact/hooks';
import type { PageOrder } from '../input/KeyboardDriver.ts';
import { RoomInput } from '../input/RoomInput.ts';
import type { RoomView } from '../input/RoomView.ts';
import type { LiveRun } from './LiveRun.ts';
import { PlaceOnPage } from './PlaceOnPage.ts';
import { RoomLoop } from './RoomLoop.ts';
import type { MountStage, StagePort } from './stagePort.ts';

interface RoomStageProps {
  readonly live: LiveRun;
  readonly mountStage: MountStage;
  readonly onOrder: (order: PageOrder) => void;
  readonly onFocus: (inRoom: boolean) => void;
  readonly onReady: (stage: StagePort, room: HTMLElement) => void;
}

/** The drawn room: mounts the stage, joins the controls to it and keeps it running. */
export function RoomStage({ live, mountStage, onOrder, onFocus, onReady }: RoomStageProps) {
  const room = useRef<HTMLDivElement>(null);
  const order = useRef(onOrder);
  order.current = onOrder;
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    const element = room.current!;
    let stop = (): void => {};
    let gone = false;
    mountStage(element, live.coaching === 'shown').then(
      (stage) => {
        if (gone) stage.destroy();
        else {
          stop = run(element, stage, live, (given) => order.current(given));
          onReady(stage, element);
        }
      },
      () => setTrouble('The room cannot be drawn in this browser. A current version of any common browser will do.'),
    );
    return () => {
      gone = true;
      stop();
    };
  }, [live, mountStage]);
  return (
    <div
      ref={room}
      class="room"
      tabIndex={0}
      role="application"
      aria-label="Room. Keys move the hands; F1 lists them; Escape leads to the panel."
      onFocus={() => onFocus(true)}
      onBlur={() => onFocus(false)}
    >
      {trouble && <p class="room-trouble">{trouble}</p>}
    </div>
  );
}

/** Starts input and frames; gives back what ends them. */
function run(room: HTMLElement, stage: StagePort, live: LiveRun, onOrder: (order: PageOrder) => void): () => void {
  const place = new PlaceOnPage(room);
  const input = new RoomInput(room, live.hands, viewOf(place, stage, live), onOrder);
  const loop = new RoomLoop(live, stage, input, place);
  loop.start();
  room.focus({ preventScroll: true });
  return () => {
    loop.stop();
    input.dispose();
    place.dispose();
    stage.destroy();
  };
}

function viewOf(place: PlaceOnPage, stage: StagePort, live: LiveRun): RoomView {
  const inRoom = (clientX: number, clientY: number): readonly [number, number] => {
    const { x, y } = place.inside(clientX, clientY);
    return [x, y];
  };
  return {
    toRoom: (clientX, clientY) => stage.screenToRoom(...inRoom(clientX, clientY)),
    handAt: (side) => live.current.hands[side],
    inRealTime: () => !live.held,
    zoom: (factor, clientX, clientY) => stage.zoom(factor, ...inRoom(clientX, clientY)),
    pan: (dx, dy) => stage.pan(dx, dy),
  };
}
