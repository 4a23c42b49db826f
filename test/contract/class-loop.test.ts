// The loop on a data folder by command alone: import, plan, mark, report, backup, restore.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { afterbell, json, printed, refusal } from './command.js';

interface ClassDetail {
  readonly id: string;
  readonly name: string;
  readonly years: readonly number[];
  readonly children: readonly {
    id: string;
    givenName: string;
    familyName: string;
    year: number;
    shownAs: string;
  }[];
}
interface Plan {
  readonly date: string;
  readonly number: string;
  readonly sentence: string;
  readonly sheets: readonly {
    readonly id: string;
    readonly group: string | number;
    readonly board: {
      readonly side: string;
      readonly rungs: readonly {
        readonly rung: number;
        readonly question: {
          readonly skill: string;
          readonly answer: { readonly text: string };
          readonly slips: readonly { readonly misconception: string; readonly text: string }[];
        };
      }[];
    };
  }[];
}

const folder = mkdtempSync(join(tmpdir(), 'afterbell clàss '));
const dataDir = join(folder, 'My data é');
const env = { AFTERBELL_DATA: dataDir, AFTERBELL_TODAY: '2026-05-08' };
const elsewhere = { AFTERBELL_DATA: join(folder, 'restored'), AFTERBELL_TODAY: '2026-05-08' };
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

const NAMES = [
  'Amara Brindlewick',
  'Noah Fernhollow',
  'Zoë Ångström-Ñuñez',
  '李 小龍',
  '🦊 Fox',
  'O’Neill, D’Arcy (Year 5)',
];
let made: ClassDetail;

beforeAll(() => {
  made = json<ClassDetail>(['class', 'import', '-', '--name', 'Wattle 4/5', '--years', '4-5'], {
    input: NAMES.join('\n'),
    env,
  });
});

describe('class', () => {
  it('imports pasted names of any script', () => {
    expect(made).toMatchObject({ name: 'Wattle 4/5', years: [4, 5] });
    expect(made.children.map(({ givenName, familyName }) => `${givenName} ${familyName}`)).toEqual([
      'Amara Brindlewick',
      'Noah Fernhollow',
      'Zoë Ångström-Ñuñez',
      '李 小龍',
      '🦊 Fox',
      'D’Arcy O’Neill',
    ]);
    expect(made.children.map(({ year }) => year)).toEqual([4, 4, 4, 4, 4, 5]);
  });

  it('exports what it imports again, also names that a spreadsheet would take for formulas', () => {
    const csv = `Given name,Family name,Alias,Year\nMara,"Lee, the second",,4\n"Jo ""J""",Quill,Jo,5\n@Home,-Dash,,4\n''=Sum,Ng,,4\n`;
    const first = json<ClassDetail>(
      ['class', 'import', file('list.csv', csv), '--name', 'Round trip', '--years', '4-5'],
      { env },
    );
    const exported = printed(['class', 'export', first.id], { env });
    expect(exported).toContain(`'@Home,'-Dash`);
    expect(exported).toContain(`''=Sum`);
    const second = json<ClassDetail>(
      ['class', 'import', file('again.csv', exported), '--name', 'Round trip 2', '--years', '4-5'],
      { env },
    );
    const bare = ({ children }: ClassDetail) => children.map(({ id: _, ...child }) => child);
    expect(bare(second)).toEqual(bare(first));
  });

  it('keeps nothing or the good rows, by choice, and names row and column of the bad ones', () => {
    const csv = file('mixed.csv', 'Given name,Family name,Year\nMara,Lee,4\n,Quill,5\nOmar,Pebble,42\n');
    const args = ['class', 'import', csv, '--name', 'Mixed', '--years', '4-5'];
    const told = refusal(args, { env });
    expect(told).toMatch(/row 3.*row 4, Year.*Nothing was imported/s);
    const kept = afterbell([...args, '--keep-good', '--json'], { env });
    expect(kept).toMatchObject({ status: 0 });
    expect(told).toMatch(/2 problems above.*the other 1 child\./);
    expect((JSON.parse(kept.stdout) as ClassDetail).children).toHaveLength(1);
    expect(kept.stderr).toMatch(/row 3.*row 4, Year/s);
  });

  // Column names of the 1EdTech OneRoster 1.2 CSV binding (from memory).
  it('imports the two files of a OneRoster export', () => {
    const users = file(
      'users.csv',
      'sourcedId,status,dateLastModified,enabledUser,username,givenName,familyName,grades,userMasterIdentifier\n' +
        'u1,,,true,t1,Tess,Chalk,,\nu2,,,true,s1,Ines,Moss,04,\nu3,,,true,s2,Ravi,Fern,05,\n',
    );
    const classes = file(
      'classes.csv',
      'sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds\n' +
        'c1,,,Banksia,"04,05",k1,B,homeroom,,o1,t1\n',
    );
    const enrollments = file(
      'enrollments.csv',
      'sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate\n' +
        'e1,,,c1,o1,u1,teacher,true,,\ne2,,,c1,o1,u2,student,,,\ne3,,,c1,o1,u3,student,,,\n',
    );
    const detail = json<ClassDetail>(
      [
        'class',
        'import',
        users,
        '--classes',
        classes,
        '--enrollments',
        enrollments,
        '--name',
        'Banksia',
        '--years',
        '4-5',
      ],
      { env },
    );
    expect(detail.children.map(({ givenName, year }) => `${givenName} ${year}`)).toEqual([
      'Ines 4',
      'Ravi 5',
    ]);
  });

  it('says which classes there are when the wanted one is not clear', () => {
    expect(refusal(['plan'], { env })).toMatch(/Wattle 4\/5.*--class/s);
    expect(refusal(['class', 'export', 'Gumnut'], { env })).toMatch(/Gumnut.*Wattle 4\/5/s);
    expect(refusal(['class', 'export', 'Nowhere', 'else'], { env })).toMatch(/too many arguments/);
  });
});

