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
		Set<String> uids = new HashSet<>();
		Map<String, List<String>> event = new HashMap<>();
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
					event.clear();
				}
				case "END" -> {
					if (open.isEmpty() || !open.pop().equals(value)) {
						this.problems.add("nesting: END:" + value);
					}
					if (value.equals("VEVENT")) {
						event(event, uids);
					}
				}
				default -> event.computeIfAbsent(name, (key) -> new ArrayList<>()).add(value);
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
		if (Set.of("DTSTAMP", "LAST-MODIFIED", "CREATED").contains(name) && !UTC.matcher(value).matches()) {
			// RFC 5545 sections 3.8.7.1 to 3.8.7.3: in UTC time format.
			this.problems.add("utc: %s:%s".formatted(name, value));
		}
		if (name.equals("REFRESH-INTERVAL") && !parameters.equals(";VALUE=DURATION")) {
			// RFC 7986 section 5.7: VALUE=DURATION is mandatory.
			this.problems.add("refresh: " + parameters + ":" + value);
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

	private void event(Map<String, List<String>> event, Set<String> uids) {
		for (String name : List.of("UID", "DTSTAMP", "DTSTART", "LAST-MODIFIED", "SEQUENCE", "SUMMARY")) {
			if (event.getOrDefault(name, List.of()).size() != 1) {
				this.problems.add("event: needs one " + name);
			}
		}
		String uid = first(event, "UID");
		if (!uids.add(uid + " " + first(event, "RECURRENCE-ID"))) {
			this.problems.add("uid: twice " + uid);
		}
		if (event.containsKey("DTEND") && first(event, "DTEND").compareTo(first(event, "DTSTART")) <= 0) {
			// RFC 5545 section 3.8.2.2: later than DTSTART.
			this.problems.add("end: %s is not after %s".formatted(first(event, "DTEND"), first(event, "DTSTART")));
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
