// The sending benchmark: writing sheets against loading and saving the same art with the same library, in one run.
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

interface Measured {
  readonly faces: number;
  readonly up: number;
  /** Sizes in bytes, times in ms, memory in MB. */
  readonly art: number;
  readonly bytes: number;
  readonly loadAndSave: number;
  readonly opening: number;
  readonly writing: number;
  readonly drawing: number;
  readonly proving: number;
  readonly layout: number;
  readonly peakOfSending: number;
  readonly peak: number;
}

const CASES: readonly (readonly [faces: number, up: number, kilobytes: number, strips: number])[] = [
  [1, 1, 4000, 1500],
  [1, 24, 4000, 1500],
  [1, 400, 4000, 1500],
  [1, 400, 4000, 1],
  [200, 200, 60, 4],
];

/** Prints one line for every case. */
export function benchSending(): void {
  console.log(
    'Sending: pages, placements | laying out | written / load and save | file - art | file / art | proof / one drawing of all | peak (with proof)',
  );
  for (const one of CASES) {
    const script = fileURLToPath(new URL('./sendCase.ts', import.meta.url));
    const out = execFileSync(process.execPath, ['--import', 'tsx', script, ...one.map(String)], {
      encoding: 'utf8',
    });
    const m: Measured = JSON.parse(out);
    console.log(
      [
        `${m.faces} of ${one[3]} images, ${m.up}`,
        `${m.layout.toFixed(1)} ms`,
        `${m.writing.toFixed(0)} / ${m.loadAndSave.toFixed(0)} ms = ${(m.writing / m.loadAndSave).toFixed(2)}`,
        `${((m.bytes - m.art) / 1000).toFixed(1)} kB`,
        (m.bytes / m.art).toFixed(3),
        `${m.proving.toFixed(0)} / ${m.drawing.toFixed(0)} ms = ${(m.proving / m.drawing).toFixed(2)}`,
        `${m.peakOfSending.toFixed(0)} MB (${m.peak.toFixed(0)} MB)`,
      ].join(' | '),
    );
  }
}
