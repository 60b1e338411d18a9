create schema accounts;

create table accounts.person (
	id uuid primary key,
	name text not null check (length(name) between 1 and 100),
	email text not null check (length(email) between 3 and 254),
	zone text not null,
	created_at timestamptz not null
);

create unique index person_email on accounts.person (lower(email));
create index person_name on accounts.person (name, id);
