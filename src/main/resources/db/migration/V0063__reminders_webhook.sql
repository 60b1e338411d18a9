-- A server of a person's own that is told what is due; one for each person.
create table reminders.webhook (
	person_id uuid primary key,
	address text not null check (length(address) <= 300),
	-- Signs what is sent, so its hash would not do.
	secret bytea not null check (octet_length(secret) = 32),
	-- The one before it signs beside it for a while.
	former_secret bytea check (octet_length(former_secret) = 32),
	former_until timestamptz,
	created_at timestamptz not null,
	disabled_at timestamptz,
	disabled_because text,
	last_ok_at timestamptz,
	last_tried_at timestamptz,
	last_outcome text,
	-- Since when nothing was taken, and how many tries failed since then.
	failing_since timestamptz,
	failures integer not null default 0,
	-- Its server asked to be left alone until then.
	not_before timestamptz,
	check ((former_secret is null) = (former_until is null)),
	check ((disabled_at is null) = (disabled_because is null))
);

-- Trials of a webhook within an hour. A table of its own, so that making the webhook anew gives no more of them.
create table reminders.webhook_trial (
	person_id uuid primary key,
	since timestamptz not null,
	trials integer not null
);
