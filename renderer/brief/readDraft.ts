// Reading a draft as a brief, with what is wrong told field by field.
import type { Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { readBriefFields } from '../../shared/job/readBrief.ts';
import { type BriefDraft, writtenBriefOf } from '../draft/briefDraft.ts';

/** What is wrong in each field, by the field's name in a written brief. */
export type BriefErrors = Readonly<Record<string, string>>;

/** The draft as a brief, or what is wrong in its fields. */
export function readDraft(draft: BriefDraft): Result<Brief, BriefErrors> {
  const read = readBriefFields(writtenBriefOf(draft));
  if (read.ok) return read;
  return { ok: false, fault: Object.fromEntries(read.fault.toReversed().map((f) => [f.field, f.says])) };
}
