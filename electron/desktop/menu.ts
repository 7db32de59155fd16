// The native menu, made from the list of actions and from what the window says of them now.
import { Menu, type MenuItemConstructorOptions } from 'electron';
import {
  ACTIONS,
  type ActionEntry,
  type ActionName,
  MENUS,
  type MenuName,
} from '../../shared/contract/actions.ts';
import type { Shown } from '../../shared/contract/app.ts';

/** Items that the system itself knows how to do, under the actions of a menu. */
const OF_THE_SYSTEM: Readonly<Partial<Record<MenuName, readonly MenuItemConstructorOptions[]>>> = {
  Edit: [{ type: 'separator' }, { role: 'cut' }, { role: 'copy' }, { role: 'paste' }],
  View: [{ type: 'separator' }, { role: 'togglefullscreen' }],
};

/** Shows the menu as the window stands. `choose` is told what the person picks. */
export function showMenu(
  shown: Pick<Shown, 'disabled' | 'labels'>,
  isMac: boolean,
  choose: (action: ActionName) => void,
): void {
  const disabled = new Set(shown.disabled);
  const item = (action: ActionName): MenuItemConstructorOptions[] => {
    const entry: ActionEntry = ACTIONS[action];
    const made: MenuItemConstructorOptions = {
      id: action,
      label: shown.labels[action] ?? entry.label,
      enabled: !disabled.has(action),
      click: () => choose(action),
      ...keyOf(entry.key, isMac),
    };
    return entry.rule === true ? [{ type: 'separator' }, made] : [made];
  };
  const names = Object.keys(ACTIONS) as ActionName[];
  const menus = MENUS.map(
    (menu): MenuItemConstructorOptions => ({
      label: menu,
      submenu: [
        ...names.filter((name) => ACTIONS[name].menu === menu).flatMap(item),
        ...(OF_THE_SYSTEM[menu] ?? []),
        ...(menu === 'File' && !isMac ? LEAVING : []),
      ],
    }),
  );
  const ofMac = [appMenu(choose), ...menus.slice(0, -1), { role: 'windowMenu' as const }, ...menus.slice(-1)];
  Menu.setApplicationMenu(Menu.buildFromTemplate(isMac ? ofMac : menus));
}

const LEAVING: readonly MenuItemConstructorOptions[] = [{ type: 'separator' }, { role: 'quit' }];

/** The first menu on a Mac. What it tells of the program is told where it is told elsewhere: in the window. */
function appMenu(choose: (action: ActionName) => void): MenuItemConstructorOptions {
  return {
    role: 'appMenu',
    submenu: [
      { label: ACTIONS['show-about'].label, click: () => choose('show-about') },
      { type: 'separator' },
      { label: ACTIONS['open-settings'].label, click: () => choose('open-settings') },
      { type: 'separator' },
      { role: 'services' },
      { type: 'separator' },
      { role: 'hide' },
      { role: 'hideOthers' },
      { role: 'unhide' },
      { type: 'separator' },
      { role: 'quit' },
    ],
  };
}

const NAMED: Readonly<Record<string, string>> = {
  Mod: 'CmdOrCtrl',
  ArrowLeft: 'Left',
  ArrowRight: 'Right',
  ArrowUp: 'Up',
  ArrowDown: 'Down',
  Enter: 'Return',
  Escape: 'Esc',
};

/**
 * The key as the menu shows it. The window itself listens to keys, so the menu only shows them; a Mac would take a
 * plain key away from typing, so there those are left out.
 */
function keyOf(key: string, isMac: boolean): MenuItemConstructorOptions {
  if (isMac && !key.startsWith('Mod+')) return {};
  const accelerator = key
    .split('+')
    .map((part) => NAMED[part] ?? part)
    .join('+');
  return { accelerator, registerAccelerator: false };
}
