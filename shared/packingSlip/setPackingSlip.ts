// The packing slip: a plain page that goes with the parcel and says what is in it, against the order.
import type { Size } from '../geometry/space.ts';
import { CAUTIONS } from '../job/cautions.ts';
import { oneLine } from '../marks/slug.ts';
import { below, type PageBlock } from '../pdf/document/block.ts';
import { fillPages, PAGE_MARGIN_PT } from '../pdf/document/fillPages.ts';
import { plainPaper } from '../pdf/document/plainPaper.ts';
import { type Measures, setHeading, setParagraph, setRow } from '../pdf/document/setWords.ts';
import type { Shape } from '../pdf/document/shape.ts';
import { againstOrder } from '../run/delivery.ts';
import type { Slip, SlipLine } from '../run/slip.ts';
import {
  BODY,
  furnitureOf,
  HEADING,
  NOTE,
  STRONG,
  setCautions,
  setFacts,
  TITLE,
} from '../runSheet/styles.ts';
import type { Unit } from '../units/length.ts';

interface PackingSlipInput {
  readonly slip: Slip;
  /** The trim of each design as it is to be read; a design that is not among them goes without. */
  readonly trims: Readonly<Record<string, string>>;
  /** Letter for those who read inches, else A4. */
  readonly units: Unit;
  /** The day of the delivery, as it is to be read. */
  readonly day: string;
  readonly measures: Measures;
}

/** The pages of the slip, on the paper of the office. */
export function setPackingSlip(input: PackingSlipInput): {
  readonly paper: Size;
  readonly pages: readonly (readonly Shape[])[];
} {
  const { slip, units, day, measures } = input;
  const paper = plainPaper(units);
  const width = paper.w - 2 * PAGE_MARGIN_PT;
  const title = oneLine(slip.title);
  const furniture = furnitureOf('Packing slip', title, day, width, measures);
  const head = below(
    [
      setParagraph(title, TITLE, width, measures),
      setParagraph(`Packing slip of delivery ${slip.number}, ${day}`, BODY, width, measures),
    ],
    6,
  );
  const cautions = setCautions([CAUTIONS.lift], width, measures);
  const passages = [
    { blocks: [head], gap: 0, above: 0 },
    { blocks: [setFacts(factsOf(slip), width, measures)], gap: 0, above: 12 },
    { blocks: addresses(width, measures), gap: 4, above: 14 },
    { blocks: contents(input, width), gap: 0, above: 14 },
    { blocks: signatures(width, measures), gap: 4, above: 14 },
    { blocks: [cautions], gap: 0, above: 14 },
  ];
  return { paper, pages: fillPages(paper, passages, furniture) };
}

function factsOf({ lines }: Slip) {
  const now = lines.reduce((sum, l) => sum + l.now, 0);
  const open = lines.reduce((sum, l) => sum + Math.max(0, l.wanted - l.before - l.now), 0);
  const designs = lines.filter((l) => l.now > 0).length;
  return [
    {
      label: 'In this delivery',
      figure: `${now} pieces`,
      note: designs === 1 ? 'one design' : `${designs} designs`,
    },
    {
      label: 'Still to come',
      figure: open === 0 ? 'none' : `${open} pieces`,
      note: open === 0 ? 'the order is complete' : 'the order is not complete yet',
    },
    { label: 'Parcels', figure: ' ', note: 'written in by who packs' },
  ];
}

/** High enough to write an address or a name in by hand, in pt. */
const ADDRESS_HEIGHT_PT = 62;
const LINE_HEIGHT_PT = 26;

function addresses(width: number, measures: Measures): readonly PageBlock[] {
  const half = width / 2;
  const cells = ['From', 'To'].map((w) => setParagraph(w, NOTE, half - 8, measures));
  return [
    setHeading('Sender and receiver', HEADING, width, measures),
    setRow(cells, [half, half], ADDRESS_HEIGHT_PT),
  ];
}

/** The table goes row by row, so that a long one goes on on the next page. */
function contents({ slip, trims, measures }: PackingSlipInput, width: number): readonly PageBlock[] {
  const figures = [92, 58, 70, 62, 84];
  const widths = [width - figures.reduce((a, b) => a + b, 0), ...figures];
  const row = (texts: readonly string[], style = BODY) =>
    setRow(
      texts.map((t, i) =>
        setParagraph(t, i === 3 && style === BODY ? STRONG : style, (widths[i] ?? 0) - 8, measures),
      ),
      widths,
    );
  const lineOf = ({ piece, wanted, now, before }: SlipLine) =>
    row([piece, trims[piece] ?? '', `${wanted}`, `${now}`, `${before}`, againstOrder(before + now, wanted)]);
  return [
    below([setHeading('Contents', HEADING, width, measures), { w: 0, h: 4, shapes: [] }], 0),
    row(['Piece', 'Trim', 'Ordered', 'In this delivery', 'Before', 'With it'], { ...NOTE, weight: 'strong' }),
    ...slip.lines.map(lineOf),
  ];
}

function signatures(width: number, measures: Measures): readonly PageBlock[] {
  const half = width / 2;
  const cells = ['Counted and packed by, day', 'Received by, day'].map((w) =>
    setParagraph(w, NOTE, half - 8, measures),
  );
  return [setRow(cells, [half, half], LINE_HEIGHT_PT + 14)];
}
