// Every thread of the built program starts and does real work, as the host drives it: from the folder that was built, and
// from where a packed program has it.
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtApp } from '../../build/builtApp.ts';
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { type DesktopRig, startDesktop, TIME_TO_BUILD } from '../kit/desktopRig.ts';
import { granted } from '../kit/granted.ts';
import { codeOf, supperOf } from '../kit/hostRig.ts';
import { carelessCard, damagedCard, lockedCard } from '../kit/troubledArt.ts';

/** Where the program lies that `main` is run from, in a folder of the test's own. */
const PLACES: Readonly<Record<string, (folder: string, built: string) => string>> = {
  'as it was built': (_folder, built) => built,
  // What is read from an archive stands in the one folder, what has to be real files in the other.
  'as it is packed': (folder, built) => {
    const [archive, beside] = [join(folder, 'app.asar'), join(folder, 'app.asar.unpacked')];
    cpSync(built, archive, { recursive: true });
    mkdirSync(beside);
    cpSync(join(built, 'host'), join(beside, 'host'), { recursive: true });
    for (const name of readdirSync(join(archive, 'host'))) {
      if (/\.(mjs|wasm|ttf)$/.test(name)) rmSync(join(archive, 'host', name));
    }
    return archive;
  },
};

describe.each(Object.entries(PLACES))('the program %s', (_where, place) => {
  let folder: string;
  let rig: DesktopRig;
  const at = (...names: readonly string[]) => join(folder, ...names);
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'turnlay-threads-'));
    rig = await startDesktop(place(folder, await builtApp(() => undefined)), folder);
  }, TIME_TO_BUILD);
  afterAll(async () => {
    await rig.quit();
    rmSync(folder, { recursive: true });
  });

  /** Drops a file of art on the window. */
  async function drop(name: string, bytes: Uint8Array) {
    writeFileSync(at(name), bytes);
    const file = new File([], name);
    rig.electron.paths.set(file, at(name));
    return rig.host.dropped(file);
  }

  async function takeIn(name: string, bytes: Uint8Array) {
    const dropped = granted(await drop(name, bytes));
    if (dropped.is !== 'art') throw new Error(`${name} was not taken for art`);
    return granted(await rig.host.art.look({ art: dropped.art.art }));
  }

  it('reads a careless file, mends a damaged one and says so, and asks for the password of a locked one', async () => {
    expect(await takeIn('careless.pdf', carelessCard())).toMatchObject({
      pages: [{ number: 1 }, { number: 2 }],
      notices: [],
    });
    const damaged = damagedCard();
    expect(await takeIn('damaged.pdf', damaged)).toMatchObject({
      pages: [{ number: 1 }, { number: 2 }],
      notices: [
        'damaged.pdf could not be read as it is, so a copy was mended in memory and the file left alone. Look closely at the proof.',
      ],
    });
    expect(new Uint8Array(readFileSync(at('damaged.pdf')))).toEqual(damaged);
    expect(codeOf(await drop('locked.pdf', lockedCard()))).toBe('art-locked');
  });

  describe('with a job of art that had to be mended', () => {
    const lay = async () => {
      const { art } = await takeIn('card.pdf', damagedCard());
      const laid = granted(await rig.host.job.lay({ brief: supperOf(art as ArtHandle) }));
      expect(laid.job.arrangement).toHaveLength(4);
      return laid.job;
    };

    it('measures the ink', async () => {
      const inks = granted(await rig.host.ink.coverage({ job: await lay() }));
      expect(inks.map(({ face }) => face)).toEqual(['front', 'back']);
      // Its ground of 85 % red, 90 % green and full blue covers nearly all of it.
      for (const { coverage } of inks) expect(coverage.grey).toBeGreaterThan(0.05);
    });

    it('plans a gang run', async () => {
      const { brief } = await lay();
      const [piece] = brief.pieces;
      const two = { ...brief, pieces: [piece!, { ...piece!, name: 'Other', quantity: 40 }] };
      const planned = granted(
        await rig.host.gang.solve({ brief: two, sheetCost: 1, formCost: 5, seconds: 5 }),
      );
      for (const { printed, wanted } of planned.pieces) expect(printed).toBeGreaterThanOrEqual(wanted);
    });

    it('sends, proves, and writes the papers', async () => {
      const job = await lay();
      mkdirSync(at('rip'), { recursive: true });
      rig.electron.open = { canceled: false, filePaths: [at('rip')] };
      const chosen = await rig.host.choose.folder({ title: 'The folder of the RIP' });
      if (chosen.kind !== 'chosen') throw new Error('No folder was chosen');
      const { folder: into } = chosen.chosen;

      const ended = new Promise((resolve) => {
        rig.host.on('send', ({ state }) => {
          if (state.at !== 'under-way') resolve(state);
        });
      });
      granted(await rig.host.send.start({ job, folder: into }));
      expect(await ended).toMatchObject({ at: 'done', sent: { is: 'sent', proof: { findings: [] } } });

      const { names } = granted(await rig.host.ticket.write({ job, folder: into }));
      expect(names).toHaveLength(6);
      expect(readdirSync(at('rip')).sort()).toEqual(
        [...names, 'harvest-supper_form-1_both-sides_33-sheets.pdf'].sort(),
      );
    });
  });
});
