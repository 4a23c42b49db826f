// The architecture as rules over source text: who may import whom, and what each layer must not touch.

export const LAYERS = ['engine', 'api', 'print', 'store', 'server/app', 'server/node', 'cli', 'web'] as const;
export type Layer = (typeof LAYERS)[number];

/** The layers whose modules a layer may import; nothing points up, siblings never import each other. */
export const MAY_IMPORT: Readonly<Record<Layer, readonly Layer[]>> = {
  engine: [],
  api: ['engine'],
  print: ['engine'],
  store: ['engine'],
  'server/app': ['engine', 'api', 'store', 'print'],
  'server/node': ['engine', 'api', 'store', 'print', 'server/app'],
  cli: ['engine', 'api', 'store', 'print', 'server/app', 'server/node'],
  web: ['engine', 'api'],
};

/** Packages that may be imported by the layers that must stay pure or free of any runtime; others may import what package.json lists. */
const PACKAGES: Partial<Record<Layer, RegExp>> = {
  engine: /^(pure-rand(\/|$)|jsep$)/,
  api: /^zod$/,
  'server/app': /^(hono(\/|$)|zod$|papaparse$)/,
};

/** From server/app only these parts of store and print: types that know no runtime. */
const RUNTIME_FREE = /^#(store\/(store|records|result|snapshot)|print\/(kit-|timed-)?request)\.js$/;

/** Words that a layer must not use outside comments and strings, and why. */
const FORBIDDEN_WORDS: Partial<Record<Layer, readonly (readonly [RegExp, string])[]>> = {
  engine: [
    [/\bMath\.random\b/, 'randomness comes from a seeded Rng'],
    [/\bDate\.now\b|\bnew Date\b/, 'the engine has no clock'],
    [/\b(process|globalThis|document|window|Buffer|fetch)\s*[.(]/, 'the engine has no surroundings'],
  ],
  'server/app': [[/\b(process|Buffer)\s*[.(]/, 'the app knows no runtime']],
};

export interface Offence {
  readonly file: string;
  readonly what: string;
}

/** The layer of a source path like "src/engine/numbers/rational.ts". */
export function layerOf(path: string): Layer | null {
  return LAYERS.find((layer) => path.startsWith(`src/${layer}/`)) ?? null;
}

/** Offences of one file against the rules; empty when it keeps them. */
export function offencesIn(path: string, text: string): Offence[] {
  const layer = layerOf(path);
  if (!layer) return [];
  const offences: Offence[] = [];
  const report = (what: string) => offences.push({ file: path, what });
  const bare = withoutComments(text);
  for (const specifier of importsOf(bare)) {
    if (specifier.startsWith('.')) {
      if (escapes(path, specifier, layer)) report(`${specifier} leaves the layer; use #layer/… instead`);
    } else if (specifier.startsWith('#')) {
      const target = layerOf(`src/${specifier.slice(1)}`);
      if (!target || (target !== layer && !MAY_IMPORT[layer].includes(target)))
        report(`may not import ${specifier}`);
      if (layer === 'server/app' && /^#(store|print)\//.test(specifier) && !RUNTIME_FREE.test(specifier)) {
        report(`may import only runtime-free parts of store and print, not ${specifier}`);
      }
    } else if (PACKAGES[layer] && !PACKAGES[layer].test(specifier)) {
      report(`may not import the package ${specifier}`);
    } else if (layer === 'web' && specifier.startsWith('node:')) {
      report(`may not import ${specifier}`);
    }
  }
  for (const [pattern, reason] of FORBIDDEN_WORDS[layer] ?? []) {
    const found = pattern.exec(withoutStrings(bare));
    if (found) report(`uses ${found[0]}: ${reason}`);
  }
  return offences;
}

function importsOf(text: string): string[] {
  const pattern = /(?:\bfrom\s*|\bimport\s*\(?\s*)(['"])([#.@a-z][^'"\s]*)\1/g;
  return [...text.matchAll(pattern)].map((match) => match[2] as string);
}

function escapes(path: string, specifier: string, layer: Layer): boolean {
  const folder = path.slice(0, path.lastIndexOf('/'));
  const resolved = new URL(specifier, `file:///${folder}/`).pathname.slice(1);
  return layerOf(resolved) !== layer;
}

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, ' ').replace(/(^|[^:'"`])\/\/[^\n]*/g, '$1');
}

function withoutStrings(text: string): string {
  return text.replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g, "''");
}
