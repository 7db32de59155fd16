// A program that has ended, for what it would have left behind.
import { spawnSync } from 'node:child_process';

/** Its number; the system gives it to no other for a while. */
export function deadProgram(): number {
  return spawnSync(process.execPath, ['-e', '']).pid;
}
