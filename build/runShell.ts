// Runs the app in its shell; where Electron ends before it has shown its window, the browser takes its place.
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { STARTER_LISTENS, WINDOW_SHOWN } from '../electron/desktop/tellStarter.ts';
import type { Shell } from './chooseShell.ts';

/** Runs a built app to its end. The exit code. */
export async function runShell(shell: Shell, app: string, args: readonly string[]): Promise<number> {
  const running = new Running();
  if (shell.kind === 'desktop') {
    const ended = await running.run(shell.electron, [join(app, 'host/main.cjs'), ...args]);
    if (ended.inOrder || ended.told === WINDOW_SHOWN) return ended.code;
    sayWhyBrowser(`Electron ended before its window was there (${ended.how})`);
  } else if (shell.because !== undefined) sayWhyBrowser(shell.because);
  const forBrowser = args.filter((arg) => arg !== '--browser');
  return (await running.run(process.execPath, [join(app, 'host/loopback.mjs'), ...forBrowser])).code;
}

function sayWhyBrowser(because: string): void {
  console.log(`${because}, so the app opens in your browser; npm start -- --browser goes there at once.`);
}

interface Ended {
  readonly code: number;
  /** As it should, or because the person ended it. */
  readonly inOrder: boolean;
  readonly how: string;
  /** What the process told last. */
  readonly told: unknown;
}

/** One process at a time, which ends when this one is to end. */
class Running {
  #process: ChildProcess | undefined;
  #isEnding = false;

  constructor() {
    // Control+C reaches what was started by itself; it ends in good order, and this with it.
    process.on('SIGINT', () => {
      this.#isEnding = true;
    });
    process.on('SIGTERM', () => {
      this.#isEnding = true;
      this.#process?.kill('SIGTERM');
    });
  }

  run(command: string, args: readonly string[]): Promise<Ended> {
    const started = spawn(command, args, {
      stdio: ['inherit', 'inherit', 'inherit', 'ipc'],
      env: { ...process.env, [STARTER_LISTENS]: '1' },
    });
    this.#process = started;
    let told: unknown;
    started.on('message', (message) => {
      told = message;
    });
    return new Promise((resolve) => {
      started.on('error', ({ message }) => resolve({ code: 1, inOrder: this.#isEnding, how: message, told }));
      started.on('exit', (code, signal) =>
        resolve({
          code: code ?? 1,
          inOrder: code === 0 || this.#isEnding,
          how: signal ?? `code ${code}`,
          told,
        }),
      );
    });
  }
}
