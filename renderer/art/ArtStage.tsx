// The Art stage: every face with the page it is printed from, what was found on it, and whether its file still is the same.
import { useEffect } from 'react';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { actionBook } from '../actions/actionBook.ts';
import { faceArtOf, printedPart } from '../art-pictures/faceArt.ts';
import { artPictures } from '../art-pictures/windowArt.ts';
import { Button } from '../controls/Button.tsx';
import { Note } from '../controls/Note.tsx';
import { useApp, useJob } from '../state/store.ts';
import { FaceCard } from './FaceCard.tsx';
import { scaleOf } from './FacePicture.tsx';
import './art.css';

export function ArtStage() {
  const job = useJob();
  const notices = useApp((s) => s.notices);
  useEffect(() => showFaces(job), [job]);
  const said = new Set(job.art.map((a) => `${a.piece}, ${a.face}: ${a.said}`));
  const others = notices.filter((notice) => !said.has(notice));
  return (
    <section className="art-stage" aria-label="Art">
      <header className="art-head">
        <h2>Art</h2>
        <div className="art-does">
          <Button onPress={() => actionBook.run('add-art')}>Add art…</Button>
          <Button onPress={() => actionBook.run('check-art')}>Recheck art</Button>
          <Button onPress={() => actionBook.run('change-brief')}>Change the brief…</Button>
        </div>
      </header>
      {others.length > 0 && (
        <section className="art-notices" aria-label="Worth knowing">
          {others.map((notice) => (
            <Note key={notice} tone="know">
              {notice}
            </Note>
          ))}
        </section>
      )}
      {job.brief.pieces.map((piece) => (
        <section key={piece.name} className="art-piece" aria-label={piece.name}>
          <h3>{piece.name}</h3>
          <div className="art-faces">
            <FaceCard piece={piece} name="front" face={piece.front} />
            {piece.back === undefined ? (
              <article className="face-card bare" aria-label={`${piece.name}, back`}>
                <h4>Back</h4>
                <p className="soft">It is not printed.</p>
              </article>
            ) : (
              <FaceCard piece={piece} name="back" face={piece.back} />
            )}
          </div>
        </section>
      ))}
    </section>
  );
}

/** Says which pictures are wanted, each as sharp as it is seen. */
function showFaces(job: Job): void {
  artPictures.show(
    facesOf(job.brief).flatMap(({ piece, name }) => {
      const face = faceArtOf(job, piece.name, name);
      if (face === undefined) return [];
      return [{ face, seen: printedPart(face), scale: scaleOf(face) * devicePixelRatio }];
    }),
  );
}
