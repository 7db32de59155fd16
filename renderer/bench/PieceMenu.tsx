// What can be done with the selected pieces, where the hand asked for it.
import { Fragment } from 'react';
import { Keyboard, Menu, MenuItem, Popover, Separator, Text } from 'react-aria-components';
import type { ActionName } from '../../shared/contract/actions.ts';
import { actionBook, labelOf } from '../actions/actionBook.ts';
import { writeKeys } from '../actions/keys.ts';
import { useActionsShown } from '../actions/useActions.ts';
import { useApp } from '../state/store.ts';
import { Icon } from './Icon.tsx';

const GROUPS = [
  ['turn-left', 'turn-right', 'turn-half', 'swap-faces'],
  ['duplicate', 'step-and-repeat', 'remove'],
  ['align-left', 'align-middle-across', 'align-right', 'align-lead', 'align-middle-along', 'align-tail'],
  ['take-in-hand', 'choose-all', 'lay-out'],
] as const satisfies readonly (readonly ActionName[])[];

export function PieceMenu({
  at,
  onClose,
}: {
  /** The element beside which it opens. */
  readonly at: Element;
  readonly onClose: () => void;
}) {
  const shown = useActionsShown();
  const keyboard = useApp((s) => s.begun);
  return (
    <Popover
      triggerRef={{ current: at }}
      isOpen
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
      placement="bottom start"
      className="popover menu"
      aria-label="What can be done with the selected pieces"
    >
      <Menu
        aria-label="Chosen pieces"
        className="menu-items piece-menu"
        disabledKeys={shown.disabled}
        onAction={(key) => actionBook.run(key as ActionName)}
        autoFocus="first"
      >
        {GROUPS.map((names, i) => (
          <Fragment key={names[0]}>
            {i > 0 && <Separator className="rule" />}
            {names.map((name) => (
              <MenuItem key={name} id={name} className="menu-item" textValue={labelOf(name, shown)}>
                <Icon name={name} />
                <Text slot="label">{labelOf(name, shown)}</Text>
                {keyboard !== undefined && <Keyboard>{writeKeys(name, keyboard).join(' ')}</Keyboard>}
              </MenuItem>
            ))}
          </Fragment>
        ))}
      </Menu>
    </Popover>
  );
}
