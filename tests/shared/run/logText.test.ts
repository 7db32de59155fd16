import { expect, it } from 'vitest';
import type { RunEvent } from '../../../shared/run/events.ts';
import { readLog, writeEntry } from '../../../shared/run/logText.ts';
import {
  delivered,
  entryOf,
  go,
  good,
  load,
  noGo,
  runIn,
  spoiled,
  supperRun,
  trimmed,
  turned,
  undo,
} from '../../kit/runs.ts';

const begun: RunEvent = { kind: 'begun', plan: supperRun };
const linesOf = (...events: readonly RunEvent[]) =>
  events.map((event, i) => writeEntry(entryOf(i + 1, event)));

it('every kind of event comes back from the log as it was written', () => {
  const events = [
    { ...begun, plan: { ...supperRun, work: { style: 'work-and-back', turn: 'end-to-end' } as const } },
    load(30),
    noGo('banding, “too dark”'),
    go,
    good(1, 20),
    spoiled(1, 1, 'skewed'),
    turned,
    good(2, 19),
    trimmed('Supper', 70, 2, 'edge torn'),
    delivered('Supper', 60),
    { kind: 'measured', ink: 12.5, minutes: 40 } as const,
    { kind: 'measured', minutes: 4 } as const,
    undo(11),
  ];
  const { book, notices } = readLog(linesOf(...events).join(''));
  expect(notices).toEqual([]);
  expect(runIn(book).entries.map(({ event }) => event)).toEqual(events);
  expect(runIn(book).entries[3]?.at).toBe('2026-03-02T09:04:00.000Z');
});

it('an entry that was cut short at any character does not count, and that is said', () => {
  const lines = linesOf(begun, load(30), go, good(1, 20));
  const whole = lines.slice(0, 3).join('');
  const last = lines[3]!;
  for (let cut = 1; cut < last.length; cut += 1) {
    const { book, notices } = readLog(whole + last.slice(0, cut));
    expect(runIn(book).sheets.side1).toBe(0);
    expect(notices).toEqual([
      'The last entry of the log was cut short, so it does not count. Look at the last count, and count again if it is missing.',
    ]);
  }
  expect(runIn(readLog(whole + last).book).sheets.side1).toBe(20);
  expect(readLog(whole).notices).toEqual([]);
});

it('a line that cannot be read, or cannot have happened, is passed over and named', () => {
  const [first, second, third, fourth] = linesOf(begun, load(3), go, good(1, 20));
  const { book, notices } = readLog(`${first}rubbish\n${second}{"id":9}\n${third}${fourth}`);
  expect(runIn(book).sheets).toMatchObject({ loaded: 3, blank: 2, done: 1 });
  expect(notices).toEqual([
    'Line 2 of the log cannot be read and does not count. Look whether a count is missing.',
    'Line 4 of the log cannot be read and does not count. Look whether a count is missing.',
    'Line 6 of the log (Pass 1: 20 good) does not count. Pass 1 cannot have had 20 sheets: of the 3 loaded, 2 are blank.',
  ]);
});

it.each([
  ['no sheets', good(1, 0)],
  ['parts of sheets', good(1, 1.5)],
  ['fewer than no sheets', load(-3)],
  ['a third pass', { kind: 'good', pass: 3, sheets: 1 }],
  ['no reason', spoiled(1, 1, '  ')],
  ['a no-go without a reason', { kind: 'proofed', go: false }],
  ['nothing measured', { kind: 'measured', ink: 0 }],
  ['no measure at all', { kind: 'measured' }],
  ['nothing delivered', { kind: 'delivered', pieces: [] }],
  ['words that mean nothing here', { kind: 'loaded', sheets: 1, colour: 'red' }],
  ['a later way of writing', { kind: 'begun', plan: { ...supperRun, schema: 2 } }],
])('an entry with %s is none', (_, event) => {
  const { notices } = readLog(linesOf(begun, event as RunEvent).join(''));
  expect(notices).toEqual([
    'Line 2 of the log cannot be read and does not count. Look whether a count is missing.',
  ]);
});

it('an empty log tells of no run', () => {
  expect(readLog('')).toEqual({ book: { runs: [], last: 0 }, notices: [] });
});
