CREATE TABLE "timed_forms" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"class_id" text NOT NULL,
	"level_id" text NOT NULL,
	"content" text NOT NULL,
	"content_hash" text NOT NULL,
	"created_at" timestamp (3) with time zone NOT NULL,
	CONSTRAINT "timed_forms_school_id_id_pk" PRIMARY KEY("school_id","id"),
	CONSTRAINT "timed_forms_once" UNIQUE("school_id","class_id","content_hash")
);
--> statement-breakpoint
ALTER TABLE "timed_forms" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "timed_ladders" (
	"school_id" text NOT NULL,
	"class_id" text NOT NULL,
	"value" jsonb NOT NULL,
	CONSTRAINT "timed_ladders_school_id_class_id_pk" PRIMARY KEY("school_id","class_id")
);
--> statement-breakpoint
ALTER TABLE "timed_ladders" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "timed_moves" (
	"school_id" text NOT NULL,
	"child_id" text NOT NULL,
	"sequence" integer NOT NULL,
	"date" date NOT NULL,
	"level_id" text NOT NULL,
	"evidence" text NOT NULL,
	CONSTRAINT "timed_moves_school_id_child_id_sequence_pk" PRIMARY KEY("school_id","child_id","sequence")
);
--> statement-breakpoint
ALTER TABLE "timed_moves" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "timed_results" (
	"school_id" text NOT NULL,
	"sheet_id" text NOT NULL,
	"child_id" text NOT NULL,
	"sequence" integer NOT NULL,
	"outcome" jsonb NOT NULL,
	"at" timestamp (3) with time zone NOT NULL,
	"undone" boolean DEFAULT false NOT NULL,
	CONSTRAINT "timed_results_school_id_sheet_id_sequence_pk" PRIMARY KEY("school_id","sheet_id","sequence")
);
--> statement-breakpoint
ALTER TABLE "timed_results" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "timed_sheets" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"form_id" text NOT NULL,
	"child_id" text NOT NULL,
	"date" date NOT NULL,
	"redo" text NOT NULL,
	CONSTRAINT "timed_sheets_school_id_id_pk" PRIMARY KEY("school_id","id"),
	CONSTRAINT "timed_sheets_one_a_day" UNIQUE("school_id","child_id","date")
);
--> statement-breakpoint
ALTER TABLE "timed_sheets" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "timed_forms" ADD CONSTRAINT "timed_forms_school_id_class_id_classes_school_id_id_fk" FOREIGN KEY ("school_id","class_id") REFERENCES "public"."classes"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "timed_ladders" ADD CONSTRAINT "timed_ladders_school_id_class_id_classes_school_id_id_fk" FOREIGN KEY ("school_id","class_id") REFERENCES "public"."classes"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "timed_moves" ADD CONSTRAINT "timed_moves_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "timed_results" ADD CONSTRAINT "timed_results_school_id_sheet_id_timed_sheets_school_id_id_fk" FOREIGN KEY ("school_id","sheet_id") REFERENCES "public"."timed_sheets"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "timed_results" ADD CONSTRAINT "timed_results_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "timed_sheets" ADD CONSTRAINT "timed_sheets_school_id_form_id_timed_forms_school_id_id_fk" FOREIGN KEY ("school_id","form_id") REFERENCES "public"."timed_forms"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "timed_sheets" ADD CONSTRAINT "timed_sheets_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE INDEX "timed_results_by_child" ON "timed_results" USING btree ("school_id","child_id");--> statement-breakpoint
CREATE POLICY "own_school" ON "timed_forms" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "timed_ladders" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "timed_moves" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "timed_results" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "timed_sheets" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));