// Takes the pictures of the five stages that the README shows, by doing a job of the demo in the window.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Page } from 'playwright';
import { drawMenu, drawSupper, drawTag } from '../electron/demo/art.ts';
import { SUPPER_BRIEF, TABLE_BRIEF } from '../electron/demo/briefs.ts';
import { layJob } from '../electron/job/layJob.ts';
import { writeJob } from '../shared/job/jobFile.ts';
import { readBrief } from '../shared/job/readBrief.ts';
import { rebaseArt } from '../shared/job/rebase.ts';
import { openWindow } from './tryWindow.ts';

const STAGES = ['art', 'plan', 'bench', 'light-table', 'run'] as const;
/** How long a sending may take, and how long pictures of art may, in ms. */
const SENDING = 60_000;
const DRAWING = 1500;

const { values: asked } = parseArgs({
  options: {
    to: { type: 'string', default: 'build/pictures' },
    job: { type: 'string', default: 'supper' },
    size: { type: 'string', default: '1280x800' },
    theme: { type: 'string', default: 'light' },
  },
});

/** The art and the job file of one of the demo's jobs, by the names they have in one folder. */
async function layDemo(brief: object): Promise<Record<string, Uint8Array | string>> {
  const now = new Date();
  const art = {
    'supper.pdf': await drawSupper(now),
    'menu.pdf': await drawMenu(now),
    'tag.pdf': await drawTag(now),
  };
  const folder = mkdtempSync(join(tmpdir(), 'turnlay-pictures-'));
  try {
    for (const [name, bytes] of Object.entries(art)) writeFileSync(join(folder, name), bytes);
    const read = readBrief(brief);
    if (!read.ok) throw new Error(read.fault.message);
    const laid = await layJob(rebaseArt(read.value, (file) => join(folder, file)));
    if (!laid.ok) throw new Error(laid.fault.message);
    const { job } = laid.value;
    return { ...art, 'job.turnlay': writeJob({ ...job, brief: rebaseArt(job.brief, basename) }) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Chooses the RIP's folder, sends the sheets and waits for their proof. */
async function send(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Choose the folder…' }).click();
  await page.getByText('hot', { exact: true }).first().dblclick();
  await page.getByRole('button', { name: 'Choose this folder' }).click();
  await page.getByRole('button', { name: 'Send the sheets' }).click();
  await page.getByRole('region', { name: 'Proof' }).waitFor({ timeout: SENDING });
}

const files = {
  ...(await layDemo(asked.job === 'table' ? TABLE_BRIEF : SUPPER_BRIEF)),
  '.turnlay/settings.json': JSON.stringify({ theme: asked.theme }),
  'hot/for the sheets.txt': '',
};
const [width = 1280, height = 800] = asked.size.split('x').map(Number);
const { page, end } = await openWindow(files, ['job.turnlay'], { width, height });
try {
  mkdirSync(asked.to, { recursive: true });
  await page.getByRole('region', { name: 'Art', exact: true }).waitFor();
  for (const [index, stage] of STAGES.entries()) {
    await page.keyboard.press(`Control+${index + 1}`);
    await page.waitForTimeout(DRAWING);
    if (stage === 'run') await send(page);
    await page.screenshot({ path: join(asked.to, `${stage}.png`) });
    console.log(join(asked.to, `${stage}.png`));
  }
} finally {
  await end();
}
