// One more feed, quality or form: like the last, under a name of its own.
import { freeName } from './draft/entries.ts';

/** A key that no other entry has. */
export function newKey(): string {
  return crypto.randomUUID();
}

/** The entries with one more at their end. */
export function withOneMore<T extends { readonly key: string; readonly name: string }>(
  entries: readonly T[],
  name: string,
): readonly T[] {
  const last = entries.at(-1);
  if (last === undefined) return entries;
  return [...entries, { ...last, key: newKey(), name: freeName(name, entries) }];
}
