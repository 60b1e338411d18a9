package org.leafward.reminders.core;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who the mails come from.
 *
 * @param line the whole line, for example {@code Leafward <reminders@example.org>}
 * @param domain what stands behind the at sign; also used in Message-ID and List-Id
 */
public record SenderAddress(String line, String domain) {

	private static final Pattern FORM = Pattern
		.compile("(?:[^<>@\\p{Cc}]*<[^\\s@<>\",;:]{1,64}@([A-Za-z0-9.-]+)>|[^\\s@<>\",;:]{1,64}@([A-Za-z0-9.-]+))");

	/**
	 * Reads a sender.
	 * @param line an address, or a name and an address in angle brackets
	 * @return the sender
	 * @throws IllegalArgumentException if it is neither
	 */
	public static SenderAddress of(String line) {
		Matcher form = FORM.matcher(line.strip());
		if (!form.matches()) {
			throw new IllegalArgumentException(
					"leafward.mail.from is '%s'; write it like Leafward <reminders@example.org>".formatted(line));
		}
		return new SenderAddress(line.strip(), (form.group(1) != null) ? form.group(1) : form.group(2));
	}

}
