-- What leaves the house is a message now: mail is one way among others.
alter table reminders.mail rename to message;
alter index reminders.mail_newest rename to message_newest;
alter index reminders.mail_newest_of_person rename to message_newest_of_person;
alter table reminders.message
	add column channel text not null default 'mail',
	-- Which of the series it belongs to that can be stopped each on its own.
	add column series text not null default 'morning' check (series in ('morning', 'outlook', 'tonight', 'single')),
	-- A few words for a small screen.
	add column brief text not null default '',
	-- The page that tells more.
	add column link text not null default '/',
	-- What it is an answer to, so that mails about one task stand together.
	add column thread text,
	-- For programs, as JSON.
	add column content text not null default '{}',
	-- How often it was handed on and nobody knows what came of it.
	add column uncertain integer not null default 0;
create index message_failed on reminders.message (created_at desc, id desc) where state = 'FAILED';
create index message_sent on reminders.message (sent_at) where sent_at is not null;

alter table reminders.reminder rename column mail_id to message_id;
alter index reminders.reminder_of_mail rename to reminder_of_message;
alter table reminders.reminder
	alter column task_id drop not null,
	add column channel text not null default 'mail',
	add column topic text not null default 'to-do',
	-- What goes out together.
	add column bundle text not null default '';
update reminders.reminder set dedup_key = 'mail:' || dedup_key, bundle = 'morning:' || first_day;
drop index reminders.reminder_due;
drop index reminders.reminder_due_of_person;
create index reminder_due on reminders.reminder (next_try_at, id) where state = 'PENDING';
create index reminder_due_of_person on reminders.reminder (person_id, channel, next_try_at, id) where state = 'PENDING';
create index reminder_ended on reminders.reminder (expires_at) where state not in ('PENDING', 'CLAIMED');

-- How a person wants to be told. Who has no row never chose.
create table reminders.wishes (
	person_id uuid primary key,
	language text not null,
	units text not null,
	morning time not null,
	-- ISO 8601: 1 is Monday.
	outlook_day smallint not null check (outlook_day between 1 and 7),
	quiet_from time not null,
	quiet_to time not null,
	urgent_anyway boolean not null,
	-- The first day on which messages go out again.
	paused_until date
);

-- Only what differs from what is usual.
create table reminders.wish (
	person_id uuid not null,
	channel text not null,
	topic text not null,
	manner text not null check (manner in ('off', 'single', 'morning', 'weekly')),
	lead_days smallint not null check (lead_days between 0 and 14),
	primary key (person_id, channel, topic)
);

-- Series that a person left by a link in a message.
create table reminders.stopped (
	person_id uuid not null,
	channel text not null,
	series text not null,
	since timestamptz not null,
	primary key (person_id, channel, series)
);

-- Addresses that a mail server said will never take mail.
create table reminders.suppressed (
	address text primary key check (address = lower(address)),
	reason text not null,
	since timestamptz not null
);

-- What signs links in messages and what signs in at push services; made by the server, one of each name.
create table reminders.server_key (
	name text primary key,
	value bytea not null
);
