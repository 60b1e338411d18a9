create schema advisories;

-- What the watch found. What is told of it is kept as it was then: condition, counts and texts as JSON.
create table advisories.proposal (
	id uuid primary key,
	condition text not null check (length(condition) <= 60),
	content jsonb not null,
	made_at timestamptz not null
);

create index proposal_made on advisories.proposal (made_at desc, id);

create table advisories.proposal_county (
	proposal uuid not null references advisories.proposal on delete cascade,
	county text not null,
	name text not null,
	region text not null,
	zone text not null,
	from_day date not null,
	to_day date not null check (to_day >= from_day),
	figures jsonb not null,
	reasons text[] not null,
	standing text not null default 'OPEN' check (standing in ('OPEN', 'DISMISSED', 'COMPOSED')),
	decided_by text,
	decided_person uuid,
	decided_at timestamptz,
	why text check (length(why) <= 300),
	advisory uuid,
	primary key (proposal, county),
	check ((standing = 'OPEN') = (decided_at is null)),
	check ((standing = 'COMPOSED') = (advisory is not null))
);

create index proposal_county_name on advisories.proposal_county (lower(name), standing);

-- From when on a condition may be proposed again for a county. The key keeps two nodes from proposing the same.
create table advisories.cool_down (
	condition text not null check (length(condition) <= 160),
	county text not null,
	proposal uuid not null,
	again_from date not null,
	primary key (condition, county)
);

-- Thresholds that specialists moved, each change a row; the latest counts, and null is the usual value again.
create table advisories.threshold_change (
	id bigint generated always as identity primary key,
	condition text not null,
	threshold text not null,
	-- Code of a county, or of a region such as US-MI.
	scope text not null check (length(scope) <= 120),
	value double precision,
	note text not null check (length(note) <= 300),
	changed_by text not null,
	changed_person uuid,
	changed_at timestamptz not null
);

create index threshold_change_of on advisories.threshold_change (condition, threshold, scope, id desc);
