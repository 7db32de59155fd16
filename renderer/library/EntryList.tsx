// The list of what is in the library: its printers, its papers, and the rates.
import { Button } from '../controls/Button.tsx';
import {
  addPaper,
  addPrinter,
  copyEntry,
  entryOf,
  removeEntry,
  type SelectedEntry,
} from './draft/entries.ts';
import { countWrongs, type LibraryErrors } from './draft/takeDraft.ts';
import { EntryNames, type NamedEntry } from './EntryNames.tsx';
import type { Editing } from './editing.ts';
import type { Editor } from './editor.ts';
import { newKey } from './withOneMore.ts';

interface EntryListProps {
  readonly editor: Editor;
  readonly editing: Editing;
}

export function EntryList({ editor, editing }: EntryListProps) {
  const { typed, chosen, wrongs } = editing;
  const { printers, papers } = typed;
  const chosenEntry = entryOf(typed, chosen);
  const now = () => editor.state.getState().editing;
  const change = (changed: { readonly draft: typeof typed; readonly chosen: SelectedEntry }) =>
    editor.take(changed.draft, changed.chosen);
  const names = (is: 'printer' | 'paper') => ({
    chosen: chosen.is === is ? chosen.key : undefined,
    onChoose: (key: string) => editor.lookAt({ is, key }),
  });
  return (
    <nav className="library-list" aria-label="What is in the library">
      <div className="library-names">
        <EntryNames
          title="Printers"
          entries={named(printers, 'printer', wrongs)}
          {...names('printer')}
          add="Add a printer"
          onAdd={() => change(addPrinter(now().typed, newKey()))}
        />
        <EntryNames
          title="Papers"
          entries={named(papers, 'paper', wrongs)}
          {...names('paper')}
          add="Add a paper"
          onAdd={() => change(addPaper(now().typed, newKey()))}
        />
        <EntryNames
          title="Studio"
          entries={[{ key: RATES, name: 'Rates and units', wrong: wrongRates(wrongs) }]}
          chosen={chosen.is === 'rates' ? RATES : undefined}
          onChoose={() => editor.lookAt({ is: 'rates' })}
        />
      </div>
      <div className="entry-buttons">
        <Button
          disabled={chosenEntry === undefined}
          label={chosenEntry && `Copy ${chosenEntry.name}`}
          onPress={() => change(copyEntry(now().typed, now().chosen, newKey()))}
        >
          Copy
        </Button>
        <Button
          disabled={chosenEntry === undefined}
          label={chosenEntry && `Remove ${chosenEntry.name}`}
          onPress={() => change(removeEntry(now().typed, now().chosen))}
        >
          Remove
        </Button>
      </div>
    </nav>
  );
}

const RATES = 'rates';

function named(
  entries: readonly { readonly key: string; readonly name: string }[],
  is: 'printer' | 'paper',
  wrongs: LibraryErrors,
): readonly NamedEntry[] {
  return entries.map(({ key, name }, i) => ({
    key,
    name: name.trim() === '' ? `A ${is} without a name` : name,
    wrong: countWrongs(wrongs, `${is}s[${i}]`),
  }));
}

function wrongRates(wrongs: LibraryErrors): number {
  return countWrongs(wrongs, 'rates') + countWrongs(wrongs, 'currency');
}
