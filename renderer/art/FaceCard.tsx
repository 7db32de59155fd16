// One face: its picture, where it comes from, and what there is to say of it.
import { useSyncExternalStore } from 'react';
import { artOf } from '../../shared/contract/handles.ts';
import type { Face, Piece } from '../../shared/job/brief.ts';
import { trimOf } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import { points } from '../../shared/units/length.ts';
import { showLength, showSize } from '../../shared/units/show.ts';
import { faceArtOf } from '../art-pictures/faceArt.ts';
import { artPictures } from '../art-pictures/windowArt.ts';
import { Button } from '../controls/Button.tsx';
import { FaultNote, Note } from '../controls/Note.tsx';
import { useApp, useJob } from '../state/store.ts';
import { FacePicture } from './FacePicture.tsx';
import { FileState } from './FileState.tsx';
import { chooseOther } from './relink.ts';
import { useFaceChecks } from './useFaceChecks.ts';

interface FaceCardProps {
  readonly piece: Piece;
  readonly name: FaceName;
  readonly face: Face;
}

const TITLES: Readonly<Record<FaceName, string>> = { front: 'Front', back: 'Back' };

export function FaceCard({ piece, name, face }: FaceCardProps) {
  const job = useJob();
  const art = artOf(face);
  const fileName = useApp((s) => s.artNames[art]) ?? 'art';
  const picture = faceArtOf(job, piece.name, name);
  const pictureFault = useSyncExternalStore(artPictures.subscribe, () =>
    picture === undefined ? undefined : artPictures.faultOf(picture),
  );
  const checks = useFaceChecks(piece, face);
  const { units } = job.brief;
  const from = `${fileName}, page ${face.page}`;
  return (
    <article className="face-card" aria-label={`${piece.name}, ${name}`}>
      {picture !== undefined && (
        <div className="face-sight">
          <FacePicture face={picture} label={`The ${name} of ${piece.name}, printed from ${from}`} />
        </div>
      )}
      <div className="face-words">
        <h4>{TITLES[name]}</h4>
        <p className="soft">
          {from}. {showSize(trimOf(piece), units)}, {showLength(points(piece.bleed), units)} of bleed.
        </p>
        <FileState art={art} fileName={fileName} />
        {pictureFault !== undefined && <FaultNote fault={pictureFault} />}
        {checks.map(({ tone, fault, says }) =>
          fault === undefined ? (
            <Note key={says} tone={tone}>
              {says}
            </Note>
          ) : (
            <FaultNote key={fault.message} fault={fault} tone={tone} />
          ),
        )}
        <div>
          <Button
            kind="quiet"
            label={`Print the ${name} of ${piece.name} from another file`}
            onPress={() => void chooseOther([{ piece: piece.name, face: name }])}
          >
            Print from another file…
          </Button>
        </div>
      </div>
    </article>
  );
}
