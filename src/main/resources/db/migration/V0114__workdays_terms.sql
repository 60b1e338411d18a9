alter table workdays.volunteer_group
	-- Days that it takes to call people.
	add column notice smallint not null default 3 check (notice between 0 and 60),
	-- Tools that not every team can have at the same time, and in the same order how many can.
	add column few_tools text[] not null default '{}' check (cardinality(few_tools) <= 12),
	add column few_tool_teams smallint[] not null default '{}',
	add check (cardinality(few_tools) = cardinality(few_tool_teams));
