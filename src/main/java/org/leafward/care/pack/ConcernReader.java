package org.leafward.care.pack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Freezing;
import org.leafward.care.core.rule.Where;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.care.pack.PackDraft.ConcernDraft;
import org.leafward.care.pack.PackDraft.FreezingDraft;
import org.leafward.care.pack.PackDraft.WhereDraft;
import org.leafward.care.pack.PackDraft.YearsDraft;
import org.leafward.care.pack.PhenologyDraft.PlantsDraft;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

/** Turns concerns as written into values, and finds names the catalogue doesn't have. */
final class ConcernReader {

	private final KnownPlants known;

	private final Complaints complaints;

	ConcernReader(KnownPlants known, Complaints complaints) {
		this.known = known;
		this.complaints = complaints;
	}

	/**
	 * Reads the concern of a rule.
	 * @param tested whether a soil test already chooses the beds
	 */
	Concern read(ConcernDraft draft, String path, boolean tested) {
		boolean aboutSite = draft.site() != null;
		if (aboutSite) {
			withoutPlants(draft, path);
		}
		else if (!tested && draft.groups() == null && draft.species() == null && draft.traits() == null
				&& !Boolean.TRUE.equals(draft.wintersIndoors()) && !Boolean.TRUE.equals(draft.saltExposed())) {
			this.complaints.add(path, "the rule doesn't say which plants it concerns",
					"add at least one of: groups, species, traits, winters-indoors: true, salt-exposed: true, site");
		}
		return new Concern(names(draft.groups(), path + "/groups", this.known.groups(), "plant group"),
				species(draft.species(), path + "/species"),
				names(draft.traits(), path + "/traits", this.known.traits(), "trait"),
				names(draft.exceptGroups(), path + "/except-groups", this.known.groups(), "plant group"),
				species(draft.exceptSpecies(), path + "/except-species"), placement(draft.placement()),
				draft.wintersIndoors(), draft.saltExposed(),
				years(draft.yearsSincePlanting(), path + "/years-since-planting"),
				values(draft.soils(), SoilTexture.class), where(draft.where()), values(draft.site(), SiteFeature.class),
				freezing(draft.whereItFreezes()));
	}

	Concern read(PlantsDraft draft, String path) {
		return Concern.of(names(draft.groups(), path + "/groups", this.known.groups(), "plant group"),
				species(draft.species(), path + "/species"),
				names(draft.traits(), path + "/traits", this.known.traits(), "trait"));
	}

	static Where where(@Nullable WhereDraft draft) {
		return (draft == null) ? Where.ANYWHERE
				: new Where(Set.copyOf(orEmpty(draft.regions())), Set.copyOf(orEmpty(draft.counties())));
	}

	private static @Nullable Freezing freezing(@Nullable FreezingDraft draft) {
		return (draft == null) ? null : new Freezing(TemperatureThreshold.parse(draft.to()), draft.oneYearIn());
	}

	/** A rule about a site as a whole says nothing about plants. */
	private void withoutPlants(ConcernDraft draft, String path) {
		Map<String, Object> plants = new LinkedHashMap<>();
		put(plants, "groups", draft.groups());
		put(plants, "species", draft.species());
		put(plants, "traits", draft.traits());
		put(plants, "except-groups", draft.exceptGroups());
		put(plants, "except-species", draft.exceptSpecies());
		put(plants, "placement", draft.placement());
		put(plants, "winters-indoors", draft.wintersIndoors());
		put(plants, "salt-exposed", draft.saltExposed());
		put(plants, "years-since-planting", draft.yearsSincePlanting());
		plants.keySet()
			.forEach((entry) -> this.complaints.add(path + "/" + entry,
					"a rule about a site as a whole takes no '%s'".formatted(entry), "remove it, or remove 'site'"));
	}

	private static void put(Map<String, Object> plants, String entry, @Nullable Object written) {
		if (written != null) {
			plants.put(entry, written);
		}
	}

	private static <E extends Enum<E>> Set<E> values(@Nullable List<String> codes, Class<E> type) {
		return orEmpty(codes).stream()
			.map((code) -> Enum.valueOf(type, code.toUpperCase(Locale.ROOT).replace('-', '_')))
			.collect(Collectors.toSet());
	}

	private static List<String> orEmpty(@Nullable List<String> list) {
		return (list != null) ? list : List.of();
	}

	private Set<SpeciesId> species(@Nullable List<String> written, String path) {
		return names(written, path, this.known.species(), "species").stream()
			.map(SpeciesId::new)
			.collect(Collectors.toSet());
	}

	private Set<String> names(@Nullable List<String> written, String path, Set<String> names, String what) {
		List<String> list = orEmpty(written);
		for (int i = 0; i < list.size(); i++) {
			if (!names.contains(list.get(i))) {
				this.complaints.add(path + "/" + i, "there is no %s '%s'".formatted(what, list.get(i)),
						"use one of the catalogue (config/plants), or add it there");
			}
		}
		return Set.copyOf(list);
	}

	private static @Nullable Placement placement(@Nullable String written) {
		if (written == null) {
			return null;
		}
		return written.equals("ground") ? Placement.GROUND : Placement.CONTAINER;
	}

	private YearsSincePlanting years(@Nullable YearsDraft draft, String path) {
		if (draft == null) {
			return YearsSincePlanting.ANY;
		}
		int from = Objects.requireNonNullElse(draft.from(), 0);
		int below = Objects.requireNonNullElse(draft.below(), Integer.MAX_VALUE);
		if (below <= from) {
			this.complaints.add(path, "no year is from %d and below %d".formatted(from, below),
					"write a 'below' greater than 'from'");
			return YearsSincePlanting.ANY;
		}
		return new YearsSincePlanting(from, below);
	}

}
