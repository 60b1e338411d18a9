create schema register;

create table register.site (
	id uuid primary key,
	owner uuid not null,
	name text not null check (length(name) between 1 and 100),
	county text not null check (length(county) <= 100),
	latitude double precision not null check (latitude between -90 and 90),
	longitude double precision not null check (longitude between -180 and 180),
	elevation_metres double precision not null,
	zone text not null,
	soil text not null,
	sun text not null,
	wind text not null,
	created_at timestamptz not null
);

create index site_owner on register.site (owner, name, id);
create index site_place on register.site (latitude, longitude);

create table register.planting (
	id uuid primary key,
	site uuid not null references register.site on delete cascade,
	species text not null,
	label text not null check (length(label) between 1 and 100),
	count int not null check (count between 1 and 100000),
	planted_on date not null,
	placement text not null,
	winters_indoors boolean not null,
	salt_exposed boolean not null,
	created_at timestamptz not null
);

create index planting_site on register.planting (site, label, id);
