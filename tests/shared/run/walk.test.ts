// A person counts at random, errs, takes back, and the power fails: no sheet is ever lost or invented.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { RunEvent } from '../../../shared/run/events.ts';
import { readLog, writeEntry } from '../../../shared/run/logText.ts';
import { addEntry } from '../../../shared/run/run.ts';
import { countSpoiled } from '../../../shared/run/sheets.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { entryOf, runIn, supperRun } from '../../kit/runs.ts';

/** Where a real sheet of paper is. Sheets are looked at one by one, as somebody who walks about the shop would. */
type Place = 'tray' | 'rack' | 'turned pile' | 'finished pile' | 'bin';

interface Shop {
  /** Everything that happened and was not taken back, with its number. */
  events: { readonly id: number; readonly event: RunEvent }[];
  numbers: number;
}

const PER_SHEET = 4;

/** Does again all that happened, with paper in hand; none where paper would be wanting. */
function paperAfter(events: Shop['events']): { sheets: Place[]; cut: number; given: number } | undefined {
  const sheets: Place[] = [];
  let [mayRun, cut, whole, given] = [false, 0, 0, 0];
  const carry = (from: Place, to: Place, count: number) => {
    for (let carried = 0; carried < count; carried += 1) {
      const sheet = sheets.indexOf(from);
      if (sheet < 0) return false;
      sheets[sheet] = to;
    }
    return true;
  };
  for (const { event } of events) {
    let possible = true;
    if (event.kind === 'loaded') sheets.push(...Array<Place>(event.sheets).fill('tray'));
    if (event.kind === 'proofed') {
      possible = carry('tray', event.go ? 'finished pile' : 'bin', 1);
      mayRun = event.go;
    }
    if (event.kind === 'good' || event.kind === 'spoiled') {
      const from = event.pass === 1 ? 'tray' : 'turned pile';
      const to = event.kind === 'spoiled' ? 'bin' : event.pass === 1 ? 'rack' : 'finished pile';
      possible = mayRun && carry(from, to, event.sheets);
    }
    if (event.kind === 'turned') {
      const onRack = sheets.filter((s) => s === 'rack').length;
      possible = onRack > 0 && carry('rack', 'turned pile', onRack);
    }
    if (event.kind === 'trimmed') {
      cut += event.good + event.spoiled;
      whole += event.good;
      possible = cut <= PER_SHEET * sheets.filter((s) => s === 'finished pile').length;
    }
    if (event.kind === 'delivered') {
      for (const { pieces } of event.pieces) given += pieces;
      possible = given <= whole;
    }
    if (!possible) return undefined;
  }
  return { sheets, cut, given };
}

/** The shop after this event, whether taken back or done; none where it cannot be. */
function shopAfter({ events }: Shop, id: number, event: RunEvent): Shop['events'] | undefined {
  const there = event.kind !== 'undone' || events.some((e) => e.id === event.of);
  if (!there) return undefined;
  const after =
    event.kind === 'undone' ? events.filter((e) => e.id !== event.of) : [...events, { id, event }];
  return paperAfter(after) === undefined ? undefined : after;
}

/** The log as it lies on the disk. */
interface Disk {
  log: string;
}

/** One event is told to the program. `cut`: how much of the line reaches the disk before the power fails, 0 to 1. */
class Tell implements fc.Command<Shop, Disk> {
  constructor(
    readonly event: (numbers: number) => RunEvent,
    readonly cut: number,
    readonly said: string,
  ) {}
  check = () => true;
  toString = () => `${this.said}${this.cut < 1 ? ` cut at ${this.cut}` : ''}`;

  run(shop: Shop, disk: Disk): void {
    const id = shop.numbers + 1;
    const entry = entryOf(id, this.event(shop.numbers));
    const after = addEntry(readLog(disk.log).book, entry);
    const expected = shopAfter(shop, id, entry.event);
    expect(after.ok, JSON.stringify(entry.event)).toBe(expected !== undefined);
    if (expected === undefined) return;
    const line = writeEntry(entry);
    const written = line.slice(0, Math.floor(line.length * this.cut));
    const whole = disk.log.slice(0, disk.log.lastIndexOf('\n') + 1);
    disk.log = whole + written;
    if (written.length === line.length) {
      shop.events = expected;
      shop.numbers = id;
    }
    look(shop, disk);
  }
}

