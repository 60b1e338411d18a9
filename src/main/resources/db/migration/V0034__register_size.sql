alter table register.planting
	add column square_metres double precision check (square_metres between 0.01 and 100000),
	add column calliper_millimetres double precision check (calliper_millimetres between 5 and 3000),
	add column pot_litres double precision check (pot_litres between 0.1 and 5000),
	add column raised_in text check (raised_in in ('MIDDAY_WINDOW', 'MORNING_WINDOW', 'AFTERNOON_WINDOW',
		'SUNLESS_WINDOW', 'LAMPS', 'GREENHOUSE')),
	add column lamp_micromoles double precision check (lamp_micromoles between 1 and 2500),
	add column lamp_hours double precision check (lamp_hours > 0 and lamp_hours <= 24);

alter table register.site
	add column litres_per_minute double precision check (litres_per_minute between 0.1 and 1000);
