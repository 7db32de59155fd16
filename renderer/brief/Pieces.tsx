// The pieces of a brief: each with its size, its faces and how many are wanted.
import type { Art } from '../../shared/contract/art.ts';
import { Button } from '../controls/Button.tsx';
import { Select } from '../controls/Choice.tsx';
import { Field } from '../controls/Field.tsx';
import { Note } from '../controls/Note.tsx';
import { type DraftPiece, USUAL } from '../draft/briefDraft.ts';
import { FaceFields } from './FaceFields.tsx';
import type { PartProps } from './partProps.ts';
import type { BriefErrors } from './readDraft.ts';

export function Pieces({ draft, change, wrongs, art }: PartProps & { readonly art: readonly Art[] }) {
  const { pieces, units } = draft;
  const add = () => change({ pieces: [...pieces, emptyPiece(`typed ${crypto.randomUUID()}`, USUAL[units])] });
  return (
    <section className="brief-part" aria-label="Pieces">
      <h3>Pieces</h3>
      {pieces.map((piece, i) => (
        <PieceFields
          key={piece.key}
          piece={piece}
          field={`pieces[${i}]`}
          wrongs={wrongs}
          art={art}
          change={(changed) => change({ pieces: pieces.with(i, { ...piece, ...changed }) })}
          remove={() => change({ pieces: pieces.filter((p) => p !== piece) })}
        />
      ))}
      {pieces.length === 0 && (
        <Note tone={wrongs.pieces === undefined ? 'know' : 'bad'}>
          Drop the PDFs of the pieces on the window, or take them in, and the pieces are read from them.
        </Note>
      )}
      <div>
        <Button onPress={add}>Add a piece by hand</Button>
      </div>
    </section>
  );
}

function emptyPiece(key: string, usual: { readonly bleed: string; readonly safe: string }): DraftPiece {
  return {
    key,
    name: '',
    trim: '',
    bleed: usual.bleed,
    safe: usual.safe,
    turned: 'head-to-head',
    lies: 'either',
    quantity: '',
    front: undefined,
    back: undefined,
  };
}

/** Of proposed pieces only the quantity is still to be typed: the first is where one begins. */
const FIRST = 'pieces[0]';

interface PieceFieldsProps {
  readonly piece: DraftPiece;
  readonly field: string;
  readonly wrongs: BriefErrors;
  readonly art: readonly Art[];
  readonly change: (changed: Partial<DraftPiece>) => void;
  readonly remove: () => void;
}

function PieceFields({ piece, field, wrongs, art, change, remove }: PieceFieldsProps) {
  const called = piece.name === '' ? 'piece without a name' : piece.name;
  const wrong = (name: string) => wrongs[`${field}.${name}`];
  return (
    <section className="brief-piece" aria-label={`Piece: ${called}`}>
      <div className="fields">
        <Field label="Piece" value={piece.name} onChange={(name) => change({ name })} wrong={wrong('name')} />
        <Field
          label="How many are wanted"
          size="some"
          value={piece.quantity}
          onChange={(quantity) => change({ quantity })}
          wrong={wrong('quantity')}
          autoFocus={field === FIRST && piece.name !== '' && piece.quantity === ''}
        />
        <Field
          label="Trim, head up"
          size="some"
          value={piece.trim}
          onChange={(trim) => change({ trim })}
          wrong={wrong('trim')}
          placeholder="5 x 7 in"
        />
        <Field
          label="Bleed"
          size="few"
          value={piece.bleed}
          onChange={(bleed) => change({ bleed })}
          wrong={wrong('bleed')}
        />
        <Field
          label="Safe margin"
          size="few"
          value={piece.safe}
          onChange={(safe) => change({ safe })}
          wrong={wrong('safe')}
        />
      </div>
      <div className="fields">
        <FaceFields
          label="Front"
          face={piece.front}
          art={art}
          wrong={wrong('front')}
          onChange={(front) => change({ front })}
        />
        <FaceFields
          label="Back"
          face={piece.back}
          art={art}
          optional
          wrong={wrong('back')}
          onChange={(back) => change({ back })}
        />
      </div>
      <div className="fields">
        <Select
          label="Its reader turns it"
          value={piece.turned}
          options={[
            { value: 'head-to-head', label: 'like a page (head to head)' },
            { value: 'head-to-toe', label: 'like a wall calendar (head to toe)' },
          ]}
          onChange={(turned) => change({ turned })}
        />
        <Select
          label="On the sheet it lies"
          value={piece.lies}
          options={[
            { value: 'either', label: 'whichever way holds more' },
            { value: 'upright', label: 'with its head along the feed' },
            { value: 'on-its-side', label: 'with its head across the feed' },
          ]}
          onChange={(lies) => change({ lies })}
        />
        <div className="brief-piece-remove">
          <Button kind="quiet" label={`Take ${called} out of the brief`} onPress={remove}>
            Remove
          </Button>
        </div>
      </div>
    </section>
  );
}
