// What was changed between two drafts of the library: in words for undoing it, and where to look.
import type { LibraryDraft } from './draft.ts';
import type { SelectedEntry } from './entries.ts';

interface DraftChange {
  /** `Remove Tray-fed printer` */
  readonly words: string;
  readonly at: SelectedEntry;
}

/** The change from one draft to the other; none where they say the same. */
export function changeBetween(before: LibraryDraft, after: LibraryDraft): DraftChange | undefined {
  const changes = [
    ...changesOf('printer', before.printers, after.printers),
    ...changesOf('paper', before.papers, after.papers),
    ...(ratesOf(before) === ratesOf(after) ? [] : [{ words: 'Change the rates', at: RATES }]),
  ];
  const [first, ...more] = changes;
  if (first === undefined || more.length === 0) return first;
  return { words: `Change ${changes.length} entries`, at: first.at };
}

const RATES = { is: 'rates' } as const;

const ratesOf = ({ units, currency, rates }: LibraryDraft) => JSON.stringify([units, currency, rates]);

interface Entry {
  readonly key: string;
  readonly name: string;
}

function changesOf(
  is: 'printer' | 'paper',
  before: readonly Entry[],
  after: readonly Entry[],
): readonly DraftChange[] {
  const called = ({ name }: Entry) => (name.trim() === '' ? `a ${is} without a name` : name);
  const found = (entries: readonly Entry[], { key }: Entry) => entries.find((entry) => entry.key === key);
  const gone = before.filter((entry) => found(after, entry) === undefined);
  const rest: SelectedEntry = after[0] === undefined ? RATES : { is, key: after[0].key };
  return [
    ...gone.map((entry) => ({ words: `Remove ${called(entry)}`, at: rest })),
    ...after.flatMap((entry) => {
      const was = found(before, entry);
      const at = { is, key: entry.key } as const;
      if (was === undefined) return [{ words: `Add ${called(entry)}`, at }];
      return JSON.stringify(was) === JSON.stringify(entry) ? [] : [{ words: `Change ${called(was)}`, at }];
    }),
  ];
}
