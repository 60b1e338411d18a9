package org.leafward.language;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leafward.measure.BadInput;

/** A language that readers can have words in. */
public enum Language {

	/** In which everything is written first. */
	ENGLISH("en", "English", Locale.ENGLISH),

	/** As gardeners in North America speak it. */
	SPANISH("es", "español", Locale.forLanguageTag("es-US"));

	private final String code;

	private final String words;

	private final Locale locale;

	Language(String code, String words, Locale locale) {
		this.code = code;
		this.words = words;
		this.locale = locale;
	}

	/**
	 * Its code (ISO 639-1), which is a language tag of BCP 47 as well.
	 * @return for example {@code es}
	 */
	public String code() {
		return this.code;
	}

	/**
	 * What it calls itself.
	 * @return for example "español"
	 */
	public String words() {
		return this.words;
	}

	public Locale locale() {
		return this.locale;
	}

	/**
	 * The language of a code.
	 * @param field name of the field, for a refusal
	 * @param code for example {@code es}; case doesn't matter
	 * @return the language
	 * @throws BadInput when there is none
	 */
	public static Language of(String field, String code) {
		return Arrays.stream(values())
			.filter((one) -> one.code.equalsIgnoreCase(code.strip()))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no language that we have words in".formatted(code), field,
					"choose one of: " + Arrays.stream(values()).map(Language::code).collect(Collectors.joining(", "))));
	}

}
