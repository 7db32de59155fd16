// Builds the command line to where a package has it.
import { join } from 'node:path';
import { buildApart } from './buildApart.ts';

await buildApart('cli', join(import.meta.dirname, '../dist/cli'));
