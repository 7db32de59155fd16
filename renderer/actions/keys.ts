// Keys: which action a pressed key means, and how keys are written for people.
import { ACTION_NAMES, ACTIONS, type ActionName } from '../../shared/contract/actions.ts';

/** What is known of a pressed key; a DOM KeyboardEvent is one. */
export interface Pressed {
  readonly key: string;
  /** Where the key sits, whatever is printed on it: `KeyM`, `Digit1`. */
  readonly code: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/** The shell and the machine that keys are pressed on. */
export interface Keyboard {
  readonly shell: 'desktop' | 'browser';
  readonly machine: 'mac' | 'windows' | 'linux';
}

/** Keys that a browser keeps to itself have others there. */
const IN_BROWSER: Readonly<Partial<Record<ActionName, string>>> = {
  'new-job': 'Alt+N',
  'close-job': 'Alt+W',
};

interface Chord {
  readonly mod: boolean;
  readonly alt: boolean;
  readonly shift: boolean;
  readonly key: string;
}

/** The key of an action on this keyboard, in the writing of the list of actions. */
export function shortcutOf(name: ActionName, { shell }: Keyboard): string {
  return (shell === 'browser' ? IN_BROWSER[name] : undefined) ?? ACTIONS[name].key;
}

/** The action that a pressed key means, if any. */
export function actionFor(pressed: Pressed, keyboard: Keyboard): ActionName | undefined {
  return ACTION_NAMES.find((name) => means(pressed, chordOf(shortcutOf(name, keyboard)), keyboard));
}

/** Whether an action's key is an ordinary one that also types or moves in a field. */
export function typesInFields(name: ActionName, keyboard: Keyboard): boolean {
  const { mod, alt, key } = chordOf(shortcutOf(name, keyboard));
  return !mod && !alt && !/^F\d+$/.test(key);
}

/** The keys of an action, one word each, as they are written on this machine: `Ctrl`, `Shift`, `Z`. */
export function writeKeys(name: ActionName, keyboard: Keyboard): readonly string[] {
  const { mod, alt, shift, key } = chordOf(shortcutOf(name, keyboard));
  const mac = keyboard.machine === 'mac';
  return [
    ...(mod ? [mac ? '⌘' : 'Ctrl'] : []),
    ...(alt ? [mac ? '⌥' : 'Alt'] : []),
    ...(shift ? [mac ? '⇧' : 'Shift'] : []),
    WRITTEN[key] ?? key,
  ];
}

const WRITTEN: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
  '-': '−',
};

function chordOf(written: string): Chord {
  const parts = written.split('+');
  return {
    mod: parts.includes('Mod'),
    alt: parts.includes('Alt'),
    shift: parts.includes('Shift'),
    key: parts.at(-1) ?? '',
  };
}

function means(pressed: Pressed, chord: Chord, { machine }: Keyboard): boolean {
  const [mod, other] =
    machine === 'mac' ? [pressed.metaKey, pressed.ctrlKey] : [pressed.ctrlKey, pressed.metaKey];
  if (isSign(chord.key) && pressed.key === chord.key && !chord.mod) {
    // A sign is the sign, whatever must be held on this keyboard to type it; control and command alone are no typing.
    return mod === pressed.altKey && !other;
  }
  if (mod !== chord.mod || other || pressed.altKey !== chord.alt) return false;
  if (isSign(chord.key)) return pressed.key === chord.key || (chord.key === '=' && pressed.key === '+');
  return pressed.shiftKey === chord.shift && sits(pressed, chord.key);
}

function isSign(key: string): boolean {
  return /^[^A-Za-z0-9]$/.test(key);
}

/** Whether the pressed key is this letter, figure or named key, even where a held key makes it type something else. */
function sits(pressed: Pressed, key: string): boolean {
  if (pressed.key.toLowerCase() === key.toLowerCase()) return true;
  if (/^\d$/.test(key)) return pressed.code === `Digit${key}`;
  return /^[A-Z]$/.test(key) && !/^[a-z]$/i.test(pressed.key) && pressed.code === `Key${key}`;
}
