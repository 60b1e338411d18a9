-- Tables of the job scheduler (Quartz 2.5, PostgreSQL), in a schema of their own.
create schema quartz;

create table quartz.qrtz_job_details (
	sched_name varchar(120) not null,
	job_name varchar(200) not null,
	job_group varchar(200) not null,
	description varchar(250),
	job_class_name varchar(250) not null,
	is_durable bool not null,
	is_nonconcurrent bool not null,
	is_update_data bool not null,
	requests_recovery bool not null,
	job_data bytea,
	primary key (sched_name, job_name, job_group)
);

create table quartz.qrtz_triggers (
	sched_name varchar(120) not null,
	trigger_name varchar(200) not null,
	trigger_group varchar(200) not null,
	job_name varchar(200) not null,
	job_group varchar(200) not null,
	description varchar(250),
	next_fire_time bigint,
	prev_fire_time bigint,
	priority integer,
	trigger_state varchar(16) not null,
	trigger_type varchar(8) not null,
	start_time bigint not null,
	end_time bigint,
	calendar_name varchar(200),
	misfire_instr smallint,
	job_data bytea,
	primary key (sched_name, trigger_name, trigger_group),
	foreign key (sched_name, job_name, job_group) references quartz.qrtz_job_details (sched_name, job_name, job_group)
);

create table quartz.qrtz_simple_triggers (
	sched_name varchar(120) not null,
	trigger_name varchar(200) not null,
	trigger_group varchar(200) not null,
	repeat_count bigint not null,
	repeat_interval bigint not null,
	times_triggered bigint not null,
	primary key (sched_name, trigger_name, trigger_group),
	foreign key (sched_name, trigger_name, trigger_group) references quartz.qrtz_triggers (sched_name, trigger_name, trigger_group)
);

create table quartz.qrtz_cron_triggers (
	sched_name varchar(120) not null,
	trigger_name varchar(200) not null,
	trigger_group varchar(200) not null,
	cron_expression varchar(120) not null,
	time_zone_id varchar(80),
	primary key (sched_name, trigger_name, trigger_group),
	foreign key (sched_name, trigger_name, trigger_group) references quartz.qrtz_triggers (sched_name, trigger_name, trigger_group)
);

create table quartz.qrtz_simprop_triggers (
	sched_name varchar(120) not null,
	trigger_name varchar(200) not null,
	trigger_group varchar(200) not null,
	str_prop_1 varchar(512),
	str_prop_2 varchar(512),
	str_prop_3 varchar(512),
	int_prop_1 int,
	int_prop_2 int,
	long_prop_1 bigint,
	long_prop_2 bigint,
	dec_prop_1 numeric(13, 4),
	dec_prop_2 numeric(13, 4),
	bool_prop_1 bool,
	bool_prop_2 bool,
	primary key (sched_name, trigger_name, trigger_group),
	foreign key (sched_name, trigger_name, trigger_group) references quartz.qrtz_triggers (sched_name, trigger_name, trigger_group)
);

create table quartz.qrtz_blob_triggers (
	sched_name varchar(120) not null,
	trigger_name varchar(200) not null,
	trigger_group varchar(200) not null,
	blob_data bytea,
	primary key (sched_name, trigger_name, trigger_group),
	foreign key (sched_name, trigger_name, trigger_group) references quartz.qrtz_triggers (sched_name, trigger_name, trigger_group)
);

create table quartz.qrtz_calendars (
	sched_name varchar(120) not null,
	calendar_name varchar(200) not null,
	calendar bytea not null,
	primary key (sched_name, calendar_name)
);

create table quartz.qrtz_paused_trigger_grps (
	sched_name varchar(120) not null,
	trigger_group varchar(200) not null,
	primary key (sched_name, trigger_group)
);

create table quartz.qrtz_fired_triggers (
	sched_name varchar(120) not null,
	entry_id varchar(95) not null,
	trigger_name varchar(200) not null,
	trigger_group varchar(200) not null,
	instance_name varchar(200) not null,
	fired_time bigint not null,
	sched_time bigint not null,
	priority integer not null,
	state varchar(16) not null,
	job_name varchar(200),
	job_group varchar(200),
	is_nonconcurrent bool,
	requests_recovery bool,
	primary key (sched_name, entry_id)
);

create table quartz.qrtz_scheduler_state (
	sched_name varchar(120) not null,
	instance_name varchar(200) not null,
	last_checkin_time bigint not null,
	checkin_interval bigint not null,
	primary key (sched_name, instance_name)
);

create table quartz.qrtz_locks (
	sched_name varchar(120) not null,
	lock_name varchar(40) not null,
	primary key (sched_name, lock_name)
);

create index on quartz.qrtz_job_details (sched_name, requests_recovery);
create index on quartz.qrtz_job_details (sched_name, job_group);
create index on quartz.qrtz_triggers (sched_name, job_name, job_group);
create index on quartz.qrtz_triggers (sched_name, job_group);
create index on quartz.qrtz_triggers (sched_name, calendar_name);
create index on quartz.qrtz_triggers (sched_name, trigger_group);
create index on quartz.qrtz_triggers (sched_name, trigger_state);
create index on quartz.qrtz_triggers (sched_name, trigger_name, trigger_group, trigger_state);
create index on quartz.qrtz_triggers (sched_name, trigger_group, trigger_state);
create index on quartz.qrtz_triggers (sched_name, next_fire_time);
create index on quartz.qrtz_triggers (sched_name, trigger_state, next_fire_time);
create index on quartz.qrtz_triggers (sched_name, misfire_instr, next_fire_time);
create index on quartz.qrtz_triggers (sched_name, misfire_instr, next_fire_time, trigger_state);
create index on quartz.qrtz_triggers (sched_name, misfire_instr, next_fire_time, trigger_group, trigger_state);
create index on quartz.qrtz_fired_triggers (sched_name, instance_name);
create index on quartz.qrtz_fired_triggers (sched_name, instance_name, requests_recovery);
create index on quartz.qrtz_fired_triggers (sched_name, job_name, job_group);
create index on quartz.qrtz_fired_triggers (sched_name, job_group);
create index on quartz.qrtz_fired_triggers (sched_name, trigger_name, trigger_group);
create index on quartz.qrtz_fired_triggers (sched_name, trigger_group);

-- Made here so that two nodes starting together don't race for them.
insert into quartz.qrtz_locks (sched_name, lock_name) values ('leafward', 'TRIGGER_ACCESS'), ('leafward', 'STATE_ACCESS');
