package org.leafward.accounts.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AddressConfirmed;
import org.leafward.accounts.EmailAddress;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** People in the database. */
@Service
class StoredPeople implements People {

	private final JdbcClient database;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	StoredPeople(JdbcClient database, ApplicationEventPublisher events, Clock clock) {
		this.database = database;
		this.events = events;
		this.clock = clock;
	}

	@Override
	@Transactional
	public Person join(String name, String email, ZoneId zone) {
		String clean = name(name);
		String address = EmailAddress.read("email", email);
		this.database.sql("""
				insert into accounts.person (id, name, email, zone, created_at) values (?, ?, ?, ?, ?)
				on conflict (lower(email)) do nothing
				""").params(UUID.randomUUID(), clean, address, zone.getId(), now()).update();
		return withAddress(address).orElseThrow();
	}

	@Override
	public Person withoutAddress(String name, ZoneId zone) {
		UUID id = UUID.randomUUID();
		this.database.sql("insert into accounts.person (id, name, zone, created_at) values (?, ?, ?, ?)")
			.params(id, name(name), zone.getId(), now())
			.update();
		return find(new PersonId(id)).orElseThrow();
	}

	@Override
	@Transactional
	public Person ofTheServer() {
		this.database.sql("""
				insert into accounts.person (id, name, zone, created_at) values (?, 'Leafward', 'UTC', ?)
				on conflict (id) do nothing
				""").params(PersonId.SERVER.value(), now()).update();
		return find(PersonId.SERVER).orElseThrow();
	}

	@Override
	@Transactional
	public void confirm(PersonId id) {
		int confirmed = this.database.sql("""
				update accounts.person set confirmed_at = ?
				where id = ? and email is not null and confirmed_at is null
				""").params(now(), id.value()).update();
		if (confirmed == 1) {
			this.events.publishEvent(new AddressConfirmed(id.value()));
		}
	}

	@Override
	@Transactional
	public boolean giveAddress(PersonId id, String email) {
		boolean given = this.database.sql("""
				update accounts.person set email = ?, confirmed_at = ?
				where id = ? and email is null
					and not exists (select 1 from accounts.person other where lower(other.email) = lower(?))
				""").params(email, now(), id.value(), email).update() == 1;
		if (given) {
			this.events.publishEvent(new AddressConfirmed(id.value()));
		}
		return given;
	}

	@Override
	public void change(PersonId id, String name, ZoneId zone) {
		this.database.sql("update accounts.person set name = ?, zone = ? where id = ?")
			.params(name(name), zone.getId(), id.value())
			.update();
	}

	@Override
	public Optional<Person> find(PersonId id) {
		return this.database.sql("select * from accounts.person where id = ?")
			.param(id.value())
			.query(StoredPeople::person)
			.optional();
	}

	@Override
	public Map<PersonId, Person> find(Collection<PersonId> ids) {
		return this.database.sql("select * from accounts.person where id = any(?)")
			.param(ids.stream().map(PersonId::value).toArray(UUID[]::new))
			.query(StoredPeople::person)
			.list()
			.stream()
			.collect(Collectors.toMap(Person::id, (person) -> person));
	}

	@Override
	public List<Person> walk(@Nullable PersonId after, int size) {
		return this.database.sql("select * from accounts.person where id > ? and id <> ? order by id limit ?")
			.params((after != null) ? after.value() : new UUID(0, 0), PersonId.SERVER.value(), size)
			.query(StoredPeople::person)
			.list();
	}

	@Override
	public Optional<Person> withAddress(String email) {
		return this.database.sql("select * from accounts.person where lower(email) = lower(?)")
			.param(email.strip())
			.query(StoredPeople::person)
			.optional();
	}

	@Override
	public List<Person> list(int page, int size) {
		return this.database.sql("select * from accounts.person where id <> ? order by name, id limit ? offset ?")
			.params(PersonId.SERVER.value(), size, (long) page * size)
			.query(StoredPeople::person)
			.list();
	}

	private OffsetDateTime now() {
		return this.clock.instant().atOffset(ZoneOffset.UTC);
	}

	private static String name(String name) {
		String clean = name.strip();
		if (clean.isEmpty() || clean.length() > 100) {
			throw new BadInput("name is not 1 to 100 characters of one line", "name",
					"give the name to address them by");
		}
		return Given.line("name", clean);
	}

	private static Person person(ResultSet row, int number) throws SQLException {
		return new Person(new PersonId(row.getObject("id", UUID.class)), row.getString("name"), row.getString("email"),
				ZoneId.of(row.getString("zone")), row.getObject("confirmed_at") != null);
	}

}
