-- What the days of a task were before they moved, until when, and how they had come about, so that people can be told
-- what changed and why. Of many small moves within a week the days before the first of them are kept.
alter table care.task
	add column was_from date,
	add column was_to date,
	add column was_until timestamptz,
	add column was_explanation uuid;
