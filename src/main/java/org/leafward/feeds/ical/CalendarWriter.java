package org.leafward.feeds.ical;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.jspecify.annotations.Nullable;
import org.leafward.calendars.PlainText;
import org.leafward.calendars.ZoneText;
import org.leafward.feeds.core.FeedEntry.Meeting;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.Revision;
import org.leafward.feeds.ical.Shown.Block;

/**
 * Writes a calendar as RFC 5545 octets with the calendar properties of RFC 7986. The same
 * entries give the same octets: nothing here reads a clock, and no stamp is the library's
 * own. There is no METHOD (it would bring in RFC 5546 and its ORGANIZER), no GEO and no
 * SOURCE (it would repeat the secret address).
 */
public final class CalendarWriter {

	/**
	 * Most octets of a document. A widely used client refuses about 1 MB; below that
	 * there is room for what proxies add.
	 */
	public static final int MOST_OCTETS = 900_000;

	/** How often to ask again for what changes daily; common practice. */
	private static final Duration REFRESH = Duration.ofHours(12);

	private static final String END = "END:VCALENDAR\r\n";

	/**
	 * What stands at the head of a calendar.
	 *
	 * @param name what it is called
	 * @param about what it holds, in a sentence
	 * @param language its language, a tag of BCP 47
	 * @param refresh how soon to ask again, whole hours
	 */
	public record Head(String name, String about, String language, Duration refresh) {

		/**
		 * The head of a calendar that is asked for twice a day.
		 * @param name what it is called
		 * @param about what it holds
		 * @param language its language
		 */
		public Head(String name, String about, String language) {
			this(name, about, language, REFRESH);
		}

	}

	/**
	 * What came before.
	 *
	 * @param octets the document as it was; empty for a first one
	 * @param aheadBy how far its sequence numbers have run ahead
	 * @param now the moment of this document, whole seconds
	 */
	public record Before(byte[] octets, int aheadBy, Instant now) {

		/**
		 * Nothing came before.
		 * @param now the moment of this document, whole seconds
		 * @return for a first document
		 */
		public static Before nothing(Instant now) {
			return new Before(new byte[0], 0, now);
		}

		/**
		 * What the document before showed.
		 * @return identifiers of its entries
		 */
		public Set<String> shown() {
			return Set.copyOf(Shown.of(this.octets).keySet());
		}

	}

	/**
	 * A document.
	 *
	 * @param octets text/calendar in UTF-8
	 * @param aheadBy how far its sequence numbers have run ahead of those of its entries
	 */
	public record Written(byte[] octets, int aheadBy) {
	}

	/**
	 * Writes a calendar. What looks as it did in the document before keeps its revision,
	 * everything else gets a higher one.
	 * @param head what stands at its head
	 * @param entries one or more, in the order to write them
	 * @param form as entries or as to-dos
	 * @param alarm time of day of an alarm on the first day of what is open; null for
	 * none
	 * @param before the document before
	 * @return at most {@link #MOST_OCTETS}; entries farthest in the future are left out
	 * when there is no room
	 * @throws IllegalArgumentException for no entries (RFC 5545 section 3.6)
	 */
	public Written write(Head head, List<FeedEntry> entries, Component form, @Nullable LocalTime alarm, Before before) {
		if (entries.isEmpty()) {
			throw new IllegalArgumentException("a calendar needs an entry");
		}
		Lines lines = new Lines();
		byte[] begin = lines.add("BEGIN:VCALENDAR\r\n" + lines(calendar(head)) + zones(entries)).take();
		byte[] end = lines.add(END).take();
		Map<String, Shown.Entry> shown = Shown.of(before.octets());
		Map<String, Block> blocks = new HashMap<>();
		int aheadBy = before.aheadBy();
		for (FeedEntry entry : entries) {
			form.write(lines, entry, alarm);
			byte[] looks = lines.take();
			Shown.Entry was = shown.get(entry.uid());
			Shown.Entry same = (was != null && was.looksLike(looks)) ? was : null;
			Revision revision = (same != null) ? same.revision() : revision(entry, was, before);
			aheadBy = Math.max(aheadBy, revision.sequence() - entry.sequence());
			blocks.put(entry.uid(), (same != null) ? same.block() : stamped(lines, looks, revision));
		}
		long room = MOST_OCTETS - begin.length - end.length;
		List<Block> all = new ArrayList<>();
		all.add(new Block(begin, 0, begin.length));
		FeedWindow.fitting(entries, (each) -> block(blocks, each).length(), room)
			.forEach((each) -> all.add(block(blocks, each)));
		all.add(new Block(end, 0, end.length));
		return new Written(joined(all), aheadBy);
	}

	private static byte[] joined(List<Block> blocks) {
		byte[] all = new byte[blocks.stream().mapToInt(Block::length).sum()];
		int at = 0;
		for (Block block : blocks) {
			System.arraycopy(block.octets(), block.from(), all, at, block.length());
			at += block.length();
		}
		return all;
	}

	/** A widely used client needs a VTIMEZONE for each TZID, also for well-known ones. */
	private static String zones(List<FeedEntry> entries) {
		return entries.stream()
			.map(FeedEntry::meeting)
			.filter(Objects::nonNull)
			.map((meeting) -> meeting.start().getZone())
			.distinct()
			.sorted(Comparator.comparing(ZoneId::getId))
			.map(ZoneText::of)
			.collect(Collectors.joining());
	}

	/** Of an entry that looks otherwise than before. */
	private static Revision revision(FeedEntry entry, Shown.@Nullable Entry was, Before before) {
		return (before.octets().length == 0) ? Revision.first(entry, before.aheadBy())
				: Revision.next(entry, (was != null) ? was.revision() : null, before.aheadBy(), before.now());
	}

