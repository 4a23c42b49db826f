// A second opinion on questions that are answered from a figure: each judge reads the figure's specification anew and
// lists every answer that could be defended. It also fails questions whose words and figure disagree.
import type { FigureSpec } from '#engine/figures/figure.js';
import type { Question } from '#engine/questions/question.js';

type Judge<K extends FigureSpec['kind']> = (
  figure: Extract<FigureSpec, { kind: K }>,
  question: Question,
) => readonly string[] | null;

const digits = (text: string) => [...text.replaceAll('\u00a0', '').matchAll(/\d+/g)].map(([n]) => Number(n));
const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const fraction = (n: number, d: number): string => {
  const shared = ((a: number, b: number) => {
    while (b > 0) [a, b] = [b, a % b];
    return a;
  })(n, d);
  return d === shared ? String(n / shared) : `${n / shared}/${d / shared}`;
};

const SHAPE_NAMES: Readonly<Record<string, string>> = {
  'square-pyramid': 'pyramid',
  'triangular-prism': 'triangular prism',
};

const NET_FOLDS: Readonly<Record<string, string>> = {
  cube: 'a cube',
  'cube-steps': 'a cube',
  cylinder: 'a cylinder',
  'square-pyramid': 'a square pyramid',
  'triangular-prism': 'a triangular prism',
};

/** The cells of the nets made of squares, as drawn; a cube needs six that fold onto six different faces. */
const SQUARE_NETS: Readonly<Record<string, readonly (readonly [x: number, y: number])[]>> = {
  cube: [
    [1, 0],
    [0, 1],
    [1, 1],
    [2, 1],
    [3, 1],
    [1, 2],
  ],
  'cube-steps': [
    [0, 0],
    [1, 0],
    [1, 1],
    [2, 1],
    [2, 2],
    [3, 2],
  ],
  'not-cube-row': [
    [0, 0],
    [1, 0],
    [2, 0],
    [3, 0],
    [4, 0],
    [2, 1],
  ],
  'not-cube-block': [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
    [2, 1],
    [3, 1],
  ],
  'open-box': [
    [1, 0],
    [0, 1],
    [1, 1],
    [2, 1],
    [1, 2],
  ],
};

/** Rolls a cube over the cells: true when each cell is covered by another face and there are six. */
function foldsToCube(cells: readonly (readonly [number, number])[]): boolean {
  type Cube = readonly [
    top: number,
    north: number,
    east: number,
    south: number,
    west: number,
    bottom: number,
  ];
  const roll: Readonly<Record<string, (c: Cube) => Cube>> = {
    '1,0': ([t, n, e, s, w, b]) => [w, n, t, s, b, e],
    '-1,0': ([t, n, e, s, w, b]) => [e, n, b, s, t, w],
    '0,1': ([t, n, e, s, w, b]) => [n, b, e, t, w, s],
    '0,-1': ([t, n, e, s, w, b]) => [s, t, e, b, w, n],
  };
  const faces = new Set<number>();
  const seen = new Set<string>();
  const visit = (x: number, y: number, cube: Cube): void => {
    seen.add(`${x},${y}`);
    faces.add(cube[5]);
    for (const [step, turned] of Object.entries(roll)) {
      const [dx = 0, dy = 0] = step.split(',').map(Number);
      const to = `${x + dx},${y + dy}`;
      if (!seen.has(to) && cells.some(([a, b]) => `${a},${b}` === to)) visit(x + dx, y + dy, turned(cube));
    }
  };
  const [[x, y] = [0, 0]] = cells;
  visit(x, y, [1, 2, 3, 4, 5, 6]);
  return cells.length === 6 && faces.size === 6;
}

function namedRow<T extends { readonly label: string }>(rows: readonly T[], text: string): T[] {
  return rows.filter(({ label }) => text.includes(label === 'walking' ? 'on foot' : label));
}

