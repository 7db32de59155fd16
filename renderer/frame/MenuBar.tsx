// The menus of the window, for shells that have none of their own.
import { Fragment, useState } from 'react';
import {
  Button,
  Header,
  Keyboard,
  Menu,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
  Separator,
  Text,
  Toolbar,
} from 'react-aria-components';
import {
  ACTION_NAMES,
  ACTIONS,
  type ActionName,
  MENUS,
  type MenuName,
} from '../../shared/contract/actions.ts';
import { actionBook, labelOf } from '../actions/actionBook.ts';
import { writeKeys } from '../actions/keys.ts';
import { useActionsShown } from '../actions/useActions.ts';
import { openJob } from '../desk/opening.ts';
import { useApp } from '../state/store.ts';

export function MenuBar() {
  const [open, setOpen] = useState<MenuName | undefined>(undefined);
  const step = (name: MenuName, by: number) =>
    setOpen(MENUS[(MENUS.indexOf(name) + by + MENUS.length) % MENUS.length]);
  return (
    <Toolbar aria-label="Menus" className="menus">
      {MENUS.map((name) => (
        <MenuTrigger key={name} isOpen={open === name} onOpenChange={(is) => setOpen(is ? name : undefined)}>
          <Button className="menu-name">{name}</Button>
          <Popover className="popover menu" placement="bottom start" offset={2}>
            {/* biome-ignore lint/a11y/noStaticElementInteractions: it only hears what the menu inside it does. */}
            <div
              role="presentation"
              onKeyDown={(e) => {
                if (e.key === 'ArrowRight') step(name, 1);
                if (e.key === 'ArrowLeft') step(name, -1);
              }}
            >
              <MenuOf name={name} />
            </div>
          </Popover>
        </MenuTrigger>
      ))}
    </Toolbar>
  );
}

/** How many of the jobs opened lately stand in the menu. */
const MAX_RECENT_JOBS = 6;

function MenuOf({ name }: { readonly name: MenuName }) {
  const shown = useActionsShown();
  const keyboard = useApp((s) => s.begun);
  const all = useApp((s) => s.recents);
  if (keyboard === undefined) return null;
  const actions = ACTION_NAMES.filter((a) => ACTIONS[a].menu === name);
  const recents = name === 'File' ? all.filter((r) => r.there).slice(0, MAX_RECENT_JOBS) : [];
  return (
    <Menu
      aria-label={name}
      className="menu-items"
      disabledKeys={actions.filter((a) => shown.disabled.includes(a))}
      onAction={(key) => {
        const recent = recents.find((r) => r.file === key);
        if (recent === undefined) actionBook.run(key as ActionName);
        else void openJob(recent);
      }}
    >
      {actions.map((action) => (
        <Fragment key={action}>
          {'rule' in ACTIONS[action] ? <Separator className="rule" /> : null}
          <MenuItem id={action} className="menu-item" textValue={labelOf(action, shown)}>
            <Text slot="label">{labelOf(action, shown)}</Text>
            <Keyboard>{writeKeys(action, keyboard).join(' ')}</Keyboard>
          </MenuItem>
        </Fragment>
      ))}
      {recents.length === 0 ? null : (
        <MenuSection className="menu-section">
          <Header>Opened lately</Header>
          {recents.map((r) => (
            <MenuItem key={r.file} id={r.file} className="menu-item" textValue={r.title}>
              <Text slot="label">{r.title}</Text>
              <Text slot="description" className="soft">
                {r.name}
              </Text>
            </MenuItem>
          ))}
        </MenuSection>
      )}
    </Menu>
  );
}
