create table accounts.token (
	id uuid primary key,
	person uuid not null references accounts.person on delete cascade,
	name text not null check (length(name) between 1 and 100),
	-- SHA-256 of the token; the token itself is kept nowhere.
	hash bytea not null unique check (octet_length(hash) = 32),
	-- Names between spaces, as in RFC 6749, section 3.3.
	scopes text not null check (scopes ~ '^[a-z]+( [a-z]+)*$'),
	created_at timestamptz not null,
	expires_at timestamptz not null,
	-- To the hour only, so that reading doesn't write.
	last_used_at timestamptz,
	revoked_at timestamptz,
	check (expires_at > created_at)
);

create index token_person on accounts.token (person, created_at desc);
create index token_newest on accounts.token (created_at desc, id);
