-- Browsers that take messages, one row each. The endpoint is the push service's address for that browser.
create table reminders.push_subscription (
	id uuid primary key,
	person_id uuid not null,
	endpoint text not null unique check (length(endpoint) <= 2000),
	-- What a message is sealed with: a public key of the browser, and a secret that only it and we know.
	p256dh bytea not null check (length(p256dh) = 65),
	auth bytea not null check (length(auth) = 16),
	-- What its owner calls the browser.
	label text not null,
	created_at timestamptz not null,
	last_ok_at timestamptz,
	-- How often in a row nothing could be handed on.
	failures integer not null default 0
);
create index push_subscription_of_person on reminders.push_subscription (person_id, created_at, id);
