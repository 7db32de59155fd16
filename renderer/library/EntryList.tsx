// The list of what is in the library: its printers, its papers, and the rates.
import { Collection, Header, ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components';
import { Button } from '../controls/Button.tsx';
import { addPaper, addPrinter, type Chosen, copyEntry, entryOf, removeEntry } from './draft/entries.ts';
import { countWrongs } from './draft/takeDraft.ts';
import type { Editing } from './editing.ts';
import type { Editor } from './editor.ts';
import { newKey } from './withOneMore.ts';

interface EntryListProps {
  readonly editor: Editor;
  readonly editing: Editing;
}

export function EntryList({ editor, editing }: EntryListProps) {
  const { typed, chosen, wrongs } = editing;
  const chosenEntry = entryOf(typed, chosen);
  const change = (changed: ReturnType<typeof copyEntry>) => editor.take(changed.draft, changed.chosen);
  const now = () => editor.state.getState().editing;
  const sections = [
    {
      is: 'printer',
      name: 'Printers',
      entries: typed.printers.map(({ key, name }, i) => ({
        id: idOf({ is: 'printer', key }),
        name: name.trim() === '' ? 'Printer without a name' : name,
        wrong: countWrongs(wrongs, `printers[${i}]`),
      })),
    },
    {
      is: 'paper',
      name: 'Papers',
      entries: typed.papers.map(({ key, name }, i) => ({
        id: idOf({ is: 'paper', key }),
        name: name.trim() === '' ? 'Paper without a name' : name,
        wrong: countWrongs(wrongs, `papers[${i}]`),
      })),
    },
    {
      is: 'rates',
      name: 'The studio',
      entries: [
        {
          id: idOf({ is: 'rates' }),
          name: 'Rates and units',
          wrong: countWrongs(wrongs, 'rates') + countWrongs(wrongs, 'currency'),
        },
      ],
    },
  ];
  return (
    <div className="library-list">
      <ListBox
        className="entries"
        aria-label="What is in the library"
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[idOf(chosen)]}
        onSelectionChange={(keys) => {
          const [id] = keys === 'all' ? [] : keys;
          if (id !== undefined) editor.lookAt(chosenOf(String(id)));
        }}
        items={sections}
      >
        {(section) => (
          <ListBoxSection id={section.is}>
            <Header className="entries-head">{section.name}</Header>
            <Collection items={section.entries}>
              {({ id, name, wrong }) => (
                <ListBoxItem id={id} textValue={name} className="entry-name">
                  <span>{name}</span>
                  {wrong > 0 && <span className="entry-wrong">{wrong} to be set right</span>}
                </ListBoxItem>
              )}
            </Collection>
          </ListBoxSection>
        )}
      </ListBox>
      <div className="entry-buttons">
        <Button onPress={() => change(addPrinter(now().typed, newKey()))}>Add a printer</Button>
        <Button onPress={() => change(addPaper(now().typed, newKey()))}>Add a paper</Button>
        <Button
          off={chosenEntry === undefined}
          label={chosenEntry === undefined ? 'Copy' : `Copy ${chosenEntry.name}`}
          onPress={() => change(copyEntry(now().typed, chosen, newKey()))}
        >
          Copy
        </Button>
        <Button
          off={chosenEntry === undefined}
          label={chosenEntry === undefined ? 'Remove' : `Remove ${chosenEntry.name}`}
          onPress={() => change(removeEntry(now().typed, chosen))}
        >
          Remove
        </Button>
      </div>
    </div>
  );
}

const idOf = (chosen: Chosen) => (chosen.is === 'rates' ? 'rates' : `${chosen.is} ${chosen.key}`);

function chosenOf(id: string): Chosen {
  const gap = id.indexOf(' ');
  if (gap < 0) return { is: 'rates' };
  return { is: id.startsWith('printer') ? 'printer' : 'paper', key: id.slice(gap + 1) };
}
