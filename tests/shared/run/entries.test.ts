// What may stand in the log of a run and what may not, field by field, and what each event is called.
import { describe, expect, it } from 'vitest';
import { entrySchema } from '../../../shared/run/entrySchema.ts';
import { nameOfEvent, type RunEvent, USUAL_REASONS } from '../../../shared/run/events.ts';
import { plannedSupper, roundPlan } from '../../kit/plannedRuns.ts';
import {
  delivered,
  entryOf,
  go,
  good,
  load,
  noGo,
  spoiled,
  supperRun,
  trimmed,
  turned,
  undo,
} from '../../kit/runs.ts';

const begun = (plan: object): RunEvent => ({ kind: 'begun', plan: { ...plannedSupper, ...plan } });
const reckoned = (planned: object) => begun({ planned: { ...roundPlan, ...planned } });
const measured = (changes: object) => ({ kind: 'measured', ...changes }) as RunEvent;
const isTaken = (event: object) => entrySchema.safeParse(entryOf(2, event as RunEvent)).success;

/** As many as no small studio prints. */
const MOST = 100_000_000;
const long = (letters: number) => 'x'.repeat(letters);

describe('an entry is taken', () => {
  it.each<[string, RunEvent]>([
    ['begins a run without a plan', { kind: 'begun', plan: supperRun }],
    ['begins one with a plan', begun({})],
    ['has no title', begun({ title: '' })],
    ['has a long title', begun({ title: long(1000) })],
    ['is printed on one side', begun({ work: { style: 'simplex' }, passes: 1, sides: 1 })],
    ['is worked and turned', begun({ work: { style: 'work-and-turn' } })],
    ['is worked and tumbled', begun({ work: { style: 'work-and-tumble' } })],
    ['has two forms turned side to side', begun({ work: { style: 'work-and-back', turn: 'side-to-side' } })],
    ['has two forms turned end to end', begun({ work: { style: 'work-and-back', turn: 'end-to-end' } })],
    ['is turned by the printer', begun({ work: { style: 'perfecting', turn: 'end-to-end' }, passes: 1 })],
    ['has no overs', begun({ overs: { percent: 0, least: 0 } })],
    ['has ten times as many overs', begun({ overs: { percent: 1000, least: 3 } })],
    ['needs nothing', begun({ needed: 0, sheets: 0 })],
    [
      'has two designs, one of which lies nowhere',
      begun({
        designs: [
          { piece: 'Card', wanted: 1, perSheet: 0 },
          { piece: 'Tag', wanted: MOST, perSheet: MOST },
        ],
      }),
    ],
    ['costs nothing', reckoned({ ink: 0, labourPerHour: 0, inked: { area: 0, coverage: 0 } })],
    ['pays back', reckoned({ cost: { ...roundPlan.cost, paper: -1 } })],
    ['has no currency', reckoned({ currency: '' })],
    ['loads one sheet', load(1)],
    ['loads as many as can be', load(MOST)],
    ['says go', go],
    ['says no-go', noGo(long(120))],
    ['counts good ones in both passes', good(2, 1)],
    ['counts spoiled ones', spoiled(1, 1, ' askew ')],
    ['turns', turned],
    ['trims nothing good', trimmed('Supper', 0, 1, long(120))],
    ['trims nothing bad', trimmed('Supper', 1)],
    ['delivers', delivered(long(1000), MOST)],
    [
      'delivers two designs',
      {
        kind: 'delivered',
        pieces: [
          { piece: 'Card', pieces: 1 },
          { piece: 'Tag', pieces: 2 },
        ],
      },
    ],
    ['measures ink alone', measured({ ink: 0.01 })],
    ['measures minutes alone', measured({ minutes: MOST })],
    ['measures as much as can be', measured({ ink: MOST, minutes: 1 })],
    ['takes back', undo(1)],
  ])('that %s', (_, event) => {
    expect(isTaken(event)).toBe(true);
  });

  it('by its words without the blanks around them', () => {
    const read = entrySchema.parse(entryOf(2, spoiled(1, 1, ' askew ')));
    expect(read.event).toMatchObject({ reason: 'askew' });
  });
});

