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

/** What each part of shared/ may import of shared/, besides itself. */
const SHARED_PARTS: Readonly<Record<string, readonly string[]>> = {
  fault: [],
  geometry: [],
  units: ['fault'],
  layout: ['fault', 'geometry', 'units'],
  bench: ['geometry', 'units', 'layout'],
  ink: ['fault'],
  marks: ['fault', 'geometry', 'units', 'layout'],
  cutting: ['fault', 'geometry', 'units', 'layout', 'job', 'pdf'],
  proof: ['fault', 'geometry', 'units', 'layout'],
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

function partRules(part: string, allowed: readonly string[]): IForbiddenRuleType[] {
  const libraries = PURE_LIBRARIES[part] ?? [];
  return [
    {
      name: `shared-${part}-imports`,
      comment: `shared/${part} may import ${[part, ...allowed].join(', ')} of shared/ and nothing above them.`,
      severity: 'error',
      from: { path: `^shared/${part}/` },
      to: { path: '^shared/', pathNot: `^shared/(${[part, ...allowed].join('|')})/` },
    },
    {
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
    },
  ];
}

export const LAYER_RULES: IForbiddenRuleType[] = [
  ...Object.entries(SHARED_PARTS).flatMap(([part, allowed]) => partRules(part, allowed)),
  {
    name: 'shared-parts-known',
    comment: 'Every part of shared/ has its rule here.',
    severity: 'error',
    from: { path: '^shared/', pathNot: `^shared/(${Object.keys(SHARED_PARTS).join('|')})/` },
    to: {},
  },
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
    comment: 'Every file that ships is imported by another, or is where a program starts.',
    severity: 'error',
    from: { orphan: true, path: '^(shared|electron|renderer)/', pathNot: '^electron/cli/turnlay\\.ts$' },
    to: {},
  },
];
