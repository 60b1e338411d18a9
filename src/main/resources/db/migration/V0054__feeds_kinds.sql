-- Calendars of beds and groups, of workdays and advisories.
alter table feeds.feed drop constraint feed_kind_check;
alter table feeds.feed add constraint feed_kind_check check (kind in ('PERSON', 'SITE', 'BED', 'GROUP'));

-- Who wanted everything wants what is new, too.
update feeds.feed set parts = parts || '{WORKDAYS,ADVISORIES}' where parts @> '{TASKS,HOLD_OFFS,RAMP_DAYS,LOOK_FOR}';
alter table feeds.feed alter column parts set default '{TASKS,HOLD_OFFS,RAMP_DAYS,LOOK_FOR,WORKDAYS,ADVISORIES}';
