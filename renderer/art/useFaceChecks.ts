// What is found on the page of a face: its trim, how far its bleed reaches, and what was set right on the way.
import { useEffect, useState } from 'react';
import { artOf } from '../../shared/contract/handles.ts';
import type { Fault } from '../../shared/fault/result.ts';
import type { Face, Piece } from '../../shared/job/brief.ts';
import { trimOf } from '../../shared/job/job.ts';
import { checkBleed } from '../../shared/pdf/art/checkBleed.ts';
import { points } from '../../shared/units/length.ts';
import { showLength } from '../../shared/units/show.ts';
import type { NoteTone } from '../controls/Note.tsx';
import { host } from '../hostClient/host.ts';
import { app, useApp } from '../state/store.ts';

/** One thing that was looked at, in words, or what is wrong with it. */
export interface Check {
  readonly tone: NoteTone;
  readonly says: string;
  readonly fault?: Fault;
}

/** The checks of a face, made again when its file or the piece changes; none until they are made. */
export function useFaceChecks(piece: Piece, face: Face): readonly Check[] {
  const [checks, setChecks] = useState<readonly Check[]>([]);
  const state = useApp((s) => s.artStates[artOf(face)]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a changed state means a changed file.
  useEffect(() => {
    let awaited = true;
    void checkFace(piece, face).then((made) => {
      if (awaited) setChecks(made);
    });
    return () => {
      awaited = false;
    };
  }, [piece, face, state]);
  return checks;
}

async function checkFace(piece: Piece, face: Face): Promise<readonly Check[]> {
  const art = artOf(face);
  const looked = await host.art.look({ art });
  if (!looked.ok) return [wrong(looked.fault)];
  const page = looked.value.pages[face.page - 1];
  const bleed = points(piece.bleed);
  const [x, y] = face.trimAt ?? [];
  const found = await host.art.findTrim({
    art,
    page: face.page,
    trim: trimOf(piece),
    bleed,
    rotate: face.rotate,
    ...(x && y ? { trimAt: { x: points(x), y: points(y) } } : {}),
  });
  if (!found.ok || page === undefined) return found.ok ? [] : [wrong(found.fault)];
  const { units } = app.getState().history?.present.brief ?? app.getState().settings;
  const reach = found.value.bleedReach;
  const reaches = checkBleed(page, reach, bleed);
  const least = Math.min(reach.left, reach.right, reach.top, reach.bottom);
  return [
    good(found.value.said),
    reaches.ok
      ? good(`The art reaches ${showLength(least, units)} or more beyond the trim.`)
      : wrong(reaches.fault),
    ...[...page.notices, ...looked.value.notices].map((says): Check => ({ tone: 'know', says })),
  ];
}

const good = (says: string): Check => ({ tone: 'good', says });

const wrong = (fault: Fault): Check => ({ tone: 'bad', says: fault.message, fault });
