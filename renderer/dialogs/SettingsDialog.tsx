// What is set once for all jobs; each is remembered as soon as it is changed.
import { THEMES, type Theme } from '../../shared/contract/settings.ts';
import { UNITS } from '../../shared/units/length.ts';
import { Button } from '../controls/Button.tsx';
import { RadioButtons } from '../controls/Choice.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { TakenField } from '../controls/Field.tsx';
import { Tick } from '../controls/Tick.tsx';
import { UNIT_NAMES } from '../controls/unitNames.ts';
import { changeSettings, chooseRipFolder } from '../desk/settings.ts';
import { useApp } from '../state/store.ts';

const THEME_NAMES: Readonly<Record<Theme, string>> = {
  'as-system': 'as the system has it',
  light: 'light',
  dark: 'dark',
};

export function SettingsDialog({ onClose }: { readonly onClose: () => void }) {
  const settings = useApp((s) => s.settings);
  const { ripFolder } = settings;
  return (
    <Dialog title="Settings" onClose={onClose}>
      <RadioButtons
        label="Unit of new jobs"
        value={settings.units}
        options={UNITS.map((value) => ({ value, label: UNIT_NAMES[value] }))}
        onChange={(units) => void changeSettings({ units })}
      />
      <RadioButtons
        label="Background"
        value={settings.theme}
        options={THEMES.map((value) => ({ value, label: THEME_NAMES[value] }))}
        onChange={(theme) => void changeSettings({ theme })}
      />
      {/* biome-ignore lint/a11y/useSemanticElements: it holds a sentence and buttons, no fields. */}
      <div className="setting" role="group" aria-label="RIP folder">
        <span className="soft">RIP folder</span>
        <div className="setting-row">
          <span className="setting-value">{ripFolder?.place ?? 'None has been chosen yet.'}</span>
          <Button onPress={() => void chooseRipFolder()}>Choose…</Button>
          {ripFolder !== undefined && (
            <Button kind="quiet" onPress={() => void changeSettings({ ripFolder: null })}>
              Forget
            </Button>
          )}
        </div>
      </div>
      <TakenField
        label="The files of new jobs are named"
        value={settings.fileNames}
        take={(typed) => {
          if (typed.trim() === '') return 'The files need a pattern for their names.';
          void changeSettings({ fileNames: typed.trim() });
          return undefined;
        }}
      />
      <Tick
        label="New jobs are printed with marks"
        on={settings.marks}
        onChange={(marks) => void changeSettings({ marks })}
      />
      <DialogAnswers>
        <Button kind="main" onPress={onClose}>
          Done
        </Button>
      </DialogAnswers>
    </Dialog>
  );
}
