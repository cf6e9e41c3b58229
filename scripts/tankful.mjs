#!/usr/bin/env node
/**
 * The `tankful` command in a clone: sets up and builds if needed, then runs dist/tankful.mjs in this very process,
 * so that arguments, output and exit code are the program's own.
 */
import { setUp } from './set-up.mjs';

setUp();
const { ensureBuilt } = await import('./build.mjs');
await ensureBuilt('terminal');
// The address is computed: the file is there only after the build.
await import(new URL('../dist/tankful.mjs', import.meta.url).href);
