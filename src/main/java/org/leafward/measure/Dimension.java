package org.leafward.measure;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people measure, with the units that they write. Factors are exact by definition:
 * an inch is 25.4 mm, a US gallon 231 cubic inches (NIST Special Publication 811,
 * appendix B, from memory).
 */
public enum Dimension {

	/** Area, square metres. */
	AREA("square metres", "12, 12 m2 or 130 sq ft",
			units("m2", 1, "m²", 1, "sqm", 1, "sqft", 0.09290304, "ft2", 0.09290304, "ft²", 0.09290304)),

	/** Small lengths such as the thickness of a trunk, millimetres. */
	THICKNESS("millimetres", "50, 50 mm, 5 cm or 2 in", units("mm", 1, "cm", 10, "in", 25.4, "inch", 25.4, "\"", 25.4)),

	/** Depths of soil and roots, centimetres. */
	DEPTH("centimetres", "30, 30 cm, 12 in or 1 ft",
			units("cm", 1, "mm", 0.1, "m", 100, "in", 2.54, "inch", 2.54, "\"", 2.54, "ft", 30.48)),

	/**
	 * Electrical conductivity, decisiemens a metre; a millimho a centimetre is the same.
	 */
	CONDUCTIVITY("decisiemens a metre", "2.5, 2.5 dS/m, 2.5 mmhos/cm or 2500 µS/cm",
			units("ds/m", 1, "ms/cm", 1, "mmhos/cm", 1, "mmho/cm", 1, "µs/cm", 0.001, "μs/cm", 0.001, "us/cm", 0.001)),

	/** Volume, litres. */
	VOLUME("litres", "20, 20 l or 5 gal", units("l", 1, "litres", 1, "liters", 1, "gal", 3.785411784)),

	/** Flow of water, litres a minute. */
	FLOW("litres a minute", "12, 12 l/min or 3 gal/min", units("l/min", 1, "gal/min", 3.785411784, "gpm", 3.785411784));

	private static final Pattern WRITTEN = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(.*)");

	private final String unit;

	private final String example;

	private final Map<String, Double> factors;

	Dimension(String unit, String example, Map<String, Double> factors) {
		this.unit = unit;
		this.example = example;
		this.factors = factors;
	}

	private static Map<String, Double> units(Object... written) {
		Map<String, Double> units = new LinkedHashMap<>();
		for (int i = 0; i < written.length; i += 2) {
			units.put((String) written[i], ((Number) written[i + 1]).doubleValue());
		}
		return units;
	}

	/**
	 * The unit that quantities are kept in.
	 * @return in words, plural
	 */
	public String unit() {
		return this.unit;
	}

	/**
	 * How people may write it.
	 * @return a few examples
	 */
	public String example() {
		return this.example;
	}

	/**
	 * Reads what somebody wrote: a number, alone or with a unit.
	 * @param field name of the field
	 * @param value what was given; a decimal comma is taken as a point
	 * @return in the unit that quantities are kept in, 0 or more
	 * @throws BadInput when it is missing or nothing of the kind
	 */
	public double read(String field, String value) {
		Matcher matcher = WRITTEN.matcher(Given.text(field, value));
		if (matcher.matches()) {
			String unit = matcher.group(2).toLowerCase(Locale.ROOT).replaceAll("[\\s.]", "");
			Double factor = unit.isEmpty() ? Double.valueOf(1) : this.factors.get(unit);
			if (factor != null) {
				return Double.parseDouble(matcher.group(1).replace(',', '.')) * factor;
			}
		}
		throw new BadInput("%s '%s' can't be read".formatted(field, value), field,
				"write it in %s, for example %s".formatted(this.unit, this.example));
	}

}
