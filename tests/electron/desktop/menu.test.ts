// The native menu on each system: every action in its menu, with its key shown where that does no harm.
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { showMenu } from '../../../electron/desktop/menu.ts';
import {
  ACTION_NAMES,
  ACTIONS,
  type ActionEntry,
  type ActionName,
  MENUS,
} from '../../../shared/contract/actions.ts';
import type { MenuItem } from '../../kit/electronStandIn/standIn.ts';

const shown = vi.hoisted(() => ({ menu: [] as unknown }));
vi.mock('electron', () => ({
  Menu: {
    buildFromTemplate: (template: unknown) => template,
    setApplicationMenu: (menu: unknown) => {
      shown.menu = menu;
    },
  },
}));

const chosen: ActionName[] = [];
const show = (isMac: boolean): readonly MenuItem[] => {
  showMenu({ disabled: ['undo'], labels: { redo: 'Redo Turn piece' } }, isMac, (action) =>
    chosen.push(action),
  );
  return shown.menu as readonly MenuItem[];
};
const itemsOf = (menu: readonly MenuItem[]) => menu.flatMap((m) => m.submenu ?? []);
const item = (menu: readonly MenuItem[], id: ActionName) => itemsOf(menu).find((i) => i.id === id);

beforeEach(() => {
  chosen.length = 0;
});

describe('the native menu', () => {
  it.each([true, false])('has every action once, under its own menu (on a Mac: %s)', (isMac) => {
    const menu = show(isMac);
    expect(menu.flatMap((m) => m.label ?? [])).toEqual(MENUS);
    for (const { label, submenu } of menu.filter((m) => m.label !== undefined)) {
      const ids = (submenu ?? []).flatMap((i) => i.id ?? []);
      expect(ids).toEqual(ACTION_NAMES.filter((name) => ACTIONS[name].menu === label));
    }
  });

  it('tells which action is chosen, and shows what cannot be done and what is called otherwise', () => {
    const menu = show(false);
    for (const name of ACTION_NAMES) item(menu, name)?.click?.();
    expect(chosen).toEqual(ACTION_NAMES);
    expect(
      itemsOf(menu)
        .filter((i) => i.enabled === false)
        .map((i) => i.id),
    ).toEqual(['undo']);
    expect(item(menu, 'redo')?.label).toBe('Redo Turn piece');
    expect(item(menu, 'undo')?.label).toBe('Undo');
  });

  it('shows the keys as the system writes them, and leaves listening to the window', () => {
    const menu = show(false);
    expect(item(menu, 'save-job-as')?.accelerator).toBe('CmdOrCtrl+Shift+S');
    expect(item(menu, 'send-job')?.accelerator).toBe('CmdOrCtrl+Return');
    expect(item(menu, 'align-left')?.accelerator).toBe('Alt+Shift+Left');
    expect(item(menu, 'choose-none')?.accelerator).toBe('Esc');
    for (const name of ACTION_NAMES) {
      expect(item(menu, name)?.accelerator).not.toMatch(/Mod|Arrow/);
      expect(item(menu, name)?.registerAccelerator).toBe(false);
    }
  });

  it('takes no plain key away from typing on a Mac, where a shown key is also heard', () => {
    const menu = show(true);
    for (const name of ACTION_NAMES) {
      const { key }: ActionEntry = ACTIONS[name];
      expect(item(menu, name)?.accelerator !== undefined, name).toBe(key.startsWith('Mod+'));
    }
  });

  it('has what the system itself can do, where each system expects it', () => {
    const roles = (isMac: boolean) =>
      show(isMac)
        .flatMap((m) => [m, ...(m.submenu ?? [])])
        .flatMap((i) => i.role ?? []);
    expect(roles(false)).toEqual(['quit', 'cut', 'copy', 'paste', 'togglefullscreen']);
    // @source Apple, Human Interface Guidelines, The menu bar: the app's menu first, Window before Help (from memory)
    const ofTheApp = ['appMenu', 'services', 'hide', 'hideOthers', 'unhide', 'quit'];
    expect(roles(true)).toEqual([...ofTheApp, 'cut', 'copy', 'paste', 'togglefullscreen', 'windowMenu']);
    expect(show(true).map((m) => m.label ?? m.role)).toEqual([
      'appMenu',
      'File',
      'Edit',
      'Arrange',
      'Sheet',
      'View',
      'windowMenu',
      'Help',
    ]);
  });

  it('tells of the program in the window, also from the first menu of a Mac', () => {
    const [first] = show(true);
    for (const label of ['About Turnlay', 'Settings…']) {
      first?.submenu?.find((i) => i.label === label)?.click?.();
    }
    expect(chosen).toEqual(['show-about', 'open-settings']);
  });

  it('draws its lines where the list of actions says', () => {
    const menu = show(false);
    const file = menu.find((m) => m.label === 'File')?.submenu ?? [];
    const itemBefore = (id: ActionName) => file[file.findIndex((i) => i.id === id) - 1];
    expect(itemBefore('save-job')?.type).toBe('separator');
    expect(itemBefore('save-job-as')?.id).toBe('save-job');
  });
});
