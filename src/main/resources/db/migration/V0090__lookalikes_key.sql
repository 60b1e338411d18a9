create schema if not exists lookalikes;

-- What specialists published of the look-alike key, beside the files that come with the server: the newest content of each file counts.
create table lookalikes.key_version (
	id bigint generated always as identity primary key,
	file text not null check (file ~ '^[a-z0-9]+(-[a-z0-9]+)*\.yaml$'),
	version int not null check (version >= 1),
	content text not null check (length(content) <= 262144),
	note text not null check (length(note) between 1 and 500),
	-- whose name is looked up; null once they are gone
	by_person uuid,
	at timestamptz not null,
	unique (file, version)
);
