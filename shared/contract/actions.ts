// Everything a person can do from the menu or with a key, in one list: the native menu, the window's own menu and the
// keys are all made from it.

/** The menus, in the order they stand. */
export const MENUS = ['File', 'Edit', 'Arrange', 'Sheet', 'View', 'Help'] as const;
export type MenuName = (typeof MENUS)[number];

export interface ActionEntry {
  readonly label: string;
  readonly menu: MenuName;
  /** `Mod` is Command on a Mac and Control elsewhere; then the name of the key as the DOM has it. */
  readonly key: string;
  /** Whether a line is drawn before it in the menu. */
  readonly rule?: true;
}

export const ACTIONS = {
  'new-job': { label: 'New job…', menu: 'File', key: 'Mod+N' },
  'open-job': { label: 'Open…', menu: 'File', key: 'Mod+O' },
  'open-brief': { label: 'Open a brief…', menu: 'File', key: 'Mod+Shift+B' },
  'add-art': { label: 'Add art…', menu: 'File', key: 'Mod+Shift+O' },
  'save-job': { label: 'Save', menu: 'File', key: 'Mod+S', rule: true },
  'save-job-as': { label: 'Save as…', menu: 'File', key: 'Mod+Shift+S' },
  'revert-job': { label: 'Revert to saved', menu: 'File', key: 'Mod+Alt+R' },
  'change-brief': { label: 'Change the brief…', menu: 'File', key: 'Mod+B', rule: true },
  'check-art': { label: 'Recheck art', menu: 'File', key: 'Mod+Shift+K' },
  'send-job': { label: 'Send to the RIP…', menu: 'File', key: 'Mod+Enter', rule: true },
  'stop-sending': { label: 'Stop sending', menu: 'File', key: 'Mod+.' },
  'prove-sent': { label: 'Prove what was sent', menu: 'File', key: 'Mod+Alt+P' },
  'write-papers': { label: 'Write the run sheet…', menu: 'File', key: 'Mod+P' },
  'choose-rip-folder': { label: 'Choose the RIP folder…', menu: 'File', key: 'Mod+Alt+F' },
  'open-library': { label: 'Printers and papers…', menu: 'File', key: 'Mod+Alt+L', rule: true },
  'open-settings': { label: 'Settings…', menu: 'File', key: 'Mod+,' },
  'close-job': { label: 'Close job', menu: 'File', key: 'Mod+Shift+W' },

  undo: { label: 'Undo', menu: 'Edit', key: 'Mod+Z' },
  redo: { label: 'Redo', menu: 'Edit', key: 'Mod+Shift+Z' },
  duplicate: { label: 'Duplicate', menu: 'Edit', key: 'Mod+D', rule: true },
  remove: { label: 'Remove', menu: 'Edit', key: 'Delete' },
  'choose-all': { label: 'Select all pieces', menu: 'Edit', key: 'Mod+A', rule: true },
  'choose-none': { label: 'Select none', menu: 'Edit', key: 'Escape' },

  'turn-left': { label: 'Quarter turn left', menu: 'Arrange', key: '[' },
  'turn-right': { label: 'Quarter turn right', menu: 'Arrange', key: ']' },
  'turn-half': { label: 'Half turn', menu: 'Arrange', key: 'U' },
  'swap-faces': { label: 'Swap front and back', menu: 'Arrange', key: 'X' },
  'align-left': { label: 'Align left edges', menu: 'Arrange', key: 'Alt+Shift+ArrowLeft', rule: true },
  'align-right': { label: 'Align right edges', menu: 'Arrange', key: 'Alt+Shift+ArrowRight' },
  'align-lead': { label: 'Align towards the lead edge', menu: 'Arrange', key: 'Alt+Shift+ArrowUp' },
  'align-tail': { label: 'Align towards the tail', menu: 'Arrange', key: 'Alt+Shift+ArrowDown' },
  'align-middle-across': { label: 'Align middles across the feed', menu: 'Arrange', key: 'Alt+Shift+M' },
  'align-middle-along': { label: 'Align middles along the feed', menu: 'Arrange', key: 'Alt+Shift+L' },
  'distribute-across': {
    label: 'Distribute across the feed',
    menu: 'Arrange',
    key: 'Alt+Shift+C',
    rule: true,
  },
  'distribute-along': { label: 'Distribute along the feed', menu: 'Arrange', key: 'Alt+Shift+N' },
  'step-and-repeat': { label: 'Step and repeat…', menu: 'Arrange', key: 'R', rule: true },

  'lay-out': { label: 'Lay out the sheet afresh', menu: 'Sheet', key: 'Mod+L' },
  'turn-sheet': { label: 'Turn the sheet', menu: 'Sheet', key: 'T', rule: true },
  'turn-sheet-wrong': { label: 'Turn it the wrong way', menu: 'Sheet', key: 'Shift+T' },
  'take-in-hand': { label: 'Take the piece in hand', menu: 'Sheet', key: 'H' },
  'begin-run': { label: 'Begin a run', menu: 'Sheet', key: 'Mod+Shift+Enter', rule: true },
  'take-back-count': { label: 'Undo last count', menu: 'Sheet', key: 'Mod+Shift+Backspace' },

  'stage-art': { label: 'Art', menu: 'View', key: 'Mod+1' },
  'stage-plan': { label: 'Plan', menu: 'View', key: 'Mod+2' },
  'stage-bench': { label: 'Bench', menu: 'View', key: 'Mod+3' },
  'stage-light-table': { label: 'Light table', menu: 'View', key: 'Mod+4' },
  'stage-run': { label: 'Run', menu: 'View', key: 'Mod+5' },
  'zoom-in': { label: 'Zoom in', menu: 'View', key: 'Mod+=', rule: true },
  'zoom-out': { label: 'Zoom out', menu: 'View', key: 'Mod+-' },
  'zoom-fit': { label: 'Whole sheet', menu: 'View', key: 'Mod+0' },
  'switch-surround': { label: 'Light or dark background', menu: 'View', key: 'Mod+Shift+L', rule: true },

  'show-keys': { label: 'Keys', menu: 'Help', key: 'F1' },
  'show-about': { label: 'About Turnlay', menu: 'Help', key: 'Shift+F1' },
} as const satisfies Readonly<Record<string, ActionEntry>>;

export type ActionName = keyof typeof ACTIONS;

export const ACTION_NAMES = Object.keys(ACTIONS) as readonly ActionName[];
