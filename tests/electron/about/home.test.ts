// Where the program keeps what is its own, on each system.
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { homeOf } from '../../../electron/about/home.ts';

const at = (platform: NodeJS.Platform, env: Record<string, string> = {}) =>
  homeOf({ platform, env, userHome: '/people/wren' });

describe('the place of what is the program’s own', () => {
  // XDG Base Directory Specification 0.8: $XDG_CONFIG_HOME, by default $HOME/.config.
  it('is where each system keeps such things', () => {
    expect(at('linux')).toBe(join('/people/wren', '.config', 'turnlay'));
    expect(at('linux', { XDG_CONFIG_HOME: '/conf' })).toBe(join('/conf', 'turnlay'));
    expect(at('darwin')).toBe(join('/people/wren', 'Library', 'Application Support', 'Turnlay'));
    expect(at('win32', { APPDATA: '/roam' })).toBe(join('/roam', 'Turnlay'));
    expect(at('win32')).toBe(join('/people/wren', 'AppData', 'Roaming', 'Turnlay'));
  });

  it('can be put elsewhere', () => {
    expect(at('darwin', { TURNLAY_HOME: '/stick/turnlay' })).toBe('/stick/turnlay');
  });
});
