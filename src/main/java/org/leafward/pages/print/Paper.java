package org.leafward.pages.print;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/** Sizes of paper. */
public enum Paper {

	/** 210 by 297 mm (ISO 216). */
	A4,

	/** 8.5 by 11 inches (ANSI/ASME Y14.1). */
	LETTER;

	/** Countries that use Letter and have codes of regions (ISO 3166-2) here. */
	private static final String LETTER_COUNTRIES = "US-|CA-|MX-";

	/**
	 * The name used in addresses.
	 * @return in lower case
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

	/**
	 * The paper that is asked for.
	 * @param code {@code a4} or {@code letter}; null or blank for the usual one
	 * @param region state or province by ISO 3166-2; may be empty
	 * @return the paper; without a code Letter in North America and where nobody told the
	 * region, else A4
	 * @throws BadInput when the code is unknown
	 */
	public static Paper of(@Nullable String code, String region) {
		if (code == null || code.isBlank()) {
			return (region.isEmpty() || region.matches("(" + LETTER_COUNTRIES + ").*")) ? LETTER : A4;
		}
		return Arrays.stream(values())
			.filter((one) -> one.code().equalsIgnoreCase(code.strip()))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no paper".formatted(code), "paper",
					"write one of: " + Arrays.stream(values()).map(Paper::code).collect(Collectors.joining(", "))));
	}

}
