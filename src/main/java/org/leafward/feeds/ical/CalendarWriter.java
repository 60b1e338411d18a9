package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.Locale;
import net.fortuna.ical4j.model.property.Due;
import net.fortuna.ical4j.model.property.Completed;
import net.fortuna.ical4j.model.property.PercentComplete;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.parameter.Related;
import org.jspecify.annotations.Nullable;
import org.leafward.calendars.OctetFoldingWriter;
import org.leafward.feeds.core.FeedEntry.Meeting;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.calendars.ZoneText;
import org.leafward.feeds.core.Revision;
import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.TextList;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Created;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Url;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.calendars.PlainText;

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

	/** How often to ask again; common practice for things that change daily. */
	private static final Duration REFRESH = Duration.ofHours(12);

	private static final String END = "END:VCALENDAR\r\n";

	/**
	 * What stands at the head of a calendar.
	 *
	 * @param name what it is called
	 * @param about what it holds, in a sentence
	 * @param language its language, a tag of BCP 47
	 */
	public record Head(String name, String about, String language) {
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
		byte[] begin = folded("BEGIN:VCALENDAR\r\n" + lines(calendar(head)) + zones(entries));
		byte[] end = folded(END);
		Map<String, Shown.Entry> shown = Shown.of(before.octets());
		Map<String, byte[]> blocks = new HashMap<>();
		int aheadBy = before.aheadBy();
		for (FeedEntry entry : entries) {
			String looks = new String(folded(form.lines(entry, alarm)), StandardCharsets.UTF_8);
			Shown.Entry was = shown.get(entry.uid());
			Revision revision = revision(entry, looks, was, before);
			aheadBy = Math.max(aheadBy, revision.sequence() - entry.sequence());
			blocks.put(entry.uid(), stamped(looks, revision));
		}
		long room = MOST_OCTETS - begin.length - end.length;
		ByteArrayOutputStream out = new ByteArrayOutputStream(32_768);
		out.writeBytes(begin);
		for (FeedEntry entry : FeedWindow.fitting(entries, (each) -> octets(blocks, each).length, room)) {
			out.writeBytes(octets(blocks, entry));
		}
		out.writeBytes(end);
		return new Written(out.toByteArray(), aheadBy);
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

	private static Revision revision(FeedEntry entry, String looks, Shown.@Nullable Entry was, Before before) {
		if (before.octets().length == 0) {
			return Revision.first(entry, before.aheadBy());
		}
		return (was != null && was.looks().equals(looks)) ? was.revision()
				: Revision.next(entry, (was != null) ? was.revision() : null, before.aheadBy(), before.now());
	}

	/** The revision stands behind the identifier, which is the first line. */
	private static byte[] stamped(String looks, Revision revision) {
		int uid = looks.indexOf("\r\nUID:");
		int behind = looks.indexOf("\r\n", uid + 2) + 2;
		return (looks.substring(0, behind) + Shown.lines(revision) + looks.substring(behind))
			.getBytes(StandardCharsets.UTF_8);
	}

	private static byte[] octets(Map<String, byte[]> events, FeedEntry entry) {
		return Objects.requireNonNull(events.get(entry.uid()));
	}

	private static byte[] folded(String lines) {
		OctetFoldingWriter writer = new OctetFoldingWriter();
		writer.write(lines);
		return writer.octets();
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
				new RefreshInterval(new ParameterList(List.of(Value.DURATION)), REFRESH),
				new XProperty("X-PUBLISHED-TTL", REFRESH.toString()),
				// COLOR wants a CSS name, the older property its value; the two agree.
				new Color(new ParameterList(), "olivedrab"), new XProperty("X-APPLE-CALENDAR-COLOR", "#6B8E23")));
	}

	/** The kind of component that an entry becomes. */
	public enum Component {

		/** An all-day entry. */
		EVENT {
			@Override
			String lines(FeedEntry entry, @Nullable LocalTime alarm) {
				List<Property> properties = common(entry);
				Meeting meeting = entry.meeting();
				if (meeting != null) {
					properties.add(2, new DtStart<>(meeting.start()));
					properties.add(3, new DtEnd<>(meeting.end()));
					if (!meeting.place().isBlank()) {
						properties.add(new Location(PlainText.line(meeting.place())));
					}
				}
				else {
					properties.add(2, new DtStart<>(entry.window().from()));
					properties.add(3, new DtEnd<>(entry.window().endExclusive()));
				}
				properties
					.add((meeting != null && meeting.busy()) ? ImmutableTransp.OPAQUE : ImmutableTransp.TRANSPARENT);
				properties.add(entry.cancelled() ? ImmutableStatus.VEVENT_CANCELLED : ImmutableStatus.VEVENT_CONFIRMED);
				return block("VEVENT", properties, entry, alarm);
			}
		},

		/**
		 * A to-do. Programs show DUE as the last day, so it is that day and not the one
		 * behind it; DTSTART has to be earlier (RFC 5545 section 3.8.2.3), so a to-do of
		 * one day has none.
		 */
		TODO {
			@Override
			String lines(FeedEntry entry, @Nullable LocalTime alarm) {
				List<Property> properties = common(entry);
				if (entry.window().days() > 1) {
					properties.add(2, new DtStart<>(entry.window().from()));
				}
				properties.add(new Due<>(entry.window().to()));
				if (entry.standing() == Standing.DONE) {
					properties.add(new Completed(entry.changed()));
					properties.add(new PercentComplete(100));
				}
				properties.add(switch (entry.standing()) {
					case OPEN -> ImmutableStatus.VTODO_NEEDS_ACTION;
					case DONE -> ImmutableStatus.VTODO_COMPLETED;
					case LEFT_OUT, CANCELLED -> ImmutableStatus.VTODO_CANCELLED;
				});
				return block("VTODO", properties, entry, alarm);
			}
		};

		/** All lines but those of the revision, not folded. */
		abstract String lines(FeedEntry entry, @Nullable LocalTime alarm);

		private static List<Property> common(FeedEntry entry) {
			List<Property> properties = new ArrayList<>(List.of(new Uid(PlainText.line(entry.uid())),
					new Created(entry.created()), new Summary(PlainText.line(entry.summary())),
					new Description(PlainText.clean(entry.description())),
					new Categories(new TextList(entry.categories()))));
			if (entry.url() != null) {
				properties.add(new Url(entry.url()));
			}
			return properties;
		}

		private static String block(String name, List<Property> properties, FeedEntry entry,
				@Nullable LocalTime alarm) {
			StringBuilder lines = new StringBuilder(1024).append("BEGIN:").append(name).append("\r\n");
			properties.forEach((property) -> line(lines, property));
			if (alarm != null && entry.standing() == Standing.OPEN && entry.kind() != null) {
				lines.append(alarm(entry, alarm, name.equals("VTODO") && entry.window().days() == 1));
			}
			return lines.append("END:").append(name).append("\r\n").toString();
		}

		/**
		 * The library escapes text in several passes of regular expressions, which was
		 * half of the work of a document; one pass by RFC 5545 section 3.3.11 does.
		 */
		private static void line(StringBuilder lines, Property property) {
			if (!(property instanceof Summary || property instanceof Description || property instanceof Location)) {
				lines.append(property);
				return;
			}
			lines.append(property.getName()).append(':');
			String text = property.getValue();
			for (int at = 0; at < text.length(); at++) {
				char unit = text.charAt(at);
				switch (unit) {
					case '\\', ';', ',' -> lines.append('\\').append(unit);
					case '\n' -> lines.append("\\n");
					default -> lines.append(unit);
				}
			}
			lines.append("\r\n");
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
