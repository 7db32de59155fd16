// Bleeds with steps as PDFium shows them: staggered cards in a gutter narrower than two bleeds.
import { describe, expect, it } from 'vitest';
import { type ArrangeInput, arrange } from '../../../../shared/layout/arrange.ts';
import { formsOf } from '../../../../shared/layout/forms.ts';
import { writeSheets } from '../../../../shared/pdf/sheet/writeSheets.ts';
import { drawFourColours, facesOf, sheetFont } from '../../../kit/fourColours.ts';
import { picturesOf } from '../../../kit/readBack.ts';
import { farthestOff } from '../../../kit/staggered.ts';

const MM = 72 / 25.4;
const BLEED = 3 * MM;

const cards: ArrangeInput = {
  sheet: { w: 320 * MM, h: 450 * MM },
  unprintable: { lead: 5 * MM, tail: 5 * MM, left: 5 * MM, right: 5 * MM },
  work: { style: 'work-and-back', turn: 'side-to-side' },
  gutter: 2 * MM,
  centring: { across: 'centre', along: 'centre' },
  unit: 'mm',
  designs: [
    {
      name: 'Card',
      trim: { w: 90 * MM, h: 50 * MM },
      bleed: BLEED,
      lies: 'either',
      quantity: 100,
      turned: 'head-to-head',
      hasBack: true,
    },
  ],
};

async function printed() {
  const laid = arrange(cards);
  if (!laid.ok) throw new Error(laid.fault.message);
  const { sheet, work, designs } = cards;
  const forms = formsOf(laid.value.positions, designs, work, sheet);
  const trim = designs[0]!.trim;
  const written = await writeSheets({
    sheet,
    work,
    forms: forms.map((form) => ({ form, marks: [] })),
    openFaces: await facesOf(await drawFourColours(trim, BLEED), trim, BLEED),
    font: sheetFont,
    title: 'Staggered cards',
    created: '2026-03-01T14:30:00Z',
  });
  if (!written.ok) throw new Error(written.fault.message);
  return { trims: laid.value.positions.map((p) => p.trim), files: written.value.files };
}

const isWhite = (colour: readonly number[]) => colour.every((c) => c === 255);

describe('26 staggered cards, 3 mm of bleed in a gutter of 2 mm', () => {
  it('have ink on every point within the bleed of one of them, and nowhere else, on both sides', async () => {
    const { trims, files } = await printed();
    expect(trims).toHaveLength(26);
    for (const [side, file] of files.entries()) {
      const [picture] = await picturesOf(file.bytes, 2);
      const wrong: string[] = [];
      for (let x = 0.6 * MM; x < cards.sheet.w; x += 0.7 * MM) {
        for (let y = 0.6 * MM; y < cards.sheet.h; y += 0.7 * MM) {
          // Looked at from behind, left and right change places.
          const over = side === 0 ? x : cards.sheet.w - x;
          const off = Math.min(...trims.map((trim) => farthestOff(trim, over, y)));
          if (Math.abs(off - BLEED) < 1) continue;
          if (isWhite(picture!.at(x, y)) !== off > BLEED) wrong.push(`side ${side + 1}: ${x} ${y}`);
        }
      }
      expect(wrong).toEqual([]);
    }
  });

  it('print the whole bleed where an edge faces waste beside a neighbour that faces the rest of it', async () => {
    const { trims, files } = await printed();
    const [picture] = await picturesOf(files[0]!.bytes, 3);
    const { x, y, h } = trims[12]!;
    // From the left, 27 mm of the upper edge of position 13 face a card; from 30 mm on nothing is near for 18 mm.
    for (let at = 30.5; at < 48.5; at += 0.5) {
      const above = x + at * MM;
      const nearest = Math.min(
        ...trims.flatMap((t, i) => (i === 12 ? [] : [farthestOff(t, above, y + h + 2.8 * MM)])),
      );
      expect(nearest).toBeGreaterThan(3 * MM);
      expect(isWhite(picture!.at(above, y + h + 2.8 * MM))).toBe(false);
      expect(isWhite(picture!.at(above, y + h + 3.3 * MM))).toBe(true);
    }
  });
});
