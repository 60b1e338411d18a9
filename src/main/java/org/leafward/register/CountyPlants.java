package org.leafward.register;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.County;
import org.leafward.register.store.SitePlantsTable;
import org.springframework.stereotype.Service;

/**
 * What grows in counties, for counting. A site belongs to a county by the name and region
 * that it was registered with; one without a region by its name alone.
 */
@Service
public class CountyPlants {

	/** People of one step at most. */
	public static final int MOST_PEOPLE = 10_000;

	private final SitePlantsTable table;

	CountyPlants(SitePlantsTable table) {
		this.table = table;
	}

	/** Told of each site. */
	@FunctionalInterface
	public interface Visitor {

		/**
		 * A site.
		 * @param owner whose it is
		 * @param county code of its county
		 * @param plants codes of its plantings in rising order, a planting each
		 */
		void site(UUID owner, String county, short[] plants);

	}

	/**
	 * The short codes that stand for species.
	 * @return species by code
	 */
	public Map<Short, SpeciesId> codes() {
		return this.table.codes();
	}

	/**
	 * Goes through all sites of some counties, those of the server left out.
	 * @param counties which
	 * @param visitor is told of each
	 */
	public void walk(Collection<County> counties, Visitor visitor) {
		this.table.walk(counties, PersonId.SERVER, visitor);
	}

	/**
	 * The people who have sites in some counties, for going through all in steps.
	 * @param counties which
	 * @param species with one of these; null for all, whatever grows there
	 * @param after the last one of the step before, or null
	 * @param most how many at most, 1 to {@value #MOST_PEOPLE}
	 * @return in the order of their identifiers
	 */
	public List<PersonId> people(Collection<County> counties, @Nullable Set<SpeciesId> species,
			@Nullable PersonId after, int most) {
		return this.table.people(counties, species, PersonId.SERVER, after, Math.max(1, Math.min(most, MOST_PEOPLE)));
	}

}
