-- What a calendar holds and how it speaks.
alter table feeds.feed
	add column language text not null default 'en',
	add column units text not null default 'both' check (units in ('both', 'metric', 'us')),
	add column parts text[] not null default '{TASKS,HOLD_OFFS,RAMP_DAYS,LOOK_FOR}',
	add column alarm time,
	add column behind integer not null default 180 check (behind between 0 and 180),
	add column ahead integer not null default 400 check (ahead between 7 and 400);

-- A feed may have a document of entries and one of to-dos. Only the packed form is kept: few clients want the other one.
alter table feeds.feed_document
	drop column octets,
	add column form text not null default 'EVENTS' check (form in ('EVENTS', 'TODOS')),
	-- How far sequence numbers of entries have run ahead of those of their tasks.
	add column ahead_by integer not null default 0,
	drop constraint feed_document_pkey,
	add primary key (feed_id, form);

-- When its calendars are likely to ask again: what is stale is built in this order.
alter table feeds.feed add column polled_every interval;
alter table feeds.feed_document add column next_poll timestamptz not null default now();
update feeds.feed_document d set next_poll = coalesce(f.last_fetched_at, f.created_at)
	from feeds.feed f where f.id = d.feed_id;

drop index feeds.feed_document_stale;
drop index feeds.feed_document_day;
create index feed_document_stale on feeds.feed_document (next_poll) where stale;
create index feed_document_day on feeds.feed_document (built_for, next_poll);

-- Tells every node which address answers otherwise from now on; each keeps in memory what it answers to a poll.
create function feeds.tell_document() returns trigger language plpgsql as $$
begin
	if tg_op = 'DELETE' then
		perform pg_notify('leafward_feeds', 'F' || old.feed_id);
	elsif tg_op = 'INSERT' or new.etag is distinct from old.etag then
		perform pg_notify('leafward_feeds', 'F' || new.feed_id);
	end if;
	return null;
end $$;

create function feeds.tell_feed() returns trigger language plpgsql as $$
begin
	if tg_op = 'DELETE' then
		perform pg_notify('leafward_feeds', 'D' || encode(old.token_hash, 'hex'));
	elsif new.revoked_at is distinct from old.revoked_at or new.expired is distinct from old.expired then
		perform pg_notify('leafward_feeds', 'F' || new.id);
	end if;
	return null;
end $$;

create trigger feed_document_tells after insert or update or delete on feeds.feed_document
	for each row execute function feeds.tell_document();
create trigger feed_tells after update or delete on feeds.feed
	for each row execute function feeds.tell_feed();
