-- The owner of a table is bound by its policy too, so that a server may run as the owner.
ALTER TABLE "sets" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "set_steps" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "loans" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
ALTER TABLE "child_bands" FORCE ROW LEVEL SECURITY;--> statement-breakpoint
-- A saved set never changes: its pieces may already be printed and cut. Only the note about it may.
CREATE FUNCTION keep_set() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
	IF (to_jsonb(NEW) - 'note') IS DISTINCT FROM (to_jsonb(OLD) - 'note') THEN
		RAISE EXCEPTION 'a saved set cannot be changed';
	END IF;
	RETURN NEW;
END
$$;--> statement-breakpoint
CREATE TRIGGER keep_set BEFORE UPDATE ON "sets" FOR EACH ROW EXECUTE FUNCTION keep_set();
