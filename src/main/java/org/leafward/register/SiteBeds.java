package org.leafward.register;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A site with its beds.
 *
 * @param site the site
 * @param beds its beds, by name
 */
public record SiteBeds(Site site, List<Bed> beds) {

	public SiteBeds {
		beds = List.copyOf(beds);
	}

	/**
	 * A site without beds.
	 * @param site the site
	 * @return the site alone
	 */
	public static SiteBeds none(Site site) {
		return new SiteBeds(site, List.of());
	}

	/**
	 * The bed of a planting.
	 * @param planting one of the site's
	 * @return empty when it stands in none
	 */
	public Optional<Bed> of(Planting planting) {
		BedId bed = planting.bed();
		return (bed == null) ? Optional.empty() : this.beds.stream().filter((one) -> one.id().equals(bed)).findFirst();
	}

	/**
	 * The site as it is where a planting stands.
	 * @param planting one of the site's
	 * @return with light, wind and water of its bed
	 */
	public Site around(Planting planting) {
		return of(planting).map((bed) -> bed.over(this.site)).orElse(this.site);
	}

	/**
	 * Names of the beds.
	 * @return by identifier, in the order of the names
	 */
	public Map<BedId, String> names() {
		Map<BedId, String> names = new LinkedHashMap<>();
		this.beds.forEach((bed) -> names.put(bed.id(), bed.name()));
		return names;
	}

}
