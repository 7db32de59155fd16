import { describe, expect, it } from 'vitest';
import { RecentlyUsed } from '../../../shared/proof/recentlyUsed.ts';

describe('What was used recently', () => {
  const made: string[] = [];
  const ask = (kept: RecentlyUsed<string>, key: string, size: number) =>
    kept.get(key, size, () => {
      made.push(key);
      return key.toUpperCase();
    });

  it('is made once, and the longest unused makes room', () => {
    const kept = new RecentlyUsed<string>(10);
    made.length = 0;
    for (const key of ['a', 'b', 'a', 'c', 'a', 'b']) expect(ask(kept, key, 4)).toBe(key.toUpperCase());
    // c makes room by dropping b, which had not been used since a was; then b drops c.
    expect(made).toEqual(['a', 'b', 'c', 'b']);
  });

  it('is kept until the next is made, however large', () => {
    const kept = new RecentlyUsed<string>(10);
    made.length = 0;
    for (const key of ['a', 'a', 'b', 'a']) ask(kept, key, 11);
    expect(made).toEqual(['a', 'b', 'a']);
  });
});
