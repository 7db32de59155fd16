// The book of actions: what can be done now, by whom, and what it is called.
import { describe, expect, it } from 'vitest';
import { createActionBook, labelOf } from '../../../renderer/actions/actionBook.ts';
import { ACTION_NAMES } from '../../../shared/contract/actions.ts';

describe('the book of actions', () => {
  it('offers nothing while nobody can do anything', () => {
    const book = createActionBook();
    expect(book.shown().disabled).toEqual(ACTION_NAMES);
    expect(book.run('undo')).toBe(false);
  });

  it('does what the page that was opened last says', () => {
    const book = createActionBook();
    const done: string[] = [];
    const frame = book.open();
    frame.write({ 'zoom-fit': { run: () => done.push('frame') } });
    const bench = book.open();
    bench.write({ 'zoom-fit': { run: () => done.push('bench') } });
    frame.write({ 'zoom-fit': { run: () => done.push('frame again') } });
    book.run('zoom-fit');
    bench.tearOut();
    book.run('zoom-fit');
    expect(done).toEqual(['bench', 'frame again']);
  });

  it('does not do what cannot be done now, and says so', () => {
    const book = createActionBook();
    const page = book.open();
    let times = 0;
    page.write({ remove: { run: () => times++, can: false } });
    expect(book.run('remove')).toBe(false);
    expect(book.shown().disabled).toContain('remove');
    page.write({ remove: { run: () => times++, can: true } });
    expect(book.run('remove')).toBe(true);
    expect(book.shown().disabled).not.toContain('remove');
    expect(times).toBe(1);
  });

  it('calls an action by what it would do now', () => {
    const book = createActionBook();
    const page = book.open();
    page.write({ undo: { run: () => {}, label: 'Undo Move piece' } });
    expect(labelOf('undo', book.shown())).toBe('Undo Move piece');
    expect(labelOf('redo', book.shown())).toBe('Redo');
  });

  it('tells those who listen only when something shown has changed', () => {
    const book = createActionBook();
    const page = book.open();
    let told = 0;
    const stop = book.subscribe(() => told++);
    page.write({ undo: { run: () => {} } });
    page.write({ undo: { run: () => {} } });
    expect(told).toBe(1);
    page.tearOut();
    expect(told).toBe(2);
    stop();
    page.write({ undo: { run: () => {} } });
    expect(told).toBe(2);
  });
});
