// Names as screens and slips show them: as short as the class allows.

interface Named {
  readonly givenName: string;
  readonly familyName: string;
  readonly alias: string;
}

/**
 * For each child, in order: the alias where there is one, else the given name, lengthened by as many letters of the
 * family name as tell it from the others ("Mara", or "Mara T" and "Mara Te").
 */
export function shownNames(children: readonly Named[]): string[] {
  const same = (a: string, b: string) => a.toLocaleLowerCase('en') === b.toLocaleLowerCase('en');
  return children.map((child, index) => {
    if (child.alias !== '') return child.alias;
    const rivals = children.filter(
      (other, at) => at !== index && other.alias === '' && same(other.givenName, child.givenName),
    );
    if (rivals.length === 0 || child.familyName === '') return child.givenName;
    const letters = [...child.familyName];
    const needed = letters.findIndex((_, at) => {
      const start = letters.slice(0, at + 1).join('');
      return rivals.every((rival) => !same([...rival.familyName].slice(0, at + 1).join(''), start));
    });
    const length = needed < 0 ? letters.length : needed + 1;
    return `${child.givenName} ${letters.slice(0, length).join('')}`;
  });
}
