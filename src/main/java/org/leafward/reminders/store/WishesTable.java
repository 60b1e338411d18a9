package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * How people want to be told. Who never chose has no row, and of what was chosen only
 * that is kept which differs from what is usual.
 */
@Repository
public class WishesTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public WishesTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * The wishes of several people, by three questions for all of them.
	 * @param people who, some hundreds at most
	 * @return of each of them; {@link Wishes#USUAL} of those who never chose
	 */
	public Map<PersonId, Wishes> of(Collection<PersonId> people) {
		if (people.isEmpty()) {
			return Map.of();
		}
		List<UUID> ids = people.stream().map(PersonId::value).distinct().toList();
		Map<UUID, Wishes> plain = plain(ids);
		Map<UUID, Map<String, Map<Topic, Wish>>> chosen = chosen(ids);
		Map<UUID, Map<String, Set<Series>>> stopped = stopped(ids);
		Map<PersonId, Wishes> all = new LinkedHashMap<>();
		ids.forEach((id) -> all.put(new PersonId(id), whole(plain.getOrDefault(id, Wishes.USUAL),
				chosen.getOrDefault(id, Map.of()), stopped.getOrDefault(id, Map.of()))));
		return all;
	}

	/**
	 * The wishes of one person.
	 * @param person who
	 * @return {@link Wishes#USUAL} when they never chose
	 */
	public Wishes of(PersonId person) {
		return of(List.of(person)).getOrDefault(person, Wishes.USUAL);
	}

	/**
	 * Keeps what a person chose, in the caller's transaction. The row of the person is
	 * written first, so that of two at once the later waits for the earlier. Series that
	 * were left are not touched; see {@link #stop} and {@link #resume}.
	 * @param person who
	 * @param wishes all that they want
	 */
	public void save(PersonId person, Wishes wishes) {
		savePlain(person, wishes);
		this.database.sql("delete from reminders.wish where person_id = ?").param(person.value()).update();
		wishes.chosen()
			.forEach((channel, topics) -> topics.forEach((topic, wish) -> save(person, channel, topic, wish)));
	}

	/**
	 * Ends a pause.
	 * @param person who is back
	 * @return false when there was none
	 */
	public boolean endPause(PersonId person) {
		return this.database
			.sql("update reminders.wishes set paused_until = null where person_id = ? and paused_until is not null")
			.param(person.value())
			.update() > 0;
	}

	/**
	 * Leaves a series.
	 * @param person who
	 * @param channel code of the channel
	 * @param series what no longer goes out
	 * @param at since when
	 * @return false when it was left before
	 */
	public boolean stop(PersonId person, String channel, Series series, Instant at) {
		return this.database.sql("""
				insert into reminders.stopped (person_id, channel, series, since)
				values (:person, :channel, :series, :at)
				on conflict (person_id, channel, series) do nothing
				""")
			.param("person", person.value())
			.param("channel", channel)
			.param("series", series.code())
			.param("at", Rows.time(at))
			.update() > 0;
	}

	/**
	 * Comes back to a series that was left.
	 * @param person who
	 * @param channel code of the channel
	 * @param series what goes out again
	 * @return false when it wasn't left
	 */
	public boolean resume(PersonId person, String channel, Series series) {
		return this.database.sql("""
				delete from reminders.stopped
				where person_id = :person and channel = :channel and series = :series
				""")
			.param("person", person.value())
			.param("channel", channel)
			.param("series", series.code())
			.update() > 0;
	}

	private void savePlain(PersonId person, Wishes wishes) {
		this.database.sql("""
				insert into reminders.wishes
				(person_id, language, units, morning, outlook_day, quiet_from, quiet_to, urgent_anyway, paused_until)
				values (:person, :language, :units, :morning, :outlook, :from, :to, :urgent, :paused)
				on conflict (person_id) do update
				set language = excluded.language, units = excluded.units, morning = excluded.morning,
					outlook_day = excluded.outlook_day, quiet_from = excluded.quiet_from, quiet_to = excluded.quiet_to,
					urgent_anyway = excluded.urgent_anyway, paused_until = excluded.paused_until
				""")
			.param("person", person.value())
			.param("language", wishes.speech().language().code())
			.param("units", wishes.speech().units().code())
			.param("morning", wishes.morning())
			.param("outlook", wishes.outlookDay().getValue())
			.param("from", wishes.quiet().from())
			.param("to", wishes.quiet().to())
			.param("urgent", wishes.urgentAnyway())
			.param("paused", wishes.pausedUntil())
			.update();
	}

	private void save(PersonId person, String channel, Topic topic, Wish wish) {
		if (wish.equals(Wishes.usual(channel, topic))) {
			return;
		}
		this.database.sql("""
				insert into reminders.wish (person_id, channel, topic, manner, lead_days)
				values (:person, :channel, :topic, :manner, :lead)
				""")
			.param("person", person.value())
			.param("channel", channel)
			.param("topic", topic.code())
			.param("manner", wish.manner().code())
			.param("lead", wish.leadDays())
			.update();
	}

	private Map<UUID, Wishes> plain(List<UUID> ids) {
		Map<UUID, Wishes> all = new HashMap<>();
		this.database.sql("select * from reminders.wishes where person_id in (:ids)").param("ids", ids).query((row) -> {
			all.put(row.getObject("person_id", UUID.class), plain(row));
		});
		return all;
	}

	private static Wishes plain(ResultSet row) throws SQLException {
		Speech speech = new Speech(Language.of("language", row.getString("language")),
				Units.of("units", row.getString("units")));
		QuietHours quiet = new QuietHours(row.getObject("quiet_from", LocalTime.class),
				row.getObject("quiet_to", LocalTime.class));
		return new Wishes(speech, row.getObject("morning", LocalTime.class), DayOfWeek.of(row.getInt("outlook_day")),
				quiet, row.getBoolean("urgent_anyway"), row.getObject("paused_until", LocalDate.class), Map.of(),
				Map.of());
	}

	private Map<UUID, Map<String, Map<Topic, Wish>>> chosen(List<UUID> ids) {
		Map<UUID, Map<String, Map<Topic, Wish>>> all = new HashMap<>();
		this.database.sql("select * from reminders.wish where person_id in (:ids)").param("ids", ids).query((row) -> {
			all.computeIfAbsent(row.getObject("person_id", UUID.class), (id) -> new HashMap<>())
				.computeIfAbsent(row.getString("channel"), (channel) -> new EnumMap<>(Topic.class))
				.put(Topic.of(row.getString("topic")),
						new Wish(Manner.of(row.getString("manner")), row.getInt("lead_days")));
		});
		return all;
	}

	private Map<UUID, Map<String, Set<Series>>> stopped(List<UUID> ids) {
		Map<UUID, Map<String, Set<Series>>> all = new HashMap<>();
		this.database.sql("select * from reminders.stopped where person_id in (:ids)")
			.param("ids", ids)
			.query((row) -> {
				all.computeIfAbsent(row.getObject("person_id", UUID.class), (id) -> new HashMap<>())
					.computeIfAbsent(row.getString("channel"), (channel) -> EnumSet.noneOf(Series.class))
					.add(Series.of(row.getString("series")));
			});
		return all;
	}

	private static Wishes whole(Wishes plain, Map<String, Map<Topic, Wish>> chosen, Map<String, Set<Series>> stopped) {
		return (chosen.isEmpty() && stopped.isEmpty()) ? plain : new Wishes(plain.speech(), plain.morning(),
				plain.outlookDay(), plain.quiet(), plain.urgentAnyway(), plain.pausedUntil(), chosen, stopped);
	}

}
