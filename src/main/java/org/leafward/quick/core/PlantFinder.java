package org.leafward.quick.core;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.leafward.measure.BadInput;
import org.leafward.plants.Catalogue;
import org.leafward.plants.NameLookup;
import org.leafward.plants.Species;

/** Makes species of names that somebody typed, several at a time. */
public final class PlantFinder {

	/** Characters that are looked at. */
	public static final int LONGEST = 300;

	/** Names that are looked up at a time. */
	public static final int MOST_NAMES = 12;

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
		NameLookup looked = NameLookup.of(catalogue, name);
		if (looked.fitting().isEmpty()) {
			found.unknown().add(new Offer(name, looked.near()));
		}
		else if (looked.sure()) {
			found.sure().add(looked.fitting().get(0));
		}
		else {
			found.offers().add(new Offer(name, looked.fitting()));
		}
	}

}
