// Editing the library: every edit is named, undone and done again, and what is in order is saved at once.
import { describe, expect, it } from 'vitest';
import type { LibraryDraft } from '../../../renderer/library/draft/draft.ts';
import {
  addPaper,
  addPrinter,
  copyEntry,
  freeName,
  removeEntry,
} from '../../../renderer/library/draft/entries.ts';
import { openEditor } from '../../../renderer/library/editor.ts';
import { sayWrong } from '../../../renderer/library/sayWrong.ts';
import { addTo } from '../../../renderer/library/takeIn.ts';
import { redoName, undoName } from '../../../renderer/state/history.ts';
import type { Fault } from '../../../shared/fault/result.ts';
import type { Library } from '../../../shared/library/library.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';

function open(asked?: string, answer?: Fault) {
  const saved: Library[] = [];
  const editor = openEditor(
    startingLibrary(),
    async (library) => {
      saved.push(library);
      return answer;
    },
    asked,
  );
  const editing = () => editor.state.getState().editing;
  const printers = () => editing().typed.printers.map(({ name }) => name);
  const rename = (draft: LibraryDraft, name: string): LibraryDraft => ({
    ...draft,
    printers: draft.printers.map((printer, i) => (i === 0 ? { ...printer, name } : printer)),
  });
  return { editor, editing, printers, saved, rename };
}

describe('what is typed', () => {
  it('is saved when its field is left, and no sooner', () => {
    const { editor, editing, saved, rename } = open();
    editor.type(rename(editing().typed, 'Press by the door'));
    expect(saved).toEqual([]);
    editor.settle();
    expect(saved.map(({ printers }) => printers[0]?.name)).toEqual(['Press by the door']);
    expect(undoName(editing().history)).toBe('Change Hand-fed sheet printer');
    editor.settle();
    expect(saved).toHaveLength(1);
  });

  it('that says the same in other words is no edit', () => {
    const { editor, editing } = open();
    const { typed } = editing();
    const [first, ...others] = typed.printers;
    if (first === undefined) throw new Error('There is a printer');
    editor.type({ ...typed, printers: [{ ...first, wearPerSide: '0,020' }, ...others] });
    editor.settle();
    expect(undoName(editing().history)).toBeUndefined();
    expect(editing().typed.printers[0]?.wearPerSide).toBe('0.02');
  });

  it('and is wrong stays in its field while another entry is looked at', () => {
    const { editor, editing, saved, rename } = open();
    editor.type(rename(editing().typed, ''));
    editor.lookAt({ is: 'rates' });
    expect(editing().wrongs).toEqual({ 'printers[0].name': 'must not be empty' });
    expect(editing().typed.printers[0]?.name).toBe('');
    expect(saved.every(({ printers }) => printers[0]?.name === 'Hand-fed sheet printer')).toBe(true);
    editor.undo();
    expect(editing().wrongs).toEqual({});
    expect(editing().typed.printers[0]?.name).toBe('Hand-fed sheet printer');
    expect(editing().chosen).toEqual({ is: 'printer', key: 'printer Hand-fed sheet printer' });
  });

  it('is not lost when the disk takes nothing, and the next edit saves it', async () => {
    const full: Fault = { code: 'disk-full', message: 'The disk is full.', remedy: 'Make room.' };
    const { editor, editing, rename } = open(undefined, full);
    editor.take(rename(editing().typed, 'Press by the door'));
    await Promise.resolve();
    expect(editor.state.getState().unsaved).toBe(full);
    expect(editing().kept.library.printers[0]?.name).toBe('Press by the door');
  });
});

