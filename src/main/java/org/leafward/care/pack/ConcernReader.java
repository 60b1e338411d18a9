package org.leafward.care.pack;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.care.pack.PackDraft.ConcernDraft;
import org.leafward.care.pack.PackDraft.YearsDraft;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;

/** Turns concerns as written into values, and finds names the catalogue doesn't have. */
final class ConcernReader {

	private final KnownPlants known;

	private final Complaints complaints;

	ConcernReader(KnownPlants known, Complaints complaints) {
		this.known = known;
		this.complaints = complaints;
	}

	Concern read(ConcernDraft draft, String path) {
		if (draft.groups() == null && draft.species() == null && draft.traits() == null
				&& !Boolean.TRUE.equals(draft.wintersIndoors()) && !Boolean.TRUE.equals(draft.saltExposed())) {
			this.complaints.add(path, "the rule doesn't say which plants it concerns",
					"add at least one of: groups, species, traits, winters-indoors: true, salt-exposed: true");
		}
		return new Concern(names(draft.groups(), path + "/groups", this.known.groups(), "plant group"),
				species(draft.species(), path + "/species"),
				names(draft.traits(), path + "/traits", this.known.traits(), "trait"),
				names(draft.exceptGroups(), path + "/except-groups", this.known.groups(), "plant group"),
				species(draft.exceptSpecies(), path + "/except-species"), placement(draft.placement()),
				draft.wintersIndoors(), draft.saltExposed(),
				years(draft.yearsSincePlanting(), path + "/years-since-planting"));
	}

	private Set<SpeciesId> species(@Nullable List<String> written, String path) {
		return names(written, path, this.known.species(), "species").stream()
			.map(SpeciesId::new)
			.collect(Collectors.toSet());
	}

	private Set<String> names(@Nullable List<String> written, String path, Set<String> names, String what) {
		List<String> list = (written != null) ? written : List.of();
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
