export function toPages(svg: string): string[] { return [svg]; }
