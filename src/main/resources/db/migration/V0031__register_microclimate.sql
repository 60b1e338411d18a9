alter table register.site
	add column lie text not null default 'FLAT' check (lie in ('FLAT', 'HOLLOW', 'SLOPE', 'HILLTOP')),
	add column near_wall boolean not null default false,
	add column in_town boolean not null default false,
	add column measured_offset_celsius double precision check (measured_offset_celsius between -10 and 10);
