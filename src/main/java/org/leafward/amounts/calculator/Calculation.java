package org.leafward.amounts.calculator;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.leafward.measure.BadInput;

/**
 * A calculator's answer with what it was asked.
 *
 * @param calculator its name in addresses, for example "salt"
 * @param inputs what was given, by name of the field, in the order of the form, without
 * what was left empty
 * @param words the answer in a sentence or two
 * @param figures what was told of plants and ground
 */
public record Calculation(String calculator, Map<String, String> inputs, String words, GivenFigures figures) {

	public Calculation {
		inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
	}

	/**
	 * The inputs as they stand in an address.
	 * @return for example "what=bed&amp;area=130%20sq%20ft"; empty when nothing was given
	 */
	public String query() {
		return query(this.inputs);
	}

	/**
	 * Inputs as they stand in an address.
	 * @param inputs by name of the field
	 * @return names and values, encoded so that each reader of addresses takes them alike
	 */
	public static String query(Map<String, String> inputs) {
		return inputs.entrySet()
			.stream()
			.map((one) -> one.getKey() + "=" + encoded(one.getValue()))
			.collect(Collectors.joining("&"));
	}

	/**
	 * Inputs out of an address.
	 * @param query names and values, encoded as forms are
	 * @return by name of the field; what has no name is left out
	 * @throws BadInput when it isn't encoded as forms are
	 */
	public static Map<String, String> inputs(String query) {
		Map<String, String> inputs = new LinkedHashMap<>();
		for (String pair : query.split("&")) {
			int parts = pair.indexOf('=');
			if (parts > 0) {
				inputs.put(pair.substring(0, parts), decoded(pair.substring(parts + 1)));
			}
		}
		return inputs;
	}

	/** A plus sign is a space to forms only. */
	private static String encoded(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
	}

	private static String decoded(String text) {
		try {
			return URLDecoder.decode(text, StandardCharsets.UTF_8);
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("'%s' is not encoded as a form's text is".formatted(text), "inputs",
					"write a per cent sign as %25");
		}
	}

}
