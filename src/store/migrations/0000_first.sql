CREATE TABLE "absences" (
	"school_id" text NOT NULL,
	"class_id" text NOT NULL,
	"date" date NOT NULL,
	"child_id" text NOT NULL,
	CONSTRAINT "absences_school_id_class_id_date_child_id_pk" PRIMARY KEY("school_id","class_id","date","child_id")
);
--> statement-breakpoint
ALTER TABLE "absences" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "children" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"class_id" text NOT NULL,
	"position" integer NOT NULL,
	"given_name" text NOT NULL,
	"family_name" text NOT NULL,
	"alias" text NOT NULL,
	"year" integer NOT NULL,
	"joined" date,
	"left_on" date,
	CONSTRAINT "children_school_id_id_pk" PRIMARY KEY("school_id","id")
);
--> statement-breakpoint
ALTER TABLE "children" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "classes" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"name" text NOT NULL,
	"years" jsonb NOT NULL,
	CONSTRAINT "classes_school_id_id_pk" PRIMARY KEY("school_id","id")
);
--> statement-breakpoint
ALTER TABLE "classes" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "days" (
	"school_id" text NOT NULL,
	"class_id" text NOT NULL,
	"date" date NOT NULL,
	"number" text,
	"activity" text,
	"note" text NOT NULL,
	CONSTRAINT "days_school_id_class_id_date_pk" PRIMARY KEY("school_id","class_id","date")
);
--> statement-breakpoint
ALTER TABLE "days" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "mark_batches" (
	"school_id" text NOT NULL,
	"sheet_id" text NOT NULL,
	"batch" integer NOT NULL,
	"action" text NOT NULL,
	"target" integer,
	"token" text NOT NULL,
	"by" text NOT NULL,
	"at" timestamp (3) with time zone NOT NULL,
	CONSTRAINT "mark_batches_school_id_sheet_id_batch_pk" PRIMARY KEY("school_id","sheet_id","batch")
);
--> statement-breakpoint
ALTER TABLE "mark_batches" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "mark_events" (
	"school_id" text NOT NULL,
	"sheet_id" text NOT NULL,
	"sequence" integer NOT NULL,
	"batch" integer NOT NULL,
	"child_id" text NOT NULL,
	"rung" integer NOT NULL,
	"before_state" text,
	"before_text" text NOT NULL,
	"after_state" text,
	"after_text" text NOT NULL,
	CONSTRAINT "mark_events_school_id_sheet_id_sequence_pk" PRIMARY KEY("school_id","sheet_id","sequence")
);
--> statement-breakpoint
ALTER TABLE "mark_events" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "marks" (
	"school_id" text NOT NULL,
	"sheet_id" text NOT NULL,
	"child_id" text NOT NULL,
	"rung" integer NOT NULL,
	"state" text NOT NULL,
	"text" text NOT NULL,
	"by" text NOT NULL,
	"at" timestamp (3) with time zone NOT NULL,
	"sequence" integer NOT NULL,
	CONSTRAINT "marks_school_id_sheet_id_child_id_rung_pk" PRIMARY KEY("school_id","sheet_id","child_id","rung")
);
--> statement-breakpoint
ALTER TABLE "marks" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "placements" (
	"school_id" text NOT NULL,
	"child_id" text NOT NULL,
	"level" double precision NOT NULL,
	"spread" double precision NOT NULL,
	"source" text NOT NULL,
	"at" timestamp (3) with time zone NOT NULL,
	"detail" jsonb NOT NULL,
	CONSTRAINT "placements_school_id_child_id_pk" PRIMARY KEY("school_id","child_id")
);
--> statement-breakpoint
ALTER TABLE "placements" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "schools" (
	"school_id" text PRIMARY KEY NOT NULL,
	"openings" integer DEFAULT 0 NOT NULL
);
--> statement-breakpoint
ALTER TABLE "schools" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "settings" (
	"school_id" text PRIMARY KEY NOT NULL,
	"version" integer NOT NULL,
	"value" jsonb NOT NULL
);
--> statement-breakpoint
ALTER TABLE "settings" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "sheets" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"class_id" text NOT NULL,
	"date" date,
	"kind" text NOT NULL,
	"seed" double precision NOT NULL,
	"number" text NOT NULL,
	"side" text NOT NULL,
	"rungs" integer NOT NULL,
	"content" text NOT NULL,
	"content_hash" text NOT NULL,
	"created_at" timestamp (3) with time zone NOT NULL,
	"superseded_by" text,
	CONSTRAINT "sheets_school_id_id_pk" PRIMARY KEY("school_id","id")
);
--> statement-breakpoint
ALTER TABLE "sheets" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "slips" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"sheet_id" text NOT NULL,
	"child_id" text,
	"position" integer NOT NULL,
	CONSTRAINT "slips_school_id_id_pk" PRIMARY KEY("school_id","id"),
	CONSTRAINT "slips_one_each" UNIQUE("school_id","sheet_id","child_id")
);
--> statement-breakpoint
ALTER TABLE "slips" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "absences" ADD CONSTRAINT "absences_school_id_class_id_date_days_school_id_class_id_date_fk" FOREIGN KEY ("school_id","class_id","date") REFERENCES "public"."days"("school_id","class_id","date") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "absences" ADD CONSTRAINT "absences_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "children" ADD CONSTRAINT "children_school_id_class_id_classes_school_id_id_fk" FOREIGN KEY ("school_id","class_id") REFERENCES "public"."classes"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "classes" ADD CONSTRAINT "classes_school_id_schools_school_id_fk" FOREIGN KEY ("school_id") REFERENCES "public"."schools"("school_id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "days" ADD CONSTRAINT "days_school_id_class_id_classes_school_id_id_fk" FOREIGN KEY ("school_id","class_id") REFERENCES "public"."classes"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mark_batches" ADD CONSTRAINT "mark_batches_school_id_sheet_id_sheets_school_id_id_fk" FOREIGN KEY ("school_id","sheet_id") REFERENCES "public"."sheets"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mark_events" ADD CONSTRAINT "mark_events_school_id_sheet_id_batch_mark_batches_school_id_sheet_id_batch_fk" FOREIGN KEY ("school_id","sheet_id","batch") REFERENCES "public"."mark_batches"("school_id","sheet_id","batch") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mark_events" ADD CONSTRAINT "mark_events_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "marks" ADD CONSTRAINT "marks_school_id_sheet_id_sheets_school_id_id_fk" FOREIGN KEY ("school_id","sheet_id") REFERENCES "public"."sheets"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "marks" ADD CONSTRAINT "marks_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "placements" ADD CONSTRAINT "placements_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "settings" ADD CONSTRAINT "settings_school_id_schools_school_id_fk" FOREIGN KEY ("school_id") REFERENCES "public"."schools"("school_id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "sheets" ADD CONSTRAINT "sheets_school_id_class_id_classes_school_id_id_fk" FOREIGN KEY ("school_id","class_id") REFERENCES "public"."classes"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "slips" ADD CONSTRAINT "slips_school_id_sheet_id_sheets_school_id_id_fk" FOREIGN KEY ("school_id","sheet_id") REFERENCES "public"."sheets"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "slips" ADD CONSTRAINT "slips_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE INDEX "absences_by_child" ON "absences" USING btree ("school_id","child_id");--> statement-breakpoint
CREATE INDEX "children_by_class" ON "children" USING btree ("school_id","class_id","position");--> statement-breakpoint
CREATE INDEX "mark_events_by_child" ON "mark_events" USING btree ("school_id","child_id");--> statement-breakpoint
CREATE INDEX "marks_by_child" ON "marks" USING btree ("school_id","child_id");--> statement-breakpoint
CREATE INDEX "sheets_by_class" ON "sheets" USING btree ("school_id","class_id","date");--> statement-breakpoint
CREATE POLICY "own_school" ON "absences" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "children" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "classes" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "days" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "mark_batches" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "mark_events" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "marks" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "placements" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "schools" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "settings" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "sheets" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "slips" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));