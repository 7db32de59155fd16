// What a person has set once for all jobs.
import type { Unit } from '../units/length.ts';
import type { FolderEntry, FolderHandle } from './handles.ts';

/** The surround that the sheet is judged against. */
export const THEMES = ['as-system', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

/** Remembered from one start to the next. */
export interface Settings {
  /** The unit of new jobs and of lengths typed without one. */
  readonly units: Unit;
  readonly theme: Theme;
  /** The RIP's folder, once it has been chosen. It may be missing by now: sending says so. */
  readonly ripFolder?: FolderEntry | undefined;
  /** The pattern that files of new jobs are named by. */
  readonly fileNames: string;
  /** Whether new jobs are printed with marks. */
  readonly marks: boolean;
}

/** The settings to change; the others stay. `ripFolder: null` forgets the folder. */
export interface SettingsChange {
  readonly units?: Unit | undefined;
  readonly theme?: Theme | undefined;
  readonly ripFolder?: FolderHandle | null | undefined;
  readonly fileNames?: string | undefined;
  readonly marks?: boolean | undefined;
}
