// The canvas of the bench in the window: it follows the size of its room, and takes the mouse and the keys.
import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Point } from '../../shared/geometry/space.ts';
import { artPictures } from '../art-pictures/windowArt.ts';
import { app, useApp } from '../state/store.ts';
import { benchView } from './benchView.ts';
import { benchGesture } from './canvas/gestureState.ts';
import { listenToPointer } from './canvas/pointer.ts';
import { type RunningBench, runBench } from './canvas/runBench.ts';
import { benchFindings, useFindings } from './findings.ts';
import { benchInWords, gestureInWords } from './inWords.ts';
import { PieceMenu } from './PieceMenu.tsx';
import { onScreen } from './paint/pen.ts';
import { pressKey } from './pressKey.ts';
import { TurnedSheet } from './TurnedSheet.tsx';
import { useSettledJob } from './useSettledJob.ts';
import { useSheetInRoom } from './useSheetInRoom.ts';
import type { TurningHands } from './useTurning.ts';

const parts = {
  app,
  viewing: benchView,
  findings: benchFindings,
  gesture: benchGesture,
  pictures: artPictures,
};

export function BenchCanvas({ hands }: { readonly hands: TurningHands }) {
  const room = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLDivElement>(null);
  const menuMark = useRef<HTMLSpanElement>(null);
  const bench = useRef<RunningBench | undefined>(undefined);
  const takeEdge = useRef(hands.takeEdge);
  takeEdge.current = hands.takeEdge;
  const [menuAt, setMenuAt] = useState<Point<'screen'> | undefined>(undefined);
  useSheetInRoom(room, benchView);

  useEffect(() => {
    const [into, around] = [canvas.current, room.current];
    if (into === null || around === null) return;
    const running = runBench(into, parts);
    bench.current = running;
    const stop = listenToPointer(around, running, parts, {
      takeEdge: (edge, at) => takeEdge.current(edge, at),
      openMenu: setMenuAt,
    });
    return () => {
      stop();
      running.stop();
    };
  }, []);

  return (
    <div className="canvas-room">
      <div
        ref={room}
        className="canvas"
        role="application"
        aria-label="The sheet on the bench"
        aria-describedby="bench-in-words"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the arrow keys nudge what is chosen here.
        tabIndex={0}
        onKeyDown={(event) => {
          if (pressKey(event, () => setMenuAt(besideChosen(bench.current)))) event.preventDefault();
        }}
      >
        <div ref={canvas} aria-hidden="true" />
        <span ref={menuMark} className="menu-mark" style={{ left: menuAt?.x ?? 0, top: menuAt?.y ?? 0 }} />
      </div>
      <InWords />
      <TurnedSheet hands={hands} scene={bench.current?.scene} />
      {menuAt !== undefined && menuMark.current !== null && (
        <PieceMenu at={menuMark.current} onClose={() => setMenuAt(undefined)} />
      )}
    </div>
  );
}

/** Where the menu opens for the keys: at the first chosen piece, else in the middle of the window. */
function besideChosen(bench: RunningBench | undefined): Point<'screen'> {
  const scene = bench?.scene();
  if (scene === undefined) return { x: 0, y: 0 };
  const piece = scene.pieces.find((p) => scene.chosen.has(p.position));
  if (piece === undefined) return { x: scene.window.w / 2, y: scene.window.h / 2 };
  const { x, y } = onScreen(scene.view, piece.trim);
  return { x: Math.max(30, x + 20), y: Math.max(30, y + 20) };
}

/** What the canvas shows and what holds the dragged piece, for those who hear it. */
function InWords() {
  const job = useSettledJob();
  const side = useApp((s) => s.side);
  const chosen = useApp((s) => s.selection.length);
  const faults = useFindings((all) => all.length);
  const held = useStore(benchGesture, ({ gesture }) => gestureInWords(gesture));
  return (
    <>
      <p id="bench-in-words" className="unseen">
        {benchInWords(job, side, chosen, faults)} Arrow keys nudge what is chosen, with Shift ten times as
        far. Page Down and Page Up choose the next and the previous piece.
      </p>
      <output className="unseen">{held}</output>
    </>
  );
}
