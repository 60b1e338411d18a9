-- The words of tasks; thousands of tasks share one. The id is the first half of the SHA-256 of the words.
create table care.wording (
	id uuid primary key,
	title text not null,
	what text not null,
	amount text,
	why text not null,
	otherwise text,
	caution text
);

alter table care.task
	add column wording uuid,
	add column work text,
	add column pack_version int not null default 0,
	-- null: for the site as a whole
	alter column planting drop not null;

update care.task set wording = encode(substring(sha256(convert_to(concat_ws(chr(31), title, what, coalesce(amount, ''),
	why, coalesce(otherwise, ''), coalesce(caution, '')), 'UTF8')) from 1 for 16), 'hex')::uuid;

insert into care.wording (id, title, what, amount, why, otherwise, caution)
	select distinct on (wording) wording, title, what, amount, why, otherwise, caution from care.task;

-- The id stands for subject, rule, season and occurrence, so a second index over them only takes room; unused
-- explanations are looked for in one pass over all tasks.
alter table care.task
	alter column wording set not null,
	drop column title,
	drop column what,
	drop column amount,
	drop column why,
	drop column otherwise,
	drop column caution,
	drop constraint task_planting_rule_season_occurrence_key;

drop index care.task_explanation;

-- Every change of a task's state.
create table care.task_history (
	id bigint generated always as identity primary key,
	task uuid not null,
	at timestamptz not null,
	from_state text not null,
	to_state text not null,
	because text,
	by_person uuid
);

create index task_history_task on care.task_history (task, id);

alter table care.gap
	drop constraint gap_pkey,
	alter column planting drop not null;

-- What was last planned for a site, as a fingerprint: while it is the same, no task is read.
create table care.site_plan (
	site uuid primary key,
	hash bytea not null,
	at timestamptz not null
);

create index replan_order on care.replan (asked_at, site);

-- What was done, for a task or on one's own account.
create table care.log (
	id uuid primary key,
	site uuid not null,
	planting uuid,
	task uuid,
	work text not null,
	day date not null,
	person uuid,
	amount double precision check (amount >= 0),
	unit text,
	note text check (length(note) <= 2000),
	entered_at timestamptz not null,
	undone_at timestamptz,
	-- the hold-off that forbade it on that day
	inside_hold_off uuid
);

create index log_site on care.log (site, day);
create index log_task on care.log (task) where task is not null;

-- Phases and events that were seen; planting null: at the site as a whole.
create table care.observation (
	id uuid primary key,
	site uuid not null,
	planting uuid,
	kind text not null check (kind in ('PHASE', 'EVENT')),
	name text not null,
	day date not null,
	season int not null,
	person uuid,
	entered_at timestamptz not null,
	undone_at timestamptz
);

create index observation_site on care.observation (site, season);
