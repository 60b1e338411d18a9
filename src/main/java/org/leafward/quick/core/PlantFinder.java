package org.leafward.quick.core;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.leafward.measure.BadInput;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;

/** Makes species of names that somebody typed, several at a time. */
public final class PlantFinder {

	/** Characters that are looked at. */
	public static final int LONGEST = 300;

	/** Names that are looked up at a time. */
	public static final int MOST_NAMES = 12;

	private static final int OFFERED = 8;

	private static final int SUGGESTED = 4;

	private static final int MOST_OF_A_GROUP = 14;

	private PlantFinder() {
	}

	/**
	 * What was found.
	 *
	 * @param sure species that were named without doubt
	 * @param offers names that fit several species
	 * @param unknown names that fit none
	 */
	public record Found(List<Species> sure, List<Offer> offers, List<Offer> unknown) {
	}

	/**
	 * A name and what it may mean.
	 *
	 * @param typed as it was typed
	 * @param species what fits; of an unknown name what is nearest, perhaps nothing
	 */
	public record Offer(String typed, List<Species> species) {
	}

	/**
	 * Looks names up.
	 * @param catalogue the catalogue
	 * @param text names with commas or lines between
	 * @return what was found, in the order of the names
	 * @throws BadInput when the text is too long or holds too many names
	 */
	public static Found find(Catalogue catalogue, String text) {
		if (text.length() > LONGEST) {
			throw new BadInput("that is too long, %,d characters".formatted(text.length()), "search",
					"write a few names at a time, up to %d characters".formatted(LONGEST));
		}
		Set<String> names = new LinkedHashSet<>();
		Stream.of(text.split("[,;\n\r]")).map(String::strip).filter((name) -> !name.isEmpty()).forEach(names::add);
		if (names.size() > MOST_NAMES) {
			throw new BadInput("those are %d names".formatted(names.size()), "search",
					"write up to %d at a time".formatted(MOST_NAMES));
		}
		Found found = new Found(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
		names.forEach((name) -> look(catalogue, name, found));
		return found;
	}

	private static void look(Catalogue catalogue, String name, Found found) {
		List<String> forms = forms(name);
		List<Species> called = forms.stream().flatMap((form) -> catalogue.called(form).stream()).distinct().toList();
		List<Species> fitting = (called.size() == 1) ? called : ofGroup(catalogue, forms);
		for (int i = 0; fitting.isEmpty() && i < forms.size(); i++) {
			fitting = catalogue.search(forms.get(i), OFFERED);
		}
		if (fitting.isEmpty()) {
			found.unknown().add(new Offer(name, nearest(catalogue, name)));
		}
		else if (fitting.size() == 1) {
			found.sure().add(fitting.get(0));
		}
		else {
			found.offers().add(new Offer(name, fitting));
		}
	}

	/** All roses, for somebody who writes "roses". */
	private static List<Species> ofGroup(Catalogue catalogue, List<String> forms) {
		List<String> groups = catalogue.groups()
			.entrySet()
			.stream()
			.filter((group) -> forms(group.getValue()).stream()
				.anyMatch((form) -> forms.stream().anyMatch(form::equalsIgnoreCase)))
			.map(Map.Entry::getKey)
			.toList();
		return catalogue.all()
			.stream()
			.filter((one) -> one.groups().stream().anyMatch(groups::contains))
			.limit(MOST_OF_A_GROUP)
			.toList();
	}

	/** As it was typed, then as one of several. */
	private static List<String> forms(String name) {
		return Stream
			.of(name, name.replaceFirst("(?i)ies$", "y"), name.replaceFirst("(?i)(?<=[sxhzo])es$", ""),
					name.replaceFirst("(?i)s$", ""))
			.filter((form) -> form.length() > 1)
			.distinct()
			.toList();
	}

	/** By single words, then by ever shorter beginnings of them. */
	private static List<Species> nearest(Catalogue catalogue, String name) {
		Set<Species> near = new LinkedHashSet<>();
		List<String> words = Stream.of(name.split("[^\\p{L}]+")).filter((word) -> word.length() > 3).limit(4).toList();
		for (int length = 30; length >= 4 && near.isEmpty(); length = Math.min(length - 1, 8)) {
			int most = length;
			words.stream()
				.filter((word) -> word.length() >= Math.min(most, 8))
				.map((word) -> word.substring(0, Math.min(word.length(), most)))
				.forEach((begin) -> near.addAll(catalogue.search(begin, SUGGESTED)));
		}
		return near.stream().limit(SUGGESTED).toList();
	}

}
