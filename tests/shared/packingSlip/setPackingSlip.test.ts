import { expect, it } from 'vitest';
import { officeFaces } from '../../../electron/ticket/officeFaces.ts';
import { setPackingSlip } from '../../../shared/packingSlip/setPackingSlip.ts';
import { writeDocument } from '../../../shared/pdf/document/writeDocument.ts';
import type { Slip } from '../../../shared/run/slip.ts';
import type { Unit } from '../../../shared/units/length.ts';
import { ask } from '../../kit/readBack.ts';

const AT = '2026-03-02T15:00:00.000Z';

const slipWith = (lines: Slip['lines']): Slip => ({ title: 'Harvest supper', number: 2, at: AT, lines });

/** The slip as a PDF. */
async function write(slip: Slip, units: Unit): Promise<Uint8Array> {
  const faces = await officeFaces();
  const { paper, pages } = setPackingSlip({
    slip,
    trims: { Card: '5 × 7 in', Tag: '2 × 3 in' },
    units,
    day: '2026-03-02',
    measures: { plain: faces.plain.measure, strong: faces.strong.measure },
  });
  return (await writeDocument({ title: slip.title, created: AT, paper, pages, faces })).bytes;
}

const textOf = (bytes: Uint8Array) => ask(bytes, 'pdftotext', '-layout', 'FILE', '-').replace(/ +/g, ' ');

it('says what is in the parcel against the order, as poppler reads it', async () => {
  const slip = slipWith([
    { piece: 'Card', wanted: 40, now: 10, before: 30 },
    { piece: 'Tag', wanted: 20, now: 5, before: 10 },
    { piece: 'Menu', wanted: 8, now: 0, before: 0 },
  ]);
  const text = textOf(await write(slip, 'in'));
  expect(text).toContain('Packing slip of delivery 2, 2026-03-02');
  expect(text).toContain('15 pieces');
  expect(text).toContain('2 designs');
  expect(text).toContain('13 pieces');
  expect(text).toContain('the order is not complete yet');
  expect(text).toContain('Card 5 × 7 in 40 10 30 as ordered');
  expect(text).toContain('Tag 2 × 3 in 20 5 10 5 short');
  expect(text).toContain('Menu 8 0 0 8 short');
  expect(text).toContain('Lifting: paper is heavy.');
});

it('says when the order is complete', async () => {
  const text = textOf(await write(slipWith([{ piece: 'Card', wanted: 40, now: 12, before: 30 }]), 'mm'));
  expect(text).toContain('the order is complete');
  expect(text).toContain('one design');
  expect(text).toContain('Card 5 × 7 in 40 12 30 2 over');
});

it('is letter for inches and A4 for millimetres, and goes on on a second page for many designs', async () => {
  const many = slipWith(
    Array.from({ length: 60 }, (_, i) => ({ piece: `Place card ${i + 1}`, wanted: 10, now: 10, before: 0 })),
  );
  const pages = ask(await write(many, 'in'), 'pdfinfo', 'FILE');
  expect(pages).toMatch(/Pages: +[23]\n/);
  expect(pages).toContain('612 x 792 pts');
  expect(textOf(await write(many, 'in'))).toContain('Place card 60 10 10 0 as ordered');
  expect(ask(await write(slipWith(many.lines.slice(0, 1)), 'mm'), 'pdfinfo', 'FILE')).toContain('(A4)');
});
