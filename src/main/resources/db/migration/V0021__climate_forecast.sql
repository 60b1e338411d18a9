-- One row for each place that a source is asked about; created when it is first asked.
create table climate.fetch_state (
	source text not null,
	key text not null,
	-- a node that fetches holds the row until then, under a name that nobody else has
	claimed_by uuid,
	claimed_until timestamptz,
	last_try_at timestamptz,
	last_ok_at timestamptz,
	failures integer not null default 0,
	next_try_at timestamptz not null,
	last_error text,
	-- last day up to which the source's record has been read
	reached date,
	primary key (source, key)
);

create table climate.forecast (
	station_id text not null references climate.station on delete cascade,
	source text not null,
	issued_at timestamptz not null,
	fetched_at timestamptz not null,
	primary key (station_id, source)
);

create table climate.forecast_day (
	station_id text not null,
	source text not null,
	day date not null,
	tmin_tenths_celsius smallint,
	tmax_tenths_celsius smallint,
	precipitation_tenths_mm smallint,
	snowfall_mm smallint,
	wind_tenths_metres_per_second smallint,
	humidity_lowest_percent smallint,
	primary key (station_id, source, day),
	foreign key (station_id, source) references climate.forecast on delete cascade
);
