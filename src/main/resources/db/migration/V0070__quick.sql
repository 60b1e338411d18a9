create schema quick;

-- Calendars that somebody took without an account.
create table quick.calendar (
	id uuid primary key,
	person uuid not null,
	site uuid not null,
	feed uuid not null,
	-- SHA-256 of the secret in the address of its page; the secret itself is kept nowhere.
	manage_hash bytea not null unique check (octet_length(manage_hash) = 32),
	-- Key of the form that asked for it, so that a form that is sent twice makes one calendar.
	form_key uuid unique,
	created_at timestamptz not null
);

create index calendar_person on quick.calendar (person);
create index calendar_feed on quick.calendar (feed);
