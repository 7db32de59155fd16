// Paper while it is turned over: in the hand that took its edge, or by itself, in the perspective of paper.
import { useEffect, useLayoutEffect, useRef } from 'react';
import { angleOfDrag, type Grip, letGo, matrixOf, poseOf, showsOther } from '../../shared/bench/turning.ts';
import type { Point, Rect } from '../../shared/geometry/space.ts';
import { handFrom } from './grips.ts';
import './turning.css';

export interface TurningProps {
  /** Where the paper lies in its room, in px. */
  readonly lying: Rect<'screen'>;
  readonly grip: Grip;
  /** Whether a hand holds it; else it goes by itself. */
  readonly byHand: boolean;
  /** From which angle it starts when it goes by itself, in degrees: 0, or 180 when it is turned back. */
  readonly from: 0 | 180;
  /** Paints the page that lies up, and the one behind it as it will come out. */
  readonly paintFront: (page: HTMLCanvasElement) => void;
  readonly paintBehind: (page: HTMLCanvasElement) => void;
  /** It has come to lie: turned over, or as it was. */
  readonly onLies: (turned: boolean) => void;
}

/** How long paper takes to turn by itself over half a circle, in ms. */
const HALF_ROUND = 620;
/** How far the eye is, in lengths of the paper. */
const EYE = 2.4;

const wantsStillness = () => matchMedia('(prefers-reduced-motion: reduce)').matches;

export function TurningPaper(props: TurningProps) {
  const { lying, grip, byHand, from, paintFront, paintBehind, onLies } = props;
  const room = useRef<HTMLDivElement>(null);
  const frontPage = useRef<HTMLCanvasElement>(null);
  const behindPage = useRef<HTMLCanvasElement>(null);
  const angleNow = useRef<number>(from);
  const eye = EYE * Math.max(lying.w, lying.h);

  const show = (angle: number) => {
    angleNow.current = angle;
    const seen = wantsStillness() ? (showsOther(angle) ? 180 : 0) : angle;
    const turn = (page: HTMLCanvasElement | null, which: 'front' | 'behind') => {
      if (page === null) return;
      page.style.transform = `matrix3d(${matrixOf(poseOf(which, seen, grip, eye)).join(',')})`;
      page.style.visibility = showsOther(seen) === (which === 'behind') ? 'visible' : 'hidden';
    };
    turn(frontPage.current, 'front');
    turn(behindPage.current, 'behind');
  };

  useLayoutEffect(() => {
    if (frontPage.current !== null) paintFront(frontPage.current);
    if (behindPage.current !== null) paintBehind(behindPage.current);
    show(angleNow.current);
  });

  // biome-ignore lint/correctness/useExhaustiveDependencies: one turning is one effect, from taking to lying.
  useEffect(() => {
    const run = new AbortController();
    const fall = (angle: number, to: 0 | 180) =>
      fallTo(angle, to, show, () => onLies(to === 180), run.signal);
    if (!byHand) {
      fall(from, from === 0 ? 180 : 0);
      return () => run.abort();
    }
    const placeOf = (event: PointerEvent): Point<'screen'> => {
      const { left, top } = room.current?.getBoundingClientRect() ?? { left: 0, top: 0 };
      return { x: event.clientX - left, y: event.clientY - top };
    };
    const listen = { signal: run.signal };
    const release = () => fall(angleNow.current, letGo(angleNow.current) === 'turns over' ? 180 : 0);
    addEventListener(
      'pointermove',
      (event) => {
        show(angleOfDrag(grip.grabbed, handFrom(placeOf(event), grip, lying)));
      },
      listen,
    );
    addEventListener('pointerup', release, { ...listen, once: true });
    addEventListener('pointercancel', () => fall(angleNow.current, 0), { ...listen, once: true });
    addEventListener(
      'keydown',
      (event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        fall(angleNow.current, 0);
      },
      { ...listen, capture: true },
    );
    return () => run.abort();
  }, []);

  const place = { left: lying.x, top: lying.y, width: lying.w, height: lying.h };
  return (
    <div className="paper-turning" ref={room} aria-hidden="true">
      <div className="where-it-lay" style={place} />
      <canvas ref={behindPage} className="page" style={place} />
      <canvas ref={frontPage} className="page" style={place} />
    </div>
  );
}

/** Lets the paper fall from an angle to one side; at once for those who want no motion. */
function fallTo(
  from: number,
  to: 0 | 180,
  show: (angle: number) => void,
  done: () => void,
  signal: AbortSignal,
): void {
  const time = wantsStillness() ? 0 : (HALF_ROUND * Math.abs(to - from)) / 180;
  const begun = performance.now();
  const step = (now: number) => {
    if (signal.aborted) return;
    const share = time === 0 ? 1 : Math.min(1, Math.max(0, (now - begun) / time));
    show(from + (to - from) * (1 - (1 - share) ** 2));
    if (share < 1) requestAnimationFrame(step);
    else done();
  };
  requestAnimationFrame(step);
}
