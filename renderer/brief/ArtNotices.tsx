// What is worth knowing of the files that were taken in, such as that one was mended to be read.
import type { Art } from '../../shared/contract/art.ts';
import { Note } from '../controls/Note.tsx';

export function ArtNotices({ art }: { readonly art: readonly Art[] }) {
  const notices = art.flatMap((file) => file.notices);
  if (notices.length === 0) return null;
  return (
    <section className="brief-part" aria-label="The files of the art">
      <h3>The files of the art</h3>
      {[...new Set(notices)].map((notice) => (
        <Note key={notice} tone="ask">
          {notice}
        </Note>
      ))}
    </section>
  );
}
