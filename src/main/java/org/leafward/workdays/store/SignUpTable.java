package org.leafward.workdays.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.WorkdayId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who comes to a workday, who waits, and how long they worked. */
@Repository
public class SignUpTable {

	private static final String SIGN_UP = """
			select workday, person_id, state, children, guardian, since, minutes from workdays.sign_up
			""";

	private final JdbcClient database;

	SignUpTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Sign-ups of workdays, the earliest first.
	 * @param workdays which
	 * @return of every state
	 */
	public List<SignUp> of(Collection<WorkdayId> workdays) {
		return this.database.sql(SIGN_UP + "where workday = any(?) order by since, person_id")
			.param(workdays.stream().map(WorkdayId::value).toArray(UUID[]::new))
			.query(SignUpTable::signUp)
			.list();
	}

	public Optional<SignUp> find(WorkdayId workday, PersonId person) {
		return this.database.sql(SIGN_UP + "where workday = ? and person_id = ?")
			.params(workday.value(), person.value())
			.query(SignUpTable::signUp)
			.optional();
	}

	/**
	 * Writes a sign-up, whether it is new or not.
	 * @param signUp the sign-up
	 */
	public void put(SignUp signUp) {
		this.database.sql("""
				insert into workdays.sign_up (workday, person_id, state, children, guardian, since, minutes)
				values (?, ?, ?, ?, ?, ?, ?)
				on conflict (workday, person_id) do update set state = excluded.state, children = excluded.children,
					guardian = excluded.guardian, since = excluded.since, minutes = excluded.minutes
				""")
			.params(Arrays.asList(signUp.workday().value(), signUp.person().value(), signUp.state().name(),
					signUp.children(), signUp.guardian(), signUp.since().atOffset(ZoneOffset.UTC), signUp.minutes()))
			.update();
	}

	/**
	 * Who was asked by mail.
	 * @param workdays to which
	 * @param people who
	 * @return pairs of both
	 */
	public Set<Asked> asked(Collection<WorkdayId> workdays, Collection<PersonId> people) {
		return this.database
			.sql("select workday, person_id from workdays.asked where workday = any(?) and person_id = any(?)")
			.params(workdays.stream().map(WorkdayId::value).toArray(UUID[]::new),
					people.stream().map(PersonId::value).toArray(UUID[]::new))
			.query((row, number) -> new Asked(new WorkdayId(row.getObject(1, UUID.class)),
					new PersonId(row.getObject(2, UUID.class))))
			.list()
			.stream()
			.collect(Collectors.toSet());
	}

	/**
	 * Somebody who was asked to come.
	 *
	 * @param workday to what
	 * @param person who
	 */
	public record Asked(WorkdayId workday, PersonId person) {
	}

	/**
	 * Notes that somebody was asked.
	 * @param asked who, to what
	 * @param hash of the token in the mail
	 * @param now when
	 */
	public void ask(Asked asked, byte[] hash, Instant now) {
		this.database.sql("""
				insert into workdays.asked (workday, person_id, hash, at) values (?, ?, ?, ?)
				on conflict (workday, person_id) do update set at = excluded.at
				""")
			.params(asked.workday().value(), asked.person().value(), hash, now.atOffset(ZoneOffset.UTC))
			.update();
	}

	public Optional<Asked> askedBy(byte[] hash) {
		return this.database.sql("select workday, person_id from workdays.asked where hash = ?")
			.param(hash)
			.query((row, number) -> new Asked(new WorkdayId(row.getObject(1, UUID.class)),
					new PersonId(row.getObject(2, UUID.class))))
			.optional();
	}

	private static SignUp signUp(ResultSet row, int number) throws SQLException {
		@Nullable Integer minutes = row.getObject("minutes", Integer.class);
		return new SignUp(new WorkdayId(row.getObject("workday", UUID.class)),
				new PersonId(row.getObject("person_id", UUID.class)), SignUpState.valueOf(row.getString("state")),
				row.getInt("children"), row.getBoolean("guardian"),
				row.getObject("since", OffsetDateTime.class).toInstant(), minutes);
	}

}
