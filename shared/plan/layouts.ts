// The layouts of one job on many sheets, each worked out once however many printers and papers share it.
import { ok, type Result, refuse } from '../fault/result.ts';
import { liesOnItsSide } from '../geometry/head.ts';
import { usableArea } from '../geometry/sheet.ts';
import type { Size } from '../geometry/space.ts';
import { hasOneForm, turnOf, type Work } from '../geometry/work.ts';
import type { Brief, SheetBrief } from '../job/brief.ts';
import { designsOf, sheetOf } from '../job/job.ts';
import { layOutBrief } from '../job/layOutJob.ts';
import { withPlan } from '../job/takePlan.ts';
import { formsOf } from '../layout/forms.ts';
import type { Lies } from '../layout/lies.ts';
import type { Position } from '../layout/position.ts';
import { lengthOf } from '../units/length.ts';
import type { LaidCandidate, PrintedFace } from './candidate.ts';
import type { CutCounter } from './cuts.ts';
import { squareMetres } from './measures.ts';
import { bleedDoesNotFit } from './refusals.ts';

/** What a candidate takes over from its layout. */
export type Layout = Pick<LaidCandidate, 'arrangement' | 'up' | 'perSheet' | 'printed' | 'cuts' | 'notices'>;

const NOTHING = { x: 0, y: 0, w: 0, h: 0 };

/** The layouts of one brief. */
export class Layouts {
  readonly #brief: Brief;
  readonly #cuts: CutCounter;
  readonly #known = new Map<string, Result<Layout>>();

  constructor(brief: Brief, cuts: CutCounter) {
    this.#brief = brief;
    this.#cuts = cuts;
  }

  /** The most pieces on a sheet. A refusal says what does not fit: the pieces, or only their bleed. */
  lay(sheet: SheetBrief, work: Work, lies: Lies): Result<Layout> {
    const brief = this.#briefOn(sheet, work, lies);
    const { size, unprintable } = sheetOf(brief);
    const { x, y, w, h } = usableArea(size, unprintable, turnOf(work)) ?? NOTHING;
    // With two forms it is all one who turns the sheet, and how, as long as the same area can be used.
    const forms = hasOneForm(work) ? work.style : work.style === 'simplex' ? 1 : 2;
    const key = [sheetKey(size), x, y, w, h, forms, lies].join(' ');
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const laid = layOut(brief, this.#cuts);
    this.#known.set(key, laid);
    return laid;
  }

  /** Ways in which all pieces that may lie either way could lie alike, other than those in which they lie already. */
  oneWayLies({ arrangement }: Layout): readonly Lies[] {
    const free = this.#brief.pieces.filter((piece) => piece.lies === 'either').map((piece) => piece.name);
    const placed = arrangement.filter((position) => free.includes(position.piece));
    const isMixed = (lies: Lies) => placed.some((p) => liesOnItsSide(p.head) !== (lies === 'on-its-side'));
    return placed.length === 0 ? [] : (['upright', 'on-its-side'] as const).filter(isMixed);
  }

  #briefOn(sheet: SheetBrief, work: Work, lies: Lies): Brief {
    const plan = { printer: '', feed: '', paper: '', lies };
    return withPlan(this.#brief, { plan, sheet, work, overs: this.#brief.overs });
  }
}

/** A name for a size in pt, alike for sizes that no printer can tell apart. */
export function sheetKey({ w, h }: Size): string {
  return `${w.toFixed(2)} x ${h.toFixed(2)}`;
}

function layOut(brief: Brief, cuts: CutCounter): Result<Layout> {
  const arranged = layOutBrief(brief);
  if (!arranged.ok) return refuse(isOnlyTheBleed(brief) ? bleedDoesNotFit(brief) : arranged.fault);
  const { positions, notices } = arranged.value;
  const { size } = sheetOf(brief);
  return ok({
    arrangement: positions,
    up: positions.length,
    perSheet: brief.pieces.map(({ name }) => positions.filter(({ piece }) => piece === name).length),
    printed: printedOn(brief, positions),
    cuts: cuts.count(
      size,
      positions.map((p) => p.trim),
    ),
    notices,
  });
}

function isOnlyTheBleed(brief: Brief): boolean {
  const none = lengthOf(0, brief.units);
  return layOutBrief({ ...brief, pieces: brief.pieces.map((piece) => ({ ...piece, bleed: none })) }).ok;
}

/** What both passes print on one sheet, bleeds included, by face. */
function printedOn(brief: Brief, positions: readonly Position[]): readonly PrintedFace[] {
  const printed = new Map<string, PrintedFace>();
  for (const form of formsOf(positions, designsOf(brief), brief.work, sheetOf(brief).size)) {
    for (const { piece, face, bleed } of form.placements) {
      const key = `${face} ${piece}`;
      const before = printed.get(key)?.area ?? 0;
      const area = bleed.reduce((sum, rect) => sum + squareMetres(rect), 0);
      printed.set(key, { piece, face, area: before + form.sides.length * area });
    }
  }
  return [...printed.values()];
}
