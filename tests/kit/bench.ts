// The bench without a screen: hands that grab pieces, drag and drop them, and words for what they would see.
import { expect } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { benchHands } from '../../renderer/bench/canvas/benchHands.ts';
import { holdToDrag, holdToFrame } from '../../renderer/bench/canvas/benchHolds.ts';
import { sceneBuilder } from '../../renderer/bench/canvas/buildScene.ts';
import type { Gesture, Scene } from '../../renderer/bench/canvas/scene.ts';
import { findingsOf } from '../../renderer/bench/findings.ts';
import { nudge } from '../../renderer/bench/gesture/nudge.ts';
import type { PointerDrag } from '../../renderer/sheet/hand/followHand.ts';
import { pointOnScreen } from '../../renderer/sheet/paint/pen.ts';
import { pieceAt } from '../../renderer/sheet/pieces/picking.ts';
import { createSheetView } from '../../renderer/sheet/sheetView.ts';
import { shownJob } from '../../renderer/state/jobState.ts';
import { createAppStore } from '../../renderer/state/store.ts';
import type { Job } from '../../shared/job/job.ts';
import type { LayoutFault } from '../../shared/layout/check.ts';

/** A bench whose window shows the whole sheet of the job. Lengths are pt on the side that is looked at. */
export function standAtBench(job: Job, window = { w: 1000, h: 800 }) {
  const app = createAppStore();
  app.getState().beginJob(job);
  const viewing = createSheetView();
  const [w, h] = job.brief.sheet.size;
  viewing.measure(window, { w: w.amount * 72, h: h.amount * 72 });
  const gesture = createStore<{ readonly gesture: Gesture | undefined }>(() => ({ gesture: undefined }));
  const parts = { app, gesture };
  const build = sceneBuilder();
  const scene = (): Scene => {
    const built = build({
      app: app.getState(),
      viewed: viewing.store.getState(),
      findings: [],
      gesture: gesture.getState().gesture,
    });
    if (built === undefined) throw new Error('No job lies on this bench');
    return built;
  };
  const shown = (): Job => {
    const now = shownJob(app.getState());
    if (now === undefined) throw new Error('No job lies on this bench');
    return now;
  };
  const middleOf = (position: number) => {
    const piece = scene().pieces[position];
    if (piece === undefined) throw new Error(`No piece lies at position ${position + 1}`);
    return { x: piece.trim.x + piece.trim.w / 2, y: piece.trim.y + piece.trim.h / 2 };
  };
  const handOn = (at: { x: number; y: number }, hold: PointerDrag) => {
    const hand = {
      /** Moves on by so many pt; with `free` the key that holds snapping off is down. */
      by: (dx: number, dy: number, { free = false } = {}) => {
        at = { x: at.x + dx, y: at.y + dy };
        hold.move(pointOnScreen(scene().view, at), { altKey: free });
        return hand;
      },
      drop: () => {
        hold.end();
        return bench;
      },
      cancel: () => {
        hold.cancel();
        return bench;
      },
    };
    return hand;
  };

  const bench = {
    app,
    job: shown,
    scene,
    /** Takes the nth piece of this name by its middle. */
    grab: (name: string, nth = 1, { adding = false } = {}) => {
      const pieces = scene().pieces.filter((p) => p.piece === name);
      const piece = pieces[nth - 1];
      if (piece === undefined) throw new Error(`There is no ${nth}. "${name}" on the sheet`);
      const at = middleOf(piece.position);
      const grabbed = pieceAt(scene().pieces, at);
      if (grabbed === undefined) throw new Error('Nothing lies under the hand');
      return handOn(
        at,
        holdToDrag(pointOnScreen(scene().view, at), grabbed.position, adding, scene(), parts),
      );
    },
    /** Puts the hand on the bare table or the paper, to draw a frame around pieces. */
    press: (x: number, y: number, { adding = false } = {}) =>
      handOn({ x, y }, holdToFrame(pointOnScreen(scene().view, { x, y }), adding, scene(), parts)),
    /** Presses the main button at a place of the sheet and lets it go there, with these keys down. */
    click: (x: number, y: number, keys: object = {}) => {
      const at = pointOnScreen(scene().view, { x, y });
      const ignore = () => {};
      benchHands(scene, parts, { takeEdge: ignore, openMenu: ignore })
        .press(at, { shiftKey: false, ctrlKey: false, metaKey: false, pointerId: 1, ...keys })
        ?.end();
      return bench;
    },
    pressKey: (key: string, { shift = false } = {}) => {
      const { selection, side, perform } = app.getState();
      const command = nudge(shown(), side, selection, key, shift);
      if (command !== undefined) perform(command);
      return bench;
    },
    choose: (...positions: readonly number[]) => {
      app.getState().select(positions.map((p) => p - 1));
      return bench;
    },
    turnOver: () => {
      app.getState().showSide(app.getState().side === 1 ? 2 : 1);
      return bench;
    },
    guides: () => {
      const now = gesture.getState().gesture;
      return now?.does === 'drag' ? now.guides : [];
    },
    expectGuide: (name: string) => {
      expect(bench.guides().map((g) => g.name)).toContain(name);
      return bench;
    },
    expectNoGuides: () => {
      expect(bench.guides()).toEqual([]);
      return bench;
    },
    /** Where a position (from 1) lies on side 1, in pt. */
    expectAt: (position: number, x: number, y: number) => {
      const trim = shown().arrangement[position - 1]?.trim;
      expect([trim?.x, trim?.y]).toEqual([expect.closeTo(x, 6), expect.closeTo(y, 6)]);
      return bench;
    },
    expectChosen: (...positions: readonly number[]) => {
      expect(app.getState().selection.map((i) => i + 1)).toEqual(positions);
      return bench;
    },
    expectFaults: (...kinds: readonly LayoutFault[]) => {
      expect([...new Set(findingsOf(shown()).map((f) => f.kind))].sort()).toEqual([...kinds].sort());
      return bench;
    },
    expectUndo: (name: string | undefined) => {
      expect(app.getState().history?.past.at(-1)?.edit).toBe(name);
      return bench;
    },
  };
  return bench;
}
