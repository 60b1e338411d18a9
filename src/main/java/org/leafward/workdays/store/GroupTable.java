package org.leafward.workdays.store;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leafward.accounts.PersonId;
import org.leafward.register.SiteId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.Skill;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Groups, who belongs to them, and the sites that they were given. */
@Repository
public class GroupTable {

	private static final String GROUP = """
			select id, name, about, zone, meeting_point, weekdays, begins, ends, capacity, away, notice, few_tools, few_tool_teams
			from workdays.volunteer_group
			""";

	private final JdbcClient database;

	GroupTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A group without those who belong to it.
	 *
	 * @param id identifier
	 * @param name what it is called
	 * @param about what it does
	 * @param zone time zone
	 * @param meetingPoint where it meets as a rule
	 * @param weekdays when it works as a rule
	 * @param begins when a workday begins
	 * @param ends when it ends
	 * @param capacity how many can come
	 * @param away when it never works
	 * @param terms what it asks of each plan
	 */
	public record GroupRow(GroupId id, String name, String about, ZoneId zone, String meetingPoint,
			Set<DayOfWeek> weekdays, LocalTime begins, LocalTime ends, int capacity, Set<LocalDate> away,
			PlanTerms terms) {
	}

	/**
	 * Somebody in a group.
	 *
	 * @param group which
	 * @param person who
	 * @param leads whether they lead
	 * @param skills what they can
	 * @param weekdays when they can come
	 * @param away when they can't
	 * @param joinedAt since when
	 */
	public record MemberRow(GroupId group, PersonId person, boolean leads, Set<Skill> skills, Set<DayOfWeek> weekdays,
			Set<LocalDate> away, Instant joinedAt) {
	}

	/**
	 * A site of a group.
	 *
	 * @param group which
	 * @param site the site
	 * @param owner whose it is
	 * @param address what members are told; empty for county and rough position
	 */
	public record SiteRow(GroupId group, SiteId site, PersonId owner, String address) {
	}

