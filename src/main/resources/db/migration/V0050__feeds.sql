create schema feeds;

create table feeds.feed (
	id uuid primary key,
	kind text not null check (kind in ('PERSON', 'SITE')),
	what uuid not null,
	owner uuid not null,
	-- SHA-256 of the secret in the address; the secret itself is kept nowhere.
	token_hash bytea not null unique check (octet_length(token_hash) = 32),
	created_at timestamptz not null,
	revoked_at timestamptz,
	last_fetched_at timestamptz
);

create index feed_owner on feeds.feed (owner, created_at desc, id);
create index feed_what on feeds.feed (what, kind, created_at desc, id);

create table feeds.feed_document (
	feed_id uuid primary key references feeds.feed on delete cascade,
	octets bytea not null,
	packed bytea not null,
	etag text not null,
	last_modified timestamptz not null,
	stale boolean not null,
	built_for date not null,
	built_at timestamptz not null,
	retry_at timestamptz
);

create index feed_document_stale on feeds.feed_document (built_at) where stale;
create index feed_document_day on feeds.feed_document (built_for);

-- Already packed, and read whole.
alter table feeds.feed_document alter column packed set storage external;
