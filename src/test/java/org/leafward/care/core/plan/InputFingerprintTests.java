package org.leafward.care.core.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.climate.Microclimate;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.SiteFeature;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.WateredDepths;
import org.leafward.register.Wind;

import static org.assertj.core.api.Assertions.assertThat;

/** Anything that a plan is made from makes another fingerprint. */
class InputFingerprintTests {

	private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

	private static final SiteId SITE = new SiteId(new UUID(1, 1));

	private static final GeoPoint POINT = new GeoPoint(45, -90, 200);

	private static final Set<SiteFeature> BOTH = Set.of(SiteFeature.IRRIGATION, SiteFeature.VOLUNTEERS);

	private static final Map<LocalDate, Double> WATER = Map.of(DAY, 12.5);

	@Test
	void eachInputCounts() {
		Site site = site(POINT, SoilTexture.LOAM, Microclimate.NONE, "US-MI", BOTH);
		List<Planting> one = List.of(planting(1, "hedge"));
		Set<String> all = new HashSet<>();
		all.add(of(site, one, "", WATER, "weather", "rules", DAY));
		all.add(of(site(new GeoPoint(45, -90, 201), SoilTexture.LOAM, Microclimate.NONE, "US-MI", BOTH), one, "", WATER,
				"weather", "rules", DAY));
		all.add(of(site(POINT, SoilTexture.SAND, Microclimate.NONE, "US-MI", BOTH), one, "", WATER, "weather", "rules",
				DAY));
		all.add(of(site(POINT, SoilTexture.LOAM, new Microclimate(Microclimate.Lie.HOLLOW, false, false, null), "US-MI",
				BOTH), one, "", WATER, "weather", "rules", DAY));
		all.add(of(site(POINT, SoilTexture.LOAM, Microclimate.NONE, "US-WI", BOTH), one, "", WATER, "weather", "rules",
				DAY));
		all.add(of(site(POINT, SoilTexture.LOAM, Microclimate.NONE, "US-MI", Set.of(SiteFeature.IRRIGATION)), one, "",
				WATER, "weather", "rules", DAY));
		all.add(of(site, List.of(), "", WATER, "weather", "rules", DAY));
		all.add(of(site, List.of(planting(1, "border")), "", WATER, "weather", "rules", DAY));
		all.add(of(site, List.of(planting(1, "hedge"), planting(2, "hedge")), "", WATER, "weather", "rules", DAY));
		all.add(of(site, one, "bud-break", WATER, "weather", "rules", DAY));
		all.add(of(site, one, "", Map.of(), "weather", "rules", DAY));
		all.add(of(site, one, "", Map.of(DAY, 12.6), "weather", "rules", DAY));
		all.add(of(site, one, "", Map.of(DAY.minusDays(1), 12.5), "weather", "rules", DAY));
		all.add(of(site, one, "", WATER, "weather 2", "rules", DAY));
		all.add(of(site, one, "", WATER, "weather", "rules 2", DAY));
		all.add(of(site, one, "", WATER, "weather", "rules", DAY.plusDays(1)));
		all.add(HexFormat.of()
			.formatHex(InputFingerprint.of(SiteBeds.none(site), one, new Logged(""),
					new WateredDepths(WATER, Map.of(one.get(0).id(), WATER)), List.of(), "weather", "rules", DAY)));
		SoilFigures figures = new SoilFigures(8.9, 2, SoilExtract.SATURATED_PASTE, 20.0, null, 15.0);
		KeptSoilTest test = new KeptSoilTest(new SoilTestId(new UUID(4, 4)), SITE, null, DAY, figures, 15,
				SoilDrainage.GOOD, "", null, Instant.EPOCH);
		all.add(HexFormat.of()
			.formatHex(InputFingerprint.of(SiteBeds.none(site), one, new Logged(""), new WateredDepths(WATER, Map.of()),
					List.of(test), "weather", "rules", DAY)));
		assertThat(all).hasSize(18);
	}

	@Test
	void theOrderInWhichSetsAndMapsComeDoesNot() {
		Map<LocalDate, Double> forward = new LinkedHashMap<>();
		Map<LocalDate, Double> backward = new LinkedHashMap<>();
		for (int day = 0; day < 20; day++) {
			forward.put(DAY.plusDays(day), 1.0 * day);
			backward.put(DAY.plusDays(19 - day), 19.0 - day);
		}
		Set<SiteFeature> turned = Set.of(SiteFeature.VOLUNTEERS, SiteFeature.IRRIGATION);
		assertThat(
				of(site(POINT, SoilTexture.LOAM, Microclimate.NONE, "", turned), List.of(), "", backward, "", "", DAY))
			.isEqualTo(of(site(POINT, SoilTexture.LOAM, Microclimate.NONE, "", BOTH), List.of(), "", forward, "", "",
					DAY));
	}

	@Test
	void textsDoNotRunIntoEachOther() {
		Site site = site(POINT, SoilTexture.LOAM, Microclimate.NONE, "", Set.of());
		assertThat(of(site, List.of(), "", Map.of(), "ab", "c", DAY))
			.isNotEqualTo(of(site, List.of(), "", Map.of(), "a", "bc", DAY));
	}

	private static String of(Site site, List<Planting> plantings, String log, Map<LocalDate, Double> waterings,
			String weather, String knowledge, LocalDate today) {
		return HexFormat.of()
			.formatHex(InputFingerprint.of(SiteBeds.none(site), plantings, new Logged(log),
					new WateredDepths(waterings, Map.of()), List.of(), weather, knowledge, today));
	}

	private static Site site(GeoPoint point, SoilTexture soil, Microclimate microclimate, String region,
			Set<SiteFeature> features) {
		return new Site(SITE, new PersonId(new UUID(2, 2)), "Garden", "", point, ZoneId.of("America/Chicago"), soil,
				Sun.FULL_SUN, Wind.AVERAGE, microclimate, region, features);
	}

	private static Planting planting(int number, String label) {
		return new Planting(new PlantingId(new UUID(3, number)), SITE, new SpeciesId("buxus-sempervirens"), label, 1,
				LocalDate.of(2020, 5, 1), Placement.GROUND, false, false);
	}

	private record Logged(String log) implements Observed {

		@Override
		public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
			return Optional.empty();
		}

		@Override
		public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
			return Optional.empty();
		}

	}

}
