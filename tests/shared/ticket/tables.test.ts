// Tables of placements and cuts: RFC 4180, and the same numbers as the job.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnOf } from '../../../shared/geometry/work.ts';
import { formsOfJob } from '../../../shared/job/nameJobFiles.ts';
import { cuttingOf } from '../../../shared/runSheet/cuttingOf.ts';
import { writeCsv } from '../../../shared/ticket/csv.ts';
import { writeCuts, writePlacements } from '../../../shared/ticket/tables.ts';
import { POINTS_PER } from '../../../shared/units/length.ts';
import { granted } from '../../kit/granted.ts';
import { KINDS } from '../../kit/ticketJobs.ts';

/** Reads a table by the grammar of RFC 4180, a letter at a time. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      for (at += 1; text[at] !== '"' || text[at + 1] === '"'; at += 1) {
        if (text[at] === '"') at += 1;
        cell += text[at];
      }
      at += 1;
    } else {
      while (text[at] !== ',' && text[at] !== '\r') cell += text[at++];
    }
    row.push(cell);
    if (text[at] === ',') at += 1;
    else {
      expect(text.slice(at, at + 2)).toBe('\r\n');
      at += 2;
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

const job = (name: string) => KINDS.find(([kind]) => kind.startsWith(name))![1];

describe('a table', () => {
  it('is read back as it was written, whatever is in its cells', () => {
    const cell = fc.oneof(
      fc.string({ unit: fc.constantFrom('a', '"', ',', '\r', '\n', ' ', 'ß') }),
      fc.integer(),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1 }), (rows) => {
        expect(readCsv(writeCsv(['one', 'two'], rows))).toEqual([
          ['one', 'two'],
          ...rows.map((row) => row.map(String)),
        ]);
      }),
    );
  });

  it('ends its lines as RFC 4180 asks, and quotes only what has to be', () => {
    expect(
      writeCsv(
        ['a', 'b'],
        [
          ['x, y', 'say "z"'],
          [1, undefined],
        ],
      ),
    ).toBe('a,b\r\n"x, y","say ""z"""\r\n1,\r\n');
  });
});

describe('the placements', () => {
  it.each(KINDS)('are all that every form prints on every side: %s', (_name, of) => {
    const [heading, ...rows] = readCsv(writePlacements(of, (file) => `art/${file}`));
    const { units } = of.brief;
    expect(heading).toEqual([
      ...['side', 'form', 'piece', 'face'],
      ...['x', 'y', 'width', 'height'].map((of) => `${of} (${units})`),
      ...['x', 'y', 'width', 'height'].map((of) => `bleed ${of} (${units})`),
      ...['head (degrees)', 'file', 'page'],
    ]);
    const per = POINTS_PER[units];
    const wanted = formsOfJob(of)
      .flatMap((form) => form.sides.map((side) => ({ side, form })))
      .toSorted((a, b) => a.side - b.side)
      .flatMap(({ side, form }) =>
        form.placements.map((placement) => ({ side, form: form.number, ...placement })),
      );
    expect(rows).toHaveLength(wanted.length);
    wanted.forEach(({ side, form, piece, face, trim, bleed, head }, i) => {
      const row = rows[i]!;
      const art = of.brief.pieces.find((p) => p.name === piece)![face]!;
      expect([row[0], row[1], row[2], row[3], row[12], row[13], row[14]]).toEqual(
        [side, form, piece, face, head, `art/${art.file}`, art.page].map(String),
      );
      expect(bleed).toHaveLength(1);
      [trim, bleed[0]!]
        .flatMap(({ x, y, w, h }) => [x, y, w, h])
        .forEach((pt, n) => {
          expect(Number(row[4 + n]) * per).toBeCloseTo(pt, 3);
        });
    });
    expect(new Set(rows.map(([side]) => side)).size).toBe(turnOf(of.brief.work) === undefined ? 1 : 2);
  });

  it('are written in the unit that the person reads, without noise', () => {
    const [, first] = readCsv(writePlacements(job('invitations'), (file) => file));
    expect(first!.slice(0, 12)).toEqual([
      '1',
      '1',
      'Supper',
      'front',
      '0.375',
      '8.625',
      '5',
      '7',
      '0.25',
      '8.5',
      '5.25',
      '7.25',
    ]);
  });
});

describe('the cuts', () => {
  it('are a row for every stack under the knife, and free every position once', () => {
    const of = job('menus');
    const order = granted(cuttingOf(of, undefined));
    const [heading, ...rows] = readCsv(writeCuts(order, 'in'));
    expect(heading).toEqual([
      'step',
      'stack',
      'quarter turns clockwise',
      'edge at back gauge',
      'side guide',
      'edge at side guide',
      'back gauge (in)',
      'kind',
      'behind the knife',
      'before the knife',
    ]);
    expect(rows).toHaveLength(order.cuts);
    const freed = rows.flatMap((row) => row.slice(8).filter((cell) => cell.startsWith('position ')));
    expect(freed.toSorted()).toEqual(of.arrangement.map((_p, i) => `position ${i + 1}`).toSorted());
    const [first] = order.steps;
    expect(rows[0]).toEqual([
      '1',
      'A',
      '0',
      first!.gauge,
      first!.side.hand,
      first!.side.edge,
      `${first!.distance / 72}`,
      'margin',
      'stack A',
      'waste',
    ]);
  });
});
