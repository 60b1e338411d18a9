package org.leafward.advisories.desk;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The form of an advisory as somebody left it, which may be half of one. Names of fields
 * are those of the form.
 *
 * @param values what was given, by name of the field
 */
public record DraftFields(Map<String, List<String>> values) {

	/** Fields of one line or text. */
	public static final List<String> TEXTS = List.of("event", "eventEs", "polygon", "category", "urgency", "severity",
			"certainty", "onset", "expires", "headline", "what", "where", "when", "impacts", "toDo", "headlineEs",
			"whatEs", "whereEs", "whenEs", "impactsEs", "toDoEs", "reason", "sendAt");

	/** Fields that may have several values. */
	public static final List<String> LISTS = List.of("counties", "groups", "traits", "species", "works", "responses");

	private static final int MOST_VALUES = 200;

	private static final int LONGEST = 8000;

	public DraftFields {
		Map<String, List<String>> kept = new TreeMap<>();
		values.forEach((name, given) -> {
			if (TEXTS.contains(name) || LISTS.contains(name)) {
				kept.put(name,
						given.stream()
							.limit(MOST_VALUES)
							.map((one) -> one.substring(0, Math.min(one.length(), LONGEST)).replace("\u0000", ""))
							.filter((one) -> !one.isBlank())
							.toList());
			}
		});
		values = Collections.unmodifiableMap(kept);
	}

	/**
	 * A text.
	 * @param name of the field
	 * @return may be empty
	 */
	public String text(String name) {
		List<String> given = list(name);
		return given.isEmpty() ? "" : given.get(0);
	}

	/**
	 * All values of a field.
	 * @param name of the field
	 * @return may be empty
	 */
	public List<String> list(String name) {
		return this.values.getOrDefault(name, List.of());
	}

	/**
	 * The same with another value.
	 * @param name of the field
	 * @param value its values
	 * @return other fields stay
	 */
	public DraftFields with(String name, List<String> value) {
		Map<String, List<String>> changed = new TreeMap<>(this.values);
		changed.put(name, value);
		return new DraftFields(changed);
	}

}
