package org.leafward.regions;

import java.text.Normalizer;
import java.time.ZoneId;
import java.util.Locale;
import org.leafward.measure.GeoPoint;
import org.leafward.regions.core.Area;
import org.leafward.regions.core.Position;

/**
 * A county or district.
 *
 * @param name as sites are registered with it
 * @param region state or province by ISO 3166-2, such as US-MI
 * @param zone time zone
 * @param elevationMetres a typical height of its gardens, metres above sea level
 * @param area its shape
 */
public record County(String name, String region, ZoneId zone, double elevationMetres, Area area) {

	/**
	 * Its name in addresses and forms.
	 * @return for example {@code us-ia-alder-county}; no two counties share one
	 */
	public String code() {
		String plain = Normalizer.normalize(this.region + "-" + this.name, Normalizer.Form.NFD)
			.replaceAll("\\p{M}", "")
			.toLowerCase(Locale.ROOT);
		return plain.replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
	}

	/**
	 * A place for those who tell nothing but the county.
	 * @return a point well inside, at the typical height
	 */
	public GeoPoint somewhere() {
		Position inside = this.area.inside();
		return new GeoPoint(inside.latitude(), inside.longitude(), this.elevationMetres);
	}

}
