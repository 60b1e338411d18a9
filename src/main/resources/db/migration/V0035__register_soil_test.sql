create table register.soil_test (
	id uuid primary key,
	site uuid not null references register.site on delete cascade,
	planting uuid references register.planting on delete cascade,
	day date not null,
	acidity double precision not null check (acidity between 2 and 12),
	conductivity double precision not null check (conductivity between 0 and 100),
	extract text not null check (extract in ('SATURATED_PASTE', 'ONE_TO_TWO')),
	sodium_ratio double precision check (sodium_ratio between 0 and 150),
	sodium_percent double precision check (sodium_percent between 0 and 70),
	exchange double precision check (exchange between 0.5 and 100),
	depth_centimetres double precision not null check (depth_centimetres between 5 and 100),
	drainage text not null check (drainage in ('GOOD', 'SLOW', 'NONE', 'UNTESTED')),
	note text not null check (length(note) <= 200),
	entered_by uuid,
	entered_at timestamptz not null,
	check (sodium_ratio is not null or sodium_percent is not null)
);

create index soil_test_site on register.soil_test (site, day, entered_at, id);
create index soil_test_planting on register.soil_test (planting);
