package org.leafward.plants;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.language.Language;
import org.leafward.measure.BadInput;
import org.springframework.stereotype.Service;

/**
 * Finds one species while somebody types its name: common, botanical or former, one or
 * several, in every language that the catalogue knows.
 */
@Service
public class SpeciesSearch {

	/** Most that are suggested. */
	public static final int MOST = 12;

	/** Characters that are looked at. */
	public static final int LONGEST = 80;

	private final Catalogue catalogue;

	private final PlantWords words;

	SpeciesSearch(Catalogue catalogue, PlantWords words) {
		this.catalogue = catalogue;
		this.words = words;
	}

	/**
	 * A species that may be meant.
	 *
	 * @param id identifier
	 * @param commonName usual English name
	 * @param botanicalName botanical name
	 * @param also the name by which it was found, when it is neither of these; null
	 * otherwise
	 */
	public record Suggestion(String id, String commonName, String botanicalName, @Nullable String also) {
	}

	/**
	 * What may be meant.
	 * @param text what was typed
	 * @return the likeliest first, at most {@value #MOST}; empty for a blank text
	 * @throws BadInput when the text is longer than {@value #LONGEST} characters
	 */
	public List<Suggestion> suggest(String text) {
		String typed = text.strip();
		if (typed.length() > LONGEST) {
			throw new BadInput("the name has %d characters".formatted(typed.length()), "species",
					"write at most %d".formatted(LONGEST));
		}
		if (NameSearch.fold(typed).isEmpty()) {
			return List.of();
		}
		Set<Species> found = new LinkedHashSet<>();
		byId(typed).ifPresent(found::add);
		forms(typed).forEach((form) -> found.addAll(this.catalogue.called(form)));
		// One letter fits half of the catalogue all the same; the first dozen is shown.
		forms(typed).forEach((form) -> found.addAll(this.catalogue.search(form, MOST)));
		return found.stream().limit(MOST).map((one) -> suggestion(one, typed)).toList();
	}

	/**
	 * The species that is meant without doubt.
	 * @param text its identifier, or a name that no other species has
	 * @return empty when it may be several or none
	 */
	public Optional<SpeciesId> sure(String text) {
		String typed = text.strip();
		Optional<Species> named = byId(typed);
		if (named.isPresent() || typed.length() > LONGEST || NameSearch.fold(typed).isEmpty()) {
			return named.map(Species::id);
		}
		List<Species> called = forms(typed).stream()
			.flatMap((form) -> this.catalogue.called(form).stream())
			.distinct()
			.toList();
		return (called.size() == 1 && !meansMany(called.get(0), typed)) ? Optional.of(called.get(0).id())
				: Optional.empty();
	}

	/**
	 * Whether a name of one species in one language is part of the names of others in
	 * another: "maple" is one tree's name somewhere.
	 */
	private boolean meansMany(Species one, String typed) {
		List<String> wanted = forms(typed).stream().map(NameSearch::fold).toList();
		return this.catalogue.search(typed, MOST)
			.stream()
			.filter((other) -> !other.equals(one))
			.anyMatch((other) -> wanted.stream()
				.anyMatch((form) -> (" " + NameSearch.fold(other.commonName()) + " ").contains(" " + form + " ")))
				&& Stream.of(one.commonName(), one.botanicalName())
					.noneMatch((name) -> wanted.contains(NameSearch.fold(name)));
	}

	private Optional<Species> byId(String typed) {
		try {
			return this.catalogue.find(new SpeciesId(typed));
		}
		catch (BadInput ex) {
			return Optional.empty();
		}
	}

	/** As it was typed, then as one of several: tomatoes, cherries, roses. */
	private static List<String> forms(String name) {
		return Stream
			.of(name, name.replaceFirst("(?i)ies$", "y"), name.replaceFirst("(?i)(?<=[sxhzo])es$", ""),
					name.replaceFirst("(?i)(?<=[^s])s$", ""))
			.filter((form) -> form.length() > 1 || form.equals(name))
			.distinct()
			.toList();
	}

	private Suggestion suggestion(Species one, String typed) {
		List<String> wanted = forms(typed).stream().map(NameSearch::fold).toList();
		boolean shown = Stream.of(one.commonName(), one.botanicalName()).anyMatch((name) -> fits(name, wanted));
		String also = shown ? null
				: Stream.concat(one.synonyms().stream(), this.words.namesOf(one, Language.SPANISH).stream())
					.filter((name) -> fits(name, wanted))
					.findFirst()
					.orElse(null);
		return new Suggestion(one.id().value(), one.commonName(), one.botanicalName(), also);
	}

	private static boolean fits(String name, List<String> wanted) {
		String folded = NameSearch.fold(name);
		return wanted.stream().anyMatch(folded::contains);
	}

}
