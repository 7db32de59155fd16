// Every action with its key, by menu.
import { ACTION_NAMES, ACTIONS, MENUS } from '../../shared/contract/actions.ts';
import { writeKeys } from '../actions/keys.ts';
import { Button } from '../controls/Button.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { useApp } from '../state/store.ts';

/** Keys of the bench that move things and are no actions. */
const ON_THE_BENCH: readonly (readonly [string, string])[] = [
  ['Nudge what is selected', 'Arrows'],
  ['Nudge by ten', 'Shift Arrows'],
  ['The next piece, the one before', 'Page Down, Page Up'],
  ['Drag without snapping', 'Alt while dragging'],
];

export function KeysDialog({ onClose }: { readonly onClose: () => void }) {
  const begun = useApp((s) => s.begun);
  if (begun === undefined) return null;
  return (
    <Dialog title="Keys" width="broad" onClose={onClose}>
      <div className="keys-sheet">
        {MENUS.map((menu) => (
          <section key={menu} aria-label={menu}>
            <h3>{menu}</h3>
            <dl>
              {ACTION_NAMES.filter((name) => ACTIONS[name].menu === menu).map((name) => (
                <div key={name}>
                  <dt>{ACTIONS[name].label}</dt>
                  <dd>
                    {writeKeys(name, begun).map((key) => (
                      <kbd key={key}>{key}</kbd>
                    ))}
                  </dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
        <section aria-label="On the bench">
          <h3>On the bench</h3>
          <dl>
            {ON_THE_BENCH.map(([what, key]) => (
              <div key={what}>
                <dt>{what}</dt>
                <dd>
                  <kbd>{key}</kbd>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      </div>
      <DialogAnswers>
        <Button kind="main" onPress={onClose}>
          Done
        </Button>
      </DialogAnswers>
    </Dialog>
  );
}
