package org.leafward.accounts.store;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.leafward.accounts.Granted;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Roles in the database. */
@Service
class StoredRoles implements Roles {

	private static final int LONGEST_COUNTY = 100;

	private final JdbcClient database;

	private final Clock clock;

	StoredRoles(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	@Override
	public Granted of(PersonId person) {
		Set<Role> roles = EnumSet.noneOf(Role.class);
		Set<String> counties = new TreeSet<>();
		this.database.sql("select role, county from accounts.role where person = ?")
			.param(person.value())
			.query((row) -> {
				roles.add(Role.valueOf(row.getString("role")));
				if (!row.getString("county").isEmpty()) {
					counties.add(row.getString("county"));
				}
			});
		return roles.isEmpty() ? Granted.NOTHING : new Granted(roles, counties);
	}

	@Override
	public void grant(PersonId person, Role role, String county) {
		this.database.sql("""
				insert into accounts.role (person, role, county, granted_at) values (?, ?, ?, ?)
				on conflict do nothing
				""")
			.params(person.value(), role.name(), county(role, county), this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
	}

	@Override
	public void withdraw(PersonId person, Role role, String county) {
		this.database.sql("delete from accounts.role where person = ? and role = ? and lower(county) = lower(?)")
			.params(person.value(), role.name(), county.strip())
			.update();
	}

	@Override
	public List<PersonId> serving(String county) {
		return this.database.sql("""
				select person, min(case role when 'SPECIALIST' then 0 else 1 end) as place from accounts.role
				where (role = 'SPECIALIST' and lower(county) = lower(?)) or role = 'COORDINATOR'
				group by person order by place, person limit 200
				""")
			.param(county.strip())
			.query((row, number) -> new PersonId(row.getObject("person", UUID.class)))
			.list();
	}

	private static String county(Role role, String county) {
		String clean = county.strip();
		if ((role == Role.SPECIALIST) == clean.isEmpty()) {
			throw new BadInput(
					(role == Role.SPECIALIST) ? "county is missing" : "county '%s' has no use".formatted(clean),
					"county", (role == Role.SPECIALIST) ? "name the county that the specialist serves"
							: "leave it empty; only specialists have counties");
		}
		if (clean.length() > LONGEST_COUNTY) {
			throw new BadInput("county is longer than %d characters".formatted(LONGEST_COUNTY), "county",
					"give its name as sites are registered with it");
		}
		return Given.line("county", clean);
	}

}
