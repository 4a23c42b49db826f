// Help for every verb, and one clear sentence with status 2 for everything that cannot be done.
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { afterbell, json, printed, refusal } from './command.js';

const VERBS = [
  'make',
  'make board',
  'questions',
  'skills',
  'print',
  'grade',
  'class',
  'class list',
  'class import',
  'class export',
  'plan',
  'mark',
  'report',
  'sets',
  'sets make',
  'sets keep',
  'rota',
  'rota hand-out',
  'rota finished',
  'practice',
  'practice count',
  'backup',
  'restore',
  'serve',
] as const;

const folder = mkdtempSync(join(tmpdir(), 'afterbell üsage '));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const absent = join(folder, 'absent.json');
const notJson = file('not.json', '{ "kind": "board", ');
const otherJson = file('other.json', '{"kind":"cake","layers":3}');
const notText = file('not-text.csv', Uint8Array.of(0xff, 0xfe, 0x41, 0xc3, 0x28));
const empty = file('empty', '');
const tenMegabytes = file('long.txt', 'Mia Long\n'.repeat(1_200_000));
const noColumns = file('no-columns.csv', 'name,score\nMei,3\n');
const out = join(folder, 'out.pdf');
const unwritable = join(folder, 'no-such-folder', 'out.pdf');

