-- The owner of a table is bound by its policy too, so that a server may run as the owner.
ALTER TABLE "schools" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "settings" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "classes" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "children" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "sheets" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "slips" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "marks" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "mark_batches" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "mark_events" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "placements" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "days" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "absences" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
-- A saved sheet never changes: paper with its slip ids may already hang in a classroom. Only superseding is recorded.
CREATE FUNCTION keep_sheet() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
	IF (to_jsonb(NEW) - 'superseded_by') IS DISTINCT FROM (to_jsonb(OLD) - 'superseded_by') THEN
		RAISE EXCEPTION 'a saved sheet cannot be changed';
	END IF;
	RETURN NEW;
END
$$;--> statement-breakpoint
CREATE TRIGGER keep_sheet BEFORE UPDATE ON "sheets" FOR EACH ROW EXECUTE FUNCTION keep_sheet();
