// The sheet while it is turned over: in the hand that took its edge, or by itself, in the perspective of paper.
import { useEffect, useLayoutEffect, useRef } from 'react';
import { angleOfDrag, type Grip, letGo, matrixOf, poseOf, showsOther } from '../../shared/bench/turning.ts';
import type { View } from '../../shared/bench/view.ts';
import type { Point, Size } from '../../shared/geometry/space.ts';
import { handFrom, middleOnScreen } from './grips.ts';
import { type PageParts, paintPage } from './pageOfSheet.ts';
import './turning.css';

export interface TurningProps {
  readonly view: View;
  readonly sheet: Size;
  readonly grip: Grip;
  /** Whether a hand holds it; else it goes by itself. */
  readonly byHand: boolean;
  /** From which angle it starts when it goes by itself, in degrees: 0, or 180 when it is turned back. */
  readonly from: 0 | 180;
  readonly front: PageParts;
  readonly behind: PageParts;
  /** It has come to lie: turned over, or as it was. */
  readonly onLies: (turned: boolean) => void;
}

/** How long the sheet takes to turn by itself over half a circle, in ms. */
const HALF_ROUND = 620;
/** How far the eye is, in lengths of the sheet. */
const EYE = 2.4;

const wantsStillness = () => matchMedia('(prefers-reduced-motion: reduce)').matches;

export function TurningSheet({ view, sheet, grip, byHand, from, front, behind, onLies }: TurningProps) {
  const room = useRef<HTMLDivElement>(null);
  const frontPage = useRef<HTMLCanvasElement>(null);
  const behindPage = useRef<HTMLCanvasElement>(null);
  const angleNow = useRef<number>(from);
  const eye = EYE * Math.max(sheet.w, sheet.h) * view.zoom;
  const middle = middleOnScreen(view, sheet);
  const [w, h] = [sheet.w * view.zoom, sheet.h * view.zoom];

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
    if (frontPage.current !== null) paintPage(frontPage.current, front, view.zoom, devicePixelRatio);
    if (behindPage.current !== null) paintPage(behindPage.current, behind, view.zoom, devicePixelRatio);
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
        show(angleOfDrag(grip.grabbed, handFrom(placeOf(event), grip, view, sheet)));
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

  const place = { left: middle.x - w / 2, top: middle.y - h / 2, width: w, height: h };
  return (
    <div className="turning" ref={room} aria-hidden="true">
      <div className="where-it-lay" style={place} />
      <canvas ref={behindPage} className="page" style={place} />
      <canvas ref={frontPage} className="page" style={place} />
    </div>
  );
}

/** Lets the sheet fall from an angle to one side; at once for those who want no motion. */
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
