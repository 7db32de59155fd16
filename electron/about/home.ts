// Where the program keeps what is its own: settings, recent jobs, and jobs kept for after a crash.
import { join } from 'node:path';

/** What the place depends on. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The person's own folder. */
  readonly userHome: string;
}

/**
 * The folder, as each system wishes it. `TURNLAY_HOME` puts it elsewhere.
 *
 * @source XDG Base Directory Specification 0.8 for Linux; the others are common practice, no source.
 */
export function homeOf({ platform, env, userHome }: Surroundings): string {
  if (env.TURNLAY_HOME) return env.TURNLAY_HOME;
  switch (platform) {
    case 'darwin':
      return join(userHome, 'Library', 'Application Support', 'Turnlay');
    case 'win32':
      return join(env.APPDATA ?? join(userHome, 'AppData', 'Roaming'), 'Turnlay');
    default:
      return join(env.XDG_CONFIG_HOME ?? join(userHome, '.config'), 'turnlay');
  }
}
