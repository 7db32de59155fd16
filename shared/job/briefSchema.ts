// The written shape of a brief, before its lengths are read: what fields there are and what may stand in them.
import { z } from 'zod';
import { USUAL_OVERS } from '../layout/count.ts';
import { LIES } from '../layout/lies.ts';
import { UNITS } from '../units/length.ts';
import { length, must, oneOf, size, text, wholeFrom, yesNo } from './writtenFields.ts';

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

const plan = z.strictObject({
  printer: text,
  feed: text,
  paper: text,
  cutFrom: text.optional(),
  lies: oneOf(LIES).default('either'),
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
  plan: plan.optional(),
});

export type WrittenBrief = z.infer<typeof writtenBrief>;
export type WrittenPiece = z.infer<typeof piece>;
export type WrittenFace = z.infer<typeof face>;
