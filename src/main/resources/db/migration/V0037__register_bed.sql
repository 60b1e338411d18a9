-- Parts of a site that share light, wind and water. What is null is as at the site.
create table register.bed (
	id uuid primary key,
	site uuid not null references register.site on delete cascade,
	name text not null check (length(name) between 1 and 60),
	sun text check (sun in ('FULL_SUN', 'PART_SHADE', 'SHADE')),
	wind text check (wind in ('SHELTERED', 'AVERAGE', 'EXPOSED')),
	litres_per_minute double precision check (litres_per_minute between 0.1 and 1000),
	created_at timestamptz not null,
	-- So that others can refer to a bed of their own site only.
	unique (id, site)
);

create unique index bed_name on register.bed (site, lower(name));

alter table register.planting
	add column bed uuid,
	add constraint planting_bed foreign key (bed, site) references register.bed (id, site) on delete set null (bed);

create index planting_bed on register.planting (bed) where bed is not null;

-- Water and samples of a bed as a whole; neither bed nor planting stands for the whole site.
alter table register.watering
	add column bed uuid,
	add constraint watering_bed foreign key (bed, site) references register.bed (id, site) on delete cascade,
	add constraint watering_place check (bed is null or planting is null);

create index watering_bed on register.watering (bed) where bed is not null;

alter table register.soil_test
	add column bed uuid,
	add constraint soil_test_bed foreign key (bed, site) references register.bed (id, site) on delete cascade,
	add constraint soil_test_place check (bed is null or planting is null);

create index soil_test_bed on register.soil_test (bed) where bed is not null;
