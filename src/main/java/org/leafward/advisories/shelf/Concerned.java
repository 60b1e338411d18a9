package org.leafward.advisories.shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Area;
import org.leafward.advisories.Growers;
import org.leafward.advisories.PlantChoice;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Catalogue;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.regions.core.Extent;
import org.leafward.register.SpotInArea;
import org.leafward.register.SpotsInArea;
import org.springframework.stereotype.Component;

/** Whom something concerns, by where they garden and what they grow. */
@Component
public class Concerned {

	/** As the database orders identifiers: by their octets, without signs. */
	public static final Comparator<PersonId> ORDER = Comparator
		.comparing((PersonId one) -> one.value().getMostSignificantBits(), Long::compareUnsigned)
		.thenComparing((one) -> one.value().getLeastSignificantBits(), Long::compareUnsigned);

	private final Growers growers;

	private final SpotsInArea spots;

	private final Regions regions;

	private final Catalogue catalogue;

	Concerned(Growers growers, SpotsInArea spots, Regions regions, Catalogue catalogue) {
		this.growers = growers;
		this.spots = spots;
		this.regions = regions;
		this.catalogue = catalogue;
	}

	/**
	 * Where, and whose plants.
	 *
	 * @param area where
	 * @param plants whose
	 */
	public record Aim(Area area, PlantChoice plants) {
	}

	/**
	 * People whom one of several aims concerns, in steps.
	 * @param aims the aims
	 * @param after the last one of the step before; null begins
	 * @param size 1 to 10,000
	 * @return in the order of their identifiers; empty at the end
	 */
	public List<PersonId> people(Collection<Aim> aims, @Nullable PersonId after, int size) {
		TreeSet<PersonId> all = new TreeSet<>(ORDER);
		PersonId certainTo = null;
		for (Aim aim : new HashSet<>(aims)) {
			List<PersonId> step = people(aim, after, size);
			all.addAll(step);
			if (step.size() == size) {
				// Beyond the end of a full step somebody may be missing.
				PersonId last = step.get(size - 1);
				certainTo = (certainTo == null || ORDER.compare(last, certainTo) < 0) ? last : certainTo;
			}
		}
		Set<PersonId> certain = (certainTo != null) ? all.headSet(certainTo, true) : all;
		return certain.stream().limit(size).toList();
	}

	private List<PersonId> people(Aim aim, @Nullable PersonId after, int size) {
		if (aim.area().rings().isEmpty()) {
			return this.growers.people(aim.area().counties(), aim.plants(), after, size);
		}
		TreeSet<PersonId> inside = new TreeSet<>(ORDER);
		inside(aim).forEach((spot) -> inside.add(spot.owner()));
		return ((after != null) ? inside.tailSet(after, false) : inside).stream().limit(size).toList();
	}

	/**
	 * Sites within the outlines of an aim.
	 * @param aim one with outlines
	 * @return those in its counties where one of its plants grows
	 */
	public List<SpotInArea> inside(Aim aim) {
		Extent box = aim.area()
			.rings()
			.stream()
			.map((ring) -> Extent.around(ring.positions()))
			.reduce(Extent::with)
			.orElseThrow();
		GeoPoint southWest = new GeoPoint(box.south(), box.west(), 0);
		GeoPoint northEast = new GeoPoint(box.north(), box.east(), 0);
		List<SpotInArea> spots = aim.plants().everything() ? this.spots.in(southWest, northEast)
				: this.spots.growing(southWest, northEast, aim.plants().among(this.catalogue.all()));
		Map<String, String> codes = codes();
		List<SpotInArea> inside = new ArrayList<>();
		for (SpotInArea spot : spots) {
			if (aim.area().holds(code(codes, spot.county(), spot.region()), spot.point())) {
				inside.add(spot);
			}
		}
		return inside;
	}

	/** Codes by name in lower case with and without the state. */
	private Map<String, String> codes() {
		Map<String, String> codes = new HashMap<>();
		for (County one : this.regions.counties()) {
			codes.put(key(one.name(), one.region()), one.code());
			codes.putIfAbsent(key(one.name(), ""), one.code());
		}
		return codes;
	}

	private static String key(String name, String region) {
		return name.toLowerCase(Locale.ROOT) + "|" + region;
	}

	private static String code(Map<String, String> codes, String county, String region) {
		return codes.getOrDefault(key(county, region), "");
	}

	/**
	 * Code of the county of a site.
	 * @param county its name as the site has it
	 * @param region state or province by ISO 3166-2; may be empty
	 * @return empty when the server has no such county
	 */
	public String county(String county, String region) {
		return code(codes(), county, region);
	}

}
