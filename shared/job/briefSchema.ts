// The written shape of a brief, before its lengths are read: what fields there are and what may stand in them.
import { z } from 'zod';
import { USUAL_OVERS } from '../layout/count.ts';
import { LIES } from '../layout/lies.ts';
import { UNITS } from '../units/length.ts';

/** What a field says when it holds the wrong thing, and when it is not there at all. */
const must = (be: string) => (issue: { readonly input?: unknown }) =>
  issue.input === undefined ? 'is missing' : `must ${be}`;

/** A length is a number in the brief's own unit, or a text that says its unit. */
const length = z.union([z.number(), z.string()], {
  error: must('be a number, or a length such as "1/8 in" or "3 mm"'),
});
const size = z.union([z.tuple([length, length]), z.string()], {
  error: must('be [width, height] or a text such as "5 x 7 in"'),
});
const text = z
  .string({ error: must('be a text') })
  .trim()
  .min(1, { error: must('not be empty') });
const wholeFrom = (least: number) =>
  z
    .int({ error: must(`be a whole number of at least ${least}`) })
    .min(least, { error: `must be at least ${least}` });
const oneOf = <const T extends readonly string[]>(words: T) =>
  z.enum(words, { error: must(`be one of ${words.map((w) => `"${w}"`).join(', ')}`) });
const yesNo = z.boolean({ error: must('be true or false') });

const turn = oneOf(['side-to-side', 'end-to-end']);

const face = z.strictObject({
  file: text,
  page: wholeFrom(1).default(1),
  rotate: z.literal([0, 90, 180, 270], { error: must('be 0, 90, 180 or 270') }).default(0),
  trimAt: size.optional(),
});

const piece = z.strictObject({
  name: text,
  trim: size,
  bleed: length,
  safe: length.optional(),
  turned: oneOf(['head-to-head', 'head-to-toe']).default('head-to-head'),
  lies: oneOf(LIES).default('either'),
  quantity: wholeFrom(1).max(10_000_000, { error: must('be at most ten million') }),
  front: face,
  back: face.optional(),
});

const sheet = z.strictObject({
  size,
  unprintable: z
    .strictObject({
      lead: length.default(0),
      tail: length.default(0),
      left: length.default(0),
      right: length.default(0),
    })
    .prefault({}),
  hold: z
    .strictObject({
      across: oneOf(['left', 'right', 'centre']).default('left'),
      along: oneOf(['lead', 'centre']).default('lead'),
    })
    .prefault({}),
  sidesAlike: yesNo.default(true),
});

/** A brief as it is written in JSON. Unknown fields are refused, so that a slip of the pen is not passed over. */
export const writtenBrief = z.strictObject({
  units: oneOf(UNITS),
  title: text,
  sheet,
  work: oneOf(['simplex', 'work-and-back', 'perfecting', 'work-and-turn', 'work-and-tumble']),
  turn: turn.optional(),
  lead: oneOf(['as-given', 'short', 'long']).default('as-given'),
  gutter: length.optional(),
  centring: z
    .strictObject({
      across: oneOf(['centre', 'left', 'right']).default('centre'),
      along: oneOf(['centre', 'lead', 'tail']).default('centre'),
    })
    .prefault({}),
  marks: yesNo.default(true),
  overs: z
    .strictObject({
      percent: z
        .number({ error: must('be a number') })
        .min(0, { error: must('not be negative') })
        .max(1000, { error: must('be at most 1000') })
        .default(USUAL_OVERS.percent),
      least: wholeFrom(0).default(USUAL_OVERS.least),
    })
    .prefault({}),
  fileNames: text.optional(),
  pieces: z
    .array(piece, { error: must('be a list of pieces') })
    .min(1, { error: must('hold at least one piece') }),
});

export type WrittenBrief = z.infer<typeof writtenBrief>;
export type WrittenPiece = z.infer<typeof piece>;
export type WrittenFace = z.infer<typeof face>;
