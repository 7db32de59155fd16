// What may stand in each request: checked by the host on arrival, whatever window it came from.
import { z } from 'zod';
import { HEADS } from '../geometry/head.ts';
import { eventSchema } from '../run/entrySchema.ts';
import { UNITS } from '../units/length.ts';
import { ACTION_NAMES } from './actions.ts';
import type { CallOf, Group } from './calls.ts';
import { FILE_KINDS } from './choosing.ts';
import { crossedLibrary } from './crossedLibrary.ts';
import type { ArtHandle, FileHandle, FolderHandle, KeptHandle, SendHandle } from './handles.ts';
import type { Ask } from './host.ts';
import { crossedBrief, crossedJob } from './jobSchema.ts';
import { THEMES } from './settings.ts';

/** A schema for every request, of just the type that the call asks. */
type AskSchemas = { readonly [G in Group]: { readonly [C in CallOf<G>]: z.ZodType<Ask<G, C>> } };

const nothing = z.undefined();
const words = (longest: number) => z.string().max(longest);
const handle = <H extends string>() => z.custom<H>((v) => typeof v === 'string' && /^[0-9a-f]{32}$/.test(v));
const file = handle<FileHandle>();
const folder = handle<FolderHandle>();
const art = handle<ArtHandle>();
const kept = handle<KeptHandle>();
const send = handle<SendHandle>();
const title = words(1000);
const fileName = words(255);
const length = z.number();

const proving = z.strictObject({ job: crossedJob, folder });
const sending = proving.extend({
  replace: z.boolean().optional(),
  despiteFindings: z.boolean().optional(),
});

export const ASK_SCHEMAS: AskSchemas = {
  app: {
    begin: nothing,
    show: z.strictObject({
      title,
      unsaved: z.boolean(),
      disabled: z.array(z.enum(ACTION_NAMES)),
      labels: z.partialRecord(z.enum(ACTION_NAMES), words(200)),
    }),
    close: nothing,
  },
  settings: {
    read: nothing,
    change: z.strictObject({
      units: z.enum(UNITS).optional(),
      theme: z.enum(THEMES).optional(),
      ripFolder: folder.nullable().optional(),
      fileNames: words(500).optional(),
      marks: z.boolean().optional(),
    }),
    takeBack: nothing,
  },
  recents: { list: nothing, forget: z.strictObject({ file }) },
  job: {
    lay: z.strictObject({ brief: crossedBrief }),
    layFile: z.strictObject({ file }),
    open: z.strictObject({ file }),
    save: z.strictObject({ file, job: crossedJob, replace: z.boolean().optional() }),
    keep: z.strictObject({ job: crossedJob, file: file.optional() }),
    takeUp: z.strictObject({ kept }),
    letGo: z.strictObject({ kept }),
    close: nothing,
  },
  choose: {
    files: z.strictObject({ kind: z.enum(FILE_KINDS), many: z.boolean() }),
    newFile: z.strictObject({ name: fileName }),
    folder: z.strictObject({ title }),
  },
  files: {
    list: z.strictObject({ folder: folder.optional(), show: z.enum([...FILE_KINDS, 'none']) }),
    newFile: z.strictObject({ folder, name: fileName }),
    newFolder: z.strictObject({ folder, name: fileName }),
  },
  art: {
    takeIn: z.strictObject({ file }),
    look: z.strictObject({ art }),
    check: z.strictObject({ job: crossedJob, file: file.optional() }),
    findTrim: z.strictObject({
      art,
      page: z.int().min(1),
      trim: z.strictObject({ w: length.positive(), h: length.positive() }),
      bleed: length.min(0),
      rotate: z.literal(HEADS).optional(),
      trimAt: z.strictObject({ x: length, y: length }).optional(),
    }),
  },
  send: {
    plan: proving,
    start: sending,
    prove: proving,
    state: z.strictObject({ send }),
    cancel: z.strictObject({ send }),
  },
  library: {
    read: nothing,
    change: z.strictObject({ library: crossedLibrary }),
    takeBack: nothing,
    import: z.strictObject({ file }),
    export: z.strictObject({ folder, name: fileName, replace: z.boolean().optional() }),
  },
  ink: { coverage: z.strictObject({ job: crossedJob }) },
  gang: {
    solve: z.strictObject({
      brief: crossedBrief,
      sheetCost: length.min(0),
      formCost: length.min(0),
      mostForms: z.int().min(1).optional(),
      seconds: length.positive().max(600),
    }),
    stop: nothing,
  },
  ticket: { write: proving.extend({ file: file.optional(), paper: words(500).optional() }) },
  run: {
    read: z.strictObject({ file }),
    record: z.strictObject({ file, event: eventSchema }),
    packingSlip: z.strictObject({ file, job: crossedJob, delivery: z.int().min(1) }),
    all: nothing,
  },
};
