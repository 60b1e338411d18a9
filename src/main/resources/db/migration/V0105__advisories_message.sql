-- What was sent, a row for each message. Rows are never changed: an update or a cancellation is another row.
create table advisories.message (
	seq bigint generated always as identity unique,
	id uuid primary key,
	advisory uuid not null,
	number int not null check (number between 1 and 50),
	type text not null check (type in ('ALERT', 'UPDATE', 'CANCEL')),
	-- As they stand in the document, letter by letter; later messages refer to them.
	identifier text not null unique check (identifier !~ '[\s,<&]'),
	sender text not null check (sender !~ '[\s,<&]'),
	sent text not null,
	sent_at timestamptz not null,
	onset timestamptz not null,
	expires timestamptz not null check (expires > sent_at),
	zone text not null,
	condition text,
	counties text[] not null check (cardinality(counties) > 0),
	-- What it says: facts, places, plants, words.
	content jsonb not null,
	-- Why it was called off or changed.
	reason text check (length(reason) <= 300),
	cap bytea not null,
	-- Who wrote and who approved it; null for the operator token, and once that person is gone.
	written_by uuid,
	approved_by uuid,
	unique (advisory, number)
);

create index message_expires on advisories.message (expires);
create index message_sent on advisories.message (sent_at);

create function advisories.keep_message() returns trigger language plpgsql as $$
begin
	if (to_jsonb(new) - 'written_by' - 'approved_by') <> (to_jsonb(old) - 'written_by' - 'approved_by') then
		raise exception 'message % was sent and is never changed', old.id;
	end if;
	return new;
end $$;

create trigger message_is_kept before update on advisories.message
	for each row execute function advisories.keep_message();

-- How many people, sites and plantings a message concerned when it was sent; counted after it.
create table advisories.reach (
	message uuid primary key references advisories.message,
	people bigint not null,
	sites bigint not null,
	plantings bigint not null,
	counted_at timestamptz not null
);

-- What is being written.
create table advisories.draft (
	id uuid primary key,
	-- The advisory that it changes or calls off; null for a new one.
	advisory uuid,
	type text not null check (type in ('ALERT', 'UPDATE', 'CANCEL')),
	proposal uuid,
	condition text,
	-- Codes of the counties that it is for, as far as they are chosen; who may see it goes by them.
	counties text[] not null,
	-- The form as it was left.
	fields jsonb not null,
	state text not null check (state in ('WRITING', 'WAITING', 'SCHEDULED', 'SENT', 'DROPPED')),
	send_at timestamptz,
	written_by uuid,
	approved_by uuid,
	version int not null default 0,
	changed_at timestamptz not null,
	-- Why it could not be sent at its time.
	trouble text,
	message uuid,
	check ((state = 'SCHEDULED') = (send_at is not null))
);

create index draft_open on advisories.draft (changed_at desc) where state in ('WRITING', 'WAITING', 'SCHEDULED');
create index draft_due on advisories.draft (send_at) where state = 'SCHEDULED';
