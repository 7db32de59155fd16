// A real disk on which one chosen step, or every step from there on, fails as a system would let it fail.
import type { FileHandle } from 'node:fs/promises';
import { type Disk, NODE_DISK } from '../../electron/disk/disk.ts';

export interface FaultyDisk extends Disk {
  /** The steps taken so far, in order. */
  readonly steps: string[];
}

/** An error as Node reports one of the system. */
export function systemError(code: string): Error {
  return Object.assign(new Error(`${code}: made to fail`), { code, syscall: 'test' });
}

/** The disk, failing at the steps that `fails` picks by number (from 0) and name. A failing write writes half. */
export function faultyDisk(code: string, fails: (step: number, name: string) => boolean): FaultyDisk {
  const steps: string[] = [];
  const failsNow = (name: string) => fails(steps.push(name) - 1, name);
  const step =
    <A extends unknown[], R>(name: string, real: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      if (failsNow(name)) throw systemError(code);
      return real(...args);
    };
  const faultyFile = (file: FileHandle): FileHandle =>
    new Proxy(file, {
      get(target, key) {
        const real: unknown = Reflect.get(target, key);
        if (typeof real !== 'function') return real;
        return async (...args: unknown[]) => {
          if (!failsNow(String(key))) return Reflect.apply(real, target, args);
          const [bytes] = args;
          if (key === 'writeFile' && bytes instanceof Uint8Array) {
            await target.writeFile(bytes.subarray(0, bytes.length / 2));
          }
          if (key === 'close') await target.close();
          throw systemError(code);
        };
      },
    });
  return {
    steps,
    stat: step('stat', NODE_DISK.stat) as Disk['stat'],
    lstat: step('lstat', NODE_DISK.lstat) as Disk['lstat'],
    readFile: step('readFile', NODE_DISK.readFile) as Disk['readFile'],
    link: step('link', NODE_DISK.link),
    rename: step('rename', NODE_DISK.rename),
    unlink: step('unlink', NODE_DISK.unlink),
    open: step('open', async (...args: Parameters<Disk['open']>) =>
      faultyFile(await NODE_DISK.open(...args)),
    ),
  };
}
