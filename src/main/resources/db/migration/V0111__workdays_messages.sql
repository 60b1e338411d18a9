-- Mails about workdays, sent in the order in which they were written to somebody about a workday.
create table workdays.message (
	id uuid primary key,
	number bigint generated always as identity,
	group_id uuid not null,
	-- Null when the workday is gone.
	workday uuid,
	person_id uuid not null,
	kind text not null,
	recipient text not null,
	recipient_name text not null,
	subject text not null,
	body text not null,
	-- The calendar part and its method (RFC 6047).
	calendar text,
	method text check (method in ('REQUEST', 'CANCEL')),
	reply_to text,
	state text not null check (state in ('WAITING', 'SENT', 'KEPT', 'FAILED')),
	tries integer not null default 0,
	next_try_at timestamptz not null,
	claimed_until timestamptz,
	because text,
	created_at timestamptz not null,
	sent_at timestamptz,
	check ((calendar is null) = (method is null))
);

create index message_waiting on workdays.message (next_try_at) where state = 'WAITING';
create index message_line on workdays.message (person_id, workday, number);

-- Answers carry a token made of this key, workday and person, so that each mail to somebody has the same organizer.
create table workdays.server_key (
	id integer primary key check (id = 1),
	key bytea not null check (octet_length(key) = 32)
);

-- Who was asked, so that a token finds its workday; only its hash is kept.
create table workdays.asked (
	workday uuid not null references workdays.workday on delete cascade,
	person_id uuid not null,
	hash bytea not null unique check (octet_length(hash) = 32),
	at timestamptz not null,
	primary key (workday, person_id)
);

create index asked_person on workdays.asked (person_id);

-- What was ticked on the day, under keys made by whoever ticked, so that a tick sent twice counts once.
create table workdays.mark (
	key uuid primary key,
	workday uuid not null references workdays.workday on delete cascade,
	task uuid not null,
	person_id uuid not null,
	done boolean not null,
	-- When it was ticked, by the clock of the phone, but never later than it came.
	at timestamptz not null,
	came_at timestamptz not null
);

create index mark_workday on workdays.mark (workday, task, at);
create index mark_person on workdays.mark (person_id);
