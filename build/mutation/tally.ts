// What became of the mutants, file by file.
import type { Stryker } from '@stryker-mutator/core';
import { DOES_NOT_LOAD } from './loadFailures.ts';

export type MutantResult = Awaited<ReturnType<Stryker['runMutationTest']>>[number];

export interface Tally {
  readonly file: string;
  /** Mutants that a test failed on, that kept a test file from loading, or that ran round the same piece of code far more often than the code itself does. */
  readonly killed: number;
  /** Mutants whose tests did not end in time. A busy machine makes such too, so they count as alive. */
  readonly timedOut: number;
  readonly survived: number;
  /** Mutants that no test ran over. */
  readonly notCovered: number;
}

/** Whether a mutant was stopped because it ran round the same code too often, which does not depend on the machine. */
const ranRound = (mutant: MutantResult) =>
  mutant.status === 'Timeout' && mutant.statusReason?.startsWith('Hit limit reached') === true;

const keptFromLoading = (mutant: MutantResult) =>
  mutant.status === 'RuntimeError' && mutant.statusReason?.includes(DOES_NOT_LOAD) === true;

export const isKilled = (mutant: MutantResult) =>
  mutant.status === 'Killed' || ranRound(mutant) || keptFromLoading(mutant);

const count = (mutants: readonly MutantResult[], is: (mutant: MutantResult) => boolean) =>
  mutants.filter(is).length;

/** One tally for each file, in the order of their names. Mutants that were never run (they do not compile) count nowhere. */
export function tallyByFile(mutants: readonly MutantResult[]): readonly Tally[] {
  return [...new Set(mutants.map((mutant) => mutant.fileName))].sort().map((file) => {
    const inFile = mutants.filter((mutant) => mutant.fileName === file);
    return {
      file,
      killed: count(inFile, isKilled),
      timedOut: count(inFile, (mutant) => mutant.status === 'Timeout' && !ranRound(mutant)),
      survived: count(inFile, (mutant) => mutant.status === 'Survived'),
      notCovered: count(inFile, (mutant) => mutant.status === 'NoCoverage'),
    };
  });
}

/** The tallies of several files as one. */
export function sumOf(file: string, tallies: readonly Tally[]): Tally {
  const sum = (field: 'killed' | 'timedOut' | 'survived' | 'notCovered') =>
    tallies.reduce((total, tally) => total + tally[field], 0);
  return {
    file,
    killed: sum('killed'),
    timedOut: sum('timedOut'),
    survived: sum('survived'),
    notCovered: sum('notCovered'),
  };
}

/** The share of mutants that were killed, in percent; undefined where there was none. */
export function scoreOf(tally: Tally): number | undefined {
  const all = tally.killed + tally.timedOut + tally.survived + tally.notCovered;
  return all === 0 ? undefined : (100 * tally.killed) / all;
}

/** A tally as a line: what became of the mutants, and the score. */
export function tallyLine(tally: Tally, fileWidth: number): string {
  const score = scoreOf(tally);
  return [
    tally.file.padEnd(fileWidth),
    `${String(tally.killed).padStart(5)} killed`,
    `${String(tally.timedOut).padStart(4)} timed out`,
    `${String(tally.survived).padStart(4)} survived`,
    `${String(tally.notCovered).padStart(4)} not covered`,
    score === undefined ? '     -' : `${score.toFixed(1).padStart(6)} %`,
  ].join('  ');
}

/** Where a living mutant is and what it changed, with the text of its file. */
export function mutantLine(mutant: MutantResult, source: string): string {
  const { start, end } = mutant.location;
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  const was = lines
    .map((line, i) => line.slice(i === 0 ? start.column - 1 : 0, i === last ? end.column - 1 : undefined))
    .map((line) => line.trim())
    .join(' ');
  const place = `${mutant.fileName}:${start.line}:${start.column}`;
  return `${place}  ${mutant.status}  ${mutant.mutatorName}: ${short(was)}  =>  ${short(mutant.replacement ?? '')}`;
}

const LONGEST_EXCERPT = 90;
const short = (text: string) => {
  const line = text.replace(/\s+/g, ' ');
  return line.length > LONGEST_EXCERPT ? `${line.slice(0, LONGEST_EXCERPT)}...` : line;
};
