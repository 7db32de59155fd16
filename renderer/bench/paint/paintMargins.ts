// Drawing the margins on the registering edges: their lengths, with an equal sign where they are equal.
import { mirroredAxis } from '../../../shared/bench/axis.ts';
import type { View } from '../../../shared/bench/view.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { registerMargins } from '../../../shared/layout/registerMargins.ts';
import { showLength } from '../../../shared/units/show.ts';
import { ON_PAPER } from '../../sheet/paint/inks.ts';
import { onScreen, type Pen } from '../../sheet/paint/pen.ts';
import type { ShownPiece } from '../../sheet/pieces/shownPieces.ts';
import { paintLength } from './paintGuides.ts';

/** Told beside the block on the side that is looked at; nothing where no piece lies. */
export function paintMargins(
  pen: Pen,
  pieces: readonly ShownPiece[],
  job: Job,
  turn: Turn,
  view: View,
): void {
  const { size } = sheetOf(job.brief);
  const found = registerMargins(
    pieces.map((p) => p.trim as Rect<'side1'>),
    turn,
    size,
  );
  if (found === undefined) return;
  const { block, margins, equal } = found;
  const axis = mirroredAxis(turn);
  const whole = axis === 'x' ? size.w : size.h;
  const [low, high] = axis === 'x' ? margins : [margins[1], margins[0]];
  const seen = onScreen(view, block);
  const across = axis === 'x' ? seen.y + seen.h / 2 : seen.x + seen.w / 2;
  const colours = { plate: equal ? ON_PAPER.dark : ON_PAPER.bad, ink: '#fff' };
  const say = (length: number) => `${equal ? '=' : '\u2260'} ${showLength(length, job.brief.units)}`;
  paintLength(pen, axis, { from: 0, to: low }, across, say(low), view, colours);
  paintLength(pen, axis, { from: whole - high, to: whole }, across, say(high), view, colours);
}
