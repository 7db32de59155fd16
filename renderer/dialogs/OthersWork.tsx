// The work of others that the program holds: each with its version, its licence, and the text of that on demand.
import { useEffect, useState } from 'react';

interface Licensed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

export function OthersWork({ shell }: { readonly shell: 'desktop' | 'browser' }) {
  const [all, setAll] = useState<readonly Licensed[]>([]);
  useEffect(() => {
    const gone = new AbortController();
    // It is one of the window's own files; where it does not come, nothing is to be listed.
    fetch('/licences.json', { signal: gone.signal })
      .then((answer) => answer.json())
      .then(setAll, () => undefined);
    return () => gone.abort();
  }, []);
  return (
    <section className="others-work" aria-label="Work of others">
      <h3>It holds work of others, under their own licences</h3>
      <ul>
        {all.map(({ name, version, licence, text }) => (
          <li key={`${name} ${version}`}>
            <details>
              <summary>
                {name} {version} <span className="soft">{licence}</span>
              </summary>
              <pre>{text}</pre>
            </details>
          </li>
        ))}
      </ul>
      {shell === 'desktop' && (
        <p className="soft">
          The installed program has them beside it too, in THIRD-PARTY-LICENCES.txt, with those of Electron
          and Chromium.
        </p>
      )}
    </section>
  );
}
