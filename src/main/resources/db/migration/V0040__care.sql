create schema care;

-- How dates came about; many tasks share one. The id is made from the content.
create table care.explanation (
	id uuid primary key,
	content jsonb not null
);

create table care.task (
	id uuid primary key,
	planting uuid not null,
	plant text not null,
	site uuid not null,
	site_name text not null,
	person uuid not null,
	rule text not null,
	season int not null,
	occurrence int not null,
	kind text not null,
	from_day date not null,
	to_day date not null check (to_day >= from_day),
	title text not null,
	what text not null,
	amount text,
	why text not null,
	otherwise text,
	caution text,
	state text not null,
	withdrawn_because text,
	sequence int not null,
	explanation uuid not null,
	created_at timestamptz not null,
	changed_at timestamptz not null,
	unique (planting, rule, season, occurrence)
);

create index task_site on care.task (site, to_day);
create index task_person on care.task (person, to_day);
create index task_explanation on care.task (explanation);

-- Rules that are for a planting but could not be dated; rewritten with each derivation of the site.
create table care.gap (
	site uuid not null,
	planting uuid not null,
	rule text not null,
	title text not null,
	season int not null,
	reason text not null,
	primary key (planting, rule, season)
);

create index gap_site on care.gap (site);

-- Sites whose tasks have to be derived again.
create table care.replan (
	site uuid primary key,
	asked_at timestamptz not null,
	not_before timestamptz not null,
	attempts int not null default 0,
	last_error text
);

create index replan_due on care.replan (not_before);
