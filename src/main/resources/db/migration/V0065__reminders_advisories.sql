-- Advisories are told like tasks: a row for each person and channel, sent by the same dispatcher.
alter table reminders.reminder
	add column advisory uuid,
	-- Which message of the advisory, from 1.
	add column advisory_number int,
	add column advisory_news text check (advisory_news in ('NEW', 'CHANGED', 'OFF')),
	add check ((advisory is null) = (advisory_number is null)),
	add check ((advisory is null) = (advisory_news is null));

-- Rows of tasks are not in it, so they pay nothing for it.
create index reminder_of_advisory on reminders.reminder (advisory, person_id) where advisory is not null;

alter table reminders.message drop constraint message_series_check;
alter table reminders.message
	add constraint message_series_check check (series in ('morning', 'outlook', 'tonight', 'single', 'advisory'));

-- Making the rows of a message of an advisory, a page of people at a time, by whichever node comes.
create table reminders.advisory_round (
	message uuid primary key,
	advisory uuid not null,
	kind text not null check (kind in ('ISSUED', 'UPDATED', 'CANCELLED')),
	sent_at timestamptz not null,
	-- First who was told before, then who is concerned now.
	phase text not null check (phase in ('TOLD', 'CONCERNED', 'DONE')),
	-- The last person of the page before; null at the beginning of a phase.
	reached uuid,
	people bigint not null default 0,
	rows_made bigint not null default 0,
	began_at timestamptz not null,
	ended_at timestamptz,
	check ((phase = 'DONE') = (ended_at is not null))
);
create index advisory_round_open on reminders.advisory_round (sent_at) where ended_at is null;
create index advisory_round_of_advisory on reminders.advisory_round (advisory);

-- What became of rows that were tidied away.
create table reminders.advisory_past (
	advisory uuid not null,
	channel text not null,
	sent bigint not null,
	failed bigint not null,
	primary key (advisory, channel)
);
