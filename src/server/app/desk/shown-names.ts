// Names as screens and slips show them: as short as the class allows.

interface Named {
  readonly givenName: string;
  readonly familyName: string;
  readonly alias: string;
}

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Every way to show a child, shortest first: the alias alone, or the given name with more and more of the family name. */
function waysToShow({ givenName, familyName, alias }: Named): string[] {
  if (alias !== '') return [alias];
  const ways = [givenName];
  for (const { index, segment } of letters.segment(familyName))
    ways.push(`${givenName} ${familyName.slice(0, index + segment.length).trimEnd()}`);
  return ways;
}

/**
 * For each child, in order: the alias where there is one, else the given name, lengthened by as many letters of the
 * family name as tell it from every way another child could be shown ("Mara", or "Mara Ta" and "Mara Te"). Two children
 * are shown alike only when their whole names are alike.
 */
export function shownNames(children: readonly Named[]): string[] {
  const fold = (name: string) => name.toLocaleLowerCase('en');
  const ways = children.map(waysToShow);
  const users = new Map<string, number>();
  for (const own of ways) for (const key of new Set(own.map(fold))) users.set(key, (users.get(key) ?? 0) + 1);
  return ways.map((own) => own.find((way) => users.get(fold(way)) === 1) ?? own.at(-1) ?? '');
}