describe('help', () => {
  it.each(['', ...VERBS])('afterbell %s --help', (verb) => {
    const { status, stdout, stderr } = afterbell([...verb.split(' ').filter(Boolean), '--help']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(new RegExp(`^Usage: afterbell ${verb}`));
    expect(stdout).toMatch(/-h, --help/);
  });

  it('names every verb', () => {
    const told = printed(['--help']);
    for (const verb of VERBS) expect(told).toContain(verb.split(' ')[0]);
  });
});

describe('bad usage ends with status 2 and one sentence', () => {
  const board = ['make', 'board', '--number', '47', '--years', '4'];
  it.each<[string, readonly string[], RegExp]>([
    ['no verb', [], /afterbell make board/],
    ['half a verb', ['make'], /--help/],
    ['half a verb of classes', ['class'], /--help/],
    ['an unknown verb', ['bake'], /bake/],
    ['a verb nearly right', ['prnt'], /print/],
    ['an unknown activity', ['make', 'cake'], /cake/],
    ['an unknown option', [...board, '--colour', 'red'], /--colour/],
    ['a missing option', ['make', 'board', '--years', '4'], /--number/],
    ['an option without value', ['make', 'board', '--years', '4', '--number'], /--number/],
    ['an argument too many', ['skills', 'all'], /too many arguments/],
    ['a number that is none', ['make', 'board', '--number', 'forty-seven', '--years', '4'], /forty-seven/],
    ['a number without end', ['make', 'board', '--number', '9'.repeat(400), '--years', '4'], /number/],
    ['nothing over nothing', ['make', 'board', '--number', '0/0', '--years', '4'], /0\/0/],
    ['years beyond the school', ['make', 'board', '--number', '47', '--years', '4-9'], /--years 4-9/],
    ['years the wrong way round', ['make', 'board', '--number', '47', '--years', '5-4'], /--years 5-4/],
    ['years that are words', ['make', 'board', '--number', '47', '--years', 'four'], /--years four/],
    ['no years', ['make', 'board', '--number', '47', '--years', ''], /--years/],
    ['too few rungs', [...board, '--rungs', '3'], /--rungs 3/],
    ['a seed that is no number', [...board, '--seed', '1.5'], /--seed 1\.5/],
    ['a negative seed', [...board, '--seed', '-1'], /--seed/],
    ['no boards at all', [...board, '--count', '0'], /--count 0/],
    ['a side that a board has not', [...board, '--side', 'left'], /front or back/],
    ['words of nowhere', [...board, '--locale', 'xx-XX'], /en-AU/],
    ['an unknown skill', ['questions', '--skill', 'add.dragons'], /add\.dragons/],
    ['a count that is no number', ['questions', '--skill', 'sub.2d2d', '--count', 'many'], /--count many/],
    ['a strand that is none', ['skills', '--strand', 'alchemy'], /alchemy/],
    ['a code that is none', ['skills', '--code', 'AC8'], /AC8/],
    ['own questions without a number', ['questions', '--own', notJson], /--number/],
    ['own questions and a skill', ['questions', '--own', notJson, '--skill', 'add.3d'], /not both/],
    [
      'own questions of another form',
      ['questions', '--own', notJson, '--number', '47'],
      /row 1, question: There is no column/,
    ],
    ['no skill and no list', ['questions'], /--skill/],
    ['a file that is absent', ['print', absent, '--out', out], /absent\.json/],
    ['a folder', ['print', folder, '--out', out], /folder/],
    ['a file that is not JSON', ['print', notJson, '--out', out], /not\.json is not JSON/],
    ['JSON that is something else', ['print', otherJson, '--out', out], /other\.json/],
    ['an empty file', ['print', empty, '--out', out], /not JSON/],
    ['answers that are absent', ['grade', '--answers', absent], /absent\.json/],
    ['answers that are not JSON', ['grade', '--answers', notJson], /not\.json/],
    ['answers of another form', ['grade', '--answers', otherJson], /other\.json/],
    ['answers in a folder', ['grade', '--answers', folder], /folder/],
    ['a class list that is not text', ['class', 'import', notText, '--name', 'A', '--years', '4'], /UTF-8/],
    [
      'a class list that is absent',
      ['class', 'import', absent, '--name', 'A', '--years', '4'],
      /no such file/,
    ],
    [
      'a class list without children',
      ['class', 'import', empty, '--name', 'A', '--years', '4'],
      /othing was imported/,
    ],
    [
      'ten megabytes of names',
      ['class', 'import', tenMegabytes, '--name', 'A', '--years', '4'],
      /far more text/,
    ],
    ['results without columns', ['mark', '--sheet', 'x', '--answers', noColumns], /child/],
    ['a backup that is absent', ['restore', absent], /absent\.json/],
  ])('%s', (_, args, told) => {
    expect(refusal(args, { env: { AFTERBELL_DATA: join(folder, 'data') } })).toMatch(told);
  });

  it('a PDF that cannot be written', () => {
    const input = printed([...board, '--json']);
    expect(refusal(['print', '-', '--document', 'key', '--out', unwritable], { input })).toMatch(
      /no-such-folder.*cannot be written/,
    );
    expect(refusal(['print', '-', '--document', 'key', '--out', folder], { input })).toMatch(
      /cannot be written/,
    );
    for (const [option, value] of [
      ['--paper', 'A7'],
      ['--document', 'cards'],
      ['--document', 'cake'],
      ['--per-page', '7'],
      ['--copies', '0'],
      ['--date', '2026-02-30'],
    ] as const) {
      expect(refusal(['print', '-', option, value, '--out', out], { input })).toContain(`${option} ${value}`);
    }
  });

  it('a board that was changed by hand, naming the place', () => {
    const board = json<{ rungs: { question: { text: unknown } }[] }>([
      'make',
      'board',
      '--number',
      '7',
      '--years',
      '2',
    ]);
    if (board.rungs[3]) board.rungs[3].question.text = 12;
    const told = refusal(['print', '-', '--out', out], { input: JSON.stringify(board) });
    expect(told).toMatch(/rungs\.3\.question\.text/);
  });

  it('a data folder that may not be written', (context) => {
    if (process.getuid?.() === 0) {
      // Root may write anywhere, so a file stands where the folder should be.
      const told = refusal(['class', 'list'], { env: { AFTERBELL_DATA: join(empty, 'data') } });
      expect(told).toMatch(/empty/);
      return;
    }
    if (process.platform === 'win32') return context.skip('Windows keeps no such permissions.');
    const locked = mkdtempSync(join(folder, 'locked-'));
    chmodSync(locked, 0o500);
    expect(refusal(['class', 'list'], { env: { AFTERBELL_DATA: join(locked, 'data') } })).toMatch(/locked/);
  });
});
