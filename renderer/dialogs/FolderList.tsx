// What a folder holds: folders to go into, files to choose.
import { ListBox, ListBoxItem, type Selection } from 'react-aria-components';
import type { Listing } from '../../shared/contract/choosing.ts';
import type { FileEntry, FolderHandle } from '../../shared/contract/handles.ts';
import { showNumber } from '../../shared/units/show.ts';
import { Button } from '../controls/Button.tsx';
import { showDayAndTime } from '../desk/showDate.ts';

interface FolderListProps {
  readonly listing: Listing;
  readonly many: boolean;
  readonly marked: readonly FileEntry[];
  readonly onMark: (files: readonly FileEntry[]) => void;
  readonly onFolder: (folder: FolderHandle) => void;
  /** A file that was opened straight away. */
  readonly onFile?: (file: FileEntry) => void;
}

export function FolderList({ listing, many, marked, onMark, onFolder, onFile }: FolderListProps) {
  const { folder, up, folders, files } = listing;
  const mark = (selection: Selection) =>
    onMark(files.filter((f) => selection === 'all' || selection.has(f.file)));
  const open = (key: string) => {
    const inner = folders.find((f) => f.folder === key);
    const file = files.find((f) => f.file === key);
    if (inner !== undefined) onFolder(inner.folder);
    else if (file !== undefined) onFile?.(file);
  };
  return (
    <div className="folder">
      <div className="folder-head">
        <Button kind="quiet" disabled={up === undefined} onPress={() => up && onFolder(up.folder)}>
          Up
        </Button>
        <span className="folder-place" title={folder.place}>
          {folder.place}
        </span>
      </div>
      <ListBox
        key={folder.folder}
        className="listing"
        aria-label={`In ${folder.name}`}
        selectionMode={many ? 'multiple' : 'single'}
        selectionBehavior="replace"
        selectedKeys={marked.map((f) => f.file)}
        onSelectionChange={mark}
        onAction={(key) => open(String(key))}
        renderEmptyState={() => <p className="soft listing-empty">There is nothing of this kind in here.</p>}
      >
        {folders.map((f) => (
          <ListBoxItem key={f.folder} id={f.folder} textValue={f.name} className="listed">
            <span className="listed-kind" aria-hidden="true">
              ▸
            </span>
            <span className="listed-name">{f.name}</span>
            <span className="soft">folder</span>
          </ListBoxItem>
        ))}
        {files.map((f) => (
          <ListBoxItem key={f.file} id={f.file} textValue={f.name} className="listed">
            <span className="listed-kind" aria-hidden="true" />
            <span className="listed-name">{f.name}</span>
            <span className="soft">{sizeInWords(f.bytes)}</span>
            <span className="soft listed-when">{showDayAndTime(f.changed)}</span>
          </ListBoxItem>
        ))}
      </ListBox>
    </div>
  );
}

function sizeInWords(bytes: number): string {
  return bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${showNumber(bytes / 1e6, 1)} MB`;
}
