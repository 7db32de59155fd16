// Reading a brief that a person or another program wrote: every field checked, every complaint naming its field.
import { ok, type Result, refuse } from '../fault/result.ts';
import { turnOf, type Work } from '../geometry/work.ts';
import { lengthOf, points } from '../units/length.ts';
import type { Brief, Face, Piece } from './brief.ts';
import { type WrittenBrief, type WrittenFace, type WrittenPiece, writtenBrief } from './briefSchema.ts';
import { complain, fieldFault } from './fieldFaults.ts';
import { USUAL_FILE_NAMES } from './fileNames.ts';
import { type FieldFault, LengthReader } from './lengthReader.ts';
import { oneFormFaults } from './oneForm.ts';

/**
 * Reads a brief from parsed JSON. Lengths keep the unit they were typed in. A refusal (`brief-invalid`) names each
 * field that is wrong; `where` is the first of them.
 */
export function readBrief(json: unknown): Result<Brief> {
  const read = readBriefFields(json);
  return read.ok ? read : refuse(complain('brief-invalid', 'brief', read.fault));
}

/** Reads a brief as `readBrief` does; a refusal holds every complaint with its field, for a form that shows them there. */
export function readBriefFields(json: unknown): Result<Brief, readonly FieldFault[]> {
  const shape = writtenBrief.safeParse(json);
  if (!shape.success) return refuse(shape.error.issues.map(fieldFault));
  const written = shape.data;
  const reader = new LengthReader(written.units);
  const brief = build(written, reader);
  const faults = [...reader.faults, ...contradictions(written, brief)];
  return faults.length > 0 ? refuse(faults) : ok(brief);
}

function build(written: WrittenBrief, reader: LengthReader): Brief {
  const pieces = written.pieces.map((p, i) => buildPiece(p, `pieces[${i}]`, reader));
  const unprintable = written.sheet.unprintable;
  const size = reader.size(written.sheet.size, 'sheet.size');
  const margin = (edge: keyof typeof unprintable) =>
    reader.length(unprintable[edge], `sheet.unprintable.${edge}`, 'margin');
  return {
    units: written.units,
    title: written.title,
    sheet: {
      size: leadFirst(size, written.lead),
      unprintable: {
        lead: margin('lead'),
        tail: margin('tail'),
        left: margin('left'),
        right: margin('right'),
      },
      hold: written.sheet.hold,
      sidesAlike: written.sheet.sidesAlike,
    },
    work: workOf(written),
    gutter:
      written.gutter === undefined ? usualGutter(pieces) : reader.length(written.gutter, 'gutter', 'margin'),
    centring: written.centring,
    marks: written.marks,
    overs: written.overs,
    fileNames: written.fileNames ?? USUAL_FILE_NAMES,
    pieces,
    ...(written.plan === undefined ? {} : { plan: written.plan }),
  };
}

function buildPiece(written: WrittenPiece, field: string, reader: LengthReader): Piece {
  const bleed = reader.length(written.bleed, `${field}.bleed`, 'margin');
  return {
    name: written.name,
    trim: reader.size(written.trim, `${field}.trim`),
    bleed,
    safe: written.safe === undefined ? bleed : reader.length(written.safe, `${field}.safe`, 'margin'),
    turned: written.turned,
    lies: written.lies,
    quantity: written.quantity,
    front: buildFace(written.front, `${field}.front`, reader),
    ...(written.back === undefined ? {} : { back: buildFace(written.back, `${field}.back`, reader) }),
  };
}

function buildFace(written: WrittenFace, field: string, reader: LengthReader): Face {
  const { file, page, rotate, trimAt } = written;
  if (trimAt === undefined) return { file, page, rotate };
  return { file, page, rotate, trimAt: reader.size(trimAt, `${field}.trimAt`, 'position') };
}

/** The written style and turn as one value; a two-form style that does not say is turned side to side. */
function workOf(written: WrittenBrief): Work {
  if (written.work === 'work-and-back' || written.work === 'perfecting') {
    return { style: written.work, turn: written.turn ?? 'side-to-side' };
  }
  return { style: written.work };
}

/** The sheet's size with the wanted edge across the feed. */
function leadFirst(size: Brief['sheet']['size'], lead: WrittenBrief['lead']): Brief['sheet']['size'] {
  const [across, along] = size;
  const asWished =
    lead === 'as-given' ||
    (lead === 'short') === points(across) <= points(along) ||
    points(across) === points(along);
  return asWished ? size : [along, across];
}

/** Room for two whole bleeds between neighbours. */
function usualGutter(pieces: readonly Piece[]): Brief['gutter'] {
  const widest = pieces.map((p) => p.bleed).reduce((a, b) => (points(a) >= points(b) ? a : b));
  return lengthOf(widest.amount * 2, widest.unit);
}

/** What is right field by field but wrong together. */
function contradictions(written: WrittenBrief, brief: Brief): readonly FieldFault[] {
  const faults: FieldFault[] = [];
  const turn = turnOf(brief.work);
  if (written.turn !== undefined && written.turn !== turn) {
    faults.push({
      field: 'turn',
      says: turn === undefined ? 'simplex is not turned' : `${brief.work.style} is always turned ${turn}`,
    });
  }
  faults.push(...oneFormFaults(brief));
  const names = brief.pieces.map((p) => p.name);
  names.forEach((name, i) => {
    if (names.indexOf(name) < i)
      faults.push({ field: `pieces[${i}].name`, says: `"${name}" is the name of another piece` });
  });
  return faults;
}
