package org.leafward.advisories;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.core.reach.GrowthCount;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.CountyPlants;
import org.springframework.stereotype.Service;

/** Counts the register. */
@Service
class RegisterGrowers implements Growers {

	private final Regions regions;

	private final Catalogue catalogue;

	private final CountyPlants plants;

	RegisterGrowers(Regions regions, Catalogue catalogue, CountyPlants plants) {
		this.regions = regions;
		this.catalogue = catalogue;
		this.plants = plants;
	}

	@Override
	public Growth count(Collection<String> counties, PlantChoice choice) {
		List<County> known = known(counties);
		Map<Short, Species> species = new HashMap<>();
		this.plants.codes().forEach((code, id) -> this.catalogue.find(id).ifPresent((one) -> species.put(code, one)));
		GrowthCount count = new GrowthCount(known.stream().map(County::code).toList(), choice, species);
		if (!known.isEmpty()) {
			this.plants.walk(known, count::site);
		}
		return count.growth();
	}

	@Override
	public List<PersonId> people(Collection<String> counties, PlantChoice choice, @Nullable PersonId after, int most) {
		List<County> known = known(counties);
		Set<SpeciesId> species = choice.everything() ? null : choice.among(this.catalogue.all());
		return known.isEmpty() ? List.of() : this.plants.people(known, species, after, most);
	}

	private List<County> known(Collection<String> counties) {
		return this.regions.counties().stream().filter((one) -> counties.contains(one.code())).toList();
	}

}
