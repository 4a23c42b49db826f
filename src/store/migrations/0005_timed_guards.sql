-- The owner of a table is bound by its policy too, so that a server may run as the owner.
ALTER TABLE "timed_ladders" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "timed_forms" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "timed_sheets" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "timed_results" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "timed_moves" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
-- A form that was printed never changes: children's counts refer to it.
CREATE FUNCTION keep_timed_form() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
	RAISE EXCEPTION 'a saved form cannot be changed';
END
$$;--> statement-breakpoint
CREATE TRIGGER keep_timed_form BEFORE UPDATE ON "timed_forms" FOR EACH ROW EXECUTE FUNCTION keep_timed_form();
