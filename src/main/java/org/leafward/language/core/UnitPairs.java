package org.leafward.language.core;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Amounts that are written in metric units with US customary ones in brackets, such as "5
 * to 15 g of nitrogen per square metre (1 to 3 lb per 1,000 sq ft)". Both languages write
 * them in one way, which a test holds every rule to.
 */
public final class UnitPairs {

	private static final String NUMBER = "[−-]?\\d[\\d,]*(?:[./]\\d+)?";

	private static final String NUMBERS = NUMBER + "(?:(?: (?:to|and|a|y) |–)" + NUMBER + ")?";

	private static final String METRIC = "(?:°C|mm|cm|km/h|km|m²|m|kg|g/m²|g|ml|litres?|litros?|minutes? per litre)";

	private static final String US = "(?:°F|in|pulg|ft|pies²|pies|sq ft|gal|lb|oz|fl oz|mph|miles|millas)";

	private static final String METRIC_PART = " (?:per|on each|on a|in each|por|en cada|en un) "
			+ "(?:square metre|cubic metre|centimetre|metre|litre|metro cuadrado|metro cúbico|centímetro|metro|litro)";

	private static final String US_PART = " (?:per|on|to the|in|por|en|a cada) (?:" + NUMBER
			+ " )?(?:sq ft|square yard|square foot|inch|foot|gallon|gal|pies²|yarda cuadrada|pie cuadrado|pulgada|pulg|pie|galón)";

	/**
	 * 1 metric amount, 2 of what, 3 for each part, 4 of what that is a part; 5 US amount,
	 * 6 for each part.
	 */
	private static final Pattern PAIR = Pattern
		.compile("(" + NUMBERS + " ?" + METRIC + ")(?![\\p{L}\\d])" + "([^\\d.,;:()]{0,40}?)(" + METRIC_PART
				+ ")?([^\\d.,;:()]{0,40}?) \\((" + NUMBERS + " ?" + US + ")(" + US_PART + ")?\\)");

	private UnitPairs() {
	}

	/**
	 * Metric units only.
	 * @param text with pairs
	 * @return without the brackets of pairs
	 */
	public static String metric(String text) {
		return PAIR.matcher(text)
			.replaceAll((pair) -> Matcher
				.quoteReplacement(pair.group(1) + pair.group(2) + or(pair.group(3)) + pair.group(4)));
	}

	/**
	 * US customary units only.
	 * @param text with pairs
	 * @return each pair by what stands in its brackets
	 */
	public static String us(String text) {
		return PAIR.matcher(text)
			.replaceAll((pair) -> Matcher
				.quoteReplacement(pair.group(5) + pair.group(2) + or(pair.group(6)) + pair.group(4)));
	}

	private static String or(String text) {
		return (text != null) ? text : "";
	}

}
