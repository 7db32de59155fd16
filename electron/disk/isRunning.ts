// Whether a program of this machine lives.
import { systemCode } from './systemCode.ts';

/** Whether there is a program of this number; another one may have it by now. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return systemCode(error) === 'EPERM';
  }
}
