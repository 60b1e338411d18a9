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