describe('plan, mark and report', () => {
  const ofClass = ['--class', 'wattle 4/5'];

  it('plans the day the same way every time', () => {
    const plan = json<Plan>(['plan', ...ofClass], { env });
    expect(plan).toMatchObject({ date: '2026-05-08' });
    expect(plan.sentence).toMatch(/\.$/);
    expect(plan.sheets.map(({ group, board }) => `${group} ${board.side}`)).toEqual([
      'class front',
      'class back',
      '4 front',
      '5 front',
    ]);
    expect(printed(['plan', ...ofClass], { env })).toContain(plan.sheets[0]?.id);
    const later = ['plan', ...ofClass, '--date', '2026-05-11', '--json'];
    expect(printed(later, { env })).toBe(printed(later, { env }));
  });

  it.each(['2026-02-30', 'tomorrow', '2026-13-01', '20260508', '0000-00-00'])(
    'refuses the day %s',
    (date) => {
      expect(refusal(['plan', ...ofClass, '--date', date], { env })).toContain(date);
    },
  );

  it('records results from CSV, all or nothing, and tells them again', () => {
    const { sheets } = json<Plan>(['plan', ...ofClass], { env });
    const sheet = sheets[0];
    if (!sheet) throw new Error('no board');
    const withSlip = sheet.board.rungs.find(({ question }) => question.slips.length > 0);
    const slip = withSlip?.question.slips[0]?.text ?? '';
    const first = sheet.board.rungs[0]?.question.answer.text ?? '';
    const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
    const rows = [
      'Child,Rung,Answer,State',
      `Amara,1,${quoted(first)},`,
      `noah,${withSlip?.rung},${quoted(slip)},`,
      '🦊,1,,right',
      '李,2,,blank',
      'Zoë,1,,WRONG',
    ];
    const mark = ['mark', '--sheet', sheet.id];
    const from = (lines: readonly string[]) => ({ env, input: `\ufeff${lines.join('\r\n')}\r\n` });
    const refusedRows: readonly (readonly [row: string, told: RegExp])[] = [
      ['Nobody,3,,right', /row 7.*Nobody/s],
      ['Amara,99,,right', /row 7, rung/],
      ['Amara,1,,great', /row 7, state/],
    ];
    for (const [row, told] of refusedRows)
      expect(refusal([...mark, '--answers', '-'], from([...rows, row]))).toMatch(told);
    expect(json<{ marks: unknown[] }>(mark, { env }).marks).toEqual([]);

    const saved = json<{ marks: { rung: number; state: string; findings: { does: string }[] }[] }>(
      [...mark, '--answers', '-'],
      from(rows),
    );
    expect(saved.marks.map(({ state }) => state)).toEqual(['right', 'wrong', 'right', 'blank', 'wrong']);
    expect(saved.marks[1]?.findings).not.toEqual([]);
    expect(printed(mark, { env })).toMatch(/🦊 +1:right/);
    expect(refusal([...mark, '--answers', '-'], from([...rows, 'Amara,1,"unclosed,right']))).toMatch(
      /quotation mark/,
    );
    expect(refusal([...mark, '--answers', '-'], from(['child,rung']))).toMatch(/no results/);
    expect(refusal(['mark', '--sheet', 'nope'], { env })).toMatch(/not here/);
  });

  it('reports the class and one child from what was marked', () => {
    const view = json<{ children: { shownAs: string; answers: number }[]; markedBoards: number }>(
      ['report', ...ofClass],
      { env },
    );
    expect(view.markedBoards).toBe(1);
    const child = json<{ child: { shownAs: string; answers: number } }>(
      ['report', ...ofClass, '--child', 'amara'],
      { env },
    );
    expect(child.child).toMatchObject({ shownAs: 'Amara', answers: view.children[0]?.answers });
    expect(child.child.answers).toBeGreaterThan(0);
    expect(printed(['report', ...ofClass, '--child', '李'], { env })).toContain('李');
    expect(refusal(['report', ...ofClass, '--child', 'Nobody'], { env })).toContain('Nobody');
  });
});

