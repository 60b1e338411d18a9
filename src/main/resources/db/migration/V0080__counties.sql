create schema counties;

-- The model garden of a county. Its version rises with every change of its tasks, in the transaction that changes them.
create table counties.garden (
	county text primary key,
	site uuid not null unique,
	version bigint not null,
	tended_on date not null,
	made_at timestamptz not null
);

-- Calendars of kinds of plants: one kind each, and what was asked for.
create table counties.calendar (
	path text primary key,
	county text not null references counties.garden,
	kinds text not null,
	speech text not null,
	-- One kind in the usual speech; it is always kept.
	usual boolean not null,
	packed bytea not null,
	etag text not null,
	last_modified timestamptz not null,
	ahead_by int not null,
	-- What it was built from: version of the garden, day (UTC), and the texts of the program.
	version bigint not null,
	day date not null,
	-- The first entries to come, as the page shows them.
	coming_from date[] not null,
	coming_to date[] not null,
	coming_words text[] not null,
	asked_at timestamptz not null,
	retry_at timestamptz
);

create index calendar_county on counties.calendar (county, asked_at);
