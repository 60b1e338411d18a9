create schema if not exists lookalikes;
-- One plant that looks wrong: what was answered, what came of it.
create table lookalikes.plant_case (
	id uuid primary key,
	person uuid not null,
	-- null for a plant that is in no register
	site uuid,
	planting uuid,
	species text,
	plant text not null check (length(plant) between 1 and 200),
	county text not null,
	zone text not null,
	seen date not null,
	state text not null check (state in ('OPEN', 'WAITING', 'CLOSED')),
	-- json, not jsonb: the order of the questions stays
	answers json not null,
	struck text[] not null default '{}',
	-- the likeliest cause by the answers as they are, for lists
	likeliest text,
	-- what is taken for the cause; null until somebody says so, and when it is none of the key
	cause text,
	basis text check (basis in ('ANSWERS', 'HELP_DESK', 'LABORATORY')),
	result text check (length(result) <= 2000),
	sampled_on date,
	help_wanted_at timestamptz,
	assigned uuid,
	follows uuid,
	opened_at timestamptz not null,
	changed_at timestamptz not null,
	closed_on date
);
create index plant_case_person on lookalikes.plant_case (person, opened_at desc);
create index plant_case_desk on lookalikes.plant_case (lower(county), help_wanted_at desc) where help_wanted_at is not null;
create index plant_case_assigned on lookalikes.plant_case (assigned) where assigned is not null;
create index plant_case_planting on lookalikes.plant_case (planting) where planting is not null;
-- What was written to each other.
create table lookalikes.note (
	id uuid primary key,
	plant_case uuid not null references lookalikes.plant_case on delete cascade,
	person uuid,
	from_desk boolean not null,
	words text not null check (length(words) between 1 and 2000),
	at timestamptz not null
);
create index note_case on lookalikes.note (plant_case, at);
-- Photos as we drew them anew; no byte of what was sent is kept.
create table lookalikes.photo (
	id uuid primary key,
	plant_case uuid not null references lookalikes.plant_case on delete cascade,
	content bytea not null check (octet_length(content) <= 4194304),
	width int not null,
	height int not null,
	words text not null check (length(words) <= 200),
	at timestamptz not null
);
create index photo_case on lookalikes.photo (plant_case, at);
