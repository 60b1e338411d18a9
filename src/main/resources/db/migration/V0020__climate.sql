create schema climate;

create table climate.station (
	id text primary key check (id ~ '^[A-Z0-9_-]{11}$'),
	name text not null check (length(name) between 1 and 100),
	latitude double precision not null check (latitude between -90 and 90),
	longitude double precision not null check (longitude between -180 and 180),
	elevation_metres double precision not null,
	invented boolean not null,
	-- counts the changes of the daily record, so that every node knows when its copy is old
	record_version bigint not null default 0
);

create index station_place on climate.station (latitude);

create table climate.observation (
	station_id text not null references climate.station on delete cascade,
	day date not null,
	tmin_tenths_celsius smallint,
	tmax_tenths_celsius smallint,
	precipitation_tenths_mm smallint,
	snow_depth_mm smallint,
	wind_tenths_metres_per_second smallint,
	primary key (station_id, day)
);
