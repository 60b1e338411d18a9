package org.leafward.plants;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Finds species by their names, without regard to case, accents and punctuation. Pure;
 * the names are folded once.
 */
final class NameSearch {

	private static final int NOWHERE = Integer.MAX_VALUE;

	/** The fewest letters of a word that may hold one slip, and two. */
	private static final int ONE_SLIP = 5;

	private static final int TWO_SLIPS = 9;

	private final Map<Species, List<Name>> names = new LinkedHashMap<>();

	/**
	 * Folds the names.
	 * @param species the species
	 * @param further names that they have besides
	 */
	NameSearch(Iterable<Species> species, Function<Species, List<String>> further) {
		for (Species one : species) {
			this.names.put(one,
					Stream
						.of(Stream.of(one.commonName(), one.botanicalName()), one.synonyms().stream(),
								further.apply(one).stream())
						.flatMap((names) -> names)
						.map(NameSearch::fold)
						.distinct()
						.map((name) -> new Name(name, name.split(" ")))
						.toList());
		}
	}

	/**
	 * Finds species: a name that is the text first, then names that begin with it, with a
	 * word that begins with it, that contain it, that have all its words in another
	 * order, and last names that are a slip of the pen away, the fewest slips first.
	 * @param text what was typed; without a letter or digit it finds everything
	 * @return in the order of the species within each
	 */
	List<Species> find(String text) {
		String wanted = fold(text);
		if (wanted.isEmpty()) {
			return List.copyOf(this.names.keySet());
		}
		String[] words = wanted.split(" ");
		return this.names.entrySet()
			.stream()
			.map((entry) -> new Found(entry.getKey(), rank(entry.getValue(), wanted, words)))
			.filter((found) -> found.rank() < NOWHERE)
			.sorted(Comparator.comparingInt(Found::rank))
			.map(Found::species)
			.toList();
	}

	/**
	 * Species that have exactly this name.
	 * @param text the name
	 * @return in the order of the species
	 */
	List<Species> called(String text) {
		String wanted = fold(text);
		return this.names.entrySet()
			.stream()
			.filter((entry) -> entry.getValue().stream().anyMatch((name) -> name.text().equals(wanted)))
			.map(Map.Entry::getKey)
			.toList();
	}

	private static int rank(List<Name> names, String wanted, String[] words) {
		return names.stream().mapToInt((name) -> rank(name, wanted, words)).min().orElse(NOWHERE);
	}

	private static int rank(Name name, String wanted, String[] words) {
		if (name.text().startsWith(wanted)) {
			return (name.text().length() == wanted.length()) ? 0 : 1;
		}
		if (name.text().contains(" " + wanted)) {
			return 2;
		}
		if (name.text().contains(wanted)) {
			return 3;
		}
		int slips = 0;
		for (String word : words) {
			int least = Arrays.stream(name.words()).mapToInt((other) -> slips(word, other)).min().orElse(NOWHERE);
			if (least == NOWHERE) {
				return NOWHERE;
			}
			slips += least;
		}
		return 4 + slips;
	}

	/**
	 * None when the word begins the other one; else slips, as far as its length allows.
	 */
	private static int slips(String word, String other) {
		if (other.startsWith(word)) {
			return 0;
		}
		int allowed = (word.length() >= TWO_SLIPS) ? 2 : (word.length() >= ONE_SLIP) ? 1 : 0;
		if (Math.abs(word.length() - other.length()) > allowed) {
			return NOWHERE;
		}
		int distance = distance(word, other);
		return (distance <= allowed) ? distance : NOWHERE;
	}

	/**
	 * Optimal string alignment: letters put in, left out, replaced, or two neighbours
	 * swapped (Damerau 1964), by the usual table.
	 */
	static int distance(String one, String other) {
		int[][] table = new int[one.length() + 1][other.length() + 1];
		for (int i = 0; i <= one.length(); i++) {
			for (int j = 0; j <= other.length(); j++) {
				if (i == 0 || j == 0) {
					table[i][j] = i + j;
					continue;
				}
				int same = (one.charAt(i - 1) == other.charAt(j - 1)) ? 0 : 1;
				int least = Math.min(table[i - 1][j - 1] + same, Math.min(table[i - 1][j], table[i][j - 1]) + 1);
				if (i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2)
						&& one.charAt(i - 2) == other.charAt(j - 1)) {
					least = Math.min(least, table[i - 2][j - 2] + 1);
				}
				table[i][j] = least;
			}
		}
		return table[one.length()][other.length()];
	}

	/**
	 * Lower case without accents; the sign of a hybrid becomes x, an apostrophe goes,
	 * everything else between letters and digits becomes a blank.
	 */
	static String fold(String text) {
		return Normalizer.normalize(text.replace('\u00d7', 'x'), Normalizer.Form.NFD)
			.replaceAll("[\\p{M}'\u2019]", "")
			.toLowerCase(Locale.ROOT)
			.replaceAll("[^\\p{L}\\p{N}]+", " ")
			.strip();
	}

	private record Name(String text, String[] words) {
	}

	private record Found(Species species, int rank) {
	}

}
