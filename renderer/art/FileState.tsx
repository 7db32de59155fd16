// Whether the file of some art still is what the job was laid out with, and what can be done where it is not.
import type { ArtState } from '../../shared/contract/art.ts';
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { Button } from '../controls/Button.tsx';
import { FaultNote, Note } from '../controls/Note.tsx';
import { useApp } from '../state/store.ts';
import { chooseOther, facesFrom, takeAsItIs, takeFrom } from './relink.ts';

export function FileState({ art, fileName }: { readonly art: ArtHandle; readonly fileName: string }) {
  const state = useApp((s) => s.artStates[art]);
  if (state === undefined) return null;
  if (state.state === 'as-laid-out')
    return <Note tone="good">The file is the one the job was laid out with.</Note>;
  return (
    <div className="file-state">
      <FaultNote fault={state.fault} tone={state.state === 'missing' ? 'bad' : 'ask'} />
      <div className="file-does">
        <Mend state={state} fileName={fileName} />
        <Button
          label={`Choose another file in place of ${fileName}`}
          onPress={() => void chooseOther(facesFrom(art))}
        >
          Choose another file…
        </Button>
      </div>
    </div>
  );
}

function Mend({ state, fileName }: { readonly state: ArtState; readonly fileName: string }) {
  switch (state.state) {
    case 'changed':
      return (
        <Button label={`Take ${fileName} as it is now`} onPress={() => void takeAsItIs(state.art)}>
          Take it as it is now
        </Button>
      );
    case 'moved':
      return (
        <Button
          label={`Use ${fileName} from where it is now`}
          onPress={() => void takeFrom(state.found, facesFrom(state.art))}
        >
          Use it from there
        </Button>
      );
    default:
      return null;
  }
}
