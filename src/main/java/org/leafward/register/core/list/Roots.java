package org.leafward.register.core.list;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.leafward.plants.NameLookup;
import org.leafward.register.Placement;

/** Where roots are, as people write it in English or Spanish. */
final class Roots {

	private static final Set<String> GROUND = Set.of("ground", "in the ground", "in ground", "the ground", "soil",
			"in the soil", "earth", "garden bed", "raised bed", "suelo", "en el suelo", "tierra", "en tierra",
			"en la tierra");

	private static final Set<String> CONTAINER = Set.of("container", "containers", "in a container", "in containers",
			"in container", "pot", "pots", "in a pot", "in pots", "in pot", "potted", "planter", "in a planter", "tub",
			"in a tub", "maceta", "macetas", "en maceta", "en macetas", "en una maceta", "contenedor", "en contenedor",
			"tiesto", "en tiesto", "jardinera", "en jardinera");

	/** A pot with its size. */
	private static final Pattern SIZED = Pattern
		.compile("(?:\\d{1,4} (?:l|gal|gallon|litre|liter|in|inch|cm|litros) )(?:pot|pots|container|maceta)");

	private static final Set<String> YES = Set.of("yes", "y", "x", "true", "1", "si", "s");

	private static final Set<String> NO = Set.of("no", "n", "false", "0");

	private Roots() {
	}

	static Optional<Placement> read(String text) {
		String folded = NameLookup.fold(text);
		if (GROUND.contains(folded)) {
			return Optional.of(Placement.GROUND);
		}
		return (CONTAINER.contains(folded) || sized(text)) ? Optional.of(Placement.CONTAINER) : Optional.empty();
	}

	/** Whether it tells the size of a pot too, which is not taken over. */
	static boolean sized(String text) {
		return SIZED.matcher(NameLookup.fold(text)).matches();
	}

	/** In a column that is called "pot". */
	static Optional<Placement> inPot(String text) {
		String folded = NameLookup.fold(text);
		if (YES.contains(folded)) {
			return Optional.of(Placement.CONTAINER);
		}
		return NO.contains(folded) ? Optional.of(Placement.GROUND) : read(text);
	}

	/** In a column that is called "ground". */
	static Optional<Placement> inGround(String text) {
		String folded = NameLookup.fold(text);
		if (YES.contains(folded)) {
			return Optional.of(Placement.GROUND);
		}
		return NO.contains(folded) ? Optional.of(Placement.CONTAINER) : read(text);
	}

}
