// What only a server can show: schools kept apart, several openers at once, a server that is not there.
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { must, refusalOf } from '../../../test/support/must.js';
import {
  hasPostgres,
  startPostgres,
  type TemporaryPostgres,
} from '../../../test/support/temporary-postgres.js';
import { openStore } from '../open-store.js';
import { SNAPSHOT_TABLES } from '../snapshot.js';

describe.skipIf(!hasPostgres())('a PostgreSQL server', () => {
  let server: TemporaryPostgres;

  beforeAll(async () => {
    server = await startPostgres();
    server.sql('postgres', 'create role teacher login nosuperuser nobypassrls');
  });
  afterAll(() => server?.stop());

  async function withClient<T>(database: string, work: (client: Client) => Promise<T>): Promise<T> {
    const client = new Client({ connectionString: server.url(database, 'teacher') });
    await client.connect();
    try {
      return await work(client);
    } finally {
      await client.end();
    }
  }

  it('lets three openers of an empty database in at once, five times over', async () => {
    for (let round = 0; round < 5; round++) {
      const database = `race${round}`;
      server.sql('postgres', `create database ${database} owner teacher`);
      const place = { databaseUrl: server.url(database, 'teacher') };
      const stores = await Promise.all([1, 2, 3].map(() => openStore(place).then(must)));
      await must((stores[0] as (typeof stores)[0]).classes.create({ name: 'Wattle', years: [4] }));
      expect(await must((stores[2] as (typeof stores)[0]).classes.list())).toHaveLength(1);
      await Promise.all(stores.map((store) => store.close()));
    }
  });

  it("keeps a school's rows from another school, even from the owner of the tables", async () => {
    server.sql('postgres', 'create database schools owner teacher');
    const place = { databaseUrl: server.url('schools', 'teacher') };
    const north = await must(openStore(place, { school: 'north' }));
    const south = await must(openStore(place, { school: 'south' }));
    const { id } = await must(north.classes.create({ name: 'Wattle', years: [4] }));
    const input = { givenName: 'Ana', familyName: '', alias: '', year: 4, joined: null };
    const [ana] = await must(north.children.add(id, [input]));
    expect(await must(south.classes.list())).toEqual([]);
    expect(await refusalOf(south.classes.get(id))).toBe('not.found');
    expect(await refusalOf(south.children.erase((ana as { id: string }).id))).toBe('not.found');
    expect(await must(north.children.list(id))).toHaveLength(1);

    await withClient('schools', async (client) => {
      const count = async (table: string) =>
        Number((await client.query(`select count(*) as n from ${table}`)).rows[0].n);
      // Queries that forget to name the school: nothing without one, only its own rows with one.
      expect(await count('children')).toBe(0);
      await client.query("select set_config('afterbell.school', 'south', false)");
      expect(await count('children')).toBe(0);
      expect((await client.query('delete from children')).rowCount).toBe(0);
      const theft = "insert into classes values ('north', 'x', 'Stolen', '[4]')";
      await expect(client.query(theft)).rejects.toThrow(/row-level security/);
      await client.query("select set_config('afterbell.school', 'north', false)");
      expect(await count('children')).toBe(1);
    });
    await north.close();
    await south.close();
  });

  it('guards every table, and each key leads with the school', async () => {
    await withClient('schools', async (client) => {
      const { rows } =
        await client.query(`select c.relname as table, c.relrowsecurity as enabled, c.relforcerowsecurity as forced,
          (select a.attname from pg_index i join pg_attribute a on a.attrelid = c.oid and a.attnum = i.indkey[0]
           where i.indrelid = c.oid and i.indisprimary) as leads
        from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relname <> 'afterbell_schema'`);
      expect(rows.map((row) => row.table).sort()).toEqual([...SNAPSHOT_TABLES, 'schools'].sort());
      for (const row of rows) expect(row).toMatchObject({ enabled: true, forced: true, leads: 'school_id' });
    });
  });

  it('refuses to change a saved sheet, even by hand', async () => {
    await withClient('schools', async (client) => {
      await client.query("select set_config('afterbell.school', 'north', false)");
      await client.query(
        `insert into sheets select school_id, 's', id, null, 'board', 1, '47', 'front', 12, '{}', 'h', now(), null from classes`,
      );
      await expect(client.query("update sheets set content = '[]'")).rejects.toThrow(
        'a saved sheet cannot be changed',
      );
      expect((await client.query("update sheets set superseded_by = 's'")).rowCount).toBe(1);
    });
  });

  it('refuses to change a saved set, even by hand, but for its note', async () => {
    await withClient('schools', async (client) => {
      await client.query("select set_config('afterbell.school', 'north', false)");
      await client.query(
        `insert into sets select school_id, 'x', id, 'chain', 'middle', 1, 1, '{}', 'h', now(), '' from classes`,
      );
      for (const change of ["content = '[]'", 'number = 2', "band = 'upper'"])
        await expect(client.query(`update sets set ${change}`)).rejects.toThrow(
          'a saved set cannot be changed',
        );
      expect((await client.query("update sets set note = 'torn'")).rowCount).toBe(1);
    });
  });

  it('refuses data of a newer program and changes nothing', async () => {
    server.sql('postgres', 'create database newer owner teacher');
    const place = { databaseUrl: server.url('newer', 'teacher') };
    await (await must(openStore(place))).close();
    server.sql('newer', "insert into afterbell_schema values (99, 'from_the_future', 'h')");
    expect(await refusalOf(openStore(place))).toBe('schema.newer');
  });

  it('says in one sentence why it cannot be reached', async () => {
    expect(await refusalOf(openStore({ databaseUrl: 'postgres://teacher@127.0.0.1:1/none' }))).toBe(
      'database.unreachable',
    );
    expect(await refusalOf(openStore({ databaseUrl: server.url('missing', 'teacher') }))).toBe(
      'database.refused',
    );
    expect(await refusalOf(openStore({ databaseUrl: server.url('postgres', 'nobody') }))).toBe(
      'database.refused',
    );
    expect(await refusalOf(openStore({ databaseUrl: 'mysql://somewhere/else' }))).toBe('database.refused');
  });

  it('refuses marks when the server goes away, and takes them when it is back', async () => {
    server.sql('postgres', 'create database cut owner teacher');
    const store = await must(openStore({ databaseUrl: server.url('cut', 'teacher') }));
    await must(store.classes.list());
    server.sql('postgres', "select pg_terminate_backend(pid) from pg_stat_activity where datname = 'cut'");
    const first = await store.classes.create({ name: 'Wattle', years: [4] });
    if (!first.ok) expect(first.error.code).toBe('database.unreachable');
    const second = await must(store.classes.create({ name: 'Banksia', years: [4] }));
    expect((await must(store.classes.list())).map((one) => one.id)).toContain(second.id);
    await store.close();
  });
});
