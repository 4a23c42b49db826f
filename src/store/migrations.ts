// Generated from migrations/*.sql by `npm run migrations`; a test compares the two.

export interface Migration {
  readonly name: string;
  /** SHA-256 of the SQL file. */
  readonly hash: string;
  readonly statements: readonly string[];
}

// biome-ignore format: generated
export const MIGRATIONS: readonly Migration[] = [
  {
    "name": "0000_first",
    "hash": "a04624316e20974c8df277f60afd97525c54c9501702ac4658d67df560b7929f",
    "statements": [
      "CREATE TABLE \"absences\" (\n\t\"school_id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"date\" date NOT NULL,\n\t\"child_id\" text NOT NULL,\n\tCONSTRAINT \"absences_school_id_class_id_date_child_id_pk\" PRIMARY KEY(\"school_id\",\"class_id\",\"date\",\"child_id\")\n);",
      "ALTER TABLE \"absences\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"children\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"position\" integer NOT NULL,\n\t\"given_name\" text NOT NULL,\n\t\"family_name\" text NOT NULL,\n\t\"alias\" text NOT NULL,\n\t\"year\" integer NOT NULL,\n\t\"joined\" date,\n\t\"left_on\" date,\n\tCONSTRAINT \"children_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\")\n);",
      "ALTER TABLE \"children\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"classes\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"name\" text NOT NULL,\n\t\"years\" jsonb NOT NULL,\n\tCONSTRAINT \"classes_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\")\n);",
      "ALTER TABLE \"classes\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"days\" (\n\t\"school_id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"date\" date NOT NULL,\n\t\"number\" text,\n\t\"activity\" text,\n\t\"note\" text NOT NULL,\n\tCONSTRAINT \"days_school_id_class_id_date_pk\" PRIMARY KEY(\"school_id\",\"class_id\",\"date\")\n);",
      "ALTER TABLE \"days\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"mark_batches\" (\n\t\"school_id\" text NOT NULL,\n\t\"sheet_id\" text NOT NULL,\n\t\"batch\" integer NOT NULL,\n\t\"action\" text NOT NULL,\n\t\"target\" integer,\n\t\"token\" text NOT NULL,\n\t\"by\" text NOT NULL,\n\t\"at\" timestamp (3) with time zone NOT NULL,\n\tCONSTRAINT \"mark_batches_school_id_sheet_id_batch_pk\" PRIMARY KEY(\"school_id\",\"sheet_id\",\"batch\")\n);",
      "ALTER TABLE \"mark_batches\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"mark_events\" (\n\t\"school_id\" text NOT NULL,\n\t\"sheet_id\" text NOT NULL,\n\t\"sequence\" integer NOT NULL,\n\t\"batch\" integer NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"rung\" integer NOT NULL,\n\t\"before_state\" text,\n\t\"before_text\" text NOT NULL,\n\t\"after_state\" text,\n\t\"after_text\" text NOT NULL,\n\tCONSTRAINT \"mark_events_school_id_sheet_id_sequence_pk\" PRIMARY KEY(\"school_id\",\"sheet_id\",\"sequence\")\n);",
      "ALTER TABLE \"mark_events\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"marks\" (\n\t\"school_id\" text NOT NULL,\n\t\"sheet_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"rung\" integer NOT NULL,\n\t\"state\" text NOT NULL,\n\t\"text\" text NOT NULL,\n\t\"by\" text NOT NULL,\n\t\"at\" timestamp (3) with time zone NOT NULL,\n\t\"sequence\" integer NOT NULL,\n\tCONSTRAINT \"marks_school_id_sheet_id_child_id_rung_pk\" PRIMARY KEY(\"school_id\",\"sheet_id\",\"child_id\",\"rung\")\n);",
      "ALTER TABLE \"marks\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"placements\" (\n\t\"school_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"level\" double precision NOT NULL,\n\t\"spread\" double precision NOT NULL,\n\t\"source\" text NOT NULL,\n\t\"at\" timestamp (3) with time zone NOT NULL,\n\t\"detail\" jsonb NOT NULL,\n\tCONSTRAINT \"placements_school_id_child_id_pk\" PRIMARY KEY(\"school_id\",\"child_id\")\n);",
      "ALTER TABLE \"placements\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"schools\" (\n\t\"school_id\" text PRIMARY KEY NOT NULL,\n\t\"openings\" integer DEFAULT 0 NOT NULL\n);",
      "ALTER TABLE \"schools\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"settings\" (\n\t\"school_id\" text PRIMARY KEY NOT NULL,\n\t\"version\" integer NOT NULL,\n\t\"value\" jsonb NOT NULL\n);",
      "ALTER TABLE \"settings\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"sheets\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"date\" date,\n\t\"kind\" text NOT NULL,\n\t\"seed\" double precision NOT NULL,\n\t\"number\" text NOT NULL,\n\t\"side\" text NOT NULL,\n\t\"rungs\" integer NOT NULL,\n\t\"content\" text NOT NULL,\n\t\"content_hash\" text NOT NULL,\n\t\"created_at\" timestamp (3) with time zone NOT NULL,\n\t\"superseded_by\" text,\n\tCONSTRAINT \"sheets_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\")\n);",
      "ALTER TABLE \"sheets\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"slips\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"sheet_id\" text NOT NULL,\n\t\"child_id\" text,\n\t\"position\" integer NOT NULL,\n\tCONSTRAINT \"slips_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\"),\n\tCONSTRAINT \"slips_one_each\" UNIQUE(\"school_id\",\"sheet_id\",\"child_id\")\n);",
      "ALTER TABLE \"slips\" ENABLE ROW LEVEL SECURITY;",
      "ALTER TABLE \"absences\" ADD CONSTRAINT \"absences_school_id_class_id_date_days_school_id_class_id_date_fk\" FOREIGN KEY (\"school_id\",\"class_id\",\"date\") REFERENCES \"public\".\"days\"(\"school_id\",\"class_id\",\"date\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"absences\" ADD CONSTRAINT \"absences_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"children\" ADD CONSTRAINT \"children_school_id_class_id_classes_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"class_id\") REFERENCES \"public\".\"classes\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"classes\" ADD CONSTRAINT \"classes_school_id_schools_school_id_fk\" FOREIGN KEY (\"school_id\") REFERENCES \"public\".\"schools\"(\"school_id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"days\" ADD CONSTRAINT \"days_school_id_class_id_classes_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"class_id\") REFERENCES \"public\".\"classes\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"mark_batches\" ADD CONSTRAINT \"mark_batches_school_id_sheet_id_sheets_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"sheet_id\") REFERENCES \"public\".\"sheets\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"mark_events\" ADD CONSTRAINT \"mark_events_school_id_sheet_id_batch_mark_batches_school_id_sheet_id_batch_fk\" FOREIGN KEY (\"school_id\",\"sheet_id\",\"batch\") REFERENCES \"public\".\"mark_batches\"(\"school_id\",\"sheet_id\",\"batch\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"mark_events\" ADD CONSTRAINT \"mark_events_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"marks\" ADD CONSTRAINT \"marks_school_id_sheet_id_sheets_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"sheet_id\") REFERENCES \"public\".\"sheets\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"marks\" ADD CONSTRAINT \"marks_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"placements\" ADD CONSTRAINT \"placements_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"settings\" ADD CONSTRAINT \"settings_school_id_schools_school_id_fk\" FOREIGN KEY (\"school_id\") REFERENCES \"public\".\"schools\"(\"school_id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"sheets\" ADD CONSTRAINT \"sheets_school_id_class_id_classes_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"class_id\") REFERENCES \"public\".\"classes\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"slips\" ADD CONSTRAINT \"slips_school_id_sheet_id_sheets_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"sheet_id\") REFERENCES \"public\".\"sheets\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"slips\" ADD CONSTRAINT \"slips_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "CREATE INDEX \"absences_by_child\" ON \"absences\" USING btree (\"school_id\",\"child_id\");",
      "CREATE INDEX \"children_by_class\" ON \"children\" USING btree (\"school_id\",\"class_id\",\"position\");",
      "CREATE INDEX \"mark_events_by_child\" ON \"mark_events\" USING btree (\"school_id\",\"child_id\");",
      "CREATE INDEX \"marks_by_child\" ON \"marks\" USING btree (\"school_id\",\"child_id\");",
      "CREATE INDEX \"sheets_by_class\" ON \"sheets\" USING btree (\"school_id\",\"class_id\",\"date\");",
      "CREATE POLICY \"own_school\" ON \"absences\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"children\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"classes\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"days\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"mark_batches\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"mark_events\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"marks\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"placements\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"schools\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"settings\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"sheets\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"slips\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));"
    ]
  },
  {
    "name": "0001_guards",
    "hash": "ec37915e887181812c6a3b320585f92d4b8ce174bc90a0b9b666dba69cba2147",
    "statements": [
      "-- The owner of a table is bound by its policy too, so that a server may run as the owner.\nALTER TABLE \"schools\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"settings\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"classes\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"children\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"sheets\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"slips\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"marks\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"mark_batches\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"mark_events\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"placements\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"days\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"absences\" FORCE ROW LEVEL SECURITY;",
      "-- A saved sheet never changes: paper with its slip ids may already hang in a classroom. Only superseding is recorded.\nCREATE FUNCTION keep_sheet() RETURNS trigger LANGUAGE plpgsql AS $$\nBEGIN\n\tIF (to_jsonb(NEW) - 'superseded_by') IS DISTINCT FROM (to_jsonb(OLD) - 'superseded_by') THEN\n\t\tRAISE EXCEPTION 'a saved sheet cannot be changed';\n\tEND IF;\n\tRETURN NEW;\nEND\n$$;",
      "CREATE TRIGGER keep_sheet BEFORE UPDATE ON \"sheets\" FOR EACH ROW EXECUTE FUNCTION keep_sheet();"
    ]
  },
  {
    "name": "0002_sets",
    "hash": "a42351811b43827493d6b4c899eab0f509e65e2d35068c4cecac99cc43903950",
    "statements": [
      "CREATE TABLE \"child_bands\" (\n\t\"school_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"band\" text NOT NULL,\n\tCONSTRAINT \"child_bands_school_id_child_id_pk\" PRIMARY KEY(\"school_id\",\"child_id\")\n);",
      "ALTER TABLE \"child_bands\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"loans\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"set_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"kind\" text NOT NULL,\n\t\"from_date\" date NOT NULL,\n\t\"to_date\" date,\n\t\"finished\" boolean NOT NULL,\n\t\"opened_turn\" integer NOT NULL,\n\t\"closed_turn\" integer,\n\tCONSTRAINT \"loans_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\")\n);",
      "ALTER TABLE \"loans\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"set_steps\" (\n\t\"school_id\" text NOT NULL,\n\t\"set_id\" text NOT NULL,\n\t\"step\" text NOT NULL,\n\t\"date\" date NOT NULL,\n\tCONSTRAINT \"set_steps_school_id_set_id_step_pk\" PRIMARY KEY(\"school_id\",\"set_id\",\"step\")\n);",
      "ALTER TABLE \"set_steps\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"sets\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"kind\" text NOT NULL,\n\t\"band\" text NOT NULL,\n\t\"number\" integer NOT NULL,\n\t\"seed\" double precision NOT NULL,\n\t\"content\" text NOT NULL,\n\t\"content_hash\" text NOT NULL,\n\t\"created_at\" timestamp (3) with time zone NOT NULL,\n\t\"note\" text NOT NULL,\n\tCONSTRAINT \"sets_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\"),\n\tCONSTRAINT \"sets_one_number\" UNIQUE(\"school_id\",\"class_id\",\"kind\",\"band\",\"number\")\n);",
      "ALTER TABLE \"sets\" ENABLE ROW LEVEL SECURITY;",
      "ALTER TABLE \"child_bands\" ADD CONSTRAINT \"child_bands_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"loans\" ADD CONSTRAINT \"loans_school_id_set_id_sets_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"set_id\") REFERENCES \"public\".\"sets\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"loans\" ADD CONSTRAINT \"loans_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"set_steps\" ADD CONSTRAINT \"set_steps_school_id_set_id_sets_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"set_id\") REFERENCES \"public\".\"sets\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"sets\" ADD CONSTRAINT \"sets_school_id_class_id_classes_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"class_id\") REFERENCES \"public\".\"classes\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "CREATE UNIQUE INDEX \"loans_one_holder\" ON \"loans\" USING btree (\"school_id\",\"set_id\") WHERE to_date is null;",
      "CREATE UNIQUE INDEX \"loans_one_set\" ON \"loans\" USING btree (\"school_id\",\"child_id\",\"kind\") WHERE to_date is null;",
      "CREATE INDEX \"loans_by_child\" ON \"loans\" USING btree (\"school_id\",\"child_id\");",
      "CREATE POLICY \"own_school\" ON \"child_bands\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"loans\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"set_steps\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"sets\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));"
    ]
  },
  {
    "name": "0003_set_guards",
    "hash": "2c8a1d64f004e0f210dd7baccfbe53cf8dff3d183e1475464e3e502221de7075",
    "statements": [
      "-- The owner of a table is bound by its policy too, so that a server may run as the owner.\nALTER TABLE \"sets\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"set_steps\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"loans\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"child_bands\" FORCE ROW LEVEL SECURITY;",
      "-- A saved set never changes: its pieces may already be printed and cut. Only the note about it may.\nCREATE FUNCTION keep_set() RETURNS trigger LANGUAGE plpgsql AS $$\nBEGIN\n\tIF (to_jsonb(NEW) - 'note') IS DISTINCT FROM (to_jsonb(OLD) - 'note') THEN\n\t\tRAISE EXCEPTION 'a saved set cannot be changed';\n\tEND IF;\n\tRETURN NEW;\nEND\n$$;",
      "CREATE TRIGGER keep_set BEFORE UPDATE ON \"sets\" FOR EACH ROW EXECUTE FUNCTION keep_set();"
    ]
  },
  {
    "name": "0004_timed",
    "hash": "8a6bec6345e38ff936c067b05bd40e9b41cd3fc2b175b7b8e74205fad0283bee",
    "statements": [
      "CREATE TABLE \"timed_forms\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"level_id\" text NOT NULL,\n\t\"content\" text NOT NULL,\n\t\"content_hash\" text NOT NULL,\n\t\"created_at\" timestamp (3) with time zone NOT NULL,\n\tCONSTRAINT \"timed_forms_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\"),\n\tCONSTRAINT \"timed_forms_once\" UNIQUE(\"school_id\",\"class_id\",\"content_hash\")\n);",
      "ALTER TABLE \"timed_forms\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"timed_ladders\" (\n\t\"school_id\" text NOT NULL,\n\t\"class_id\" text NOT NULL,\n\t\"value\" jsonb NOT NULL,\n\tCONSTRAINT \"timed_ladders_school_id_class_id_pk\" PRIMARY KEY(\"school_id\",\"class_id\")\n);",
      "ALTER TABLE \"timed_ladders\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"timed_moves\" (\n\t\"school_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"sequence\" integer NOT NULL,\n\t\"date\" date NOT NULL,\n\t\"level_id\" text NOT NULL,\n\t\"evidence\" text NOT NULL,\n\tCONSTRAINT \"timed_moves_school_id_child_id_sequence_pk\" PRIMARY KEY(\"school_id\",\"child_id\",\"sequence\")\n);",
      "ALTER TABLE \"timed_moves\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"timed_results\" (\n\t\"school_id\" text NOT NULL,\n\t\"sheet_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"sequence\" integer NOT NULL,\n\t\"outcome\" jsonb NOT NULL,\n\t\"at\" timestamp (3) with time zone NOT NULL,\n\t\"undone\" boolean DEFAULT false NOT NULL,\n\tCONSTRAINT \"timed_results_school_id_sheet_id_sequence_pk\" PRIMARY KEY(\"school_id\",\"sheet_id\",\"sequence\")\n);",
      "ALTER TABLE \"timed_results\" ENABLE ROW LEVEL SECURITY;",
      "CREATE TABLE \"timed_sheets\" (\n\t\"school_id\" text NOT NULL,\n\t\"id\" text NOT NULL,\n\t\"form_id\" text NOT NULL,\n\t\"child_id\" text NOT NULL,\n\t\"date\" date NOT NULL,\n\t\"redo\" text NOT NULL,\n\tCONSTRAINT \"timed_sheets_school_id_id_pk\" PRIMARY KEY(\"school_id\",\"id\"),\n\tCONSTRAINT \"timed_sheets_one_a_day\" UNIQUE(\"school_id\",\"child_id\",\"date\")\n);",
      "ALTER TABLE \"timed_sheets\" ENABLE ROW LEVEL SECURITY;",
      "ALTER TABLE \"timed_forms\" ADD CONSTRAINT \"timed_forms_school_id_class_id_classes_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"class_id\") REFERENCES \"public\".\"classes\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"timed_ladders\" ADD CONSTRAINT \"timed_ladders_school_id_class_id_classes_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"class_id\") REFERENCES \"public\".\"classes\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"timed_moves\" ADD CONSTRAINT \"timed_moves_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"timed_results\" ADD CONSTRAINT \"timed_results_school_id_sheet_id_timed_sheets_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"sheet_id\") REFERENCES \"public\".\"timed_sheets\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"timed_results\" ADD CONSTRAINT \"timed_results_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"timed_sheets\" ADD CONSTRAINT \"timed_sheets_school_id_form_id_timed_forms_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"form_id\") REFERENCES \"public\".\"timed_forms\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "ALTER TABLE \"timed_sheets\" ADD CONSTRAINT \"timed_sheets_school_id_child_id_children_school_id_id_fk\" FOREIGN KEY (\"school_id\",\"child_id\") REFERENCES \"public\".\"children\"(\"school_id\",\"id\") ON DELETE no action ON UPDATE no action;",
      "CREATE INDEX \"timed_results_by_child\" ON \"timed_results\" USING btree (\"school_id\",\"child_id\");",
      "CREATE POLICY \"own_school\" ON \"timed_forms\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"timed_ladders\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"timed_moves\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"timed_results\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));",
      "CREATE POLICY \"own_school\" ON \"timed_sheets\" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));"
    ]
  },
  {
    "name": "0005_timed_guards",
    "hash": "48222779d5e8e251a69df136ccf10d0f73313c3af16a3de40de35e5f937c20fc",
    "statements": [
      "-- The owner of a table is bound by its policy too, so that a server may run as the owner.\nALTER TABLE \"timed_ladders\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"timed_forms\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"timed_sheets\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"timed_results\" FORCE ROW LEVEL SECURITY;",
      "ALTER TABLE \"timed_moves\" FORCE ROW LEVEL SECURITY;",
      "-- A form that was printed never changes: children's counts refer to it.\nCREATE FUNCTION keep_timed_form() RETURNS trigger LANGUAGE plpgsql AS $$\nBEGIN\n\tRAISE EXCEPTION 'a saved form cannot be changed';\nEND\n$$;",
      "CREATE TRIGGER keep_timed_form BEFORE UPDATE ON \"timed_forms\" FOR EACH ROW EXECUTE FUNCTION keep_timed_form();"
    ]
  }
];
