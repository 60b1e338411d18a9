package org.leafward.feeds.ical;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.component.VTodo;
import biweekly.io.text.ICalReader;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedEntry.Standing;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Reads a feed back with a second calendar library (biweekly 0.6.8), which shares no code
 * with the one that wrote it.
 */
public final class FeedReading {

	private FeedReading() {
	}

	/**
	 * What a reader sees of an entry.
	 *
	 * @param uid identifier
	 * @param summary title
	 * @param description text
	 * @param from first day
	 * @param end the day after the last
	 * @param status STATUS
	 */
	public record Seen(String uid, String summary, String description, LocalDate from, LocalDate end, String status) {

		static Seen of(FeedEntry entry) {
			return new Seen(entry.uid(), entry.summary(), entry.description(), entry.window().from(),
					entry.window().endExclusive(), entry.cancelled() ? "CANCELLED" : "CONFIRMED");
		}

	}

	/**
	 * Reads a feed, insisting on no reader warning and no validation problem.
	 * @param octets the feed
	 * @return its events in order
	 */
	public static List<Seen> read(byte[] octets) {
		List<Seen> seen = new ArrayList<>();
		for (VEvent event : calendar(octets).getEvents()) {
			seen.add(new Seen(event.getUid().getValue(), event.getSummary().getValue(),
					event.getDescription().getValue(), day(event.getDateStart().getValue()),
					day(event.getDateEnd().getValue()), event.getStatus().getValue()));
		}
		return seen;
	}

	/**
	 * What a reader sees of a to-do.
	 *
	 * @param uid identifier
	 * @param summary title
	 * @param description text
	 * @param from first day; null for a to-do of one day
	 * @param due last day
	 * @param status STATUS
	 * @param completed when it was done; null unless it was
	 */
	public record SeenTodo(String uid, String summary, String description, LocalDate from, LocalDate due, String status,
			Instant completed) {

		static SeenTodo of(FeedEntry entry) {
			boolean done = entry.standing() == Standing.DONE;
			return new SeenTodo(entry.uid(), entry.summary(), entry.description(),
					(entry.window().days() > 1) ? entry.window().from() : null, entry.window().to(),
					(entry.standing() == Standing.OPEN) ? "NEEDS-ACTION" : done ? "COMPLETED" : "CANCELLED",
					done ? entry.changed() : null);
		}

	}

	/**
	 * Reads a feed of to-dos as {@link #read} does one of entries.
	 * @param octets the feed
	 * @return its to-dos in order
	 */
	public static List<SeenTodo> readTodos(byte[] octets) {
		List<SeenTodo> seen = new ArrayList<>();
		for (VTodo todo : calendar(octets).getTodos()) {
			seen.add(new SeenTodo(todo.getUid().getValue(), todo.getSummary().getValue(),
					todo.getDescription().getValue(),
					(todo.getDateStart() != null) ? day(todo.getDateStart().getValue()) : null,
					day(todo.getDateDue().getValue()), todo.getStatus().getValue(),
					(todo.getCompleted() != null) ? todo.getCompleted().getValue().toInstant() : null));
		}
		return seen;
	}

	/**
	 * The revision under which a feed shows something.
	 *
	 * @param sequence SEQUENCE
	 * @param modified LAST-MODIFIED
	 */
	public record Stamp(int sequence, Instant modified) {
	}

	/**
	 * The revisions of a feed of either form.
	 * @param octets the feed
	 * @return by identifier
	 */
	public static Map<String, Stamp> stamps(byte[] octets) {
		ICalendar calendar = calendar(octets);
		Map<String, Stamp> stamps = new TreeMap<>();
		calendar.getEvents()
			.forEach((event) -> stamps.put(event.getUid().getValue(),
					new Stamp(event.getSequence().getValue(), event.getLastModified().getValue().toInstant())));
		calendar.getTodos()
			.forEach((todo) -> stamps.put(todo.getUid().getValue(),
					new Stamp(todo.getSequence().getValue(), todo.getLastModified().getValue().toInstant())));
		return stamps;
	}

	/**
	 * Insists that another library finds nothing to complain about.
	 * @param octets a feed of either form
	 * @return entries and to-dos
	 */
	public static int count(byte[] octets) {
		ICalendar calendar = calendar(octets);
		return calendar.getEvents().size() + calendar.getTodos().size();
	}

	static ICalendar calendar(byte[] octets) {
		try (ICalReader reader = new ICalReader(new String(octets, StandardCharsets.UTF_8))) {
			ICalendar calendar = reader.readNext();
			assertThat(reader.getWarnings()).isEmpty();
			assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).as("%s", calendar.validate(ICalVersion.V2_0))
				.isTrue();
			assertThat(reader.readNext()).isNull();
			return calendar;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static LocalDate day(ICalDate date) {
		assertThat(date.hasTime()).isFalse();
		return LocalDate.of(date.getRawComponents().getYear(), date.getRawComponents().getMonth(),
				date.getRawComponents().getDate());
	}

}
