-- What grows at each site, as one small row, so that a million plantings are counted by county and plant within a
-- second. A planting is the code of its species; a species that is there twice has two. Triggers keep it, so that it
-- is right whoever changes the register.
create table register.species_code (
	code smallint generated always as identity primary key,
	species text not null unique
);

create table register.site_plants (
	site uuid primary key references register.site on delete cascade,
	owner uuid not null,
	-- Lower case, as sites are entered by hand as well.
	county text not null,
	region text not null,
	plants smallint[] not null default '{}'
);

create index site_plants_county on register.site_plants (county);
create index site_plants_owner on register.site_plants (owner);

create function register.put_site_plants() returns trigger language plpgsql as $$
begin
	insert into register.site_plants (site, owner, county, region) values (new.id, new.owner, lower(new.county), new.region)
		on conflict (site) do update set owner = excluded.owner, county = excluded.county, region = excluded.region;
	return null;
end $$;

create trigger site_plants_of_site after insert or update of owner, county, region on register.site
	for each row execute function register.put_site_plants();

create function register.count_site_plants(sites uuid[]) returns void language plpgsql as $$
begin
	insert into register.species_code (species)
		select distinct p.species from register.planting p where p.site = any(sites)
			and not exists (select from register.species_code c where c.species = p.species)
		on conflict (species) do nothing;
	-- Whoever comes second waits here, and then reads in the next statement what the first has written.
	perform 1 from register.site_plants where site = any(sites) order by site for update;
	update register.site_plants s set plants = coalesce((select array_agg(c.code order by c.code)
			from register.planting p join register.species_code c on c.species = p.species where p.site = s.site), '{}')
		where s.site = any(sites);
end $$;

create function register.plantings_added() returns trigger language plpgsql as $$
begin
	perform register.count_site_plants(array(select distinct site from added));
	return null;
end $$;

create function register.plantings_removed() returns trigger language plpgsql as $$
begin
	perform register.count_site_plants(array(select distinct site from removed));
	return null;
end $$;

create function register.plantings_changed() returns trigger language plpgsql as $$
declare
	sites uuid[] := array(select n.site from added n join removed o on o.id = n.id
		where o.species <> n.species or o.site <> n.site
		union select o.site from added n join removed o on o.id = n.id where o.site <> n.site);
begin
	if cardinality(sites) > 0 then
		perform register.count_site_plants(sites);
	end if;
	return null;
end $$;

create trigger site_plants_added after insert on register.planting
	referencing new table as added for each statement execute function register.plantings_added();
create trigger site_plants_removed after delete on register.planting
	referencing old table as removed for each statement execute function register.plantings_removed();
create trigger site_plants_changed after update on register.planting
	referencing old table as removed new table as added for each statement execute function register.plantings_changed();

insert into register.site_plants (site, owner, county, region)
	select id, owner, lower(county), region from register.site;
insert into register.species_code (species) select distinct species from register.planting;
update register.site_plants s set plants = g.plants from (select p.site, array_agg(c.code order by c.code) as plants
	from register.planting p join register.species_code c on c.species = p.species group by p.site) g where g.site = s.site;
