package org.leafward.register.core.list;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number of plants as people write it beside a name or alone: 12 boxwood, 3x rose, rose
 * (4), 12 plants.
 *
 * @param count digits, at most six
 * @param rest what else was written; empty when it was the number alone
 */
record Quantity(String count, String rest) {

	private static final String PLANTS = "(?:plants?|pieces|pcs?\\.?|plantas?|matas?|unidades|uds?\\.?)";

	private static final Pattern ALONE = Pattern.compile(
			"(?:[x\u00d7]\\s?)?(\\d{1,6})(?:\\.0+)?\\s*(?:[x\u00d7]|%s)?".formatted(PLANTS), Pattern.CASE_INSENSITIVE);

	private static final Pattern BEFORE = Pattern.compile(
			"(?:[x\u00d7]\\s?)?(\\d{1,6})(?:\\s*[\u00d7*]\\s*|\\s*x\\s+|\\s+%s(?:\\s+(?:of|de))?\\s+|\\s+)(\\p{L}.*|['\"\u2018\u201c(].*)"
				.formatted(PLANTS),
			Pattern.CASE_INSENSITIVE);

	private static final Pattern BEHIND = Pattern.compile(
			"(.*?\\p{L}['\"\u2019\u201d)]?)(?:\\s*[\u00d7*]\\s*(\\d{1,6})|\\s+x\\s?(\\d{1,6})|\\s*\\((\\d{1,6})(?:\\s*%s)?\\)|\\s+(\\d{1,3})(?:\\s*%s)?)"
				.formatted(PLANTS, PLANTS),
			Pattern.CASE_INSENSITIVE);

	static Optional<String> alone(String text) {
		Matcher matcher = ALONE.matcher(text.strip());
		return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
	}

	static Optional<Quantity> beside(String text) {
		String line = text.strip();
		Matcher before = BEFORE.matcher(line);
		if (before.matches()) {
			return Optional.of(new Quantity(before.group(1), before.group(2).strip()));
		}
		Matcher behind = BEHIND.matcher(line);
		if (behind.matches()) {
			for (int i = 2; i <= behind.groupCount(); i++) {
				if (behind.group(i) != null) {
					return Optional.of(new Quantity(behind.group(i), behind.group(1).strip()));
				}
			}
		}
		return Optional.empty();
	}

}
