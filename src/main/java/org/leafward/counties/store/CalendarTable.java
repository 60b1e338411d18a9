package org.leafward.counties.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.leafward.counties.Coming;
import org.leafward.counties.CountyCalendar;
import org.leafward.counties.core.CountyAddress;
import org.leafward.feeds.FeedDocument;
import org.leafward.measure.DayWindow;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Calendars of counties. */
@Repository
public class CalendarTable {

	private static final String STATE = "path, etag, last_modified, ahead_by, version, day, asked_at, "
			+ "coming_from, coming_to, coming_words";

	private final JdbcClient database;

	CalendarTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * The address of a calendar that waits.
	 *
	 * @param path its address
	 * @param county code of its county
	 * @param kinds codes of its kinds with plus signs between
	 * @param speech language and units with a hyphen between
	 */
	public record Waiting(String path, String county, String kinds, String speech) {
	}

	/**
	 * Lets nobody else build a calendar before this transaction ends.
	 * @param path its address
	 */
	public void lock(String path) {
		this.database.sql("select pg_advisory_xact_lock(hashtextextended(?, 81))")
			.param(path)
			.query((row, number) -> true)
			.single();
	}

	public Optional<CountyCalendar> find(String path) {
		return this.database.sql("select " + STATE + " from counties.calendar where path = ?")
			.param(path)
			.query(CalendarTable::calendar)
			.optional();
	}

	public Optional<FeedDocument> document(String path) {
		return this.database.sql("select packed, etag, last_modified from counties.calendar where path = ?")
			.param(path)
			.query((row, number) -> new FeedDocument(row.getBytes("packed"), row.getString("etag"),
					instant(row, "last_modified")))
			.optional();
	}

	/**
	 * Writes a calendar, or another version of it.
	 * @param address its address
	 * @param state what is known of it; when it was asked for counts for a new one only
	 * @param document its octets
	 */
	public void store(CountyAddress address, CountyCalendar state, FeedDocument document) {
		LocalDate[] from = state.coming().stream().map((one) -> one.window().from()).toArray(LocalDate[]::new);
		LocalDate[] to = state.coming().stream().map((one) -> one.window().to()).toArray(LocalDate[]::new);
		String[] words = state.coming().stream().map(Coming::words).toArray(String[]::new);
		this.database
			.sql("""
					insert into counties.calendar (path, county, kinds, speech, usual, packed, etag, last_modified, ahead_by,
						version, day, coming_from, coming_to, coming_words, asked_at)
					values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?::date[], ?::date[], ?, ?)
					on conflict (path) do update set packed = excluded.packed, etag = excluded.etag,
						last_modified = excluded.last_modified, ahead_by = excluded.ahead_by, version = excluded.version,
						day = excluded.day, coming_from = excluded.coming_from, coming_to = excluded.coming_to,
						coming_words = excluded.coming_words, retry_at = null
					""")
			.params(address.path(), address.county(), address.kindsCode(), address.speechCode(), address.usual(),
					document.packed(), document.etag(), document.lastModified().atOffset(ZoneOffset.UTC),
					state.aheadBy(), state.version(), state.day(), texts(from), texts(to), words,
					state.askedAt().atOffset(ZoneOffset.UTC))
			.update();
	}

	private static String[] texts(LocalDate[] days) {
		String[] texts = new String[days.length];
		for (int i = 0; i < days.length; i++) {
			texts[i] = days[i].toString();
		}
		return texts;
	}

	/**
	 * Notes that somebody asked for a calendar.
	 * @param path its address
	 * @param at when
	 */
	public void asked(String path, Instant at) {
		this.database.sql("update counties.calendar set asked_at = ? where path = ?")
			.params(at.atOffset(ZoneOffset.UTC), path)
			.update();
	}

	/**
	 * Drops the calendars of a county that nobody asked for the longest time.
	 * @param county code of the county
	 * @param most how many stay, beside those that always do
	 */
	public void drop(String county, int most) {
		this.database.sql("""
				delete from counties.calendar where path in (select path from counties.calendar
					where county = ? and not usual order by asked_at desc, path offset ?)
				""").params(county, most).update();
	}

	public void remove(String path) {
		this.database.sql("delete from counties.calendar where path = ?").param(path).update();
	}

	/**
	 * A calendar that is to be built anew.
	 * @param counties codes of the counties that there are
	 * @param day the day
	 * @param now the moment
	 * @return the one that waits longest
	 */
	public Optional<Waiting> stale(Collection<String> counties, LocalDate day, Instant now) {
		return this.database.sql("""
				select c.path, c.county, c.kinds, c.speech from counties.calendar c
					join counties.garden g on g.county = c.county
				where (c.version < g.version or c.day < ?) and (c.retry_at is null or c.retry_at <= ?)
					and c.county = any(?)
				order by c.day, c.county, c.asked_at desc, c.path limit 1
				""")
			.params(day, now.atOffset(ZoneOffset.UTC), counties.toArray(String[]::new))
			.query((row, number) -> new Waiting(row.getString(1), row.getString(2), row.getString(3), row.getString(4)))
			.optional();
	}

	/**
	 * Lets a calendar that couldn't be built wait.
	 * @param path its address
	 * @param until when to try again
	 */
	public void retry(String path, Instant until) {
		this.database.sql("update counties.calendar set retry_at = ? where path = ?")
			.params(until.atOffset(ZoneOffset.UTC), path)
			.update();
	}

	/**
	 * The calendars of a county that always stay.
	 * @param county code of the county
	 * @return their kinds
	 */
	public Set<String> usual(String county) {
		return Set.copyOf(this.database.sql("select kinds from counties.calendar where county = ? and usual")
			.param(county)
			.query(String.class)
			.list());
	}

	private static CountyCalendar calendar(ResultSet row, int number) throws SQLException {
		Object[] from = (Object[]) row.getArray("coming_from").getArray();
		Object[] to = (Object[]) row.getArray("coming_to").getArray();
		Object[] words = (Object[]) row.getArray("coming_words").getArray();
		List<Coming> coming = new ArrayList<>();
		for (int i = 0; i < words.length; i++) {
			coming.add(new Coming(new DayWindow(LocalDate.parse(from[i].toString()), LocalDate.parse(to[i].toString())),
					words[i].toString()));
		}
		return new CountyCalendar(row.getString("path"), row.getString("etag"), instant(row, "last_modified"),
				row.getInt("ahead_by"), row.getLong("version"), row.getObject("day", LocalDate.class),
				instant(row, "asked_at"), coming);
	}

	private static Instant instant(ResultSet row, String column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

}
