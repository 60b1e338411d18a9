create schema reminders;

create table reminders.mail (
	id uuid primary key,
	person_id uuid not null,
	sender text not null,
	recipient text not null,
	recipient_name text not null,
	subject text not null,
	body_text text not null,
	body_html text not null,
	-- Fixed when the row is made; a second try carries the same one.
	message_id text not null unique,
	state text not null check (state in ('WAITING', 'SENT', 'KEPT', 'FAILED', 'DROPPED')),
	created_at timestamptz not null,
	sent_at timestamptz,
	server_reply text
);

create index mail_newest on reminders.mail (created_at desc, id desc);
create index mail_newest_of_person on reminders.mail (person_id, created_at desc, id desc);

create table reminders.reminder (
	id uuid primary key,
	person_id uuid not null,
	task_id uuid not null,
	first_day date not null,
	-- The task and its first day.
	dedup_key text not null unique,
	due_at timestamptz not null,
	expires_at timestamptz not null,
	state text not null
		check (state in ('PENDING', 'CLAIMED', 'SENT', 'KEPT', 'FAILED', 'EXPIRED', 'WITHDRAWN')),
	attempts integer not null default 0,
	next_try_at timestamptz not null,
	claimed_by uuid,
	claimed_until timestamptz,
	mail_id uuid references reminders.mail (id),
	last_error text,
	check ((state = 'CLAIMED') = (claimed_by is not null)),
	check ((claimed_by is null) = (claimed_until is null))
);

create index reminder_due on reminders.reminder (next_try_at, id) where state = 'PENDING';
create index reminder_due_of_person on reminders.reminder (person_id, next_try_at, id) where state = 'PENDING';
create index reminder_claimed on reminders.reminder (claimed_until) where state = 'CLAIMED';
create index reminder_of_person on reminders.reminder (person_id, first_day);
create index reminder_of_mail on reminders.reminder (mail_id);
