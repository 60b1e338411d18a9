package org.leafward.feeds.ical;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Checks a feed octet by octet. The parsers around let most of this pass: measured with
 * seven of them, none minds long lines, folds inside a UTF-8 sequence, odd separators,
 * equal UIDs or a day's end that isn't after its start.
 */
public final class IcsLinter {

	/** RFC 5545 section 3.1: "Lines of text SHOULD NOT be longer than 75 octets". */
	private static final int LINE_OCTETS = 75;

	/** A widely used client refuses feeds of about 1 MB. */
	private static final int FEED_OCTETS = 900_000;

	private static final Pattern UTC = Pattern.compile("\\d{8}T\\d{6}Z");

	/** RFC 5545 section 3.3.6, forwards and not of length zero. */
	private static final Pattern POSITIVE = Pattern
		.compile("(?=.*[1-9])P(\\d+W|\\d+D(T(?=\\d)(\\d+H)?(\\d+M)?(\\d+S)?)?|T(?=\\d)(\\d+H)?(\\d+M)?(\\d+S)?)");

	/** RFC 5545 section 3.8.1.11. */
	private static final Map<String, Set<String>> STATUS = Map.of("VEVENT",
			Set.of("TENTATIVE", "CONFIRMED", "CANCELLED"), "VTODO",
			Set.of("NEEDS-ACTION", "COMPLETED", "IN-PROCESS", "CANCELLED"));

	private static final Pattern CONTENT_LINE = Pattern.compile("[A-Z0-9-]+(;[A-Z0-9-]+=(\"[^\"]*\"|[^\";:,]*))*:.*",
			Pattern.DOTALL);

	private static final Set<String> TEXT_PROPERTIES = Set.of("SUMMARY", "DESCRIPTION", "NAME", "UID", "PRODID",
			"X-WR-CALNAME", "X-WR-CALDESC", "LOCATION", "COMMENT");

	private final List<String> problems = new ArrayList<>();

	private IcsLinter() {
	}

	/**
	 * Looks for everything that is known to break some client.
	 * @param octets the feed
	 * @return problems, empty for a good one
	 */
	public static List<String> problems(byte[] octets) {
		IcsLinter linter = new IcsLinter();
		linter.size(octets);
		linter.lineBreaks(octets);
		linter.structure(linter.unfold(linter.physicalLines(octets)));
		return linter.problems;
	}

	/**
	 * Looks as {@link #problems(byte[])} does, and whether two renders agree.
	 * @param octets the feed
	 * @param again the same feed rendered again
	 * @return problems, empty for a good one
	 */
	public static List<String> problems(byte[] octets, byte[] again) {
		List<String> found = new ArrayList<>(problems(octets));
		int difference = Arrays.mismatch(octets, again);
		if (difference >= 0) {
			found.add("two renders differ from octet " + difference);
		}
		return found;
	}

	private void size(byte[] octets) {
		if (octets.length > FEED_OCTETS) {
			this.problems.add("size: %d octets".formatted(octets.length));
		}
	}

	/** RFC 5545 section 3.1: lines are delimited by CRLF. */
	private void lineBreaks(byte[] octets) {
		for (int i = 0; i < octets.length; i++) {
			boolean paired = (octets[i] == '\n') ? i > 0 && octets[i - 1] == '\r'
					: octets[i] != '\r' || (i + 1 < octets.length && octets[i + 1] == '\n');
			if (!paired) {
				this.problems.add("line break: lone %s at octet %d".formatted((octets[i] == '\n') ? "LF" : "CR", i));
			}
		}
		if (octets.length < 2 || octets[octets.length - 1] != '\n') {
			this.problems.add("line break: none at the end");
		}
	}

	private List<String> physicalLines(byte[] octets) {
		List<String> lines = new ArrayList<>();
		int from = 0;
		for (int i = 0; i <= octets.length; i++) {
			if (i == octets.length || octets[i] == '\n') {
				int to = (i > from && octets[i - 1] == '\r') ? i - 1 : i;
				if (i < octets.length || to > from) {
					lines.add(physicalLine(Arrays.copyOfRange(octets, from, to)));
				}
				from = i + 1;
			}
		}
		return lines;
	}

	private String physicalLine(byte[] octets) {
		if (octets.length > LINE_OCTETS) {
			this.problems.add("length: line of %d octets".formatted(octets.length));
		}
		String line = decode(octets);
		if (line.isEmpty()) {
			this.problems.add("fold: empty line");
		}
		else if (line.equals(" ") || line.equals("\t")) {
			this.problems.add("fold: empty continuation");
		}
		line.codePoints()
			.filter(IcsLinter::forbidden)
			.forEach((point) -> this.problems.add("code point: U+%04X".formatted(point)));
		return line;
	}

