package org.leafward.care.web;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Where;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

/** Whom a rule is for, in words. */
final class WhomWords {

	private final Catalogue catalogue;

	WhomWords(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/** The plants or sites, for example "Boxwood, hollies; but not in pots". */
	String of(Concern concern) {
		if (!concern.site().isEmpty()) {
			return "The site as a whole, where it has " + join(concern.site().stream().map(SiteFeature::words))
					+ ((concern.freezing() != null) ? "; " + concern.freezing().words() : "");
		}
		List<String> more = new ArrayList<>();
		if (!concern.traits().isEmpty()) {
			more.add("noted as “%s”".formatted(names(concern.traits(), this.catalogue.traits())));
		}
		if (!concern.exceptGroups().isEmpty() || !concern.exceptSpecies().isEmpty()) {
			more.add("but not " + plants(concern.exceptGroups(), concern.exceptSpecies()));
		}
		if (concern.placement() != null) {
			more.add((concern.placement() == Placement.CONTAINER) ? "in containers" : "in the ground");
		}
		if (concern.wintersIndoors() != null) {
			more.add(concern.wintersIndoors() ? "kept indoors in winter" : "outdoors all year");
		}
		if (concern.saltExposed() != null) {
			more.add(concern.saltExposed() ? "where de\u2011icing salt reaches" : "where no salt reaches");
		}
		if (!concern.years().equals(YearsSincePlanting.ANY)) {
			more.add(years(concern.years()));
		}
		if (!concern.soils().isEmpty()) {
			more.add("on " + join(concern.soils().stream().map(SoilTexture::words)));
		}
		if (!concern.where().equals(Where.ANYWHERE)) {
			more.add("in " + where(concern.where()));
		}
		if (concern.freezing() != null) {
			more.add(concern.freezing().words());
		}
		String plants = plants(concern.groups(), concern.species());
		String all = (plants.isEmpty() ? "all plants" : plants)
				+ (more.isEmpty() ? "" : "; " + String.join(", ", more));
		return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1);
	}

	static String where(Where where) {
		return join(
				Stream.concat(where.counties().stream().map((county) -> county + " county"), where.regions().stream()));
	}

	String species(SpeciesId id) {
		return this.catalogue.find(id).map(Species::commonName).orElse(id.value());
	}

	private String plants(Collection<String> groups, Collection<SpeciesId> species) {
		return join(Stream.concat(groups.stream().map((one) -> low(this.catalogue.groups().getOrDefault(one, one))),
				species.stream().map(this::species)));
	}

	private static String names(Collection<String> codes, SortedMap<String, String> words) {
		return join(codes.stream().map((one) -> low(words.getOrDefault(one, one))));
	}

	private static String years(YearsSincePlanting years) {
		if (years.below() == Integer.MAX_VALUE) {
			return "from year %d after planting on".formatted(years.from());
		}
		if (years.from() == 0 && years.below() == 1) {
			return "in the season of planting";
		}
		return (years.from() == 0) ? "in the first %d seasons, that of planting among them".formatted(years.below())
				: "from year %d to year %d after planting".formatted(years.from(), years.below() - 1);
	}

	private static String low(String words) {
		return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
	}

	private static String join(Stream<String> words) {
		return words.sorted().collect(Collectors.joining(", "));
	}

}