describe('an entry is not taken', () => {
  const [design] = supperRun.designs;
  it.each<[string, object]>([
    ['a title beyond all measure', begun({ title: long(1001) })],
    ['no design', begun({ designs: [] })],
    ['a design without a name', begun({ designs: [{ ...design, piece: ' ' }] })],
    ['a design of which none is wanted', begun({ designs: [{ ...design, wanted: 0 }] })],
    ['part of a piece wanted', begun({ designs: [{ ...design, wanted: 1.5 }] })],
    ['fewer than none on a sheet', begun({ designs: [{ ...design, perSheet: -1 }] })],
    ['a word too many in a design', begun({ designs: [{ ...design, colour: 'red' }] })],
    ['no way of working', begun({ work: {} })],
    ['a way of working that is none', begun({ work: { style: 'work-and-wait' } })],
    ['two forms and no turn', begun({ work: { style: 'work-and-back' } })],
    ['one form and a turn', begun({ work: { style: 'work-and-turn', turn: 'side-to-side' } })],
    ['a turn that is none', begun({ work: { style: 'perfecting', turn: 'corner to corner' } })],
    ['three passes', begun({ passes: 3 })],
    ['no side', begun({ sides: 0 })],
    ['less than no overs', begun({ overs: { percent: -1, least: 3 } })],
    ['overs beyond all measure', begun({ overs: { percent: 1000.1, least: 3 } })],
    ['fewer than no overs', begun({ overs: { percent: 5, least: -1 } })],
    ['overs without their least', begun({ overs: { percent: 5 } })],
    ['fewer sheets than none', begun({ sheets: -1 })],
    ['fewer needed than none', begun({ needed: -1 })],
    ['a word too many in the plan', begun({ colour: 'red' })],
    ['no printer', reckoned({ printer: '' })],
    ['no sheets reckoned', reckoned({ sheets: 0 })],
    ['fewer than none for setting up', reckoned({ makeReadySheets: -1 })],
    ['less than no ink', reckoned({ ink: -1 })],
    ['less than no pay', reckoned({ labourPerHour: -1 })],
    ['less than no area', reckoned({ inked: { area: -1, coverage: 1 } })],
    ['less than no cover', reckoned({ inked: { area: 1, coverage: -1 } })],
    ['an area without cover', reckoned({ inked: { area: 1 } })],
    ['less than no time', reckoned({ minutes: { ...roundPlan.minutes, hands: -1 } })],
    ['time without hands', reckoned({ minutes: { makeReady: 1, atPrinter: 1 } })],
    ['a cost in words', reckoned({ cost: { ...roundPlan.cost, wear: 'much' } })],
    ['a cost without its total', reckoned({ cost: { ...roundPlan.cost, total: undefined } })],
    ['a currency beyond all measure', reckoned({ currency: long(1001) })],
    ['a word too many in what was reckoned', reckoned({ colour: 'red' })],
    ['no sheets loaded', load(0)],
    ['more sheets than can be', load(MOST + 1)],
    ['sheets and no number', { kind: 'loaded' }],
    ['a no-go without a reason', { kind: 'proofed', go: false }],
    ['a go with a reason', { kind: 'proofed', go: true, reason: 'fine' }],
    ['a proof that says nothing', { kind: 'proofed' }],
    ['pass 0', { kind: 'good', pass: 0, sheets: 1 }],
    ['no pass', { kind: 'good', sheets: 1 }],
    ['a reason beyond all measure', spoiled(1, 1, long(121))],
    ['no reason', { kind: 'spoiled', pass: 1, sheets: 1 }],
    ['a turn with a word too many', { kind: 'turned', pass: 2 }],
    ['fewer than no good pieces', trimmed('Supper', -1)],
    ['fewer than no spoiled pieces', trimmed('Supper', 1, -1)],
    ['a reason beyond all measure for pieces', trimmed('Supper', 1, 1, long(121))],
    ['trimmed pieces without a name', trimmed('', 1)],
    ['a name beyond all measure', trimmed(long(1001), 1)],
    ['trimmed pieces of which nothing is said', { kind: 'trimmed' }],
    ['a delivery of none', delivered('Supper', 0)],
    ['a delivery without pieces', { kind: 'delivered' }],
    ['a delivery of what has no name', { kind: 'delivered', pieces: [{ pieces: 3 }] }],
    ['no ink', measured({ ink: 0 })],
    ['more ink than can be', measured({ ink: MOST + 1 })],
    ['no minutes', measured({ minutes: 0 })],
    ['more minutes than can be', measured({ minutes: MOST + 1 })],
    ['nothing measured', measured({})],
    ['nothing to take back', undo(0)],
    ['a taking back of nothing', { kind: 'undone' }],
    ['an event that is none', { kind: 'dropped', sheets: 3 }],
  ])('with %s', (_, event) => {
    expect(isTaken(event)).toBe(false);
  });

  it('without its number, its time or its event, nor with more', () => {
    const entry = entryOf(2, load(1));
    expect(entrySchema.safeParse(entry).success).toBe(true);
    for (const changes of [
      { id: 0 },
      { id: 1.5 },
      { id: undefined },
      { at: 'yesterday' },
      { at: undefined },
      { event: undefined },
      { by: 'Ann' },
    ]) {
      expect(entrySchema.safeParse({ ...entry, ...changes }).success, JSON.stringify(changes)).toBe(false);
    }
  });
});

it.each<[RunEvent, string]>([
  [begun({}), 'Run begun'],
  [load(1), '1 sheet loaded'],
  [load(30), '30 sheets loaded'],
  [go, 'Proof sheet: go'],
  [noGo('dark'), 'Proof sheet: no-go (dark)'],
  [good(2, 20), 'Pass 2: 20 good'],
  [spoiled(1, 3, 'askew'), 'Pass 1: 3 spoiled (askew)'],
  [turned, 'Dried and turned'],
  [trimmed('Supper', 70, 2, 'torn'), 'Supper trimmed: 70 good, 2 spoiled (torn)'],
  [trimmed('Supper', 70), 'Supper trimmed: 70 good'],
  [delivered('Supper', 60), 'Delivered: 60 Supper'],
  [
    {
      kind: 'delivered',
      pieces: [
        { piece: 'Card', pieces: 1 },
        { piece: 'Tag', pieces: 2 },
      ],
    },
    'Delivered: 1 Card, 2 Tag',
  ],
  [measured({ ink: 12.5 }), 'Measured: 12.5 ml of ink'],
  [measured({ minutes: 40 }), 'Measured: 40 minutes'],
  [measured({ ink: 12.5, minutes: 40 }), 'Measured: 12.5 ml of ink, 40 minutes'],
  [undo(3), 'Taken back'],
])('event %# is called by what happened', (event, name) => {
  expect(nameOfEvent(event)).toBe(name);
});

it('every reason that is offered can be entered, and is offered once', () => {
  for (const [pass, offered] of Object.entries(USUAL_REASONS)) {
    expect(offered.length, pass).toBeGreaterThan(2);
    expect(new Set(offered).size).toBe(offered.length);
    for (const reason of offered) expect(isTaken(spoiled(1, 1, reason)), reason).toBe(true);
  }
});
