// Tells the program that started the desktop shell, where one wants to know, that the window is there.

/** Set for the desktop shell by a starter that listens. */
export const STARTER_LISTENS = 'TURNLAY_STARTER_LISTENS';

export const WINDOW_SHOWN = 'window-shown';

export function tellStarter(): void {
  if (process.env[STARTER_LISTENS] !== undefined) process.send?.(WINDOW_SHOWN);
}
