// Where one more of a piece is put on the sheet before the person drags it to its place.
import { lying } from '../../../shared/geometry/head.ts';
import { hasOneForm } from '../../../shared/geometry/work.ts';
import type { Piece } from '../../../shared/job/brief.ts';
import type { Command } from '../../../shared/job/commands.ts';
import { type Job, sheetOf, trimOf } from '../../../shared/job/job.ts';
import { points } from '../../../shared/units/length.ts';

/**
 * The edit that puts one more of a piece on the sheet: in its middle, or, where its partner comes with it, half a
 * gutter beside the axis of the turn. It lies upright unless it fits only on its side.
 */
export function newPlace(job: Job, piece: Piece): Command {
  const { size } = sheetOf(job.brief);
  const trim = trimOf(piece);
  const head = piece.lies === 'on-its-side' || trim.w > size.w || trim.h > size.h ? 90 : 0;
  const { w, h } = lying(trim, head);
  const half = points(job.brief.gutter) / 2;
  const middle = { x: (size.w - w) / 2, y: (size.h - h) / 2 };
  const { style } = job.brief.work;
  const place = !hasOneForm(job.brief.work)
    ? middle
    : style === 'work-and-turn'
      ? { ...middle, x: size.w / 2 - half - w }
      : { ...middle, y: size.h / 2 + half };
  return { do: 'add', piece: piece.name, face: 'front', head, ...place };
}
