// The job file: reading it from JSON of any version, and writing it so that lengths stay as they were typed.
import { z } from 'zod';
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { turnOf } from '../geometry/work.ts';
import type { Position } from '../layout/position.ts';
import type { Brief } from './brief.ts';
import { type FoundArt, JOB_SCHEMA, type Job } from './job.ts';
import { migrate } from './migrate.ts';
import { readBrief } from './readBrief.ts';

const rect = z.strictObject({
  x: z.number(),
  y: z.number(),
  w: z.number().positive(),
  h: z.number().positive(),
});
const faceName = z.enum(['front', 'back']);

const writtenJob = z.strictObject({
  schema: z.literal(JOB_SCHEMA),
  brief: z.unknown(),
  art: z.array(
    z.strictObject({
      piece: z.string(),
      face: faceName,
      sha256: z.string().regex(/^[0-9a-f]{64}$/, { error: 'must be a SHA-256 in hex' }),
      trim: rect,
      said: z.string(),
    }),
  ),
  arrangement: z.array(
    z.strictObject({ piece: z.string(), face: faceName, trim: rect, head: z.literal([0, 90, 180, 270]) }),
  ),
});

/**
 * Reads a job from parsed JSON. Older versions are migrated, newer ones refused (`job-too-new`); what cannot be
 * understood is refused with the field named (`job-invalid`).
 */
export function readJob(json: unknown): Result<Job> {
  const current = migrate(json);
  if (!current.ok) return current;
  const shape = writtenJob.safeParse(current.value);
  if (!shape.success) {
    const issue = shape.error.issues[0];
    return refuse(invalid(issue?.path.join('.') ?? '', issue?.message ?? 'is not a job'));
  }
  const brief = readBrief(shape.data.brief);
  if (!brief.ok) return brief;
  const job = {
    schema: shape.data.schema,
    brief: brief.value,
    art: shape.data.art,
    arrangement: shape.data.arrangement,
  };
  return strangerIn(job) ?? ok(job);
}

/** The job as the text of its file, two spaces deep, ending in a newline. */
export function writeJob(job: Job): string {
  const written = { ...job, brief: writeBrief(job.brief) };
  return `${JSON.stringify(written, typedLengths, 2)}\n`;
}

/** A brief with its work style written as in a brief by hand: the style, and the turn where it is a choice. */
function writeBrief(brief: Brief): Record<string, unknown> {
  const { work, ...rest } = brief;
  const turn = work.style === 'work-and-back' || work.style === 'perfecting' ? { turn: turnOf(work) } : {};
  return { ...rest, work: work.style, ...turn };
}

/** Lengths are written as they were typed. */
function typedLengths(_key: string, value: unknown): unknown {
  return typeof value === 'object' && value !== null && 'typed' in value ? value.typed : value;
}

/** A refusal if the art or the arrangement speaks of a piece that the brief does not have. */
function strangerIn(job: Job): Result<Job> | undefined {
  const named = new Set(job.brief.pieces.map((p) => p.name));
  const stranger = (list: 'art' | 'arrangement', entries: readonly (FoundArt | Position)[]) => {
    const at = entries.findIndex((e) => !named.has(e.piece));
    const entry = entries[at];
    return entry && refuse(invalid(`${list}.${at}.piece`, `"${entry.piece}" is not a piece of the brief`));
  };
  return stranger('art', job.art) ?? stranger('arrangement', job.arrangement);
}

function invalid(where: string, says: string): Fault {
  return {
    code: 'job-invalid',
    message: `The job file is damaged. ${where === '' ? 'It' : where}: ${says}.`,
    remedy: 'Open an earlier copy of the job, or lay the job out again from its brief.',
    where,
  };
}
