/** A Chromium of a test's own, with a profile on the disk: it can be killed as a failing battery would, and started again. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, inject } from 'vitest';
import { chromiumFlags, findChromium } from '../../../scripts/chromium.mjs';

export interface OwnBrowser {
  /** Opens a tab on the built page. */
  open(path?: string): Promise<Page>;
  /** Ends it and all its processes at once, without a word to any of them. */
  kill(): Promise<void>;
}

const profiles: string[] = [];
const running = new Set<ChildProcess>();

/** A folder that lasts as long as the test file. */
export function newProfile(): string {
  const folder = mkdtempSync(join(tmpdir(), 'tankful-profile-'));
  profiles.push(folder);
  return folder;
}

export async function startBrowser(profile: string): Promise<OwnBrowser> {
  const { executablePath, env } = await findChromium();
  const flags = [...chromiumFlags, '--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`];
  // A group of its own: its helpers end with it.
  const started = spawn(executablePath, [...flags, 'about:blank'], {
    env,
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  running.add(started);
  const browser = await chromium.connectOverCDP(await addressOf(started));
  return {
    open: (path = '') => openTab(browser, path),
    kill: () => killed(started),
  };
}

async function openTab(browser: Browser, path: string): Promise<Page> {
  const page = await browser.contexts()[0].newPage();
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(inject('pageUrl') + path, { waitUntil: 'load' });
  return page;
}

/** Where it can be spoken to; it says so once. */
function addressOf(started: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = '';
    started.stderr?.on('data', (text) => {
      said += String(text);
      const address = /DevTools listening on (\S+)/.exec(said)?.[1];
      if (address) found(address);
    });
    started.on('exit', (code) => failed(new Error(`Chromium ended with ${code}: ${said.slice(-500)}`)));
  });
}

function killed(started: ChildProcess): Promise<void> {
  return new Promise((done) => {
    started.on('exit', () => {
      running.delete(started);
      done();
    });
    if (started.pid !== undefined) process.kill(-started.pid, 'SIGKILL');
  });
}

afterAll(async () => {
  await Promise.all([...running].map(killed));
  for (const folder of profiles) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});
