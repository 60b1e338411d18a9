package org.leafward.feeds.ical;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.leafward.feeds.core.FeedEntry;

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
