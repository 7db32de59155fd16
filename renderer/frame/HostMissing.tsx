// What is shown when the window cannot reach the program that it belongs to.
import { Logo } from '../controls/Logo.tsx';
import './frame.css';

export function HostMissing({ says }: { readonly says: string }) {
  return (
    <main className="alone">
      <Logo />
      <h1>This window has no program behind it</h1>
      <p>{says}</p>
      <p className="soft">Start Turnlay again and use the window or the link that it opens.</p>
    </main>
  );
}
