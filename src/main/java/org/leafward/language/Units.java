package org.leafward.language;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.leafward.language.core.UnitPairs;
import org.leafward.measure.BadInput;

/**
 * The units that a reader wants. Words are written with both, metric first and US
 * customary in brackets.
 */
public enum Units {

	/** As it is written: 25 mm (1 in). */
	BOTH("metric, with US units in brackets"),

	/** 25 mm. */
	METRIC("metric: °C, litres, millimetres"),

	/** 1 in. */
	US("US: °F, gallons, inches");

	/** Texts that are kept for the next reader; a bound for the memory. */
	private static final int KEPT = 20_000;

	/** Longer than most; what is longer is read anew. */
	private static final int LONGEST_KEPT = 1_000;

	private final String words;

	/** The same tasks are told to many readers, and looking for pairs takes long. */
	private final Map<String, String> told = new ConcurrentHashMap<>();

	Units(String words) {
		this.words = words;
	}

	/**
	 * Its name in settings and addresses.
	 * @return for example {@code metric}
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

	public String words() {
		return this.words;
	}

	/**
	 * Words with these units only.
	 * @param text with pairs of units, in any language that we have words in
	 * @return what is no pair stays as it is
	 */
	public String in(String text) {
		if (this == BOTH) {
			return text;
		}
		if (text.length() > LONGEST_KEPT) {
			return pairs(text);
		}
		if (this.told.size() > KEPT) {
			this.told.clear();
		}
		return this.told.computeIfAbsent(text, this::pairs);
	}

	private String pairs(String text) {
		return (this == METRIC) ? UnitPairs.metric(text) : UnitPairs.us(text);
	}

	/**
	 * The units of a code.
	 * @param field name of the field, for a refusal
	 * @param code {@code both}, {@code metric} or {@code us}; case doesn't matter
	 * @return the units
	 * @throws BadInput when there are none
	 */
	public static Units of(String field, String code) {
		return Arrays.stream(values())
			.filter((one) -> one.code().equalsIgnoreCase(code.strip()))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' are no units".formatted(code), field,
					"choose one of: " + Arrays.stream(values()).map(Units::code).collect(Collectors.joining(", "))));
	}

}
