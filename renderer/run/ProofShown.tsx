// The proof of what was really written: findings in words, and every piece cut out and turned, front beside back.
import { Note } from '../controls/Note.tsx';
import { useApp } from '../state/store.ts';

export function ProofShown() {
  const state = useApp((s) => s.sending?.state);
  if (state?.at !== 'done') return null;
  const { proof, pictures, notices } = state.sent;
  return (
    <section className="run-panel" aria-label="Proof">
      <h3>Proof from the written files</h3>
      {proof.findings.length === 0 ? (
        <Note tone="good">
          {proof.checked} faces were cut out, turned and compared with their art. All are right.
        </Note>
      ) : (
        proof.findings.map((finding) => (
          <Note key={`${finding.kind} ${finding.message}`} tone="bad">
            {finding.message}
          </Note>
        ))
      )}
      {[...proof.notes.map((note) => note.message), ...notices].map((said) => (
        <Note key={said} tone="know">
          {said}
        </Note>
      ))}
      <ul className="run-pictures" aria-label="Front and back of every piece">
        {pictures.map(({ position, url }) => (
          <li key={position}>
            <figure>
              <img
                src={url}
                alt={`Position ${position}: front, and beside it the back as its reader turns it`}
              />
              <figcaption>{position}</figcaption>
            </figure>
          </li>
        ))}
      </ul>
    </section>
  );
}
