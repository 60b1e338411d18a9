package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.amounts.Degrees;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.climate.core.light.SunPosition;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

class HardeningRampTests {

	private static final GeoPoint PLACE = new GeoPoint(42.1, -91.6, 220);

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final LocalDate MAY = LocalDate.of(2027, 5, 6);

	private static final StartingLight SILL = new StartingLight.Windowsill(Aspect.SOUTH);

	private static final RampLimits TENDER = RampLimits.forNights(10);

	private static HardeningRamp usual() {
		return HardeningRamp.plan(PLACE, CHICAGO, MAY, HardeningRamp.USUAL_DAYS, SILL, SiteLight.FULL_SUN, TENDER);
	}

	/** Sources in the head of shared/light/hardening.csv. */
	@Test
	void lengthAndHoursAreThePublishedOnes() {
		Map<String, String[]> published = SharedData.table("light/hardening.csv")
			.stream()
			.collect(Collectors.toMap((row) -> row[0], (row) -> row));
		List<RampDay> days = usual().days();
		between(days.size(), published.get("length"));
		between(days.get(0).hoursOutside(), published.get("first hours"));
		for (int at = 1; days.get(at).from() != null; at++) {
			between(days.get(at).hoursOutside() - days.get(at - 1).hoursOutside(), published.get("more hours"));
		}
		RampDay sun = days.stream().filter((day) -> day.exposure() == Exposure.SUN_UNTIL).findFirst().orElseThrow();
		between(sun.step(), published.get("sun after"));
		assertThat(days.get(0).exposure()).isIn(Exposure.DEEP_SHADE, Exposure.BRIGHT_SHADE);
		double coldest = Degrees.ofFahrenheit(Double.parseDouble(published.get("coldest day")[1]));
		assertThat(TENDER.dayCelsius()).isCloseTo(coldest, within(1e-9));
		List<RampDay> hardy = HardeningRamp
			.plan(PLACE, CHICAGO, MAY, Integer.parseInt(published.get("short ramp")[1]), SILL, SiteLight.FULL_SUN,
					TENDER)
			.days();
		assertThat(hardy).hasSize(7).last().matches((day) -> day.exposure() == Exposure.ITS_PLACE && day.nightOut());
	}

	private static void between(double value, String[] row) {
		assertThat(value).as(row[0]).isBetween(Double.parseDouble(row[1]), Double.parseDouble(row[2]));
	}

	@Test
	void aDayTellsWhatToDoAndHowItCameAbout() {
		List<RampDay> days = usual().days();
		assertThat(days.get(0).words()).startsWith("3 hours outside from ")
			.contains("shade, out of the wind; in for the night (aim ");
		assertThat(days).extracting(RampDay::words).anyMatch((words) -> words.contains(": sun until "));
		assertThat(days.get(13).words())
			.startsWith("Out day and night: in the place where it will grow; in again for a "
					+ "night below 10 °C (50 °F) (aim ");
		assertThat(days.get(13).nightIn().words()).startsWith("All day outside").contains("in for the night");
		assertThat(days.get(6).amount().explanation().toString()).contains("equations 21 and 37", "equation 28",
				"Step 7 of 14", "from memory");
		assertThat(days).allSatisfy((day) -> assertThat(day.words()).hasSizeLessThanOrEqualTo(300));
	}

	/**
	 * The last step by hand: full sun is the open sky's light, FAO-56 times 2.057 mol/MJ.
	 */
	@Test
	void stepsGrowByTheSameFactorToTheSitesLight() {
		HardeningRamp ramp = usual();
		List<RampDay> days = ramp.days();
		assertThat(days.get(13).targetMoles()).isCloseTo(DailyLight.clearSky(PLACE, MAY.plusDays(13)), within(1e-9));
		double now = 0.2 * DailyLight.clearSky(PLACE, MAY.minusDays(1));
		assertThat(ramp.basis().presentMoles()).isCloseTo(now, within(1e-9));
		double factor = Math.pow(days.get(13).targetMoles() / now, 1 / 14.0);
		for (int at = 0; at < 13; at++) {
			assertThat(days.get(at).targetMoles()).isCloseTo(now * Math.pow(factor, at + 1), within(1e-9));
		}
	}

	@Test
	void whereTheLightIsThereAlreadyOnlyWindAndColdAreLeft() {
		HardeningRamp ramp = HardeningRamp.plan(PLACE, CHICAGO, MAY, 14, StartingLight.UnderGlass.GLASSHOUSE,
				SiteLight.PART_SHADE, TENDER);
		assertThat(ramp.basis().lightAlready()).isTrue();
		assertThat(ramp.days()).hasSize(5).allSatisfy((day) -> {
			assertThat(day.exposure()).isEqualTo(Exposure.ITS_PLACE);
			assertThat(day.words()).contains("sheltered from wind").doesNotContain("aim");
			assertThat(day.amount().explanation().toString()).contains("has the site’s light already");
		});
	}

	@Test
	void whatCantBeIsRefusedWithItsField() {
		refused("days", () -> plan(PLACE, CHICAGO, 2));
		refused("days", () -> plan(PLACE, CHICAGO, 29));
		refused("zone", () -> plan(PLACE, ZoneId.of("Asia/Tokyo"), 14));
		refused("date", () -> HardeningRamp.plan(new GeoPoint(75, 20, 0), ZoneOffset.ofHours(1),
				LocalDate.of(2027, 12, 1), 14, SILL, SiteLight.SHADE, TENDER));
		refused("nightCelsius", () -> RampLimits.forNights(50));
	}

