#!/usr/bin/env node
/**
 * Prints the path of a browser that runs, installing one when none is found.
 * Usage: CHROME_PATH=$(node scripts/ensure-browser.mjs)
 *        FIREFOX_PATH=$(node scripts/ensure-browser.mjs --firefox)
 * Order: CHROME_PATH or FIREFOX_PATH, then the usual names on PATH and the usual places, then the Debian package (as root or with
 * a sudo that asks nothing). Without Chromium it ends with 1 and says what to do; without Firefox, which only some checks use, it
 * prints nothing and ends with 3.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';

const CHROMIUM = {
  variable: 'CHROME_PATH',
  debian: 'chromium',
  names: ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge', 'chrome'],
  places: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ...windowsPlaces('Google/Chrome/Application/chrome.exe'),
  ],
};
const FIREFOX = {
  variable: 'FIREFOX_PATH',
  debian: 'firefox-esr',
  names: ['firefox', 'firefox-esr'],
  places: ['/Applications/Firefox.app/Contents/MacOS/firefox', ...windowsPlaces('Mozilla Firefox/firefox.exe')],
};
const VERSION_TIMEOUT_MS = 20_000;
const NOT_FOUND = { chromium: 1, firefox: 3 };

function windowsPlaces(program) {
  return ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => (process.env[name] ? [path.join(process.env[name], program)] : []));
}

/** Whether the program starts and tells its version; stubs that only ask to install something do not. */
function works(file) {
  try {
    accessSync(file, constants.X_OK);
  } catch {
    return false;
  }
  if (process.platform === 'win32') return true;
  const { status, stdout } = spawnSync(file, ['--version'], { encoding: 'utf8', timeout: VERSION_TIMEOUT_MS });
  return status === 0 && /\d+\.\d+/.test(stdout ?? '');
}

function find(browser) {
  const named = process.env[browser.variable];
  if (named) {
    if (works(named)) return named;
    console.error(`${browser.variable}=${named} does not run.`);
    return undefined;
  }
  const folders = [...(process.env.PATH ?? '').split(path.delimiter), '/usr/bin', '/usr/local/bin', '/snap/bin'];
  return [...folders.flatMap((folder) => browser.names.map((name) => path.join(folder, name))), ...browser.places].find(works);
}

/** Installs the Debian package; false where that is not possible. Its own output goes to stderr. */
function install(browser) {
  if (process.platform !== 'linux' || !existsSync('/usr/bin/apt-get')) return false;
  const root = process.getuid() === 0;
  if (!root && spawnSync('sudo', ['-n', 'true']).status !== 0) return false;
  const apt = (...words) => {
    const options = ['-qq', '-o', 'DPkg::Lock::Timeout=120', '-o', 'Acquire::Retries=3'];
    const [command, ...rest] = [...(root ? [] : ['sudo', '-n']), 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', ...options, ...words];
    execFileSync(command, rest, { stdio: ['ignore', 2, 2] });
  };
  try {
    apt('update');
    apt('install', '-y', '--no-install-recommends', browser.debian);
    return true;
  } catch (error) {
    console.error(`Installing ${browser.debian} failed: ${error.message}`);
    return false;
  }
}

const firefox = process.argv.includes('--firefox');
const browser = firefox ? FIREFOX : CHROMIUM;
const found = find(browser) ?? (!process.env[browser.variable] && install(browser) ? find(browser) : undefined);
if (found) console.log(found);
else {
  if (!firefox) console.error('No Chromium was found. Install one (Debian: sudo apt-get install chromium) or set CHROME_PATH to its program.');
  process.exitCode = firefox ? NOT_FOUND.firefox : NOT_FOUND.chromium;
}
