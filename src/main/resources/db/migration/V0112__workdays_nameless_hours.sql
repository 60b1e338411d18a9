-- Hours of people whose account is gone. A group's year keeps them; nothing tells whose they were.
create table workdays.nameless_hours (
	id bigint generated always as identity primary key,
	workday uuid not null references workdays.workday on delete cascade,
	minutes integer not null check (minutes between 1 and 1440)
);

create index nameless_hours_workday on workdays.nameless_hours (workday);
