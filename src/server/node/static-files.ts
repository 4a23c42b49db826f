// The built web app and its typeface, from disk.
import { readFileSync, statSync } from 'node:fs';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Hono } from 'hono';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.webmanifest': 'application/manifest+json',
};

const WEB = fileURLToPath(new URL('../../web/', import.meta.url));

/** Serves files of the web app; any other address that a person may open gets the app itself. */
export function serveFiles(app: Hono): void {
  app.get('*', (context) => {
    const path = normalize(decodeURIComponentSafely(context.req.path)).replace(/^([/\\.])+/, '');
    const file = join(WEB, path);
    const isInside = file.startsWith(WEB.endsWith(sep) ? WEB : WEB + sep);
    if (path !== '' && isInside && extname(file) in TYPES && isFile(file))
      return send(file, path.startsWith('assets'));
    if (extname(path) !== '') return context.text('Not found', 404);
    return isFile(join(WEB, 'index.html'))
      ? send(join(WEB, 'index.html'), false)
      : context.text('The web app is not built. Run "npm run build".', 500);
  });
}

function send(file: string, isHashed: boolean): Response {
  return new Response(new Uint8Array(readFileSync(file)), {
    headers: {
      'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
      'Cache-Control': isHashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    },
  });
}

function isFile(path: string): boolean {
  try {
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function decodeURIComponentSafely(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return '/';
  }
}
