// Keys mean one action each, on every machine and keyboard.
import { describe, expect, it } from 'vitest';
import {
  actionFor,
  type Keyboard,
  type Pressed,
  shortcutOf,
  typesInFields,
  writeKeys,
} from '../../../renderer/actions/keys.ts';
import { ACTION_NAMES } from '../../../shared/contract/actions.ts';

const linux: Keyboard = { shell: 'desktop', machine: 'linux' };
const mac: Keyboard = { shell: 'desktop', machine: 'mac' };
const browser: Keyboard = { shell: 'browser', machine: 'windows' };

const press = (key: string, held: Partial<Pressed> = {}): Pressed => ({
  key,
  code: /^[a-z]$/i.test(key) ? `Key${key.toUpperCase()}` : key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

describe('a pressed key', () => {
  it.each([
    ['Control and Z undoes', press('z', { ctrlKey: true }), linux, 'undo'],
    ['Command and Z undoes on a Mac', press('z', { metaKey: true }), mac, 'undo'],
    ['with Shift it is done again', press('Z', { ctrlKey: true, shiftKey: true }), linux, 'redo'],
    ['a letter alone', press('x'), linux, 'swap-faces'],
    ['a letter with Shift', press('T', { shiftKey: true }), linux, 'turn-sheet-wrong'],
    ['a sign', press('['), linux, 'turn-left'],
    [
      'a sign that needs Alt and Control to be typed',
      press('[', { ctrlKey: true, altKey: true }),
      linux,
      'turn-left',
    ],
    ['plus is as good as equals', press('+', { ctrlKey: true, shiftKey: true }), linux, 'zoom-in'],
    ['a comma', press(',', { ctrlKey: true }), linux, 'open-settings'],
    ['a figure that needs Shift', press('&', { ctrlKey: true, code: 'Digit1' }), linux, 'stage-art'],
    [
      'a letter that Alt turns into another sign',
      press('Â', { altKey: true, shiftKey: true, code: 'KeyM' }),
      mac,
      'align-middle-across',
    ],
    ['a named key', press('Delete'), linux, 'remove'],
    ['an arrow', press('ArrowLeft', { altKey: true, shiftKey: true }), linux, 'align-left'],
    ['Control and Enter', press('Enter', { ctrlKey: true }), linux, 'send-job'],
    ['F1', press('F1'), linux, 'show-keys'],
  ] as const)('%s', (_what, pressed, keyboard, action) => {
    expect(actionFor(pressed, keyboard)).toBe(action);
  });

  it.each([
    ['Control on a Mac is not Command', press('z', { ctrlKey: true }), mac],
    ['Command elsewhere is not Control', press('z', { metaKey: true }), linux],
    ['a letter with Alt', press('x', { altKey: true }), linux],
    ['a sign with Control alone', press('[', { ctrlKey: true }), linux],
    ['a letter that sits where another is looked for', press('y', { ctrlKey: true, code: 'KeyZ' }), linux],
    ['an arrow alone', press('ArrowLeft'), linux],
  ] as const)('means nothing: %s', (_what, pressed, keyboard) => {
    expect(actionFor(pressed, keyboard)).toBeUndefined();
  });

  it('that a browser keeps to itself has another there', () => {
    expect(actionFor(press('n', { altKey: true }), browser)).toBe('new-job');
    expect(actionFor(press('n', { ctrlKey: true }), browser)).toBeUndefined();
    expect(actionFor(press('n', { ctrlKey: true }), linux)).toBe('new-job');
  });
});

describe('the keys', () => {
  it.each([linux, mac, browser])('are one for each action (%o)', (keyboard) => {
    const keys = ACTION_NAMES.map((name) => shortcutOf(name, keyboard));
    expect(new Set(keys).size).toBe(ACTION_NAMES.length);
  });

  it('are written as they stand on the machine', () => {
    expect(writeKeys('redo', linux)).toEqual(['Ctrl', 'Shift', 'Z']);
    expect(writeKeys('redo', mac)).toEqual(['⌘', '⇧', 'Z']);
    expect(writeKeys('align-left', linux)).toEqual(['Alt', 'Shift', '←']);
    expect(writeKeys('zoom-out', linux)).toEqual(['Ctrl', '−']);
    expect(writeKeys('choose-none', linux)).toEqual(['Esc']);
  });

  it('that also type are left to a field that is being typed in', () => {
    const typing = ACTION_NAMES.filter((name) => typesInFields(name, linux));
    expect(typing).toContain('remove');
    expect(typing).toContain('swap-faces');
    expect(typing).toContain('choose-none');
    expect(typing).not.toContain('save-job');
    expect(typing).not.toContain('show-keys');
    expect(typing).not.toContain('align-left');
  });
});
