package org.leafward.register.web;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.WaterBed;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * The bed whose water is asked for.
 *
 * @param rootDepthMetres depth of the roots, m; 0.45 when not given
 * @param plantFactor plant factor; 0.7 when not given
 * @param bed planting whose waterings count beside those of the whole site, or empty
 */
record BedRequest(@Nullable String rootDepthMetres, @Nullable String plantFactor, @Nullable String bed) {

	/** Shrubs, the same as those by whose water tasks come and go. */
	static final BedRequest SHRUBS = new BedRequest(String.valueOf(WaterBed.SHRUB_ROOTS),
			String.valueOf(WaterBed.SHRUB_FACTOR), "");

	static BedRequest of(@Nullable String rootDepthMetres, @Nullable String plantFactor, @Nullable String bed) {
		return new BedRequest((rootDepthMetres != null) ? rootDepthMetres : SHRUBS.rootDepthMetres(),
				(plantFactor != null) ? plantFactor : SHRUBS.plantFactor(), (bed != null) ? bed : SHRUBS.bed());
	}

	Optional<PlantingId> planting() {
		return WateringRequest.plantingId("bed", this.bed);
	}

	WaterBed toBed(Site site, Map<LocalDate, Double> waterings) {
		Findings all = new Findings();
		Supplier<Double> depth = all.read(() -> Given.number("rootDepthMetres", this.rootDepthMetres, "metres"));
		Supplier<Double> factor = all.read(() -> Given.number("plantFactor", this.plantFactor, "parts of one"));
		return all.give(() -> new WaterBed(site.soil().words(), depth.get(), factor.get(), WaterBed.USUAL_DEPLETION,
				waterings));
	}

	/** The page that draws it. */
	String address(Site site) {
		return UriComponentsBuilder.fromPath("/sites/{id}/weather")
			.queryParam("rootDepthMetres", "{depth}")
			.queryParam("plantFactor", "{factor}")
			.queryParam("bed", "{bed}")
			.encode()
			.buildAndExpand(site.id(), or(this.rootDepthMetres), or(this.plantFactor), or(this.bed))
			.toUriString();
	}

	private static String or(@Nullable String text) {
		return (text != null) ? text : "";
	}

}
