// What may stand in a field that a person wrote, and what is said where something else does.
import { z } from 'zod';

/** What a field says when it holds the wrong thing, and when it is not there at all. */
export const must = (be: string) => (issue: { readonly input?: unknown }) =>
  issue.input === undefined ? 'is missing' : `must ${be}`;

/** A length is a number in the file's own unit, or a text that says its unit. */
export const length = z.union([z.number(), z.string()], {
  error: must('be a number, or a length such as "1/8 in" or "3 mm"'),
});
export const size = z.union([z.tuple([length, length]), z.string()], {
  error: must('be [width, height] or a text such as "5 x 7 in"'),
});
export const text = z
  .string({ error: must('be a text') })
  .trim()
  .min(1, { error: must('not be empty') });
export const wholeFrom = (least: number) =>
  z
    .int({ error: must(`be a whole number of at least ${least}`) })
    .min(least, { error: `must be at least ${least}` });
export const oneOf = <const T extends readonly string[]>(words: T) =>
  z.enum(words, { error: must(`be one of ${words.map((w) => `"${w}"`).join(', ')}`) });
export const yesNo = z.boolean({ error: must('be true or false') });
