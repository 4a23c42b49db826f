// Timed practice of a class by command alone: prepared, printed, counted, put right, moved.
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Ladder, TimedView } from '#api/timed-room.js';
import { afterbell, json, printed, refusal } from './command.js';

const folder = mkdtempSync(join(tmpdir(), 'afterbell präctice '));
const env = { AFTERBELL_DATA: join(folder, 'data'), AFTERBELL_TODAY: '2026-05-08' };
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeAll(() => {
  printed(['class', 'import', '-', '--name', 'Wattle', '--years', '3-4'], {
    input: 'Amara\nNoah\nPriya, Year 3\n',
    env,
  });
});

const practice = (...args: string[]) => json<TimedView>(['practice', ...args], { env });
const of = ({ children }: TimedView, name: string) => children.find(({ shownAs }) => shownAs === name);
const count = (input: string) => json<TimedView>(['practice', 'count', '-'], { env, input });

describe('practice', () => {
  it('leaves out who is away, and prints a sheet for everyone else', () => {
    printed(['rota', 'away', 'Priya'], { env });
    const view = practice('prepare');
    expect(view.children.map(({ sheet }) => sheet !== null)).toEqual([true, true, false]);
    const out = join(folder, 'sheets.pdf');
    const { stderr } = afterbell(['practice', 'print', '--out', out], { env });
    expect(stderr).toMatch(/4 pages/);
    expect(existsSync(out)).toBe(true);
  });

  it('is counted by name and by code, with circled and written ones, and the last count is taken back', () => {
    const code = of(practice('show'), 'Noah')?.sheet?.id ?? '';
    const view = count(`child,done,circled,written,minutes\nAmara,31,4 9,4:63,\n${code},20,,,none\n`);
    expect(of(view, 'Amara')?.sheet?.outcome).toMatchObject({
      attempted: 31,
      wrong: [4, 9],
      written: { 4: '63' },
    });
    expect(of(view, 'Amara')?.redo).toHaveLength(2);
    expect(of(view, 'Noah')?.sheet?.outcome).toMatchObject({ attempted: 20, minutes: null });
    expect(printed(['practice', 'show'], { env })).toMatch(/Amara .*31 done, 2 circled, 2 to put right/);
    expect(of(practice('uncount', 'Noah'), 'Noah')?.sheet?.outcome).toBeNull();
  });

  it('refuses a file with one bad row as a whole, in one sentence', () => {
    const told = (input: string) => refusal(['practice', 'count', '-'], { env, input });
    expect(told('child,done\nNoah,20\nNobody,20\n')).toMatch(/row 3: no child is shown as “Nobody”/);
    expect(told('child,done\nNoah,20\nPriya,20\n')).toMatch(/row 3: Priya has no sheet/);
    expect(told('child,done\nNoah,99\n')).toMatch(/cannot have 99 done/);
    expect(told('child\nNoah\n')).toMatch(/no column “done”/);
    expect(of(practice('show'), 'Noah')?.sheet?.outcome).toBeNull();
  });

  it('moves a child to a level by its place, its id or its title, and back', () => {
    const before = of(practice('show'), 'Amara')?.levelId;
    expect(of(practice('move', 'Amara', '18'), 'Amara')?.levelId).toBe(
      practice('show').ladder.levels[17]?.id,
    );
    expect(of(practice('move', 'Amara', 'nines'), 'Amara')?.levelId).toBe('table-9');
    practice('move-back', 'Amara');
    expect(of(practice('move-back', 'Amara'), 'Amara')?.levelId).toBe(before);
    expect(refusal(['practice', 'move', 'Amara', 'kites'], { env })).toMatch(/no level “kites”/);
  });

  it('gives the ladder out, takes it changed, and puts the usual one back', () => {
    const ladder = json<Ladder>(['practice', 'ladder'], { env });
    const changed = JSON.stringify({ ...ladder, minutes: 4, levels: ladder.levels.slice(1) });
    const after = json<Ladder>(['practice', 'ladder', '-'], { env, input: changed });
    expect(after).toMatchObject({ own: true, minutes: 4 });
    expect(after.levels).toHaveLength(ladder.levels.length - 1);
    expect(json<Ladder>(['practice', 'ladder', '--usual'], { env })).toEqual(ladder);
  });
});
