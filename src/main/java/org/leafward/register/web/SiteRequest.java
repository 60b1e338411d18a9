package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Microclimate;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.NewSite;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

/**
 * A site as somebody gives it, in a form or as JSON; nothing is checked yet.
 *
 * @param owner id of the person whose site it is; only by API
 * @param name what its people call it
 * @param county county or district
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevationMetres metres above sea level
 * @param zone time zone, for example America/Chicago
 * @param soil soil texture; loam when left out
 * @param sun full-sun, part-shade or shade; full sun when left out
 * @param wind sheltered, average or exposed; average when left out
 * @param lie flat, hollow, slope or hilltop; flat when left out
 * @param nearWall whether plants stand before a wall that faces the sun
 * @param inTown whether it is built up all around
 * @param measuredOffsetCelsius mean difference of the site's own minimum thermometer to
 * the estimate, -10 to 10; none when left out
 * @param region state or province by ISO 3166-2; none when left out
 * @param irrigation whether there is irrigation or an outside tap
 * @param volunteers whether volunteers work there together
 * @param flow what the hose or the sprinklers give, l/min or with its unit
 */
record SiteRequest(
		@Schema(types = "string", format = "uuid",
				description = "whoever asks when left out; the operator must name somebody") @Nullable String owner,
		@Schema(requiredMode = RequiredMode.REQUIRED, maxLength = 100) @Nullable String name, @Nullable String county,
		@Schema(types = "number", format = "double", minimum = "-90", maximum = "90",
				requiredMode = RequiredMode.REQUIRED) @Nullable String latitude,
		@Schema(types = "number", format = "double", minimum = "-180", maximum = "180",
				requiredMode = RequiredMode.REQUIRED) @Nullable String longitude,
		@Schema(types = "number", format = "double", minimum = "-430", maximum = "8850",
				requiredMode = RequiredMode.REQUIRED) @Nullable String elevationMetres,
		@Schema(requiredMode = RequiredMode.REQUIRED, example = "America/Chicago") @Nullable String zone,
		@Nullable String soil, @Nullable String sun, @Nullable String wind, @Nullable String lie,
		@Nullable Boolean nearWall, @Nullable Boolean inTown,
		@Schema(types = "number", format = "double", minimum = "-10",
				maximum = "10") @Nullable String measuredOffsetCelsius,
		@Schema(description = "state or province by ISO 3166-2", example = "US-MI") @Nullable String region,
		@Nullable Boolean irrigation, @Nullable Boolean volunteers, @Schema(types = {
				"number", "string" }, example = "3 gal/min") @Nullable String flow){

	NewSite toSite() {
		Findings all = new Findings();
		Supplier<String> called = all.read(() -> Given.text("name", this.name));
		Supplier<GeoPoint> point = all
			.read(() -> PlaceRequest.point(this.latitude, this.longitude, this.elevationMetres));
		Supplier<ZoneId> clock = all.read(() -> Given.zone("zone", this.zone));
		Supplier<SoilTexture> texture = all.read(() -> Given.word("soil", or(this.soil, "loam"), SoilTexture.class));
		Supplier<Sun> light = all.read(() -> Given.word("sun", or(this.sun, "full-sun"), Sun.class));
		Supplier<Wind> air = all.read(() -> Given.word("wind", or(this.wind, "average"), Wind.class));
		Supplier<Microclimate> nights = all
			.read(() -> PlaceRequest.microclimate(this.lie, this.nearWall, this.inTown, this.measuredOffsetCelsius));
		Supplier<String> state = all.read(() -> SiteSetting.region(or(this.region, "")));
		Supplier<Optional<Double>> water = all.read(() -> SizeRequest.quantity(Dimension.FLOW, "flow", this.flow));
		return all.give(() -> new NewSite(called.get(), (this.county != null) ? this.county : "", point.get(),
				clock.get(), texture.get(), light.get(), air.get(), nights.get(), state.get(),
				PlaceRequest.features(this.irrigation, this.volunteers), water.get().orElse(null)));
	}

	static String or(@Nullable String text, String otherwise) {
		return (text == null || text.isBlank()) ? otherwise : text;
	}

}
