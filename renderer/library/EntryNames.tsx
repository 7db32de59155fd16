// The names of the printers or of the papers, with how many fields of each are still to be set right.
import { ListBox, ListBoxItem } from 'react-aria-components';
import { Button } from '../controls/Button.tsx';

export interface NamedEntry {
  readonly key: string;
  readonly name: string;
  /** Fields in it that are wrong. */
  readonly wrong: number;
}

interface EntryNamesProps {
  readonly title: string;
  readonly entries: readonly NamedEntry[];
  /** The key of the chosen one, if it is among these. */
  readonly chosen: string | undefined;
  readonly onChoose: (key: string) => void;
  /** What the button to add one says; none where nothing is added. */
  readonly add?: string;
  readonly onAdd?: () => void;
}

export function EntryNames({ title, entries, chosen, onChoose, add, onAdd }: EntryNamesProps) {
  return (
    <section className="entries" aria-label={title}>
      <h3>{title}</h3>
      {entries.length > 0 && (
        <ListBox
          className="entry-names"
          aria-label={title}
          selectionMode="single"
          selectionBehavior="replace"
          escapeKeyBehavior="none"
          selectedKeys={chosen === undefined ? [] : [chosen]}
          onSelectionChange={(keys) => {
            const [key] = keys === 'all' ? [] : keys;
            if (key !== undefined) onChoose(String(key));
          }}
        >
          {entries.map(({ key, name, wrong }) => (
            <ListBoxItem key={key} id={key} textValue={name} className="entry-name">
              <span>{name}</span>
              {wrong > 0 && <span className="entry-wrong">{wrong} to be set right</span>}
            </ListBoxItem>
          ))}
        </ListBox>
      )}
      {add !== undefined && <Button {...(onAdd === undefined ? {} : { onPress: onAdd })}>{add}</Button>}
    </section>
  );
}
