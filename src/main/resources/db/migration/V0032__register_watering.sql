create table register.watering (
	id uuid primary key,
	site uuid not null references register.site on delete cascade,
	planting uuid references register.planting on delete cascade,
	day date not null,
	millimetres double precision not null check (millimetres > 0 and millimetres <= 200),
	note text not null check (length(note) <= 200),
	entered_by uuid,
	entered_at timestamptz not null
);

create index watering_site on register.watering (site, day, entered_at, id);
create index watering_planting on register.watering (planting);
