// Builds the app into dist/app.
import { join } from 'node:path';
import { buildApp } from './builtApp.ts';

await buildApp(join(import.meta.dirname, '../dist/app'));
