// Paper while it is turned over: in the hand that took its edge, or by itself, in the perspective of paper.
import { useEffect, useLayoutEffect, useRef } from 'react';
import {
  angleOfDrag,
  cssMatrixOf,
  type Grip,
  poseOf,
  showsOther,
  whereItFalls,
} from '../../../shared/bench/turning.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { Paint } from '../canvas/PaintedLayer.tsx';
import { PaintedPage } from '../canvas/PaintedPage.tsx';
import { followHand } from '../hand/followHand.ts';
import { handFrom } from './grips.ts';
import { wantsStillness } from './stillness.ts';
import './turning.css';

export interface TurningProps {
  /** Where the paper lies in its room, in px. */
  readonly lying: Rect<'screen'>;
  readonly grip: Grip;
  /** The pointer of the hand that holds it; without one it goes by itself. */
  readonly hand: number | undefined;
  /** From which angle it starts when it goes by itself, in degrees: 0, or 180 when it is turned back. */
  readonly from: 0 | 180;
  /** Paints the page that lies up, and the one behind it as it will come out. */
  readonly paintFront: Paint;
  readonly paintBehind: Paint;
  /** It has come to lie: turned over, or as it was. */
  readonly onLies: (turned: boolean) => void;
}

/** How long paper takes to turn by itself over half a circle. */
const HALF_TURN_MS = 620;
/** How far the eye is, in lengths of the paper. */
const EYE_DISTANCE = 2.4;

export function TurningPaper({ lying, grip, hand, from, paintFront, paintBehind, onLies }: TurningProps) {
  const room = useRef<HTMLDivElement>(null);
  const frontPage = useRef<HTMLDivElement>(null);
  const behindPage = useRef<HTMLDivElement>(null);
  const angleNow = useRef<number>(from);
  const eye = EYE_DISTANCE * Math.max(lying.w, lying.h);

  const show = (angle: number) => {
    angleNow.current = angle;
    const seen = wantsStillness() ? (showsOther(angle) ? 180 : 0) : angle;
    const turn = (page: HTMLDivElement | null, which: 'front' | 'behind') => {
      if (page === null) return;
      page.style.transform = `matrix3d(${cssMatrixOf(poseOf(which, seen, grip, eye)).join(',')})`;
      page.style.visibility = showsOther(seen) === (which === 'behind') ? 'visible' : 'hidden';
    };
    turn(frontPage.current, 'front');
    turn(behindPage.current, 'behind');
  };
  useLayoutEffect(() => show(angleNow.current));

  // biome-ignore lint/correctness/useExhaustiveDependencies: one turning is one effect, from taking to lying.
  useEffect(() => {
    const gone = new AbortController();
    const fall = (to: 0 | 180) => fallTo(angleNow.current, to, show, () => onLies(to === 180), gone.signal);
    if (hand === undefined) {
      fall(from === 0 ? 180 : 0);
      return () => gone.abort();
    }
    const letGoOf = followHand({
      pointerId: hand,
      placeOf: (event) => {
        const { left, top } = room.current?.getBoundingClientRect() ?? { left: 0, top: 0 };
        return { x: event.clientX - left, y: event.clientY - top };
      },
      hold: {
        move: (at) => show(angleOfDrag(grip.grabbed, handFrom(at, grip, lying))),
        end: () => fall(whereItFalls(angleNow.current) === 'turns over' ? 180 : 0),
        cancel: () => fall(0),
      },
    });
    return () => {
      gone.abort();
      letGoOf();
    };
  }, []);

  const place = { left: lying.x, top: lying.y, width: lying.w, height: lying.h };
  return (
    <div className="paper-turning" ref={room} aria-hidden="true">
      <div className="where-it-lay" style={place} />
      <div ref={behindPage} className="page" style={place}>
        <PaintedPage size={lying} paint={paintBehind} />
      </div>
      <div ref={frontPage} className="page" style={place}>
        <PaintedPage size={lying} paint={paintFront} />
      </div>
    </div>
  );
}

/** Lets the paper fall from an angle to one side; at once for those who want no motion. */
function fallTo(
  from: number,
  to: 0 | 180,
  show: (angle: number) => void,
  done: () => void,
  gone: AbortSignal,
): void {
  const time = wantsStillness() ? 0 : (HALF_TURN_MS * Math.abs(to - from)) / 180;
  const begun = performance.now();
  const step = (now: number) => {
    if (gone.aborted) return;
    const share = time === 0 ? 1 : Math.min(1, Math.max(0, (now - begun) / time));
    show(from + (to - from) * (1 - (1 - share) ** 2));
    if (share < 1) requestAnimationFrame(step);
    else done();
  };
  requestAnimationFrame(step);
}
