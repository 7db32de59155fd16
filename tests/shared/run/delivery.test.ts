import { describe, expect, it } from 'vitest';
import { againstOrder, deliveryOf } from '../../../shared/run/delivery.ts';
import { deliveriesOf, slipOf } from '../../../shared/run/slip.ts';
import { delivered, go, good, load, runOf, supperRun, trimmed, turned, undo } from '../../kit/runs.ts';

const printed = [load(30), go, good(1, 27), turned, good(2, 27)];

describe('the good pieces against the order', () => {
  it('are what the knife gave, less what was delivered', () => {
    const run = runOf(supperRun, ...printed, trimmed('Supper', 70, 2, 'torn'), delivered('Supper', 50));
    expect(deliveryOf(run)).toEqual([
      {
        piece: 'Supper',
        wanted: 108,
        printed: 112,
        spoiled: 2,
        good: 70,
        delivered: 50,
        inHouse: 20,
        due: 20,
      },
    ]);
  });

  it('are due only as far as they were ordered', () => {
    const all = runOf(supperRun, ...printed, trimmed('Supper', 112));
    expect(deliveryOf(all)[0]).toMatchObject({ inHouse: 112, due: 108 });
    const more = runOf(supperRun, ...printed, trimmed('Supper', 112), delivered('Supper', 110));
    expect(deliveryOf(more)[0]).toMatchObject({ delivered: 110, inHouse: 2, due: 0 });
  });

  it('are as ordered, short, or over', () => {
    expect([107, 108, 109].map((n) => againstOrder(n, 108))).toEqual(['1 short', 'as ordered', '1 over']);
  });
});

describe('the slip of a delivery', () => {
  const designs = [
    { piece: 'Card', wanted: 40, perSheet: 2 },
    { piece: 'Tag', wanted: 20, perSheet: 2 },
  ];
  const both = (card: number, tag: number) => ({
    kind: 'delivered' as const,
    pieces: [
      { piece: 'Card', pieces: card },
      { piece: 'Tag', pieces: tag },
    ],
  });
  const run = runOf(
    { ...supperRun, designs },
    ...[...printed, trimmed('Card', 40), trimmed('Tag', 20)],
    delivered('Card', 30),
    both(10, 15),
    both(0, 0),
    undo(9),
    delivered('Tag', 5),
  );

  it('says what is in it and what went before, without what was taken back', () => {
    expect(deliveriesOf(run).map((d) => d.id)).toEqual([10, 11, 13]);
    const slip = slipOf(run, 10);
    expect(slip.ok && slip.value).toEqual({
      title: 'Harvest supper',
      number: 1,
      at: '2026-03-02T09:10:00.000Z',
      lines: [
        { piece: 'Card', wanted: 40, now: 10, before: 0 },
        { piece: 'Tag', wanted: 20, now: 15, before: 0 },
      ],
    });
    const last = slipOf(run, 13);
    expect(last.ok && [last.value.number, last.value.lines]).toEqual([
      3,
      [
        { piece: 'Card', wanted: 40, now: 0, before: 10 },
        { piece: 'Tag', wanted: 20, now: 5, before: 15 },
      ],
    ]);
  });

  it('is not made of a delivery that was taken back, nor of any other count', () => {
    for (const id of [9, 2, 99]) {
      const slip = slipOf(run, id);
      expect(slip.ok ? 'ok' : [slip.fault.message, slip.fault.remedy]).toEqual([
        'That delivery is not there: it was taken back.',
        'Count the delivery first, then make its slip.',
      ]);
    }
  });
});
