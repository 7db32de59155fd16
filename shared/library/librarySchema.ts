// The written shape of a library, before its lengths, weights and calipers are read.
import { z } from 'zod';
import { length, must, oneOf, size, text, wholeFrom, yesNo } from '../job/writtenFields.ts';
import { UNITS } from '../units/length.ts';
import { LIBRARY_SCHEMA } from './library.ts';

/** More than anything costs or takes here: a larger number is a slip of the pen. */
const MAX_NUMBER = 1_000_000;

/** A coverage of four: four inks that each cover everything. */
const FOUR_INKS = 4;

const amount = z
  .number({ error: must('be a number') })
  .min(0, { error: must('not be negative') })
  .max(MAX_NUMBER, { error: must('be at most a million') });
const percent = z
  .number({ error: must('be a number') })
  .min(0, { error: must('not be negative') })
  .max(1000, { error: must('be at most 1000') });
const any = z.number({ error: must('be a number') });
const sheets = wholeFrom(0).max(MAX_NUMBER, { error: must('be at most a million') });

const law = { base: amount, perCoverage: amount };
const ruleOfThumb = z.strictObject({ source: z.literal('rule-of-thumb'), ...law, spread: amount });
const inkModel = z.discriminatedUnion(
  'source',
  [
    ruleOfThumb,
    z.strictObject({
      source: z.literal('fitted'),
      ...law,
      readings: wholeFrom(1),
      degrees: wholeFrom(1),
      covariance: z.strictObject({ base: amount, both: any, perCoverage: amount }),
      residual: amount,
    }),
  ],
  { error: must('be a "rule-of-thumb" or "fitted" (source)') },
);

const reading = z.strictObject({
  date: z.iso.date({ error: must('be a date such as 2026-03-01') }),
  job: text,
  area: amount.gt(0, { error: must('be more than nothing') }),
  coverage: amount.max(FOUR_INKS, { error: must('not be more than four inks that each cover everything') }),
  ml: amount,
});

const feed = z.strictObject({
  name: text,
  least: size,
  most: size,
  thickest: text.optional(),
  unprintable: z.strictObject({ lead: length, tail: length, left: length, right: length }),
  hold: z.strictObject({
    across: oneOf(['left', 'right', 'centre']),
    along: oneOf(['lead', 'centre']),
  }),
  turnsItself: yesNo,
  attended: yesNo,
  hand: z.strictObject({ load: amount, align: amount, turn: amount }),
});

const quality = z.strictObject({ name: text, secondsBase: amount, secondsPerSquareMetre: amount });

const listOf = <T extends z.ZodType>(entry: T, what: string) =>
  z
    .array(entry, { error: must(`be a list of ${what}`) })
    .min(1, { error: must(`be a list of ${what} with at least one in it`) })
    .transform((list) => list as [z.output<T>, ...z.output<T>[]]);

const printer = z.strictObject({
  name: text,
  feeds: listOf(feed, 'feeds'),
  qualities: listOf(quality, 'qualities'),
  makeReady: z.strictObject({ minutes: amount, sheets }),
  ink: z.strictObject({
    pricePerMl: amount,
    model: inkModel,
    rule: ruleOfThumb.optional(),
    readings: z.array(reading).default([]),
  }),
  wearPerSide: amount,
});

const priceBy = <const T extends readonly string[]>(per: T) => z.strictObject({ amount, per: oneOf(per) });
const grain = oneOf(['long', 'short', 'unknown']).default('unknown');

const sheetForm = z.strictObject({
  is: z.literal('sheet'),
  size,
  grain,
  price: priceBy(['sheet', 'ream', 'kg']),
});
const parentForm = sheetForm.extend({ is: z.literal('parent'), cutTo: z.array(size).default([]) });
const rollForm = z.strictObject({
  is: z.literal('roll'),
  width: length,
  price: priceBy(['metre', 'kg']),
  cutTo: z.array(length).default([]),
});

const paper = z.strictObject({
  name: text,
  weight: text,
  caliper: text,
  coated: oneOf(['none', 'one-side', 'both-sides']),
  sidesAlike: yesNo.optional(),
  forms: listOf(
    z.discriminatedUnion('is', [sheetForm, parentForm, rollForm], {
      error: must('be a "sheet", a "parent" or a "roll" (is)'),
    }),
    'forms',
  ),
});

const rates = z.strictObject({
  labourPerHour: amount,
  overs: z.array(z.strictObject({ from: sheets, percent, least: sheets })).default([]),
  cutting: z.strictObject({
    secondsPerCut: amount,
    secondsPerPile: amount,
    tallestPile: length,
    widest: length.default('520 mm'),
    deepest: length.default('520 mm'),
    opening: length.default('80 mm'),
    leastGauge: length.default('35 mm'),
  }),
});

/** A library as it is written in JSON. Unknown fields are refused. */
export const writtenLibrary = z.strictObject({
  schema: z.literal(LIBRARY_SCHEMA),
  units: oneOf(UNITS),
  currency: text,
  rates,
  printers: z.array(printer, { error: must('be a list of printers') }),
  papers: z.array(paper, { error: must('be a list of papers') }),
});

export type WrittenLibrary = z.infer<typeof writtenLibrary>;
export type WrittenPrinter = z.infer<typeof printer>;
export type WrittenFeed = z.infer<typeof feed>;
export type WrittenPaper = z.infer<typeof paper>;
export type WrittenForm = WrittenPaper['forms'][number];
