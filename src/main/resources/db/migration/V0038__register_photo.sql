-- Photos of plantings as we drew them anew; no byte of what was sent is kept. They go with their planting.
create table register.photo (
	id uuid primary key,
	planting uuid not null references register.planting on delete cascade,
	content bytea not null check (octet_length(content) <= 4194304),
	width int not null,
	height int not null,
	words text not null check (length(words) between 1 and 200),
	-- The day that people give; when it came in is at.
	day date not null,
	at timestamptz not null
);
create index photo_planting on register.photo (planting, day, at);
-- A JPEG is packed already.
alter table register.photo alter column content set storage external;
