package org.leafward.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** People in the database. */
@Service
class StoredPeople implements People {

	/**
	 * A local part, an at sign, a domain with a dot or a local host; the mail server has
	 * the last word.
	 */
	private static final Pattern ADDRESS = Pattern
		.compile("[^\\s\\p{Cntrl}\\p{Cs}@<>\",;:]{1,64}@[A-Za-z0-9-]+(\\.[A-Za-z0-9-]+)*");

	private final JdbcClient database;

	private final Clock clock;

	StoredPeople(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	@Override
	@Transactional
	public Person join(String name, String email, ZoneId zone) {
		String cleanName = name.strip();
		String cleanEmail = email.strip();
		if (cleanName.isEmpty() || cleanName.length() > 100) {
			throw new BadInput("name is not 1 to 100 characters of one line", "name",
					"give the name to address them by");
		}
		Given.line("name", cleanName);
		if (cleanEmail.length() > 254 || !ADDRESS.matcher(cleanEmail).matches()) {
			throw new BadInput("'%s' is not an e-mail address".formatted(cleanEmail), "email",
					"write it like ada@example.org");
		}
		this.database.sql("""
				insert into accounts.person (id, name, email, zone, created_at) values (?, ?, ?, ?, ?)
				on conflict (lower(email)) do nothing
				""")
			.params(UUID.randomUUID(), cleanName, cleanEmail, zone.getId(),
					this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
		return this.database.sql("select * from accounts.person where lower(email) = lower(?)")
			.param(cleanEmail)
			.query(StoredPeople::person)
			.single();
	}

	@Override
	public Optional<Person> find(PersonId id) {
		return this.database.sql("select * from accounts.person where id = ?")
			.param(id.value())
			.query(StoredPeople::person)
			.optional();
	}

	@Override
	public List<Person> list(int page, int size) {
		return this.database.sql("select * from accounts.person order by name, id limit ? offset ?")
			.params(size, (long) page * size)
			.query(StoredPeople::person)
			.list();
	}

	private static Person person(ResultSet row, int number) throws SQLException {
		return new Person(new PersonId(row.getObject("id", UUID.class)), row.getString("name"), row.getString("email"),
				ZoneId.of(row.getString("zone")));
	}

}
