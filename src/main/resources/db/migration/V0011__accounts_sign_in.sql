-- Somebody who took a quick calendar has no address; one that was typed in counts once its owner has followed a link sent to it.
alter table accounts.person alter column email drop not null;
alter table accounts.person add column confirmed_at timestamptz;

create table accounts.role (
	person uuid not null references accounts.person on delete cascade,
	role text not null check (role in ('COORDINATOR', 'SPECIALIST', 'OPERATOR')),
	-- Empty but for specialists, who have a row for each of their counties.
	county text not null default '' check (length(county) <= 100),
	granted_at timestamptz not null,
	primary key (person, role, county),
	check ((role = 'SPECIALIST') = (county <> ''))
);

create index role_county on accounts.role (county, person) where role = 'SPECIALIST';

create table accounts.one_time_link (
	-- SHA-256 of the secret in the link; the secret itself is kept nowhere.
	token_hash bytea primary key check (octet_length(token_hash) = 32),
	email text not null check (length(email) between 3 and 254),
	-- Who adds the address to what they have already; nobody when it is a sign-in.
	person uuid references accounts.person on delete cascade,
	expires_at timestamptz not null
);

create index one_time_link_expires on accounts.one_time_link (expires_at);
create index one_time_link_person on accounts.one_time_link (person);

create table accounts.audit (
	id bigint generated always as identity primary key,
	at timestamptz not null,
	-- Who did it; null for the operator token, and once that person is deleted.
	actor uuid references accounts.person on delete set null,
	deed text not null,
	-- Whose it was; null when it was nobody's, and once that person is deleted.
	concerns uuid references accounts.person on delete set null,
	what text not null check (length(what) <= 300)
);

create index audit_newest on accounts.audit (id desc);
create index audit_actor on accounts.audit (actor);
create index audit_concerns on accounts.audit (concerns, id desc);

-- The tables of Spring Session, so that several nodes serve one person.
create table accounts.session (
	primary_id char(36) not null primary key,
	session_id char(36) not null,
	creation_time bigint not null,
	last_access_time bigint not null,
	max_inactive_interval int not null,
	expiry_time bigint not null,
	principal_name varchar(100)
);

create unique index session_by_id on accounts.session (session_id);
create index session_expiry on accounts.session (expiry_time);
create index session_principal on accounts.session (principal_name);

create table accounts.session_attributes (
	session_primary_id char(36) not null references accounts.session (primary_id) on delete cascade,
	attribute_name varchar(200) not null,
	attribute_bytes bytea not null,
	primary key (session_primary_id, attribute_name)
);
