// What may stand in an entry of a run: checked when it comes from the window and when a log is read.
import { z } from 'zod';
import type { RunEvent, RunLogEntry } from './events.ts';
import { RUN_SCHEMA, type RunPlan } from './plan.ts';
import type { PlannedRun } from './planned.ts';

/** More sheets or pieces than any run of a small studio has. */
const MAX_COUNT = 100_000_000;

const words = (longest: number) => z.string().trim().min(1).max(longest);
const none = z.int().min(0).max(MAX_COUNT);
const some = z.int().min(1).max(MAX_COUNT);
const pass = z.literal([1, 2]);
const reason = words(120);
const piece = words(1000);
const turn = z.literal(['side-to-side', 'end-to-end']);

const share = z.number().min(0);
const money = z.number();

const planned: z.ZodType<PlannedRun> = z.strictObject({
  printer: words(1000),
  feed: words(1000),
  paper: words(1000),
  quality: words(1000),
  currency: z.string().max(1000),
  labourPerHour: share,
  sheets: some,
  makeReadySheets: none,
  passes: pass,
  inked: z.strictObject({ area: share, coverage: share }),
  ink: share,
  minutes: z.strictObject({ makeReady: share, atPrinter: share, hands: share }),
  cost: z.strictObject({
    paper: money,
    ink: money,
    labour: money,
    makeReady: money,
    trimming: money,
    wear: money,
    total: money,
  }),
});

const plan: z.ZodType<RunPlan> = z.strictObject({
  schema: z.literal(RUN_SCHEMA),
  title: z.string().max(1000),
  work: z.discriminatedUnion('style', [
    z.strictObject({ style: z.literal(['simplex', 'work-and-turn', 'work-and-tumble']) }),
    z.strictObject({ style: z.literal(['work-and-back', 'perfecting']), turn }),
  ]),
  passes: pass,
  sides: pass,
  needed: none,
  overs: z.strictObject({ percent: z.number().min(0).max(1000), least: none }),
  sheets: none,
  designs: z.array(z.strictObject({ piece, wanted: some, perSheet: none })).min(1),
  planned: planned.optional(),
});

/** An event without its number and time: what the window tells, and what a log holds. */
export const eventSchema: z.ZodType<RunEvent> = z.union([
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('begun'), plan }),
    z.strictObject({ kind: z.literal('loaded'), sheets: some }),
    z.strictObject({ kind: z.literal('good'), pass, sheets: some }),
    z.strictObject({ kind: z.literal('spoiled'), pass, sheets: some, reason }),
    z.strictObject({ kind: z.literal('turned') }),
    z.strictObject({
      kind: z.literal('trimmed'),
      piece,
      good: none,
      spoiled: none,
      reason: z.string().max(120),
    }),
    z.strictObject({
      kind: z.literal('delivered'),
      pieces: z.array(z.strictObject({ piece, pieces: some })).min(1),
    }),
    z
      .strictObject({
        kind: z.literal('measured'),
        ink: z.number().positive().max(MAX_COUNT).optional(),
        minutes: z.number().positive().max(MAX_COUNT).optional(),
      })
      .refine(({ ink, minutes }) => ink !== undefined || minutes !== undefined),
    z.strictObject({ kind: z.literal('undone'), of: some }),
  ]),
  z.strictObject({ kind: z.literal('proofed'), go: z.literal(true) }),
  z.strictObject({ kind: z.literal('proofed'), go: z.literal(false), reason }),
]);

export const entrySchema: z.ZodType<RunLogEntry> = z.strictObject({
  id: some,
  at: z.iso.datetime(),
  event: eventSchema,
});
