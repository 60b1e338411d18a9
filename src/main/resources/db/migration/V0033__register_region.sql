alter table register.site
	add column region text not null default '' check (region = '' or region ~ '^[A-Z]{2}-[A-Z0-9]{1,3}$'),
	add column irrigation boolean not null default false,
	add column volunteers boolean not null default false;