const JUDGES: { readonly [K in FigureSpec['kind']]?: Judge<K> } = {
  clock: ({ minutes }, { text }) =>
    text === 'What time does the clock show?'
      ? [`${Math.floor(minutes / 60) % 12 || 12}:${String(minutes % 60).padStart(2, '0')}`]
      : null,
  ruler: ({ objectFrom, objectTo, object }, { text }) =>
    text.includes(object) ? [String(objectTo - objectFrom)] : [],
  tally: ({ rows }, { text }) =>
    text.startsWith('In the tally') ? namedRow(rows, text).map(({ count }) => String(count)) : null,
  pictograph: ({ rows }, { text }) =>
    /^In the (picture graph|pictogram)/.test(text)
      ? namedRow(rows, text).map(({ value }) => String(value))
      : null,
  'bar-chart': ({ bars }, { text }) =>
    /^In the (column graph|bar chart|bar graph)/.test(text)
      ? namedRow(bars, text).map(({ value }) => String(value))
      : null,
  dots: ({ groups }, { text }) => {
    const [left = 0, right = 0] = groups;
    if (!text.startsWith('Which')) return [String(left + right)];
    const told = digits(text);
    if (told[0] !== left || told[1] !== right) return [];
    return left === right ? ['left', 'right'] : [left > right === text.includes('more') ? 'left' : 'right'];
  },
  'fraction-bar': ({ parts, shaded }, { text }) =>
    text.startsWith('What fraction of the bar')
      ? [fraction(text.includes('not') ? parts - shaded : shaded, parts)]
      : null,
  'fraction-circle': ({ parts, shaded }, { text }) =>
    text.startsWith('What fraction of the circle')
      ? [fraction(text.includes('not') ? parts - shaded : shaded, parts)]
      : null,
  shape: ({ shape }, { text, skill }) => {
    if (skill === 'shape.name') return [shape];
    const sides: Readonly<Record<string, number>> = {
      square: 4,
      rectangle: 4,
      hexagon: 6,
      octagon: 8,
      pentagon: 5,
    };
    if (text.includes('pairs of parallel sides'))
      return [String((sides[shape] ?? 0) % 2 === 0 ? (sides[shape] ?? 0) / 2 : 0)];
    if (skill === 'shape.right-angles')
      return [String(shape === 'square' || shape === 'rectangle' ? 4 : shape === 'right-triangle' ? 1 : 0)];
    return null;
  },
  solid: ({ solid }, { text, accepts }) => {
    if (!text.startsWith('What is the name')) return null;
    // A cuboid goes by several names, all of them right.
    const name = SHAPE_NAMES[solid] ?? solid;
    return accepts.includes(name) ? [accepts[0] ?? ''] : [name];
  },
  angle: ({ degrees }, { text, skill }) => {
    if (text.includes('than a right angle'))
      return [degrees < 90 ? 'smaller' : degrees > 90 ? 'larger' : 'equal'];
    if (skill !== 'shape.angle.estimate') return null;
    // Choices must lie far enough apart to tell by eye.
    const choices = digits(text);
    const near = choices.filter((choice) => Math.abs(choice - degrees) < 30);
    return near.map((choice) => `${choice}°`);
  },
  'line-pair': ({ relation }) => [relation === 'slanted' ? 'neither' : relation],
  net: ({ net }, { text }) => {
    if (text.includes('surface area')) return null;
    if (text.includes('closed cube')) return [foldsToCube(SQUARE_NETS[net] ?? []) ? 'yes' : 'no'];
    return [NET_FOLDS[net] ?? ''];
  },
  coordinates: ({ points }, { text }) => {
    const at = (name: string) => points.find((point) => point.name === name);
    const a = at('A');
    const written = (x: number, y: number) => `(${x}, ${y})`.replaceAll('-', '−');
    if (text === 'What are the coordinates of point A?') return a ? [written(a.x, a.y)] : [];
    const which = /at \((\d+),\s(\d+)\)/.exec(text);
    if (text.startsWith('Which point'))
      return points
        .filter(({ x, y }) => x === Number(which?.[1]) && y === Number(which?.[2]))
        .map(({ name }) => name);
    if (text.startsWith('Start at A')) {
      const across = /(\d+) (left|right)/.exec(text);
      const along = /(\d+) (up|down)/.exec(text);
      const x = (a?.x ?? 0) + Number(across?.[1]) * (across?.[2] === 'left' ? -1 : 1);
      const y = (a?.y ?? 0) + Number(along?.[1]) * (along?.[2] === 'down' ? -1 : 1);
      return points.filter((point) => point.x === x && point.y === y).map(({ name }) => name);
    }
    return null;
  },
  table: ({ rows }, { text, skill }) => {
    if (skill === 'shape.position.square') {
      const square = /square ([A-D])(\d)/.exec(text);
      if (square) return [rows[Number(square[2])]?.[rows[0]?.indexOf(square[1] ?? '') ?? 0] ?? ''];
      const thing = /is the (\w+)\?/.exec(text)?.[1] ?? '';
      return rows.flatMap((row, r) =>
        row.flatMap((cell, c) => (cell === thing ? [`${rows[0]?.[c]}${r}`] : [])),
      );
    }
    if (skill === 'data.table') {
      const days = rows[0] ?? [];
      const column = days.findIndex(
        (day, i) =>
          i > 0 && text.includes(`${day}${day === 'Tue' ? 'sday' : day === 'Wed' ? 'nesday' : 'day'}`),
      );
      const row = rows.findIndex((cells, i) => i > 0 && text.includes(cells[0] ?? '?'));
      const chosen = rows
        .slice(1)
        .flatMap((cells, r) =>
          cells
            .slice(1)
            .flatMap((cell, c) =>
              (row < 0 || r === row - 1) && (column < 0 || c === column - 1) ? [Number(cell)] : [],
            ),
        );
      return [String(chosen.reduce((sum, n) => sum + n, 0))];
    }
    if (skill === 'data.timetable') {
      const leaves = /the (\d{1,2}:\d\d(?:\s[ap]m)?) bus/.exec(text)?.[1] ?? '';
      const columns = (rows[0] ?? []).flatMap((cell, c) => (cell === leaves ? [c] : []));
      const minutes = (cell: string) => {
        const [, hour, minute, half] = /^(\d+):(\d\d)(?:\s([ap])m)?$/.exec(cell) ?? [];
        return 60 * (half ? (Number(hour) % 12) + (half === 'p' ? 12 : 0) : Number(hour)) + Number(minute);
      };
      return columns.map((c) => {
        const arrive = rows[2]?.[c] ?? '';
        return text.includes(', when ') ? arrive : String(minutes(arrive) - minutes(leaves));
      });
    }
    return null;
  },
  'line-graph': ({ points }, { text }) => {
    const named = points.filter(({ label }) => text.includes(label));
    if (text.startsWith('In the line graph')) return named.map(({ value }) => String(value));
    if (text.startsWith('By how many')) {
      const [from, to] = [/from (.+) to /.exec(text)?.[1], / to (.+)\?$/.exec(text)?.[1]].map((label) =>
        points.find((point) => label?.startsWith(point.label)),
      );
      const change = (to?.value ?? 0) - (from?.value ?? 0);
      return change > 0 === text.includes('rise') ? [String(Math.abs(change))] : [];
    }
    const top = Math.max(...points.map(({ value }) => value));
    return points.filter(({ value }) => value === top).map(({ label }) => label);
  },
  'pie-chart': ({ slices }, { text }) => {
    const all = slices.reduce((sum, { parts }) => sum + parts, 0);
    const slice = slices.find(({ label }) => text.includes(label === 'walk' ? 'walk' : `by ${label}`));
    if (!slice) return [];
    if (text.startsWith('What fraction')) return [fraction(slice.parts, all)];
    return [String(((digits(text)[0] ?? 0) * slice.parts) / all)];
  },
  calendar: ({ month, days, firstWeekday }, { text, accepts }) => {
    const dates = [...text.matchAll(/(\d+) [A-Z][a-z]+|[A-Z][a-z]+ (\d+)/g)].map(([, a, b]) =>
      Number(a ?? b),
    );
    const [date = 0, other = 0] = dates;
    if (!text.includes(month) || date < 1 || date > days) return [];
    if (text.startsWith('On which day of the week')) return [DAYS[(firstWeekday + date - 2) % 7] ?? ''];
    if (text.startsWith('How many days')) return [String(other - date)];
    const weeks = Number(/(\d) weeks?/.exec(text)?.[1]);
    const to = date + (text.includes('ago') ? -7 : 7) * weeks;
    return to >= 1 && to <= days && accepts.includes(String(to)) ? [accepts[0] ?? ''] : [];
  },
  'symmetry-grid': ({ columns, rows, filled }, { text }) => {
    if (text.startsWith('Count the columns')) {
      const [[column] = [0]] = filled;
      return filled.length === 1 ? [String(columns - column)] : [];
    }
    // Every square on one side, none twice: then the mirror doubles them.
    const places = new Set(filled.map(([c, r]) => `${c},${r}`));
    const isHalf = filled.every(([c, r]) => c < columns / 2 && r < rows);
    return isHalf && places.size === digits(text)[0] ? [String(2 * places.size)] : [];
  },
  'hundred-square': ({ from, rows, columns, hidden }, { text }) => {
    const [known = Number.NaN] = digits(text);
    const places = Array.from(
      { length: rows * columns },
      (_, i) => from + 10 * Math.floor(i / columns) + (i % columns),
    );
    if (!places.includes(known) || hidden.includes(known)) return [];
    const step =
      { under: 10, over: -10, right: 1, left: -1 }[/(?:directly|just to the) (\w+)/.exec(text)?.[1] ?? ''] ??
      Number.NaN;
    return hidden.filter((value) => value === known + step).map(String);
  },
  spinner: ({ sectors }, { text, skill }) => {
    if (skill !== 'data.chance.words') return null;
    const colour = /Is (\w+) impossible/.exec(text)?.[1] ?? '';
    const share = sectors.filter((sector) => sector === colour).length / sectors.length;
    if (share === 0 || share === 1) return [share === 0 ? 'impossible' : 'certain'];
    return share < 0.5 ? ['unlikely'] : share > 0.5 ? ['likely'] : [];
  },
};

/** What the figure answers, or null when the question does not rest on it. */
export function judgedByFigure(question: Question): readonly string[] | null {
  const { figure } = question;
  if (figure === null) return null;
  const judge = JUDGES[figure.kind] as Judge<typeof figure.kind> | undefined;
  return judge?.(figure as never, question) ?? null;
}
