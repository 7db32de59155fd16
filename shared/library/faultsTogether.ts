// What is right field by field in a library but wrong together.
import type { FieldFault } from '../job/lengthReader.ts';
import { points } from '../units/length.ts';
import { showSize } from '../units/show.ts';
import type { Feed, Library } from './library.ts';

/** Names that stand twice, ranges the wrong way round, and papers that say two things at once. */
export function faultsTogether({ printers, papers, rates, units }: Library): readonly FieldFault[] {
  const size = ([w, h]: Feed['most']) => ({ w: points(w), h: points(h) });
  return [
    ...namedTwice(printers, 'printers', 'printer'),
    ...namedTwice(papers, 'papers', 'paper'),
    ...printers.flatMap((printer, i) => [
      ...namedTwice(printer.feeds, `printers[${i}].feeds`, 'feed'),
      ...namedTwice(printer.qualities, `printers[${i}].qualities`, 'quality'),
      ...printer.feeds.flatMap((feed, f) => {
        const [least, most] = [size(feed.least), size(feed.most)];
        if (least.w <= most.w && least.h <= most.h) return [];
        return [
          {
            field: `printers[${i}].feeds[${f}].least`,
            says: `the smallest sheet (${showSize(least, units)}) must not be larger than the largest (${showSize(most, units)}), neither across the feed nor along it`,
          },
        ];
      }),
    ]),
    ...papers.flatMap((paper, i) =>
      paper.coated === 'one-side' && paper.sidesAlike
        ? [
            {
              field: `papers[${i}].sidesAlike`,
              says: 'a paper that is coated on one side has sides that are not alike',
            },
          ]
        : [],
    ),
    ...rates.overs.flatMap(({ from }, i) =>
      i > 0 && from <= (rates.overs[i - 1]?.from ?? 0)
        ? [{ field: `rates.overs[${i}].from`, says: 'must be more than in the entry before' }]
        : [],
    ),
  ];
}

function namedTwice(
  entries: readonly { readonly name: string }[],
  field: string,
  what: string,
): readonly FieldFault[] {
  const names = entries.map((entry) => entry.name);
  return names.flatMap((name, i) =>
    names.indexOf(name) < i
      ? [{ field: `${field}[${i}].name`, says: `"${name}" is the name of another ${what}` }]
      : [],
  );
}
