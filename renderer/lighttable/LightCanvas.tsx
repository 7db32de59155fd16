// The light table in the window: the lit sheet, looked at nearer and from farther away, its pieces to be picked up.
import {
  type PointerEvent,
  useEffect,
  useLayoutEffect,
  useReducer,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import type { Backed } from '../../shared/bench/backUp.ts';
import { toScreen } from '../../shared/bench/view.ts';
import type { Point, Side } from '../../shared/geometry/space.ts';
import { apply, inverse } from '../../shared/geometry/transform.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { sheetOf } from '../../shared/job/job.ts';
import { artPictures } from '../art-pictures/windowArt.ts';
import { createBenchView } from '../bench/benchView.ts';
import { pieceAt } from '../bench/model/picking.ts';
import { picturesFinder } from '../bench/model/picturesFinder.ts';
import { seenFaces } from '../bench/model/seenFaces.ts';
import { shownPieces } from '../bench/model/shownPieces.ts';
import { readInks } from '../bench/paint/inks.ts';
import { useSheetInRoom } from '../bench/useSheetInRoom.ts';
import { app, useJob } from '../state/store.ts';
import { paintLight } from './paintLight.ts';

/** How the light table is looked at; it stays so while other stages are shown. */
export const lightView = createBenchView();

/** A hand that moves less than this, in px, has picked and not panned. */
const STILL = 3;

export function LightCanvas({
  through,
  backed,
  words,
}: {
  readonly through: number;
  readonly backed: readonly Backed[];
  /** What the canvas shows. */
  readonly words: string;
}) {
  const job = useJob();
  const room = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [lit, setLit] = useState<number | undefined>(undefined);
  const [, redraw] = useReducer((n: number) => n + 1, 0);
  const { view, window } = useSyncExternalStore(lightView.store.subscribe, lightView.store.getState);
  useSheetInRoom(room, lightView);
  const pan = useRef<{ from: Point<'screen'>; last: Point<'screen'> } | undefined>(undefined);
  const front = shownPieces(job, 1);
  const turn = turnOf(job.brief.work);
  const behind = turn === undefined ? [] : shownPieces(job, 2);

  useEffect(() => artPictures.subscribe(redraw), []);
  useEffect(() => {
    artPictures.show(
      seenFaces(job, [...shownPieces(job, 1), ...behindOf(job)], view, window, devicePixelRatio),
    );
  }, [job, view, window]);
  useEffect(() => () => artPictures.show([]), []);
  useLayoutEffect(() => {
    const paper = canvas.current?.getContext('2d');
    if (!canvas.current || !paper) return;
    canvas.current.width = window.w * devicePixelRatio;
    canvas.current.height = window.h * devicePixelRatio;
    paper.scale(devicePixelRatio, devicePixelRatio);
    const sheet = sheetOf(job.brief).size;
    const picturesOf = picturesFinder(job, artPictures);
    paintLight(
      paper,
      { sheet, turn, view, front, behind, backed, picturesOf, through, lit },
      readInks(canvas.current),
    );
  });
  useZoomByWheel(room);

  const placeOf = (event: PointerEvent): Point<'screen'> => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const under = (at: Point<'screen'>) => pieceAt(front, apply(inverse(toScreen<Side>(view)), at))?.position;
  return (
    <div
      ref={room}
      className="light-canvas"
      onPointerDown={(event) => {
        if (event.button > 1) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        pan.current = { from: placeOf(event), last: placeOf(event) };
      }}
      onPointerMove={(event) => {
        const at = placeOf(event);
        setLit(under(at));
        if (pan.current === undefined) return;
        lightView.panBy(at.x - pan.current.last.x, at.y - pan.current.last.y);
        pan.current = { ...pan.current, last: at };
      }}
      onPointerUp={(event) => {
        const at = placeOf(event);
        const from = pan.current?.from;
        pan.current = undefined;
        if (from !== undefined && Math.hypot(at.x - from.x, at.y - from.y) < STILL) {
          app.getState().takeInHand(under(at));
        }
      }}
      onPointerLeave={() => setLit(undefined)}
    >
      <canvas ref={canvas} role="img" aria-label={words} />
    </div>
  );
}

function behindOf(job: Parameters<typeof shownPieces>[0]) {
  return turnOf(job.brief.work) === undefined ? [] : shownPieces(job, 2);
}

/** The wheel looks nearer at what is under the cursor. React hears wheels passively, so that it has to be listened to here. */
function useZoomByWheel(room: React.RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = room.current;
    if (element === null) return;
    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      const { left, top } = element.getBoundingClientRect();
      const cursor = { x: event.clientX - left, y: event.clientY - top };
      lightView.zoomBy(Math.exp(-event.deltaY * 0.0016), cursor);
    };
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  }, [room]);
}