	/**
	 * The revision stands behind the identifier, which is the second line; a long one is
	 * folded.
	 */
	private static Block stamped(Lines lines, byte[] looks, Revision revision) {
		int behind = Shown.next(looks, Shown.next(looks, 0));
		while (looks[behind] == ' ') {
			behind = Shown.next(looks, behind);
		}
		Shown.write(lines, revision);
		byte[] stamp = lines.take();
		byte[] all = new byte[looks.length + stamp.length];
		System.arraycopy(looks, 0, all, 0, behind);
		System.arraycopy(stamp, 0, all, behind, stamp.length);
		System.arraycopy(looks, behind, all, behind + stamp.length, looks.length - behind);
		return new Block(all, 0, all.length);
	}

	private static Block block(Map<String, Block> blocks, FeedEntry entry) {
		return Objects.requireNonNull(blocks.get(entry.uid()));
	}

	private static String lines(PropertyList properties) {
		StringBuilder lines = new StringBuilder();
		properties.getAll().forEach(lines::append);
		return lines.toString();
	}

	private static PropertyList calendar(Head head) {
		String name = PlainText.line(head.name());
		String about = PlainText.clean(head.about());
		String language = head.language().toUpperCase(Locale.ROOT);
		return new PropertyList(List.of(ImmutableVersion.VERSION_2_0,
				new ProdId("-//Leafward//Plant care//" + language), ImmutableCalScale.GREGORIAN, new Name(name),
				new XProperty("X-WR-CALNAME", name), new Description(about), new XProperty("X-WR-CALDESC", about),
				new RefreshInterval(new ParameterList(List.of(Value.DURATION)), head.refresh()),
				new XProperty("X-PUBLISHED-TTL", head.refresh().toString()),
				// COLOR wants a CSS name, the older property its value; the two agree.
				new Color(new ParameterList(), "olivedrab"), new XProperty("X-APPLE-CALENDAR-COLOR", "#6B8E23")));
	}

	/** The kind of component that an entry becomes. */
	public enum Component {

		/** An all-day entry. */
		EVENT("VEVENT") {
			@Override
			void times(Lines lines, FeedEntry entry) {
				Meeting meeting = entry.meeting();
				if (meeting != null) {
					lines.add(ZoneText.at("DTSTART", meeting.start())).add(ZoneText.at("DTEND", meeting.end()));
				}
				else {
					lines.day("DTSTART", entry.window().from()).day("DTEND", entry.window().endExclusive());
				}
			}

			@Override
			void standing(Lines lines, FeedEntry entry) {
				Meeting meeting = entry.meeting();
				if (meeting != null && !meeting.place().isBlank()) {
					lines.text("LOCATION", PlainText.line(meeting.place()));
				}
				lines.plain("TRANSP", (meeting != null && meeting.busy()) ? "OPAQUE" : "TRANSPARENT")
					.plain("STATUS", entry.cancelled() ? "CANCELLED" : "CONFIRMED");
			}
		},

		/**
		 * A to-do. Programs show DUE as the last day, so it is that day and not the one
		 * behind it; DTSTART has to be earlier (RFC 5545 section 3.8.2.3), so a to-do of
		 * one day has none.
		 */
		TODO("VTODO") {
			@Override
			void times(Lines lines, FeedEntry entry) {
				if (entry.window().days() > 1) {
					lines.day("DTSTART", entry.window().from());
				}
			}

			@Override
			void standing(Lines lines, FeedEntry entry) {
				lines.day("DUE", entry.window().to());
				if (entry.standing() == Standing.DONE) {
					lines.moment("COMPLETED", entry.changed()).plain("PERCENT-COMPLETE", "100");
				}
				lines.plain("STATUS", switch (entry.standing()) {
					case OPEN -> "NEEDS-ACTION";
					case DONE -> "COMPLETED";
					case LEFT_OUT, CANCELLED -> "CANCELLED";
				});
			}
		};

		private final String name;

		Component(String name) {
			this.name = name;
		}

		/** When it is. */
		abstract void times(Lines lines, FeedEntry entry);

		/** What has become of it. */
		abstract void standing(Lines lines, FeedEntry entry);

		/** All lines but those of the revision. */
		final void write(Lines lines, FeedEntry entry, @Nullable LocalTime alarm) {
			lines.plain("BEGIN", this.name)
				.plain("UID", PlainText.line(entry.uid()))
				.moment("CREATED", entry.created());
			times(lines, entry);
			lines.text("SUMMARY", PlainText.line(entry.summary()))
				.text("DESCRIPTION", entry.description())
				.texts("CATEGORIES", entry.categories());
			if (entry.url() != null) {
				lines.plain("URL", entry.url());
			}
			standing(lines, entry);
			if (alarm != null && entry.standing() == Standing.OPEN && entry.kind() != null) {
				lines.add(alarm(entry, alarm, this == TODO && entry.window().days() == 1));
			}
			lines.plain("END", this.name);
		}

		/**
		 * An alarm on the first day. Days begin at 00:00 wherever the calendar is read,
		 * so the time of day is a positive duration. That it counts from the start goes
		 * without saying (RFC 5545 section 3.2.14), but a reader was found that wants it
		 * said. A to-do of one day has no start to count from, but it is due on that day.
		 */
		private static String alarm(FeedEntry entry, LocalTime alarm, boolean fromDue) {
			return "BEGIN:VALARM\r\nACTION:DISPLAY\r\n" + new Description(PlainText.line(entry.summary()))
					+ new Trigger(new ParameterList(List.of(fromDue ? Related.END : Related.START)),
							Duration.ofSeconds(alarm.toSecondOfDay()))
					+ "END:VALARM\r\n";
		}

	}

}
