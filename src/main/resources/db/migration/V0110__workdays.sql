create schema workdays;

-- Volunteers who look after some sites together.
create table workdays.volunteer_group (
	id uuid primary key,
	name text not null check (length(name) between 1 and 100),
	about text not null check (length(about) <= 1000),
	zone text not null,
	meeting_point text not null check (length(meeting_point) <= 200),
	-- When it works as a rule: days of the week by ISO 8601, 1 is Monday.
	weekdays smallint[] not null,
	begins time not null,
	ends time not null check (ends > begins),
	capacity integer not null check (capacity between 1 and 500),
	-- Days on which it never works.
	away date[] not null default '{}' check (cardinality(away) <= 200),
	created_at timestamptz not null
);

create table workdays.member (
	group_id uuid not null references workdays.volunteer_group on delete cascade,
	person_id uuid not null,
	leads boolean not null,
	skills text[] not null default '{}',
	weekdays smallint[] not null default '{1,2,3,4,5,6,7}',
	away date[] not null default '{}' check (cardinality(away) <= 200),
	-- Whom to call; read by those who lead only.
	emergency text not null default '' check (length(emergency) <= 200),
	joined_at timestamptz not null,
	primary key (group_id, person_id)
);

create index member_person on workdays.member (person_id);

-- Whoever has the link may join; only its hash is kept.
create table workdays.invitation (
	id uuid primary key,
	group_id uuid not null references workdays.volunteer_group on delete cascade,
	hash bytea not null unique check (octet_length(hash) = 32),
	made_by uuid,
	made_at timestamptz not null,
	expires_at timestamptz not null
);

create index invitation_group on workdays.invitation (group_id, made_at);

-- Sites that their owners gave to a group. With an empty address it is shown by county and about where only.
create table workdays.group_site (
	group_id uuid not null references workdays.volunteer_group on delete cascade,
	site uuid not null,
	owner uuid not null,
	address text not null check (length(address) <= 200),
	given_at timestamptz not null,
	primary key (group_id, site)
);

create index group_site_owner on workdays.group_site (owner);
create index group_site_site on workdays.group_site (site);

-- Where plantings stand when one walks through a site: the order, and a square of a sketch of 8 by 6.
create table workdays.stop (
	site uuid not null,
	planting uuid not null,
	place integer not null check (place between 1 and 1000),
	square smallint check (square between 0 and 47),
	primary key (site, planting)
);

create table workdays.workday (
	id uuid primary key,
	group_id uuid not null references workdays.volunteer_group on delete cascade,
	day date not null,
	begins time not null,
	ends time not null check (ends > begins),
	zone text not null,
	meeting_point text not null check (length(meeting_point) <= 200),
	capacity integer not null check (capacity between 1 and 500),
	state text not null check (state in ('PROPOSED', 'FIXED', 'CALLED_OFF', 'HELD')),
	-- Raised with each change of day, time or place and when it is called off (RFC 5546, section 2.1.4).
	sequence integer not null default 0,
	-- Whether planning anew leaves the day as it is.
	locked boolean not null default false,
	rain_day date,
	called_off_because text check (length(called_off_because) <= 300),
	-- What the watch told those who lead last, so that it says nothing twice.
	warned text,
	thanked_at timestamptz,
	created_at timestamptz not null,
	changed_at timestamptz not null
);

create index workday_group on workdays.workday (group_id, day);
create index workday_day on workdays.workday (day) where state = 'FIXED';

create table workdays.workday_task (
	workday uuid not null references workdays.workday on delete cascade,
	task uuid not null,
	site uuid not null,
	minutes integer not null check (minutes between 1 and 100000),
	-- Whether planning anew leaves it on this day.
	pinned boolean not null default false,
	-- Which team does it, and at which of its stops.
	team smallint not null default 1 check (team between 1 and 8),
	stop smallint not null default 1,
	why text not null,
	done_by uuid,
	done_at timestamptz,
	primary key (workday, task)
);

create index workday_task_task on workdays.workday_task (task);

-- What the last plan of a group left over.
create table workdays.left_over (
	group_id uuid not null references workdays.volunteer_group on delete cascade,
	task uuid not null,
	why text not null,
	primary key (group_id, task)
);

create table workdays.sign_up (
	workday uuid not null references workdays.workday on delete cascade,
	person_id uuid not null,
	-- IN: has a place; WAITING: on the list; OUT: said no or left.
	state text not null check (state in ('IN', 'WAITING', 'OUT')),
	children smallint not null default 0 check (children between 0 and 20),
	guardian boolean not null default false,
	since timestamptz not null,
	-- How many minutes they worked; null until somebody said.
	minutes integer check (minutes between 0 and 1440),
	primary key (workday, person_id)
);

create index sign_up_person on workdays.sign_up (person_id);
