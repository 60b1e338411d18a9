package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with named places, cut at them ahead of its use.
 *
 * @param texts what stands before, between and after the places, one more than places
 * @param places numbers of values, {@link #COUNT} for the count
 */
record Saying(List<String> texts, List<Integer> places) {

	/** Stands for the count in place of the number of a value. */
	static final int COUNT = -1;

	private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)\\}");

	/**
	 * Cuts a text.
	 * @param text with places such as {day}
	 * @param values names of values in their order; a place that isn't among them is the
	 * count
	 * @return ready to be filled
	 */
	static Saying of(String text, List<String> values) {
		List<String> texts = new ArrayList<>();
		List<Integer> places = new ArrayList<>();
		Matcher matcher = PLACE.matcher(text);
		int end = 0;
		while (matcher.find()) {
			texts.add(text.substring(end, matcher.start()));
			places.add(values.indexOf(matcher.group(1)));
			end = matcher.end();
		}
		texts.add(text.substring(end));
		return new Saying(List.copyOf(texts), List.copyOf(places));
	}

	/**
	 * The names of the places of a text.
	 * @param text with places
	 * @return in their order
	 */
	static Set<String> places(String text) {
		Set<String> places = new LinkedHashSet<>();
		Matcher matcher = PLACE.matcher(text);
		while (matcher.find()) {
			places.add(matcher.group(1));
		}
		return places;
	}

	String fill(int count, String... values) {
		if (this.places.isEmpty()) {
			return this.texts.get(0);
		}
		StringBuilder filled = new StringBuilder(this.texts.get(0));
		for (int at = 0; at < this.places.size(); at++) {
			int place = this.places.get(at);
			if (place == COUNT) {
				filled.append(count);
			}
			else {
				filled.append(values[place]);
			}
			filled.append(this.texts.get(at + 1));
		}
		return filled.toString();
	}

}
