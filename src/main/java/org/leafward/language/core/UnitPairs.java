package org.leafward.language.core;

import java.util.regex.Pattern;

/**
 * Amounts that are written in metric units with US customary ones in brackets, such as "5
 * to 15 g of nitrogen per square metre (1 to 3 lb per 1,000 sq ft)". Both languages write
 * them in one way, which a test holds every rule to. What a rule asks of the weather is
 * written the other way round, "32 °F (0 °C)".
 */
public final class UnitPairs {

	private static final String NUMBER = "[−-]?\\d[\\d,]*(?:[./]\\d+)?";

	private static final String NUMBERS = NUMBER + "(?:(?: (?:to|and|a|y) |–)" + NUMBER + ")?";

	private static final String METRIC = "(?:°C|mm|cm|km/h|km|m/s|m²|m|kg|g/m²|g|ml|litres?|litros?|minutes? per litre)";

	private static final String US = "(?:°F|in|pulg|ft|pies²|pies|pie²|pie|sq ft|gal|lb|fl oz|oz|mph|miles|millas)";

	private static final String METRIC_PART = " (?:per|on each|on a|in each|to the|por|en cada|en un|a cada) "
			+ "(?:square metre|cubic metre|centimetre|metre|litre|metro cuadrado|metro cúbico|centímetro|metro|litro)";

	private static final String US_PART = " (?:per|on|to the|in|por cada|por|en|a cada) (?:" + NUMBER + " )?"
			+ "(?:sq ft|square yard|square foot|inch|foot|gallon|gal|pies²|pie²|yarda cuadrada|pie cuadrado|pulgada|pulg|pie|galón)";

	/** Of what it is an amount; short, so that no text takes long. */
	private static final String WHAT = "([^\\d.,;:()]{0,60}?)";

	private static final String WHOLE = "(?<![\\d.,/])";

	/** 1 amount or count, 2 and 4 of what, 3 for each part; 5 and 6 the same in US. */
	private static final Pattern PARTS = Pattern
		.compile(WHOLE + "(" + NUMBERS + "(?: ?" + METRIC + ")?)(?![\\p{L}\\d])" + WHAT + "(" + METRIC_PART
				+ ")(?!\\p{L})" + WHAT + " \\((" + NUMBERS + "(?: ?" + US + ")?)(" + US_PART + ")\\)");

	/** 1 metric amount, 2 of what; 3 the US amount. */
	private static final Pattern PLAIN = Pattern.compile(WHOLE + "(" + NUMBERS + " ?" + METRIC + ")(?![\\p{L}\\d])"
			+ WHAT + " \\((" + NUMBERS + " ?" + US + "(?:" + US_PART + ")?)\\)");

	/** 1 one of a metric unit; 2 the US amount. */
	private static final Pattern ONE = Pattern
		.compile("(square metre|metro cuadrado) \\((" + NUMBERS + " (?:sq ft|pies²))\\)");

	/** 1 US amount as a rule asks for it; 2 the metric one. */
	private static final Pattern ASKED = Pattern
		.compile(WHOLE + "(" + NUMBERS + " ?" + US + ") \\((" + NUMBERS + " ?" + METRIC + ")\\)");

	private UnitPairs() {
	}

	/**
	 * Metric units only.
	 * @param text with pairs
	 * @return without the brackets of pairs
	 */
	public static String metric(String text) {
		String said = PARTS.matcher(text).replaceAll("$1$2$3$4");
		said = PLAIN.matcher(said).replaceAll("$1$2");
		said = ONE.matcher(said).replaceAll("$1");
		return ASKED.matcher(said).replaceAll("$2");
	}

	/**
	 * US customary units only.
	 * @param text with pairs
	 * @return each pair by what stands in its brackets
	 */
	public static String us(String text) {
		String said = PARTS.matcher(text).replaceAll("$5$2$6$4");
		said = PLAIN.matcher(said).replaceAll("$3$2");
		said = ONE.matcher(said).replaceAll("$2");
		return ASKED.matcher(said).replaceAll("$1");
	}

}
