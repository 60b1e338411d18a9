package org.leafward.calendars;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An answer to an invitation (RFC 5546, section 3.2.3). It comes from strangers, so it is
 * read by a few lines of ours: the library keeps a part of each calendar that it ever
 * parsed.
 *
 * @param uid of what it answers
 * @param sequence of the invitation that it answers; 0 where it doesn't say
 * @param answer what they answer
 */
public record Reply(String uid, int sequence, Answer answer) {

	/** Longest calendar that is looked at, octets. */
	public static final int LONGEST = 64 * 1024;

	private static final int DEEPEST = 4;

	/**
	 * Reads an answer.
	 * @param calendar the calendar part of a mail
	 * @return empty for anything but a reply of one person about one event
	 */
	public static Optional<Reply> read(String calendar) {
		if (calendar.getBytes(StandardCharsets.UTF_8).length > LONGEST) {
			return Optional.empty();
		}
		Map<String, String> event = new HashMap<>();
		List<String> answers = new ArrayList<>();
		String method = "";
		int events = 0;
		Deque<String> inside = new ArrayDeque<>();
		for (String line : calendar.replaceAll("\r?\n[ \t]", "").split("\r?\n")) {
			int colon = value(line);
			if (colon < 0) {
				continue;
			}
			String head = line.substring(0, colon);
			String value = line.substring(colon + 1).strip();
			String name = head.split(";", 2)[0].toUpperCase(Locale.ROOT);
			if (name.equals("BEGIN")) {
				inside.push(value.toUpperCase(Locale.ROOT));
				events += value.equalsIgnoreCase("VEVENT") ? 1 : 0;
				if (inside.size() > DEEPEST) {
					return Optional.empty();
				}
			}
			else if (name.equals("END")) {
				inside.poll();
			}
			else if (name.equals("METHOD") && inside.size() == 1) {
				method = value;
			}
			else if (inside.size() == 2 && "VEVENT".equals(inside.peek())) {
				if (name.equals("ATTENDEE")) {
					answers.add(partStat(head));
				}
				event.putIfAbsent(name, value);
			}
		}
		String uid = event.get("UID");
		if (!method.equalsIgnoreCase("REPLY") || events != 1 || answers.size() != 1 || uid == null
				|| event.containsKey("RECURRENCE-ID")) {
			return Optional.empty();
		}
		return answer(answers.get(0)).map((answer) -> new Reply(uid, number(event.get("SEQUENCE")), answer));
	}

	/** The first colon outside of double quotes. */
	private static int value(String line) {
		boolean quoted = false;
		for (int i = 0; i < line.length(); i++) {
			char one = line.charAt(i);
			quoted ^= one == '"';
			if (one == ':' && !quoted) {
				return i;
			}
		}
		return -1;
	}

	private static String partStat(String head) {
		for (String parameter : head.split(";(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
			if (parameter.toUpperCase(Locale.ROOT).startsWith("PARTSTAT=")) {
				return parameter.substring("PARTSTAT=".length()).replace("\"", "").strip().toUpperCase(Locale.ROOT);
			}
		}
		return "";
	}

	private static Optional<Answer> answer(String code) {
		for (Answer one : Answer.values()) {
			if (one != Answer.NONE && one.code().equals(code)) {
				return Optional.of(one);
			}
		}
		return Optional.empty();
	}

	private static int number(@Nullable String value) {
		return (value != null && value.matches("\\d{1,9}")) ? Integer.parseInt(value) : 0;
	}

}
