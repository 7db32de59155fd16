// The proof of what was really written: findings in words, and every piece cut out and turned, front beside back.
import { useState } from 'react';
import type { ProvedPicture } from '../../shared/contract/sending.ts';
import type { ProofReport } from '../../shared/proof/finding.ts';
import { RadioButtons } from '../controls/Choice.tsx';
import { Note, Sign } from '../controls/Note.tsx';
import { useApp } from '../state/store.ts';

export function ProofShown() {
  const state = useApp((s) => s.sending?.state);
  const [size, setSize] = useState<'small' | 'large'>('small');
  if (state?.at !== 'done') return null;
  const { proof, pictures, notices } = state.sent;
  return (
    <section className="read-panel run-panel" aria-label="Proof">
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
      {pictures.length > 0 && (
        <>
          <RadioButtons
            label="Pictures"
            value={size}
            options={[
              { value: 'small', label: 'Small' },
              { value: 'large', label: 'Large' },
            ]}
            onChange={setSize}
          />
          <ul className={`run-pictures ${size}`} aria-label="Front and back of every piece">
            {pictures.map((picture) => (
              <Proved key={picture.position} picture={picture} proof={proof} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Proved({ picture, proof }: { readonly picture: ProvedPicture; readonly proof: ProofReport }) {
  const { position, url } = picture;
  const seen = proof.positions.filter((s) => s.position === position);
  const piece = seen[0]?.piece ?? '';
  const both = seen.some((s) => s.face === 'back');
  const wrong = proof.findings.some((f) => 'position' in f && f.position === position);
  const faces = both ? 'front, and beside it the back as its reader turns it' : 'front';
  return (
    <li>
      <figure className={wrong ? 'wrong' : ''}>
        <img src={url} loading="lazy" alt={`Position ${position}, ${piece}: ${faces}`} />
        <figcaption>
          <Sign tone={wrong ? 'bad' : 'good'} />
          <span>
            {position} {piece} <span className="soft">{both ? 'front | back' : 'front'}</span>
          </span>
        </figcaption>
      </figure>
    </li>
  );
}
