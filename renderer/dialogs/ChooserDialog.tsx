// The window's own chooser of files and folders, for shells that have no dialog for it.
import { type ReactNode, useCallback, useEffect, useState } from 'react';
import type { FileKind, Listing } from '../../shared/contract/choosing.ts';
import type { FileEntry, FolderHandle } from '../../shared/contract/handles.ts';
import type { Fault } from '../../shared/fault/result.ts';
import { Button } from '../controls/Button.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { Field } from '../controls/Field.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { host } from '../hostClient/host.ts';
import type { ChooserTarget, ChosenFiles } from '../state/dialogs.ts';
import { FolderList } from './FolderList.tsx';

const TITLES: Readonly<Record<FileKind, string>> = {
  job: 'Open a job',
  art: 'Choose the PDFs',
  brief: 'Choose a brief',
  library: 'Choose a library',
};

export function ChooserDialog({
  looking,
  choose,
}: {
  readonly looking: ChooserTarget;
  readonly choose: (chosen: ChosenFiles) => void;
}) {
  const [listing, setListing] = useState<Listing | undefined>(undefined);
  /** Nothing is chosen while another folder is being opened: what would be taken is the one before. */
  const [opening, setOpening] = useState(false);
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const [marked, setMarked] = useState<readonly FileEntry[]>([]);
  const show = looking.for === 'files' ? looking.kind : looking.for === 'new-file' ? 'job' : 'none';

  const look = useCallback(
    async (folder?: FolderHandle) => {
      setOpening(true);
      const listed = await host.files.list({ show, ...(folder === undefined ? {} : { folder }) });
      setOpening(false);
      if (!listed.ok) return setFault(listed.fault);
      setFault(undefined);
      setMarked([]);
      setListing(listed.value);
    },
    [show],
  );
  useEffect(() => {
    void look();
  }, [look]);

  return (
    <Dialog title={titleOf(looking)} width="broad" onClose={() => choose(undefined)}>
      {fault !== undefined && <FaultNote fault={fault} />}
      {listing !== undefined && (
        <FolderList
          listing={listing}
          many={looking.for === 'files' && looking.many}
          marked={marked}
          onMark={setMarked}
          onFolder={(folder) => void look(folder)}
          {...(looking.for === 'files' ? { onFile: (file: FileEntry) => choose([file]) } : {})}
        />
      )}
      {listing !== undefined && (
        <NewFolder folder={listing.folder.folder} onFault={setFault} onMade={(folder) => void look(folder)} />
      )}
      <Finish
        looking={looking}
        listing={opening ? undefined : listing}
        marked={marked}
        choose={choose}
        onFault={setFault}
      />
    </Dialog>
  );
}

function titleOf(looking: ChooserTarget): string {
  switch (looking.for) {
    case 'files':
      return TITLES[looking.kind];
    case 'new-file':
      return 'Save the job';
    case 'folder':
      return looking.title;
  }
}

interface FinishProps {
  readonly looking: ChooserTarget;
  readonly listing: Listing | undefined;
  readonly marked: readonly FileEntry[];
  readonly choose: (chosen: ChosenFiles) => void;
  readonly onFault: (fault: Fault) => void;
}

/** The last step: the files, the folder, or a name for the new file. */
function Finish({ looking, listing, marked, choose, onFault }: FinishProps) {
  const [name, setName] = useState(looking.for === 'new-file' ? looking.name : '');
  const save = async () => {
    if (listing === undefined) return;
    const placed = await host.files.newFile({ folder: listing.folder.folder, name });
    if (placed.ok) choose([placed.value]);
    else onFault(placed.fault);
  };
  const last = (label: string, off: boolean, onPress: () => void, before?: ReactNode) => (
    <>
      {before}
      <DialogAnswers>
        <Button onPress={() => choose(undefined)}>Cancel</Button>
        <Button kind="main" disabled={off} onPress={onPress}>
          {label}
        </Button>
      </DialogAnswers>
    </>
  );
  switch (looking.for) {
    case 'files':
      return last('Open', listing === undefined || marked.length === 0, () => choose(marked));
    case 'folder':
      return last('Choose this folder', listing === undefined, () => choose(listing?.folder));
    case 'new-file':
      return last(
        'Save here',
        listing === undefined || name.trim() === '',
        () => void save(),
        <Field
          label="Name of the file"
          value={name}
          onChange={setName}
          onEnter={() => void save()}
          autoFocus
        />,
      );
  }
}

function NewFolder({
  folder,
  onFault,
  onMade,
}: {
  readonly folder: FolderHandle;
  readonly onFault: (fault: Fault) => void;
  readonly onMade: (folder: FolderHandle) => void;
}) {
  const [name, setName] = useState<string | undefined>(undefined);
  if (name === undefined) {
    return (
      <div>
        <Button kind="quiet" onPress={() => setName('')}>
          New folder…
        </Button>
      </div>
    );
  }
  const make = async () => {
    const made = await host.files.newFolder({ folder, name });
    if (!made.ok) return onFault(made.fault);
    setName(undefined);
    onMade(made.value.folder);
  };
  return (
    <div className="new-folder">
      <Field
        label="Name of the new folder"
        size="some"
        value={name}
        onChange={setName}
        onEnter={() => void make()}
        autoFocus
      />
      <Button disabled={name.trim() === ''} onPress={() => void make()}>
        Make it
      </Button>
    </div>
  );
}
