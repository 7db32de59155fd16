// What each part of the library's editor is given.
import type { LibraryErrors } from './draft/takeDraft.ts';

export interface EntryProps<T> {
  readonly value: T;
  /** Its name in a written library: `printers[0]`. */
  readonly field: string;
  readonly wrongs: LibraryErrors;
  /** Something is being typed. */
  readonly type: (changed: Partial<T>) => void;
  /** Something was chosen, added or taken away. */
  readonly take: (changed: Partial<T>) => void;
}

/** A list inside an entry: its name in a written library, and how the whole of it is changed. */
interface ListProps<E> {
  readonly entries: readonly E[];
  readonly field: string;
  readonly wrongs: LibraryErrors;
  readonly type: (entries: readonly E[]) => void;
  readonly take: (entries: readonly E[]) => void;
}

/** A list inside an entry. `field` is its whole name in a written library, `put` the change that puts a list in its place. */
export function listIn<T, E>(
  { wrongs, type, take }: Pick<EntryProps<T>, 'wrongs' | 'type' | 'take'>,
  field: string,
  entries: readonly E[],
  put: (entries: readonly E[]) => Partial<T>,
): ListProps<E> {
  return {
    entries,
    field,
    wrongs,
    type: (changed) => type(put(changed)),
    take: (changed) => take(put(changed)),
  };
}

/** What the part for one entry of a list is given. */
export function propsOf<E>({ entries, field, wrongs, type, take }: ListProps<E>, entry: E): EntryProps<E> {
  const at = entries.indexOf(entry);
  const changed = (part: Partial<E>) => entries.with(at, { ...entry, ...part });
  return {
    value: entry,
    field: `${field}[${at}]`,
    wrongs,
    type: (part) => type(changed(part)),
    take: (part) => take(changed(part)),
  };
}
