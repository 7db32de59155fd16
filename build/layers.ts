// Which part of the house may import which. The test run checks it; nothing else is trusted to.
import type { IForbiddenRuleType } from 'dependency-cruiser';

/** The pure libraries that shared/ may use, by part. */
const PURE_LIBRARIES: Readonly<Record<string, readonly string[]>> = {
  contract: ['zod'],
  job: ['zod'],
  library: ['zod'],
  run: ['zod'],
  runSheet: ['uqr'],
  pdf: ['pdf-lib', '@cantoo/fontkit'],
};

/** What each part of a layer may import of that layer, besides itself. */
type Parts = Readonly<Record<string, readonly string[]>>;

/** The trade itself, from its plain words up. */
const SHARED_PARTS: Parts = {
  fault: [],
  geometry: [],
  units: ['fault'],
  layout: ['fault', 'geometry', 'units'],
  bench: ['geometry', 'units', 'layout'],
  ink: ['fault'],
  marks: ['fault', 'geometry', 'units', 'layout'],
  cutting: ['fault', 'geometry', 'units', 'layout', 'job', 'pdf'],
  proof: ['fault', 'geometry', 'units', 'layout', 'marks'],
  job: ['fault', 'geometry', 'units', 'layout', 'bench'],
  gang: ['fault', 'geometry', 'units', 'layout', 'job'],
  pdf: ['fault', 'geometry', 'units', 'layout', 'marks'],
  run: ['fault', 'geometry', 'units', 'layout', 'ink', 'job', 'library', 'plan'],
  runSheet: ['fault', 'geometry', 'units', 'layout', 'bench', 'marks', 'job', 'library', 'pdf', 'cutting'],
  ticket: ['fault', 'geometry', 'units', 'layout', 'job', 'pdf', 'cutting', 'runSheet'],
  library: ['fault', 'geometry', 'units', 'layout', 'ink', 'job'],
  plan: ['fault', 'geometry', 'units', 'layout', 'ink', 'job', 'library', 'cutting', 'gang'],
  packingSlip: ['fault', 'geometry', 'units', 'marks', 'job', 'pdf', 'run', 'runSheet'],
  intake: ['geometry', 'units', 'layout', 'pdf'],
  contract: ['fault', 'geometry', 'units', 'layout', 'job', 'run', 'pdf', 'proof', 'library', 'ink', 'gang'],
};

/** The floors of the host: kits, services that know nothing of a window, the services behind the contract, the shells. */
const ELECTRON_PARTS: Parts = {
  about: [],
  demo: [],
  disk: [],
  thread: [],
  art: ['disk', 'thread'],
  gang: ['thread'],
  proof: ['disk'],
  send: ['disk'],
  job: ['disk', 'thread', 'art', 'proof', 'send'],
  coverage: ['thread', 'proof', 'job'],
  ticket: ['about', 'disk', 'thread', 'art', 'job'],
  host: ['about', 'disk', 'thread', 'art', 'gang', 'job', 'coverage', 'ticket'],
  serve: ['host'],
  cli: ['disk', 'demo', 'gang', 'proof', 'job', 'coverage', 'ticket'],
  desktop: ['about', 'disk', 'host', 'serve'],
  loopback: ['about', 'host', 'serve'],
};

/** The rooms of the window: none but the frame imports another room. */
const RENDERER_PARTS: Parts = {
  look: [],
  actions: [],
  controls: [],
  hostClient: [],
  draft: ['controls'],
  state: ['draft'],
  'art-pictures': ['hostClient', 'state'],
  sheet: ['art-pictures', 'controls'],
  desk: ['hostClient', 'state', 'actions', 'draft'],
  art: ['hostClient', 'state', 'actions', 'controls', 'art-pictures', 'desk'],
  plan: ['hostClient', 'state', 'controls', 'desk'],
  bench: ['state', 'actions', 'controls', 'art-pictures', 'sheet'],
  lighttable: ['hostClient', 'state', 'actions', 'controls', 'art-pictures', 'sheet'],
  run: ['state', 'actions', 'controls', 'desk'],
  brief: ['hostClient', 'state', 'controls', 'draft', 'desk'],
  library: ['state', 'actions', 'controls', 'draft', 'desk'],
  dialogs: ['hostClient', 'state', 'actions', 'controls', 'desk', 'library'],
  frame: [
    ...['hostClient', 'state', 'actions', 'controls', 'desk', 'dialogs'],
    ...['brief', 'art', 'plan', 'bench', 'lighttable', 'run'],
  ],
};

