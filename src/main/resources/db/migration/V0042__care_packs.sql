-- Every version of every rule pack: those that came as files and those that were published in the workshop.
-- The highest id is looked at to notice that something was published; it only rises, since publishing takes turns.
create table care.pack_version (
	id bigint generated always as identity primary key,
	pack text not null check (pack ~ '^[a-z0-9]+(-[a-z0-9]+)*$'),
	version int not null check (version >= 1),
	origin text not null check (origin in ('FILE', 'WORKSHOP')),
	content text not null check (length(content) <= 262144),
	note text not null check (length(note) between 1 and 500),
	-- rules that were added, changed or taken out in this version
	changed text[] not null,
	by_name text not null,
	by_person uuid,
	at timestamptz not null,
	unique (pack, version)
);
