// Briefs on the disk: there, JSON, and a brief, or a sentence that says which it is not.
import { ok, type Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { rebaseArt } from '../../shared/job/rebase.ts';
import { foundFrom } from './faceFiles.ts';
import { readJson } from './readJson.ts';

/** The brief of a file, its art named as it stands there. */
export async function readBriefFile(path: string): Promise<Result<Brief>> {
  const json = await readJson(path, 'brief');
  return json.ok ? readBrief(json.value) : json;
}

/** The brief of a file, its art named by whole paths. */
export async function openBriefFile(path: string): Promise<Result<Brief>> {
  const brief = await readBriefFile(path);
  return brief.ok ? ok(rebaseArt(brief.value, foundFrom(path))) : brief;
}
