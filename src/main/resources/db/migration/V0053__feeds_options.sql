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