/** The layers by their folders. */
export const LAYER_PARTS = { shared: SHARED_PARTS, electron: ELECTRON_PARTS, renderer: RENDERER_PARTS };

/** Where programs and threads start: what none of them reaches is dead. */
export const ENTRIES: readonly string[] = [
  'electron/cli/turnlay.mjs',
  'electron/cli/turnlay.ts',
  'electron/desktop/main.ts',
  'electron/desktop/preload.ts',
  'electron/loopback/main.ts',
  ...['art/startArtWorker', 'coverage/startCoverageWorker', 'gang/startGangWorker'].map(threadAt),
  ...['job/startSendWorker', 'ticket/startTicketWorker'].map(threadAt),
  'renderer/main.tsx',
  'renderer/plan/planWorker.ts',
];

function threadAt(name: string): string {
  return `electron/${name}.mjs`;
}

const anyOf = (paths: readonly string[]) =>
  `^(${paths.map((path) => path.replaceAll('.', '\\.')).join('|')})$`;

function importRule(layer: string, part: string, allowed: readonly string[]): IForbiddenRuleType {
  const known = [part, ...allowed];
  return {
    name: `${layer}-${part}-imports`,
    comment: `${layer}/${part} may import ${known.join(', ')} of ${layer}/ and nothing above them.`,
    severity: 'error',
    from: { path: `^${layer}/${part}/` },
    to: { path: `^${layer}/`, pathNot: `^${layer}/(${known.join('|')})/` },
  };
}

/** `besides`: the files that lie in no part, as an expression. */
function knownRule(layer: string, parts: Parts, besides = ''): IForbiddenRuleType {
  const known = Object.keys(parts).map((part) => `${part}/`);
  return {
    name: `${layer}-parts-known`,
    comment: `Every part of ${layer}/ has its rule here.`,
    severity: 'error',
    from: { path: `^${layer}/`, pathNot: `^${layer}/(${[...known, besides].filter(Boolean).join('|')})` },
    to: {},
  };
}

function librariesRule(part: string): IForbiddenRuleType {
  const libraries = PURE_LIBRARIES[part] ?? [];
  return {
    name: `shared-${part}-libraries`,
    comment: `shared/${part} is pure: ${libraries.length === 0 ? 'no library' : libraries.join(' and ')} and nothing of Node.`,
    severity: 'error',
    from: { path: `^shared/${part}/` },
    to: {
      pathNot: [
        '^shared/',
        ...libraries.map((l) => `(^|/)node_modules/${l}/`),
        ...libraries.map((l) => `^${l}$`),
      ],
    },
  };
}

export const LAYER_RULES: IForbiddenRuleType[] = [
  ...Object.entries(LAYER_PARTS).flatMap(([layer, parts]) =>
    Object.entries(parts).map(([part, allowed]) => importRule(layer, part, allowed)),
  ),
  ...Object.keys(SHARED_PARTS).map(librariesRule),
  knownRule('shared', SHARED_PARTS),
  knownRule('electron', ELECTRON_PARTS),
  knownRule('renderer', RENDERER_PARTS, 'main\\.tsx$'),
  {
    name: 'window-and-host-apart',
    comment: 'renderer/ and electron/ meet only in shared/.',
    severity: 'error',
    from: { path: '^renderer/' },
    to: { path: '^electron/' },
  },
  {
    name: 'host-and-window-apart',
    comment: 'electron/ and renderer/ meet only in shared/.',
    severity: 'error',
    from: { path: '^electron/' },
    to: { path: '^renderer/' },
  },
  {
    name: 'threads-one-way',
    comment: 'Every thread of the host is started and heard by electron/thread/.',
    severity: 'error',
    from: { path: '^electron/', pathNot: '^electron/thread/' },
    to: { path: '^(node:)?worker_threads$' },
  },
  {
    name: 'nothing-ships-tests',
    comment: 'What ships imports neither tests/ nor build/.',
    severity: 'error',
    from: { path: '^(shared|electron|renderer)/' },
    to: { path: '^(tests|build)/' },
  },
  {
    name: 'no-circles',
    comment: 'No file imports itself by way of others.',
    severity: 'error',
    from: {},
    to: { circular: true },
  },
  {
    name: 'no-dead-files',
    comment: 'Every file that ships is reached from where a program or a thread starts.',
    severity: 'error',
    from: { path: anyOf(ENTRIES) },
    to: { path: '^(shared|electron|renderer)/', pathNot: anyOf(ENTRIES), reachable: false },
  },
];
