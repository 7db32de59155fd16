// One piece in the hand at true size: turned as its reader will, by an edge, a button or a key.
import { type PointerEvent, useRef, useState } from 'react';
import type { Grip } from '../../shared/bench/turning.ts';
import { turnByEdge } from '../../shared/bench/turning.ts';
import type { ReaderTurn } from '../../shared/geometry/head.ts';
import type { Point, Rect } from '../../shared/geometry/space.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import { useActions } from '../actions/useActions.ts';
import { Button } from '../controls/Button.tsx';
import { PaintedPage } from '../sheet/canvas/PaintedPage.tsx';
import type { Pen } from '../sheet/paint/pen.ts';
import { shownPieces } from '../sheet/pieces/shownPieces.ts';
import { gripAt, gripFor } from '../sheet/turning/grips.ts';
import { TurningPaper } from '../sheet/turning/TurningPaper.tsx';
import { app, useJob } from '../state/store.ts';
import { type HeldPiece, pageInWords, pageShown, TAKEN, turnHeld } from './cardInHand.ts';
import { HandRulers } from './HandRulers.tsx';
import { nearestEdge } from './nearestEdge.ts';
import { paintCard } from './paintCard.ts';
import { usePicturesInHand } from './usePicturesInHand.ts';

/** The axis from head to foot is that of a sheet turned side to side. */
const TURNS: Readonly<Record<ReaderTurn, Turn>> = {
  'head-to-head': 'side-to-side',
  'head-to-toe': 'end-to-end',
};
const OTHER: Readonly<Record<ReaderTurn, ReaderTurn>> = {
  'head-to-head': 'head-to-toe',
  'head-to-toe': 'head-to-head',
};
const NAMES: Readonly<Record<ReaderTurn, string>> = {
  'head-to-head': 'Turn it like a page',
  'head-to-toe': 'Turn it like a calendar',
};

/** Room around the piece for the rulers, in px. */
const MARGIN_PX = 56;

interface Turning {
  readonly way: ReaderTurn;
  readonly grip: Grip;
  /** The pointer of the hand that holds it; none where it goes by itself. */
  readonly hand: number | undefined;
}

export function PieceInHand({ held, zoom }: { readonly held: HeldPiece; readonly zoom: number }) {
  const job = useJob();
  const room = useRef<HTMLDivElement>(null);
  const [hold, setHold] = useState(TAKEN);
  const [turning, setTurning] = useState<Turning | undefined>(undefined);
  const picturesOf = usePicturesInHand(held, zoom);
  const lying: Rect<'screen'> = { x: MARGIN_PX, y: MARGIN_PX, w: held.size.w * zoom, h: held.size.h * zoom };

  const paint = (how: typeof hold) => (pen: Pen) =>
    paintCard(pen, held, pageShown(held, how), (side) => shownPieces(job, side), picturesOf, zoom);

  const turn = (way: ReaderTurn) => {
    if (turning === undefined) setTurning({ way, grip: gripFor(TURNS[way], lying), hand: undefined });
  };
  useActions({
    'turn-sheet': { run: () => turn(held.turned), label: 'Turn the piece as its reader will' },
    'turn-sheet-wrong': { run: () => turn(OTHER[held.turned]), label: 'Turn the piece the other way' },
    'choose-none': { run: putBack, label: 'Put the piece back' },
  });
  const take = (event: PointerEvent) => {
    if (event.button !== 0 || turning !== undefined || room.current === null) return;
    const { left, top } = room.current.getBoundingClientRect();
    const at: Point<'screen'> = { x: event.clientX - left, y: event.clientY - top };
    const edge = nearestEdge(at, lying);
    if (edge === undefined) return;
    const way = turnByEdge(edge) === 'side-to-side' ? 'head-to-head' : 'head-to-toe';
    setTurning({ way, grip: gripAt(edge, at, lying), hand: event.pointerId });
  };
  const page = pageShown(held, hold);
  return (
    <div className="in-hand">
      <div className="hand-tools">
        <Button kind="main" onPress={() => turn(held.turned)}>
          {NAMES[held.turned]}
        </Button>
        <Button onPress={() => turn(OTHER[held.turned])}>{NAMES[OTHER[held.turned]]}</Button>
        <output className="seen-in-hand">
          You see {page === undefined ? 'blank paper' : pageInWords(page)}.
        </output>
        <Button onPress={putBack}>Put it back</Button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what is larger than the window is moved with the keys. */}
      <section className="hand-room" aria-label="The piece at true size" tabIndex={0}>
        <div
          ref={room}
          className="hand"
          style={{ width: lying.w + 2 * MARGIN_PX, height: lying.h + 2 * MARGIN_PX }}
          onPointerDown={take}
        >
          <HandRulers lying={lying} zoom={zoom} unit={job.brief.units} />
          <div
            className="card"
            role="img"
            aria-label={`The piece in hand: ${page === undefined ? 'blank paper' : pageInWords(page)}`}
            style={{ left: lying.x, top: lying.y, width: lying.w, height: lying.h }}
          >
            <PaintedPage size={lying} paint={paint(hold)} />
          </div>
          {turning !== undefined && (
            <TurningPaper
              lying={lying}
              grip={turning.grip}
              hand={turning.hand}
              from={0}
              paintFront={paint(hold)}
              paintBehind={paint(turnHeld(hold, turning.way))}
              onLies={(turned) => {
                setTurning(undefined);
                if (turned) setHold(turnHeld(hold, turning.way));
              }}
            />
          )}
        </div>
      </section>
    </div>
  );
}

function putBack(): void {
  app.getState().takeInHand(undefined);
}
