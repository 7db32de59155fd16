// The draft of a brief: what stands in the fields of the form, as it was typed, and what it would be as a written brief.
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { artOf } from '../../shared/contract/handles.ts';
import type { Settings } from '../../shared/contract/settings.ts';
import type { Head, ReaderTurn } from '../../shared/geometry/head.ts';
import type { SheetHold } from '../../shared/geometry/register.ts';
import type { SheetEdge } from '../../shared/geometry/sheet.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import { turnOf, type WorkStyle } from '../../shared/geometry/work.ts';
import type { Brief, Face, Piece } from '../../shared/job/brief.ts';
import type { JobPlan } from '../../shared/job/jobPlan.ts';
import type { Centring } from '../../shared/layout/centring.ts';
import { USUAL_OVERS } from '../../shared/layout/count.ts';
import type { Lies } from '../../shared/layout/lies.ts';
import type { Length, Unit } from '../../shared/units/length.ts';
import { numberIn } from '../controls/numberIn.ts';

export interface DraftFace {
  readonly art: ArtHandle;
  /** From 1. */
  readonly page: number;
  readonly rotate: Head;
  /** Kept from the brief that is changed; not asked for. */
  readonly trimAt?: string | undefined;
}

export interface DraftPiece {
  /** Tells pieces apart while they have no names yet. */
  readonly key: string;
  readonly name: string;
  readonly trim: string;
  readonly bleed: string;
  readonly safe: string;
  readonly turned: ReaderTurn;
  readonly lies: Lies;
  readonly quantity: string;
  readonly front: DraftFace | undefined;
  readonly back: DraftFace | undefined;
}

export interface BriefDraft {
  readonly units: Unit;
  readonly title: string;
  readonly sheet: string;
  readonly unprintable: Readonly<Record<SheetEdge, string>>;
  readonly hold: SheetHold;
  readonly sidesAlike: boolean;
  readonly style: WorkStyle;
  readonly turn: Turn;
  readonly gutter: string;
  readonly centring: Centring;
  readonly marks: boolean;
  readonly overs: { readonly percent: string; readonly least: string };
  readonly fileNames: string;
  readonly pieces: readonly DraftPiece[];
  /** The plan that was taken and the sheet it made; not asked for, and kept as long as that sheet stays. */
  readonly planned?: { readonly plan: JobPlan; readonly sheet: unknown } | undefined;
}

/**
 * What a new brief begins with in each unit.
 *
 * @source common practice, no source
 */
export const USUAL: Readonly<
  Record<Unit, { sheet: string; unprintable: string; bleed: string; safe: string }>
> = {
  in: { sheet: '11 x 17 in', unprintable: '0.2 in', bleed: '1/8 in', safe: '1/8 in' },
  mm: { sheet: '320 x 450 mm', unprintable: '5 mm', bleed: '3 mm', safe: '3 mm' },
  pt: { sheet: '792 x 1224 pt', unprintable: '14.4 pt', bleed: '9 pt', safe: '9 pt' },
};

/** An empty draft, as the person has set what is usual. */
export function emptyDraft({ units, fileNames, marks }: Settings): BriefDraft {
  const usual = USUAL[units];
  const edge = usual.unprintable;
  return {
    units,
    title: '',
    sheet: usual.sheet,
    unprintable: { lead: edge, tail: edge, left: edge, right: edge },
    hold: { across: 'left', along: 'lead' },
    sidesAlike: true,
    style: 'work-and-turn',
    turn: 'side-to-side',
    gutter: '',
    centring: { across: 'centre', along: 'centre' },
    marks,
    overs: { percent: String(USUAL_OVERS.percent), least: String(USUAL_OVERS.least) },
    fileNames,
    pieces: [],
  };
}

/** A brief as a draft, so that it can be changed. */
export function briefDraftOf(brief: Brief): BriefDraft {
  const { unprintable, hold, sidesAlike } = brief.sheet;
  const draft: BriefDraft = {
    units: brief.units,
    title: brief.title,
    sheet: sizeTyped(brief.sheet.size),
    unprintable: {
      lead: unprintable.lead.typed,
      tail: unprintable.tail.typed,
      left: unprintable.left.typed,
      right: unprintable.right.typed,
    },
    hold,
    sidesAlike,
    style: brief.work.style,
    turn: turnOf(brief.work) ?? 'side-to-side',
    gutter: brief.gutter.typed,
    centring: brief.centring,
    marks: brief.marks,
    overs: { percent: String(brief.overs.percent), least: String(brief.overs.least) },
    fileNames: brief.fileNames,
    pieces: brief.pieces.map(draftPieceOf),
  };
  const { plan } = brief;
  return plan === undefined ? draft : { ...draft, planned: { plan, sheet: writtenSheet(draft) } };
}

function draftPieceOf(piece: Piece): DraftPiece {
  return {
    key: piece.name,
    name: piece.name,
    trim: sizeTyped(piece.trim),
    bleed: piece.bleed.typed,
    safe: piece.safe.typed,
    turned: piece.turned,
    lies: piece.lies,
    quantity: String(piece.quantity),
    front: draftFaceOf(piece.front),
    back: piece.back && draftFaceOf(piece.back),
  };
}

function draftFaceOf(face: Face): DraftFace {
  const { page, rotate, trimAt } = face;
  return { art: artOf(face), page, rotate, ...(trimAt === undefined ? {} : { trimAt: sizeTyped(trimAt) }) };
}

/** A size as a person types it, the unit once where it serves both. */
export function sizeTyped([w, h]: readonly [Length, Length]): string {
  const unit = ` ${w.unit}`;
  const once = w.unit === h.unit && w.typed.endsWith(unit) && h.typed.endsWith(unit);
  return `${once ? w.typed.slice(0, -unit.length) : w.typed} x ${h.typed}`;
}

/** The draft as it would be written as a brief; what is left empty is left out. */
export function writtenBriefOf(draft: BriefDraft): unknown {
  const { units, title, style, turn, gutter, centring, marks, overs, fileNames, pieces, planned } = draft;
  const sheet = writtenSheet(draft);
  const isAsPlanned = JSON.stringify(planned?.sheet) === JSON.stringify(sheet);
  return {
    units,
    title,
    sheet,
    centring,
    marks,
    work: style,
    ...(style === 'work-and-back' || style === 'perfecting' ? { turn } : {}),
    ...(gutter.trim() === '' ? {} : { gutter }),
    overs: { percent: numberIn(overs.percent), least: numberIn(overs.least) },
    ...(fileNames.trim() === '' ? {} : { fileNames }),
    pieces: pieces.map(({ key: _, quantity, safe, front, back, ...piece }) => ({
      ...piece,
      quantity: numberIn(quantity),
      ...(safe.trim() === '' ? {} : { safe }),
      ...(front === undefined ? {} : { front: writtenFace(front) }),
      ...(back === undefined ? {} : { back: writtenFace(back) }),
    })),
    ...(isAsPlanned ? { plan: planned?.plan } : {}),
  };
}

function writtenSheet({ sheet, unprintable, hold, sidesAlike }: BriefDraft): object {
  return { size: sheet, unprintable, hold, sidesAlike };
}

function writtenFace({ art, page, rotate, trimAt }: DraftFace): unknown {
  return { file: art, page, rotate, ...(trimAt === undefined ? {} : { trimAt }) };
}
