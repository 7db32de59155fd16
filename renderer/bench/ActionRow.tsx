// A row of small buttons, each for one action, with its name and its key where the pointer rests.
import { Button, Tooltip, TooltipTrigger } from 'react-aria-components';
import type { ActionName } from '../../shared/contract/actions.ts';
import { actionBook, labelOf } from '../actions/actionBook.ts';
import { writeKeys } from '../actions/keys.ts';
import { useActionsShown } from '../actions/useActions.ts';
import { useApp } from '../state/store.ts';
import { Icon } from './Icon.tsx';

export function ActionRow({
  names,
  label,
}: {
  readonly names: readonly ActionName[];
  readonly label: string;
}) {
  const shown = useActionsShown();
  const keyboard = useApp((s) => s.begun);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for what is filled in.
    <div className="icon-row" role="group" aria-label={label}>
      {names.map((name) => (
        <TooltipTrigger key={name} delay={400}>
          <Button
            className="tool"
            aria-label={labelOf(name, shown)}
            isDisabled={shown.disabled.includes(name)}
            onPress={() => actionBook.run(name)}
          >
            <Icon name={name} />
          </Button>
          <Tooltip className="tooltip" placement="bottom">
            {labelOf(name, shown)}
            {keyboard !== undefined && <kbd>{writeKeys(name, keyboard).join(' ')}</kbd>}
          </Tooltip>
        </TooltipTrigger>
      ))}
    </div>
  );
}