	private static void refused(String where, Runnable plan) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(plan::run).matches((ex) -> ex.where().equals(where));
	}

	private static void plan(GeoPoint point, ZoneId zone, int days) {
		HardeningRamp.plan(point, zone, MAY, days, SILL, SiteLight.FULL_SUN, TENDER);
	}

	/**
	 * Samoa keeps the date of the other side: by the clock of 13 h its sun is highest
	 * near 12:27, with the 11.4 h that its longitude lies behind.
	 */
	@Test
	void islandsBeyondTheDateLine() {
		GeoPoint apia = new GeoPoint(-13.83, -171.77, 5);
		ZoneId zone = ZoneId.of("Pacific/Apia");
		LocalDate day = LocalDate.of(2027, 4, 15);
		LocalTime noon = Objects.requireNonNull(SunPosition.day(apia, day, zone).noon()).toLocalTime();
		assertThat(noon).isBetween(LocalTime.of(12, 20), LocalTime.of(12, 34));
		assertThat(DailyLight.part(apia, day, zone, null, noon)).isCloseTo(0.5, within(0.005));
		assertThat(HardeningRamp.plan(apia, zone, day, 14, SILL, SiteLight.FULL_SUN, TENDER).days()).hasSize(14);
	}

	/** Times of sunrise and sunset are those of another program (commons-suncalc). */
	@Test
	void everywhereAndAtEverySeasonTheRampKeepsItsBounds() {
		Random random = new Random(7);
		int sunUntil = 0;
		for (int count = 0; count < 1_500; count++) {
			GeoPoint point = new GeoPoint(-58 + random.nextDouble() * 116, -180 + random.nextDouble() * 360,
					random.nextInt(2_000));
			ZoneId zone = ZoneOffset
				.ofTotalSeconds((int) Math.round(point.longitude() / 15 + random.nextDouble() * 3 - 1) * 3600);
			LocalDate first = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(730));
			int length = 3 + random.nextInt(26);
			StartingLight start = start(random);
			SiteLight site = SiteLight.values()[random.nextInt(4)];
			HardeningRamp ramp = HardeningRamp.plan(point, zone, first, length, start, site,
					RampLimits.forNights(random.nextInt(16)));
			List<RampDay> days = ramp.days();
			String what = "%s %s %s %d %s %s".formatted(point, zone, first, length, start, site);
			assertThat(days.size()).as(what).isEqualTo(ramp.basis().lightAlready() ? Math.min(5, length) : length);
			for (int at = 0; at < days.size(); at++) {
				RampDay day = days.get(at);
				assertThat(day.step()).isEqualTo(at + 1);
				assertThat(day.date()).isEqualTo(first.plusDays(at));
				assertThat(day.targetMoles()).as(what).isLessThanOrEqualTo(site.molesPerDay(point, day.date()) + 1e-9);
				assertThat(day.lightMoles()).as(what).isLessThanOrEqualTo(day.siteMoles() + 1e-9);
				if (!ramp.basis().lightAlready() && day.exposure() != Exposure.ITS_PLACE && day.hoursOutside() > 1) {
					assertThat(day.lightMoles()).as(what).isLessThanOrEqualTo(day.targetMoles() + 1e-9);
				}
				if (at > 0) {
					assertThat(day.targetMoles()).as(what)
						.isGreaterThanOrEqualTo(days.get(at - 1).targetMoles() - 1e-9);
				}
				if (day.until() != null) {
					sunUntil++;
					SunPosition.Day sun = SunPosition.day(point, day.date(), zone);
					assertThat(day.until()).as(what)
						.isAfter(Objects.requireNonNull(sun.rise()).toLocalTime())
						.isBefore(Objects.requireNonNull(sun.set()).toLocalTime());
					assertThat(day.until().getMinute() % 15).isZero();
					if (day.from() != null) {
						assertThat(day.until()).isAfter(day.from()).isBefore(day.from().plusHours(day.hoursOutside()));
					}
				}
				assertThat(day.exposure() == Exposure.SUN_UNTIL).isEqualTo(day.until() != null);
				if (site == SiteLight.SHADE) {
					assertThat(day.exposure()).isIn(Exposure.DEEP_SHADE, Exposure.BRIGHT_SHADE, Exposure.ITS_PLACE);
				}
			}
			RampDay last = days.get(days.size() - 1);
			assertThat(last.targetMoles()).isCloseTo(last.siteMoles(), within(1e-9));
			assertThat(last.exposure()).isEqualTo(Exposure.ITS_PLACE);
			assertThat(last.nightOut()).isTrue();
		}
		assertThat(sunUntil).as("the walk sees sunny steps").isGreaterThan(3_000);
	}

	private static StartingLight start(Random random) {
		return switch (random.nextInt(5)) {
			case 0 -> new StartingLight.Windowsill(Aspect.values()[random.nextInt(4)]);
			case 1 -> new StartingLight.Lamp(random.nextInt(600), random.nextInt(20));
			case 2 -> new StartingLight.UnderGlass(random.nextDouble());
			case 3 -> new StartingLight.Outdoors(SiteLight.values()[random.nextInt(4)]);
			default -> new StartingLight.Unknown();
		};
	}

	@Test
	void aStepThatComesLaterKeepsItsAimAndTakesTheTimesOfItsDay() {
		HardeningRamp ramp = usual();
		RampDay planned = ramp.on(MAY.plusDays(6), 7);
		RampDay late = ramp.on(MAY.plusDays(10), 7);
		assertThat(late.targetMoles()).isEqualTo(planned.targetMoles());
		assertThat(late.siteMoles()).isGreaterThan(planned.siteMoles());
		assertThat(late.step()).isEqualTo(7);
	}

}
