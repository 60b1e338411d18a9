package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Place;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Given;
import org.leafward.register.FoundPlace;
import org.leafward.register.NewSite;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteFeature;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTexture;

/**
 * Where a site is and what its nights are like, as somebody gives it; nothing is checked
 * yet.
 *
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevationMetres metres above sea level
 * @param lie flat, hollow, slope or hilltop
 * @param nearWall whether plants stand before a wall that faces the sun
 * @param inTown whether it is built up all around
 * @param measuredOffsetCelsius mean difference of the site's own minimum thermometer to
 * the estimate; empty for none
 * @param region state or province by ISO 3166-2; empty for none
 * @param irrigation whether there is irrigation or an outside tap
 * @param volunteers whether volunteers work there together
 * @param flow what the hose or the sprinklers give, l/min or with its unit; empty for not
 * known
 * @param county county or district
 * @param zone time zone
 * @param soil soil texture
 */
record PlaceRequest(
		@Schema(types = "number", format = "double", minimum = "-90", maximum = "90") @Nullable String latitude,
		@Schema(types = "number", format = "double", minimum = "-180", maximum = "180") @Nullable String longitude,
		@Schema(types = "number", format = "double", minimum = "-430",
				maximum = "8850") @Nullable String elevationMetres,
		@Schema(allowableValues = {
				"flat", "hollow", "slope", "hilltop" }) @Nullable String lie,
		@Nullable Boolean nearWall, @Nullable Boolean inTown,
		@Schema(types = { "number", "string" }, description = "-10 to 10; an empty text takes it away",
				example = "-1.2") @Nullable String measuredOffsetCelsius,
		@Schema(description = "state or province by ISO 3166-2; an empty text takes it away",
				example = "US-MI") @Nullable String region,
		@Nullable Boolean irrigation, @Nullable Boolean volunteers,
		@Schema(types = { "number", "string" }, description = "an empty text takes it away",
				example = "3 gal/min") @Nullable String flow,
		@Schema(maxLength = 100) @Nullable String county, @Schema(example = "America/Chicago") @Nullable String zone,
		@Schema(allowableValues = { "sand", "sandy-loam", "loam", "silt-loam", "clay-loam",
				"clay" }) @Nullable String soil){

	/**
	 * What was given, checked.
	 *
	 * @param setting place, region, features and flow
	 * @param county county or district
	 * @param zone time zone
	 * @param soil soil texture
	 */
	record Read(SiteSetting setting, String county, ZoneId zone, SoilTexture soil) {

		/** The site as it is then; its tasks follow. */
		Site save(Register register, Site site) {
			return register.together(() -> {
				register.change(site.id(), (now) -> this.setting);
				return register.change(site.id(), this.county, this.zone, this.soil);
			});
		}

	}

	static PlaceRequest of(Site site) {
		Microclimate microclimate = site.microclimate();
		Double measured = microclimate.measuredOffsetCelsius();
		return new PlaceRequest(String.valueOf(site.point().latitude()), String.valueOf(site.point().longitude()),
				String.valueOf(site.point().elevationMetres()), SiteAnswer.word(microclimate.lie()),
				microclimate.nearWall(), microclimate.inTown(), (measured != null) ? String.valueOf(measured) : "",
				site.region(), site.features().contains(SiteFeature.IRRIGATION),
				site.features().contains(SiteFeature.VOLUNTEERS), SizeRequest.written(site.litresPerMinute()),
				site.county(), site.zone().getId(), SiteAnswer.word(site.soil()));
	}

	/** What was left out stays as it is. */
	PlaceRequest over(Site site) {
		PlaceRequest now = of(site);
		return new PlaceRequest(or(this.latitude, now.latitude), or(this.longitude, now.longitude),
				or(this.elevationMetres, now.elevationMetres), or(this.lie, now.lie), or(this.nearWall, now.nearWall),
				or(this.inTown, now.inTown), or(this.measuredOffsetCelsius, now.measuredOffsetCelsius),
				or(this.region, now.region), or(this.irrigation, now.irrigation), or(this.volunteers, now.volunteers),
				or(this.flow, now.flow), or(this.county, now.county), or(this.zone, now.zone), or(this.soil, now.soil));
	}

	private static <T> @Nullable T or(@Nullable T given, @Nullable T now) {
		return (given != null) ? given : now;
	}

	/**
	 * Checks all of it.
	 * @param site whose county, zone and soil stay where none are given
	 * @return ready to be saved
	 */
	Read read(Site site) {
		Findings all = new Findings();
		Supplier<SiteSetting> setting = all.read(this::toSetting);
		Supplier<String> district = all.read(() -> NewSite.county((this.county != null) ? this.county : site.county()));
		Supplier<ZoneId> clock = all
			.read(() -> NewSite.zone(Given.zone("zone", SiteRequest.or(this.zone, site.zone().getId()))));
		Supplier<SoilTexture> texture = all
			.read(() -> Given.word("soil", SiteRequest.or(this.soil, SiteAnswer.word(site.soil())), SoilTexture.class));
		return all.give(() -> new Read(setting.get(), district.get(), clock.get(), texture.get()));
	}

	/** With another place, as somebody chose it; the rest stays. */
	PlaceRequest at(FoundPlace place) {
		GeoPoint point = place.point();
		return new PlaceRequest(String.valueOf(point.latitude()), String.valueOf(point.longitude()),
				SizeRequest.written(point.elevationMetres()), this.lie, this.nearWall, this.inTown,
				this.measuredOffsetCelsius, place.region(), this.irrigation, this.volunteers, this.flow, place.county(),
				place.zone().getId(), this.soil);
	}

	/** Where the test by hand shall tell the soil, none is chosen yet. */
	PlaceRequest beforeTests() {
		return HandTests.BY_FEEL.equals(this.soil) ? with(this.flow, null) : this;
	}

	private PlaceRequest with(@Nullable String water, @Nullable String texture) {
		return new PlaceRequest(this.latitude, this.longitude, this.elevationMetres, this.lie, this.nearWall,
				this.inTown, this.measuredOffsetCelsius, this.region, this.irrigation, this.volunteers, water,
				this.county, this.zone, texture);
	}

	/** With soil and flow as the tests by hand tell them. */
	PlaceRequest worked(HandTests tests) {
		Findings all = new Findings();
		Supplier<String> texture = all.read(() -> tests.soil(SiteRequest.or(this.soil, ""))
			.map(SiteAnswer::word)
			.orElse(SiteRequest.or(this.soil, "")));
		Supplier<String> water = all.read(() -> tests.flow(SiteRequest.or(this.flow, "")));
		return all.give(() -> with(water.get(), texture.get().isEmpty() ? null : texture.get()));
	}

	private SiteSetting toSetting() {
		Findings all = new Findings();
		Supplier<GeoPoint> point = all.read(() -> point(this.latitude, this.longitude, this.elevationMetres));
		Supplier<Microclimate> nights = all
			.read(() -> microclimate(this.lie, this.nearWall, this.inTown, this.measuredOffsetCelsius));
		Supplier<String> state = all.read(() -> SiteSetting.region((this.region != null) ? this.region : ""));
		Supplier<Optional<Double>> water = all.read(() -> SizeRequest.quantity(Dimension.FLOW, "flow", this.flow));
		return all.give(() -> new SiteSetting(new Place(point.get(), nights.get()), state.get(),
				features(this.irrigation, this.volunteers), water.get().orElse(null)));
	}

	static Set<SiteFeature> features(@Nullable Boolean irrigation, @Nullable Boolean volunteers) {
		Set<SiteFeature> features = EnumSet.noneOf(SiteFeature.class);
		if (Boolean.TRUE.equals(irrigation)) {
			features.add(SiteFeature.IRRIGATION);
		}
		if (Boolean.TRUE.equals(volunteers)) {
			features.add(SiteFeature.VOLUNTEERS);
		}
		return features;
	}

	static GeoPoint point(@Nullable String latitude, @Nullable String longitude, @Nullable String elevationMetres) {
		Findings all = new Findings();
		Supplier<Double> north = all.read(() -> Given.number("latitude", latitude, "degrees north"));
		Supplier<Double> east = all.read(() -> Given.number("longitude", longitude, "degrees east"));
		Supplier<Double> height = all
			.read(() -> Given.number("elevationMetres", elevationMetres, "metres above sea level"));
		return all.give(() -> new GeoPoint(north.get(), east.get(), height.get()));
	}

	static Microclimate microclimate(@Nullable String lie, @Nullable Boolean nearWall, @Nullable Boolean inTown,
			@Nullable String measured) {
		return new Microclimate(Given.word("lie", SiteRequest.or(lie, "flat"), Microclimate.Lie.class),
				Boolean.TRUE.equals(nearWall), Boolean.TRUE.equals(inTown), (measured == null || measured.isBlank())
						? null : Double.valueOf(Given.number("measuredOffsetCelsius", measured, "degrees Celsius")));
	}

}
