// What each action does just now: parts of the window write it in while they are on the screen.
import { createStore } from 'zustand/vanilla';
import { ACTION_NAMES, ACTIONS, type ActionName } from '../../shared/contract/actions.ts';

/** How an action is done, whether it can be done now, and what it is called where that changes. */
export interface Doing {
  readonly run: () => void;
  /** It can, unless this says no. */
  readonly can?: boolean | undefined;
  /** `Undo Move piece`; else the label of the action. */
  readonly label?: string | undefined;
}

/** What one part of the window can do. */
export type Doings = Readonly<Partial<Record<ActionName, Doing>>>;

/** What is shown of the actions in menus. */
export interface ActionsShown {
  readonly disabled: readonly ActionName[];
  readonly labels: Readonly<Partial<Record<ActionName, string>>>;
}

/** A part's page in the book. */
export interface Page {
  readonly write: (doings: Doings) => void;
  readonly tearOut: () => void;
}

export interface ActionBook {
  /** Opens a page; where two pages tell of one action, the later page counts. */
  readonly open: () => Page;
  /** Does the action, and says whether it could be done. */
  readonly run: (name: ActionName) => boolean;
  readonly shown: () => ActionsShown;
  /** Listens for changes of what is shown. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function createActionBook(): ActionBook {
  let pages: readonly { doings: Doings }[] = [];
  const shown = createStore<ActionsShown>(() => ({ disabled: ACTION_NAMES, labels: {} }));

  const find = (name: ActionName) => pages.findLast((p) => p.doings[name] !== undefined)?.doings[name];
  const can = (name: ActionName) => {
    const doing = find(name);
    return doing !== undefined && doing.can !== false;
  };
  const tell = () => {
    const next: ActionsShown = {
      disabled: ACTION_NAMES.filter((name) => !can(name)),
      labels: Object.fromEntries(
        ACTION_NAMES.flatMap((name) => {
          const label = find(name)?.label;
          return label === undefined ? [] : [[name, label]];
        }),
      ),
    };
    if (JSON.stringify(next) !== JSON.stringify(shown.getState())) shown.setState(next, true);
  };

  return {
    open: () => {
      const page: { doings: Doings } = { doings: {} };
      pages = [...pages, page];
      return {
        write: (doings) => {
          page.doings = doings;
          tell();
        },
        tearOut: () => {
          pages = pages.filter((p) => p !== page);
          tell();
        },
      };
    },
    run: (name) => {
      if (!can(name)) return false;
      find(name)?.run();
      return true;
    },
    shown: shown.getState,
    subscribe: shown.subscribe,
  };
}

/** The book of this window. */
export const actionBook = createActionBook();

/** What an action is called just now. */
export function labelOf(name: ActionName, shown: ActionsShown): string {
  return shown.labels[name] ?? ACTIONS[name].label;
}