	/**
	 * Adds a group.
	 * @param group the group
	 * @param now when
	 */
	public void add(GroupRow group, Instant now) {
		this.database.sql("""
				insert into workdays.volunteer_group (id, name, about, zone, meeting_point, weekdays, begins, ends,
					capacity, away, notice, few_tools, few_tool_teams, created_at)
				values (?, ?, ?, ?, ?, ?::smallint[], ?, ?, ?, ?::date[], ?, ?::text[], ?::smallint[], ?)
				""")
			.params(group.id().value(), group.name(), group.about(), group.zone().getId(), group.meetingPoint(),
					days(group.weekdays()), group.begins(), group.ends(), group.capacity(), dates(group.away()),
					group.terms().notice(), tools(group), teams(group), now.atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * Changes all of a group but its identifier.
	 * @param group as it is to be
	 */
	public void change(GroupRow group) {
		this.database.sql("""
				update workdays.volunteer_group set name = ?, about = ?, zone = ?, meeting_point = ?,
					weekdays = ?::smallint[], begins = ?, ends = ?, capacity = ?, away = ?::date[],
					notice = ?, few_tools = ?::text[], few_tool_teams = ?::smallint[]
				where id = ?
				""")
			.params(group.name(), group.about(), group.zone().getId(), group.meetingPoint(), days(group.weekdays()),
					group.begins(), group.ends(), group.capacity(), dates(group.away()), group.terms().notice(),
					tools(group), teams(group), group.id().value())
			.update();
	}

	/**
	 * Removes a group with all that hangs on it.
	 * @param group which
	 */
	public void remove(GroupId group) {
		this.database.sql("delete from workdays.volunteer_group where id = ?").param(group.value()).update();
	}

	public Optional<GroupRow> find(GroupId group) {
		return this.database.sql(GROUP + "where id = ?").param(group.value()).query(GroupTable::group).optional();
	}

	/**
	 * Several groups by name.
	 * @param groups which
	 * @return those that are there
	 */
	public List<GroupRow> find(Collection<GroupId> groups) {
		return this.database.sql(GROUP + "where id = any(?) order by name, id")
			.param(groups.stream().map(GroupId::value).toArray(UUID[]::new))
			.query(GroupTable::group)
			.list();
	}

	/**
	 * Groups that somebody belongs to.
	 * @param person who
	 * @return by name
	 */
	public List<GroupRow> ofPerson(PersonId person) {
		return this.database
			.sql(GROUP + "where id in (select group_id from workdays.member where person_id = ?) order by name, id")
			.param(person.value())
			.query(GroupTable::group)
			.list();
	}

	/**
	 * Waits for whoever changes the group in another transaction.
	 * @param group which
	 */
	public void lock(GroupId group) {
		this.database.sql("select 1 from workdays.volunteer_group where id = ? for update")
			.param(group.value())
			.query()
			.listOfRows();
	}

	/**
	 * Waits for whoever takes somebody out of the group in another transaction, and lets
	 * nobody do so until this one ends.
	 * @param group which
	 * @param person who
	 * @return whether they belong to it
	 */
	public boolean stays(GroupId group, PersonId person) {
		return !this.database.sql("select 1 from workdays.member where group_id = ? and person_id = ? for key share")
			.params(group.value(), person.value())
			.query()
			.listOfRows()
			.isEmpty();
	}

	/**
	 * Waits for those whose membership counts in another transaction.
	 * @param group which
	 * @param person who is about to leave it
	 */
	public void goes(GroupId group, PersonId person) {
		this.database.sql("select 1 from workdays.member where group_id = ? and person_id = ? for update")
			.params(group.value(), person.value())
			.query()
			.listOfRows();
	}

	private static GroupRow group(ResultSet row, int number) throws SQLException {
		return new GroupRow(new GroupId(row.getObject("id", UUID.class)), row.getString("name"), row.getString("about"),
				ZoneId.of(row.getString("zone")), row.getString("meeting_point"), weekdays(row), time(row, "begins"),
				time(row, "ends"), row.getInt("capacity"), away(row), terms(row));
	}

	private static PlanTerms terms(ResultSet row) throws SQLException {
		List<String> tools = array(row.getArray("few_tools")).map(Object::toString).toList();
		List<Integer> teams = array(row.getArray("few_tool_teams")).map((one) -> ((Number) one).intValue()).toList();
		return new PlanTerms(row.getInt("notice"),
				IntStream.range(0, tools.size()).boxed().collect(Collectors.toMap(tools::get, teams::get)));
	}

	private static String[] tools(GroupRow group) {
		return group.terms().fewTools().keySet().stream().sorted().toArray(String[]::new);
	}

	/** In the order of the tools. */
	private static Integer[] teams(GroupRow group) {
		return Stream.of(tools(group)).map(group.terms().fewTools()::get).toArray(Integer[]::new);
	}

	static LocalTime time(ResultSet row, String column) throws SQLException {
		return row.getObject(column, LocalTime.class);
	}

	private static Set<DayOfWeek> weekdays(ResultSet row) throws SQLException {
		return array(row.getArray("weekdays")).map((one) -> DayOfWeek.of(((Number) one).intValue()))
			.collect(Collectors.toCollection(TreeSet::new));
	}

	private static Set<LocalDate> away(ResultSet row) throws SQLException {
		return array(row.getArray("away")).map((one) -> LocalDate.parse(one.toString()))
			.collect(Collectors.toCollection(TreeSet::new));
	}

	private static Stream<Object> array(Array array) throws SQLException {
		return Arrays.stream((Object[]) array.getArray());
	}

	private static Short[] days(Set<DayOfWeek> days) {
		return days.stream().map((one) -> (short) one.getValue()).sorted().toArray(Short[]::new);
	}

	private static String[] dates(Set<LocalDate> dates) {
		return dates.stream().sorted().map(LocalDate::toString).toArray(String[]::new);
	}

	/**
	 * Members of groups, those who lead first, then by when they joined.
	 * @param groups which
	 * @return never null
	 */
	public List<MemberRow> members(Collection<GroupId> groups) {
		return this.database.sql("""
				select group_id, person_id, leads, skills, weekdays, away, joined_at from workdays.member
				where group_id = any(?) order by leads desc, joined_at, person_id
				""").param(groups.stream().map(GroupId::value).toArray(UUID[]::new)).query(GroupTable::member).list();
	}

	/**
	 * Memberships of people.
	 * @param people who
	 * @return in no order that means something
	 */
	public List<MemberRow> ofPeople(Collection<PersonId> people) {
		return this.database.sql("""
				select group_id, person_id, leads, skills, weekdays, away, joined_at from workdays.member
				where person_id = any(?) order by person_id, group_id
				""").param(people.stream().map(PersonId::value).toArray(UUID[]::new)).query(GroupTable::member).list();
	}

	public List<GroupId> lookingAfter(SiteId site) {
		return this.database.sql("select group_id from workdays.group_site where site = ?")
			.param(site.value())
			.query((row, number) -> new GroupId(row.getObject("group_id", UUID.class)))
			.list();
	}

	private static MemberRow member(ResultSet row, int number) throws SQLException {
		Set<Skill> skills = array(row.getArray("skills")).map((one) -> Skill.valueOf(one.toString()))
			.collect(Collectors.toCollection(TreeSet::new));
		return new MemberRow(new GroupId(row.getObject("group_id", UUID.class)),
				new PersonId(row.getObject("person_id", UUID.class)), row.getBoolean("leads"), skills, weekdays(row),
				away(row), row.getObject("joined_at", OffsetDateTime.class).toInstant());
	}

	/**
	 * Adds somebody to a group; who belongs to it already stays as they are.
	 * @param group which
	 * @param person who
	 * @param leads whether they lead
	 * @param now when
	 * @return whether they are new
	 */
	public boolean join(GroupId group, PersonId person, boolean leads, Instant now) {
		return this.database.sql("""
				insert into workdays.member (group_id, person_id, leads, joined_at) values (?, ?, ?, ?)
				on conflict do nothing
				""").params(group.value(), person.value(), leads, now.atOffset(ZoneOffset.UTC)).update() == 1;
	}

	/**
	 * Changes what a member told of themselves.
	 * @param group which
	 * @param person who
	 * @param skills what they can
	 * @param weekdays when they can come
	 * @param away when they can't
	 * @param emergency whom to call
	 */
	public void tell(GroupId group, PersonId person, Set<Skill> skills, Set<DayOfWeek> weekdays, Set<LocalDate> away,
			String emergency) {
		this.database.sql("""
				update workdays.member set skills = ?, weekdays = ?::smallint[], away = ?::date[], emergency = ?
				where group_id = ? and person_id = ?
				""")
			.params(skills.stream().map(Enum::name).sorted().toArray(String[]::new), days(weekdays), dates(away),
					emergency, group.value(), person.value())
			.update();
	}

	/**
	 * Whom to call for each member who told.
	 * @param group which
	 * @return by person; for those who lead
	 */
	public Map<PersonId, String> emergencies(GroupId group) {
		return this.database
			.sql("select person_id, emergency from workdays.member where group_id = ? and emergency <> ''")
			.param(group.value())
			.query((row, number) -> Map.entry(new PersonId(row.getObject("person_id", UUID.class)),
					row.getString("emergency")))
			.list()
			.stream()
			.collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
	}

	public void lead(GroupId group, PersonId person, boolean leads) {
		this.database.sql("update workdays.member set leads = ? where group_id = ? and person_id = ?")
			.params(leads, group.value(), person.value())
			.update();
	}

	public void leave(GroupId group, PersonId person) {
		this.database.sql("delete from workdays.member where group_id = ? and person_id = ?")
			.params(group.value(), person.value())
			.update();
	}

	/**
	 * Sites of groups.
	 * @param groups which
	 * @return in the order in which they were given
	 */
	public List<SiteRow> sites(Collection<GroupId> groups) {
		return this.database.sql("""
				select group_id, site, owner, address from workdays.group_site
				where group_id = any(?) order by given_at, site
				""")
			.param(groups.stream().map(GroupId::value).toArray(UUID[]::new))
			.query((row, number) -> new SiteRow(new GroupId(row.getObject("group_id", UUID.class)),
					new SiteId(row.getObject("site", UUID.class)), new PersonId(row.getObject("owner", UUID.class)),
					row.getString("address")))
			.list();
	}

	/**
	 * Gives a site to a group, or changes what is told of where it is.
	 * @param row the site
	 * @param now when
	 */
	public void give(SiteRow row, Instant now) {
		this.database.sql("""
				insert into workdays.group_site (group_id, site, owner, address, given_at) values (?, ?, ?, ?, ?)
				on conflict (group_id, site) do update set address = excluded.address, owner = excluded.owner
				""")
			.params(row.group().value(), row.site().value(), row.owner().value(), row.address(),
					now.atOffset(ZoneOffset.UTC))
			.update();
	}

	public void takeBack(GroupId group, SiteId site) {
		this.database.sql("delete from workdays.group_site where group_id = ? and site = ?")
			.params(group.value(), site.value())
			.update();
	}

	/**
	 * Takes the tasks of a site from workdays of a group.
	 * @param group whose
	 * @param site which
	 * @param from first day
	 */
	public void clear(GroupId group, SiteId site, LocalDate from) {
		this.database.sql("""
				delete from workdays.workday_task using workdays.workday
				where workday.id = workday_task.workday and group_id = ? and site = ? and day >= ?
				""").params(group.value(), site.value(), from).update();
	}

	/**
	 * A group that lost those who led it is led by who has been there longest; one that
	 * nobody is left in goes.
	 */
	public void care() {
		this.database.sql("""
				delete from workdays.volunteer_group
				where not exists (select from workdays.member where group_id = volunteer_group.id)
				""").update();
		this.database.sql("""
				update workdays.member set leads = true
				where not exists (select from workdays.member other
						where other.group_id = member.group_id and other.leads)
					and person_id = (select person_id from workdays.member oldest
						where oldest.group_id = member.group_id order by joined_at, person_id limit 1)
				""").update();
	}

}
