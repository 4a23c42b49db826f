// Finds the programs that some tests need (a browser, PostgreSQL, PDF tools); on Debian, as root, installs what is missing.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import process from 'node:process';

function onPath(name) {
  const probe = process.platform === 'win32' ? 'where' : 'which';
  const found = spawnSync(probe, [name], { encoding: 'utf8' });
  return found.status === 0 ? found.stdout.split(/\r?\n/)[0] : null;
}

function findPostgres() {
  const base = '/usr/lib/postgresql';
  if (existsSync(base)) {
    for (const version of readdirSync(base).sort().reverse()) {
      if (existsSync(`${base}/${version}/bin/initdb`)) return `${base}/${version}/bin`;
    }
  }
  return onPath('initdb');
}

function findBrowser() {
  const places = [
    process.env.AFTERBELL_BROWSER,
    '/usr/bin/chromium',
    '/usr/bin/google-chrome',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ];
  return places.find((place) => place && existsSync(place)) ?? onPath('chromium');
}

/** Each tool: what needs it, how to find it, and the Debian package that brings it. */
const TOOLS = [
  { name: 'browser', use: 'the screens', find: findBrowser, packages: ['chromium'] },
  { name: 'PostgreSQL', use: 'storage on a server', find: findPostgres, packages: ['postgresql'] },
  { name: 'pdftoppm', use: 'printed pages', find: () => onPath('pdftoppm'), packages: ['poppler-utils'] },
  { name: 'qpdf', use: 'printed pages', find: () => onPath('qpdf'), packages: ['qpdf'] },
  { name: 'strace', use: 'durable storage', find: () => onPath('strace'), packages: ['strace'] },
];

/** Installs what is missing where that is possible; returns the tools that stay missing. */
export function ensureTools() {
  let missing = TOOLS.filter((tool) => !tool.find());
  const canInstall = process.platform === 'linux' && process.getuid?.() === 0 && onPath('apt-get');
  if (missing.length > 0 && canInstall) {
    console.error(`Installing ${missing.map((tool) => tool.name).join(', ')}…`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const quiet = { stdio: ['ignore', 'ignore', 'inherit'], env };
    spawnSync('apt-get', ['update', '-qq'], quiet);
    const packages = missing.flatMap((tool) => tool.packages);
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], quiet);
    missing = TOOLS.filter((tool) => !tool.find());
  }
  return missing;
}
