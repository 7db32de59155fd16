// A hand that has pressed is followed until it lets go, is cancelled or Escape is pressed; then nothing listens any more.
import type { Point } from '../../../shared/geometry/space.ts';

/** What a pressed hand does: moved on, let go, or taken back as if it had never pressed. */
export interface PointerDrag {
  readonly move: (at: Point<'screen'>, keys: { readonly altKey: boolean }) => void;
  readonly end: () => void;
  readonly cancel: () => void;
}

export interface Followed {
  /** The pointer that pressed; others are not listened to. */
  readonly pointerId: number;
  readonly hold: PointerDrag;
  readonly placeOf: (event: PointerEvent) => Point<'screen'>;
  /** Told once, when the hand is free again, whatever freed it. */
  readonly onFree?: () => void;
}

/** Follows the hand, at most one move a frame. The returned function cancels what is still held. */
export function followHand(
  { pointerId, hold, placeOf, onFree }: Followed,
  listenOn: EventTarget = window,
  nextFrame: (work: () => void) => void = requestAnimationFrame,
): () => void {
  const listening = new AbortController();
  let pending: PointerEvent | undefined;
  const flush = () => {
    const event = pending;
    pending = undefined;
    if (event !== undefined) hold.move(placeOf(event), event);
  };
  const leave = (how: 'end' | 'cancel') => {
    if (listening.signal.aborted) return;
    listening.abort();
    if (how === 'end') flush();
    pending = undefined;
    hold[how]();
    onFree?.();
  };
  const on = (type: string, hear: (event: PointerEvent) => void) =>
    listenOn.addEventListener(
      type,
      (event) => {
        if ((event as PointerEvent).pointerId === pointerId) hear(event as PointerEvent);
      },
      { signal: listening.signal },
    );
  on('pointermove', (event) => {
    if (pending === undefined) nextFrame(flush);
    pending = event;
  });
  on('pointerup', () => leave('end'));
  on('pointercancel', () => leave('cancel'));
  listenOn.addEventListener(
    'keydown',
    (event) => {
      if ((event as KeyboardEvent).key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      leave('cancel');
    },
    { signal: listening.signal, capture: true },
  );
  return () => leave('cancel');
}
