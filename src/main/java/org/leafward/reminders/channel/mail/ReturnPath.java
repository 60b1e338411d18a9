package org.leafward.reminders.channel.mail;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where mail servers send word of a mail that they had taken and couldn't deliver: an
 * address of its own for each mail (RFC 5233 calls what follows the plus a detail). What
 * stands there is the mail's identifier, of which nobody knows but who got the mail, and
 * they could leave its series by the link in it anyway.
 *
 * @param local what stands before the plus
 * @param domain what stands behind the at sign
 */
record ReturnPath(String local, String domain) {

	private static final Pattern FORM = Pattern
		.compile("([A-Za-z0-9][A-Za-z0-9._-]{0,29}[A-Za-z0-9]|[A-Za-z0-9])@([A-Za-z0-9-]+(?:\\.[A-Za-z0-9-]+)*)");

	/**
	 * Reads the setting.
	 * @param address an address without a plus; what stands before the at sign has at
	 * most 31 characters, so that 64 are enough for all of it (RFC 5321 section
	 * 4.5.3.1.1)
	 * @return the return path
	 * @throws IllegalArgumentException if it is none
	 */
	static ReturnPath of(String address) {
		Matcher form = FORM.matcher(address.strip());
		if (!form.matches()) {
			throw new IllegalArgumentException(
					"leafward.mail.bounces is '%s'; write it like bounce@example.org".formatted(address));
		}
		return new ReturnPath(form.group(1), form.group(2));
	}

	/**
	 * The address for one mail.
	 * @param mail its identifier
	 */
	String address(UUID mail) {
		return "%s+%s@%s".formatted(this.local, mail.toString().replace("-", ""), this.domain);
	}

	/**
	 * The mail that an address of ours stands for.
	 * @param text a header's value with addresses in it
	 * @return empty when none of ours is among them
	 */
	Optional<UUID> mail(String text) {
		// Some servers write addresses in small letters.
		Matcher ours = Pattern.compile(
				"(?<![a-z0-9._+-])%s\\+([0-9a-f]{8})([0-9a-f]{4})([0-9a-f]{4})([0-9a-f]{4})([0-9a-f]{12})@%s(?![a-z0-9.-])"
					.formatted(Pattern.quote(this.local.toLowerCase(Locale.ROOT)),
							Pattern.quote(this.domain.toLowerCase(Locale.ROOT))))
			.matcher(text.toLowerCase(Locale.ROOT));
		return ours.find()
				? Optional.of(UUID.fromString(
						String.join("-", ours.group(1), ours.group(2), ours.group(3), ours.group(4), ours.group(5))))
				: Optional.empty();
	}

}
