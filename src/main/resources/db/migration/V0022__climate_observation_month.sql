-- One row for each month of a station instead of one for each day. Of the time that loading a record took in
-- PostgreSQL, more than half went into asking for each day whether its station is there, and a quarter into the index.
create table climate.observation_month (
	station_id text not null references climate.station on delete cascade,
	-- its first day
	month date not null,
	-- One value for each day of the month, null where there is none; null instead of an array without any value.
	tmin_tenths_celsius smallint[],
	tmax_tenths_celsius smallint[],
	precipitation_tenths_mm smallint[],
	snow_depth_mm smallint[],
	wind_tenths_metres_per_second smallint[],
	primary key (station_id, month),
	constraint month_is_first_day check (extract(day from month) = 1),
	constraint month_has_values check (num_nonnulls(tmin_tenths_celsius, tmax_tenths_celsius, precipitation_tenths_mm,
		snow_depth_mm, wind_tenths_metres_per_second) > 0),
	constraint month_has_its_days check (extract(day from month + interval '1 month' - interval '1 day')::integer = all (
		array_remove(array[cardinality(tmin_tenths_celsius), cardinality(tmax_tenths_celsius),
			cardinality(precipitation_tenths_mm), cardinality(snow_depth_mm),
			cardinality(wind_tenths_metres_per_second)], null)))
);

insert into climate.observation_month
select station_id, month,
	case when count(tmin_tenths_celsius) > 0 then array_agg(tmin_tenths_celsius order by day) end,
	case when count(tmax_tenths_celsius) > 0 then array_agg(tmax_tenths_celsius order by day) end,
	case when count(precipitation_tenths_mm) > 0 then array_agg(precipitation_tenths_mm order by day) end,
	case when count(snow_depth_mm) > 0 then array_agg(snow_depth_mm order by day) end,
	case when count(wind_tenths_metres_per_second) > 0 then array_agg(wind_tenths_metres_per_second order by day) end
from (
	select distinct station_id, date_trunc('month', day::timestamp)::date as month from climate.observation
) as months
cross join lateral generate_series(month::timestamp, month::timestamp + interval '1 month' - interval '1 day',
	interval '1 day') as every (at)
cross join lateral (select at::date as day) as days
left join climate.observation using (station_id, day)
group by station_id, month
having num_nonnulls(min(tmin_tenths_celsius), min(tmax_tenths_celsius), min(precipitation_tenths_mm),
	min(snow_depth_mm), min(wind_tenths_metres_per_second)) > 0;

drop table climate.observation;