describe('printers and papers', () => {
  it('that are removed come back in their place', () => {
    const { editor, editing, printers, saved } = open('Tray-fed sheet printer');
    const before = printers();
    const { draft, chosen } = removeEntry(editing().typed, editing().chosen);
    editor.take(draft, chosen);
    expect(printers()).toEqual(['Hand-fed sheet printer', 'Two-sided sheet printer']);
    expect(editing().chosen).toEqual({ is: 'printer', key: 'printer Two-sided sheet printer' });
    expect(undoName(editing().history)).toBe('Remove Tray-fed sheet printer');
    editor.undo();
    expect(printers()).toEqual(before);
    expect(editing().chosen).toEqual({ is: 'printer', key: 'printer Tray-fed sheet printer' });
    expect(redoName(editing().history)).toBe('Remove Tray-fed sheet printer');
    editor.redo();
    expect(printers()).toHaveLength(2);
    expect(saved.map((library) => library.printers.length)).toEqual([2, 3, 2]);
  });

  it('may all be removed, and then the rates are looked at', () => {
    const { editor, editing, printers } = open();
    for (let left = 3; left > 0; left -= 1) {
      const { draft, chosen } = removeEntry(editing().typed, editing().chosen);
      editor.take(draft, chosen);
    }
    expect(printers()).toEqual([]);
    expect(editing().chosen).toEqual({ is: 'rates' });
    expect(editing().wrongs).toEqual({});
  });

  it('that are added are in order from the start, under names of their own', () => {
    const { editor, editing, saved } = open();
    for (const [i, add] of [addPrinter, addPrinter, addPaper].entries()) {
      const { draft, chosen } = add(editing().typed, `new ${i}`);
      editor.take(draft, chosen);
    }
    expect(
      saved
        .at(-1)
        ?.printers.map(({ name }) => name)
        .slice(3),
    ).toEqual(['New printer', 'New printer 2']);
    expect(saved.at(-1)?.papers.at(-1)?.name).toBe('New paper');
    expect(undoName(editing().history)).toBe('Add New paper');
  });

  it('are copied behind themselves, a printer without the readings of its counter', () => {
    const { editing } = open();
    const { typed, chosen } = editing();
    const [first] = typed.printers;
    if (first === undefined) throw new Error('There is a printer');
    const reading = { key: 'r', date: '2026-03-01', job: 'Tags', area: '2', coverage: '50', ml: '9' };
    const read = { ...typed, printers: [{ ...first, ink: { ...first.ink, readings: [reading] } }] };
    const copied = copyEntry(read, chosen, 'copy').draft.printers;
    expect(copied.map(({ name, ink }) => [name, ink.readings.length])).toEqual([
      ['Hand-fed sheet printer', 1],
      ['Hand-fed sheet printer copy', 0],
    ]);
    expect(copyEntry(typed, { is: 'rates' }, 'copy').draft).toBe(typed);
  });

  it('that come from a file are added under names that are free', () => {
    const { editing } = open();
    const { typed } = editing();
    const added = addTo(typed, typed);
    expect(added.papers.slice(4).map(({ name }) => name)).toEqual([
      'Uncoated card 2',
      'Silk card, coated both sides 2',
      'Postcard board, coated one side 2',
      'Cotton paper on the roll 2',
    ]);
    expect(new Set(added.printers.map(({ key }) => key)).size).toBe(6);
    expect(added.rates).toBe(typed.rates);
    expect(freeName('Card', [{ name: 'Card' }, { name: 'Card 2' }])).toBe('Card 3');
  });
});

it('what is wrong is said in a sentence that begins with the name of the field', () => {
  const wrongs = {
    'papers[0].name': 'must not be empty',
    'papers[0].weight': '"heavy" is not the weight of a paper. Write it like 300 gsm.',
    'papers[0].forms[1].cutTo[0]': 'must be longer than nothing, not 0 in',
  };
  expect(sayWrong('Name', 'papers[0].name', wrongs)).toBe('Name must not be empty.');
  expect(sayWrong('Weight', 'papers[0].weight', wrongs)).toBe(
    'Weight: "heavy" is not the weight of a paper. Write it like 300 gsm.',
  );
  expect(sayWrong('Cut to sizes', 'papers[0].forms[1].cutTo', wrongs)).toBe(
    'Cut to sizes must be longer than nothing, not 0 in.',
  );
  expect(sayWrong('Cut to sizes', 'papers[0].forms[10].cutTo', wrongs)).toBeUndefined();
});
