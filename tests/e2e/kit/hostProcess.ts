// A host for a test: a process of its own, in a home of its own, that can be ended the hard way.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';

export interface HostProcess {
  /** The link that opens the window, once. */
  readonly link: string;
  /** Ends it as a power cut would. */
  kill(): Promise<void>;
  /** Ends it as Control+C does. */
  end(): Promise<void>;
}

/** Starts a loopback host for a person whose folder is `folder`, with the built app. */
export async function startHost(
  app: string,
  folder: string,
  jobs: readonly string[] = [],
): Promise<HostProcess> {
  const host = spawn(process.execPath, [join(app, 'host/loopback.mjs'), '--link-only', ...jobs], {
    env: { ...process.env, HOME: folder, USERPROFILE: folder, TURNLAY_HOME: join(folder, '.turnlay') },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  return { link: await linkOf(host), kill: () => stop(host, 'SIGKILL'), end: () => stop(host, 'SIGTERM') };
}

async function stop(host: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (host.exitCode !== null || host.signalCode !== null) return;
  const ended = once(host, 'exit');
  host.kill(signal);
  await ended;
}

/** Waits for the line that says where the window is. */
function linkOf(host: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const hear = (chunk: Buffer) => {
      said += chunk.toString('utf8');
      const link = /Turnlay is open at (\S+)/.exec(said)?.[1];
      if (link !== undefined) resolve(link);
    };
    host.stdout?.on('data', hear);
    host.stderr?.on('data', hear);
    host.on('exit', () => reject(new Error(`The host did not start:\n${said}`)));
  });
}