	private String decode(byte[] octets) {
		try {
			return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(octets)).toString();
		}
		catch (CharacterCodingException ex) {
			this.problems.add("utf-8: a line doesn't decode by itself");
			return new String(octets, StandardCharsets.UTF_8);
		}
	}

	/**
	 * Controls (RFC 5545 section 3.1, CONTROL), what some clients take for a line break,
	 * and a byte order mark.
	 */
	private static boolean forbidden(int point) {
		return Character.isISOControl(point) || point == 0x2028 || point == 0x2029 || point == 0xFEFF;
	}

	/** RFC 5545 section 3.1: a line break and one white space are removed. */
	private List<String> unfold(List<String> lines) {
		List<String> unfolded = new ArrayList<>();
		for (String line : lines) {
			boolean continues = line.startsWith(" ") || line.startsWith("\t");
			if (continues && !unfolded.isEmpty()) {
				unfolded.set(unfolded.size() - 1, unfolded.get(unfolded.size() - 1) + line.substring(1));
			}
			else {
				unfolded.add(line);
			}
		}
		return unfolded;
	}

	private void structure(List<String> lines) {
		Deque<String> open = new ArrayDeque<>();
		Deque<Map<String, List<String>>> inside = new ArrayDeque<>();
		Set<String> uids = new HashSet<>();
		int components = 0;
		for (String line : lines) {
			if (!CONTENT_LINE.matcher(line).matches()) {
				this.problems.add("content line: " + line);
				continue;
			}
			int colon = colon(line);
			String name = line.substring(0, colon).split(";", 2)[0];
			String parameters = line.substring(name.length(), colon);
			String value = line.substring(colon + 1);
			switch (name) {
				case "BEGIN" -> {
					components += open.isEmpty() ? 0 : 1;
					open.push(value);
					inside.push(new HashMap<>());
				}
				case "END" -> {
					if (open.isEmpty() || !open.pop().equals(value)) {
						this.problems.add("nesting: END:" + value);
					}
					if (!inside.isEmpty()) {
						component(value, inside.pop(), uids);
					}
				}
				default -> {
					if (!inside.isEmpty()) {
						inside.getFirst().computeIfAbsent(name, (key) -> new ArrayList<>()).add(value);
					}
				}
			}
			property(name, parameters, value);
		}
		if (lines.isEmpty() || !lines.get(0).equals("BEGIN:VCALENDAR") || !open.isEmpty()) {
			this.problems.add("nesting: not one whole VCALENDAR");
		}
		if (components == 0) {
			// RFC 5545 section 3.6: at least one calendar component.
			this.problems.add("component: none");
		}
		timeZones(lines);
	}

	private static int colon(String line) {
		boolean quoted = false;
		for (int i = 0; i < line.length(); i++) {
			if (line.charAt(i) == '"') {
				quoted = !quoted;
			}
			else if (line.charAt(i) == ':' && !quoted) {
				return i;
			}
		}
		throw new IllegalStateException("no colon: " + line);
	}

	private void property(String name, String parameters, String value) {
		if (name.equals("METHOD")) {
			// RFC 5546 section 3.2.1 would want an ORGANIZER beside it.
			this.problems.add("method: " + value);
		}
		if (TEXT_PROPERTIES.contains(name) && !reEscapes(value)) {
			this.problems.add("text: %s:%s".formatted(name, value));
		}
		if (name.equals("CATEGORIES") && (text(value.replace(",", "")) == null || value.contains("\\,"))) {
			this.problems.add("categories: " + value);
		}
		if (Set.of("DTSTAMP", "LAST-MODIFIED", "CREATED", "COMPLETED").contains(name)
				&& !UTC.matcher(value).matches()) {
			// RFC 5545 sections 3.8.2.1 and 3.8.7.1 to 3.8.7.3: in UTC time format.
			this.problems.add("utc: %s:%s".formatted(name, value));
		}
		if (name.equals("REFRESH-INTERVAL")
				&& (!parameters.equals(";VALUE=DURATION") || !POSITIVE.matcher(value).matches())) {
			// RFC 7986 section 5.7: VALUE=DURATION is mandatory, the value is positive.
			this.problems.add("refresh: " + parameters + ":" + value);
		}
		if (name.equals("X-PUBLISHED-TTL") && !POSITIVE.matcher(value).matches()) {
			this.problems.add("refresh: X-PUBLISHED-TTL:" + value);
		}
		if (name.equals("CLASS") && !Set.of("PUBLIC", "PRIVATE", "CONFIDENTIAL").contains(value)) {
			// RFC 5545 section 3.8.1.3 allows more, which the strictest client refuses.
			this.problems.add("class: " + value);
		}
	}

	private static boolean reEscapes(String value) {
		String text = text(value);
		return text != null && text.replace("\\", "\\\\")
			.replace(";", "\\;")
			.replace(",", "\\,")
			.replace("\n", "\\n")
			.equals(value);
	}

	/** RFC 5545 section 3.3.11: what a TEXT value means; null for none. */
	private static String text(String value) {
		StringBuilder text = new StringBuilder();
		for (int i = 0; i < value.length(); i++) {
			char each = value.charAt(i);
			if (each == ';' || each == ',') {
				return null;
			}
			if (each == '\\') {
				i++;
				if (i == value.length() || "\\;,nN".indexOf(value.charAt(i)) < 0) {
					return null;
				}
				each = (Character.toLowerCase(value.charAt(i)) == 'n') ? '\n' : value.charAt(i);
			}
			text.append(each);
		}
		return text.toString();
	}

	private void component(String kind, Map<String, List<String>> properties, Set<String> uids) {
		switch (kind) {
			case "VEVENT" -> {
				common("event", properties, List.of("DTSTART"), uids);
				event(properties);
			}
			case "VTODO" -> {
				common("todo", properties, List.of("DUE", "STATUS"), uids);
				todo(properties);
			}
			case "VALARM" -> alarm(properties);
			default -> {
			}
		}
		String status = first(properties, "STATUS");
		if (properties.containsKey("STATUS") && !STATUS.getOrDefault(kind, Set.of()).contains(status)) {
			this.problems.add("status: %s in a %s".formatted(status, kind));
		}
	}

	private void common(String kind, Map<String, List<String>> properties, List<String> needed, Set<String> uids) {
		Stream.concat(Stream.of("UID", "DTSTAMP", "LAST-MODIFIED", "SEQUENCE", "SUMMARY"), needed.stream())
			.filter((name) -> properties.getOrDefault(name, List.of()).size() != 1)
			.forEach((name) -> this.problems.add(kind + ": needs one " + name));
		String uid = first(properties, "UID");
		if (!uids.add(uid + " " + first(properties, "RECURRENCE-ID"))) {
			this.problems.add("uid: twice " + uid);
		}
		if (!first(properties, "DTSTAMP").equals(first(properties, "LAST-MODIFIED"))) {
			// RFC 5545 section 3.8.7.2: without METHOD the two say the same.
			this.problems.add("dtstamp: %s, and modified %s".formatted(first(properties, "DTSTAMP"),
					first(properties, "LAST-MODIFIED")));
		}
		if (!first(properties, "SEQUENCE").matches("\\d{0,9}")) {
			this.problems.add("sequence: " + first(properties, "SEQUENCE"));
		}
	}

	private void event(Map<String, List<String>> event) {
		if (event.containsKey("DTEND") && first(event, "DTEND").compareTo(first(event, "DTSTART")) <= 0) {
			// RFC 5545 section 3.8.2.2: later than DTSTART.
			this.problems.add("end: %s is not after %s".formatted(first(event, "DTEND"), first(event, "DTSTART")));
		}
		for (String name : List.of("DUE", "COMPLETED", "PERCENT-COMPLETE")) {
			if (event.containsKey(name)) {
				this.problems.add("event: has " + name);
			}
		}
	}

	/** RFC 5545 sections 3.6.2, 3.8.2.1 and 3.8.2.3. */
	private void todo(Map<String, List<String>> todo) {
		if (todo.containsKey("DTSTART") && first(todo, "DUE").compareTo(first(todo, "DTSTART")) <= 0) {
			this.problems.add("due: %s is not after %s".formatted(first(todo, "DUE"), first(todo, "DTSTART")));
		}
		for (String name : List.of("DTEND", "TRANSP", "DURATION")) {
			if (todo.containsKey(name)) {
				this.problems.add("todo: has " + name);
			}
		}
		boolean done = first(todo, "STATUS").equals("COMPLETED");
		if (done != todo.containsKey("COMPLETED")) {
			this.problems
				.add("completed: status %s, moment '%s'".formatted(first(todo, "STATUS"), first(todo, "COMPLETED")));
		}
		if (todo.containsKey("PERCENT-COMPLETE") && done != first(todo, "PERCENT-COMPLETE").equals("100")) {
			this.problems.add("completed: %s percent".formatted(first(todo, "PERCENT-COMPLETE")));
		}
	}

	/** RFC 5545 section 3.6.6, dispprop. */
	private void alarm(Map<String, List<String>> alarm) {
		for (String name : List.of("ACTION", "DESCRIPTION", "TRIGGER")) {
			if (alarm.getOrDefault(name, List.of()).size() != 1) {
				this.problems.add("alarm: needs one " + name);
			}
		}
		if (!first(alarm, "ACTION").equals("DISPLAY")) {
			this.problems.add("alarm: action " + first(alarm, "ACTION"));
		}
		// Midnight itself is no duration, but a start.
		if (!POSITIVE.matcher(first(alarm, "TRIGGER")).matches() && !first(alarm, "TRIGGER").equals("PT0S")) {
			this.problems.add("alarm: trigger " + first(alarm, "TRIGGER"));
		}
	}

	private static String first(Map<String, List<String>> event, String name) {
		return event.getOrDefault(name, List.of("")).get(0);
	}

	/** RFC 5545 section 3.2.19: a VTIMEZONE for every TZID. */
	private void timeZones(List<String> lines) {
		for (String line : lines) {
			int at = line.indexOf(";TZID=");
			if (at > 0) {
				String zone = line.substring(at + 6).split("[;:]", 2)[0];
				if (!lines.contains("TZID:" + zone)) {
					this.problems.add("tzid: no VTIMEZONE for " + zone);
				}
			}
		}
	}

}
