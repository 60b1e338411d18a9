-- Of a day of a ramp of light: which step it tells, and whether it tells to keep the plants in. Later days go on from
-- what was told.
alter table care.task
	add column ramp_step smallint,
	add column ramp_held boolean;

create index task_ramp on care.task (site) where ramp_step is not null;
