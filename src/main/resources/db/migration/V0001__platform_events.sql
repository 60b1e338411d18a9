-- Publications of application events that still have to reach a listener (Spring Modulith, table layout 2).
create schema events;

create table events.event_publication (
	id uuid primary key,
	listener_id text not null,
	event_type text not null,
	serialized_event text not null,
	publication_date timestamptz not null,
	completion_date timestamptz,
	status text,
	completion_attempts int,
	last_resubmission_date timestamptz
);

-- A b-tree can't hold long events; the registry looks them up by equality only.
create index on events.event_publication using hash (serialized_event);
create index on events.event_publication (completion_date);
