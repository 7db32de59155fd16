// The mouse, the pen or the finger on the bench: choosing, dragging, framing, panning, zooming, and taking an edge.
import { toScreen } from '../../../shared/bench/view.ts';
import type { SheetEdge } from '../../../shared/geometry/sheet.ts';
import type { Point, Side } from '../../../shared/geometry/space.ts';
import { apply, inverse } from '../../../shared/geometry/transform.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { sheetOf } from '../../../shared/job/job.ts';
import { edgeAt, pieceAt } from '../model/picking.ts';
import { type Hold, holdToDrag, holdToFrame, holdToPan } from './holds.ts';
import type { BenchParts, RunningBench } from './runBench.ts';
import type { Scene } from './scene.ts';

/** What the bench hands on: taking an edge of the sheet, and asking what can be done with a piece. */
export interface PointerCalls {
  readonly takeEdge: (edge: SheetEdge, at: Point<'screen'>) => void;
  readonly openMenu: (at: Point<'screen'>) => void;
}

/** How near in px a hand comes to an edge of the sheet before it takes it. */
const EDGE_REACH = 18;

/** Listens on the element until the returned function is called. */
export function listenToPointer(
  element: HTMLElement,
  bench: RunningBench,
  parts: BenchParts,
  calls: PointerCalls,
): () => void {
  const { app, viewing, gesture } = parts;
  let hold: Hold | undefined;
  let pending: PointerEvent | undefined;
  let spaceDown = false;

  const placeOf = (event: MouseEvent): Point<'screen'> => {
    const { left, top } = element.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const onSheet = (scene: Scene, at: Point<'screen'>) => apply(inverse(toScreen<Side>(scene.view)), at);
  const edgeUnder = (scene: Scene, at: Point<'screen'>) =>
    turnOf(scene.job.brief.work) === undefined
      ? undefined
      : edgeAt(sheetOf(scene.job.brief).size, onSheet(scene, at), EDGE_REACH / scene.view.zoom);

  const flush = () => {
    const event = pending;
    pending = undefined;
    if (event !== undefined) hold?.move(placeOf(event), event);
  };
  const letGo = (how: 'end' | 'cancel') => {
    flush();
    const ended = hold;
    hold = undefined;
    ended?.[how]();
    gesture.setState({ gesture: undefined });
  };

  const down = (event: PointerEvent) => {
    const scene = bench.scene();
    if (scene === undefined || hold !== undefined) return;
    const at = placeOf(event);
    if (event.button === 1 || (event.button === 0 && spaceDown)) {
      event.preventDefault();
      hold = holdToPan(at, viewing.panBy);
    } else if (event.button === 0) {
      const piece = pieceAt(scene.pieces, onSheet(scene, at));
      const edge = piece === undefined ? edgeUnder(scene, at) : undefined;
      if (edge !== undefined) return calls.takeEdge(edge, at);
      hold =
        piece === undefined
          ? holdToFrame(at, event.shiftKey, scene, parts)
          : holdToDrag(at, piece.position, event.shiftKey, scene, parts);
    }
    if (hold !== undefined) element.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent) => {
    if (hold !== undefined) {
      if (pending === undefined) requestAnimationFrame(flush);
      pending = event;
      return;
    }
    const scene = bench.scene();
    if (scene === undefined) return;
    const at = placeOf(event);
    const over = pieceAt(scene.pieces, onSheet(scene, at)) !== undefined;
    element.style.cursor = spaceDown ? 'grab' : over ? 'move' : edgeUnder(scene, at) ? 'grab' : 'default';
  };
  const wheel = (event: WheelEvent) => {
    event.preventDefault();
    if (hold !== undefined) return;
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    if (event.shiftKey) viewing.panBy(-(event.deltaX || event.deltaY) * lines, 0);
    else viewing.zoomBy(Math.exp(-event.deltaY * lines * 0.0016), placeOf(event));
  };
  const menu = (event: MouseEvent) => {
    event.preventDefault();
    const scene = bench.scene();
    if (scene === undefined) return;
    const at = placeOf(event);
    const piece = pieceAt(scene.pieces, onSheet(scene, at));
    if (piece !== undefined && !scene.chosen.has(piece.position)) app.getState().select([piece.position]);
    calls.openMenu(at);
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === ' ' && element.contains(document.activeElement)) {
      spaceDown = event.type === 'keydown';
      event.preventDefault();
    }
    if (event.key === 'Escape' && hold !== undefined && event.type === 'keydown') {
      event.preventDefault();
      event.stopPropagation();
      letGo('cancel');
    }
  };
  const up = () => letGo('end');
  const lost = () => letGo('cancel');

  element.addEventListener('pointerdown', down);
  element.addEventListener('pointermove', move);
  element.addEventListener('pointerup', up);
  element.addEventListener('pointercancel', lost);
  element.addEventListener('wheel', wheel, { passive: false });
  element.addEventListener('contextmenu', menu);
  addEventListener('keydown', key, { capture: true });
  addEventListener('keyup', key, { capture: true });
  return () => {
    if (hold !== undefined) letGo('cancel');
    element.removeEventListener('pointerdown', down);
    element.removeEventListener('pointermove', move);
    element.removeEventListener('pointerup', up);
    element.removeEventListener('pointercancel', lost);
    element.removeEventListener('wheel', wheel);
    element.removeEventListener('contextmenu', menu);
    removeEventListener('keydown', key, { capture: true });
    removeEventListener('keyup', key, { capture: true });
  };
}
