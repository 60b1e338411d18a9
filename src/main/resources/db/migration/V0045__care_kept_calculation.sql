-- Answers of calculators that somebody kept for a planting, to be opened again with the same figures. What they changed
-- stands in the register.
create table care.kept_calculation (
	id uuid primary key,
	site uuid not null,
	planting uuid not null,
	-- null: an operator kept it
	person uuid,
	calculator text not null,
	-- names and values as in an address
	inputs text not null check (length(inputs) <= 2000),
	words text not null check (length(words) <= 1000),
	day date not null,
	kept_at timestamptz not null
);

-- The same on the same day is one, however often the button was pressed.
create unique index kept_calculation_once on care.kept_calculation (planting, calculator, day, md5(inputs));
create index kept_calculation_site on care.kept_calculation (site);
