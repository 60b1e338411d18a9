-- Lists of plantings that were added at once, by the key of their form: one that is sent twice is added once.
create table register.added_list (
	site uuid not null references register.site on delete cascade,
	form_key uuid not null,
	-- SHA-256 of the plantings, to tell a list that is sent again from another one.
	digest bytea not null check (octet_length(digest) = 32),
	added_at timestamptz not null,
	primary key (site, form_key)
);
