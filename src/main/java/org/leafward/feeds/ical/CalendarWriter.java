package org.leafward.feeds.ical;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.TextList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Created;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Sequence;
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
import org.leafward.feeds.core.PlainText;

/**
 * Writes a calendar as RFC 5545 octets with the calendar properties of RFC 7986. The same
 * entries give the same octets: nothing here reads a clock, and no stamp is the library's
 * own. There is no METHOD (it would bring in RFC 5546 and its ORGANIZER), no VALARM, no
 * GEO and no SOURCE (it would repeat the secret address).
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
	 * Writes a calendar.
	 * @param name what the calendar is called
	 * @param about what it holds, in a sentence
	 * @param entries one or more, in the order to write them
	 * @return at most {@link #MOST_OCTETS}; entries farthest in the future are left out
	 * when there is no room
	 * @throws IllegalArgumentException for no entries (RFC 5545 section 3.6)
	 */
	public byte[] write(String name, String about, List<FeedEntry> entries) {
		if (entries.isEmpty()) {
			throw new IllegalArgumentException("a calendar needs an entry");
		}
		byte[] head = folded("BEGIN:VCALENDAR\r\n" + lines(calendar(PlainText.line(name), PlainText.clean(about))));
		byte[] end = folded(END);
		Map<String, byte[]> events = new HashMap<>();
		entries.forEach((entry) -> events.put(entry.uid(), folded(new VEvent(properties(entry)).toString())));
		long room = MOST_OCTETS - head.length - end.length;
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		out.writeBytes(head);
		for (FeedEntry entry : FeedWindow.fitting(entries, (each) -> octets(events, each).length, room)) {
			out.writeBytes(octets(events, entry));
		}
		out.writeBytes(end);
		return out.toByteArray();
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

	private static PropertyList calendar(String name, String about) {
		return new PropertyList(List.of(ImmutableVersion.VERSION_2_0, new ProdId("-//Leafward//Plant care//EN"),
				ImmutableCalScale.GREGORIAN, new Name(name), new XProperty("X-WR-CALNAME", name),
				new Description(about), new XProperty("X-WR-CALDESC", about),
				new RefreshInterval(new ParameterList(List.of(Value.DURATION)), REFRESH),
				new XProperty("X-PUBLISHED-TTL", REFRESH.toString()),
				// COLOR wants a CSS name, the older property its value; the two agree.
				new Color(new ParameterList(), "olivedrab"), new XProperty("X-APPLE-CALENDAR-COLOR", "#6B8E23")));
	}

	private static PropertyList properties(FeedEntry entry) {
		List<Property> properties = new ArrayList<>(List.of(new Uid(PlainText.line(entry.uid())),
				// Without METHOD, DTSTAMP is the last revision (RFC 5545 section
				// 3.8.7.2).
				new DtStamp(entry.changed()), new LastModified(entry.changed()), new Created(entry.created()),
				new Sequence(entry.sequence()), new DtStart<>(entry.window().from()),
				new DtEnd<>(entry.window().endExclusive()), new Summary(PlainText.line(entry.summary())),
				new Description(PlainText.clean(entry.description())), new Categories(new TextList(entry.categories())),
				ImmutableTransp.TRANSPARENT,
				entry.cancelled() ? ImmutableStatus.VEVENT_CANCELLED : ImmutableStatus.VEVENT_CONFIRMED));
		if (entry.url() != null) {
			properties.add(new Url(entry.url()));
		}
		return new PropertyList(properties);
	}

}
