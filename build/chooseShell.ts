// Which shell `npm start` opens: the desktop window, for which Electron is fetched at the first start, or the browser.
import { electronBinary } from './electronBinary.ts';
import { fetchElectron, type Progress } from './fetchElectron.ts';

export type Shell =
  | { readonly kind: 'desktop'; readonly electron: string }
  /** `because` is told to the person who did not choose it. */
  | { readonly kind: 'browser'; readonly because?: string };

export interface Choosing {
  readonly house: string;
  readonly args: readonly string[];
  readonly onProgress: (progress: Progress) => void;
  readonly stop?: AbortSignal;
  readonly patience?: { readonly answer: number; readonly stall: number };
}

/** What chooses the browser outright: by name, or by asking for nothing but its link. */
const FOR_THE_BROWSER = ['--browser', '--link-only'];

export async function chooseShell({ args, ...fetching }: Choosing): Promise<Shell> {
  if (args.some((arg) => FOR_THE_BROWSER.includes(arg))) return { kind: 'browser' };
  if (!hasScreen()) return { kind: 'browser', because: 'There is no screen here for a desktop window' };
  const here = electronBinary(fetching.house);
  if (here !== undefined) return { kind: 'desktop', electron: here };
  const fetched = await fetchElectron(fetching);
  return fetched.ok
    ? { kind: 'desktop', electron: fetched.binary }
    : { kind: 'browser', because: `Electron could not be fetched (${fetched.because})` };
}

/** Only on Linux a machine may have none, and says where it is. */
function hasScreen(): boolean {
  const { DISPLAY, WAYLAND_DISPLAY } = process.env;
  return process.platform !== 'linux' || Boolean(DISPLAY) || Boolean(WAYLAND_DISPLAY);
}
