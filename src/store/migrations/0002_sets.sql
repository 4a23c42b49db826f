CREATE TABLE "child_bands" (
	"school_id" text NOT NULL,
	"child_id" text NOT NULL,
	"band" text NOT NULL,
	CONSTRAINT "child_bands_school_id_child_id_pk" PRIMARY KEY("school_id","child_id")
);
--> statement-breakpoint
ALTER TABLE "child_bands" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "loans" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"set_id" text NOT NULL,
	"child_id" text NOT NULL,
	"kind" text NOT NULL,
	"from_date" date NOT NULL,
	"to_date" date,
	"finished" boolean NOT NULL,
	"opened_turn" integer NOT NULL,
	"closed_turn" integer,
	CONSTRAINT "loans_school_id_id_pk" PRIMARY KEY("school_id","id")
);
--> statement-breakpoint
ALTER TABLE "loans" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "set_steps" (
	"school_id" text NOT NULL,
	"set_id" text NOT NULL,
	"step" text NOT NULL,
	"date" date NOT NULL,
	CONSTRAINT "set_steps_school_id_set_id_step_pk" PRIMARY KEY("school_id","set_id","step")
);
--> statement-breakpoint
ALTER TABLE "set_steps" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
CREATE TABLE "sets" (
	"school_id" text NOT NULL,
	"id" text NOT NULL,
	"class_id" text NOT NULL,
	"kind" text NOT NULL,
	"band" text NOT NULL,
	"number" integer NOT NULL,
	"seed" double precision NOT NULL,
	"content" text NOT NULL,
	"content_hash" text NOT NULL,
	"created_at" timestamp (3) with time zone NOT NULL,
	"note" text NOT NULL,
	CONSTRAINT "sets_school_id_id_pk" PRIMARY KEY("school_id","id"),
	CONSTRAINT "sets_one_number" UNIQUE("school_id","class_id","kind","band","number")
);
--> statement-breakpoint
ALTER TABLE "sets" ENABLE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "child_bands" ADD CONSTRAINT "child_bands_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "loans" ADD CONSTRAINT "loans_school_id_set_id_sets_school_id_id_fk" FOREIGN KEY ("school_id","set_id") REFERENCES "public"."sets"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "loans" ADD CONSTRAINT "loans_school_id_child_id_children_school_id_id_fk" FOREIGN KEY ("school_id","child_id") REFERENCES "public"."children"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "set_steps" ADD CONSTRAINT "set_steps_school_id_set_id_sets_school_id_id_fk" FOREIGN KEY ("school_id","set_id") REFERENCES "public"."sets"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "sets" ADD CONSTRAINT "sets_school_id_class_id_classes_school_id_id_fk" FOREIGN KEY ("school_id","class_id") REFERENCES "public"."classes"("school_id","id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE UNIQUE INDEX "loans_one_holder" ON "loans" USING btree ("school_id","set_id") WHERE to_date is null;--> statement-breakpoint
CREATE UNIQUE INDEX "loans_one_set" ON "loans" USING btree ("school_id","child_id","kind") WHERE to_date is null;--> statement-breakpoint
CREATE INDEX "loans_by_child" ON "loans" USING btree ("school_id","child_id");--> statement-breakpoint
CREATE POLICY "own_school" ON "child_bands" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "loans" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "set_steps" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));--> statement-breakpoint
CREATE POLICY "own_school" ON "sets" AS PERMISSIVE FOR ALL TO public USING (school_id = current_setting('afterbell.school', true)) WITH CHECK (school_id = current_setting('afterbell.school', true));