package org.leafward.plants;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a name that somebody wrote may mean: singular or plural, common or botanical, with
 * a cultivar behind it or the other name in brackets, in any language whose names the
 * catalogue is found by. Pure.
 *
 * @param fitting what it names: one species without doubt, several when they all fit,
 * none when nothing does
 * @param near what is nearest to a name that fits nothing; perhaps nothing
 */
public record NameLookup(List<Species> fitting, List<Species> near) {

	private static final int OFFERED = 8;

	private static final int SUGGESTED = 4;

	private static final int MOST_OF_A_GROUP = 14;

	/**
	 * A cultivar epithet stands in single quotation marks (International Code of
	 * Nomenclature for Cultivated Plants, article 14); people take double ones too.
	 */
	private static final Pattern EPITHET = Pattern
		.compile("(?<!\\p{L})['\u2018\u2019\"\u201c][^'\u2018\u2019\"\u201c\u201d]{1,60}['\u2019\"\u201d](?!\\p{L})");

	/** Of English, then those that Spanish has besides. */
	private static final List<Plural> PLURALS = List.of(Plural.of("ies", "y"), Plural.of("(?<=[sxhzo])es", ""),
			Plural.of("s", ""), Plural.of("(?<=[lrndj])es", ""), Plural.of("ces", "z"));

	private static final Pattern BRACKETS = Pattern.compile("\\(([^()]{1,100})\\)");

	public NameLookup {
		fitting = List.copyOf(fitting);
		near = List.copyOf(near);
	}

	private record Plural(Pattern end, String singular) {

		static Plural of(String end, String singular) {
			return new Plural(Pattern.compile(end + "$", Pattern.CASE_INSENSITIVE), singular);
		}

	}

	/**
	 * Whether it names one species without doubt.
	 * @return true when exactly one fits
	 */
	public boolean sure() {
		return this.fitting.size() == 1;
	}

	/**
	 * Looks a name up.
	 * @param catalogue the catalogue
	 * @param name the name, at most 300 characters, or it takes long
	 * @return with suggestions when nothing fits
	 */
	public static NameLookup of(Catalogue catalogue, String name) {
		List<Species> fitting = fitting(catalogue, name);
		return new NameLookup(fitting, fitting.isEmpty() ? nearest(catalogue, name) : List.of());
	}

	/**
	 * The same without suggestions for what is unknown, which take most of the time.
	 * @param catalogue the catalogue
	 * @param name the name, at most 300 characters
	 * @return without what is near
	 */
	public static NameLookup withoutNear(Catalogue catalogue, String name) {
		return new NameLookup(fitting(catalogue, name), List.of());
	}

	/**
	 * Whether a species or a group has exactly this name, apart from number, cultivar,
	 * case, accents and punctuation; much faster than looking it up.
	 * @param catalogue the catalogue
	 * @param name the name
	 * @return false for what only resembles a name
	 */
	public static boolean isName(Catalogue catalogue, String name) {
		List<String> forms = allForms(name);
		return forms.stream().anyMatch((form) -> !catalogue.called(form).isEmpty())
				|| !groups(catalogue, forms).isEmpty();
	}

	/**
	 * Lower case without accents; everything but letters and digits becomes a blank.
	 * @param text any text
	 * @return as names are compared
	 */
	public static String fold(String text) {
		return NameSearch.fold(text);
	}

	private static List<Species> fitting(Catalogue catalogue, String name) {
		List<Species> fitting = List.of();
		List<String> written = written(name);
		for (int i = 0; fitting.isEmpty() && i < written.size(); i++) {
			fitting = exactly(catalogue, forms(written.get(i)));
		}
		for (int i = 0; fitting.isEmpty() && i < written.size(); i++) {
			List<String> forms = forms(written.get(i));
			for (int j = 0; fitting.isEmpty() && j < forms.size(); j++) {
				fitting = catalogue.search(forms.get(j), OFFERED);
			}
		}
		return fitting;
	}

	private static List<Species> exactly(Catalogue catalogue, List<String> forms) {
		List<Species> called = forms.stream().flatMap((form) -> catalogue.called(form).stream()).distinct().toList();
		if (called.size() == 1
				&& forms.stream().anyMatch((form) -> fold(form).equals(fold(called.get(0).commonName())))) {
			return called;
		}
		// "maple" is also what the sugar maple is called in Spanish.
		List<Species> group = ofGroup(catalogue, forms);
		return (called.size() == 1)
				? Stream.concat(called.stream(), group.stream()).distinct().limit(MOST_OF_A_GROUP).toList() : group;
	}

	/** All roses, for somebody who writes "roses". */
	private static List<Species> ofGroup(Catalogue catalogue, List<String> forms) {
		List<String> groups = groups(catalogue, forms);
		return catalogue.all()
			.stream()
			.filter((one) -> one.groups().stream().anyMatch(groups::contains))
			.limit(MOST_OF_A_GROUP)
			.toList();
	}

	private static List<String> groups(Catalogue catalogue, List<String> forms) {
		return catalogue.groups()
			.entrySet()
			.stream()
			.filter((group) -> forms(group.getValue()).stream()
				.anyMatch((form) -> forms.stream().anyMatch(form::equalsIgnoreCase)))
			.map(Map.Entry::getKey)
			.toList();
	}

	private static List<String> allForms(String name) {
		return written(name).stream().flatMap((one) -> forms(one).stream()).distinct().toList();
	}

	/**
	 * As it was written, then without its cultivar, then what is outside and in brackets.
	 */
	private static List<String> written(String name) {
		Matcher brackets = BRACKETS.matcher(name);
		String plain = EPITHET.matcher(name).replaceAll(" ");
		return Stream.of(name, plain, BRACKETS.matcher(plain).replaceAll(" "), brackets.find() ? brackets.group(1) : "")
			.map((one) -> one.strip().replaceAll("\\s+", " "))
			.filter((one) -> !fold(one).isEmpty())
			.distinct()
			.toList();
	}

	/** As it was written, then as one of several. */
	private static List<String> forms(String name) {
		return Stream
			.concat(Stream.of(name),
					PLURALS.stream().map((plural) -> plural.end().matcher(name).replaceFirst(plural.singular())))
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
