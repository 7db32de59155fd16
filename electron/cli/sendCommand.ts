// `send`: both sides of a job into the RIP's folder, proved from what was written.
import { resolve } from 'node:path';
import { type SendStep, stepInWords } from '../../shared/contract/sendProgress.ts';
import { JobFiles } from '../disk/jobFiles.ts';
import { sendJob } from '../job/sendJob.ts';
import { writePictures } from '../proof/pictures.ts';
import { answer, answerFault, progress } from './answer.ts';
import { describeForms, describeProof, sayProof } from './describeProof.ts';

export interface SendCommandOptions {
  readonly to: string;
  readonly json: boolean;
  readonly pictures?: string;
  readonly overwrite: boolean;
  readonly despiteFindings: boolean;
}

export async function send(jobPath: string, options: SendCommandOptions): Promise<void> {
  const { json, to, pictures } = options;
  const job = await new JobFiles().open(resolve(jobPath));
  if (!job.ok) return answerFault(json, job.fault);
  let last: SendStep | undefined;
  const sent = await sendJob(job.value, {
    to,
    overwrite: options.overwrite,
    despiteFindings: options.despiteFindings,
    pictures: pictures !== undefined,
    now: new Date(),
    onProgress: ({ step }) => {
      if (step !== last) progress(stepInWords(step));
      last = step;
    },
  });
  if (!sent.ok) return answerFault(json, sent.fault);
  const { sides, proof, notices } = sent.value;
  if (pictures !== undefined) {
    const written = await writePictures(proof.pictures, pictures);
    if (!written.ok) return answerFault(json, written.fault);
  }
  if (sent.value.is === 'held') {
    if (!json) for (const line of [...sayProof(proof), ...notices]) progress(line);
    return answerFault(
      json,
      {
        code: 'proof-failed',
        message: `The proof found faults, so nothing was left in ${to}.`,
        remedy: 'Mend what the findings name and send again, or send with --despite-findings.',
      },
      { proof: describeProof(proof), notices },
    );
  }
  answer(json, { forms: describeForms(sides, to), proof: describeProof(proof), notices }, [
    ...sent.value.paths.map((path) => `Sent ${path}`),
    ...sayProof(proof),
    ...notices,
  ]);
}
