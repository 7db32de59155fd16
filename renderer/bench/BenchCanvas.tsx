// The canvas of the bench in the window: the sheet, the hands on it, the keys, and all of it in words.
import { useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Point } from '../../shared/geometry/space.ts';
import { sheetOf } from '../../shared/job/job.ts';
import { SheetCanvas } from '../sheet/canvas/SheetCanvas.tsx';
import { onScreen } from '../sheet/paint/pen.ts';
import { usePicturesOf } from '../sheet/pieces/usePicturesOf.ts';
import { app, useApp } from '../state/store.ts';
import { benchView } from './benchView.ts';
import { BenchLayers } from './canvas/BenchLayers.tsx';
import { benchHands } from './canvas/benchHands.ts';
import { benchGesture } from './canvas/gestureState.ts';
import type { Scene } from './canvas/scene.ts';
import { benchScene, useBenchPictures } from './canvas/useBenchScene.ts';
import { useFindings } from './findings.ts';
import { benchInWords, gestureInWords } from './inWords.ts';
import { PieceMenu } from './PieceMenu.tsx';
import { pressKey } from './pressKey.ts';
import { TurnedSheet } from './TurnedSheet.tsx';
import { useSettledJob } from './useSettledJob.ts';
import type { TurningHands } from './useTurning.ts';

const stores = { app, gesture: benchGesture };

export function BenchCanvas({ hands }: { readonly hands: TurningHands }) {
  const job = useSettledJob();
  const picturesOf = usePicturesOf(job);
  const menuMark = useRef<HTMLSpanElement>(null);
  const [menuAt, setMenuAt] = useState<Point<'screen'> | undefined>(undefined);
  useBenchPictures();
  return (
    <div className="canvas-room">
      <SheetCanvas
        viewing={benchView}
        sheet={sheetOf(job.brief).size}
        hands={benchHands(benchScene, stores, { takeEdge: hands.takeEdge, openMenu: setMenuAt })}
        layers={<BenchLayers picturesOf={picturesOf} />}
        role="application"
        aria-label="The sheet on the bench"
        aria-describedby="bench-in-words"
        // The arrow keys nudge what is selected here.
        tabIndex={0}
        onKeyDown={(event) => {
          if (pressKey(event, () => setMenuAt(besideChosen(benchScene())))) event.preventDefault();
        }}
      >
        <span ref={menuMark} className="menu-mark" style={{ left: menuAt?.x ?? 0, top: menuAt?.y ?? 0 }} />
      </SheetCanvas>
      <InWords />
      <TurnedSheet hands={hands} picturesOf={picturesOf} />
      {menuAt !== undefined && menuMark.current !== null && (
        <PieceMenu at={menuMark.current} onClose={() => setMenuAt(undefined)} />
      )}
    </div>
  );
}

/** Where the menu opens for the keys: at the first selected piece, else in the middle of the window. */
function besideChosen({ pieces, chosen, window, view }: Scene): Point<'screen'> {
  const piece = pieces.find((p) => chosen.has(p.position));
  if (piece === undefined) return { x: window.w / 2, y: window.h / 2 };
  const { x, y } = onScreen(view, piece.trim);
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
        {benchInWords(job, side, chosen, faults)} Arrow keys nudge what is selected, with Shift ten times as
        far. Page Down and Page Up select the next and the previous piece.
      </p>
      <output className="unseen">{held}</output>
    </>
  );
}