/** The program's counts, read from the disk, against the sheets in the shop. */
function look(shop: Shop, disk: Disk): void {
  const { book, notices } = readLog(disk.log);
  const { sheets, pieces } = runIn(book);
  const paper = paperAfter(shop.events);
  if (paper === undefined) throw new Error('The shop holds what cannot be');
  const at = (place: Place) => paper.sheets.filter((s) => s === place).length;
  expect({ ...sheets, spoiled: countSpoiled(sheets), proof: undefined }).toEqual({
    loaded: paper.sheets.length,
    blank: at('tray'),
    side1: at('rack'),
    turned: at('turned pile'),
    done: at('finished pile'),
    spoiled: at('bin'),
    proof: undefined,
  });
  expect(pieces.map((p) => [p.good + p.spoiled, p.delivered])).toEqual([[paper.cut, paper.given]]);
  expect(notices.length).toBe(disk.log.endsWith('\n') ? 0 : 1);
}

const few = fc.integer({ min: 1, max: 12 });
const pass = fc.constantFrom(1 as const, 2 as const);
const reason = fc.constantFrom('askew', 'smudged');
const told = (weight: number, event: fc.Arbitrary<RunEvent>) => ({
  weight,
  arbitrary: event.map((e) => () => e),
});
const takenBack = (weight: number, reach: number) => ({
  weight,
  arbitrary: fc.nat(reach).map((back) => (numbers: number): RunEvent => {
    return { kind: 'undone', of: Math.max(2, numbers - back) };
  }),
});
/** Weighted so that most walks get as far as the knife. */
const events: fc.Arbitrary<(numbers: number) => RunEvent> = fc.oneof(
  told(
    2,
    few.map((sheets) => ({ kind: 'loaded', sheets })),
  ),
  told(2, fc.constant({ kind: 'proofed', go: true })),
  told(
    1,
    reason.map((why) => ({ kind: 'proofed', go: false, reason: why })),
  ),
  told(8, fc.record({ kind: fc.constant('good'), pass, sheets: few })),
  told(4, fc.record({ kind: fc.constant('spoiled'), pass, sheets: few, reason })),
  told(4, fc.constant({ kind: 'turned' })),
  told(
    3,
    fc.record({
      kind: fc.constant('trimmed'),
      piece: fc.constant('Supper'),
      good: few,
      spoiled: fc.integer({ min: 0, max: 2 }),
      reason,
    }),
  ),
  told(
    2,
    few.map((pieces) => ({ kind: 'delivered', pieces: [{ piece: 'Supper', pieces }] })),
  ),
  takenBack(3, 2),
  takenBack(2, 12),
);
const cuts = fc.oneof(
  { weight: 6, arbitrary: fc.constant(1) },
  { weight: 1, arbitrary: fc.double({ min: 0, max: 0.99, noNaN: true }) },
);

it('never loses or invents a sheet, whatever is counted, taken back and cut off by a crash', () => {
  const tellings = fc
    .record({ event: events, cut: cuts })
    .map(({ event, cut }) => new Tell(event, cut, JSON.stringify(event(99))));
  fc.assert(
    fc.property(fc.commands([tellings], { maxCommands: 60, size: 'max' }), (commands) => {
      const start = (
        [
          { kind: 'begun', plan: supperRun },
          { kind: 'loaded', sheets: 30 },
          { kind: 'proofed', go: true },
        ] as const
      ).map((event, i) => entryOf(i + 1, event));
      fc.modelRun(
        () => ({
          model: { events: [...start], numbers: start.length } as Shop,
          real: { log: start.map(writeEntry).join('') } as Disk,
        }),
        commands,
      );
    }),
    drawnCases(120),
  );
});