describe('backup and restore', () => {
  const PASSPHRASE = 'kettle wombat ünïcode 七';
  const plain = join(folder, 'plain.backup');
  const locked = join(folder, 'locked.backup');
  const exportOf = (place: typeof env) => [
    printed(['class', 'export', made.id, '--json'], { env: place }),
    printed(['report', '--class', made.id, '--json'], { env: place }),
  ];

  it('writes one file, locked when a passphrase is given', () => {
    expect(printed(['backup', plain], { env })).toMatch(/not locked/);
    expect(printed(['backup', locked], { env: { ...env, AFTERBELL_PASSPHRASE: PASSPHRASE } })).toMatch(
      /is locked/,
    );
    expect(readFileSync(locked).includes('Brindlewick')).toBe(false);
    expect(refusal(['backup', join(folder, 'absent', 'x.backup')], { env })).toMatch(/absent/);
    expect(refusal(['backup', join(folder, 'x.backup'), '--passphrase', 'short'], { env })).toMatch(
      /8 characters/,
    );
  });

  it('gives everything back in an empty place, and asks before replacing what is there', {
    timeout: 180_000,
  }, () => {
    expect(printed(['restore', plain], { env: elsewhere })).toMatch(/restored/);
    const before = exportOf(env);
    expect(exportOf(elsewhere)).toEqual(before);
    expect(refusal(['restore', plain], { env: elsewhere })).toMatch(/--replace|replace/);
    printed(['class', 'import', '-', '--name', 'Later', '--years', '3'], {
      env: elsewhere,
      input: 'Mia Late',
    });
    printed(['restore', locked, '--replace', '--passphrase', PASSPHRASE], { env: elsewhere });
    expect(exportOf(elsewhere)).toEqual(before);
  });

  it('refuses files that are not whole, and changes nothing', () => {
    const before = printed(['class', 'list', '--json'], { env: elsewhere });
    const bytes = readFileSync(locked);
    const flipped = Uint8Array.from(bytes);
    const middle = Math.floor(flipped.length * 0.7);
    flipped[middle] = (flipped[middle] ?? 0) ^ 0x10;
    const replace = ['--replace', '--passphrase', PASSPHRASE];
    expect(refusal(['restore', locked, '--replace', '--passphrase', 'wrong'], { env: elsewhere })).toMatch(
      /passphrase/i,
    );
    expect(refusal(['restore', locked, '--replace'], { env: elsewhere })).toMatch(/passphrase/i);
    const cut = file('cut.backup', bytes.subarray(0, bytes.length - 200));
    for (const [name, path] of [
      ['cut', cut],
      ['flipped', file('flipped.backup', flipped)],
      [
        'foreign',
        file(
          'foreign.backup',
          Uint8Array.from({ length: 5000 }, (_, i) => (i * 31) % 251),
        ),
      ],
      ['empty', file('empty.backup', '')],
    ] as const)
      expect(refusal(['restore', path, ...replace], { env: elsewhere }), name).toMatch(
        /backup|changed|damaged|whole|complete/i,
      );
    expect(printed(['class', 'list', '--json'], { env: elsewhere })).toBe(before);
  });

  it('lets go of the data folder each time', () => {
    expect(existsSync(dataDir)).toBe(true);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});
