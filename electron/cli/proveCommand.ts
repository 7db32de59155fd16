// `proveFolder`: the files of a job that lie in a folder, opened again and compared with its art.
import { resolve } from 'node:path';
import { stepInWords } from '../../shared/contract/sendProgress.ts';
import { JobFiles } from '../disk/jobFiles.ts';
import { proveJob } from '../job/proveJob.ts';
import { writePictures } from '../proof/pictures.ts';
import { answer, answerFault, progress } from './answer.ts';
import { describeForms, describeProof, sayProof } from './describeProof.ts';

export interface ProveOptions {
  readonly from: string;
  readonly json: boolean;
  readonly pictures?: string;
}

/** Answers with the findings; ends with 1 where there are any. */
export async function proveFolder(jobPath: string, options: ProveOptions): Promise<void> {
  const { json, from, pictures } = options;
  const job = await new JobFiles().open(resolve(jobPath));
  if (!job.ok) return answerFault(json, job.fault);
  progress(stepInWords('prove'));
  const proved = await proveJob(job.value, from, { pictures: pictures !== undefined });
  if (!proved.ok) return answerFault(json, proved.fault);
  const { sides, proof } = proved.value;
  if (pictures !== undefined) {
    const written = await writePictures(proof.pictures, pictures);
    if (!written.ok) return answerFault(json, written.fault);
  }
  answer(
    json,
    { forms: describeForms(sides, from), proof: describeProof(proof), findings: proof.findings },
    sayProof(proof),
  );
  if (proof.findings.length > 0) process.exitCode = 1;
}
