// What hands begin on the bench: selecting, dragging, framing, taking an edge of the sheet, asking for the menu.
import { toScreen } from '../../../shared/bench/view.ts';
import type { SheetEdge } from '../../../shared/geometry/sheet.ts';
import type { Point, Side } from '../../../shared/geometry/space.ts';
import { apply, inverse } from '../../../shared/geometry/transform.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { sheetOf } from '../../../shared/job/job.ts';
import type { SheetHands } from '../../sheet/hand/sheetHands.ts';
import { edgeAt, pieceAt } from '../../sheet/pieces/picking.ts';
import { type BenchStores, holdToDrag, holdToFrame } from './benchHolds.ts';
import type { Scene } from './scene.ts';

/** What the bench hands on. */
export interface BenchCalls {
  readonly takeEdge: (edge: SheetEdge, at: Point<'screen'>, pointerId: number) => void;
  readonly openMenu: (at: Point<'screen'>) => void;
}

/** How near in px a hand comes to an edge of the sheet before it takes it. */
const EDGE_REACH_PX = 18;

/** `sceneNow` gives what is shown at the moment that a hand does something. */
export function benchHands(sceneNow: () => Scene, stores: BenchStores, calls: BenchCalls): SheetHands {
  const { app } = stores;
  const onSheet = (scene: Scene, at: Point<'screen'>) => apply(inverse(toScreen<Side>(scene.view)), at);
  const pieceUnder = (scene: Scene, at: Point<'screen'>) => pieceAt(scene.pieces, onSheet(scene, at));
  const edgeUnder = (scene: Scene, at: Point<'screen'>) =>
    turnOf(scene.job.brief.work) === undefined
      ? undefined
      : edgeAt(sheetOf(scene.job.brief).size, onSheet(scene, at), EDGE_REACH_PX / scene.view.zoom);
  return {
    press: (at, event) => {
      const scene = sceneNow();
      const adds = event.shiftKey || event.ctrlKey || event.metaKey;
      const piece = pieceUnder(scene, at);
      if (piece !== undefined) return holdToDrag(at, piece.position, adds, scene, stores);
      const edge = edgeUnder(scene, at);
      if (edge === undefined) return holdToFrame(at, adds, scene, stores);
      calls.takeEdge(edge, at, event.pointerId);
      return undefined;
    },
    hover: (at) => {
      if (at === undefined) return 'default';
      const scene = sceneNow();
      if (pieceUnder(scene, at) !== undefined) return 'move';
      return edgeUnder(scene, at) === undefined ? 'default' : 'grab';
    },
    openMenu: (at) => {
      const scene = sceneNow();
      const piece = pieceUnder(scene, at);
      if (piece !== undefined && !scene.chosen.has(piece.position)) app.getState().select([piece.position]);
      calls.openMenu(at);
    },
  };
}
