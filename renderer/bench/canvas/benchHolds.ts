// What a hand does on the bench: it draws a frame around pieces, or drags them.

import type { StoreApi } from 'zustand/vanilla';
import { between, toScreen } from '../../../shared/bench/view.ts';
import type { Point, Rect, Side } from '../../../shared/geometry/space.ts';
import { applyToRect, inverse } from '../../../shared/geometry/transform.ts';
import type { PointerDrag } from '../../sheet/hand/followHand.ts';
import { CLICK_SLOP_PX } from '../../sheet/hand/holdToPan.ts';
import { piecesIn } from '../../sheet/pieces/picking.ts';
import { placeInWords } from '../../sheet/pieces/placeInWords.ts';
import { ontoArrangement } from '../../sheet/pieces/shownPieces.ts';
import type { AppState } from '../../state/store.ts';
import { beginDrag, type Drag, type DragState, dragBy } from '../gesture/drag.ts';
import type { GestureStore } from './gestureState.ts';
import type { Scene } from './scene.ts';

/** How near in px a piece comes to a target before it is drawn to it. */
const SNAP_REACH_PX = 8;
/** The stores that a hand on the bench works on. */
export interface BenchStores {
  readonly app: StoreApi<AppState>;
  readonly gesture: GestureStore;
}

export function holdToFrame(
  from: Point<'screen'>,
  adds: boolean,
  scene: Scene,
  { app, gesture }: BenchStores,
): PointerDrag {
  const before = app.getState().selection;
  const choose = (positions: readonly number[]) =>
    app.getState().select(adds ? [...before, ...positions] : positions);
  if (!adds) choose([]);
  return {
    move: (at) => {
      const frame = between(from, at);
      gesture.setState({ gesture: { does: 'frame', frame } });
      choose(piecesIn(scene.pieces, applyToRect(inverse(toScreen<Side>(scene.view)), frame)));
    },
    end: () => gesture.setState({ gesture: undefined }),
    cancel: () => {
      app.getState().select(before);
      gesture.setState({ gesture: undefined });
    },
  };
}

export function holdToDrag(
  from: Point<'screen'>,
  position: number,
  adds: boolean,
  scene: Scene,
  { app, gesture }: BenchStores,
): PointerDrag {
  const { selection, select } = app.getState();
  if (adds) {
    select(selection.includes(position) ? selection.filter((i) => i !== position) : [...selection, position]);
  } else if (!selection.includes(position)) {
    select([position]);
  }
  /** A click on one of several leaves only that one selected; a drag takes them all along. */
  const only = !adds && selection.length > 1 && selection.includes(position) ? [position] : undefined;
  const chosen = app.getState().selection;
  const { units } = scene.job.brief;
  const onto = ontoArrangement(scene.job, app.getState().side);
  const seen = (box: Rect<Side>) => applyToRect(onto, box);
  let drag: Drag | undefined;
  let dragged: DragState | undefined;
  let moving: ReadonlySet<number> = new Set();
  const moveTo = (at: Point<'screen'>, free: boolean) => {
    const [dx, dy] = [(at.x - from.x) / scene.view.zoom, -(at.y - from.y) / scene.view.zoom];
    if (drag === undefined) {
      if (Math.hypot(at.x - from.x, at.y - from.y) < CLICK_SLOP_PX || !chosen.includes(position)) return;
      drag = beginDrag(scene.job, chosen, position);
      moving = new Set(drag?.moving);
    }
    if (drag === undefined) return;
    dragged = dragBy(drag, onto.a * dx, onto.d * dy, free ? 0 : SNAP_REACH_PX / scene.view.zoom);
    app.getState().preview(dragged.job);
    const guides = dragged.guides.map((g) => ({
      name: g.name,
      axis: g.axis,
      lines: g.lines.map((line) => across(onto, g.axis, line)),
      gaps: g.gaps.map((gap) => ({ from: across(onto, g.axis, gap.from), to: across(onto, g.axis, gap.to) })),
    }));
    gesture.setState({
      gesture: {
        does: 'drag',
        moving,
        guides,
        box: seen(dragged.box),
        says: placeInWords(dragged.box, units),
      },
    });
  };
  return {
    move: (at, keys) => moveTo(at, keys.altKey),
    end: () => {
      if (dragged?.command !== undefined) app.getState().commit(dragged.command);
      else if (drag !== undefined) app.getState().cancel();
      else if (only !== undefined) select(only);
      gesture.setState({ gesture: undefined });
    },
    cancel: () => {
      app.getState().cancel();
      gesture.setState({ gesture: undefined });
    },
  };
}

/** Where a line across an axis is seen. */
function across(onto: { a: number; d: number; e: number; f: number }, axis: 'x' | 'y', at: number): number {
  return axis === 'x' ? onto.a * at + onto.e : onto.d * at + onto.f;
}
