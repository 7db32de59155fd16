// The boxes that lie over the window, the newest on top.
import { LibraryBox } from '../library/LibraryBox.tsx';
import type { BoxShown } from '../state/boxes.ts';
import { useApp } from '../state/store.ts';
import { AboutBox } from './AboutBox.tsx';
import { ChooserBox } from './ChooserBox.tsx';
import { HostGoneBox } from './HostGoneBox.tsx';
import { KeysBox } from './KeysBox.tsx';
import { LeftBehindBox } from './LeftBehindBox.tsx';
import { QuestionBox } from './QuestionBox.tsx';
import { SettingsBox } from './SettingsBox.tsx';
import './boxes.css';

export function Boxes() {
  const boxes = useApp((s) => s.boxes);
  // biome-ignore lint/suspicious/noArrayIndexKey: a box is its place in the pile.
  return boxes.map((box, i) => <Shown key={`${box.is} ${i}`} box={box} />);
}

function Shown({ box }: { readonly box: BoxShown }) {
  const closeBox = useApp((s) => s.closeBox);
  const close = () => closeBox(box);
  switch (box.is) {
    case 'settings':
      return <SettingsBox onClose={close} />;
    case 'library':
      return <LibraryBox printer={box.printer} onClose={close} />;
    case 'keys':
      return <KeysBox onClose={close} />;
    case 'about':
      return <AboutBox onClose={close} />;
    case 'left-behind':
      return <LeftBehindBox onClose={close} />;
    case 'host-gone':
      return <HostGoneBox />;
    case 'question':
      return <QuestionBox question={box.question} answer={box.answer} />;
    case 'chooser':
      return <ChooserBox looking={box.looking} choose={box.choose} />;
  }
}
