// Typst's one long SVG -> one SVG a page, with figures inlined so that the page's own fonts reach their text.

interface RawPage {
  readonly width: string;
  readonly height: string;
  readonly lines: readonly string[];
}

const BACKGROUND = /^ {4}<path class="typst-shape" fill="#ffffff"[^>]* d="M 0 0v ([\d.]+) h ([\d.]+) /;
const DEFINITION = /^ {8}<(symbol|clipPath|linearGradient|pattern) id="([^"]+)"/;

/**
 * The pages of what Typst's `plainSvg` gives, each complete in itself: glyphs are outlines, so no font is needed but
 * for the text inside figures. Relies on Typst 0.14 writing pages one below the other, two lines deep; throws when it
 * does not, so that an upgrade cannot lose pages unseen.
 */
export function toPages(svg: string): string[] {
  const { pages, definitions } = readPages(svg.split('\n'));
  if (pages.length === 0) throw new Error('no page found in the SVG that Typst wrote');
  return pages.map((page) => {
    const body = page.lines.map((line) => line.trimStart()).join('');
    const used = usedDefinitions(body, definitions);
    const open = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 ${page.width} ${page.height}" width="${page.width}pt" height="${page.height}pt">`;
    return `${open}<defs>${used}</defs><rect width="100%" height="100%" fill="#ffffff"/>${inlineFigures(body)}</svg>`;
  });
}

function readPages(lines: readonly string[]): { pages: RawPage[]; definitions: Map<string, string> } {
  const pages: RawPage[] = [];
  const definitions = new Map<string, string>();
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] as string;
    const background = BACKGROUND.exec(line);
    if (background) {
      const end = lines.indexOf('    </g>', i + 1);
      const body = lines.slice(i + 2, end);
      pages.push({ width: background[2] as string, height: background[1] as string, lines: body });
      i = end;
      continue;
    }
    const definition = DEFINITION.exec(line);
    if (!definition) continue;
    const end = lines.indexOf(`        </${definition[1]}>`, i);
    definitions.set(
      definition[2] as string,
      lines
        .slice(i, end + 1)
        .map((part) => part.trimStart())
        .join(''),
    );
    i = end;
  }
  return { pages, definitions };
}

function usedDefinitions(body: string, definitions: ReadonlyMap<string, string>): string {
  const ids = new Set<string>();
  for (const match of body.matchAll(/(?:href="#|url\(#)([^")]+)/g)) ids.add(match[1] as string);
  return [...ids].map((id) => definitions.get(id) ?? '').join('');
}

const IMAGE =
  /<image(?: transform="([^"]*)")? xlink:href="data:image\/svg\+xml;base64,([^"]*)" width="([^"]*)" height="([^"]*)" preserveAspectRatio="none"\/>/g;

/** A browser gives an SVG inside <image> no fonts of the page, so each such picture becomes part of the page itself. */
function inlineFigures(body: string): string {
  let count = 0;
  return body.replace(
    IMAGE,
    (_whole, transform: string | undefined, data: string, width: string, height: string) => {
      const figure = Buffer.from(data, 'base64').toString('utf8');
      const prefix = `f${count++}-`;
      const nested = figure
        .replace(/^<svg[^>]*>/, (open) => {
          const kept = open.replace(/ (width|height|preserveAspectRatio)="[^"]*"/g, '');
          return `${kept.slice(0, -1)} width="${width}" height="${height}" preserveAspectRatio="none">`;
        })
        .replace(/ id="([^"]+)"/g, ` id="${prefix}$1"`)
        .replace(/url\(#([^)]+)\)/g, `url(#${prefix}$1)`)
        .replace(/href="#([^"]+)"/g, `href="#${prefix}$1"`);
      return transform ? `<g transform="${transform}">${nested}</g>` : nested;
    },
  );
}
