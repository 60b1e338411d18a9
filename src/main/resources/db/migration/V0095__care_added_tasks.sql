-- Tasks that another module calls for, such as the follow-up of a case: for what they were added, and the page that says
-- why. Planning neither reads nor withdraws them.
alter table care.task
	add column added_for uuid,
	add column link text check (link ~ '^/[a-z]' and length(link) <= 200),
	add constraint added_with_link check ((added_for is null) = (link is null));
create index task_added_for on care.task (added_for) where added_for is not null;
