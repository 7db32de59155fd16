// Reads which way the type of each face stands, once for each page of the art.
import { useEffect, useState } from 'react';
import { headOfType } from '../../shared/bench/typeStands.ts';
import { artOf } from '../../shared/contract/handles.ts';
import type { Head } from '../../shared/geometry/head.ts';
import type { Brief, Face } from '../../shared/job/brief.ts';
import { facesOf } from '../../shared/job/job.ts';
import { typeOnPage } from '../art-pictures/typeOnPage.ts';
import { artReading } from '../art-pictures/windowArt.ts';
import type { TypeHeads } from './lightFaults.ts';

const pageOf = ({ file, page }: Face) => `${page} ${file}`;

export function useTypeHeads(brief: Brief): TypeHeads {
  const [heads, setHeads] = useState<ReadonlyMap<string, Head | undefined>>(new Map());
  const faces = facesOf(brief);
  const pages = [...new Set(faces.map(({ face }) => pageOf(face)))].join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the pages are all that matters of the faces.
  useEffect(() => {
    let left = false;
    const read = async () => {
      for (const { face } of faces) {
        const key = pageOf(face);
        const page = await artReading.page(artOf(face), face.page);
        if (left) return;
        const head = page.ok ? headOfType(await typeOnPage(page.value)) : undefined;
        if (left) return;
        setHeads((known) => new Map(known).set(key, head));
      }
    };
    void read();
    return () => {
      left = true;
    };
  }, [pages]);
  return (piece, face) => {
    const found = faces.find((f) => f.piece.name === piece && f.name === face);
    return found && heads.get(pageOf(found.face));
  };
}
